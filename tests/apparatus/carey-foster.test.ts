import { describe, expect, test } from 'vitest';
import { type RatioArms, careyFosterCurrent, careyFosterStretch } from '../../generators/apparatus/carey-foster.ts';
import { type Bridge, type Gaps, circuit } from '../../generators/apparatus/bridge.ts';
import { streams } from '../../generators/random.ts';
import { describeWith } from '../outside.ts';
import { ideal } from './ideal.ts';
import { expectCurrents, resistor, simulatedCurrents } from './netlist.ts';
import { anyGaps, wildBridge } from './random-bridge.ts';

interface Trial {
  bridge: Bridge;
  outer: Gaps;
  arms: RatioArms;
  jockey: number;
}

const trials: Trial[] = Array.from({ length: 250 }, (_, i) => {
  const random = streams('Carey Foster').of(i);
  return { bridge: wildBridge(random), outer: anyGaps(random), arms: anyGaps(random), jockey: random.between(0, 100) };
});

/** Node by node as it is wired: the cell on the strips beside the outer gaps, X and Y between them and the ends of the wire. */
function netlist({ bridge, outer, arms, jockey }: Trial, tag: string): string[] {
  const node = (name: string) => `${name}${tag}`;
  const { wireLeft, wireRight } = circuit(bridge, outer, jockey);
  const { left, right } = bridge.terminals;
  return [
    `Vcell${tag} ${node('pole')} 0 DC ${bridge.cell.emf}`,
    ...resistor(`cell${tag}`, node('pole'), node('strip'), bridge.cell.internal),
    ...resistor(`p${tag}`, node('strip'), node('middle'), arms.left),
    ...resistor(`q${tag}`, node('middle'), '0', arms.right),
    ...resistor(`x${tag}`, node('strip'), node('xend'), outer.left),
    ...resistor(`jx${tag}`, node('xend'), node('wirestart'), left.inSeries),
    ...resistor(`wl${tag}`, node('wirestart'), node('jockey'), wireLeft),
    ...resistor(`wr${tag}`, node('jockey'), node('wirefinish'), wireRight),
    ...resistor(`jy${tag}`, node('wirefinish'), node('yend'), right.inSeries),
    ...resistor(`y${tag}`, node('yend'), '0', outer.right),
    ...resistor(`coil${tag}`, node('middle'), node('meter'), bridge.galvanometer.coil),
    `V_g${tag} ${node('meter')} ${node('jockey')} DC 0`,
  ];
}

describeWith(['ngspice'], 'the Carey Foster bridge against ngspice', () => {
  test('the galvanometer current is that of 250 circuits', () => {
    const own = trials.map(({ bridge, outer, arms, jockey }) => careyFosterCurrent(bridge, outer, arms, jockey));
    expectCurrents(own, simulatedCurrents(trials.map((trial, i) => netlist(trial, String(i)))), 1e-9);
  });
});

describe('the null of the Carey Foster bridge', () => {
  /** The middle of the stretch, with a galvanometer on which everything is seen. */
  const nullOf = (bridge: Bridge, outer: Gaps, arms: RatioArms) => {
    const [low, high] = careyFosterStretch({ ...bridge, galvanometer: { ...bridge.galvanometer, leastSeen: 0 } }, outer, arms);
    expect(high - low).toBeLessThan(1e-9);
    return (low + high) / 2;
  };

  test('on an even wire divides X, wire and Y, ends and joints among them, as the ratio arms are', () => {
    let onWire = 0;
    for (const { bridge: uneven, outer, arms } of trials) {
      const bridge = { ...uneven, profile: { a: 0, b: 0 } };
      const ends = { left: bridge.ohmsPerCm * bridge.endCorrection.left, right: bridge.ohmsPerCm * bridge.endCorrection.right };
      const X = outer.left + bridge.terminals.left.inSeries + ends.left;
      const Y = outer.right + bridge.terminals.right.inSeries + ends.right;
      const share = arms.left / (arms.left + arms.right);
      const place = (share * (X + Y + 100 * bridge.ohmsPerCm) - X) / bridge.ohmsPerCm - bridge.scaleOffset;
      if (place < 1 || place > 99) continue;
      onWire++;
      expect(nullOf(bridge, outer, arms)).toBeCloseTo(place, 8);
    }
    expect(onWire).toBeGreaterThan(30);
  });

  test('moves on interchange by the difference over the resistance per cm, whatever arms, ends, joints and scale are', () => {
    let onWire = 0;
    for (const { bridge: uneven, arms } of trials) {
      const bridge = { ...uneven, profile: { a: 0, b: 0 } };
      const difference = 30 * bridge.ohmsPerCm;
      const nearlyEqual = { left: arms.left, right: arms.left * 1.01 };
      const one = nullOf(bridge, { left: 4, right: 4 + difference }, nearlyEqual);
      const other = nullOf(bridge, { left: 4 + difference, right: 4 }, nearlyEqual);
      if (Math.min(one, other) < 1 || Math.max(one, other) > 99) continue;
      onWire++;
      expect(bridge.ohmsPerCm * (one - other)).toBeCloseTo(difference, 8);
    }
    expect(onWire).toBeGreaterThan(100);
  });

  test('with a strip opposite R is R over twice the resistance per cm from the middle', () => {
    expect(nullOf(ideal, { left: 0.5, right: 0 }, { left: 2, right: 2 })).toBeCloseTo(37.5, 9);
    expect(nullOf(ideal, { left: 0, right: 0.5 }, { left: 2, right: 2 })).toBeCloseTo(62.5, 9);
  });

  test('is off the wire where the outer resistances differ by more than the wire has', () => {
    expect(nullOf(ideal, { left: 1, right: 3.1 }, { left: 2, right: 2 })).toBe(100);
    expect(nullOf(ideal, { left: 3.1, right: 1 }, { left: 2, right: 2 })).toBe(0);
  });
});

test('the stretch ends where the needle is just seen to move', () => {
  let bothEnds = 0;
  for (const { bridge, outer, arms } of trials) {
    const [low, high] = careyFosterStretch(bridge, outer, arms);
    if (low < 2 || high > 98) continue;
    bothEnds++;
    for (const end of [low, high]) expect(Math.abs(careyFosterCurrent(bridge, outer, arms, end) / bridge.galvanometer.perDivision)).toBeCloseTo(bridge.galvanometer.leastSeen, 6);
  }
  expect(bothEnds).toBeGreaterThan(20);
});
