import type { Line } from '../quantities/working.ts';

/** More terms than this do not stand side by side in a column of the page. */
const ABREAST = 4;

/** A fraction with a long sum above the line; the terms are plain numbers or brackets, without a fraction of their own. */
const LONG_SUM = /\\frac\{([^{}\\]+(?: \+ [^{}\\]+)+)\}/g;

/** The same line with a long sum above a fraction bar set in rows, as one would write it by hand. */
export function brokenSum({ tex, spoken }: Line): Line {
  return { spoken, tex: tex.replace(LONG_SUM, (whole, sum: string) => (sum.split(' + ').length > ABREAST ? `\\frac{${inRows(sum.split(' + '))}}` : whole)) };
}

function inRows(terms: string[]): string {
  const rows: string[] = [];
  for (let i = 0; i < terms.length; i += ABREAST) rows.push(`${i > 0 ? '{}+ ' : ''}${terms.slice(i, i + ABREAST).join(' + ')}`);
  return `\\begin{gathered}${rows.join(' \\\\ ')}\\end{gathered}`;
}
