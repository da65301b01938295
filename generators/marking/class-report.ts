import type { Program } from '../quantities/program.ts';
import { type SpokenWords, fill } from '../quantities/spoken.ts';
import { type Line, symbolLine } from '../quantities/working.ts';
import { round } from '../quantities/written.ts';
import { histogram, lyingBars } from './charts.ts';
import type { Column } from './columns.ts';
import type { CopyQuestion } from './copies.ts';
import { type CopyTable, copyTable } from './copy-table.ts';
import { nameWithSitting, sum } from './feedback.ts';
import { headOf, rowName } from './heads.ts';
import type { StudentMarks } from './mark-class.ts';
import { type NearMiss, nearMisses } from './near-misses.ts';
import { type Change, type MarkingRecord, changes } from './record.ts';
import { shownMarks } from './shown.ts';
import { middles, sharesEarned, slipCounts, spread } from './tally.ts';
import { type MarkingWords, slipWords } from './words.ts';

/** All that a class page is made from. */
export interface ClassMarks {
  students: readonly StudentMarks[];
  columns: readonly Column[];
  full: number;
  scheme: string;
  copies: readonly CopyQuestion[];
  /** Nothing where the class is marked for the first time. */
  changes?: readonly string[];
  programFor(student: StudentMarks): Program;
}

export interface ClassPage {
  template: 'class';
  foot: string;
  scheme: string;
  marked: string;
  middles: string;
  charts: { heading: string; svg: string }[];
  noSlips: boolean;
  columns: { symbol: Line; row?: number | string }[];
  rows: { roll: string; name: string; code: string; marks: string[]; total: string; note: string }[];
  changes?: string[];
  nearMisses: NearMiss[];
  copies: CopyTable[];
}

export function classPage(of: ClassMarks, spoken: SpokenWords, words: MarkingWords): ClassPage {
  const { students, columns, full } = of;
  const said = words.class;
  const marked = students.filter(({ absent }) => !absent);
  const program = of.programFor(students[0]!);
  const { mean, median } = marked.length > 0 ? middles(marked) : { mean: 0, median: 0 };
  const slips = slipCounts(marked);
  return {
    template: 'class',
    foot: '',
    scheme: fill(said.scheme, { scheme: of.scheme }),
    marked: fill(said.marked, { marked: marked.length, all: students.length }),
    middles: fill(said.mean, { mean: round(mean, { decimals: 1 }, 'even'), median: round(median, { decimals: 1 }, 'even'), full: shownMarks(full) }),
    charts: marked.length === 0 ? [] : [distribution(marked, full, words), hardest(marked, columns, spoken, words), ...(slips.length > 0 ? [commonest(slips, words)] : [])],
    noSlips: slips.length === 0,
    columns: columns.map(({ id, row, inTable, rows }) => ({ symbol: symbolLine(program, id, spoken), ...(inTable && { row: rowName(row, rows) }) })),
    rows: students.map((student) => row(student, words)),
    ...(of.changes && { changes: [...of.changes] }),
    nearMisses: nearMisses(marked, of.programFor, spoken, words),
    copies: of.copies.map((question) => copyTable(question, of.programFor, spoken, words)),
  };
}

function row({ issue, answers, total, absent, incomplete }: StudentMarks, words: MarkingWords): ClassPage['rows'][number] {
  const { class: said } = words;
  return {
    roll: issue.roll,
    name: nameWithSitting(issue, words),
    code: issue.code,
    marks: answers.map(({ earned, entry }) => (entry.is === 'not entered' ? '' : shownMarks(sum(earned)))),
    total: absent ? '' : shownMarks(total),
    note: absent ? said.absent : incomplete ? said.incomplete : '',
  };
}

function distribution(marked: readonly StudentMarks[], full: number, { class: said }: MarkingWords) {
  const { counts, edges } = spread(marked, full);
  const bars = counts.flatMap((count, i) => (count === 0 ? [] : [fill(said.distributionBar, { count, from: edges[i]!, to: edges[i + 1]! })]));
  const chart = { counts, edges: edges.map(String), xTitle: said.marksAxis, yTitle: said.studentsAxis };
  return { heading: said.distribution, svg: histogram('distribution', chart, fill(said.distributionAlt, { bars: bars.join(', ') })) };
}

function hardest(marked: readonly StudentMarks[], columns: readonly Column[], spoken: SpokenWords, words: MarkingWords) {
  const { class: said } = words;
  const bars = sharesEarned(marked)
    .map((share, i) => ({ label: headOf(columns[i]!, spoken.symbols, words.heads), value: share, says: `${round(100 * share, { decimals: 0 }, 'even')} %` }))
    .sort((a, b) => a.value - b.value);
  const alternative = bars.map(({ label, value }) => fill(said.hardestBar, { label, share: round(100 * value, { decimals: 0 }, 'even') })).join(', ');
  return { heading: said.hardest, svg: lyingBars('hardest', bars, 1, fill(said.hardestAlt, { bars: alternative })) };
}

/** More bars than these are a list, not a picture. */
const MOST_BARS = 10;

function commonest(slips: ReturnType<typeof slipCounts>, words: MarkingWords) {
  const { class: said } = words;
  const named = slips.filter(({ slip }) => slip !== '').slice(0, MOST_BARS);
  // What nothing explains is no slip, and stands below those that have a name.
  const bars = [...named, ...slips.filter(({ slip }) => slip === '')].map(({ slip, students }) => ({ label: slip === '' ? said.unexplained : slipName(slip, words), value: students, says: String(students) }));
  const alternative = bars.map(({ label, value }) => fill(said.commonestBar, { label, count: value })).join(', ');
  return { heading: said.commonest, svg: lyingBars('commonest', bars, Math.max(...bars.map(({ value }) => value)), fill(said.commonestAlt, { bars: alternative })) };
}

const slipName = (slip: string, words: MarkingWords) => slipWords(words, slip).name ?? slip;

/** What another marking left different, a sentence each; another scheme first. */
export function changesInWords(before: MarkingRecord, after: MarkingRecord, words: MarkingWords): string[] {
  const { class: said } = words;
  const gone = before.heads.filter((head) => !after.heads.includes(head));
  return [
    ...(before.scheme === after.scheme ? [] : [fill(said.otherScheme, { before: before.scheme, after: after.scheme })]),
    ...(gone.length === 0 ? [] : [fill(said.gone, { answers: gone.join(', ') })]),
    ...changes(before, after).map((change) => changeInWords(change, words)),
  ];
}

/** One change as a sentence. */
function changeInWords({ roll, code, head, before, after }: Change, { class: said }: MarkingWords): string {
  const of = ({ typed, marks }: Change['before']) => (typed === undefined ? fill(said.totalMarks, { marks: shownMarks(marks) }) : fill(said.typedMarks, { typed, marks: shownMarks(marks) }));
  return fill(said.change, { roll, code, head: head ?? said.total, before: of(before), after: of(after) });
}
