import { describe, expect, test } from 'vitest';
import type { Hands } from '../../generators/apparatus/bench.ts';
import { boxValues } from '../../generators/apparatus/box.ts';
import type { Ask } from '../../generators/experiments/ask.ts';
import type { Observed } from '../../generators/experiments/experiment.ts';
import { kelvin } from '../../generators/experiments/kelvin.ts';
import { isFit } from '../../generators/experiments/plan.ts';
import { acceptRanges } from '../../generators/quantities/accept.ts';
import { dimensionFault } from '../../generators/quantities/dimension.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { standardDeviation } from '../../generators/quantities/summary.ts';
import { sensitivities, standardUncertainty } from '../../generators/quantities/uncertainty.ts';
import { round } from '../../generators/quantities/written.ts';
import { streams } from '../../generators/random.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { readWireAsk } from '../../generators/order/wire-ask.ts';
import { knownNames } from '../../generators/cli/content.ts';
import { drillAsks, hands, tables } from './demo.ts';

type Sets = { ask: Ask; observed: Observed }[];

const EACH = 3334;
const byHands = Object.fromEntries(
  hands.map((which) => {
    const asks = [{}, { gap: 'right' as const }, { rows: 3 }, { rows: 6, gap: 'right' as const }].flatMap((change) => drillAsks('kelvin', { hands: which, ...change }));
    const sets = Array.from({ length: EACH }, (_, i) => {
      const ask = asks[i % asks.length]!;
      return { ask, observed: kelvin.observe(ask, streams('equal deflection').within(which, i)) };
    });
    return [which, sets.flatMap(({ ask, observed }) => (observed ? [{ ask, observed }] : []))];
  }),
) as Record<Hands, Sets>;

const columns = ({ readings }: Observed) => ({ R: [readings['RCoil']!].flat(), l: [readings['lCoil']!].flat() });

describe('the steps', () => {
  // By hand: 60 Ω at 40.0 cm is to the galvanometer as 40.0 is to 60.0 when it stands on the left, as 60.0 to 40.0 on the right.
  test.each([
    ['left', '90.0'],
    ['right', '40.0'],
  ])('have dimensions that fit, and with the box in the %s gap give G', (known, G) => {
    const steps = programOf(kelvin, { form: { known } });
    const args = { W: 100, RCoil: 60, lCoil: 40, rCoil: 60, XCoil: 90 };
    for (const step of steps.steps) if (step.kind === 'relation') expect(dimensionFault(steps, step, args)).toBeUndefined();
    expect(evaluate(steps, { W: '100.0', RCoil: ['60'], lCoil: ['40.0'] }, 'even').written.get('meanXCoil')).toEqual([G]);
  });
});

test('10 000 sets keep every rule of the bench: settings of the box, none twice, millimetres, the jockey inside the window', () => {
  const found = new Set<string>();
  const rule = (kept: boolean, words: string) => void (kept || found.add(words));
  const all = Object.values(byHands).flat();
  for (const { ask, observed } of all) {
    const { R, l } = columns(observed);
    const settings = boxValues(ask.bench.box.plugs);
    rule(R.length === ask.rows && l.length === ask.rows, 'as many rows as were asked for');
    rule(R.every((text) => settings.includes(text)), 'R is a setting of the box');
    rule(new Set(R).size === R.length, 'no R twice');
    rule(l.every((text) => /^\d\d\.\d$/.test(text)), 'the place is read to the millimetre');
    rule(l.every((text) => Number(text) >= ask.window[0] && Number(text) <= ask.window[1]), 'the jockey is inside the window');
  }
  expect([...found]).toEqual([]);
  expect(all.length).toBeGreaterThan(9_900);
});

test("the honest student's results, rounded at every step or nowhere, lie in the accept ranges", () => {
  for (const { ask, observed } of byHands.usual.slice(0, 300)) {
    const ranges = acceptRanges(programOf(kelvin, observed), observed.readings, { tables: false, drawn: {} });
    const { R, l } = columns(observed);
    for (const keep of [(value: number) => value, ...(['even', 'up'] as const).flatMap((ties) => [3, 4, 5].map((figures) => (value: number) => Number(round(value, { figures }, ties))))]) {
      const G = R.map((text, row) => {
        const [left, right] = [Number(l[row]!), 100 - Number(l[row]!)];
        return keep(ask.known === 'left' ? (Number(text) * right) / left : (Number(text) * left) / right);
      });
      const found = { XCoil: G, meanXCoil: [keep(G.reduce((a, b) => a + b, 0) / G.length)] };
      for (const [id, values] of Object.entries(found))
        values.forEach((value, row) => {
          const [low, high] = ranges.get(id)![row]!;
          expect(value).toBeGreaterThanOrEqual(low * (1 - 1e-12));
          expect(value).toBeLessThanOrEqual(high * (1 + 1e-12));
        });
    }
  }
});

// 3300 sets know a share of 95 % to 0.4 %. In careful hands the rows lie evenly over the stretch in which nothing is seen,
// while Student's t supposes a normal distribution: with three rows its interval is then a little short.
test.each([
  ['careful', 92.5, 95],
  ['usual', 93.5, 96.5],
  ['hurried', 93.5, 96.5],
] as const)('in %s hands the interval stated for 95 of 100 sets covers the true resistance in %d to %d of 100', (which, low, high) => {
  const inside = byHands[which].filter(({ ask, observed }) => {
    const steps = programOf(kelvin, observed);
    const values = evaluate(steps, observed.readings, 'even');
    const { of, scatters } = sensitivities(steps, values);
    const { expanded } = standardUncertainty(of('meanXCoil'), scatters, values, kelvin.halfWidths(ask));
    return Math.abs(values.exact.get('meanXCoil')![0]! - observed.truth['G']!) <= expanded;
  });
  const percent = (100 * inside.length) / byHands[which].length;
  expect(percent).toBeGreaterThan(low);
  expect(percent).toBeLessThan(high);
});

test('rows scatter by 0.8 to 2 per cent of G even in careful hands, since a small change of a large deflection is not seen', () => {
  const spreads = byHands.careful.map(({ observed }) => {
    const G = evaluate(programOf(kelvin, observed), observed.readings, 'even').exact.get('XCoil')!;
    return standardDeviation(G) / observed.truth['G']!;
  });
  const typical = 100 * Math.sqrt(spreads.reduce((sum, each) => sum + each * each, 0) / spreads.length);
  expect(typical).toBeGreaterThan(0.8);
  expect(typical).toBeLessThan(2);
});

describe('the planner', () => {
  const [ask] = drillAsks('kelvin', {}) as [Ask];

  test('asks for settings for the smallest and the largest coil of the bench', () => {
    expect(kelvin.plan(ask).balances.map(({ X }) => X)).toEqual([50, 100]);
    expect(isFit(kelvin.plan(ask))).toBe(true);
  });

  test('asks once where the coil is known', () => {
    const bench = { ...ask.bench, galvanometer: { ...ask.bench.galvanometer, coil: [62, 62] as const } };
    expect(kelvin.plan({ ...ask, bench }).balances.map(({ X }) => X)).toEqual([62]);
  });

  test('finds no setting in a box that goes to 41 Ω only, for a coil of 100 Ω', () => {
    const [small] = drillAsks('kelvin', { box: [0.1, 0.2, 0.2, 0.5, 1, 2, 2, 5, 10, 20] }) as [Ask];
    expect(kelvin.plan(small).balances.map(({ usable }) => usable.length > 0)).toEqual([true, false]);
  });

  test('refuses a lead to the jockey that is no lead, and says what would do', () => {
    const [thin] = drillAsks('kelvin', { wires: [readWireAsk('nichrome, SWG 30, 60 cm', knownNames(tables))] }) as [Ask];
    const [why] = kelvin.plan(thin).unfit;
    expect(why).toMatch(/take a lead below 2\.50 Ω, such as copper, SWG 22, 60 cm/);
  });
});
