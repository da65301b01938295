import { describe, expect, test } from 'vitest';
import { acceptRanges } from '../../generators/quantities/accept.ts';
import { type Own, type Readings, at, evaluate, scale, tensInto } from '../../generators/quantities/evaluate.ts';
import type { Formula } from '../../generators/quantities/formula.ts';
import { hull } from '../../generators/quantities/interval.ts';
import type { Program } from '../../generators/quantities/program.ts';
import type { Interval, Relation } from '../../generators/quantities/step.ts';
import { unit } from '../../generators/quantities/unit.ts';
import { halfUnit } from '../../generators/quantities/written.ts';
import { streams } from '../../generators/random.ts';
import { type Variant, plainReadings, programOf, randomReadings, variants } from './practical.ts';
import { anyStudent, extremeStudent, routes, withTables, workedBy } from './student.ts';

const SHEETS = 24;
const STUDENTS = 100_000;
const plain = { tables: false, drawn: {} };
const tables = { tables: true, drawn: {} };

interface Case {
  name: string;
  variant: Variant;
  checked: Program;
  readings: Readings;
}

const cases: Case[] = Array.from({ length: SHEETS }, (_, i) => {
  const variant = variants[i % variants.length]!;
  const name = `sheet ${i}`;
  return { name, variant, checked: programOf(variant), readings: randomReadings(streams('accept ranges').of(name), variant) };
});

/** What computing in binary loses; a percentage is the difference of two numbers a hundred times as large. */
const noise = (id: string, value: number) => 1e-12 * (Math.abs(value) + (id === 'off' ? 200 : 0));

/** The values that lie outside their ranges. */
function outside(ranges: Map<string, Interval[]>, worked: Record<string, number[]>): string[] {
  return Object.entries(worked).flatMap(([id, values]) =>
    values.flatMap((value, row) => {
      const [low, high] = ranges.get(id)![row]!;
      const slack = noise(id, value);
      return low - slack <= value && value <= high + slack ? [] : [`${id}[${row}] = ${value} not in ${low} to ${high}`];
    }),
  );
}

describe('no honest student is outside', () => {
  test('of 100 000 who round anyhow, with any pi and by any route', () => {
    for (const { name, variant, checked, readings } of cases) {
      const ranges = acceptRanges(checked, readings, plain);
      const random = streams('students').of(name);
      for (let i = 0; i < STUDENTS / SHEETS; i++) {
        const found = outside(ranges, workedBy(anyStudent(random), readings, variant));
        if (found.length > 0) expect(found, name).toEqual([]);
      }
    }
  }, 60_000);

  test('nor of those who always round down, or always up', () => {
    for (const { name, variant, checked, readings } of cases) {
      const ranges = acceptRanges(checked, readings, plain);
      for (const route of routes) for (const end of ['lowest', 'highest'] as const) expect(outside(ranges, workedBy(extremeStudent(end, route), readings, variant)), name).toEqual([]);
    }
  });

  test('nor of 20 000 who work by four-figure tables, where they may', () => {
    let strayed = 0;
    for (const { name, variant, checked, readings } of cases) {
      const [allowed, strict] = [acceptRanges(checked, readings, tables), acceptRanges(checked, readings, plain)];
      const random = streams('students with tables').of(name);
      for (let i = 0; i < 20_000 / SHEETS; i++) {
        const worked = workedBy(anyStudent(random, withTables), readings, variant);
        const found = outside(allowed, worked);
        if (found.length > 0) expect(found, name).toEqual([]);
        if (outside(strict, worked).length > 0) strayed++;
      }
    }
    expect(strayed).toBeGreaterThan(5_000);
  }, 60_000);

  test('tables are no excuse for an error in 100 - l, where none are looked up', () => {
    for (const { checked, readings } of cases) expect(acceptRanges(checked, readings, tables).get('r')).toEqual(acceptRanges(checked, readings, plain).get('r'));
  });
});

describe('the ranges are hardly wider than what can be reached', () => {
  // Measured: 1.000000 times as wide as what the extreme students reach, at every step of every sheet.
  const MOST = 1 + 1e-9;

  test.each(['r', 'X', 'meanX', 'e', 'dObs', 'meanD', 'd', 'rho', 'off'])('%s', (id) => {
    for (const { variant, checked, readings } of cases) {
      const worked = routes.flatMap((route) => (['lowest', 'highest'] as const).map((end) => workedBy(extremeStudent(end, route), readings, variant)[id]!));
      acceptRanges(checked, readings, plain).get(id)!.forEach(([low, high], row) => {
        const [least, greatest] = hull(...worked.map((values): Interval => [values[row]!, values[row]!]));
        expect(high - low).toBeLessThanOrEqual(MOST * (greatest - least) + 2 * noise(id, high));
      });
    }
  });

  test('within 2 % of the key for the resistivity', () => {
    for (const { checked, readings } of cases) {
      const [low, high] = acceptRanges(checked, readings, plain).get('rho')![0]!;
      const exact = evaluate(checked, readings, 'even').exact.get('rho')![0]!;
      expect((high - low) / exact).toBeLessThan(0.04);
    }
  });
});

describe('a slip is outside, unless it happens to give nearly the right value', () => {
  /** Units of the last stated digit within which a slip may lie inside; a percentage near 0 is much the same on either base. */
  const near: Record<string, number> = { X: 1, LC: 0, e: 0, dObs: 0, d: 1, rho: 0, off: 5 };

  const slipValue = (checked: Program, relation: Relation, made: Formula, values: Map<string, number[]>, row: number) => {
    const args = made.names.map((id) => scale(at(values.get(id)!, row), tensInto(checked, relation, id)));
    return relation.si ? scale(made.value(args), -unit(relation.unit).tens) : made.value(args);
  };

  test('which is rare: below 1 in 100 of those that differ at all', () => {
    let inside = 0;
    let all = 0;
    for (const { name, checked, readings } of cases) {
      const ranges = acceptRanges(checked, readings, plain);
      const { exact, written } = evaluate(checked, readings, 'even');
      for (const step of checked.steps.filter(({ kind }) => kind === 'relation') as Relation[]) {
        for (const slip of checked.compiled(step.id).slips) {
          exact.get(step.id)!.forEach((right, row) => {
            const value = slipValue(checked, step, slip.as, exact, row);
            if (Math.abs(value - right) <= noise(step.id, right)) return;
            all++;
            const [low, high] = ranges.get(step.id)![row]!;
            if (value < low || value > high) return;
            inside++;
            const last = 2 * halfUnit(written.get(step.id)![row]!);
            expect(Math.abs(value - right), `${name}, ${slip.id}: ${value} for ${right}`).toBeLessThanOrEqual(near[step.id]! * last);
          });
        }
      }
    }
    expect(all).toBeGreaterThan(500);
    expect(inside / all).toBeLessThan(0.01);
  });

  test('an inverted ratio within half a millimetre of the middle of the wire is one that does', () => {
    const readings = { ...plainReadings({ known: 'left', zero: 'none' }), R: ['2.50', '2.50'], l: ['50.0', '49.0'] };
    const [middle, beside] = acceptRanges(programOf({ known: 'left', zero: 'none' }), readings, plain).get('X')!;
    const inverted = (l: number) => (2.5 * l) / (100 - l);
    expect(middle![0] <= inverted(50) && inverted(50) <= middle![1]).toBe(true);
    expect(inverted(49)).toBeLessThan(beside![0]);
  });
});

describe('error carried forward', () => {
  const variant = { known: 'left', zero: 'positive' } as const;
  const checked = programOf(variant);
  const readings = plainReadings(variant);
  const ranges = (own: Own) => acceptRanges(checked, readings, plain, own);

  test('later steps are judged on the own value, the step itself is not', () => {
    const wrong = ranges({ meanX: ['1.52'] });
    expect(wrong.get('meanX')).toEqual(ranges({}).get('meanX'));
    const rho = (Math.PI * 0.38e-3 ** 2 * 1.52) / 2.4;
    const [low, high] = wrong.get('rho')![0]!;
    expect(low < rho && rho < high).toBe(true);
    expect(high).toBeLessThan(ranges({}).get('rho')![0]![0]);
  });
  test('the number still in the calculator may be gone on with, 1.5211 where 1.52 is written', () => {
    const [low, high] = ranges({ X: ['1.52', '1.52', '1.52'] }).get('meanX')![0]!;
    for (const mean of [1.52, 1.5211, 1.521]) expect(low <= mean && mean <= high).toBe(true);
    expect(high).toBeLessThan(1.53);
    expect(low).toBeGreaterThan(1.51);
  });
  test('a right value narrows what follows, and never widens it', () => {
    const [low, high] = ranges({ X: ['2.63', '2.63', '2.63'] }).get('meanX')![0]!;
    const [least, greatest] = ranges({}).get('meanX')![0]!;
    expect(least <= low && high <= greatest).toBe(true);
  });
  test('where nothing is rounded only the written value is gone on with', () => {
    // d = 0.410 − (−0.03): the wrong sign of a zero error that is exact
    const [low, high] = ranges({ e: ['-0.03'] }).get('d')![0]!;
    expect([low, high]).toEqual([0.44, 0.44]);
  });
  test('a row that is not given is worked out', () => {
    expect(ranges({ X: [undefined, '2.63', undefined] }).get('X')).toEqual(ranges({}).get('X'));
  });
});

describe('a reading off a drawing', () => {
  const variant = { known: 'left', zero: 'none' } as const;
  const checked = programOf(variant);
  const readings = plainReadings(variant);
  const drawn = { tables: false, drawn: { l: 0.1 } };

  test('has the latitude of the drawing', () => {
    const [low, high] = acceptRanges(checked, readings, drawn).get('l')![0]!;
    expect(low).toBeCloseTo(43.1, 10);
    expect(high).toBeCloseTo(43.3, 10);
  });
  test('and spends it there: what follows is judged on the reading that was taken', () => {
    const own = { l: ['43.3', '43.3', '43.3'] };
    const taken = acceptRanges(checked, { ...readings, ...own }, plain);
    expect(acceptRanges(checked, readings, drawn, own).get('X')).toEqual(taken.get('X'));
    expect(acceptRanges(checked, readings, drawn).get('X')).toEqual(acceptRanges(checked, readings, plain).get('X'));
  });
});
