import { type SpokenWords, fill } from '../quantities/spoken.ts';
import type { Computed, Written } from '../quantities/step.ts';
import { type Line, conversionLines, formulaLine, quantityLine, symbolLine, workedLine } from '../quantities/working.ts';
import { round, roundOutward } from '../quantities/written.ts';
import { plainText } from './plain-text.ts';
import type { Question } from './question.ts';
import { type FamilyWords, type QuestionWords, spokenSymbol } from './words.ts';

/** A formula to be seen, heard, or written in a terminal. */
export interface Shown extends Line {
  text: string;
}

/** A sentence of content and what its blanks are filled with. */
export interface Sentence {
  sentence: string;
  blanks: Readonly<Record<string, Shown | string>>;
}

/** A question with its key, as templates show it. */
export interface QuestionView {
  family: string;
  direction: string;
  choice: Readonly<Record<string, string>>;
  title: string;
  stem: Sentence;
  ask: Sentence;
  givens: { id: string; value: Shown }[];
  steps: { id: string; say?: Sentence; lines: Shown[]; marks: number }[];
  answers: { id: string; symbol: Shown; value: Shown; fraction?: string; low: Shown; high: Shown }[];
  /** Answers in words. */
  verdicts: { id: string; choice: string; say: Sentence }[];
  slips: { id: string; values: Shown[]; say: Sentence }[];
  marks: number;
  difficulty: Question['difficulty'];
  tags: string[];
}

/** Which of the wordings is taken, counted from 0; beyond the last it starts again. */
export interface Wording {
  stem: number;
  ask: number;
}

/** Puts a worked question into the words of a language. */
export function questionView(question: Question, family: FamilyWords, shared: QuestionWords, wording: Wording = { stem: 0, ask: 0 }): QuestionView {
  const { direction, marks, difficulty } = question;
  const words = spokenFor(question, shared);
  const symbols = symbolBlanks(question, family, shared);
  const say = (sentence: string): Sentence => ({ sentence, blanks: symbols });
  const stems = stemsFor(direction, family);
  const asks = family.asks[direction.name] ?? missing(direction.family.id, `asks of ${direction.name}`);
  const [stem, ask] = firstTold(stems[wording.stem % stems.length]!, asks[wording.ask % asks.length]!, symbols, valueBlanks(question, words));
  return {
    family: direction.family.id,
    direction: direction.name,
    choice: direction.choice,
    title: family.title,
    stem,
    ask,
    givens: direction.givens.map((id) => ({ id, value: equation(question, id, words) })),
    steps: direction.ask.steps.flatMap(({ id, decide, marks: method = 1 }) => {
      const sentence = family.steps?.[`${direction.name} ${id}`] ?? family.steps?.[id];
      return [{ id, ...(sentence !== undefined && { say: say(sentence) }), lines: decide ? [] : stepLines(question, id, words), marks: method }];
    }),
    answers: question.answers.map((answer) => answerView(question, answer, words)),
    verdicts: Object.entries(question.verdicts).map(([id, choice]) => ({ id, choice, say: say(family.verdicts?.[id]?.[choice] ?? missing(direction.family.id, `verdicts ${id} ${choice}`)) })),
    slips: question.slips.map(({ id, answers }) => ({
      id,
      values: Object.entries(answers).map(([find, value]) => shown(quantityLine(threeFigures(value), question.program.step(find).unit, words))),
      say: say(family.slips?.[id] ?? shared.slips[id] ?? missing(direction.family.id, `slips ${id}`)),
    })),
    marks,
    difficulty,
    tags: direction.family.tags.map((tag) => shared.tags[tag] ?? missing('questions', `tags ${tag}`)),
  };
}

/** Wordings of the situation: of the direction in this arrangement, of the direction, of the arrangement, or those that serve any. */
function stemsFor({ name, choice, family }: Question['direction'], { stems }: FamilyWords): string[] {
  const values = Object.values(choice);
  const keys = [...values.map((value) => `${name} ${value}`), name, ...values, 'any'];
  return keys.map((key) => stems[key]).find((found) => found !== undefined) ?? missing(family.id, `stems of ${name}`);
}

/** A sentence for a terminal. */
export function sentenceText({ sentence, blanks }: Sentence): string {
  const texts = Object.fromEntries(Object.entries(blanks).map(([name, filling]) => [name, typeof filling === 'string' ? filling : filling.text]));
  return fill(sentence, texts);
}

function missing(family: string, what: string): never {
  throw new Error(`the content of ${family} has no ${what}`);
}

const threeFigures = (value: number) => round(value, { figures: 3 }, 'even');

/** A number below a symbol stands in braces, so that formulas which differ in their numbers alone share one shape. */
function shown(line: Line): Shown {
  return { ...line, tex: line.tex.replace(/_(\d)/g, '_{$1}'), text: plainText(line.tex) };
}

/** The speaker's words with this question's own symbols. */
export function spokenFor({ program }: Question, shared: QuestionWords): SpokenWords {
  const symbols = program.steps.flatMap((step) => (step.kind === 'verdict' ? [] : [[step.id, spokenSymbol(step.tex, shared)]]));
  return { ...shared.spoken, symbols: Object.fromEntries(symbols) as Record<string, string> };
}

export type Blanks = Record<string, Shown | string>;

/** Symbols of the quantities, and the words of the arrangement. */
export function symbolBlanks({ direction }: Question, family: FamilyWords, shared: QuestionWords): Blanks {
  const symbols = Object.entries(direction.body.quantities).map(([id, { tex = id }]): [string, Shown] => [id, shown({ tex, spoken: spokenSymbol(tex, shared) })]);
  const arranged = Object.entries(direction.choice).flatMap(([name, value]) => Object.entries(family.choices?.[name]?.[value] ?? shared.choices[name]?.[value] ?? { [name]: value }));
  return Object.fromEntries([...symbols, ...arranged]);
}

/** What is given, with its value; of what has no symbol, the value alone. */
function valueBlanks(question: Question, words: SpokenWords): Blanks {
  const { body, givens, fixed } = question.direction;
  return Object.fromEntries([...givens, ...fixed].map((id) => [id, (body.quantities[id]!.tex === undefined ? values : equation)(question, id, words)]));
}

/** The situation and what is asked: a given stands with its value where it is told first, and by its symbol after. */
function firstTold(stem: string, ask: string, symbols: Blanks, given: Blanks): [Sentence, Sentence] {
  const told = new Set<string>();
  const blanks: Blanks = { ...symbols };
  const mark = (sentence: string) =>
    sentence.replace(/\{(\w+)\}/g, (blank, id: string) => {
      const value = given[id];
      if (value === undefined || told.has(id)) return blank;
      told.add(id);
      blanks[`${id}_told`] = value;
      return `{${id}_told}`;
    });
  return [{ sentence: mark(stem), blanks }, { sentence: mark(ask), blanks }];
}

/** 'P = 12 Ω'; of a column '5.50 mm, 5.55 mm'. */
function equation(question: Question, id: string, words: SpokenWords): Shown {
  const value = values(question, id, words);
  const symbol = shown(symbolLine(question.program, id, words));
  if ([question.readings[id]].flat().length > 1) return value;
  return { tex: `${symbol.tex} = ${value.tex}`, spoken: fill(words.equals, { left: symbol.spoken, right: value.spoken }), text: `${symbol.text} = ${value.text}` };
}

function values({ readings, direction }: Question, id: string, words: SpokenWords): Shown {
  const { unit } = direction.body.quantities[id]!;
  const lines = [readings[id]!].flat().map((written: Written) => quantityLine(written, unit, words));
  return shown({ tex: lines.map(({ tex }) => tex).join(',\\;'), spoken: lines.map(({ spoken }) => spoken).join(', ') });
}

/** The formula, what is converted, and the numbers put in, row by row. */
function stepLines({ program, values: all }: Question, id: string, words: SpokenWords): Shown[] {
  const step = program.step(id) as Computed;
  const rows = all.written.get(id)!.length;
  return [
    formulaLine(program, step, words),
    ...(step.kind === 'relation' ? conversionLines(program, step, all, words) : []),
    ...Array.from({ length: rows }, (_, row) => workedLine(program, step, row, all, words)),
  ].map(shown);
}

function answerView({ program }: Question, { id, shown: written, fraction, accept }: Question['answers'][number], words: SpokenWords): QuestionView['answers'][number] {
  const { unit } = program.step(id);
  const [low, high] = roundOutward(accept, { figures: 4 });
  const value = quantityLine(written, unit, words);
  const line = (number: Written) => shown(quantityLine(number, unit, words));
  return { id, symbol: shown(symbolLine(program, id, words)), value: shown(value), ...(fraction !== undefined && { fraction }), low: line(low), high: line(high) };
}
