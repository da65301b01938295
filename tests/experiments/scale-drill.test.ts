import { describe, expect, test } from 'vitest';
import { boxValues } from '../../generators/apparatus/box.ts';
import { scaleDrill } from '../../generators/experiments/scale-drill.ts';
import { acceptRanges } from '../../generators/quantities/accept.ts';
import { dimensionFault } from '../../generators/quantities/dimension.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { program } from '../../generators/quantities/program.ts';
import { streams } from '../../generators/random.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { drillAsks, hands } from './demo.ts';

const asks = hands.flatMap((which) => (['left', 'right'] as const).flatMap((gap) => [3, 6].flatMap((rows) => drillAsks('scale-drill', { hands: which, gap, rows }))));

function* sets(count: number) {
  for (let i = 0; i < count; i++) {
    const ask = asks[i % asks.length]!;
    const observed = scaleDrill.observe(ask, streams('scale drill').within(i));
    if (observed) yield { ask, observed };
  }
}

describe('the steps', () => {
  test('have dimensions that fit', () => {
    const worked = program(scaleDrill.steps({ known: 'left' }));
    const args = { W: 100, R: 2.5, l: 43.2, r: 56.8, X: 3.29, L: 60 };
    for (const step of worked.steps) if (step.kind === 'relation') expect(dimensionFault(worked, step, args)).toBeUndefined();
  });
});

test('10 000 sets keep every rule: settings of the box, null points in whole millimetres inside the window, a length in whole millimetres', () => {
  const found = new Set<string>();
  const rule = (kept: boolean, words: string) => void (kept || found.add(words));
  let whole = 0;
  for (const { ask, observed } of sets(10_000)) {
    whole++;
    const { R, l, L } = observed.readings as { R: string[]; l: string[]; L: string };
    const settings = boxValues(ask.bench.box.plugs);
    rule(R.length === ask.rows && l.length === ask.rows, 'as many rows as asked for');
    rule(R.every((text) => settings.includes(text)) && new Set(R).size === R.length, 'different settings of the box');
    rule(l.every((text) => /^\d\d\.\d$/.test(text) && Number(text) >= ask.window[0] && Number(text) <= ask.window[1]), 'null points in the window');
    rule(/^\d\d\.\d$/.test(L), 'a length in millimetres');
  }
  expect([...found]).toEqual([]);
  expect(whole).toBeGreaterThan(9_900);
});

test('a row that was misread by 5 cm, or by a plug of 2 Ω, stands out by more than the 5 per cent that the sheet names; one that was not hardly ever does', () => {
  let rows = 0;
  let [outOfLine, missedScale, missedPlug] = [0, 0, 0];
  for (const { ask, observed } of sets(1000)) {
    if (ask.rows < 6) continue;
    const steps = programOf(scaleDrill, observed);
    const { l, R } = observed.readings as { l: string[]; R: string[] };
    const standsOut = (readings: object) => {
      const X = evaluate(steps, { ...observed.readings, ...readings }, 'even').exact.get('X')!;
      const others = X.slice(1).toSorted((a, b) => a - b);
      return Math.abs(X[0]! / others[2]! - 1) > 0.05;
    };
    rows++;
    if (standsOut({})) outOfLine++;
    if (!standsOut({ l: [String(Number(l[0]) + 5), ...l.slice(1)] })) missedScale++;
    if (!standsOut({ R: [String(Number(R[0]) + 2), ...R.slice(1)] })) missedPlug++;
  }
  expect(outOfLine / rows).toBeLessThan(0.05);
  expect(missedScale / rows).toBeLessThan(0.01);
  expect(missedPlug / rows).toBeLessThan(0.05);
});

test('the honest student, who rounds at every step or at none, lies in the accept ranges', () => {
  for (const { observed } of sets(200)) {
    const steps = programOf(scaleDrill, observed);
    const { exact, written } = evaluate(steps, observed.readings, 'even');
    const ranges = acceptRanges(steps, observed.readings, { tables: false, drawn: {} });
    for (const id of scaleDrill.layout.answers)
      exact.get(id)!.forEach((value, row) => {
        const [low, high] = ranges.get(id)![row]!;
        for (const given of [value, Number(written.get(id)![row])]) {
          expect(given).toBeGreaterThanOrEqual(low - 1e-12 * Math.abs(low));
          expect(given).toBeLessThanOrEqual(high + 1e-12 * Math.abs(high));
        }
      });
  }
});
