import { z } from 'zod';
import { UserMistake } from '../mistake.ts';
import { allMistakes } from '../order/all-mistakes.ts';
import { MARK_KINDS } from './mark-kinds.ts';

const marks = z.number().min(0).max(20).refine((value) => Number.isInteger(2 * value), 'marks go in halves').describe('in whole or half marks');

const forAnswer = z.strictObject({
  method: marks.describe('for the right physics; kept where the value alone went wrong'),
  answer: marks.describe('for a value that honest work on the student\'s own earlier figures can give'),
  unit: marks.describe('for the unit'),
  figures: marks.describe('for as many figures as the sheet asks for'),
});

const listed = forAnswer.partial().extend({
  step: z.string().describe('the id of a step of the experiment'),
  rows: z.array(z.number().int().min(1)).min(1).optional().describe('of a table: which rows, counted from 1; all where it is left out'),
});

const schemeSchema = z.strictObject({
  title: z.string().describe('printed on the reports'),
  units: z.enum(['typed', 'assumed']).describe('typed: a number typed without a unit was written without one; assumed: it was written with the right one, unless ! stands after it'),
  'missing-unit': z.enum(['once', 'each']).describe('whether a missing unit costs its mark once on a sheet, or each time'),
  'extra-figures': z.number().int().min(0).max(9).describe('how many figures more than the sheet asks for are not too many'),
  'keep-method': z.array(z.string()).describe('slips that leave the method mark: the physics is right'),
  'keep-answer': z.array(z.string()).describe('slips that cost the mark for figures in place of that for the answer'),
  each: forAnswer.describe('marks of an answer that says nothing else'),
  experiments: z.record(z.string(), z.array(listed).min(1)).describe('deciding answers by experiment; those of the marking grid for one that is not here'),
});

/** Which answers decide, and what each part of one is worth. */
export type Scheme = z.output<typeof schemeSchema>;
export type Marks = z.output<typeof forAnswer>;
export type MarkKind = keyof Marks;
/** What of a scheme the marks of answers that are judged hang on. */
export type Rules = Pick<Scheme, 'units' | 'missing-unit' | 'extra-figures' | 'keep-method' | 'keep-answer'>;

/** @throws UserMistake that lists every entry of the file that does not fit */
export function readScheme(values: unknown, file: string): Scheme {
  const { data, error } = schemeSchema.safeParse(values);
  if (data) return data;
  throw allMistakes(error.issues.map(({ path, message }) => ({ file, ...(path.length > 0 && { field: path.join('.') }), what: `${message}; the schemes in content/marks/ show how one is written` })));
}

/** The answers of a sheet that an experiment's scheme lists, or else these. */
export function listedAnswers(scheme: Scheme, experiment: string, otherwise: readonly string[]): { step: string; rows?: number[] | undefined; marks: Marks }[] {
  const answers = scheme.experiments[experiment] ?? otherwise.map((step) => ({ step }));
  const seen = new Set<string>();
  for (const { step } of answers) {
    if (seen.has(step)) throw new UserMistake(`the mark scheme "${scheme.title}" lists ${step} of ${experiment} twice; list it once`);
    seen.add(step);
  }
  return answers.map(({ step, rows, ...own }: z.output<typeof listed>) => ({ step, rows, marks: { ...scheme.each, ...given(own) } }));
}

function given(own: Partial<Record<MarkKind, number | undefined>>): Partial<Marks> {
  return Object.fromEntries(MARK_KINDS.flatMap((kind) => (own[kind] === undefined ? [] : [[kind, own[kind]]])));
}
