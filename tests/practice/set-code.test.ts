import { describe, expect, it } from 'vitest';
import { knownNames, loadTables } from '../../generators/cli/content.ts';
import { experiments } from '../../generators/experiments/index.ts';
import { orderFromFlags } from '../../generators/order/read-order.ts';
import { makeSet } from '../../generators/practice/make-set.ts';
import { readSetCode, setCode } from '../../generators/practice/set-code.ts';
import { sheetCode } from '../../generators/sheets/code.ts';
import { issueSheets } from '../../generators/sheets/issue.ts';
import { pageOf } from './pages.ts';

describe('set codes', () => {
  it.each(['set-048213', '#set-048213', 'Set 048213', 'SET-048 213', '048213', ' 048 213 ', 'set–048213'])('are read from %j', (text) => {
    expect(readSetCode(text)).toBe('set-048213');
  });

  it.each(['', 'set-', '48213', '0482133', 'set-04821x', 'set--048213'])('are not read from %j', (text) => {
    expect(readSetCode(text)).toBeUndefined();
  });

  it('number a million sets', () => {
    expect(setCode(0)).toBe('set-000000');
    expect(setCode(999_999)).toBe('set-999999');
    for (const number of [-1, 1_000_000, 0.5]) expect(() => setCode(number)).toThrow(RangeError);
  });

  it('cannot be mistaken for sheet codes: none is read as the other', () => {
    for (let roll = 0; roll < 2000; roll++) {
      const code = sheetCode('any secret', String(roll), 0);
      expect(readSetCode(code)).toBeUndefined();
      expect(code).toMatch(/^[0-9A-Z]{4}-[0-9A-Z]{4}$/);
    }
    expect(setCode(123456)).not.toMatch(/^[0-9A-Z]{4}-[0-9A-Z]{4}$/i);
  });
});

describe('a practice set', () => {
  it('is never a sheet of a pack, whatever the secret or seed: not even where that is the code of the set', () => {
    const tables = loadTables();
    const order = orderFromFlags({ experiment: 'resistivity', seed: 'any' }, knownNames(tables));
    const experiment = experiments['resistivity']!;
    for (const code of [1, 2, 3].map(setCode)) {
      const { readings } = makeSet(experiment, pageOf('resistivity').kit, code).sheet;
      for (const secret of [code, `practice ${code}`]) {
        const issues = issueSheets({ order, experiment, tables, secret }, ['1', 'resistivity', code].map((roll) => ({ roll, name: '' })));
        for (const { sheet } of issues) expect(sheet.readings['l']).not.toEqual(readings['l']);
      }
    }
  });
});
