import { describe, expect, test } from 'vitest';
import { readClassList } from '../../generators/order/class-list.ts';
import { singleBytes, utf8 } from './bytes.ts';
import { known } from './known.ts';
import { linesOf } from './lines.ts';

const refusal = (csv: string | Uint8Array) => linesOf(() => readClassList(typeof csv === 'string' ? utf8(csv) : csv, 'class.csv', known));
const NOT_TEXT = 'class.csv: this is not a text file; if it is a spreadsheet, open it, choose "Save as" or "Export", and save it as CSV (UTF-8)';
const EMPTY = 'class.csv: the file is empty; give a header row (roll, name) and one row for each student';
const BLANK = (row: number, field: string) => `class.csv, row ${row}, ${field}: the ${field} is blank; fill it in, or delete the row`;
const TWICE = (row: number, roll: string, first: number) =>
  `class.csv, row ${row}, roll: roll ${roll} appears twice (first in row ${first}); give one of them another number`;
const OPEN = (row: number) => `class.csv, row ${row}: a quotation mark is opened here and never closed; close it or take it out`;
const NO_HEADER = (row: number, first: string) => `class.csv, row ${row}: no header found: the first row must name the columns, roll and name; it reads "${first}"`;
const WHOLE = 'write the whole wire, such as "constantan, SWG 28, 60 cm"';

describe('a file that is no class list is refused', () => {
  test.each<[string, string | Uint8Array, string]>([
    ['empty', '', EMPTY],
    ['a mark alone', '\ufeff', EMPTY],
    ['blank lines', '\n\r\n \n,,\n', EMPTY],
    ['a spreadsheet (zip)', 'PK\u0003\u0004\u0014\0', NOT_TEXT],
    ['an old spreadsheet', Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1), NOT_TEXT],
    ['a PDF', '%PDF-1.7\n', NOT_TEXT],
    ['a zero byte among text', 'roll,name\n1,A\0B\n', NOT_TEXT],
    ['a zero byte among single bytes', singleBytes('roll,name\n1,\xe9\0B\n'), NOT_TEXT],
    ['half a letter of UTF-16', Uint8Array.of(0xff, 0xfe, 0x41), NOT_TEXT],
    ['half a pair in UTF-16', Uint8Array.of(0xff, 0xfe, 0x00, 0xd8, 0x41, 0x00), NOT_TEXT],
    ['5 MB', new Uint8Array(5_000_000).fill(65), 'class.csv: the file is larger than 4 MB; give the class list alone'],
    ['2001 students', `roll,name\n${Array.from({ length: 2001 }, (_, i) => `${i},A`).join('\n')}`, 'class.csv: 2001 students are more than the 2000 of a pack; split the list'],
    ['a header alone', 'roll,name\n', 'class.csv: no students below the header; add one row for each student'],
    ['no header', '1,Asmira\n2,Bevan\n', NO_HEADER(1, '1, Asmira')],
    ['a title above the header', '\nTidewheel School\nroll,name\n1,A\n', NO_HEADER(2, 'Tidewheel School')],
    ['prose', 'Dear all, here is my class.', NO_HEADER(1, 'Dear all, here is my class.')],
    ['a web page', '<!DOCTYPE html>\n<p>', NO_HEADER(1, '<!DOCTYPE html>')],
    ['no roll', 'name,house\nA,red\n', 'class.csv, row 1, roll: no column roll; the header has "name", "house"; add a column roll'],
    ['no name', 'roll,first name\n1,A\n', 'class.csv, row 1, name: no column name; the header has "roll", "first name"; add a column name'],
    ['a mistyped roll', 'rolle,name\n1,A\n', 'class.csv, row 1, roll: no column roll; did you mean "rolle"? Call it roll'],
    ['a mistyped name', 'roll,nmae x,nam\n1,A,B\n', 'class.csv, row 1, name: no column name; did you mean "nam"? Call it name'],
    ['two names', 'roll,name,Student\n1,A,B\n', 'class.csv, row 1, name: 2 columns could be the name: "name", "Student"; keep one of them'],
    ['two rolls', 'Roll,no,name\n1,2,A\n', 'class.csv, row 1, roll: 2 columns could be the roll: "Roll", "no"; keep one of them'],
    ['two wires', 'roll,name,wire,wires\n1,A,,\n', 'class.csv, row 1, wire: 2 columns could be the wire: "wire", "wires"; keep one of them'],
    ['columns split by bars', 'roll|name\n1|A\n', NO_HEADER(1, 'roll|name')],
  ])('%s', (_, csv, line) => {
    expect(refusal(csv)).toEqual([line]);
  });
});

describe('a row is refused with its row and column', () => {
  test.each<[string, string, string[]]>([
    ['the same roll twice', 'roll,name\n7,A\n8,B\n7,C\n', [TWICE(4, '7', 2)]],
    ['the same roll three times', 'roll,name\n7,A\n7,B\n7,C\n', [TWICE(3, '7', 2), TWICE(4, '7', 2)]],
    ['the same roll with spaces', 'roll,name\n7,A\n 7 ,B\n', [TWICE(3, '7', 2)]],
    ['the same roll in two ways of composing', 'roll,name\nE\u0301,A\n\u00c9,B\n', [TWICE(3, '\u00c9', 2)]],
    ['the same roll with an invisible letter', 'roll,name\n7,A\n7\u200b,B\n', [TWICE(3, '7\u200b', 2)]],
    ['the same roll below a blank line', 'roll,name\n\n7,A\n\n\n7,B\n', [TWICE(6, '7', 3)]],
    ['the same roll below the separator line', 'sep=,\nroll,name\n7,A\n7,B\n', [TWICE(4, '7', 3)]],
    ['no roll', 'roll,name\n,A\n', [BLANK(2, 'roll')]],
    ['no name', 'roll,name\n1,\n', [BLANK(2, 'name')]],
    ['a row that is too short', 'house,roll,name\nred,1\n', [BLANK(2, 'name')]],
    ['neither, but a house', 'house,roll,name\nred,,\n', [BLANK(2, 'roll'), BLANK(2, 'name')]],
    ['a name of spaces', 'roll,name\n1,"  \u00a0 "\n', [BLANK(2, 'name')]],
    ['a name of invisible letters', 'roll,name\n1,\u200b\u2060\n', [BLANK(2, 'name')]],
    ['two blank rolls, which are no doubles', 'roll,name\n,A\n,B\n', [BLANK(2, 'roll'), BLANK(3, 'roll')]],
    ['a comma in a name', 'roll,name\n1,Tollun, Asmira\n', ['class.csv, row 2: 3 cells where the header has 2; put quotation marks round a cell that holds a comma']],
    ['a name on two lines', 'roll,name\n1,"Asmira\nTollun"\n', ['class.csv, row 2, name: "Asmira Tollun" runs over two lines; write it on one, and look for a quotation mark that is not closed']],
    ['a student swallowed by quotation marks', 'roll,name\n1,"Asmira\n2,Bevan"\n', ['class.csv, row 2, name: "Asmira 2,Bevan" runs over two lines; write it on one, and look for a quotation mark that is not closed']],
    ['a bell in a name', 'roll,name\n1,A\u0007B\n', ['class.csv, row 2, name: "A B" holds a character that cannot be printed; type it again']],
    ['a tab in a roll', 'roll,name\n1\t2,B\n', ['class.csv, row 2, roll: "1 2" holds a character that cannot be printed; type it again']],
    ['a letter lost', 'roll,name\n1,Ren\ufffd\n', ['class.csv, row 2, name: "Ren\ufffd" has lost a letter on the way (\ufffd); type it again']],
    ['a name of 301 letters', `roll,name\n1,${'x'.repeat(301)}\n`, [`class.csv, row 2, name: "${'x'.repeat(60)}…" is longer than 300 letters; shorten it`]],
    ['a roll of 41 letters', `roll,name\n${'9'.repeat(41)},A\n`, [`class.csv, row 2, roll: "${'9'.repeat(41)}" is longer than 40 letters; shorten it`]],
    ['a quotation mark not closed', 'roll,name\n1,A\n2,"B\n3,C\n', [OPEN(3)]],
    ['a quotation mark not closed in the first row', 'roll,"name\n1,A\n', [OPEN(1)]],
    ['a quotation mark not closed below the separator line', 'sep=;\nroll;name\n1;"A', [OPEN(3)]],
    ['a wire of no known material', 'roll,name,wire\n1,A,"nicrome, SWG 28, 60 cm"\n', ['class.csv, row 2, wire: no material "nicrome"; did you mean nichrome?']],
    ['a wire without quotation marks', 'roll,name,wire\n1,A,nichrome, SWG 28, 60 cm\n', [
      'class.csv, row 2: 5 cells where the header has 3; put quotation marks round a cell that holds a comma',
      `class.csv, row 2, wire: "nichrome" gives no thickness and no length; ${WHOLE}`,
    ]],
    ['a wire of no length', 'roll,name,wire\n1,A,"nichrome, SWG 28, 0 cm"\n', ['class.csv, row 2, wire: 0 cm is not above zero; give the size of a real wire']],
    ['a wire that is a formula', 'roll,name,wire\n1,A,=SUM(A1)\n', ['class.csv, row 2, wire: "=SUM(A1)" is not part of a wire; leave it out']],
    ['all at once, by row', 'name;roll;wire\nA;7;tin\n;8;\nC;7;\n', [
      `class.csv, row 2, wire: "tin" gives no thickness and no length; ${WHOLE}`,
      'class.csv, row 2, wire: no material "tin"; choose from constantan, manganin, nichrome, german silver',
      BLANK(3, 'name'),
      TWICE(4, '7', 2),
    ]],
  ])('%s', (_, csv, lines) => {
    expect(refusal(csv)).toEqual(lines);
  });

  test('with a letter that Windows-1252 does not have', () => {
    expect(refusal(singleBytes('roll,name\n1,\x81A\n'))).toEqual(['class.csv, row 2, name: "\ufffdA" has lost a letter on the way (\ufffd); type it again']);
  });

  test('and the hundred first of many stand for the rest', () => {
    const lines = refusal(`roll,name\n${',A\n'.repeat(300)}`);
    expect(lines).toHaveLength(101);
    expect(lines.at(-1)).toBe('and 200 more; put these right first');
  });
});
