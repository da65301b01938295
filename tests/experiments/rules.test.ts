import { expect, test } from 'vitest';
import { boxValues } from '../../generators/apparatus/box.ts';
import type { Ask } from '../../generators/experiments/ask.ts';
import type { Observed } from '../../generators/experiments/experiment.ts';
import { demoAsks, hands, sets } from './demo.ts';

/** Least counts of 0.1 cm and 0.01 mm as whole numbers, so that no rounding in binary can hide a digit. */
const tenths = (text: string) => Math.round(10 * Number(text));
const hundredths = (text: string) => Math.round(100 * Number(text));

type Columns = Record<'R' | 'l' | 'msr' | 'n', string[]> & Record<'pitch' | 'N' | 'n0' | 'L', string>;

/** Every rule of the instruments that a set of readings breaks, in words. */
function broken({ bench, rows, window: [low, high] }: Ask, { form, readings }: Observed): string[] {
  const { R, l, msr, n, pitch, N, n0, L } = readings as unknown as Columns;
  const settings = boxValues(bench.box.plugs);
  const division = (text: string) => /^\d{1,2}$/.test(text) && Number(text) < Number(N);
  const signed = form['zero'] === 'negative' ? Number(n0) - Number(N) : Number(n0);
  const rules: [kept: boolean, rule: string][] = [
    [R.length === rows && l.length === rows, 'as many rows as were asked for'],
    [R.every((text) => settings.includes(text)), 'R is a setting of the box'],
    [new Set(R).size === R.length, 'no R twice'],
    [l.every((text) => /^\d\d\.\d$/.test(text)), 'l is read to the millimetre'],
    [l.every((text) => tenths(text) >= 10 * low && tenths(text) <= 10 * high), 'every null point lies inside the window'],
    [msr.length === 8 && n.length === 8, 'two directions at four places'],
    [msr.every((text) => /^\d+\.\d$/.test(text) && hundredths(text) % hundredths(pitch) === 0), 'the main scale shows whole pitches'],
    [n.every(division) && division(n0), '0 ≤ n < N'],
    [(form['zero'] === 'none') === (n0 === '0'), 'no zero error is division 0, and only that'],
    [bench.screwGauge.zeroErrors.some((error) => hundredths(error) === signed), 'the zero error is one of the gauge, with its sign'],
    [/^\d{2,3}\.\d$/.test(L), 'the length is read to the millimetre'],
  ];
  return rules.flatMap(([kept, rule]) => (kept ? [] : [rule]));
}

const orders = hands.flatMap((which) => [
  { hands: which, rows: 3 },
  { hands: which, rows: 6, gap: 'right' as const },
  { hands: which, rows: 4, window: [45, 55] as [number, number] },
  { hands: which, rows: 5, window: [30, 70] as [number, number], gap: 'right' as const },
]);

test('no set of 10 000 breaks a rule of its instruments, in any hands, gap and window', () => {
  const asks = orders.flatMap(demoAsks);
  const found = new Set<string>();
  let whole = 0;
  for (const { ask, observed } of sets(asks, 10_000, 'rules')) {
    whole++;
    for (const rule of broken(ask, observed)) found.add(`${rule}: ${JSON.stringify(observed.readings)}`);
  }
  expect([...found]).toEqual([]);
  // A narrow window leaves few settings, and hurried hands may miss it with all of them.
  expect(whole).toBeGreaterThan(9_900);
});

test('a set that breaks a rule is found', () => {
  const [{ ask, observed }] = [...sets(demoAsks({}), 1, 'rules')] as [{ ask: Ask; observed: Observed }];
  const { l, R, n } = observed.readings as unknown as Columns;
  const changed = (readings: object) => broken(ask, { ...observed, readings: { ...observed.readings, ...readings } });
  expect(changed({ l: ['61.0', ...l.slice(1)] })).toEqual(['every null point lies inside the window']);
  expect(changed({ R: [R[1]!, ...R.slice(1)] })).toEqual(['no R twice']);
  expect(changed({ n: ['50', ...n.slice(1)] })).toEqual(['0 ≤ n < N']);
  expect(broken(ask, { ...observed, form: { ...observed.form, zero: 'none' }, readings: { ...observed.readings, n0: '3' } })).toContain(
    'no zero error is division 0, and only that',
  );
});
