/**
 * A class of 200 in combined parts: the whole command against the browser printing the same finished HTML alone, and
 * against pdflatex and Typst typesetting the same sheets. Fewer students by BENCH_STUDENTS, other rounds by BENCH_ROUNDS.
 */
import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { abreast } from '../../generators/press/abreast.ts';
import { openPress } from '../../generators/press/print.ts';
import { classWork, layOut, writeClass } from './class-pack.ts';
import { latexParts } from './latex.ts';
import { median } from './median.ts';
import { typstPress } from './typst.ts';

const run = promisify(execFile);
const STUDENTS = Number(process.env['BENCH_STUDENTS'] ?? 200);
const ROUNDS = Number(process.env['BENCH_ROUNDS'] ?? 3);
const PROGRAM = fileURLToPath(new URL('../../generators/cli/slidewire.js', import.meta.url));
const TOGETHER = 'singles: no\n';

const folder = mkdtempSync(join(tmpdir(), 'slidewire-bench-'));
process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
const files = writeClass(folder, STUDENTS, TOGETHER);
const work = classWork(STUDENTS, TOGETHER);
const saved: string[] = [];
await layOut(work, (html, file) => {
  saved.push(join(folder, `${basename(file)}.html`));
  writeFileSync(saved.at(-1)!, html);
});

async function seconds(what: () => Promise<unknown>): Promise<number> {
  const from = performance.now();
  await what();
  return (performance.now() - from) / 1000;
}

async function command(): Promise<void> {
  const out = join(folder, 'pack');
  await run(process.execPath, [PROGRAM, 'pack', files.order, '--class', files.class, '--out', out]);
  rmSync(out, { recursive: true });
}

/** As many at once as the command prints. */
async function browserAlone(): Promise<void> {
  const press = await openPress({ workers: 2 });
  await abreast(2, saved.map((file) => async () => void (await press.print(readFileSync(file, 'utf8'), `${file}.pdf`))));
  await press.close();
}

function written(name: string, texts: string[]): string[] {
  return texts.map((text, i) => {
    const file = join(folder, `${name}-${i}.tex`);
    writeFileSync(file, text);
    return file;
  });
}

/** One run over each document, two at once; a second run would change nothing, as nothing refers to a page. */
const pdflatex = (documents: string[]) => () =>
  abreast(2, documents.map((file) => async () => void (await run('pdflatex', ['-interaction=batchmode', '-halt-on-error', `-output-directory=${folder}`, file]))));

const parts = written('part', latexParts(work));
/** A document for each sheet, as a class is handed them; of a few students. */
const FEW = Math.min(10, STUDENTS);
const each = written('sheet', latexParts({ ...work, issues: work.issues.slice(0, FEW) }, 1));
const typst = await typstPress(work);
const has = await run('pdflatex', ['--version']).then(() => true, () => false);
if (!has) console.log('pdflatex is not installed: left out');
if (!typst) console.log('@myriaddreamin/typst-ts-node-compiler is not installed: Typst left out');

const sheets = 3 * STUDENTS;
const rounds: { ours: number; alone: number; latex: number; latexEach: number; typst: number }[] = [];
for (let round = 0; round < ROUNDS; round++) {
  const times = {
    ours: await seconds(command),
    alone: await seconds(browserAlone),
    latex: has ? await seconds(pdflatex(parts)) : NaN,
    latexEach: has ? (await seconds(pdflatex(each))) * (STUDENTS / FEW) : NaN,
    typst: typst ? await seconds(async () => typst()) : NaN,
  };
  rounds.push(times);
  console.log(`round ${round + 1}: ${Object.entries(times).map(([who, time]) => `${who} ${time.toFixed(1)} s`).join(', ')}`);
}

const ratio = (of: (times: (typeof rounds)[number]) => number) => median(rounds.map(of)).toPrecision(3);
console.log(`${STUDENTS} students: a worksheet, a key and a worked solution each, and the marking grid; medians of ${ROUNDS} rounds`);
console.log(`the whole command ${ratio(({ ours }) => ours)} s, ${ratio(({ ours, alone }) => ours / alone)} times the browser alone; ${ratio(({ ours }) => sheets / ours)} sheets a second`);
console.log(`sheets a second, ours over pdflatex: ${ratio(({ ours, latex }) => latex / ours)} (a run for 25 sheets), ${ratio(({ ours, latexEach }) => latexEach / ours)} (a run for each sheet)`);
console.log(`sheets a second, ours over Typst, which has one core: ${ratio(({ ours, typst }) => typst / ours)}`);
