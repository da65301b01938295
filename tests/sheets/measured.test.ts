import { describe, expect, test } from 'vitest';
import { knownNames, loadTables, loadWords } from '../../generators/cli/content.ts';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { UserMistake } from '../../generators/mistake.ts';
import { orderFromFlags } from '../../generators/order/read-order.ts';
import { readingColumns } from '../../generators/order/reading-columns.ts';
import { streams } from '../../generators/random.ts';
import { conventions } from '../../generators/sheets/conventions.ts';
import { type Doubt, doubts } from '../../generators/sheets/doubts.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { measuredSheet } from '../../generators/sheets/measured.ts';
import { quantityOf } from '../../generators/sheets/measured-columns.ts';
import type { Sheet } from '../../generators/sheets/sheet.ts';
import { askFor } from '../../generators/sheets/tables.ts';
import { workOut } from '../../generators/sheets/worked.ts';

const tables = loadTables();
const experiment = experimentNamed('resistivity');
const order = orderFromFlags({ wire: ['constantan, SWG 28, 60 cm'] }, knownNames(tables));
const ask = askFor(order, order.wires, tables);
const names = { values: loadWords('en', 'resistivity').experiment['values'] as Record<string, string> };
const { steps } = programOf(experiment, { form: experiment.ideal(ask).form });

function sheetOf(csv: string): Sheet {
  const { columns } = readingColumns(new TextEncoder().encode(csv), 'bench.csv', (head) => quantityOf(head, steps, names) !== undefined);
  return measuredSheet(columns, experiment, order, ask, names, 'bench.csv');
}

const refusal = (csv: string) => {
  try {
    sheetOf(csv);
  } catch (error) {
    if (error instanceof UserMistake) return error.message.split('\n');
    throw error;
  }
  return [];
};

const HEADS = 'R,l,MSR,n,L,n0,zero\n';
const GOOD = `${HEADS}2.0,43.2,0.0,41,60.1,3,positive\n2.5,48.7,0.0,40\n3.0,53.3,0.0,42\n`;

describe('a table of readings', () => {
  test('becomes a sheet marked as measured, with what the order says of the wire', () => {
    const sheet = sheetOf(GOOD);
    expect(sheet.origin).toBe('measured');
    expect(sheet.readings).toMatchObject({ R: ['2.0', '2.5', '3.0'], l: ['43.2', '48.7', '53.3'], msr: ['0.0', '0.0', '0.0'], n: ['41', '40', '42'], L: '60.1', n0: '3', pitch: '0.5', N: '50', W: '100.0' });
    expect(sheet.form['zero']).toBe('positive');
    // By hand: 2.0 × 56.8/43.2 = 2.6296, and 0.410 mm less the zero error of 0.03 mm.
    const worked = workOut(sheet, programOf(experiment, sheet));
    expect(worked.cells('X')[0]!.shown).toBe('2.63');
    expect(worked.cells('d')[0]!.shown).toBe('0.380');
  });

  test('may have heads with units or in words, semicolons and decimal commas, and tables of different length', () => {
    const csv = 'R / Ω;l (cm);MSR;n;length of the wire between the terminals;circular-scale reading with the jaws closed\n2,0;43,2;0,0;41;60,1;0\n2,5;48,7;0,0;40\n;;0,0;42\n';
    expect(sheetOf(csv).readings).toMatchObject({ R: ['2.0', '2.5'], l: ['43.2', '48.7'], n: ['41', '40', '42'], L: '60.1', n0: '0' });
  });

  test('may name a screw gauge of its own', () => {
    const csv = GOOD.replace('R,l', 'pitch,N,R,l').replace(/^(\d)/gm, ',,$1').replace(',,2.0', '1,100,2.0').replaceAll('0.0', '0');
    expect(sheetOf(csv).readings).toMatchObject({ pitch: '1', N: '100' });
  });
});

describe('is refused with its row and column', () => {
  test.each<[string, string, string[]]>([
    ['nothing below the heads', HEADS, ['bench.csv: holds no readings; write the names of the columns in the first row and the readings below']],
    ['a null point off the wire', GOOD.replace('43.2', '432'), ['bench.csv, row 2, l: "432" is not on the bridge wire; a null point lies between 0 and 100 cm']],
    ['a division that the thimble has not', GOOD.replace(',40', ',50'), ['bench.csv, row 3, n: "50" is no division of this circular scale; it has whole numbers from 0 to 49']],
    ['half a division', GOOD.replace(',40', ',40.5'), ['bench.csv, row 3, n: "40.5" is no division of this circular scale; it has whole numbers from 0 to 49']],
    ['a main-scale reading between two marks', GOOD.replace('0.0,42', '0.3,42'), ['bench.csv, row 4, msr: "0.3" is no mark of the main scale; its marks are 0.5 mm apart']],
    ['no resistance', GOOD.replace('2.0,', '0,'), ['bench.csv, row 2, R: "0" is not above zero']],
    ['a word', GOOD.replace('43.2', 'middle'), ['bench.csv, row 2, l: "middle" is no number; write it as 43.2']],
    ['another unit', GOOD.replace('R,l', 'R,l/mm'), ['bench.csv, row 1, "l/mm": is in mm, where the record has l in cm; convert the column']],
    ['a column that nothing is read for', GOOD.replace('R,l', 'R,current'), ['bench.csv, row 1, "current": no reading of this experiment is called so; its columns are R, l, n0, msr, n, L', 'bench.csv, l: has no value; give a column of that name']],
    ['the same column twice', GOOD.replace('MSR,n,', 'MSR,l,'), ['bench.csv, row 1, "l": l stands in two columns; keep one of them', 'bench.csv, n: has no value; give a column of that name']],
    ['a second length', GOOD.replace('2.5,48.7,0.0,40', '2.5,48.7,0.0,40,60.2'), ['bench.csv, row 3, L: one value a record, but here is a second; keep one']],
    ['a gap in a column', GOOD.replace('2.5,48.7', '2.5,'), ['bench.csv, l: has 2 values where another column of its table has 3; fill the gap, or delete the row']],
    ['a zero whose side is not told', GOOD.replace(',zero', '').replace(',positive', ''), ['bench.csv, zero: n0 is not zero; say which it is in a column zero: positive or negative']],
    ['a side of zero that there is not', GOOD.replace('positive', 'left'), ['bench.csv, row 2, zero: "left" is none of positive, negative', 'bench.csv, zero: n0 is not zero; say which it is in a column zero: positive or negative']],
    ['one row', `${HEADS}2.0,43.2,0.0,41,60.1,0\n`, ['bench.csv, R: one row makes no table; give two or more', 'bench.csv, msr: one row makes no table; give two or more']],
  ])('%s', (_, csv, lines) => {
    expect(refusal(csv)).toEqual(lines);
  });
});

describe('readings are looked at again', () => {
  const about = (sheet: Sheet) => doubts(sheet, programOf(experiment, sheet), experiment.layout, ask);
  const sheets = Array.from({ length: 1000 }, (_, i) => experiment.observe(ask, streams('measured').within('set', i))).flatMap((observed) => {
    if (!observed) return [];
    const { form, readings } = observed;
    const sheet: Sheet = { format: 1, edition: 1, experiment: 'resistivity', origin: 'measured', form, readings, conventions: conventions(order, ask, experiment, programOf(experiment, observed).steps) };
    return [sheet];
  });
  const withL = (sheet: Sheet, row: number, by: number): Sheet => {
    const l = (sheet.readings['l'] as string[]).map((value, i) => (i === row ? (Number(value) + by).toString() : value));
    return { ...sheet, readings: { ...sheet.readings, l } };
  };

  test('where a null point lies outside the window', () => {
    expect(about(sheetOf(GOOD.replace('2.0,43.2', '1.0,27.6')))).toEqual([{ about: 'window', id: 'l', row: 0 }] satisfies Doubt[]);
  });

  test('where a row does not fit: a misreading of 5 cm is found in 98 of 100 sets, in its row', () => {
    const found = sheets.filter((sheet, i) => about(withL(sheet, i % 4, i % 8 < 4 ? 5 : -5)).some(({ about, id, row }) => about === 'row' && id === 'X' && row === i % 4));
    expect(found.length / sheets.length).toBeGreaterThan(0.98);
  });

  test('and where all is well hardly ever: in 1 of 100 sets at most', () => {
    const alarmed = sheets.filter((sheet) => about(sheet).length > 0);
    expect(alarmed.length / sheets.length).toBeLessThan(0.01);
  });
});
