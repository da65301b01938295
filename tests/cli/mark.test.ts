import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { programOf } from '../../generators/sheets/issue.ts';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { workOut } from '../../generators/sheets/worked.ts';
import { ledgerText, makeLedger } from '../../generators/sheets/ledger.ts';
import { issuesOf, orderOf, SECRET } from '../sheets/class.ts';
import { scratch, slidewire } from './slidewire.ts';

const { at, write } = scratch();
const order = orderOf('title: Lanternfield (invented)\n');
const students = [
  { roll: '1', name: 'Perrin Oakhollow' },
  { roll: '2', name: '=HYPERLINK("x")' },
  { roll: '3', name: 'Sabra, Lintwick' },
  { roll: '4', name: 'Yorick Embleton' },
];
const issues = issuesOf(order, students);
const head = { kind: 'assessed', secret: SECRET, orderDigest: 'a'.repeat(64), order } as const;
const ledger = write('ledger.json', ledgerText(makeLedger(head, issues)));

const HEADS = ['X, row 1', 'mean X', 'zero error e', 'mean observed diameter', 'corrected diameter d', 'rho', 'percentage difference'];
const IDS = ['X', 'meanX', 'e', 'meanD', 'd', 'rho', 'off'];

/** The key's own answers with their units, row by row. */
const keyRows = issues.map(({ roll, name, code, sheet }) => {
  const { program, values } = workOut(sheet, programOf(experimentNamed('resistivity'), sheet));
  return [roll, name, code, ...IDS.map((id) => `${values.written.get(id)![0]!} ${program.step(id).unit}`)];
});

const quoted = (cell: string) => (/[",]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
const csv = (rows: readonly (readonly string[])[], heads = HEADS) => [['roll', 'name', 'code', ...heads], ...rows].map((cells) => cells.map(quoted).join(',')).join('\n');
const changed = (change: (rows: string[][]) => unknown): string[][] => {
  const rows = keyRows.map((row) => [...row]);
  change(rows);
  return rows;
};

let count = 0;
const mark = async (answers: string, out = at(`out-${count++}`), ...more: string[]) => {
  const { out: said, ...run } = await slidewire(['mark', ledger, write(`answers-${count++}.csv`, answers), '--out', out, '--pdf', 'no', ...more]);
  return { ...run, said, out };
};
/** A document without its styles and fonts. */
const textIn = (file: string) => readFileSync(file, 'utf8').replace(/<style[^]*?<\/style>/g, '');
const marksIn = (out: string) => readFileSync(`${out}/marks.csv`, 'utf8').trim().split('\r\n').map((line) => line.split(','));

describe('the ready-made answers file', () => {
  test('has a row for each sheet, no live cell, and room for the deciding answers; it is marked as not entered', async () => {
    const out = at('ready');
    expect(await slidewire(['mark', ledger, '--out', out])).toMatchObject({ code: 0, err: '' });
    const text = readFileSync(`${out}/answers.csv`, 'utf8');
    expect(text.split('\r\n').slice(0, 3)).toEqual([
      `\ufeffroll,name,code,"X, row 1",${HEADS.slice(1).join(',')}`,
      `1,Perrin Oakhollow,${issues[0]!.code},,,,,,,`,
      `2,"'=HYPERLINK(""x"")",${issues[1]!.code},,,,,,,`,
    ]);
    const { code, out: folder } = await mark(text);
    expect(code).toBe(0);
    expect(marksIn(folder)[1]!.slice(3, 5)).toEqual(['', '17']);
  });
});

describe('a class that is marked', () => {
  test('has full marks for the key\'s own answers, in a file that a spreadsheet opens and works nothing out from', async () => {
    const { code, err, out } = await mark(csv(keyRows));
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const text = readFileSync(`${out}/marks.csv`, 'utf8');
    expect(text.startsWith('\ufeffroll,name,code,total,of,')).toBe(true);
    expect(marksIn(out).slice(1).map((cells) => cells.at(-1))).toEqual(['', '', '', '']);
    expect([...text.matchAll(/,17,17,/g)]).toHaveLength(4);
    expect(text).toContain('"\'=HYPERLINK(""x"")"');
    expect(text).not.toMatch(/(^|,)"?[=+@]/m);
  });

  test('gets a feedback slip each and a class page, whole in themselves', async () => {
    const { out } = await mark(csv(changed((rows) => { rows[0]![7] = '-'; rows[1]![4] = '7.77 Ω'; })));
    const feedback = textIn(`${out}/feedback-1.html`);
    for (const { code } of issues) expect(feedback).toContain(code);
    expect(feedback).toContain('left blank');
    expect(feedback).toContain('=HYPERLINK(&quot;x&quot;)');
    const page = textIn(`${out}/class.html`);
    for (const words of ['How the marks are spread', 'The hardest answers first', 'The commonest slips', 'Marks by answer']) expect(page).toContain(words);
    for (const html of [feedback, page]) expect(html).not.toMatch(/<script|src="http|href="http/);
  });

  describe('with a decimal comma', () => {
    const withCommas = (rows: readonly (readonly string[])[]) => [['roll', 'name', 'code', ...HEADS], ...rows.map((cells) => cells.map((cell, i) => (i < 3 ? cell : cell.replace('.', ','))))].map((cells) => cells.map((cell) => (cell.includes('"') ? `"${cell.replaceAll('"', '""')}"` : cell)).join(';')).join('\n');

    test('that the flag asks for, reads and writes commas', async () => {
      const { code, out } = await mark(withCommas(keyRows), undefined, '--decimal', 'comma', '--scheme', 'strict');
      expect(code).toBe(0);
      expect(readFileSync(`${out}/marks.csv`, 'utf8')).toContain(';17;17;3;3;1;3;3;3;1;');
    });

    test('that the order asks for, needs no flag, and stands in the reports', async () => {
      const own = write('comma.json', ledgerText(makeLedger({ ...head, order: { ...order, decimal: 'comma' } }, issues)));
      const wrong = changed((rows) => {
        rows[0]![6] = '0.444 mm';
        rows[0]![3] = rows[0]![3]!.split(' ')[0]!;
      });
      const out = at('comma');
      expect(await slidewire(['mark', own, write('comma.csv', withCommas(wrong)), '--out', out, '--pdf', 'no'])).toMatchObject({ code: 0, err: '' });
      expect(readFileSync(`${out}/marks.csv`, 'utf8')).toContain('14,5;17;');
      const [feedback, page] = ['feedback-1', 'class'].map((name) => textIn(`${out}/${name}.html`).replace(/<svg[^]*?<\/svg>/g, ''));
      expect(feedback).toContain('0,444\u00a0mm');
      for (const html of [feedback!, page!]) expect(html.replace(/<[^>]*>/g, ' ')).not.toMatch(/\d\.\d/);
    });
  });

  test('a student who has no row is told of and not entered', async () => {
    const { code, err, out } = await mark(csv(keyRows.slice(0, 3)));
    expect({ code, err }).toEqual({ code: 0, err: `no answers of roll 4, sheet ${issues[3]!.code}: marked as not entered\n` });
    expect(marksIn(out).at(-1)!.at(-1)).toBe('not entered');
  });
  test('where no unit is typed the teacher is told what that costs', async () => {
    const { err } = await mark(csv(keyRows.map((cells) => cells.map((cell, i) => (i < 3 ? cell : cell.split(' ')[0]!)))));
    expect(err).toContain('no answer has a unit');
  });
});

describe('what a spreadsheet does to the file', () => {
  test('does no harm to rolls and codes: zeros before a roll lost or decimals put behind it, a code without its dash', async () => {
    const { code, err, out } = await mark(csv(changed((rows) => {
      rows[0]![0] = '001';
      rows[1]![0] = '2.0';
      rows[2]![2] = rows[2]![2]!.replace('-', '').toLowerCase();
    })));
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(readFileSync(`${out}/marks.csv`, 'utf8').match(/,17,17,/g)).toHaveLength(4);
  });
  const bare = (cell: string) => cell.split(' ')[0]!;
  test('to zeros at the end of numbers is told of, and not where some number has its zero', async () => {
    const dropped = keyRows.map((cells) => cells.map((cell, i) => (i < 3 ? cell : bare(cell).replace(/(\.\d*?)0+$/, '$1').replace(/\.$/, ''))));
    const short = dropped.flatMap((cells, row) => cells.filter((cell, i) => i > 2 && cell !== '0' && cell.length < bare(keyRows[row]![i]!).length)).length;
    expect(short).toBeGreaterThan(2);
    expect((await mark(csv(dropped))).err).toContain(`${short} numbers have too few figures, and no number ends in 0`);
    expect((await mark(csv(keyRows.map((cells) => cells.map((cell, i) => (i < 3 ? cell : bare(cell))))))).err).not.toContain('ends in 0');
  });
});

test('answers that stand in other students\' rows are told of before anything else', async () => {
  const many = issuesOf(order, Array.from({ length: 8 }, (_, i) => ({ roll: `${i + 1}`, name: `Student ${i + 1}` })));
  const rows = many.map(({ roll, name, code, sheet }) => {
    const { program, values } = workOut(sheet, programOf(experimentNamed('resistivity'), sheet));
    return [roll, name, code, ...IDS.map((id) => `${values.written.get(id)![0]!} ${program.step(id).unit}`)];
  });
  const moved = rows.map((cells, i) => [...cells.slice(0, 3), ...rows[(i + 1) % rows.length]!.slice(3)]);
  const own = write('eight.json', ledgerText(makeLedger(head, many)));
  const run = async (answers: string[][], out: string) => (await slidewire(['mark', own, write('eight.csv', csv(answers)), '--out', at(out), '--pdf', 'no'])).err;
  expect(await run(moved, 'moved')).toMatch(/^answers of [5-8] of 8 students fit other sheets than their own/);
  expect(await run(rows, 'unmoved')).toBe('');
});

describe('a second marking', () => {
  test('by another scheme says so, and which answers are not asked for any more', async () => {
    const { out } = await mark(csv(keyRows));
    const fewer = write('fewer.yaml', readFileSync('content/marks/practical.yaml', 'utf8').replace('title: Practical record', 'title: Mine').replace('    - { step: meanX }\n', ''));
    const { said, out: same } = await mark(csv(keyRows), out, '--scheme', fewer);
    const lines = ['Marked by the scheme “Mine” now, by “Practical record” before.', 'No longer among the answers: mean X.'];
    expect(said.split('\n').slice(0, 2)).toEqual(lines);
    for (const line of lines) expect(textIn(`${same}/class.html`)).toContain(line);
  });
  test('leaves no report of the one before that it does not make itself', async () => {
    const { out } = await mark(csv(keyRows));
    for (const name of ['class.pdf', 'feedback-1.pdf', 'feedback-2.html', 'feedback-notes.txt']) writeFileSync(`${out}/${name}`, 'old');
    await mark(csv(keyRows), out);
    expect(readdirSync(out).toSorted()).toEqual(['class.html', 'feedback-1.html', 'feedback-notes.txt', 'marking.json', 'marks.csv']);
  });

  test('into the same folder says what changed, and nothing where nothing did', async () => {
    const { out } = await mark(csv(keyRows));
    const same = await mark(csv(keyRows), out);
    expect(same.said).toContain('Nothing has changed since the last marking.\n');
    expect(textIn(`${out}/class.html`)).toContain('Nothing has changed since the last marking.');
    const again = await slidewire(['mark', ledger, write('again.csv', csv(changed((rows) => { rows[2]![4] = '9.99 Ω'; }))), '--out', out, '--pdf', 'no']);
    expect(again.out).toContain(`Roll 3 (${issues[2]!.code}), mean X: “${keyRows[2]![4]}” for 3 before, “9.99 Ω” for 1 now\n`);
    expect(again.out).toMatch(/Roll 3 \([^)]*\), Total: 17 marks in all before, \d+½? marks in all now/);
    expect(textIn(`${out}/class.html`)).toContain('9.99 Ω” for 1 now');
  });
  test('a folder of something else, or of another pack, is left as it is', async () => {
    write('mine/notes.txt', 'mine');
    expect(await mark(csv(keyRows), at('mine'))).toMatchObject({ code: 1, err: `${at('mine')}: is there and holds no marking; choose another with --out\n` });
    const { out } = await mark(csv(keyRows));
    const other = write('other.json', ledgerText(makeLedger({ ...head, orderDigest: 'b'.repeat(64) }, issues)));
    expect(await slidewire(['mark', other, write('o.csv', csv(keyRows)), '--out', out, '--pdf', 'no'])).toMatchObject({ code: 1, err: `${out}: holds the marking of another pack; choose another with --out\n` });
  });
});

describe('answers that cannot be marked are refused with row and column, and nothing is written', () => {
  const code = issues[0]!.code;
  test.each<[string, string, string]>([
    ['what cannot be read', csv(changed((rows) => { rows[0]![4] = 'two'; rows[3]![8] = '4.97e-7 Ω k'; })), 'row 2, mean X: "two" is no number; type it as the student wrote it, - for left blank, x for struck out\nFILE, row 5, rho: "4.97e-7 Ω k" ends in “Ω k”, which is no unit that is known'],
    ['answers to another pack', csv(changed((rows) => rows.forEach((row) => { row[2] = 'AAAA-AAAA'; }))), 'row 2, code: "AAAA-AAAA" is no sheet of this ledger, nor is any other code here: these are the answers to another pack; give the ledger of that'],
    ['sheet codes that are missing', csv(changed((rows) => rows.forEach((row) => { row[2] = ''; }))), 'row 2, code: roll 1 stands without its sheet code; fill it in'],
    ['an extra student', csv(changed((rows) => rows.push(['9', 'New', 'ZZZZ-ZZZZ', ...rows[0]!.slice(3)]))), 'row 6, code: there is no sheet "ZZZZ-ZZZZ" in this pack'],
    ['a row that is there twice', csv(changed((rows) => rows.push([...rows[0]!]))), `row 6, code: sheet ${code} appears twice (first in row 2); leave one of them out`],
    ['rolls that do not fit the codes', csv(changed((rows) => { [rows[0]![0], rows[1]![0]] = [rows[1]![0]!, rows[0]![0]!]; })), `row 2, roll: sheet ${code} was issued to roll 1, not to "2"; put the code or the roll right`],
    ['swapped columns', csv(changed((rows) => rows.forEach((row) => { [row[4], row[7]] = [row[7]!.replace('mm', ''), row[4]!.replace('Ω', '')]; }))), 'the columns "mean X" and "corrected diameter d" look swapped: in 4 of 4 rows each value fits the other\'s answer; change over the two heads'],
    ['a column that is missing', csv(keyRows, HEADS.map((name) => (name === 'rho' ? 'rhoo' : name))), 'row 1: no column "rho"; did you mean "rhoo"? Call it rho'],
    ['a column that is there twice', csv(keyRows, HEADS.map((name) => (name === 'rho' ? 'mean X' : name))), 'row 1: 2 columns are called "mean X"; keep one of them'],
    ['an empty file', '', 'the file is empty; fill in the answers.csv of the pack'],
    ['heads alone', csv([]), 'no answers below the heads; fill in the answers.csv of the pack'],
  ])('%s', async (_, answers, words) => {
    const { out, code: exit, err } = await mark(answers);
    expect(exit).toBe(1);
    const file = /^(answers-\d+\.csv)/.exec(err)?.[1] ?? '';
    expect(err).toContain(words.replaceAll('FILE', file));
    expect(existsSync(out)).toBe(false);
  });

  test('a broken ledger, one that is not there, and a scheme that is none', async () => {
    const answers = write('a.csv', csv(keyRows));
    const broken = write('broken.json', ledgerText(makeLedger(head, issues)).replace('"roll": "3"', '"roll": "7"'));
    expect((await slidewire(['mark', broken, answers, '--out', at('b')])).err).toContain('the entry of roll 7 was changed after it was issued');
    expect((await slidewire(['mark', at('no.json'), answers, '--out', at('b')])).err).toContain('there is no such file');
    expect((await slidewire(['mark', ledger, at('no.csv'), '--out', at('b')])).err).toContain('there is no such file');
    expect((await slidewire(['mark', ledger, answers, '--out', at('b'), '--scheme', 'practicl'])).err).toContain('did you mean practical?');
    expect((await slidewire(['mark', ledger, answers, '--out', at('b'), '--scheme', write('s.yaml', 'title: X\n')])).err).toContain('s.yaml, units: ');
    expect(existsSync(at('b'))).toBe(false);
  });
  test('a scheme with the name of a slip or of an experiment that there is not', async () => {
    const own = readFileSync('content/marks/practical.yaml', 'utf8').replace('- sign lost', '- sign lots').replace('  resistivity:', '  resistivty:');
    const { code: exit, err } = await mark(csv(keyRows), at('e'), '--scheme', write('own.yaml', own));
    expect({ exit, err }).toEqual({ exit: 1, err: 'own.yaml, keep-method: there is no slip "sign lots"; did you mean sign lost?\nown.yaml, experiments: there is no experiment "resistivty"; did you mean resistivity?\n' });
    expect(existsSync(at('e'))).toBe(false);
  });
  test('readings that the students took themselves', async () => {
    const blank = write('blank.json', ledgerText(makeLedger({ ...head, order: { ...order, readings: 'blank' } }, issues)));
    expect((await slidewire(['mark', blank, write('c.csv', csv(keyRows)), '--out', at('d')])).err).toContain('there is nothing to mark against');
  });
});
