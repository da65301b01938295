import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { knownNames, loadTables } from '../../generators/cli/content.ts';
import type { Commands } from '../../generators/cli/main.ts';
import { UserMistake } from '../../generators/mistake.ts';
import { describeOrder } from '../../generators/order/flags.ts';
import { slidewire } from './slidewire.ts';

/** One command that ends as it is told. */
function command(run: () => void): Commands {
  const only = { usage: 'work', about: 'works', help: () => 'no flags', run: async () => run() };
  return { work: async () => only };
}

function failure(error: unknown): Commands {
  return command(() => {
    throw error;
  });
}

describe('the exit code', () => {
  test('is 0 for work that was done', async () => {
    expect(await slidewire(['work'], command(() => undefined))).toEqual({ code: 0, out: '', err: '' });
  });

  test('is 1 for what the user can put right, with the message alone', async () => {
    const mistake = new UserMistake([{ file: 'a.csv', row: 2, what: 'is odd' }, { what: 'and more' }], { cause: new Error('deep') });
    expect(await slidewire(['work'], failure(mistake))).toEqual({ code: 1, out: '', err: 'a.csv, row 2: is odd\nand more\n' });
  });

  test('is 70 for a fault of the program, with stack and causes', async () => {
    const bug = new TypeError('upper', { cause: new Error('middle', { cause: 'bottom' }) });
    const { code, err } = await slidewire(['work'], failure(bug));
    expect(code).toBe(70);
    expect(err).toMatch(/^slidewire: this is a fault of the program/);
    expect(err).toMatch(/TypeError: upper\n +at [^]*caused by: Error: middle\n +at [^]*caused by: bottom\n$/);
  });

  test('is 70 even for a thrown thing that is no error', async () => {
    expect(await slidewire(['work'], failure('a word'))).toMatchObject({ code: 70, err: expect.stringContaining('a word') });
  });
});

describe('a command that is not there', () => {
  test('is a mistake that names the near miss', async () => {
    expect(await slidewire(['pakc'])).toEqual({ code: 1, out: '', err: 'no command "pakc"; did you mean pack?\n' });
    expect(await slidewire(['help', 'plans'])).toEqual({ code: 1, out: '', err: 'no command "plans"; did you mean plan?\n' });
  });

  test.each(['bake', 'constructor', '__proto__', ''])('%j is a mistake that says where the commands are listed', async (name) => {
    expect(await slidewire([name])).toEqual({ code: 1, out: '', err: `no command "${name}"; slidewire help lists them\n` });
  });
});

describe('help', () => {
  test('lists the commands, each with its use, when no command or help is asked for', async () => {
    const { code, out, err } = await slidewire(['help']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    for (const use of ['pack ORDER.yaml --out DIR', 'pack --again ROLL --out DIR', 'plan ORDER.yaml', 'issue ORDER.yaml --out LEDGER.json', 'join LEDGER … --out LEDGER.json']) {
      expect(out).toContain(`slidewire ${use}\n`);
    }
    for (const args of [[], ['--help'], ['-h']]) expect((await slidewire(args)).out).toBe(out);
  });

  test('of a command is the same by three ways', async () => {
    const { out } = await slidewire(['help', 'pack']);
    for (const args of [['pack', '--help'], ['pack', '-h'], ['pack', 'order.yaml', '--help']]) expect(await slidewire(args)).toEqual({ code: 0, out, err: '' });
  });

  test.each(['pack', 'plan', 'issue'])('of %s lists every entry of an order with its flag, meaning, value and default', async (name) => {
    const { out } = await slidewire(['help', name]);
    const rows = out.split(/\n(?=  --)/).map((row) => row.replace(/\s+/g, ' ').trim());
    for (const { flag, meaning, takes, fallback } of describeOrder(knownNames(loadTables()))) {
      const row = rows.find((each) => each.startsWith(`${flag} `));
      expect(row, flag).toContain(`${flag} ${meaning} takes ${takes}${fallback === undefined ? '' : ` (default: ${fallback})`}`);
    }
    expect(rows.some((row) => row.startsWith('--out '))).toBe(name !== 'plan');
    expect(rows.filter((row) => row.includes('may be repeated')).map((row) => row.split(' ')[0])).toEqual(name === 'pack' ? ['--again', '--wire'] : ['--wire']);
  });
});

test('--version is that of the package', async () => {
  const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as { version: string };
  expect(await slidewire(['--version'])).toEqual({ code: 0, out: `${version}\n`, err: '' });
});
