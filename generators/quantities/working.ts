import { type Values, at, writtenInto } from './evaluate.ts';
import type { Expression } from './expression.ts';
import { lineNumbers, riseOverRun } from './line-working.ts';
import { print } from './print.ts';
import type { Program } from './program.ts';
import type { Computed, Relation, Summary, Written } from './step.ts';
import { type SpokenWords, fill, spoken, spokenNumber, spokenSubstituted } from './spoken.ts';
import { texNumber, texSubstituted, texSymbols } from './tex.ts';
import { unit } from './unit.ts';

/** A formula to be seen and to be heard. */
export interface Line {
  tex: string;
  spoken: string;
}

/** A value with its unit: '2.63 Ω'. */
export function quantityLine(written: Written, unitName: string, words: SpokenWords): Line {
  const { tex } = unit(unitName);
  const number = texNumber(written).text;
  // Braces keep a minus at its number: without them it would stand off like a difference.
  const tight = number.startsWith('-') ? `{${number}}` : number;
  return { tex: `${tight}${tex && `\\;${tex}`}`, spoken: `${spokenNumber(written, words)} ${words.units[unitName] ?? unitName}`.trim() };
}

/** A quantity's symbol. */
export function symbolLine(program: Program, id: string, words: SpokenWords): Line {
  return { tex: program.step(id).tex, spoken: words.symbols[id] ?? id };
}

/** Sides that are equal, one after the other: 'd = 0.376 mm'. */
export const equation = (words: SpokenWords, ...sides: Line[]): Line => ({
  tex: sides.map((side) => side.tex).join(' = '),
  spoken: sides.reduce((left, side) => ({ tex: '', spoken: fill(words.equals, { left: left.spoken, right: side.spoken }) })).spoken,
});

/** 'X = R (100 − l) / l': the formula in symbols. */
export function formulaLine(program: Program, step: Computed, words: SpokenWords): Line {
  return equation(words, symbolLine(program, step.id, words), inSymbols(program, step, words));
}

function inSymbols(program: Program, step: Computed, words: SpokenWords): Line {
  return step.kind === 'summary' ? summarySymbols(program, step, words) : expressionLine(program, program.compiled(step.id).as.expression, words);
}

/** Any expression on a program's quantities, in symbols. */
export function expressionLine(program: Program, expression: Expression, words: SpokenWords): Line {
  return {
    tex: print(expression, texSymbols((id) => program.step(id).tex)),
    spoken: print(expression, spoken(words, (id) => symbolLine(program, id, words).spoken)),
  };
}

/** The whole line of working for one row: symbol, numbers put in as they are written, value and unit. */
export function workedLine(program: Program, step: Computed, row: number, values: Values, words: SpokenWords): Line {
  const written = at(values.written.get(step.id)!, row);
  const put = substituted(program, step, row, values, words);
  // A line that only takes a value over does not write it twice.
  const between = put.tex === texNumber(written).text ? [] : [put];
  return equation(words, symbolLine(program, step.id, words), ...between, quantityLine(written, step.unit, words));
}

function substituted(program: Program, step: Computed, row: number, values: Values, words: SpokenWords): Line {
  if (step.kind === 'summary') return summaryNumbers(program, step, values, words);
  const { expression } = program.compiled(step.id).as;
  const value = (id: string) => writtenInto(program, step, id, at(values.written.get(id)!, row));
  return {
    tex: print(expression, texSubstituted(value)),
    spoken: print(expression, spokenSubstituted(words, value)),
  };
}

/** The conversions that a relation in SI units makes, one a quantity: 'd = 0.376 mm = 0.376 × 10⁻³ m'. */
export function conversionLines(program: Program, relation: Relation, values: Values, words: SpokenWords): Line[] {
  if (!relation.si) return [];
  return program.compiled(relation.id).as.names.flatMap((id) => {
    const { unit: name } = program.step(id);
    const { tens, coherent } = unit(name);
    if (tens === 0) return [];
    const written = values.written.get(id)![0]!;
    const converted = writtenInto(program, relation, id, written);
    return [equation(words, symbolLine(program, id, words), quantityLine(written, name, words), quantityLine(converted, coherent, words))];
  });
}

function summarySymbols(program: Program, summary: Summary, words: SpokenWords): Line {
  const [x, y] = summary.of.map((id) => symbolLine(program, id, words));
  const by = words.summaries[summary.by];
  if (summary.by === 'mean') return { tex: `\\frac{\\sum ${x!.tex}}{\\text{${words.count}}}`, spoken: fill(by, { x: x!.spoken }) };
  const said = fill(by, { x: x!.spoken, y: y!.spoken });
  if (summary.by !== 'intercept') return { tex: riseOverRun({ x: x!.tex, y: y!.tex }), spoken: said };
  return { tex: withSymbols(by, { x: x!.tex, y: y!.tex }), spoken: said };
}

/** Words with symbols among them: 'intercept of X against t'. */
function withSymbols(sentence: string, symbols: Record<string, string>): string {
  const parts = sentence.split(/\{(\w+)\}/);
  return parts.map((part, i) => (i % 2 === 1 ? symbols[part]! : part === '' ? '' : `\\text{${part}}`)).join('');
}

function summaryNumbers(program: Program, summary: Summary, values: Values, words: SpokenWords): Line {
  const symbols = summarySymbols(program, summary, words);
  const [column, other] = summary.of.map((id) => values.written.get(id)!) as [Written[], Written[]];
  if (summary.by !== 'mean') {
    const [x, y] = summary.of.map((id) => symbolLine(program, id, words).tex) as [string, string];
    const columns = { x: { tex: x, written: column }, y: { tex: y, written: other } };
    return { tex: lineNumbers(summary.by, columns, values.written.get(summary.id)![0]!, summary.digits), spoken: symbols.spoken };
  }
  return { tex: `\\frac{${column.map(bracketed).join(' + ')}}{${column.length}}`, spoken: symbols.spoken };
}

const bracketed = (written: Written) => (written.startsWith('-') ? `(${texNumber(written).text})` : texNumber(written).text);
