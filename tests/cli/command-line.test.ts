import { describe, expect, test } from 'vitest';
import { type Flag, readCommandLine } from '../../generators/cli/command-line.ts';
import { UserMistake } from '../../generators/mistake.ts';

const FLAGS: Flag[] = [
  { name: 'rows', many: false, takes: 'a whole number', meaning: '' },
  { name: 'wire', many: true, takes: 'a wire', meaning: '' },
  { name: 'limit-l', many: false, takes: 'centimetres', meaning: '' },
];
const read = (...args: string[]) => readCommandLine(args, FLAGS);

function refusal(...args: string[]): string[] {
  try {
    read(...args);
  } catch (error) {
    if (error instanceof UserMistake) return error.message.split('\n');
    throw error;
  }
  throw new Error('not refused');
}

describe('a command line', () => {
  test('holds flags with their values, and what stands without one', () => {
    expect(read('order.yaml', '--rows', '4', '--limit-l=0.2')).toEqual({ flags: { rows: '4', 'limit-l': '0.2' }, positionals: ['order.yaml'] });
  });

  test('gathers a flag that may be repeated', () => {
    expect(read('--wire', 'one', '--wire=two').flags).toEqual({ wire: ['one', 'two'] });
  });

  test('keeps an empty value, and one that begins with a dash after an equals sign', () => {
    expect(read('--rows=', '--limit-l=-0.1').flags).toEqual({ rows: '', 'limit-l': '-0.1' });
  });

  test('takes all that follows two dashes as it is', () => {
    expect(read('--', '--rows').positionals).toEqual(['--rows']);
  });
});

describe('is refused', () => {
  test.each([
    [['--rowz', '4'], 'there is no flag --rowz; did you mean --rows?'],
    [['--colour=red'], 'there is no flag --colour; --help lists those there are'],
    [['-r', '4'], 'there is no flag -r; --help lists those there are'],
    [['--rows'], '--rows: stands without a value; it takes a whole number'],
    [['--limit-l', '-0.1'], '--limit-l: stands without a value; it takes centimetres'],
    [['--rows', '3', '--rows', '4'], '--rows: is given twice; give it once'],
    [['--__proto__', '1'], 'there is no flag --__proto__; --help lists those there are'],
    [['--constructor=1'], 'there is no flag --constructor; --help lists those there are'],
  ])('%j', (args, words) => {
    expect(refusal(...args)).toContain(words);
  });

  test('with every mistake at once', () => {
    expect(refusal('--rowz=1', '--limt-l=1', '--wire')).toEqual([
      'there is no flag --rowz; did you mean --rows?',
      'there is no flag --limt-l; did you mean --limit-l?',
      '--wire: stands without a value; it takes a wire',
    ]);
  });
});
