import { z } from 'zod';
import type { Mistake } from '../mistake.ts';
import { type Deviation, chosenFor } from '../papers/pool.ts';
import type { Demands } from '../papers/demands.ts';
import { FORMS, LEVELS, PART_FORMS, type PartForm } from '../papers/forms.ts';
import type { Named } from '../papers/named.ts';
import { didYouMean } from '../near-miss.ts';
import type { Family } from '../questions/family.ts';
import { families, familyNamed } from '../questions/index.ts';
import { allMistakes } from './all-mistakes.ts';
import { type WhereIs, checkEntries } from './check.ts';
import { choice, entries, oneOf, text, wholeNumber } from './fields.ts';
import { entriesFile } from './entries-file.ts';
import { DECIMALS } from './schema.ts';

const PAPERS = ['A4', 'Letter'] as const;
const SIZES = ['normal', '18pt', '24pt'] as const;
const DEVIATIONS = ['sample', 'population'] as const satisfies readonly Deviation[];
const MOST_MARKS = 200;

const ask = (meaning: string) => ({ takes: 'the id of a family, see slidewire families', meaning, words: families.map(({ id }) => id) });
const marksBy = (names: readonly string[], what: string) =>
  z.record(z.string(), wholeNumber(0, MOST_MARKS)).optional().register(entries, { takes: `a whole number of marks up to ${MOST_MARKS} for each of ${names.join(', ')}`, meaning: `marks by ${what}; with total, what is left out is free` });

const TOPICS = [...new Set(families.flatMap(({ tags }) => tags))];

const paperSchema = z.strictObject({
  title: text(120, 1).register(entries, { takes: 'a line of up to 120 letters', meaning: 'heading of every page' }),
  time: text(60).prefault('').register(entries, { takes: 'a few words such as 40 minutes', meaning: 'time for a candidate' }),
  instructions: z.array(text(300, 1)).max(20).optional().register(entries, { takes: 'up to 20 lines', meaning: 'in place of the usual instructions' }),
  versions: wholeNumber(1, 26).prefault('2').register(entries, { takes: 'a whole number from 1 to 26', meaning: 'parallel versions, A to Z' }),
  class: text(1000, 1).optional().register(entries, { takes: 'the path of a CSV file with the columns roll and name', meaning: 'a paper of their own for each candidate, in place of versions; the path starts from the folder of this file' }),
  marks: z
    .strictObject({
      total: wholeNumber(1, MOST_MARKS).optional().register(entries, { takes: `a whole number from 1 to ${MOST_MARKS}`, meaning: 'marks in all' }),
      topics: marksBy(TOPICS, 'topic'),
      levels: marksBy(LEVELS, 'difficulty, 1 easy to 3 hard'),
      forms: marksBy(FORMS, 'form'),
    })
    .prefault({})
    .register(entries, { takes: 'total, topics, levels and forms', meaning: 'what the marks must come to; questions are chosen for what the named ones leave' }),
  questions: z.array(z.unknown()).max(100).optional().register(entries, { takes: 'a list of questions such as "- {family: balance, form: choice}"', meaning: 'questions that the paper has for certain' }),
  used: text(1000, 1).optional().register(entries, { takes: 'the path of a file', meaning: 'questions that were set already, and are not set again; the paper adds its own' }),
  sd: choice(DEVIATIONS).prefault('sample').register(entries, { ...oneOf(DEVIATIONS), meaning: 'which standard deviation is asked for; printed on the paper' }),
  seed: text(100, 1).optional().register(entries, { takes: 'a word or a number of up to 100 letters', meaning: 'makes the same paper again; without it nobody can' }),
  paper: choice(PAPERS).prefault('A4').register(entries, { ...oneOf(PAPERS), meaning: 'size of the paper' }),
  size: choice(SIZES).prefault('normal').register(entries, { ...oneOf(SIZES), meaning: 'size of the print' }),
  decimal: choice(DECIMALS).prefault('point').register(entries, { ...oneOf(DECIMALS), meaning: 'the decimal sign in all that is printed' }),
});

/** A question paper as its file asks for it. */
export interface PaperOrder extends Omit<z.output<typeof paperSchema>, 'questions' | 'marks'> {
  demands: Demands;
  questions: Named[];
}

/** Reads PAPER.yaml; UserMistake with every problem, each with its row and entry. */
export function readPaper(source: string, file: string): PaperOrder {
  const { values, whereIs, mistakes, gather } = entriesFile(source, file);
  const paper = gather(() => checkEntries(paperSchema, values, values, whereIs));
  if (paper) mistakes.push(...unknownNames(paper.marks, whereIs));
  const questions = (paper?.questions ?? []).flatMap((one, i) => gather(() => named(one, paper!.sd, (path) => whereIs(['questions', i, ...path]))) ?? []);
  if (paper && Object.keys(paper.marks).length === 0 && questions.length === 0 && mistakes.length === 0) mistakes.push({ file, what: 'asks for nothing; give questions, or marks such as "marks: {total: 30}"' });
  mistakes.push(...twice(questions.flat(), file));
  if (paper?.class !== undefined && 'versions' in Object(values)) mistakes.push({ ...whereIs(['versions']), what: 'each candidate of the class has a paper of their own; leave out versions, or class' });
  if (mistakes.length > 0) throw allMistakes(mistakes);
  const { marks, ...rest } = paper!;
  return { ...rest, demands: marks as Demands, questions: questions.flat() };
}

function unknownNames(marks: Partial<Record<'topics' | 'levels' | 'forms', Record<string, number> | undefined>>, whereIs: WhereIs): Mistake[] {
  const known = { topics: TOPICS, levels: LEVELS, forms: FORMS } as const;
  return (['topics', 'levels', 'forms'] as const).flatMap((part) =>
    Object.keys(marks[part] ?? {}).flatMap((name) => {
      const names: readonly string[] = known[part];
      return names.includes(name) ? [] : [{ ...whereIs(['marks', part, name]), what: `there is no such name${(part !== 'levels' && didYouMean(name, names)) || `; there are ${names.join(', ')}`}` }];
    }),
  );
}

/** One entry of the list, as often as it counts. */
function named(values: unknown, sd: Deviation, whereIs: WhereIs): Named[] {
  const id = typeof values === 'object' && values !== null ? (values as { family?: unknown }).family : undefined;
  const family = families.some((one) => one.id === id) ? familyNamed(String(id)) : undefined;
  const { count, ask: direction, form, marks, family: name, ...arranged } = checkEntries(questionSchema(family), values, values, whereIs);
  const chosen = Object.fromEntries(Object.entries(arranged).filter(([, value]) => value !== undefined)) as Record<string, string>;
  const one: Named = { family: familyNamed(name), choice: { ...chosenFor(familyNamed(name), sd), ...chosen }, ...(direction !== undefined && { ask: direction }), ...(form !== undefined && { form: form as PartForm }), ...(marks !== undefined && { marks }) };
  return Array.from({ length: count }, () => one);
}

function questionSchema(family: Family | undefined) {
  const arrangements = Object.entries(family?.choices ?? {}).map(([name, values]) => [name, choice(values).optional().register(entries, { ...oneOf(values), meaning: 'the arrangement' })] as const);
  return z.strictObject({
    ...(Object.fromEntries(arrangements) as Record<string, z.ZodOptional<ReturnType<typeof choice<string>>>>),
    family: choice(families.map(({ id }) => id)).register(entries, ask('the family of the question')),
    ask: text(60, 1).optional().register(entries, { takes: 'a direction of the family', meaning: 'what is asked' }),
    form: choice(PART_FORMS).optional().register(entries, { ...oneOf(PART_FORMS), meaning: 'how it is put' }),
    marks: wholeNumber(1, 20).optional().register(entries, { takes: 'a whole number from 1 to 20', meaning: 'in place of the one mark of a question with options' }),
    count: wholeNumber(1, 20).prefault('1').register(entries, { takes: 'a whole number from 1 to 20', meaning: 'how many such questions' }),
  });
}

/** The same question under two entries is one too many; several on purpose are counted under one. */
function twice(questions: readonly Named[], file: string): Mistake[] {
  const keys = questions.map(({ family, ...rest }) => JSON.stringify([family.id, rest]));
  const firsts = questions.map((one, place) => questions.findIndex((other, i) => other !== one && keys[i] === keys[place]));
  return firsts.flatMap((first, place) => (first >= 0 && first < place && questions.indexOf(questions[place]!) === place ? [{ file, field: 'questions', what: `${questions[place]!.family.id} is asked twice in the same way; leave one out, or write "count: 2"` }] : []));
}
