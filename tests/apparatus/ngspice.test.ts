import { expect, test } from 'vitest';
import { type Bridge, circuit, current, type Gaps, protectedBridge } from '../../generators/apparatus/bridge.ts';
import { faultNames, withFault } from '../../generators/apparatus/faults.ts';
import { nullPlace } from '../../generators/apparatus/null.ts';
import { streams } from '../../generators/random.ts';
import { describeWith } from '../outside.ts';
import { type Arms, expectCurrents, netlist, simulatedCurrents } from './netlist.ts';
import { anyGaps, wild, wildBridge } from './random-bridge.ts';

interface Trial {
  bridge: Bridge;
  gaps: Gaps;
  jockey: number;
}

/** The currents of all trials, in one run of ngspice. */
function simulated(trials: readonly Trial[], arms: (trial: Trial) => Arms): number[] {
  return simulatedCurrents(trials.map((trial, i) => netlist(trial.bridge, trial.gaps, arms(trial), String(i))));
}

function ownArms({ bridge, gaps, jockey }: Trial): Arms {
  const { wireLeft, wireRight } = circuit(bridge, gaps, jockey);
  return { left: wireLeft, right: wireRight };
}

/** The wire cut into short pieces and added up, each of the resistance that the profile says in words. */
function addedArms({ bridge, jockey }: Trial): Arms {
  const { length, ohmsPerCm, profile, endCorrection, scaleOffset } = bridge;
  const local = (u: number) => ohmsPerCm * (1 + profile.a * (1 - 2 * u) + profile.b * (1 - 6 * u + 6 * u * u));
  const added = (from: number, to: number) => {
    const pieces = 4000;
    let sum = 0;
    for (let i = 0; i < pieces; i++) sum += local((from + ((to - from) * (i + 0.5)) / pieces) / length);
    return (sum * (to - from)) / pieces;
  };
  const place = Math.min(length, Math.max(0, jockey + scaleOffset));
  return {
    left: endCorrection.left * ohmsPerCm + added(0, place),
    right: endCorrection.right * ohmsPerCm + added(place, length),
  };
}

function expectSame(trials: readonly Trial[], outside: readonly number[], relative: number): void {
  expectCurrents(trials.map(({ bridge, gaps, jockey }) => current(bridge, gaps, jockey)), outside, relative);
}

function trial(i: number, change: (bridge: Bridge) => Bridge = (bridge) => bridge): Trial {
  const random = streams('against ngspice').of(i);
  const bridge = change(wildBridge(random));
  return {
    bridge: i % 2 === 0 ? bridge : protectedBridge(bridge, wild),
    gaps: anyGaps(random),
    jockey: random.between(0, 100),
  };
}

describeWith(['ngspice'], 'the bridge against ngspice', () => {
  test('the galvanometer current is that of 250 sound circuits', () => {
    const trials = Array.from({ length: 250 }, (_, i) => trial(i));
    expectSame(trials, simulated(trials, ownArms), 1e-9);
  });

  test('the galvanometer current is that of 250 circuits with a fault, every fault among them', () => {
    const random = streams('against ngspice').of('faults');
    const trials = Array.from({ length: 250 }, (_, i) =>
      trial(i, (bridge) => withFault(bridge, faultNames[i % faultNames.length]!, wild, random)),
    );
    expectSame(trials, simulated(trials, ownArms), 1e-9);
  });

  test('the wire on both sides of the jockey is what its pieces add up to, in 100 circuits', () => {
    const trials = Array.from({ length: 100 }, (_, i) => trial(1000 + i));
    expectSame(trials, simulated(trials, addedArms), 1e-6);
  });

  test('the current changes sign at the null of 100 circuits', () => {
    const trials = Array.from({ length: 100 }, (_, i) => trial(2000 + i));
    const at = (offset: number) =>
      simulated(trials.map((each) => ({ ...each, jockey: nullPlace(each.bridge, each.gaps) + offset })), addedArms);
    const [before, after] = [at(-1e-3), at(1e-3)];
    const inside = trials.map(({ bridge, gaps }) => nullPlace(bridge, gaps)).map((place) => place > 2 && place < 98);
    expect(inside.filter(Boolean).length).toBeGreaterThan(60);
    inside.forEach((counts, i) => {
      if (counts) expect([before[i]! < 0, after[i]! > 0], `circuit ${i}`).toEqual([true, true]);
    });
  });
});
