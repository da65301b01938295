import { readFileSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import { describeWith } from '../outside.ts';
import { run } from '../press/outside.ts';
import { filesIn } from './files.ts';
import { scratch, slidewire, WIRE } from './slidewire.ts';

vi.setConfig({ testTimeout: 90_000 });

const { at, write } = scratch();
write('class.csv', `roll,name\n${Array.from({ length: 7 }, (_, i) => `${i + 1},Candidate ${String.fromCharCode(65 + i)}`).join('\n')}\n`);
const TASKS = `tasks:\n  - experiment: resistivity\n    wires: ["${WIRE}", "manganin, SWG 30, 55 cm"]\n  - experiment: interchange\n    wires: "nichrome, SWG 26, 75 cm"\n    rows: 3\n`;
const exam = write('exam.yaml', `title: Tidewheel practical\nclass: class.csv\nbatch: 4\n${TASKS}`);

interface Lots {
  batches: { lots: { roll: string; station: number; experiment: string; wires: string[] }[] }[];
}

describeWith(['pdftotext'], 'a practical examination', () => {
  const text = (file: string) => run('pdftotext', '-layout', at('out', file), '-');

  test('warns on the slip of what the experiment alone has of dangers, and calls what stands there by its name', async () => {
    const bath = write('bath.yaml', 'title: Bath\nclass: class.csv\nbatch: 7\ntasks:\n  - experiment: temperature-coefficient\n');
    expect((await slidewire(['practical', bath, '--out', at('bath')])).code).toBe(0);
    const slips = run('pdftotext', at('bath', 'slips.pdf'), '-').replace(/\s+/g, ' ');
    expect(slips.match(/hot glass scald and burn/g)).toHaveLength(7);
    expect(slips.match(/Work on the coil marked/g)).toHaveLength(7);
  });

  test('has a slip for each lot that names no material, a station list and award sheets', async () => {
    const { code } = await slidewire(['practical', exam, '--out', at('out')]);
    expect(code).toBe(0);
    expect(text('slips.pdf').match(/Batch \d, lot \d/g)).toHaveLength(7);
    expect(text('slips.pdf')).not.toMatch(/constantan|manganin|nichrome|SWG/);
    expect(run('pdftotext', at('out', 'slips.pdf'), '-').replace(/\s+/g, ' ').match(/the wires get hot/g)).toHaveLength(7);
    for (const wire of [WIRE, 'manganin, SWG 30, 55 cm', 'nichrome, SWG 26, 75 cm']) expect(text('stations.pdf')).toContain(wire);
    for (const letter of 'ABCDEFG') expect(text('award-sheets.pdf')).toContain(`Candidate ${letter}`);
    const { batches } = JSON.parse(readFileSync(at('out', 'lots.json'), 'utf8')) as Lots;
    expect(batches.map(({ lots }) => lots.length)).toEqual([3, 4]);
  });

  test('is printed again with the same lots, and not over another', async () => {
    const before = filesIn(at('out'));
    expect((await slidewire(['practical', exam, '--out', at('out')])).code).toBe(0);
    expect(filesIn(at('out'))).toEqual(before);
    write('exam.yaml', `title: Another\nclass: class.csv\nbatch: 4\n${TASKS}`);
    const { code, err } = await slidewire(['practical', exam, '--out', at('out')]);
    expect(code).toBe(1);
    expect(err).toContain('holds other lots');
    expect(filesIn(at('out'))).toEqual(before);
  });

  test('leaves names and stations blank where the candidates draw', async () => {
    const byHand = write('hand.yaml', `class: class.csv\ndraw: by hand\n${TASKS}`);
    expect((await slidewire(['practical', byHand, '--out', at('out2')])).code).toBe(0);
    expect(run('pdftotext', '-layout', at('out2', 'slips.pdf'), '-')).not.toContain('Candidate');
  });
});

test.each([
  [`class: class.csv\ntasks:\n  - wires: "copper, SWG 18, 50 cm"\n`, 'tasks 1.wires 1: copper, SWG 18, 50 cm: its resistance is about 0.00739 Ω'],
  [`class: none.csv\n${TASKS}`, 'there is no such file'],
])('%j is refused', async (text, words) => {
  const { code, err } = await slidewire(['practical', write('bad.yaml', text), '--out', at('bad')]);
  expect(code).toBe(1);
  expect(err).toContain(words);
});
