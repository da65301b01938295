import type { Mistake } from '../mistake.ts';
import { didYouMean } from '../near-miss.ts';
import { quote } from '../order/quote.ts';
import type { Issue } from '../sheets/issue.ts';

interface Row {
  row: number;
  roll: string;
  code: string;
}

/** The sheet of each row by its code; what is wrong with a row, and who has none. */
export function matchRows(rows: readonly Row[], issues: readonly Issue[]): { issues: (Issue | undefined)[]; mistakes: Mistake[]; notices: string[] } {
  const byCode = new Map(issues.map((issue) => [plainCode(issue.code), issue]));
  const found = rows.map(({ code }) => byCode.get(plainCode(code)));
  if (rows.length === 0) return { issues: [], mistakes: [{ what: 'no answers below the heads; fill in the answers.csv of the pack' }], notices: [] };
  const coded = rows.find(({ code }) => code !== '');
  if (coded && found.every((issue) => issue === undefined)) {
    const { row, code } = coded;
    return { issues: found, mistakes: [{ row, field: 'code', what: `${quote(code)} is no sheet of this ledger, nor is any other code here: these are the answers to another pack; give the ledger of that` }], notices: [] };
  }
  const first = new Map<Issue, number>();
  const mistakes = rows.flatMap((row, i) => mistakesOf(row, found[i], first, issues.map(({ code }) => code)));
  return { issues: found, mistakes, notices: lacking(issues.filter((issue) => !first.has(issue))) };
}

const MOST_NAMED = 10;

/** Who has no row. That is no mistake: a student was away, or the rest is typed later. */
function lacking(issues: readonly Issue[]): string[] {
  const named = issues.slice(0, MOST_NAMED).map(({ roll, code }) => `no answers of roll ${roll}, sheet ${code}: marked as not entered`);
  return issues.length > MOST_NAMED ? [...named, `nor of ${issues.length - MOST_NAMED} more`] : named;
}

function mistakesOf({ row, roll, code }: Row, issue: Issue | undefined, first: Map<Issue, number>, codes: readonly string[]): Mistake[] {
  if (!issue) return [{ row, field: 'code', what: code === '' ? `roll ${roll} stands without its sheet code; fill it in` : `there is no sheet ${quote(code)} in this pack${didYouMean(code.toUpperCase(), codes) || '; put the code right, or leave the row out'}` }];
  const earlier = first.get(issue);
  if (earlier !== undefined) return [{ row, field: 'code', what: `sheet ${issue.code} appears twice (first in row ${earlier}); leave one of them out` }];
  first.set(issue, row);
  return plainRoll(roll) === plainRoll(issue.roll) ? [] : [{ row, field: 'roll', what: `sheet ${issue.code} was issued to roll ${issue.roll}, not to ${quote(roll)}; put the code or the roll right` }];
}

/** Spreadsheets take the zeros from before a number, or put decimals behind it; the code says whose row it is. */
const plainRoll = (roll: string) => roll.normalize('NFC').replace(/\p{Cf}/gu, '').trim().replace(/^0+(?=\d+(?:[.,]0+)?$)/, '').replace(/^(\d+)[.,]0+$/, '$1');

/** Codes have no O, I or L, so that whoever types one has meant 0 or 1; the dash may be left out. */
const plainCode = (code: string) => code.normalize('NFKC').toUpperCase().replace(/[-‐‑‒–—−\s]/g, '').replaceAll('O', '0').replace(/[IL]/g, '1');
