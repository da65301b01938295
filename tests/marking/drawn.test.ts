import { expect, test } from 'vitest';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { judge } from '../../generators/marking/judge.ts';
import { decimalsOf, round } from '../../generators/quantities/written.ts';
import { type Random, streams } from '../../generators/random.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import type { Sheet } from '../../generators/sheets/sheet.ts';
import { classOf, typed } from './classes.ts';
import { workSheet } from './honest.ts';

/** SLIDEWIRE_STUDENTS is how many students read the drawings of each order. */
const STUDENTS = Number(process.env['SLIDEWIRE_STUDENTS'] ?? 600);
const SHEETS = 30;

/** The sheet as somebody may have read it: each drawn reading off by its latitude, or by nothing. */
function read(sheet: Sheet, random: Random): Sheet {
  const { drawn } = sheet.conventions;
  const off = (value: string, latitude: number) => round(Number(value) + random.pick([-1, 0, 1]) * latitude, { decimals: decimalsOf(value) }, 'even');
  const readings = Object.fromEntries(
    Object.entries(sheet.readings).map(([id, values]) => {
      const latitude = drawn[id] ?? 0;
      return [id, Array.isArray(values) ? values.map((value) => off(value, latitude)) : off(values, latitude)];
    }),
  );
  return { ...sheet, readings: { ...sheet.readings, ...Object.fromEntries(Object.entries(readings).filter(([id]) => drawn[id])) } };
}

test.each([
  ['resistivity', 'scale gauge rule'],
  ['interchange', 'scale'],
  ['graph', 'scale'],
])('%s: nobody who reads the %s within the latitude is rejected, though no answer says what was read', (id, drawn) => {
  const experiment = experimentNamed(id);
  const { issues, columns } = classOf(SHEETS, `experiment: ${id}\ndrawn: ${drawn}\n`, 'drawn');
  const random = streams('drawn').of(id);
  for (let i = 0; i < STUDENTS; i++) {
    const { sheet } = issues[i % SHEETS]!;
    const program = programOf(experiment, sheet);
    const record = workSheet(program, read(sheet, random), random);
    const rejected = judge(sheet, program, columns, typed(columns, record)).filter(({ verdict }) => verdict !== 'right');
    expect(rejected.map(({ column, value, accept }) => `${column.id} ${value} (${accept.join(' to ')})`)).toEqual([]);
  }
}, 36_000_000);
