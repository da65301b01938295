import { readBalance } from '../../generators/apparatus/balance.ts';
import type { Hands } from '../../generators/apparatus/bench.ts';
import { boxResistance, makeBox } from '../../generators/apparatus/box.ts';
import { makeBridge } from '../../generators/apparatus/bridge.ts';
import { draw } from '../../generators/apparatus/draw.ts';
import { gaugeDiameter } from '../../generators/apparatus/gauges.ts';
import { nominalValue } from '../../generators/apparatus/materials.ts';
import { readRule } from '../../generators/apparatus/rule.ts';
import {
  type GaugeReading,
  makeScrewGauge,
  readGauge,
  readZero,
  type ScrewGauge,
  type ZeroReading,
} from '../../generators/apparatus/screw-gauge.ts';
import { acrossAt, makeWire, wireResistance } from '../../generators/apparatus/wire.ts';
import { streams } from '../../generators/random.ts';
import { bench, gauges, materials } from './tables.ts';

/** One student's day at one bench: everything that is read. */
export interface Day {
  rows: { r: string; l: string }[];
  length: string;
  gauge: ScrewGauge;
  zero: ZeroReading;
  diameters: GaugeReading[];
}

export function day(number: number): Day {
  const random = streams('days').of(number);
  const hands = random.pick<Hands>(['careful', 'usual', 'hurried']);
  const diameter = Number(gaugeDiameter(gauges, 'SWG', random.pick(['20', '22', '24', '26', '28', '30', '32', '34'])));
  const value = nominalValue(materials, random.pick(['constantan', 'manganin', 'nichrome']));
  const wire = makeWire(bench, value, { diameter, length: random.between(30, 150) }, random);
  const bridge = makeBridge(bench, random);
  const box = makeBox(bench, random);
  const gauge = makeScrewGauge(bench, random);
  const right = wireResistance(wire, draw(bench.room, random));
  return {
    rows: ['1.0', '2.0', '3.0', '4.5'].map((r) => ({
      r,
      l: readBalance(bridge, bench, { left: boxResistance(box, r), right }, hands, random),
    })),
    length: readRule(bench, wire.length, hands, random),
    gauge,
    zero: readZero(gauge),
    diameters: [1, 2].flatMap(() => acrossAt(wire, random).map((across) => readGauge(gauge, bench, across, hands, random))),
  };
}
