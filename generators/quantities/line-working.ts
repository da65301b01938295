import { fitThroughOrigin } from './origin-line.ts';
import type { Digits, Summary, Written } from './step.ts';
import { fitLine, mean } from './summary.ts';
import { texNumber } from './tex.ts';
import { round } from './written.ts';

/** Columns of a line: their symbols in TeX, and their values as they are written. */
interface Columns {
  x: { tex: string; written: readonly Written[] };
  y: { tex: string; written: readonly Written[] };
}

/** 'ΔX/ΔL': how a slope is found on paper. */
export const riseOverRun = ({ x, y }: { x: string; y: string }): string => `\\frac{\\Delta ${y}}{\\Delta ${x}}`;

/**
 * The working of a best-fit line, by least squares, in TeX: the formula, and the numbers that stand in it. They have as
 * few figures as give the written result again.
 */
export function lineNumbers(by: Exclude<Summary['by'], 'mean'>, { x, y }: Columns, result: Written, digits: Digits): string {
  const [xs, ys] = [x.written.map(Number), y.written.map(Number)];
  const sum = (terms: number[]) => terms.reduce((a, b) => a + b, 0);
  const shown = (numbers: readonly number[], work: (numbers: number[]) => number) => leading(numbers, work, result, digits).map((written) => texNumber(written).text);
  const [xMean, yMean] = [mean(xs), mean(ys)];
  const { slope } = by === 'slope through origin' ? fitThroughOrigin(xs, ys) : fitLine(xs, ys);
  switch (by) {
    case 'slope through origin': {
      const sxx = sum(xs.map((value) => value * value));
      const [top, bottom] = shown([slope * sxx, sxx], quotient);
      return `\\frac{\\sum ${x.tex}\\,${y.tex}}{\\sum ${x.tex}^{2}} = \\frac{${top}}{${bottom}}`;
    }
    case 'slope': {
      const sxx = sum(xs.map((value) => (value - xMean) * (value - xMean)));
      const [top, bottom] = shown([slope * sxx, sxx], quotient);
      const off = (tex: string) => `(${tex} - \\overline{${tex}})`;
      return `\\frac{\\sum ${off(x.tex)}${off(y.tex)}}{\\sum ${off(x.tex)}^{2}} = \\frac{${top}}{${bottom}}`;
    }
    case 'intercept': {
      const [level, steep, middle] = shown([yMean, slope, xMean], ([level, steep, middle]) => level! - steep! * middle!);
      return `\\overline{${y.tex}} - ${riseOverRun({ x: x.tex, y: y.tex })}\\,\\overline{${x.tex}} = ${level} - ${steep} \\times ${middle}`;
    }
  }
}

const quotient = ([top, bottom]: number[]) => top! / bottom!;
const FEWEST = 4;
/** A double has no more figures that mean anything. */
const MOST = 13;

/** The numbers with as few figures as lead to the result as it is written. */
function leading(numbers: readonly number[], work: (numbers: number[]) => number, result: Written, digits: Digits): Written[] {
  for (let figures = FEWEST; ; figures++) {
    const written = numbers.map((number) => round(number, { figures }, 'even'));
    if (figures === MOST || round(work(written.map(Number)), digits, 'even') === result) return written;
  }
}
