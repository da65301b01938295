import { familyNamed } from '../questions/index.ts';
import type { Choice } from '../questions/family.ts';
import { type Entry, entriesOf } from './entry.ts';
import type { PartForm } from './forms.ts';
import type { Restated } from './in-case.ts';

interface CasePart {
  family: string;
  ask: string;
  form: PartForm;
  choice?: Choice;
  /** Symbols, values and bounds that quantities have in this case. */
  with: Restated;
}

/** Resistances, lengths and diameters of a piece of resistance wire on a school's bench; common practice, no source. */
const FEW_OHMS = { values: ['1.5', '2.0', '2.5', '3.0', '4.0', '5.0', '6.0'] };
const WIRE = { d: { values: ['0.274', '0.315', '0.376', '0.457', '0.559'] }, rho: { printed: [1e-7, 2e-6] } } as const;

const unknownRight = (form: PartForm = 'numeric'): CasePart => ({ family: 'balance', ask: 'right', form, with: { P: { tex: 'R', ...FEW_OHMS }, Q: { tex: 'X' }, l: { tex: 'l_1' } } });
const resistivity: CasePart = { family: 'resistivity', ask: 'resistivity', form: 'numeric', choice: { section: 'diameter' }, with: WIRE };

/**
 * Short cases by the name of their story in content; the hardest part gives the level, the first the topic. A symbol means
 * one quantity all through a case: what a later part gives under a symbol that stood in an earlier one has the value it had
 * there, given or found.
 */
const CASES: Readonly<Record<string, readonly CasePart[]>> = {
  'coil without a label': [
    unknownRight(),
    { family: 'shunt', ask: 'resistor for a null', form: 'numeric', choice: { gap: 'right' }, with: { Y: { tex: 'R' }, l2: { values: { from: 50, to: 80, step: '0.5' } } } },
    resistivity,
  ],
  'wire from the drawer': [
    { family: 'screw-gauge', ask: 'known', form: 'figure', choice: { zero: 'known' }, with: { m: { values: ['0.0', '0.5'] }, d: { printed: [0.25, 0.8] } } },
    { ...unknownRight(), with: { ...unknownRight().with, l: { tex: 'l' } } },
    resistivity,
  ],
  'stretched wire': [
    unknownRight(),
    { family: 'reshaped', ask: 'null', form: 'numeric', choice: { how: 'stretched', gap: 'right' }, with: {} },
    resistivity,
  ],
  'ends of the wire': [
    { family: 'end-corrections-found', ask: 'ends', form: 'numeric', with: {} },
    { family: 'end-corrections', ask: 'right', form: 'numeric', with: { P: { tex: 'R' }, Q: { tex: 'X' }, l: { tex: 'l_3' } } },
  ],
  'galvanometer in a gap': [
    { family: 'kelvin', ask: 'galvanometer', form: 'numeric', choice: { gap: 'right' }, with: { l: { tex: 'l_1' } } },
    { family: 'off-balance', ask: 'current', form: 'numeric', with: { l: { tex: 'l_2' }, N: { tex: 'R_b' } } },
  ],
  'four gaps': [
    { family: 'carey-foster-wire', ask: 'wire', form: 'numeric', with: {} },
    { family: 'carey-foster', ask: 'unknown', form: 'numeric', with: { X: { tex: 'P' }, Y: { tex: 'Q' }, l1: { tex: 'l_3' }, l2: { tex: 'l_4' } } },
  ],
  'warm laboratory': [
    { family: 'balance', ask: 'left', form: 'numeric', with: { P: { tex: 'X' }, Q: { tex: 'Y' }, l: { tex: 'l_1' } } },
    { family: 'temperature', ask: 'coefficient from the ratio', form: 'numeric', choice: { gap: 'left' }, with: { t2: { values: ['80', '100', '200'] } } },
    // At none of the temperatures before, where the null point is told.
    { family: 'temperature', ask: 'null', form: 'numeric', choice: { gap: 'left' }, with: { k: { tex: "k'" }, t2: { tex: 't_3', values: ['40', '50', '60', '75', '120', '150'] }, l2: { tex: 'l_3' } } },
  ],
  'currents at balance': [
    { family: 'balance', ask: 'right', form: 'numeric', with: {} },
    { family: 'currents', ask: 'branches', form: 'numeric', choice: { cell: 'ideal' }, with: {} },
  ],
};

/** All cases, ready to be put into a paper. */
export function cases(): Entry[] {
  return Object.entries(CASES).map(([story, list]) => {
    const parts = list.map(partOf);
    return {
      question: `case ${story}`,
      form: 'case' as const,
      topic: parts[0]!.topic,
      level: parts.map(({ level }) => level).sort().at(-1)!,
      marks: parts.reduce((sum, { marks }) => sum + marks, 0),
      parts: parts.flatMap((one) => one.parts),
      story,
    };
  });
}

function partOf({ family, ask, form, choice = {}, with: restated }: CasePart): Entry {
  const found = entriesOf(familyNamed(family), form, choice).find(({ parts }) => parts[0]!.ask === ask);
  if (!found) throw new Error(`${family} has no direction ${ask} for the form ${form}`);
  // The story tells the arrangement, so none may be left to chance.
  if (found.parts[0]!.choices.length > 1) throw new Error(`a case with ${family} has to settle its arrangement`);
  return { ...found, parts: found.parts.map((part) => ({ ...part, restated })) };
}
