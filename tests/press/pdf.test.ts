import { expect, test } from 'vitest';
import { undated } from '../../generators/press/pdf.ts';

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
