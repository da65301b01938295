import { describe, expect, test } from 'vitest';
import { readClassList } from '../../generators/order/class-list.ts';
import { ENCODINGS, singleBytes, utf8 } from './bytes.ts';
import { known } from './known.ts';

const read = (csv: string | Uint8Array) => readClassList(typeof csv === 'string' ? utf8(csv) : csv, 'class.csv', known);
const pairs = (csv: string | Uint8Array) => read(csv).students.map(({ roll, name }) => [roll, name]);

describe('a class list is read', () => {
  const two = [['7', 'Asmira'], ['8', 'Bevan']];

  test.each<[string, string]>([
    ['with commas', 'roll,name\n7,Asmira\n8,Bevan\n'],
    ['with semicolons', 'roll;name\n7;Asmira\n8;Bevan\n'],
    ['with tabs', 'roll\tname\n7\tAsmira\n8\tBevan\n'],
    ['with Windows line ends', 'roll,name\r\n7,Asmira\r\n8,Bevan\r\n'],
    ['with old Macintosh line ends', 'roll,name\r7,Asmira\r8,Bevan\r'],
    ['without a last line end', 'roll,name\n7,Asmira\n8,Bevan'],
    ['with a line that names the separator', 'sep=;\nroll;name\n7;Asmira\n8;Bevan\n'],
    ['with its columns in another order', 'name,roll\nAsmira,7\nBevan,8\n'],
    ['with other columns', 'house,Name,phone,ROLL\nred,Asmira,"1,2",7\n,Bevan,,8\n'],
    ['with other words in the header', 'Sr. No.;Student Name\n7;Asmira\n8;Bevan\n'],
    ['with capitals and spaces in the header', ' ROLL  NO ,  Full Name\n7,Asmira\n8,Bevan\n'],
    ['with a quoted header', '"Roll_No","Name"\n"7","Asmira"\n"8","Bevan"\n'],
    ['with a header that holds the other separators', 'roll;name;"house, year; group"\n7;Asmira;\n8;Bevan;\n'],
    ['with blank lines and empty rows', '\n\nroll,name\n\n7,Asmira\n,\n  ,  \n8,Bevan\n\n'],
    ['with spaces round the cells', 'roll,name\n 7 , Asmira \n8,\u00a0Bevan\u00a0\n'],
    ['with empty cells at the end of rows', 'roll,name\n7,Asmira,,\n8,Bevan,\n'],
    ['with rows of two lines in other columns', 'roll,name,address\n7,Asmira,"one\ntwo"\n8,Bevan,\n'],
  ])('%s', (_, csv) => {
    expect(pairs(csv)).toEqual(two);
  });

  test.each(Object.entries(ENCODINGS))('in %s', (_, encode) => {
    expect(read(encode('roll,name\n7,अनिका\n8,Łucja 😀\n'))).toEqual({
      students: [{ roll: '7', name: 'अनिका', row: 2 }, { roll: '8', name: 'Łucja 😀', row: 3 }],
      notices: [],
    });
  });

  test('in Windows-1252, with a notice', () => {
    // Windows-1252 has curly quotation marks at 0x93 and 0x94, where Latin-1 has controls (from memory).
    const list = read(singleBytes('roll,name\n7,Ren\xe9 \x93Tollun\x94\n'));
    expect(list.students.map(({ name }) => name)).toEqual(['René “Tollun”']);
    expect(list.notices).toEqual(['class.csv is not in UTF-8; it was read as Windows-1252. Check the names on the sheets, and save the file as UTF-8 if one is wrong']);
  });

  test('with a notice for a column that may have been meant for the wires', () => {
    expect(read('roll,name,wier\n7,Asmira,x\n').notices).toEqual(['column "wier" was left out; if it holds the wires, call it wire']);
  });

  test('with rolls as they are written', () => {
    expect(pairs('roll,name\n007,A\n7,B\n7.0,C\n1e3,D\n12-B/3,E\n٧,F\n')).toEqual([['007', 'A'], ['7', 'B'], ['7.0', 'C'], ['1e3', 'D'], ['12-B/3', 'E'], ['٧', 'F']]);
  });

  test('with rows counted as a spreadsheet shows them', () => {
    const { students } = read('roll,name,note\n\n1,A,"two\nlines"\n\n2,B,\n');
    expect(students.map(({ row }) => row)).toEqual([3, 5]);
  });

  test('with the wires of single students', () => {
    const { students } = read('roll;name;wire\n1;A;constantan, SWG 28, 60 cm\n2;B;\n3;C;0,38 mm manganin 0,8 m\n');
    expect(students.map(({ wire }) => wire)).toEqual([
      { material: 'constantan', gauge: { system: 'SWG', number: 28 }, lengthCm: 60 },
      undefined,
      { material: 'manganin', gauge: { mm: '0.38' }, lengthCm: 80 },
    ]);
  });

  test('of 2000 students', () => {
    const rows = Array.from({ length: 2000 }, (_, i) => `${i + 1},Student ${i + 1}`);
    expect(read(['roll,name', ...rows].join('\n')).students).toHaveLength(2000);
  });
});

describe('a hostile name is kept as it is', () => {
  test.each([
    '<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', '&lt;b&gt; &amp;', "O'Tarrish", 'say "hello"',
    '../../etc/passwd', 'C:\\temp\\x', 'a/b', '\\input{secret} $x^2$ % # _ ~', '{{ seed }} {% raw %}', '${1 + 1} `x`', '=1+1', '@SUM(A1)', '-1', '+1',
    '😀👩🏽‍🔬🇮🇳', 'محمد لانتيربي', 'ליאור', '小川 林檎', 'अनिका वेदराज', 'தமிழ்', 'ก้อง', 'Z͑ͫ̓ͪ̂ͫa̴l', '\u202egnirts\u202c', 'x'.repeat(200), '名'.repeat(200),
    'null', 'undefined', '__proto__', 'constructor', 'NaN', 'true', '0', '-', '.', 'CON', 'a;b', 'a,b', 'a  b', "'); DROP TABLE class;--",
  ])('%s', (name) => {
    expect(pairs(`roll,name\n1,"${name.replaceAll('"', '""')}"\n`)).toEqual([['1', name]]);
  });
});
