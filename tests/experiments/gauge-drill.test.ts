import { describe, expect, test } from 'vitest';
import type { Ask } from '../../generators/experiments/ask.ts';
import { gaugeDrill } from '../../generators/experiments/gauge-drill.ts';
import type { Observed } from '../../generators/experiments/experiment.ts';
import { acceptRanges } from '../../generators/quantities/accept.ts';
import { dimensionFault } from '../../generators/quantities/dimension.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { program } from '../../generators/quantities/program.ts';
import { streams } from '../../generators/random.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { drillAsks, hands, tables } from './demo.ts';

const hundredths = (text: string) => Math.round(100 * Number(text));
const column = ({ readings }: Observed, id: string) => [readings[id]!].flat();

function* sets(count: number): Generator<{ ask: Ask; observed: Observed }> {
  const asks = hands.flatMap((which) => [3, 6].flatMap((rows) => drillAsks('gauge-drill', { hands: which, rows })));
  for (let i = 0; i < count; i++) {
    const ask = asks[i % asks.length]!;
    const observed = gaugeDrill.observe(ask, streams('gauge drill').within(i));
    if (observed) yield { ask, observed };
  }
}

describe('the steps', () => {
  const worked = program(gaugeDrill.steps({ zeroP: 'positive', zeroQ: 'negative' }));

  test('have dimensions that fit', () => {
    const args = { pitch: 0.5, N: 50, LC: 0.01, n0P: 3, eP: 0.03, msrP: 0.5, nP: 27, csrP: 0.27, dObsP: 0.77, dP: 0.74, n0Q: 47, eQ: -0.03, msrQ: 1, nQ: 8, csrQ: 0.08, dObsQ: 1.08, dQ: 1.11 };
    for (const step of worked.steps) if (step.kind === 'relation') expect(dimensionFault(worked, step, args)).toBeUndefined();
  });

  // Gauge P: a published worked example whose origin is not known, main scale 0.5 mm, division 27, zero error +0.05 mm, gives 0.72 mm. Gauge Q by hand.
  const readings = { pitch: '0.5', N: '50', n0P: '5', msrP: ['0.5'], nP: ['27'], n0Q: '47', msrQ: ['1.0'], nQ: ['8'] };

  test('take a positive zero error off and add a negative one', () => {
    const { written } = evaluate(worked, readings, 'even');
    expect(['eP', 'dObsP', 'dP', 'eQ', 'dQ'].map((id) => written.get(id)![0])).toEqual(['0.05', '0.77', '0.72', '-0.03', '1.11']);
  });

  test('know each slip by its value', () => {
    const slips = ['LC', 'eQ', 'dObsP', 'dP'].flatMap((id) => {
      const step = worked.step(id);
      return step.kind === 'relation' ? step.slips!.map((slip) => ({ of: id, slip })) : [];
    });
    const values = slips.map(({ of, slip }) => {
      const changed = program(worked.steps.map((step) => (step.id === of && step.kind === 'relation' ? { ...step, as: slip.as, digits: { decimals: 3 } } : step)));
      return [slip.id, Number(evaluate(changed, readings, 'even').written.get(of)![0])];
    });
    expect(Object.fromEntries(values)).toEqual({
      'least count ten times too large': 0.1,
      'least count ten times too small': 0.001,
      'negative zero error read forwards': 0.47,
      'main-scale division missed': 0.27,
      'zero error with the wrong sign': 0.82,
      'zero error ignored': 0.77,
    });
  });
});

test('10 000 sets and more keep every rule of the gauges: whole pitches, divisions below N, one zero error of either sign, no division so near to a full turn that the main scale is in doubt', () => {
  const found = new Set<string>();
  const rule = (kept: boolean, words: string) => void (kept || found.add(words));
  let [halves, whole] = [0, 0];
  for (const { ask, observed } of sets(20_000)) {
    whole++;
    const { form } = observed;
    rule([form['zeroP'], form['zeroQ']].toSorted().join() === 'negative,positive', 'zero errors of both signs');
    for (const name of ['P', 'Q']) {
      const msr = column(observed, `msr${name}`);
      const n = column(observed, `n${name}`).map(Number);
      const n0 = Number(column(observed, `n0${name}`)[0]);
      const signed = form[`zero${name}`] === 'negative' ? n0 - 50 : n0;
      rule(msr.length === ask.rows && n.length === ask.rows, 'as many pieces as asked for');
      rule(msr.every((text) => /^\d\.[05]$/.test(text)), 'the main scale shows whole pitches');
      rule(n.every((division) => Number.isInteger(division) && division >= 2 && division <= 48), '2 ≤ n ≤ N − 2');
      rule(Math.abs(signed) >= 3 && Math.abs(signed) <= 5, 'a zero error of the bench, with its sign, of 3 divisions at least');
      // The student's wire may be as thin as the order says; what is drawn by lot reaches from 0.5 mm to 6 mm.
      const diameters = msr.map((text, row) => hundredths(text) + n[row]! - signed);
      rule(diameters.every((diameter) => diameter >= 48 && diameter <= 603), 'a piece is 0.5 to 6 mm thick');
      halves += msr.filter((text) => text.endsWith('.5')).length / (2 * ask.rows);
    }
  }
  expect([...found]).toEqual([]);
  // The half-millimetre mark counts in half of the readings, which is what makes the drill.
  expect(whole).toBeGreaterThan(10_000);
  expect(halves / whole).toBeGreaterThan(0.4);
  expect(halves / whole).toBeLessThan(0.6);
});

test("the honest student's diameters, rounded to 0.01 mm or not at all, lie in the accept ranges", () => {
  for (const { observed } of sets(300)) {
    const steps = programOf(gaugeDrill, observed);
    const { exact } = evaluate(steps, observed.readings, 'even');
    const ranges = acceptRanges(steps, observed.readings, { tables: false, drawn: {} });
    for (const id of gaugeDrill.layout.answers)
      exact.get(id)!.forEach((value, row) => {
        const [low, high] = ranges.get(id)![row]!;
        for (const given of [value, Math.round(100 * value) / 100]) {
          expect(given).toBeGreaterThanOrEqual(low - 1e-12);
          expect(given).toBeLessThanOrEqual(high + 1e-12);
        }
      });
  }
});

test('a bench whose gauges all err to one side is refused, with what to change', () => {
  const [ask] = drillAsks('gauge-drill', {});
  const { screwGauge } = tables.bench;
  const bench = { ...tables.bench, screwGauge: { ...screwGauge, zeroErrors: ['0', '0.03', '-0.02'] } };
  expect(gaugeDrill.plan({ ...ask!, bench }).unfit).toEqual([expect.stringMatching(/no negative zero error.*zeroErrors/)]);
  expect(gaugeDrill.plan(ask!).unfit).toEqual([]);
});
