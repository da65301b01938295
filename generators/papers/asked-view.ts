import { unit } from '../quantities/unit.ts';
import { plainText } from '../questions/plain-text.ts';
import type { QuestionView, Sentence, Shown } from '../questions/view.ts';
import { type QuestionWords, spokenSymbol } from '../questions/words.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import { followThrough } from './follow.ts';
import type { Made } from './item.ts';

/** Words that questions in parts and cases share. */
export interface PartWords {
  /** Blank {what}. */
  find: string;
  /** The same of what an earlier answer leads to. */
  hence: string;
  /** What each part asks for, by family and quantity. */
  what: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

/** Where an answer is written: 'X = … Ω'. */
export interface AnswerLine {
  symbol: Shown;
  unit: Shown;
}

/** What is right for who goes on from values of their own: the symbols of these, and the lines with them left open. */
export interface FollowView {
  ids: string[];
  from: Shown;
  lines: Shown[];
  inSi: boolean;
}

/** One part of a question in parts. */
export interface AskedView {
  letter: string;
  say: Sentence;
  line: AnswerLine;
  marks: number;
  space: number;
  steps: QuestionView['steps'];
  answer: QuestionView['answers'][number];
  follow?: FollowView;
}

/** Ruled lines of answer space: two a mark. */
export const linesFor = (marks: number): number => 2 * marks;

/** The parts of a question, each with the lines of working up to its answer. */
export function askedViews({ question }: Made, view: QuestionView, shared: QuestionWords, words: PartWords, letters: string): AskedView[] {
  const { ask: { finds, steps }, family } = question.direction;
  const places = finds.map((id) => steps.findIndex((step) => step.id === id));
  return finds.map((id, i): AskedView => {
    const first = i === 0 ? 0 : places[i - 1]! + 1;
    const own = view.steps.slice(first, places[i]! + 1);
    const follow = followView(question, own.map((step) => step.id), view.steps.slice(0, first).map((step) => step.id), shared);
    const leadsOn = follow?.ids.some((one) => finds.includes(one)) ?? false;
    const what = words.what[family.id]?.[id] ?? `{${id}}`;
    const marks = 1 + own.reduce((sum, step) => sum + step.marks, 0);
    return {
      letter: letters[i]!,
      say: toldHere((leadsOn ? words.hence : words.find).replace('{what}', what), view),
      line: answerLine(question, id, view, shared),
      marks,
      space: linesFor(marks),
      steps: own,
      answer: view.answers[i]!,
      ...(follow && { follow }),
    };
  });
}

/** A given that the situation has not told stands with its value. */
function toldHere(sentence: string, { stem, ask: { blanks } }: QuestionView): Sentence {
  const isNew = (id: string) => `${id}_told` in blanks && !stem.sentence.includes(`{${id}_told}`);
  return { sentence: sentence.replace(/\{(\w+)\}/g, (blank, id: string) => (isNew(id) ? `{${id}_told}` : blank)), blanks };
}

/** All parts in one sentence, for where a question is not laid out in parts. */
export const togetherAsked = (asked: readonly AskedView[], { blanks }: Sentence): Sentence => ({ sentence: asked.map(({ letter, say }) => `(${letter}) ${say.sentence}`).join(' '), blanks });

/** The lines that hang on earlier answers of this question, or of earlier parts of a case. */
export function followView(question: Made['question'], lines: readonly string[], earlier: readonly string[], shared: QuestionWords): FollowView | undefined {
  const words = spokenFor(question, shared);
  const found = followThrough(question, lines, earlier, words);
  if (!found) return undefined;
  const symbols = earlier.filter((id) => found.from.includes(id)).map((id) => ({ tex: question.program.step(id).tex, spoken: words.symbols[id] ?? id }));
  return { ids: found.from, from: shown({ tex: symbols.map(({ tex }) => tex).join(',\\;'), spoken: symbols.map(({ spoken }) => spoken).join(', ') }), lines: found.lines.map(shown), inSi: found.inSi };
}

/** Where this answer is written. */
export function answerLine({ program }: Made['question'], id: string, view: QuestionView, shared: QuestionWords): AnswerLine {
  const { unit: name } = program.step(id);
  return { symbol: view.answers.find((answer) => answer.id === id)!.symbol, unit: shown({ tex: unit(name).tex, spoken: shared.spoken.units[name] ?? name }) };
}

function spokenFor({ program }: Made['question'], shared: QuestionWords): SpokenWords {
  return { ...shared.spoken, symbols: Object.fromEntries(program.steps.flatMap((step) => (step.kind === 'verdict' ? [] : [[step.id, spokenSymbol(step.tex, shared)]]))) };
}

/** A number below a symbol stands in braces, so that formulas which differ in their numbers alone share one shape. */
const shown = ({ tex, spoken }: { tex: string; spoken: string }): Shown => ({ tex: tex.replace(/_(\d)/g, '_{$1}'), spoken, text: plainText(tex) });
