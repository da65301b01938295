import { describe, expect, test } from 'vitest';
import { orderFromFlags, readOrder } from '../../generators/order/read-order.ts';
import { known } from './known.ts';
import { linesOf } from './lines.ts';

const WIRE = 'wires: constantan, SWG 28, 60 cm\n';
const EXAMPLE = '"constantan, SWG 28, 60 cm"';
const refusal = (yaml: string) => linesOf(() => readOrder(yaml, 'order.yaml', known));
const KEYS = 'title, experiment, class, wires, box, gap, rows, window, hands, sections, readings, drawn, latitude, paper, size, symbols, rounding, tables, decimal, reasons, limits, resistivity, double-sided, singles, language, seed';
const SECTIONS = 'practice (one page), record (all), or a list of aim, apparatus, circuit, formula, check, procedure, observations, working, result, precautions, errors, viva, cautions';
const PLUGS = 'plug values in ohms such as "0.5 1 2 2 5", each from 0.01 to 10000';
const WINDOW = 'two lengths in cm such as 40-60, between 5 and 95 and at least 5 apart';
const BOX_CLASS = 'the class of the box from 0 to 10, in per cent of R';
const NOT_ENTRIES = 'order.yaml: the order is not a list of entries; write one entry a line, such as "rows: 4"';
const TOO_DEEP = 'order.yaml: brackets or dashes are nested too deep; write one entry a line, such as "rows: 4"';
const UNREADABLE = 'cannot be read; write one entry a line, such as "rows: 4", and the items of a list below it, each after "- "';

describe('an entry that does not fit is refused with its line and name', () => {
  test.each<[string, string, string]>([
    ['rows: seven', 'rows', '"seven" does not fit here; it takes a whole number from 3 to 6'],
    ['rows: 2', 'rows', '"2" does not fit here; it takes a whole number from 3 to 6'],
    ['rows: 7', 'rows', '"7" does not fit here; it takes a whole number from 3 to 6'],
    ['rows: 4.5', 'rows', '"4.5" does not fit here; it takes a whole number from 3 to 6'],
    ['rows: -4', 'rows', '"-4" does not fit here; it takes a whole number from 3 to 6'],
    ['rows: 0x4', 'rows', '"0x4" does not fit here; it takes a whole number from 3 to 6'],
    ['rows: .inf', 'rows', '".inf" does not fit here; it takes a whole number from 3 to 6'],
    ['rows: [4]', 'rows', '"["4"]" does not fit here; it takes a whole number from 3 to 6'],
    ['rows: {n: 4}', 'rows', '"{"n":"4"}" does not fit here; it takes a whole number from 3 to 6'],
    ['window: 60-40', 'window', `"60-40" does not fit here; it takes ${WINDOW}`],
    ['window: 40', 'window', `"40" does not fit here; it takes ${WINDOW}`],
    ['window: 40-44', 'window', `"40-44" does not fit here; it takes ${WINDOW}`],
    ['window: 0-100', 'window', `"0-100" does not fit here; it takes ${WINDOW}`],
    ['window: 40-50-60', 'window', `"40-50-60" does not fit here; it takes ${WINDOW}`],
    ['window: -40-60', 'window', `"-40-60" does not fit here; it takes ${WINDOW}`],
    ['window: [40, x]', 'window 2', `"x" does not fit here; it takes ${WINDOW}`],
    ['window: [40, 50, 60]', 'window', `"["40","50","60"]" does not fit here; it takes ${WINDOW}`],
    ['window: 40 - 60 mm', 'window', `"40 - 60 mm" does not fit here; it takes ${WINDOW}`],
    ['window: 4.5.1-60', 'window 1', `"4.5.1" does not fit here; it takes ${WINDOW}`],
    ['window: wide', 'window', `"wide" does not fit here; it takes ${WINDOW}`],
    ['box: 1 two 5', 'box 2', `"two" does not fit here; it takes ${PLUGS}`],
    ['box: 0 1 2', 'box 1', `"0" does not fit here; it takes ${PLUGS}`],
    ['box: 1, -2', 'box 2', `"-2" does not fit here; it takes ${PLUGS}`],
    ['box: [1, 20000]', 'box 2', `"20000" does not fit here; it takes ${PLUGS}`],
    ['box: []', 'box', `"[]" does not fit here; it takes ${PLUGS}`],
    ['box: {a: 1}', 'box', `"{"a":"1"}" does not fit here; it takes ${PLUGS}`],
    [`box: ${'1 '.repeat(61)}`, 'box', `"${'1 '.repeat(30)}…" does not fit here; it takes ${PLUGS}`],
    ['gap: middle', 'gap', '"middle" does not fit here; it takes one of the words left, right'],
    ['gap: rigth', 'gap', '"rigth" does not fit here; did you mean right?'],
    ['gap: [left]', 'gap', '"["left"]" does not fit here; it takes one of the words left, right'],
    ['hands: carefull', 'hands', '"carefull" does not fit here; did you mean careful?'],
    ['hands: shaky', 'hands', '"shaky" does not fit here; it takes one of the words careful, usual, hurried'],
    ['readings: hidden', 'readings', '"hidden" does not fit here; it takes one of the words printed, blank'],
    ['readings: printet', 'readings', '"printet" does not fit here; did you mean printed?'],
    ['paper: A5', 'paper', '"A5" does not fit here; did you mean A4?'],
    ['paper: legal', 'paper', '"legal" does not fit here; it takes one of the words A4, Letter'],
    ['size: 16pt', 'size', '"16pt" does not fit here; did you mean 18pt?'],
    ['size: huge', 'size', '"huge" does not fit here; it takes one of the words normal, 18pt, 24pt'],
    ['symbols: zig-zag', 'symbols', '"zig-zag" does not fit here; did you mean zigzag?'],
    ['symbols: ANSI', 'symbols', '"ANSI" does not fit here; it takes one of the words IEC, zigzag'],
    ['rounding: down', 'rounding', '"down" does not fit here; it takes one of the words even, up'],
    ['rounding: evens', 'rounding', '"evens" does not fit here; did you mean even?'],
    ['tables: maybe', 'tables', '"maybe" does not fit here; it takes yes or no'],
    ['tables: yess', 'tables', '"yess" does not fit here; did you mean yes?'],
    ['tables: 1', 'tables', '"1" does not fit here; it takes yes or no'],
    ['double-sided: both', 'double-sided', '"both" does not fit here; it takes yes or no'],
    ['language: Klingon', 'language', '"Klingon" does not fit here; it takes the word en'],
    ['experiment: resistvity', 'experiment', '"resistvity" does not fit here; did you mean resistivity?'],
    ['experiment: pendulum', 'experiment', '"pendulum" does not fit here; it takes the id of an experiment, see slidewire experiments'],
    ['resistivity: nsert', 'resistivity', '"nsert" does not fit here; did you mean ncert?'],
    ['resistivity: 49e-8', 'resistivity', '"49e-8" does not fit here; it takes one of the words openstax-college, ncert'],
    ['sections: vivva', 'sections 1', '"vivva" does not fit here; did you mean viva?'],
    ['sections: recrod', 'sections 1', '"recrod" does not fit here; did you mean record?'],
    ['sections: [aim, theory]', 'sections 2', `"theory" does not fit here; it takes ${SECTIONS}`],
    ['sections: [practice, viva]', 'sections 1', `"practice" does not fit here; it takes ${SECTIONS}`],
    ['sections: []', 'sections', `"[]" does not fit here; it takes ${SECTIONS}`],
    ['sections: {aim: yes}', 'sections', `"{"aim":"yes"}" does not fit here; it takes ${SECTIONS}`],
    ['sections: [[aim]]', 'sections 1', `"["aim"]" does not fit here; it takes ${SECTIONS}`],
    [`title: ${'x'.repeat(121)}`, 'title', `"${'x'.repeat(60)}…" does not fit here; it takes a line of up to 120 letters`],
    ['title: "a\\u0007b"', 'title', '"a b" does not fit here; it takes a line of up to 120 letters'],
    ['title: [a, b]', 'title', '"["a","b"]" does not fit here; it takes a line of up to 120 letters'],
    ['class: [a.csv]', 'class', '"["a.csv"]" does not fit here; it takes the path of a CSV file with the columns roll and name'],
    [`seed: ${'7'.repeat(101)}`, 'seed', `"${'7'.repeat(60)}…" does not fit here; it takes a word or a number of up to 100 letters`],
    ['seed: {a: b}', 'seed', '"{"a":"b"}" does not fit here; it takes a word or a number of up to 100 letters'],
    ['limits: 0.1', 'limits', '"0.1" does not fit here; it takes the entries l and R, indented below it'],
    ['limits: [0.1, 0]', 'limits', '"["0.1","0"]" does not fit here; it takes the entries l and R, indented below it'],
    ['limits: {l: 0}', 'limits.l', '"0" does not fit here; it takes centimetres from 0.01 to 2'],
    ['limits: {l: 1 mm}', 'limits.l', '"1 mm" does not fit here; it takes centimetres from 0.01 to 2'],
    ['limits: {R: 50 %}', 'limits.R', `"50 %" does not fit here; it takes ${BOX_CLASS}`],
    ['limits: {R: -1}', 'limits.R', `"-1" does not fit here; it takes ${BOX_CLASS}`],
    ['limits: {r: 1}', 'limits.r', 'there is no entry "r"; did you mean R?'],
    ['limits: {length: 1}', 'limits.length', 'there is no entry "length"; the entries are l, R'],
    ['rowz: 4', 'rowz', 'there is no entry "rowz"; did you mean rows?'],
    ['Rows: 4', 'Rows', 'there is no entry "Rows"; did you mean rows?'],
    ['wire: x', 'wire', 'there is no entry "wire"; did you mean wires?'],
    ['doublesided: yes', 'doublesided', 'there is no entry "doublesided"; did you mean double-sided?'],
    ['colour: red', 'colour', `there is no entry "colour"; the entries are ${KEYS}`],
    ['__proto__: 1', '__proto__', `there is no entry "__proto__"; the entries are ${KEYS}`],
    ['constructor: 1', 'constructor', `there is no entry "constructor"; the entries are ${KEYS}`],
    ['<<: {rows: 3}', '<<', `there is no entry "<<"; the entries are ${KEYS}`],
    ['rows: 4\nrows: 4', 'rows', 'appears twice; keep one of the two entries'],
  ])('%s', (yaml, field, what) => {
    const row = 1 + yaml.split('\n').length;
    expect(refusal(WIRE + yaml)).toEqual([`order.yaml, row ${row}, ${field}: ${what}`]);
  });
});

describe('wires are refused each with its line', () => {
  test.each<[string, string, string[]]>([
    ['an empty list', 'wires: []', [`order.yaml, row 1, wires: "[]" does not fit here; it takes from 1 to 100 wires such as ${EXAMPLE}`]],
    ['an entry of its own kind', 'wires: {a: 1}', [`order.yaml, row 1, wires: "{"a":"1"}" does not fit here; it takes from 1 to 100 wires such as ${EXAMPLE}`]],
    ['a list cut at the commas', 'wires: [constantan, SWG 28, 60 cm]', [
      `order.yaml, row 1, wires 1: "constantan" gives no thickness and no length; write the whole wire, such as ${EXAMPLE}`,
      `order.yaml, row 1, wires 2: "SWG 28" gives no material and no length; write the whole wire, such as ${EXAMPLE}`,
      `order.yaml, row 1, wires 3: "60 cm" gives no material and no thickness; write the whole wire, such as ${EXAMPLE}`,
    ]],
    ['a blank one', 'wires:\n  - constantan, SWG 28, 60 cm\n  -\n', [`order.yaml, row 3, wires 2: "" gives no material and no thickness and no length; write the whole wire, such as ${EXAMPLE}`]],
    ['the third', 'wires:\n- constantan, SWG 28, 60 cm\n- constantan, SWG 28, 61 cm\n- nicrome, SWG 28, 60 cm', ['order.yaml, row 4, wires 3: no material "nicrome"; did you mean nichrome?']],
    ['two things in one', 'wires:\n- nicrome, SWG 29, 60 cm', [
      'order.yaml, row 2, wires 1: no material "nicrome"; did you mean nichrome?',
      'order.yaml, row 2, wires 1: SWG 29 is not in the table, which goes from 22 to 34; give another gauge or the diameter in mm',
    ]],
    ['entries in place of words', 'wires:\n- material: constantan\n  length: 60', [`order.yaml, row 2, wires 1: "{"material":"constantan","length":"60"}" is not a wire; write it on one line, such as ${EXAMPLE}`]],
    ['too many', `wires:\n${'- constantan, SWG 28, 60 cm\n'.repeat(101)}`, [`order.yaml, row 1, wires: "["constantan, SWG 28, 60 cm","constantan, SWG 28, 60 cm","co…" does not fit here; it takes from 1 to 100 wires such as ${EXAMPLE}`]],
  ])('%s', (_, yaml, lines) => {
    expect(refusal(yaml)).toEqual(lines);
  });
});

describe('a text that is no order is refused', () => {
  test.each<[string, string, string]>([
    ['empty', '', 'order.yaml: says nothing; write at least which experiment, such as "experiment: resistivity"'],
    ['remarks alone', '# nothing\n', 'order.yaml: says nothing; write at least which experiment, such as "experiment: resistivity"'],
    ['prose', 'Please print thirty sheets', NOT_ENTRIES],
    ['a list', '- rows\n- 4', NOT_ENTRIES],
    ['an equals sign', 'rows = 4', NOT_ENTRIES],
    ['two documents', `${WIRE}---\nrows: 4`, 'order.yaml, row 2: a second document starts here (---); give each order a file of its own'],
    ['a tab', `${WIRE}limits:\n\tl: 0.1`, 'order.yaml, row 3: "l: 0.1" starts with a tab; use spaces'],
    ['a second colon', `${WIRE}title: Class 12: wires`, 'order.yaml, row 2: "title: Class 12: wires" holds a second ": "; put the value in quotation marks'],
    ['an at sign', `${WIRE}title: @home`, 'order.yaml, row 2: "title: @home" starts its value with a sign that has a meaning of its own; put the value in quotation marks'],
    ['a quotation mark not closed', `${WIRE}title: "Class 12`, 'order.yaml, row 2: "title: "Class 12" lacks a closing mark or a colon; write entries as "rows: 4" and close every quotation mark'],
    ['a backslash', `${WIRE}class: "C:\\lists\\12.csv"`, 'order.yaml, row 2: "class: "C:\\lists\\12.csv"" holds a backslash (\\) between double quotation marks; use single ones'],
    ['a bracket not closed', `${WIRE}box: [1, 2\nrows: 4`, `order.yaml, row 3: "rows: 4" ${UNREADABLE}`],
    ['an alias', `${WIRE}title: *bold*`, 'order.yaml, row 2: "*bold*" refers to another entry; write the value itself, in quotation marks if it starts with a *'],
    ['an alias that is known', `${WIRE}title: &a x\nseed: *a`, 'order.yaml, row 3: "*a" refers to another entry; write the value itself, in quotation marks if it starts with a *'],
    ['a tag', `${WIRE}seed: !secret 7`, 'order.yaml, row 2: "seed: !secret 7" holds a tag (!); take it out, or put the value in quotation marks'],
    ['brackets without end', '['.repeat(20_000), TOO_DEEP],
    ['braces without end', '{a: '.repeat(20_000), TOO_DEEP],
    ['dashes without end', '- '.repeat(20_000), TOO_DEEP],
    ['question marks without end', '? '.repeat(20_000), TOO_DEEP],
    ['a book', 'x'.repeat(100_001), 'order.yaml: the file is longer than 100000 letters; an order is a page at most'],
  ])('%s', (_, yaml, line) => {
    expect(refusal(yaml)[0]).toBe(line);
  });

  test('even where a few lines of aliases stand for millions', () => {
    const bomb = Array.from({ length: 12 }, (_, i) => `k${i + 1}: &a${i + 1} [${Array(9).fill(`*a${i}`).join(',')}]`);
    const lines = refusal(['k0: &a0 x', ...bomb].join('\n'));
    expect(lines).toHaveLength(101);
    expect(lines[0]).toBe('order.yaml, row 2: "*a0" refers to another entry; write the value itself, in quotation marks if it starts with a *');
  });
});

test('all problems of a file come at once, by line', () => {
  expect(refusal('rowz: 4\nrows: 9\nwires: nicrome, SWG 28, 60 cm\nrows: 4\nhands: steady\n')).toEqual([
    'order.yaml, row 1, rowz: there is no entry "rowz"; did you mean rows?',
    'order.yaml, row 3, wires 1: no material "nicrome"; did you mean nichrome?',
    'order.yaml, row 4, rows: appears twice; keep one of the two entries',
    'order.yaml, row 5, hands: "steady" does not fit here; it takes one of the words careful, usual, hurried',
  ]);
});

describe('a flag that does not fit is refused by its name', () => {
  test.each<[Record<string, string | string[]>, string]>([
    [{ rows: '9' }, '--rows: "9" does not fit here; it takes a whole number from 3 to 6'],
    [{ rows: '' }, '--rows: "" does not fit here; it takes a whole number from 3 to 6'],
    [{ window: '60-40' }, `--window: "60-40" does not fit here; it takes ${WINDOW}`],
    [{ hands: 'carefull' }, '--hands: "carefull" does not fit here; did you mean careful?'],
    [{ 'limit-l': '5' }, '--limit-l: "5" does not fit here; it takes centimetres from 0.01 to 2'],
    [{ 'limit-r': 'x' }, `--limit-r: "x" does not fit here; it takes ${BOX_CLASS}`],
    [{ wire: ['constantan, SWG 28, 60 cm', 'nicrome, SWG 28, 60 cm'] }, '--wire: no material "nicrome"; did you mean nichrome?'],
    [{ seed: '' }, '--seed: "" does not fit here; it takes a word or a number of up to 100 letters'],
    [{ class: ' ' }, '--class: "" does not fit here; it takes the path of a CSV file with the columns roll and name'],
  ])('%o', (flags, line) => {
    expect(linesOf(() => orderFromFlags({ wire: ['constantan, SWG 28, 60 cm'], ...flags }, known))).toEqual([line]);
  });

  test('while the file keeps its own places', () => {
    expect(linesOf(() => readOrder(`${WIRE}hands: steady`, 'order.yaml', known, { rows: '9' }))).toEqual([
      '--rows: "9" does not fit here; it takes a whole number from 3 to 6',
      'order.yaml, row 2, hands: "steady" does not fit here; it takes one of the words careful, usual, hurried',
    ]);
  });
});
