import type { Judged } from './judge.ts';
import { MARK_KINDS } from './mark-kinds.ts';
import type { MarkKind, Marks, Rules } from './scheme.ts';

/** An answer with the marks it earned. */
export interface Marked extends Judged {
  earned: Marks;
  /** A unit was not written; it costs its mark, or has cost it before on this sheet. */
  unitMissing?: 'costs' | 'has cost';
}

/** What one student's sheet earned. */
export interface SheetMarks {
  answers: Marked[];
  total: number;
  full: number;
}

/**
 * Marks by the scheme. The method counts as shown where the value is right, or where what went wrong leaves the physics
 * right; of several explanations the kindest counts. One slip costs its own marks once, since answers are judged on the
 * student's own earlier figures.
 */
export function award(judged: readonly Judged[], scheme: Rules): SheetMarks {
  let missed = false;
  const answers = judged.map((one): Marked => {
    const missing = isUnitMissing(one, scheme);
    const costs = missing && !(missed && scheme['missing-unit'] === 'once');
    missed ||= missing;
    const earned = earnedBy(one, scheme, one.wrongUnit || costs);
    return { ...one, earned, ...(missing && { unitMissing: costs ? ('costs' as const) : ('has cost' as const) }) };
  });
  return { answers, total: sum(answers.map(({ earned }) => earned)), full: sum(answers.map(({ column }) => column.marks)) };
}

function isUnitMissing({ entry, column }: Judged, { units }: Rules): boolean {
  if (entry.is !== 'number' || entry.unit || column.unit === '') return false;
  return units === 'typed' || entry.unitless === true;
}

function earnedBy(one: Judged, scheme: Rules, noUnit: boolean): Marks {
  const { marks } = one.column;
  if (one.verdict === 'absent') return { method: 0, answer: 0, unit: 0, figures: 0 };
  const right = one.verdict !== 'wrong';
  const slips = one.explanations.map(({ slip, with: second }) => [slip, ...(second ? [second.slip] : [])]);
  const kept = (by: readonly string[]) => slips.some((all) => all.every((slip) => by.includes(slip)));
  // What costs the mark for figures costs that for the answer where there is none for figures.
  const forgiven = marks.figures > 0 && kept(scheme['keep-answer']);
  const figures = !forgiven && one.extraFigures >= 0 && one.extraFigures <= scheme['extra-figures'];
  return {
    method: right || kept(scheme['keep-method']) ? marks.method : 0,
    answer: right || forgiven ? marks.answer : 0,
    unit: noUnit ? 0 : marks.unit,
    figures: figures ? marks.figures : 0,
  };
}

const sum = (all: readonly Marks[]) => all.reduce((total, marks) => total + partsOf(marks).reduce((a, b) => a + b, 0), 0);

const partsOf = (marks: Marks): number[] => MARK_KINDS.map((kind: MarkKind) => marks[kind]);
