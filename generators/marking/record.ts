import { z } from 'zod';
import { UserMistake } from '../mistake.ts';
import { MARK_KINDS } from './mark-kinds.ts';
import type { StudentMarks } from './mark-class.ts';

const answer = z.strictObject({ typed: z.string(), marks: z.number() });

const recordSchema = z.strictObject({
  format: z.literal(1),
  orderDigest: z.string().describe('of the pack that was marked'),
  scheme: z.string().describe('title of the mark scheme'),
  heads: z.array(z.string()).describe('the deciding answers'),
  students: z.array(z.strictObject({ code: z.string(), roll: z.string(), total: z.number(), answers: z.array(answer) })),
});

/** What was marked and with how many marks, kept beside the reports so that another marking can say what changed. */
export type MarkingRecord = z.output<typeof recordSchema>;

export function makeRecord(of: Pick<MarkingRecord, 'orderDigest' | 'scheme' | 'heads'>, students: readonly StudentMarks[]): MarkingRecord {
  return {
    format: 1,
    ...of,
    students: students.map(({ issue, total, answers, texts }) => ({
      code: issue.code,
      roll: issue.roll,
      total,
      answers: answers.map(({ earned }, i) => ({ typed: texts[i]!, marks: MARK_KINDS.reduce((sum, kind) => sum + earned[kind], 0) })),
    })),
  };
}

/** @throws UserMistake where the text is no record of a marking */
export function readRecord(text: string, file: string): MarkingRecord {
  const refuse = (why: string, cause?: unknown) => new UserMistake([{ file, what: `this is no record of a marking (${why}); choose another folder with --out, or remove it` }], { cause });
  let values: unknown;
  try {
    values = JSON.parse(text);
  } catch (cause) {
    throw refuse((cause as SyntaxError).message, cause);
  }
  const { data, error } = recordSchema.safeParse(values);
  if (!data) throw refuse(error.issues[0]!.message);
  return data;
}

/** One answer or total that another marking left different. */
export interface Change {
  roll: string;
  code: string;
  /** The answer, or nothing for the total of a sheet. */
  head?: string;
  before: { typed?: string; marks: number };
  after: { typed?: string; marks: number };
}

/** What is different from the last marking, student by student; a sheet that is new in the ledger is no change. */
export function changes(before: MarkingRecord, after: MarkingRecord): Change[] {
  const earlier = new Map(before.students.map((student) => [student.code, student]));
  return after.students.flatMap(({ code, roll, total, answers }) => {
    const old = earlier.get(code);
    if (!old) return [];
    const oldAnswer = (head: string) => old.answers[before.heads.indexOf(head)] ?? { typed: '', marks: 0 };
    const changed = after.heads.flatMap((head, i): Change[] => {
      const [was, is] = [oldAnswer(head), answers[i]!];
      return was.typed === is.typed && was.marks === is.marks ? [] : [{ roll, code, head, before: was, after: is }];
    });
    return total === old.total ? changed : [...changed, { roll, code, before: { marks: old.total }, after: { marks: total } }];
  });
}
