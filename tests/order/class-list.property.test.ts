import fc from 'fast-check';
import { expect, test } from 'vitest';
import { UserMistake } from '../../generators/mistake.ts';
import { readClassList } from '../../generators/order/class-list.ts';
import { ENCODINGS, utf8 } from './bytes.ts';
import { known } from './known.ts';

/** Text of one line that a sheet can print: what is left of it is not blank and has no space at its ends. */
const line = (maxLength: number) => fc.string({ unit: 'binary', maxLength })
  .map((text) => text.replace(/[\p{Cc}\ufffd]/gu, '').trim())
  .filter((text) => /[^\p{Cf}\p{Z}]/u.test(text));
const looks = (roll: string) => roll.normalize('NFC').replace(/\p{Cf}/gu, '').trim();
const student = fc.record({ roll: line(12), name: line(40), note: fc.string({ unit: 'grapheme' }) });
const students = fc.uniqueArray(student, { selector: ({ roll }) => looks(roll), minLength: 1, maxLength: 20 });
const dialect = fc.record({
  delimiter: fc.constantFrom(',', ';', '\t'),
  lineEnd: fc.constantFrom('\n', '\r\n', '\r'),
  encoding: fc.constantFrom(...Object.keys(ENCODINGS)),
  quoteAll: fc.boolean(),
  order: fc.shuffledSubarray(['roll', 'name', 'note'] as const, { minLength: 3 }),
});

test('any class written in any dialect comes back unchanged', () => {
  fc.assert(fc.property(students, dialect, (list, { delimiter, lineEnd, encoding, quoteAll, order }) => {
    const cell = (text: string) => (quoteAll || /["\r\n,;\t]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
    const rows = [order, ...list.map((one) => order.map((column) => one[column]))];
    const csv = rows.map((row) => row.map(cell).join(delimiter)).join(lineEnd);
    const read = readClassList(ENCODINGS[encoding]!(csv), 'class.csv', known);
    expect(read.notices).toEqual([]);
    expect(read.students).toEqual(list.map(({ roll, name }, i) => ({ roll, name, row: i + 2 })));
  }), { numRuns: 300 });
});

const broken = fc.oneof(
  fc.uint8Array({ maxLength: 300 }),
  fc.array(fc.constantFrom('roll', 'name', 'wire', ',', ';', '\t', '"', '\n', '\r', '7', 'A', ' ', 'SWG', 'cm', '-', '.', '\0', '\ufeff', 'é')).map((parts) => utf8(parts.join(''))),
  fc.uint8Array({ maxLength: 100 }).map((bytes) => Uint8Array.of(...utf8('roll,name,wire\n'), ...bytes)),
);

test('any bytes give a class list or a UserMistake that names the file', () => {
  fc.assert(fc.property(broken, (bytes) => {
    try {
      expect(readClassList(bytes, 'class.csv', known).students.length).toBeGreaterThan(0);
    } catch (error) {
      expect(error).toBeInstanceOf(UserMistake);
      expect((error as UserMistake).mistakes.every(({ file }) => file === 'class.csv')).toBe(true);
    }
  }), { numRuns: 2000 });
});
