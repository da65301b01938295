import { inputsOf } from '../../marking/slipped.ts';
import type { Own } from '../../quantities/evaluate.ts';
import type { Program } from '../../quantities/program.ts';
import { type SpokenWords, fill } from '../../quantities/spoken.ts';
import type { Line } from '../../quantities/working.ts';
import { plainText } from '../../questions/plain-text.ts';
import type { Question } from '../../questions/question.ts';
import { type QuestionView, sentenceText } from '../../questions/view.ts';
import { workingLines } from '../check.ts';
import type { Place } from '../places.ts';
import { sheetOf } from './places.ts';

/** What is said of the lines on the way to a value. */
export interface HintWords {
  /** Blank {from}: what goes into the line. */
  from: string;
  /** Blank {symbol}: the line that is to be worked out before. */
  first: string;
  /** The names of several quantities, blanks {others} and {last}. */
  list: string;
}

/** 'P, Q and l'. */
export function listed(names: readonly string[], list: string): string {
  return names.length < 2 ? names.join() : fill(list, { others: names.slice(0, -1).join(', '), last: names.at(-1)! });
}

/** The working of a place, with that of each line before it which the student left out. */
export interface WholeWorking {
  lines: Line[];
  hints: number;
  look: string;
  /** The first line that is still open: the place's own, or one on the way. */
  open: string;
}

/** From the first line that the student left out to the value of a place, on the student's own figures in the lines that are there. */
export function wholeWorking({ question, view }: { question: Question; view: QuestionView }, place: Place, own: Own, words: { spoken: SpokenWords; hints: HintWords }): WholeWorking {
  const way = openBefore(question.program, place.id, own);
  const chains = way.map((id) => stepLines(question, id, id === place.id ? place.row : undefined, own, words.spoken));
  const [open] = way as [string];
  const first = open === place.id ? '' : `${fill(words.hints.first, { symbol: symbolOf(question, open) })} `;
  return { lines: chains.flat(), hints: chains[0]!.length - 1, look: `${first}${lookAt(question, view, open, words.hints)}`, open };
}

/** The lines that a value hangs on and that are not filled in, and its own, in their order. */
function openBefore(program: Program, id: string, own: Own): string[] {
  const found = new Set([id]);
  for (const step of [...program.steps].reverse()) {
    if (!found.has(step.id) || (step.kind !== 'relation' && step.kind !== 'summary')) continue;
    for (const input of inputsOf(program, step)) if (own[input] === undefined) found.add(input);
  }
  return program.steps.filter(({ id: each, kind }) => found.has(each) && (kind === 'relation' || kind === 'summary')).map((step) => step.id);
}

function stepLines(question: Question, id: string, row: number | undefined, own: Own, words: SpokenWords): Line[] {
  const linesOf = (at: number) => workingLines(sheetOf(question), question.program, { id, row: at, kind: 'worked' }, own, words);
  if (row !== undefined) return linesOf(row);
  const all = question.values.written.get(id)!.map((_, at) => linesOf(at));
  return [...all[0]!, ...all.slice(1).map((lines) => lines.at(-1)!)];
}

/** The sentence that goes before a line of the key, and what goes into the line. */
function lookAt(question: Question, view: QuestionView, id: string, hints: HintWords): string {
  const { program, direction } = question;
  const step = program.step(id);
  const say = view.steps.find((line) => line.id === id)?.say;
  const told = say ? begun(sentenceText(say)) : '';
  const inputs = (step.kind === 'relation' || step.kind === 'summary' ? inputsOf(program, step) : []).filter((each) => direction.body.quantities[each]!.tex !== undefined);
  const from = fill(hints.from, { from: listed(inputs.map((each) => symbolOf(question, each)), hints.list) });
  return `${told}${from}`;
}

/** A sentence of its own from one that goes before a line: 'From the balance:' or 'and their mean', which the line completes. */
function begun(say: string): string {
  const first = say[0]!.toUpperCase() + say.slice(1);
  return first.endsWith(':') ? `${first.slice(0, -1)}. ` : `${first} … `;
}

const symbolOf = ({ program }: Question, id: string) => plainText(program.step(id).tex);
