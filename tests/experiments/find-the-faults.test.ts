import { describe, expect, test } from 'vitest';
import { findTheFaults } from '../../generators/experiments/find-the-faults.ts';
import { plant } from '../../generators/experiments/plant.ts';
import type { Column } from '../../generators/marking/columns.ts';
import { readEntry } from '../../generators/marking/entry.ts';
import { judge } from '../../generators/marking/judge.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import { faultsIn } from '../../generators/quantities/finished.ts';
import { streams } from '../../generators/random.ts';
import { type Issue, programOf } from '../../generators/sheets/issue.ts';
import { ledgerText, makeLedger, readLedger } from '../../generators/sheets/ledger.ts';
import { practical } from '../marking/classes.ts';
import { documentsOf, issuesOf, known, wordsOf } from '../sheets/class.ts';

const order = readOrder('experiment: find-the-faults\n', 'order.yaml', known);
const recipients = (count: number) => Array.from({ length: count }, (_, i) => ({ roll: String(i + 1), name: '' }));

function recordOf({ sheet }: Issue) {
  const steps = programOf(findTheFaults, sheet);
  const finished = sheet.finished!;
  return { sheet, steps, finished, faults: faultsIn(steps, sheet.readings, sheet.conventions, finished) };
}

describe('records of 60 students', () => {
  const records = issuesOf(order, recipients(60)).map(recordOf);

  test('hold three or four mistakes each, no diameter below zero and no absurd difference, and every kind of mistake occurs', () => {
    for (const { faults, finished } of records) {
      expect([3, 4]).toContain(faults.length);
      expect([...finished['dObs']!, ...finished['d']!].filter((diameter) => Number(diameter) <= 0)).toEqual([]);
      expect(Math.abs(Number(finished['off']![0]))).toBeLessThan(1000);
    }
    expect([...new Set(records.flatMap(({ faults }) => faults.map(({ slip }) => slip)))].toSorted()).toEqual(
      [
        'arithmetic',
        'diameter used as radius',
        'divided by the whole wire',
        'length left in centimetres',
        'main-scale division missed',
        'measured value as the base',
        'negative zero error read forwards',
        'ratio inverted',
        'too many digits',
        'zero error ignored',
        'zero error with the wrong sign',
      ].toSorted(),
    );
  });

  // Marking judges answers with code of its own: its chain, its catalogue of slips, its counting of figures.
  test('are judged alike by marking: wrong where a mistake is planted, by that slip, and right everywhere else', () => {
    for (const { sheet, steps, finished, faults } of records) {
      const columns = steps.steps.flatMap((step): Column[] => {
        if (step.kind !== 'relation' && step.kind !== 'summary') return [];
        return finished[step.id]!.map((_, row) => ({ id: step.id, row, inTable: step.per !== undefined, unit: step.unit, digits: step.digits, marks: practical.each }));
      });
      const entries = columns.map(({ id, row, unit }) => readEntry(`${finished[id]![row]!} ${unit}`, 'point'));
      for (const { column, verdict, explanations, extraFigures } of judge(sheet, steps, columns, entries)) {
        const planted = faults.find(({ id, row }) => id === column.id && row === column.row)?.slip;
        const place = `${column.id} ${column.row + 1}`;
        if (planted === undefined || planted === 'too many digits') expect(verdict, place).toBe('right');
        // A value that follows from no formula may by chance be that of another sheet's line, but it is not right here.
        else expect(verdict, place).not.toBe('right');
        expect(extraFigures >= 3, place).toBe(planted === 'too many digits');
        if (planted !== undefined && !['too many digits', 'arithmetic'].includes(planted) && verdict === 'wrong') expect(explanations.map(({ slip }) => slip), place).toContain(planted);
      }
    }
  });

  test('go into a ledger and come out of it', () => {
    const issues = issuesOf(order, recipients(2));
    const ledger = makeLedger({ kind: 'practice', secret: 'spring', orderDigest: '', order }, issues);
    expect(readLedger(ledgerText(ledger)).issues.map(({ sheet }) => sheet.finished)).toEqual(issues.map(({ sheet }) => sheet.finished));
  });
});

describe('a record', () => {
  const [issue] = issuesOf(order, recipients(1)) as [Issue];
  const { sheet, steps } = recordOf(issue);
  const random = () => streams('plant').of('one');

  test('without a mistake has none', () => {
    const finished = plant(steps, sheet.readings, [], random())!;
    expect(faultsIn(steps, sheet.readings, sheet.conventions, finished)).toEqual([]);
  });

  test('with one has that one, and what follows from it is none', () => {
    const finished = plant(steps, sheet.readings, [{ id: 'rho', slip: 'diameter used as radius' }], random())!;
    const right = plant(steps, sheet.readings, [], random())!;
    expect(faultsIn(steps, sheet.readings, sheet.conventions, finished)).toEqual([{ id: 'rho', row: 0, slip: 'diameter used as radius' }]);
    expect(Number(finished['rho']![0]) / Number(right['rho']![0])).toBeCloseTo(4, 1);
    expect(finished['off']).not.toEqual(right['off']);
  });

  test('cannot be made with a mistake that does not show: a least count that has no wrong reading, a slip that the step has not', () => {
    expect(plant(steps, sheet.readings, [{ id: 'LC', slip: 'ratio inverted' }], random())).toBeUndefined();
  });
});

describe('on paper', () => {
  const issues = issuesOf(order, recipients(6));

  test('the worksheet says nothing of where the mistakes are, and is the same whatever the truth', async () => {
    const worksheets = await documentsOf(order, issues, 'worksheet');
    const others = issues.map((one) => ({ ...one, truth: Object.fromEntries(Object.entries(one.truth).map(([name, value]) => [name, 2 * value + 1])) }));
    expect([...(await documentsOf(order, others, 'worksheet'))]).toEqual([...worksheets]);
    for (const [, html] of worksheets) for (const says of ['upside down', 'was left out', 'put in for the radius', 'More digits', 'slip of the arithmetic']) expect(wordsOf(html)).not.toContain(says);
  });

  test('the key names each mistake once, with what stands there and what should', async () => {
    const keys = [...(await documentsOf(order, issues))].filter(([file]) => file.includes('single/key'));
    keys.forEach(([, html], i) => {
      const table = /<h2>Mistakes in the record<\/h2>[^]*?<\/table>/.exec(html)![0];
      const { faults, finished } = recordOf(issues[i]!);
      expect(table.match(/<tr><th scope="row">/g)).toHaveLength(faults.length);
      for (const { id, row } of faults) {
        const [mantissa] = finished[id]![row]!.replace('-', '').split('e');
        expect(table.replace(/<[^>]*>/g, '').normalize('NFKC'), id).toContain(mantissa);
      }
    });
  });

  test('a length left in centimetres stands so in the working, without a change of units', async () => {
    const place = issues.findIndex((one) => recordOf(one).faults.some(({ slip }) => slip === 'length left in centimetres'));
    const worksheets = [...(await documentsOf(order, issues, 'worksheet'))].filter(([file]) => file.includes('single/worksheet'));
    const text = (i: number) => wordsOf(worksheets[i]![1]).replace(/\s+/g, ' ');
    const length = String(issues[place]!.sheet.readings['L']);
    const metres = (Number(length) / 100).toPrecision(3);
    expect(text(place)).toMatch(new RegExp(`4 ?× ?${length.replace('.', '\\.')}`));
    expect(text(place)).not.toContain(`${metres} m`);
  });
});
