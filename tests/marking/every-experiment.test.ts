import { describe, expect, test } from 'vitest';
import { prepareMarking } from '../../generators/cli/prepare-marking.ts';
import { experiments } from '../../generators/experiments/index.ts';
import { judge } from '../../generators/marking/judge.ts';
import { streams } from '../../generators/random.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { scratch } from '../cli/slidewire.ts';
import { classOf, practical, typed } from './classes.ts';
import { workSheet } from './honest.ts';

const { at } = scratch();
const STUDENTS = 40;

/** Wires that an experiment asks for, where the usual ones do not do. */
const WIRES: Record<string, string[]> = { 'temperature-coefficient': ['copper, SWG 36, 500 cm'] };

describe.each(Object.entries(experiments))('%s', (id, experiment) => {
  const { order, issues, columns } = classOf(4, `experiment: ${id}\n`, 'every experiment', practical, WIRES[id]);

  test('honest answers are right, however they are rounded', () => {
    const random = streams('every experiment').of(id);
    for (let i = 0; i < STUDENTS; i++) {
      const { sheet } = issues[i % issues.length]!;
      const program = programOf(experiment, sheet);
      const rejected = judge(sheet, program, columns, typed(columns, workSheet(program, sheet, random))).filter(({ verdict }) => verdict !== 'right');
      expect(rejected.map(({ column, value, accept }) => `${column.id} ${value} (${accept.join(' to ')})`)).toEqual([]);
    }
  });

  test('its answers file and the page for typing are made', async () => {
    await prepareMarking(at(id), { order, issues });
  });
});
