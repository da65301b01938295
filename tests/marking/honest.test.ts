import { describe, expect, test } from 'vitest';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { judge } from '../../generators/marking/judge.ts';
import { streams } from '../../generators/random.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import type { Variant } from '../quantities/practical.ts';
import { anyStudent, workedBy } from '../quantities/student.ts';
import { round } from '../../generators/quantities/written.ts';
import { classOf, typed } from './classes.ts';
import { workSheet } from './honest.ts';

/** SLIDEWIRE_STUDENTS=1000000 is the measurement that DEVELOPERS.md gives; so many in all three tests together. */
const STUDENTS = Number(process.env['SLIDEWIRE_STUDENTS'] ?? 3000) / 3;
const SHEETS = 60;

describe.each(['resistivity', 'interchange'])('%s: no honest path is rejected', (id) => {
  test('by any rounding, route and π, each answer judged on the figures before it', () => {
    const experiment = experimentNamed(id);
    const { issues, columns } = classOf(SHEETS, `experiment: ${id}\n`, 'honest');
    const random = streams('honest').of(id);
    for (let i = 0; i < STUDENTS; i++) {
      const { sheet } = issues[i % SHEETS]!;
      const program = programOf(experiment, sheet);
      const judged = judge(sheet, program, columns, typed(columns, workSheet(program, sheet, random)));
      const rejected = judged.filter(({ verdict }) => verdict !== 'right');
      if (rejected.length > 0) expect(rejected.map(({ column, value, accept }) => `${column.id} ${value} (${accept.join(' to ')})`)).toEqual([]);
    }
  }, 36_000_000);
});

test('nor that of students who are simulated without the steps and their formulas', () => {
  const experiment = experimentNamed('resistivity');
  const { issues, columns } = classOf(SHEETS, '', 'honest');
  const random = streams('honest').of('apart');
  for (let i = 0; i < STUDENTS; i++) {
    const { sheet } = issues[i % SHEETS]!;
    const worked = workedBy(anyStudent(random), sheet.readings, sheet.form as unknown as Variant);
    const record = Object.fromEntries(Object.entries(worked).map(([name, values]) => [name, values.map((value) => round(value, { figures: 13 }, 'even'))]));
    const judged = judge(sheet, programOf(experiment, sheet), columns, typed(columns, record));
    expect(judged.filter(({ verdict }) => verdict !== 'right').map(({ column, value }) => `${column.id} ${value}`)).toEqual([]);
  }
}, 36_000_000);
