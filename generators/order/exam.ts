import { z } from 'zod';
import { allMistakes } from './all-mistakes.ts';
import { checkEntries, checkOrder } from './check.ts';
import { choice, entries, oneOf, text, wholeNumber } from './fields.ts';
import type { Known } from './known.ts';
import type { Order } from './schema.ts';
import { entriesFile } from './entries-file.ts';

const DRAWS = ['beforehand', 'by hand'] as const;
const PAPERS = ['A4', 'Letter'] as const;

/** A head of the award sheet with the marks it carries. */
const head = z.strictObject({
  for: text(60, 1).register(entries, { takes: 'a few words', meaning: 'what the marks are for' }),
  marks: wholeNumber(1, 100).register(entries, { takes: 'a whole number from 1 to 100', meaning: 'the most that can be awarded' }),
});

const examSchema = z.strictObject({
  title: text(120).prefault('').register(entries, { takes: 'a line of up to 120 letters', meaning: 'heading of every page' }),
  class: text(1000, 1).register(entries, { takes: 'the path of a CSV file with the columns roll and name', meaning: 'the candidates; the path starts from the folder of this file' }),
  batch: wholeNumber(1, 60).prefault('24').register(entries, { takes: 'a whole number from 1 to 60', meaning: 'candidates in the laboratory at a time, at most' }),
  minutes: wholeNumber(10, 300).prefault('90').register(entries, { takes: 'a whole number from 10 to 300', meaning: 'time for a candidate' }),
  draw: choice(DRAWS).prefault('beforehand').register(entries, { ...oneOf(DRAWS), meaning: 'whether the lots are drawn here, or by the candidates from the printed slips' }),
  paper: choice(PAPERS).prefault('A4').register(entries, { ...oneOf(PAPERS), meaning: 'size of the paper' }),
  tasks: z.array(z.unknown()).min(1).max(20).register(entries, { takes: 'one or more tasks, each with the entries of an order (experiment, wires, box …)', meaning: 'what is set' }),
  marks: z.array(head).min(1).max(12).optional().register(entries, { takes: 'up to 12 lines such as "- {for: readings, marks: 8}"', meaning: 'heads of the award sheet' }),
  seed: text(100, 1).optional().register(entries, { takes: 'a word or a number of up to 100 letters', meaning: 'draws the same lots again; without it the draw is secret until it is made' }),
});

/** A practical examination as its file asks for it. */
export interface Exam extends Omit<z.output<typeof examSchema>, 'tasks'> {
  tasks: Order[];
}

/** Reads EXAM.yaml; UserMistake with every problem, each with its row and entry. */
export function readExam(source: string, file: string, known: Known): Exam {
  const { values, whereIs, mistakes, gather } = entriesFile(source, file);
  const exam = gather(() => checkEntries(examSchema, values, values, whereIs));
  const tasks = (exam?.tasks ?? []).map((task, i) => gather(() => checkOrder(task, known, (path) => whereIs(['tasks', i, ...path]))));
  if (mistakes.length > 0) throw allMistakes(mistakes);
  return { ...exam!, tasks: tasks as Order[] };
}
