import { describe, expect, test } from 'vitest';
import type { Hands } from '../../generators/apparatus/bench.ts';
import { boxValues } from '../../generators/apparatus/box.ts';
import type { Ask } from '../../generators/experiments/ask.ts';
import { careyFoster } from '../../generators/experiments/carey-foster.ts';
import type { Observed } from '../../generators/experiments/experiment.ts';
import { knownNames } from '../../generators/cli/content.ts';
import { acceptRanges } from '../../generators/quantities/accept.ts';
import { dimensionFault } from '../../generators/quantities/dimension.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { program } from '../../generators/quantities/program.ts';
import { sensitivities, standardUncertainty } from '../../generators/quantities/uncertainty.ts';
import { round } from '../../generators/quantities/written.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import { readWireAsk } from '../../generators/order/wire-ask.ts';
import type { Order } from '../../generators/order/schema.ts';
import { streams } from '../../generators/random.ts';
import { askFor } from '../../generators/sheets/tables.ts';
import { hands, tables } from './demo.ts';

const known = knownNames(tables);
const worked = program(careyFoster.steps({}));
const usual = readOrder('experiment: carey-foster\n', 'order.yaml', known);
const numbers = ({ readings }: Observed, id: string) => [readings[id]!].flat().map(Number);

/** Every ordered pair of the usual wires: the wire dealt first is X. */
function asks(change: Partial<Order> = {}): Ask[] {
  const order = { ...usual, ...change };
  return order.wires.flatMap((first) => order.wires.filter((other) => other !== first).map((other) => askFor(order, [first, other], tables)));
}

type Sets = { ask: Ask; observed: Observed }[];

function sets(from: readonly Ask[], count: number, seed: string): Sets {
  return Array.from({ length: count }, (_, i) => {
    const ask = from[i % from.length]!;
    return { ask, observed: careyFoster.observe(ask, streams('Carey Foster').within(seed, i)) };
  }).flatMap(({ ask, observed }) => (observed ? [{ ask, observed }] : []));
}

describe('the steps', () => {
  test('have dimensions that fit', () => {
    const args = { W: 100, R: 0.8, la: 30.2, lb: 69.9, ba: 39.7, perCm: 0.02, meanPerCm: 0.02, P: 3, l1: 61.2, l2: 39.5, shift: 21.7, diff: 0.43, meanDiff: 0.43 };
    for (const step of worked.steps) if (step.kind === 'relation') expect(dimensionFault(worked, step, args)).toBeUndefined();
  });

  // By hand: 0.8 Ω moves the null by 40.0 cm, so 0.0200 Ω/cm; a shift of 21.7 cm is 0.434 Ω, and −21.7 cm is −0.434 Ω.
  test.each([
    ['61.2', '39.5', '0.434', 'Y'],
    ['39.5', '61.2', '-0.434', 'X'],
  ])('give the difference with its sign: null at %s cm, then at %s cm', (l1, l2, difference, larger) => {
    const { written, exact } = evaluate(worked, { W: '100.0', R: ['0.8'], la: ['30.0'], lb: ['70.0'], P: ['3.0'], l1: [l1], l2: [l2] }, 'even');
    expect(written.get('meanPerCm')).toEqual(['0.0200']);
    expect(written.get('meanDiff')).toEqual([difference]);
    const verdict = careyFosterVerdict();
    const on = (worst: number) => ({ value: (id: string) => exact.get(id)![0]!, rows: (id: string) => exact.get(id)!, worst: () => worst, expanded: () => worst });
    expect(verdict.decide(on(0.01))).toBe(larger);
    expect(verdict.decide(on(0.5))).toBe('neither');
  });

  test('know a difference taken the other way round and an inverted ratio', () => {
    const slips = worked.steps.flatMap((step) => (step.kind === 'relation' ? (step.slips ?? []) : []));
    expect(slips.map(({ id }) => id)).toEqual(['ratio inverted', 'one null point alone', 'difference the other way round']);
  });
});

function careyFosterVerdict() {
  const found = careyFoster.steps({}).find((step) => step.kind === 'verdict');
  if (found?.kind !== 'verdict') throw new Error('no verdict');
  return found;
}

const EACH = 3334;
const byHands = Object.fromEntries(
  hands.map((which) => [which, sets([{}, { rows: 3 }, { rows: 6 }, { window: [15, 85] as [number, number] }].flatMap((change) => asks({ hands: which, ...change })), EACH, which)]),
) as Record<Hands, Sets>;

test('10 000 sets keep every rule of the bench: settings of the box, equal arms, millimetres, both null points inside the window, pairs that can be told apart', () => {
  const found = new Set<string>();
  const rule = (kept: boolean, words: string) => void (kept || found.add(words));
  const all = Object.values(byHands).flat();
  for (const { ask, observed } of all) {
    const { readings } = observed;
    const settings = boxValues(ask.bench.box.plugs);
    for (const id of ['R', 'P']) {
      const column = [readings[id]!].flat();
      rule(column.length === ask.rows, 'as many rows as were asked for');
      rule(column.every((text) => settings.includes(text)), `${id} is a setting of the box`);
      rule(new Set(column).size === column.length, `no ${id} twice`);
    }
    for (const id of ['la', 'lb', 'l1', 'l2']) {
      const column = [readings[id]!].flat();
      rule(column.every((text) => /^\d{1,2}\.\d$/.test(text)), 'null points are read to the millimetre');
      rule(column.every((text) => Number(text) >= ask.window[0] && Number(text) <= ask.window[1]), 'null points lie inside the window');
    }
    rule(numbers(observed, 'la').every((la, row) => la < numbers(observed, 'lb')[row]!), 'with R on the left the null point lies further left');
    rule(numbers(observed, 'l1').every((l1, row) => Math.abs(l1 - numbers(observed, 'l2')[row]!) > 1.9), 'the wires can be told apart');
  }
  expect([...found]).toEqual([]);
  expect(all.length).toBeGreaterThan(9_800);
});

test("the honest student's results, rounded at every step or nowhere, lie in the accept ranges", () => {
  for (const { observed } of sets(asks(), 300, 'honest')) {
    const ranges = acceptRanges(worked, observed.readings, { tables: false, drawn: {} });
    for (const keep of [(value: number) => value, ...(['even', 'up'] as const).flatMap((ties) => [3, 4, 5].map((figures) => (value: number) => Number(round(value, { figures }, ties))))]) {
      const perCm = numbers(observed, 'R').map((R, row) => keep(R / (numbers(observed, 'lb')[row]! - numbers(observed, 'la')[row]!)));
      const mean = (values: number[]) => keep(values.reduce((a, b) => a + b, 0) / values.length);
      const meanPerCm = mean(perCm);
      const diff = numbers(observed, 'l1').map((l1, row) => keep(meanPerCm * (l1 - numbers(observed, 'l2')[row]!)));
      for (const [id, values] of Object.entries({ perCm, meanPerCm: [meanPerCm], diff, meanDiff: [mean(diff)] }))
        values.forEach((value, row) => {
          const [low, high] = ranges.get(id)![row]!;
          expect(value, id).toBeGreaterThanOrEqual(low - 1e-12);
          expect(value, id).toBeLessThanOrEqual(high + 1e-12);
        });
    }
  }
});

describe.each(hands)('the interval stated for 95 of 100, in 3300 sets in %s hands,', (which) => {
  const covered = (id: string, truth: string) => {
    const all = byHands[which];
    const inside = all.filter(({ ask, observed }) => {
      const values = evaluate(worked, observed.readings, 'even');
      const { of, scatters } = sensitivities(worked, values);
      const { expanded } = standardUncertainty(of(id), scatters, values, careyFoster.halfWidths(ask));
      return Math.abs(values.exact.get(id)![0]! - observed.truth[truth]!) <= expanded;
    });
    return (100 * inside.length) / all.length;
  };

  // 3300 sets know a share of 95 % to 0.4 %. In careful hands the class of the box outweighs the rest, and a limit has no tails.
  const [low, high] = which === 'careful' ? [94, 98] : [93.5, 96.5];
  test(`covers the true resistance per cm in ${low} to ${high} % of them`, () => {
    const percent = covered('meanPerCm', 'perCm');
    expect(percent).toBeGreaterThan(low);
    expect(percent).toBeLessThan(high);
  });

  test(`covers the true difference in ${low} to ${high} % of them`, () => {
    const percent = covered('meanDiff', 'diff');
    expect(percent).toBeGreaterThan(low);
    expect(percent).toBeLessThan(high);
  });
});

describe('the planner', () => {
  const planned = (one: string, other: string, change: Partial<Order> = {}) => careyFoster.plan(askFor({ ...usual, ...change }, [readWireAsk(one, known), readWireAsk(other, known)], tables));

  test('takes every pair of the usual wires', () => {
    for (const ask of asks()) {
      const { balances, unfit } = careyFoster.plan(ask);
      expect(unfit).toEqual([]);
      expect(balances.every(({ usable, wanted }) => usable.length >= wanted)).toBe(true);
    }
  });

  test('refuses a difference that is not below what the bridge wire has, and says what would do', () => {
    const { unfit } = planned('constantan, SWG 28, 60 cm', 'constantan, SWG 28, 100 cm');
    expect(unfit).toEqual([expect.stringMatching(/differ by 1\.77 Ω.*below the resistance of that part of the bridge wire.*What would do: (\d+) cm of constantan, SWG 28, beside 60 cm/)]);
    const [, cm] = /What would do: (\d+) cm/.exec(unfit[0]!)!;
    expect(planned('constantan, SWG 28, 60 cm', `constantan, SWG 28, ${cm} cm`).unfit).toEqual([]);
  });

  test('refuses wires that are too nearly equal, and says what would do', () => {
    const { unfit } = planned('constantan, SWG 28, 60 cm', 'constantan, SWG 28, 61 cm');
    expect(unfit).toEqual([expect.stringMatching(/too little to be read well/)]);
    const [, cm] = /What would do: (\d+) cm/.exec(unfit[0]!)!;
    expect(planned('constantan, SWG 28, 60 cm', `constantan, SWG 28, ${cm} cm`).unfit).toEqual([]);
  });

  test('refuses wires of so large a resistance that real pieces differ by more than the bridge wire has', () => {
    expect(planned('nichrome, SWG 34, 100 cm', 'nichrome, SWG 34, 101 cm').unfit).toEqual([expect.stringMatching(/two wires of a smaller resistance/)]);
  });

  test('finds too few settings in a box of whole ohms', () => {
    const { balances } = planned('constantan, SWG 28, 60 cm', 'constantan, SWG 28, 55 cm', { box: [1, 2, 2, 5, 10] });
    expect(balances.filter(({ usable, wanted }) => usable.length < wanted).map(({ of }) => of)).toContain('the bridge wire at its thickest');
  });

  test('does with the usual fractional box of 0.1 to 1 Ω in three rows', () => {
    const strip = planned('constantan, SWG 28, 60 cm', 'constantan, SWG 28, 55 cm', { box: [0.1, 0.2, 0.2, 0.5], rows: 3 }).balances.slice(1);
    expect(strip.every(({ usable, wanted }) => usable.length >= wanted)).toBe(true);
  });
});

test('what ideal apparatus reads gives back the nominal difference', () => {
  for (const ask of asks()) {
    const { readings } = careyFoster.ideal(ask);
    const { exact } = evaluate(worked, readings, 'even');
    const nominal = careyFosterNominal(ask);
    // Null points are rounded to a millimetre each, of 2.8 mΩ on the middle bridge wire.
    expect(Math.abs(exact.get('meanDiff')![0]! - nominal)).toBeLessThan(0.004);
  }
});

/** ρ L / A by hand, with π from the machine. */
function careyFosterNominal({ wire, others }: Ask): number {
  const [X, Y] = [wire, others[0]!].map(({ made, diameter, length }) => (4 * Number(made.rho) * (length / 100)) / (Math.PI * (diameter / 1000) * (diameter / 1000))) as [number, number];
  return Y - X;
}
