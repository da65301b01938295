/** How long it takes to mark a class of 2000 with all reports as HTML, once the program is loaded; answers with slips of every kind. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { loadWords } from '../../generators/cli/content.ts';
import { loadMarkingWords } from '../../generators/cli/marking-content.ts';
import { writeReports } from '../../generators/cli/marking-reports.ts';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { readAnswers } from '../../generators/marking/answers-file.ts';
import { columnsOf, fullMarks } from '../../generators/marking/columns.ts';
import { copies } from '../../generators/marking/copies.ts';
import { csvText } from '../../generators/marking/csv-text.ts';
import { headOf } from '../../generators/marking/heads.ts';
import { markClass } from '../../generators/marking/mark-class.ts';
import { marksCsv } from '../../generators/marking/marks-csv.ts';
import { streams } from '../../generators/random.ts';
import { issueSheets, programOf } from '../../generators/sheets/issue.ts';
import { practical } from '../marking/classes.ts';
import { simulate } from '../marking/simulated-class.ts';
import { demo, tables } from '../experiments/demo.ts';
import { median } from './median.ts';

const STUDENTS = Number(process.env['BENCH_STUDENTS'] ?? 2000);
const ROUNDS = Number(process.env['BENCH_ROUNDS'] ?? 3);
/** Sheets are issued in small classes, since keeping 2000 apart takes longer than everything here. */
const CLASS = 25;

const experiment = experimentNamed(demo.experiment);
const issues = Array.from({ length: STUDENTS / CLASS }, (_, part) =>
  issueSheets({ order: demo, experiment, tables, secret: `bench ${part}` }, Array.from({ length: CLASS }, (_, i) => ({ roll: String(part * CLASS + i + 1), name: `Student ${part * CLASS + i + 1}` }))),
).flat();
const columns = columnsOf(practical, experiment, issues.map(({ sheet }) => sheet));
const words = loadWords(demo.language, demo.experiment);
const said = loadMarkingWords(demo.language);
const { symbols } = words.spoken;
const answers = simulate(experiment, { order: demo, issues, columns }, streams('bench').of('marking'));
const heads = [said.heads.roll, said.heads.name, said.heads.code, ...columns.map((column) => headOf(column, symbols, said.heads))];
const file = new TextEncoder().encode(csvText([heads, ...answers.map(({ issue, texts }) => [issue.roll, issue.name, issue.code, ...texts])], 'point'));
const programFor = ({ issue }: { issue: (typeof issues)[number] }) => programOf(experiment, issue.sheet);

const folder = mkdtempSync(join(tmpdir(), 'slidewire-bench-'));
const spent: Record<string, number[]> = {};
/** The processor's time, which says something on a busy machine too. */
const worked: Record<string, number[]> = {};
async function timed<T>(what: string, work: () => T | Promise<T>): Promise<T> {
  const [from, before] = [performance.now(), process.cpuUsage()];
  const made = await work();
  const { user, system } = process.cpuUsage(before);
  (spent[what] ??= []).push((performance.now() - from) / 1000);
  (worked[what] ??= []).push((user + system) / 1e6);
  return made;
}

for (let round = 0; round < ROUNDS; round++) {
  await timed('all of it', async () => {
    const { rows } = await timed('read the answers', () => readAnswers(file, 'answers.csv', issues, { columns, symbols, heads: said.heads, decimal: 'point', words: said }));
    const students = await timed('judge and mark', () => markClass(experiment, issues, rows, columns, practical));
    const asked = await timed('compare sheets', () => copies(students));
    const marks = { students, columns, full: fullMarks(columns), scheme: practical.title, copies: asked, programFor };
    await timed('reports', async () => {
      writeFileSync(join(folder, 'marks.csv'), marksCsv(students, columns, symbols, said, 'point'));
      await writeReports({ folder, order: demo, marks, words, said, per: 4 });
    });
  });
}
rmSync(folder, { recursive: true });
console.log(`a class of ${STUDENTS}, median of ${ROUNDS} rounds, the first with cold code`);
for (const [what, times] of Object.entries(spent)) console.log(`${what.padEnd(18)} ${median(times).toPrecision(3).padStart(6)} s, at first ${times[0]!.toPrecision(3)} s; of the processor ${median(worked[what]!).toPrecision(3)} s, at first ${worked[what]![0]!.toPrecision(3)} s`);
