import type { Expression } from '../quantities/expression.ts';
import { print } from '../quantities/print.ts';
import type { Program } from '../quantities/program.ts';
import { type SpokenWords, fill } from '../quantities/spoken.ts';
import type { Digits, Written } from '../quantities/step.ts';
import { texSymbols } from '../quantities/tex.ts';
import { type Line, equation, expressionLine, quantityLine, symbolLine } from '../quantities/working.ts';
import { round } from '../quantities/written.ts';
import type { AnswerRow } from '../sheets/answers.ts';
import type { Sheet } from '../sheets/sheet.ts';
import type { Choice } from './ways.ts';
import { type Asked, type End, type Ends, whyRanges } from './why.ts';

/** Words for what leads to the ends of a range; blank {choices} in `low` and `high`, {it} in a choice. */
export type ReasonWords = Record<'lead' | 'low' | 'high' | 'choice' | 'tables' | 'everyLowest' | 'everyHighest' | 'bestLine' | 'lineLower' | 'lineHigher' | 'rounded' | 'plain', string>;

/** What leads to the two ends of a range: sentences with what their blanks are filled with. */
export type Reason = Record<'low' | 'high', { sentence: string; blanks: Record<string, Line> }>;

/** Why each answer's range ends where it does, in words; nothing where its ends come from rounding that answer alone. */
export function reasons(work: Asked, spoken: SpokenWords, words: ReasonWords): (id: string, row: number) => Reason | undefined {
  const why = whyRanges(work);
  return (id, row) => {
    const ends = why(id, row);
    return ends.low.choices.length + ends.high.choices.length === 0 ? undefined : reasonOf(work.program, id, ends, spoken, words);
  };
}

/** The answers of a sheet, each with the reason of its range where it has one. */
export function withReasons(answers: readonly AnswerRow[], sheet: Sheet, program: Program, spoken: SpokenWords, words: ReasonWords): (AnswerRow & { why?: Reason })[] {
  const reasonFor = reasons({ sheet, program, own: {} }, spoken, words);
  return answers.map((answer) => {
    const why = reasonFor(answer.id, answer.row);
    return { ...answer, ...(why && { why }) };
  });
}

function reasonOf(program: Program, id: string, ends: Ends, spoken: SpokenWords, words: ReasonWords): Reason {
  return { low: said('low', partsOf(program, id, ends.low, spoken), words), high: said('high', partsOf(program, id, ends.high, spoken), words) };
}

/** Each choice is a blank of its own, so that a line may end between two. */
function said(end: keyof Reason, parts: readonly Part[], words: ReasonWords): Reason['low'] {
  const choices = parts.map(({ say }, i) => fill(words[say], { it: `{it${i}}` })).join(', ');
  return { sentence: fill(words[end], { choices }), blanks: Object.fromEntries(parts.flatMap(({ it }, i) => (it ? [[`it${i}`, it]] : []))) };
}

interface Part {
  say: Exclude<keyof ReasonWords, 'lead' | keyof Reason>;
  it?: Line;
}

function partsOf(program: Program, id: string, { value, before, choices }: End, spoken: SpokenWords): Part[] {
  const step = program.step(id);
  if (step.kind !== 'relation' && step.kind !== 'summary') throw new Error(`${id} is no answer`);
  const rounded = value === before ? undefined : shortly(value, step.digits);
  const parts = choices.filter(({ is }, i) => is !== 'tables' || choices.findIndex((other) => other.is === 'tables') === i).map((choice) => partOf(program, choice, step, spoken));
  if (rounded !== undefined && Number(rounded) === value) return [...parts, { say: 'rounded', it: quantityLine(rounded, '', spoken) }];
  return parts.length === 0 ? [{ say: 'plain' }] : parts;
}

function partOf(program: Program, choice: Choice, { unit, digits }: { unit: string; digits: Digits }, spoken: SpokenWords): Part {
  switch (choice.is) {
    case 'input': {
      const of = program.step(choice.id);
      const value = quantityLine(shortly(choice.value, 'digits' in of ? of.digits : digits), of.unit, spoken);
      return { say: 'choice', it: equation(spoken, symbolLine(program, choice.id, spoken), value) };
    }
    case 'between':
      return { say: 'choice', it: equation(spoken, onOneLine(program, choice.expression, spoken), quantityLine(shortly(choice.value, choice.digits), '', spoken)) };
    case 'pi':
      return { say: 'choice', it: equation(spoken, { tex: '\\pi', spoken: spoken.pi }, { tex: choice.value, spoken: choice.value }) };
    case 'tables':
      return { say: 'tables' };
    case 'each':
      return { say: choice.end === 'lowest' ? 'everyLowest' : 'everyHighest', it: symbolLine(program, choice.id, spoken) };
    case 'best line':
      return { say: 'bestLine', it: quantityLine(shortly(choice.value, digits), unit, spoken) };
    case 'by eye':
      return { say: choice.end === 'lowest' ? 'lineLower' : 'lineHigher', it: quantityLine(round(choice.value, { figures: 3 }, 'even'), unit, spoken) };
  }
}

/** A fraction among small print stands on the line. */
function onOneLine(program: Program, expression: Expression, words: SpokenWords): Line {
  const symbols = texSymbols((id) => program.step(id).tex);
  const tex = print(expression, { ...symbols, quotient: (left, right) => `${left}/${right}`, barGroups: false });
  return { ...expressionLine(program, expression, words), tex };
}

const MOST_MORE = 2;

/** A value with its own digits, or with as many more as it takes, but no more than tell. */
function shortly(value: number, digits: Digits): Written {
  for (let more = 0; ; more++) {
    const finer = 'decimals' in digits ? { decimals: digits.decimals + more } : { figures: digits.figures + more };
    const written = round(value, finer, 'even');
    if (more === MOST_MORE || Number(written) === value) return written;
  }
}
