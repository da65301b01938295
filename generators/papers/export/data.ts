import { z } from 'zod';
import { round } from '../../quantities/written.ts';
import { sentenceText } from '../../questions/view.ts';
import type { MarkTable } from '../demands.ts';
import { FORMS, PART_FORMS } from '../forms.ts';
import type { Made } from '../item.ts';
import type { Version } from '../paper.ts';
import type { PartView, VersionView } from '../view.ts';

const text = (meaning: string) => z.string().describe(meaning);
const marks = (meaning: string) => z.number().int().nonnegative().describe(meaning);

const answer = z.strictObject({
  label: text('(a), (b) … where a question asks for several').optional(),
  symbol: text('what is asked for'),
  value: z.number().describe('the answer in its unit, not rounded'),
  shown: text('the answer as the mark scheme writes it, with its unit'),
  marks: marks('marks of this answer and of the working up to it'),
  unit: text('the unit, empty for a pure number'),
  from: z.number().describe('least value accepted'),
  to: z.number().describe('greatest value accepted'),
});

const option = z.strictObject({
  letter: text('A, B, …'),
  text: text('the option'),
  right: z.boolean().describe('whether it is the right one'),
  feedback: text('what is said to who chose it; empty where there is nothing to say').optional(),
});

const slip = z.strictObject({ values: z.record(z.string(), z.number()).describe('what the slip makes of each answer, by symbol'), feedback: text('what is said to who made it') });

const part = z.strictObject({
  label: text('(a), (b) … in a case, else empty'),
  family: text('id of the family, see slidewire families'),
  ask: text('direction of asking'),
  form: z.enum(PART_FORMS).describe('how the part is put'),
  marks: marks('marks of this part'),
  text: text('the question as a sentence'),
  figure: text('what the figure shows, in words').optional(),
  options: z.array(option).describe('none where the answer is written'),
  answers: z.array(answer).describe('numbers that are asked for'),
  words: z.array(z.string()).describe('answers in words'),
  working: z
    .array(z.strictObject({ say: text('what is said before the lines'), lines: z.array(z.string()).describe('formula, conversions, numbers put in'), marks: marks('marks for the method') }))
    .describe('the working of the mark scheme'),
  slips: z.array(slip).describe('usual mistakes that show in these numbers'),
});

const question = z.strictObject({
  number: z.number().int().positive().describe('number of the question in its version'),
  form: z.enum(FORMS).describe('how the question is put'),
  topic: text('topic that its marks count in'),
  level: text('1 easy, 2 middling, 3 hard'),
  marks: marks('marks of the question'),
  story: text('what a case tells first').optional(),
  parts: z.array(part).min(1).describe('one, or those of a case'),
});

const version = z.strictObject({
  name: text('A, B, …, or the name of a candidate'),
  roll: text('roll number of a candidate').optional(),
  questions: z.array(question).describe('in the order of the paper'),
});

const marksBy = (what: string) => z.record(z.string(), marks(`marks of this ${what}`)).describe(`marks by ${what}`);

/** The questions of a paper as data; the same as JSON Schema stands beside every export. */
export const questionsSchema = z.strictObject({
  format: z.literal('slidewire questions 1').describe('name and number of this format'),
  title: text('title of the paper'),
  deviation: text('which standard deviation is asked for'),
  marks: z.strictObject({ total: marks('marks of a version'), topics: marksBy('topic'), levels: marksBy('difficulty'), forms: marksBy('form') }).describe('what every version comes to'),
  versions: z.array(version).min(1).describe('parallel versions, or one for each candidate'),
});

export type Questions = z.infer<typeof questionsSchema>;
export type PartData = Questions['versions'][number]['questions'][number]['parts'][number];

/** A paper as data. */
export function questions(title: string, deviation: string, table: MarkTable, versions: readonly Version[], views: readonly VersionView[]): Questions {
  const { total, topics, levels, forms } = table;
  return {
    format: 'slidewire questions 1',
    title,
    deviation,
    marks: { total, topics, levels, forms },
    versions: views.map(({ name, roll, items }, v) => ({
      name,
      ...(roll !== undefined && { roll }),
      questions: items.map(({ parts, ...rest }, i) => ({ ...rest, parts: parts.map((one, p) => partData(one, versions[v]!.items[i]!.parts[p]!)) })),
    })),
  };
}

function partData({ label, form, marks: points, view, options, figure, asked }: PartView, { question, accept }: Made): PartData {
  const own = shares(points, question.answers.length);
  const symbol = (id: string) => view.answers.find((one) => one.id === id)?.symbol.text ?? id;
  return {
    label,
    family: view.family,
    ask: view.direction,
    form,
    marks: points,
    text: `${sentenceText(view.stem)} ${sentenceText(view.ask)}`.trim(),
    ...(figure && { figure: figure.seen }),
    options: options.map(({ letter, isRight, value, say, feedback }) => ({ letter, text: say ? sentenceText(say) : value!.text, right: isRight, ...(feedback && { feedback: sentenceText(feedback) }) })),
    answers: question.answers.map(({ id, exact }, i) => ({ ...(asked[i] && { label: `(${asked[i].letter})` }), symbol: symbol(id), value: exact, shown: view.answers[i]!.value.text, marks: asked[i]?.marks ?? own[i]!, unit: question.program.step(id).unit, from: accept[i]![0], to: accept[i]![1] })),
    words: view.verdicts.map(({ say }) => sentenceText(say)),
    working: view.steps.filter(({ lines }) => lines.length > 0).map(({ say, lines, marks: method }) => ({ say: say ? sentenceText(say) : '', lines: lines.map((line) => line.text), marks: method })),
    slips: question.slips.map(({ answers }, i) => ({ values: Object.fromEntries(Object.entries(answers).map(([id, value]) => [symbol(id), Number(round(value, { figures: 6 }, 'even'))])), feedback: sentenceText(view.slips[i]!.say) })),
  };
}

/** Marks in whole shares, the first ones larger where they do not come out even. */
const shares = (marks: number, count: number) => Array.from({ length: count }, (_, i) => Math.floor(marks / count) + (i < marks % count ? 1 : 0));

/** The schema of the data, for a file beside it. */
export const questionsJsonSchema = (): unknown => z.toJSONSchema(questionsSchema, { target: 'draft-2020-12' });
