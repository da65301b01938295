import { existsSync, readFileSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import { describeWith } from '../outside.ts';
import { run } from '../press/outside.ts';
import { scratch, slidewire, WIRE } from './slidewire.ts';

vi.setConfig({ testTimeout: 90_000 });

const { at, write } = scratch();
const table = write('bench.csv', 'R,l,MSR,n,L,n0,zero\n2.0,43.2,0.0,41,60.1,3,positive\n2.5,48.7,0.0,40\n3.0,53.3,0.0,42\n3.5,61.2,0.0,41\n');

describeWith(['pdftotext'], 'readings from the bench', () => {
  test('become the worked record, as HTML and in print, with what asks for a second look', async () => {
    const { code, out } = await slidewire(['working', table, '--wire', WIRE, '--name', 'Ansel <Mirekot>', '--out', at('record')]);
    expect(code).toBe(0);
    expect(out).toContain('Row 4: the null point l = 61.2 cm lies outside 40 to 60 cm');
    expect(out).toContain('Row 4: X does not fit the other rows');
    const text = run('pdftotext', '-layout', at('record', 'record.pdf'), '-');
    expect(text).toContain('These readings were taken at the bench.');
    expect(text).toContain('Ansel <Mirekot>');
    expect(text).toMatch(/Look at these again/);
    expect(text).not.toMatch(/generated|simulation/);
    expect(readFileSync(at('record', 'record.html'), 'utf8')).toContain('Ansel &lt;Mirekot&gt;');
  });
});

test.each([
  [[], 'give one file of readings'],
  [[at('none.csv'), '--wire', WIRE, '--out', at('x')], 'there is no such file'],
  [[table, '--out', at('x')], 'say which wire it was'],
  [[table, '--wire', WIRE], 'say where the record goes'],
  [[write('bad.csv', 'R,l\n2,430\n3,50\n'), '--experiment', 'interchange', '--wire', WIRE, '--out', at('x')], 'bad.csv, m: has no value'],
])('%j is refused, and nothing is written', async (args, words) => {
  const { code, err } = await slidewire(['working', ...args]);
  expect(code).toBe(1);
  expect(err).toContain(words);
  expect(existsSync(at('x'))).toBe(false);
});
