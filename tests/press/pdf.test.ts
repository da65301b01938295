import { expect, test } from 'vitest';
import { renumbered, undated } from '../../generators/press/pdf.ts';

const info = (dates: string) => `%PDF-1.4\n1 0 obj\n<</Title (CreationDate)\n${dates}>>\nendobj\n`;
const rest = '2 0 obj\n(/ModDate (D:20200101000000))\nendobj\n';

test('the dates of making become blanks of the same length, and nothing else changes', () => {
  const dates = "/CreationDate (D:20261125161849+00'00')\n/ModDate (D:20261125161849+00'00')";
  const out = Buffer.from(undated(Buffer.from(info(dates) + rest))).toString();
  expect(out).toBe(info(dates.replace(/[^\n]/g, ' ')) + rest);
});

test('a PDF without dates stays as it is, byte for byte', () => {
  const bytes = Buffer.concat([Buffer.from(info('')), Buffer.from([0, 128, 255])]);
  expect(Buffer.from(undated(bytes))).toEqual(bytes);
});

test('table headings are numbered from 1, in the same order and as many digits, wherever they are named', () => {
  const named = (one: string, two: string) =>
    `2 0 obj\n<</S /TH /ID (${one})>>\nendobj\n3 0 obj\n<</S /TH /ID (${two})>>\nendobj\n` +
    `4 0 obj\n<</S /TD /Headers [(${two}) (${one})]>>\nendobj\n5 0 obj\n<</Limits [(${one}) (${two})]\n/Names [(${one}) 2 0 R (${two}) 3 0 R]>>\nendobj\n`;
  const out = Buffer.from(renumbered(Buffer.from(named('node00000815', 'node00004711')))).toString();
  expect(out).toBe(named('node00000001', 'node00000002'));
});

test('a title that looks like a heading’s name stays', () => {
  const bytes = Buffer.concat([Buffer.from('1 0 obj\n<</Title (node00000815)>>\nendobj\n2 0 obj\n<</ID (node00000007)>>\nendobj\n'), Buffer.from([0, 128, 255])]);
  expect(Buffer.from(renumbered(bytes)).toString('latin1')).toBe(bytes.toString('latin1').replace('00000007', '00000001'));
});
