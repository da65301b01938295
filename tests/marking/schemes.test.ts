import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { experiments } from '../../generators/experiments/index.ts';
import { columnsOf } from '../../generators/marking/columns.ts';
import { rowsIn } from '../../generators/marking/rows.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { issuesOf, known } from '../sheets/class.ts';
import { schemeNamed } from './classes.ts';

const SCHEMES = readdirSync('content/marks').map((file) => file.replace('.yaml', ''));
const ROWS = [3, 4, 5, 6];

/** A circuit to be checked has one answer a row: fewer than five where it has fewer rows. */
const ONE_A_ROW = ['circuit-check'];

describe.each(Object.entries(experiments))('%s', (id, experiment) => {
  const sheets = ROWS.map((rows) => issuesOf(readOrder(`experiment: ${id}\nrows: ${rows}\n`, 'order.yaml', known), [{ roll: '1', name: 'Student' }])[0]!.sheet);

  /** Answers that are worked out on a sheet, one a row. */
  const answersOn = (sheet: (typeof sheets)[number]) => {
    const program = programOf(experiment, sheet);
    return program.steps.reduce((sum, step) => sum + (step.kind === 'relation' || step.kind === 'summary' ? (step.per ? rowsIn(program, step.per, sheet.readings) : 1) : 0), 0);
  };

  test.each(SCHEMES)('has five to seven deciding answers by the scheme "%s", or all that its sheet has', (name) => {
    for (const sheet of sheets) {
      const columns = columnsOf(schemeNamed(name), experiment, [sheet]);
      const fewest = ONE_A_ROW.includes(id) ? Math.min(5, answersOn(sheet)) : 5;
      expect(columns.length).toBeGreaterThanOrEqual(fewest);
      expect(columns.length).toBeLessThanOrEqual(7);
    }
  });

  test('every scheme decides by the same answers', () => {
    const of = (name: string) => columnsOf(schemeNamed(name), experiment, sheets).map((column) => `${column.id} ${column.row}`);
    for (const name of SCHEMES) expect(of(name)).toEqual(of('practical'));
  });
});
