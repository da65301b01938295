import { describe, expect, test } from 'vitest';
import { type Bridge, circuit } from '../../generators/apparatus/bridge.ts';
import { type EqualDeflection, armCurrent, equalDeflectionStretch, rheostatFor } from '../../generators/apparatus/kelvin.ts';
import { nullPlace } from '../../generators/apparatus/null.ts';
import { streams } from '../../generators/random.ts';
import { describeWith } from '../outside.ts';
import { ideal } from './ideal.ts';
import { expectCurrents, resistor, simulatedCurrents } from './netlist.ts';
import { wildBridge } from './random-bridge.ts';

interface Trial {
  bridge: Bridge;
  setting: EqualDeflection;
  jockey: number;
}

const trials: Trial[] = Array.from({ length: 250 }, (_, i) => {
  const random = streams('equal deflection').of(i);
  const bridge = wildBridge(random);
  const known = random.pick(['left', 'right'] as const);
  const R = random.between(0.3, 3) * bridge.galvanometer.coil;
  return { bridge, setting: { known, R, rheostat: random.between(0, 100), tap: random.between(0, 0.2) }, jockey: random.between(0, 100) };
});

const opposite = { left: 'right', right: 'left' } as const;
const gapsOf = ({ bridge, setting: { known, R } }: Trial) => ({ [known]: R, [opposite[known]]: bridge.galvanometer.coil }) as Record<'left' | 'right', number>;

/** Node by node as it is wired; V_g lies in series with the galvanometer, in its gap. */
function netlist(trial: Trial, key: 'open' | 'closed', tag: string): string[] {
  const { bridge, setting, jockey } = trial;
  const node = (name: string) => `${name}${tag}`;
  const gaps = gapsOf(trial);
  const { wireLeft, wireRight } = circuit(bridge, gaps, jockey);
  const { left, right } = bridge.terminals;
  const [from, to] = setting.known === 'left' ? [node('middle'), '0'] : [node('strip'), node('middle')];
  const [knownFrom, knownTo] = setting.known === 'left' ? [node('strip'), node('middle')] : [node('middle'), '0'];
  return [
    `Vcell${tag} ${node('pole')} 0 DC ${bridge.cell.emf}`,
    ...resistor(`cell${tag}`, node('pole'), node('slider'), bridge.cell.internal),
    ...resistor(`rheostat${tag}`, node('slider'), node('strip'), setting.rheostat),
    ...resistor(`known${tag}`, knownFrom, knownTo, setting.R + (setting.known === 'left' ? left : right).inSeries),
    ...resistor(`coil${tag}`, from, node('meter'), bridge.galvanometer.coil + (setting.known === 'left' ? right : left).inSeries),
    `V_g${tag} ${node('meter')} ${to} DC 0`,
    ...resistor(`wl${tag}`, node('strip'), node('jockey'), wireLeft),
    ...resistor(`wr${tag}`, node('jockey'), '0', wireRight),
    ...(key === 'closed' ? resistor(`tap${tag}`, node('middle'), node('jockey'), setting.tap) : []),
  ];
}

describeWith(['ngspice'], 'the galvanometer in a gap against ngspice', () => {
  test.each(['open', 'closed'] as const)('with the key %s its current is that of 250 circuits', (key) => {
    const own = trials.map(({ bridge, setting, jockey }) => armCurrent(bridge, setting, key, jockey));
    expectCurrents(own, simulatedCurrents(trials.map((trial, i) => netlist(trial, key, String(i)))), 1e-9);
  });
});

describe('the place of equal deflection', () => {
  const sharp = (bridge: Bridge): Bridge => ({ ...bridge, galvanometer: { ...bridge.galvanometer, leastSeen: 0 } });

  test('divides the wire as the gaps are, whatever cell, rheostat and key are', () => {
    let onWire = 0;
    for (const trial of trials) {
      const place = nullPlace(trial.bridge, gapsOf(trial));
      if (place < 2 || place > 98) continue;
      onWire++;
      const [low, high] = equalDeflectionStretch(sharp(trial.bridge), trial.setting);
      expect(low).toBeCloseTo(place, 7);
      expect(high).toBeCloseTo(place, 7);
    }
    expect(onWire).toBeGreaterThan(200);
  });

  // 60 and 40 Ω on an even wire of 100 cm: l : (100 − l) = 60 : 40 from the left.
  test.each([
    ['left', 60],
    ['right', 40],
  ] as const)('with 60 Ω in the %s gap and a coil of 40 Ω is at %d cm', (known, place) => {
    const bridge = sharp({ ...ideal, galvanometer: { ...ideal.galvanometer, coil: 40 } });
    const [low] = equalDeflectionStretch(bridge, { known, R: 60, rheostat: 50, tap: 0.05 });
    expect(low).toBeCloseTo(place, 9);
  });

  test('is alone: left and right of it the change has opposite signs, and it grows all along the wire', () => {
    for (const { bridge, setting } of trials) {
      const sense = (setting.known === 'left' ? -1 : 1) * Math.sign(bridge.cell.emf);
      const change = Array.from({ length: 101 }, (_, cm) => sense * (armCurrent(bridge, setting, 'closed', cm) - armCurrent(bridge, setting, 'open', cm)));
      expect(change).toEqual([...change].sort((a, b) => a - b));
    }
  });
});

test('the stretch ends where the change of the deflection is just seen', () => {
  let bothEnds = 0;
  for (const { bridge, setting } of trials) {
    const [low, high] = equalDeflectionStretch(bridge, setting);
    if (low < 2 || high > 98) continue;
    bothEnds++;
    for (const end of [low, high]) {
      const change = armCurrent(bridge, setting, 'closed', end) - armCurrent(bridge, setting, 'open', end);
      expect(Math.abs(change / bridge.galvanometer.perDivision)).toBeCloseTo(bridge.galvanometer.leastSeen, 6);
    }
  }
  expect(bothEnds).toBeGreaterThan(100);
});

test('the rheostat brings the needle to the division asked for, or is taken out where the cell is too weak', () => {
  let brought = 0;
  for (const { bridge, setting } of trials) {
    const rheostat = rheostatFor(bridge, setting, 20);
    const shown = armCurrent(bridge, { ...setting, rheostat }, 'open', 50) / bridge.galvanometer.perDivision;
    if (rheostat === 0) expect(shown).toBeLessThanOrEqual(20 + 1e-9);
    else {
      brought++;
      expect(shown).toBeCloseTo(20, 9);
    }
  }
  expect(brought).toBeGreaterThan(100);
});
