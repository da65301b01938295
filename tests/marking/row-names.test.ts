import { describe, expect, test } from 'vitest';
import { loadWords } from '../../generators/cli/content.ts';
import { loadMarkingWords } from '../../generators/cli/marking-content.ts';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { award } from '../../generators/marking/award.ts';
import { readEntry } from '../../generators/marking/entry.ts';
import { headOf } from '../../generators/marking/heads.ts';
import { judge } from '../../generators/marking/judge.ts';
import { keyNote } from '../../generators/marking/key-note.ts';
import { remarks } from '../../generators/marking/remarks.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { workOut } from '../../generators/sheets/worked.ts';
import { classOf, practical } from './classes.ts';

const words = loadMarkingWords('en');

function of(id: string, students = 4) {
  const experiment = experimentNamed(id);
  const { symbols } = loadWords('en', id).spoken;
  const { issues, columns } = classOf(students, `experiment: ${id}\n`, 'row names');
  return { experiment, symbols, issues, columns, heads: columns.map((column) => headOf(column, symbols, words.heads)) };
}

describe('a row of a table is called as on the sheet', () => {
  test('in the heads of the answers file', () => {
    expect(of('scale-drill').heads).toContain('X, row B');
    expect(of('resistivity').heads).toContain('X, row 1');
    expect(headOf({ id: 'dObs', row: 2, inTable: true, rows: 'pairs' }, { dObs: 'd' }, words.heads)).toBe('d, row 2 a');
  });

  test('in what the key says of slips', () => {
    const { experiment, symbols, issues } = of('circuit-check', 60);
    const notes = issues.map(({ sheet }) => keyNote(sheet, programOf(experiment, sheet), experiment.layout, symbols, words) ?? '').join('\n');
    expect(notes).toMatch(/, row [A-F]: /);
    expect(notes).not.toMatch(/row \d/);
  });

  test('in the words of a slip', () => {
    const { experiment, symbols, issues: [issue], columns } = of('gauge-drill', 1);
    const { sheet } = issue!;
    const program = programOf(experiment, sheet);
    const worked = workOut(sheet, program);
    const right = columns.map(({ id, row }) => worked.values.written.get(id)![row]!);
    const place = (row: number) => columns.findIndex((column) => column.id === 'dP' && column.row === row);
    const texts = right.map((value, i) => `${i === place(1) ? right[place(0)]! : value} ${columns[i]!.unit}`);
    const { answers } = award(judge(sheet, program, columns, texts.map((text) => readEntry(text, 'point'))), practical);
    const said = remarks(answers, ({ column }) => headOf(column, symbols, words.heads), words).join(' ');
    expect(said).toContain(`${headOf(columns[place(1)]!, symbols, words.heads)}: This is the value of row A.`);
  });
});
