import type { Finished } from '../quantities/finished.ts';
import { type Program, program } from '../quantities/program.ts';
import type { Random, Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import type { Experiment, Observed } from './experiment.ts';
import { type Plantable, plant } from './plant.ts';
import { resistivity } from './resistivity.ts';

/** The mistakes that a record may hold, by the part of the work; a record has one of a part at most. */
const PARTS: readonly (readonly Plantable[])[] = [
  [
    { id: 'X', slip: 'ratio inverted' },
    { id: 'X', slip: 'divided by the whole wire' },
    { id: 'r', slip: 'arithmetic' },
  ],
  [
    { id: 'e', slip: 'negative zero error read forwards' },
    { id: 'd', slip: 'zero error with the wrong sign' },
    { id: 'd', slip: 'zero error ignored' },
    { id: 'dObs', slip: 'main-scale division missed' },
  ],
  [
    { id: 'rho', slip: 'diameter used as radius' },
    { id: 'rho', slip: 'length left in centimetres' },
  ],
  [{ id: 'off', slip: 'measured value as the base' }],
  [
    { id: 'X', slip: 'too many digits' },
    { id: 'rho', slip: 'too many digits' },
  ],
];

/** Choices of mistakes that are tried on one set of readings; a wrong base, say, does not show in every one. */
const TRIES = 40;

/** A finished record of the resistivity experiment, with three or four mistakes to be found and put right. */
export const findTheFaults: Experiment = {
  ...resistivity,
  id: 'find-the-faults',
  edition: 1,
  usual: { wires: ['constantan, SWG 28, 60 cm', 'manganin, SWG 30, 55 cm', 'nichrome, SWG 24, 90 cm', 'nichrome, SWG 25, 70 cm'], sections: 'aim formula observations working result viva' },
  readingsGiven: true,
  layout: { ...resistivity.layout, uncertain: [] },
  // Whether the result agrees with the table is asked of a record that is right.
  steps: (form) => resistivity.steps(form).filter(({ kind }) => kind !== 'verdict'),
  observe,
};

function observe(ask: Ask, streams: Streams): Observed | undefined {
  const observed = resistivity.observe(ask, streams);
  const finished = observed && withFaults(program(findTheFaults.steps(observed.form)), observed, streams.of('mistakes'));
  return finished && { ...observed, finished };
}

function withFaults(steps: Program, { readings }: Observed, random: Random): Finished | undefined {
  for (let i = 0; i < TRIES; i++) {
    const parts = random.shuffle(PARTS).slice(0, random.integer(3, 4));
    const finished = plant(steps, readings, parts.map((part) => random.pick(part)), random);
    if (finished && isBelievable(finished)) return finished;
  }
  return undefined;
}

/** A difference in per cent that would make anybody stop; two mistakes together can come to it. */
const ABSURD = 1000;

/** Nobody writes down a wire that is less than nothing thick. */
function isBelievable({ off, dObs, d }: Finished): boolean {
  return Math.abs(Number(off![0])) < ABSURD && [...dObs!, ...d!].every((diameter) => Number(diameter) > 0);
}
