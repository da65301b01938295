import { Buffer } from 'node:buffer';
import { relative } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readAsked } from '../../generators/cli/asked.ts';
import { scratch, WIRE } from './slidewire.ts';

const { at, write } = scratch();
const LIST = 'roll,name\n1,Perrin Oakhollow\n';
const order = write('orders/order.yaml', `class: lists/class.csv\nwires: "${WIRE}"\nrows: 5\n`);
write('orders/lists/class.csv', LIST);
const read = (...args: string[]) => readAsked(args, []);
const fromHere = (path: string) => relative(process.cwd(), path);

describe('what is asked', () => {
  test('comes from a file, its class list from beside that file', () => {
    const asked = read(fromHere(order));
    expect(asked.order.rows).toBe(5);
    expect(asked.students.map(({ name }) => name)).toEqual(['Perrin Oakhollow']);
    expect(asked.files).toEqual({ order: 'order.yaml', class: 'class.csv' });
  });

  test('may name the class list by an absolute path', () => {
    const absolute = write('elsewhere/order.yaml', `class: ${at('orders/lists/class.csv')}\nwires: "${WIRE}"\n`);
    expect(read(absolute).students).toHaveLength(1);
  });

  test('takes --class from the working directory, and not from beside the file', () => {
    const other = write('here.csv', 'roll,name\n1,A\n2,B\n');
    expect(read(order, '--class', fromHere(other)).students).toHaveLength(2);
    expect(() => read(order, '--class', 'lists/class.csv')).toThrow('lists/class.csv: there is no such file; check the path');
  });

  test('takes flags alone, and over the file', () => {
    expect(read('--wire', WIRE, '--class', fromHere(at('orders/lists/class.csv'))).students).toHaveLength(1);
    expect(read(order, '--rows', '3').order.rows).toBe(3);
    expect(read(order, '--wire', WIRE, '--wire', 'nichrome, SWG 26, 45 cm').order.wires).toHaveLength(2);
  });

  test('is read in the encodings that editors write', () => {
    const text = `title: Tidewheel £5\nwires: "${WIRE}"\n`;
    const utf16 = Buffer.from(`\ufeff${text}`, 'utf16le');
    expect(read(write('utf16.yaml', utf16)).order.title).toBe('Tidewheel £5');
    const old = read(write('old.yaml', Buffer.from(text, 'latin1')));
    expect(old.order.title).toBe('Tidewheel £5');
    expect(old.notices[0]).toContain('old.yaml is not in UTF-8');
  });
});

describe('is refused', () => {
  test.each([
    [[], 'no order; name its file, or say at least which experiment'],
    [[order, order], 'one order at a time'],
    [['--wire', 'constantan,', 'SWG', '28'], 'put quotation marks round a value that holds spaces'],
    [[at('none.yaml')], 'there is no such file; check the path'],
    [[at('orders')], 'this is a folder, not a file; check the path'],
    [[order, '--rows', '9'], '--rows: "9" does not fit here'],
    [[write('gone.yaml', `class: gone.csv\nwires: "${WIRE}"\n`)], 'gone.csv: there is no such file'],
    [[write('picture.yaml', '%PDF-1.4\n')], 'picture.yaml: '],
  ])('%j', (args, words) => {
    expect(() => read(...args)).toThrow(words);
    expect(() => read(...args)).toThrow(expect.objectContaining({ name: 'UserMistake' }));
  });
});
