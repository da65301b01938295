import katex from 'katex';
import type { Line } from '../quantities/working.ts';
import { oneLine } from './one-line.ts';

const shapes = new Map<string, string[]>();

/**
 * TeX as MathML, which the browser lays out itself and screen readers walk; without KaTeX's copy of the TeX.
 * Formulas that differ in their numbers alone share one shape: KaTeX renders it once, the numbers are put in after.
 */
export function mathml(tex: string): string {
  const numbers = tex.match(NUMBER) ?? [];
  const shape = tex.replace(NUMBER, '#');
  const parts = shapes.get(shape) ?? split(tex);
  shapes.set(shape, parts);
  return parts.map((part, i) => part + (numbers[i] ?? '')).join('');
}

const NUMBER = /\d+(?:\.\d+)?/g;

/** The MathML between the numbers of a formula. */
function split(tex: string): string[] {
  let count = 0;
  const marked = tex.replace(NUMBER, () => `7${1000 + count++}7`);
  const parts = render(marked).split(/(?<=<mn>)7\d{4}7(?=<\/mn>)/);
  if (parts.length !== count + 1) throw new Error(`a number in "${tex}" needs braces round it`);
  return parts;
}

function render(tex: string): string {
  const html = katex.renderToString(tex, { output: 'mathml', throwOnError: true, strict: 'error' });
  const math = /<math[\s\S]*<\/math>/.exec(html)![0].replace(/<annotation[\s\S]*?<\/annotation>/, '');
  // A minus after an equals sign belongs to what follows; the browser would set it off as a difference.
  return lean(math).replaceAll('<mo>=</mo><mo>−</mo>', '<mo>=</mo><mo form="prefix">−</mo>');
}

/**
 * The same formula in fewer elements: the browser's time for layout, and for the tags of the PDF, goes by their number.
 * Rows of one piece are that piece; upright letters and spaces beside each other are one text.
 */
function lean(math: string): string {
  const bare = math
    .replace(/<semantics><mrow>([^]*)<\/mrow><\/semantics>/, '$1')
    .replace(/<mi mathvariant="normal">([^<]*)<\/mi>/g, '<mtext>$1</mtext>');
  return untilSettled(bare, (text) => text.replace(/<\/mtext><mtext>/g, '').replace(/<mrow>(<(m[a-z]+)[^>]*>[^<]*<\/\2>)<\/mrow>/g, '$1'));
}

function untilSettled(text: string, change: (text: string) => string): string {
  const changed = change(text);
  return changed === text ? text : untilSettled(changed, change);
}

/** A number, a unit, or a number with its unit. */
const PLAIN = /^<math[^>]*>(?:<mn>([^<]*)<\/mn>)?(?:<mtext>([^<]*)<\/mtext>)?<\/math>$/;

/**
 * A formula for print, which may be broken before its second equals sign: the span gives the tagged PDF a Figure whose
 * text alternative is the formula read aloud. What fits a line is text, at a third of the cost; a plain number with its
 * unit needs no other words.
 */
export function printedFormula(line: Line, escape: (text: string) => string, style: 'inline' | 'display' = 'inline'): string {
  // A pure number has no unit to show, or to be read aloud.
  if (line.tex === '') return '';
  const [left, right, ...further] = line.tex.split(' = ');
  const pieces = [right === undefined ? left! : `${left} = ${right}`, ...further.map((side) => `= ${side}`)];
  const sides = pieces.map(mathml);
  const plain = sides.length === 1 ? PLAIN.exec(sides[0]!) : null;
  if (plain) return `<span class="plain">${plain[1] ?? ''}${plain[2] ?? ''}</span>`;
  const shown = sides.map((side) => oneLine(side) ?? side).join('<wbr>');
  const math = style === 'display' ? shown.replaceAll('<math', '<math displaystyle="true"') : shown;
  return `<span class="math" role="img" aria-label="${escape(line.spoken)}">${math}</span>`;
}
