import { describe, expect, it } from 'vitest';
import { plugsOut } from '../../generators/apparatus/box.ts';
import { faultNames } from '../../generators/apparatus/faults.ts';
import { experiments } from '../../generators/experiments/index.ts';
import type { BoxName, Shows, Taken } from '../../generators/experiments/on-bench.ts';
import { type Setting, type StudentBench, boxReads, boxesIn, needle, shown } from '../../generators/practice/bench.ts';
import { asShown, benchOf, isOutside, keyIn, targets, withOwnReadings } from '../../generators/practice/set-bench.ts';
import type { PracticeSet } from '../../generators/practice/make-set.ts';
import { setCode } from '../../generators/practice/set-code.ts';
import { atFirst } from '../../generators/practice/page/bench-stand.ts';
import { setOf } from './pages.ts';

const withBench = Object.values(experiments).filter(({ bench, readingsGiven }) => bench && !readingsGiven).map(({ id }) => id);

const reading = ({ sheet }: PracticeSet, id: string, row: number) => [sheet.readings[id]!].flat()[[sheet.readings[id]!].flat().length === 1 ? 0 : row]!;
const idOf = ({ reads }: Taken, by: Shows) => Object.keys(reads).find((id) => reads[id] === by);

/** The bench set as a row of the table has it, the jockey at its null point. */
function asInRow(bench: StudentBench, set: PracticeSet, pair: number, taken: Taken, row: number): Setting {
  const out = Object.fromEntries((Object.keys(atFirst().out) as BoxName[]).map((name) => {
    const id = idOf(taken, name);
    // Boxes that a row does not tell of stay where they were: the ratio arms somewhere in the middle.
    const ohms = id ? reading(set, id, row) : '5';
    return [name, new Set(bench.laid.boxes[name] ? plugsOut(bench.laid.boxes[name][0]!.plugs, ohms) : [])] as const;
  })) as Record<BoxName, Set<number>>;
  const beside = (by: Shows) => { const id = idOf(taken, by); return id ? Number(reading(set, id, row)) : 0; };
  const celsius = beside('thermometer') - (bench.laid.bath?.thermometerError ?? 0);
  return { ...atFirst(), pair, firstIn: taken.firstIn, out, length: beside('rule'), celsius, millimetres: Math.round(10 * Number(reading(set, idOf(taken, 'scale')!, row))), isPressed: true, isClosed: true, isProtected: false };
}

/** The nearest place in mm where the needle changes sides; where the galvanometer is in a gap, where pressing changes which way it moves. */
function nullNear(bench: StudentBench, setting: Setting): number {
  const from = bench.laid.isInGap ? needle(bench, { ...setting, isPressed: false }) : 0;
  const side = (millimetres: number) => Math.sign(needle(bench, { ...setting, millimetres }) - from);
  for (let off = 0; off <= 1000; off++) {
    for (const place of [setting.millimetres - off, setting.millimetres + off]) {
      if (place > 0 && place < 1000 && side(place) !== side(place + 1)) return place;
    }
  }
  return Number.NaN;
}

describe.each(withBench)('the bench of %s', (id) => {
  const sets = [7, 21].map((number) => setOf(id, setCode(number)));

  it('is the one that the printed readings were taken on, for every null point of every table', () => {
    for (const { set } of sets) {
      const bench = benchOf(experiments[id]!, set)!;
      bench.laid.pairs.forEach(({ taken }, pair) =>
        taken.forEach((one) => {
          const scale = idOf(one, 'scale')!;
          [set.sheet.readings[scale]!].flat().forEach((_, row) => {
            const setting = asInRow(bench, set, pair, one, row);
            // Hands, eye, plugs that are pressed home again and a coil that lags put a null point off by some millimetres.
            expect(Math.abs(nullNear(bench, setting) - setting.millimetres), `${scale}, row ${row + 1}`).toBeLessThanOrEqual(15);
          });
        }),
      );
    }
  });

  it('takes every reading of the scale, and has a place in a table for each', () => {
    const [{ set, steps }] = sets as [(typeof sets)[0]];
    const bench = benchOf(experiments[id]!, set)!;
    const places = bench.laid.pairs.flatMap((_, pair) => (['left', 'right'] as const).flatMap((firstIn) => targets(bench, { pair, firstIn }, steps, set).flatMap(({ taken, row }) => Object.keys(taken.reads).map((each) => keyIn(steps, each, row)))));
    const onScale = steps.steps.flatMap((step) => (step.kind === 'reading' && step.on === 'scale' ? [set.sheet.readings[step.id]!].flat().map((_, row) => `${step.id}:${row}`) : []));
    expect(onScale.length).toBeGreaterThan(2);
    expect(places).toEqual(expect.arrayContaining(onScale));
  });

  it('deflects to opposite sides at the ends with what the tables ask for in the gaps', () => {
    const [{ set }] = sets as [(typeof sets)[0]];
    const bench = benchOf(experiments[id]!, set)!;
    bench.laid.pairs.forEach(({ taken }, pair) => {
      for (const one of taken) {
        const setting = asInRow(bench, set, pair, one, 0);
        const from = bench.laid.isInGap ? needle(bench, { ...setting, isPressed: false }) : 0;
        const at = (millimetres: number) => needle(bench, { ...setting, millimetres }) - from;
        expect(at(5) * at(995)).toBeLessThan(0);
      }
    });
  });
});

describe('a bench', () => {
  const { set, steps } = setOf('resistivity', setCode(7));
  const bench = benchOf(experiments['resistivity']!, set)!;
  const [taken] = bench.laid.pairs[0]!.taken as [Taken];
  const at = (millimetres: number, manner: Partial<Setting> = {}): Setting => ({ ...asInRow(bench, set, 0, taken, 0), millimetres, ...manner });
  const l = 10 * Number(reading(set, 'l', 0));

  it.each([{ isPressed: false }, { isClosed: false }])('shows no current with %j', (manner) => {
    expect(needle(bench, at(100, manner))).toBe(0);
  });

  it('has its needle at a stop at the ends, right of the null to the right', () => {
    const { divisions } = bench.laid.bridge.galvanometer;
    expect([needle(bench, at(50)), needle(bench, at(950))]).toEqual([-divisions, divisions]);
  });

  it('moves its needle less while the protective resistance is in', () => {
    expect(Math.abs(needle(bench, at(l + 30, { isProtected: true })))).toBeLessThan(Math.abs(needle(bench, at(l + 30))) / 5);
  });

  it('mirrors its null point when the box is in the other gap, for which no table asks', () => {
    const other = at(1000 - l, { firstIn: 'right' });
    expect(Math.abs(nullNear(bench, other) - (1000 - l))).toBeLessThan(20);
    expect(targets(bench, other, steps, set)).toEqual([]);
    expect(targets(bench, at(l), steps, set).map(({ row }) => row)).toEqual([0, 1, 2, 3]);
  });

  it('reads the box as the sum of the plugs that are out, and stands at an end with none', () => {
    const R = reading(set, 'R', 0);
    expect(shown(bench, at(l), 'box')).toBe(R);
    expect(boxReads({ plugs: ['1', '2', '20'] }, new Set([0, 2]))).toBe('21');
    const none = { ...atFirst().out };
    expect(needle(bench, at(500, { out: none }))).toBeGreaterThan(5);
  });

  it('takes what is shown, to a division of the scale, with the digits that the instrument gives', () => {
    const setting = at(432);
    expect(asShown(bench, setting, 'scale', '43.2')).toBe('43.2');
    expect(asShown(bench, setting, 'scale', '43,1')).toBe('43.1');
    expect(asShown(bench, at(430), 'scale', '43')).toBe('43.0');
    for (const text of ['43.4', '56.8', '', '4.32']) expect(asShown(bench, setting, 'scale', text), text).toBeUndefined();
    expect(asShown(bench, setting, 'box', String(Number(reading(set, 'R', 0)) + 0.1))).toBeUndefined();
  });

  it('minds a null point outside the window, but where the experiment wants it there', () => {
    const where = experiments['where-to-balance']!;
    expect(isOutside(set.ask, where, 'l', '70.0')).toBe(true);
    expect(isOutside(set.ask, where, 'lAlong', '70.0')).toBe(false);
    expect(isOutside(set.ask, where, 'l', '50.0')).toBe(false);
  });

  it('has each fault on some set, and deflects as the fault makes it', () => {
    const seen = new Set<string>();
    for (let i = 0; i < 200; i++) {
      const one = setOf('resistivity', setCode(i)).set;
      const wrong = benchOf(experiments['resistivity']!, one, true)!;
      seen.add(wrong.fault!);
      const [left, right] = [20, 980].map((millimetres) => needle(wrong, { ...asInRow(wrong, one, 0, taken, 0), millimetres })) as [number, number];
      if (/gap (?:open|shorted)$/.test(wrong.fault!)) expect(left * right, wrong.fault).toBeGreaterThanOrEqual(0);
      if (/branch open$/.test(wrong.fault!)) expect([left, right].map(Math.abs), wrong.fault).toEqual([0, 0]);
      if (/reversed$/.test(wrong.fault!)) expect(left * right, wrong.fault).toBeLessThan(0);
    }
    expect([...seen].sort()).toEqual([...faultNames].sort());
  }, 120_000);

  it('shows the boxes that are in the gaps, and the ratio arms always', () => {
    const careyFoster = setOf('carey-foster', setCode(7)).set;
    const four = benchOf(experiments['carey-foster']!, careyFoster)!;
    expect([boxesIn(four, 0), boxesIn(four, 1)]).toEqual([['box', 'ratio arms'], ['ratio arms']]);
  });

  it('puts the own readings of a row in place of the printed ones', () => {
    const { sheet } = withOwnReadings(set, { 'R:1': '2.5', 'l:1': '48.7' });
    const rows = (id: string) => [sheet.readings[id]!].flat();
    expect([rows('R')[1], rows('l')[1], rows('R')[0]]).toEqual(['2.5', '48.7', reading(set, 'R', 0)]);
  });

  it('is there for no experiment whose readings are drawn or given', () => {
    for (const id of ['gauge-drill', 'scale-drill', 'circuit-check', 'find-the-faults']) expect(benchOf(experiments[id]!, setOf(id, setCode(7)).set), id).toBeUndefined();
  });
});
