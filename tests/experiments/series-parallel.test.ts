import { describe, expect, test } from 'vitest';
import { boxValues } from '../../generators/apparatus/box.ts';
import { isFit } from '../../generators/experiments/plan.ts';
import { COMBINATIONS } from '../../generators/experiments/series-parallel-steps.ts';
import { seriesParallel } from '../../generators/experiments/series-parallel.ts';
import { dimensionFault } from '../../generators/quantities/dimension.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { program } from '../../generators/quantities/program.ts';
import { conventions } from '../../generators/sheets/conventions.ts';
import { workOut } from '../../generators/sheets/worked.ts';
import { type BenchSet, benchSets, coverage, numbers, usualAsks } from './bench-sets.ts';
import { demo, hands } from './demo.ts';
import { expectHonestWorkAccepted, hundredths, meanOf, three } from './honest-work.ts';

const worked = program(seriesParallel.steps({ known: 'left' }));

describe('the steps', () => {
  test('have dimensions that fit', () => {
    const args = Object.fromEntries(COMBINATIONS.flatMap((each) => [[`R${each}`, 3], [`l${each}`, 43.2], [`r${each}`, 56.8], [`meanX${each}`, 3.9]]));
    for (const step of worked.steps)
      if (step.kind === 'relation') expect(dimensionFault(worked, step, { W: 100, ...args, series: 7.8, parallel: 2.6 })).toBeUndefined();
  });

  // By hand: 3 Ω and 6 Ω are 9 Ω in series and 2 Ω in parallel; null points at 50 cm with the same in the box.
  test('say 9 Ω in series and 2 Ω in parallel of 3 Ω and 6 Ω', () => {
    const at = (suffix: string, R: string) => ({ [`R${suffix}`]: [R, R], [`l${suffix}`]: ['50.0', '50.0'] });
    const readings = { W: '100.0', ...at('One', '3.0'), ...at('Two', '6.0'), ...at('Series', '9.1'), ...at('Parallel', '1.9') };
    const { written } = evaluate(worked, readings, 'even');
    expect(['series', 'parallel', 'seriesOff', 'parallelOff'].map((id) => written.get(id))).toEqual([['9.00'], ['2.00'], ['0.10'], ['-0.10']]);
  });
});

describe('the plan', () => {
  test('takes every pair of the usual wires', () => {
    for (const ask of usualAsks(seriesParallel)) expect(isFit(seriesParallel.plan(ask))).toBe(true);
  });

  test('names the combination that a box in whole ohms cannot balance', () => {
    const { balances } = seriesParallel.plan(usualAsks(seriesParallel, { box: [1, 2, 2, 5, 10, 20] })[0]!);
    expect(balances.filter(({ usable, wanted }) => usable.length < wanted).map(({ of }) => of)).toContain('both in parallel');
    expect(balances.find(({ of }) => of === 'both in series')!.usable.length).toBeGreaterThanOrEqual(3);
  });
});

const asks = hands.flatMap((which) => [{ hands: which }, { hands: which, gap: 'right' as const, rows: 4 }].flatMap((change) => usualAsks(seriesParallel, change)));

test('no set of 10 000 breaks a rule of the bench: settings of the box, no R twice, millimetres inside the window, as many rows as were asked for', () => {
  const broken = new Set<string>();
  const all = benchSets(seriesParallel, asks, 10_000, 'series and parallel');
  for (const { ask, observed } of all)
    for (const each of COMBINATIONS) {
      const [R, l] = [observed.readings[`R${each}`] as string[], observed.readings[`l${each}`] as string[]];
      const settings = boxValues(ask.bench.box.plugs);
      if (R.length !== ask.rows || l.length !== ask.rows) broken.add('rows');
      if (!R.every((value) => settings.includes(value)) || new Set(R).size < R.length) broken.add('settings');
      if (!l.every((value) => /^\d\d\.\d$/.test(value) && Number(value) >= ask.window[0] && Number(value) <= ask.window[1])) broken.add('null points');
    }
  expect([...broken]).toEqual([]);
  expect(all.length).toBeGreaterThan(9_900);
});

describe.each(hands)('sets in %s hands', (which) => {
  const sets = benchSets(seriesParallel, usualAsks(seriesParallel, { hands: which }), 800, `agreement ${which}`);

  // 800 sets know a share of 95 % to 0.8 %.
  test.each(['seriesOff', 'parallelOff'])('%s is zero within its stated 95 % uncertainty as often as that says', (id) => {
    const percent = coverage(seriesParallel, sets, id, () => 0);
    expect(percent).toBeGreaterThan(93);
    expect(percent).toBeLessThan(97.5);
  });
});

describe('the verdict', () => {
  const workedOut = ({ ask, observed }: BenchSet) => workOut({ ...sheetOf(observed), conventions: conventions(demo, ask, seriesParallel, worked.steps) }, worked);
  const sheetOf = ({ form, readings }: BenchSet['observed']) => ({ format: 1 as const, edition: 1, experiment: 'series-parallel', origin: 'generated' as const, form, readings });
  const [set] = benchSets(seriesParallel, usualAsks(seriesParallel), 1, 'verdict') as [BenchSet];

  test('is that theory and experiment agree, and that they differ where the series table is worked with half the resistance', () => {
    expect(workedOut(set).verdicts()).toEqual({ seriesAgrees: ['agrees'], parallelAgrees: ['agrees'] });
    const halved = numbers(set.observed, 'RSeries').map((R) => String(R / 2));
    const wrong = { ...set, observed: { ...set.observed, readings: { ...set.observed.readings, RSeries: halved } } };
    expect(workedOut(wrong).verdicts()).toEqual({ seriesAgrees: ['differs'], parallelAgrees: ['agrees'] });
  });

  test('does not hang on an error of the box that all tables share: it drops out where theory and experiment are alike', () => {
    const { contributions, u } = workedOut(set).budget('seriesOff');
    expect(Math.abs(contributions.find(({ source }) => source === 'boxError')!.part)).toBeLessThan(0.1 * u);
  });
});

test("the honest student's results, however they are rounded and whichever way r in parallel is found, lie in the accept ranges", () => {
  expectHonestWorkAccepted(seriesParallel, benchSets(seriesParallel, asks, 120, 'honest'), (observed, note) => {
    const mean = Object.fromEntries(
      COMBINATIONS.map((each) => {
        const [R, l] = [numbers(observed, `R${each}`), numbers(observed, `l${each}`)];
        const rest = l.map((place) => (1000 - Math.round(10 * place)) / 10);
        const X = note(`X${each}`, R.map((ohms, row) => (observed.form['known'] === 'left' ? (ohms * rest[row]!) / l[row]! : (ohms * l[row]!) / rest[row]!)), three);
        return [each, note(`meanX${each}`, [meanOf(X)], three)[0]!];
      }),
    ) as Record<(typeof COMBINATIONS)[number], number>;
    const [series] = note('series', [mean.One + mean.Two], three) as [number];
    note('parallel', [1 / (Number((1 / mean.One).toPrecision(3)) + Number((1 / mean.Two).toPrecision(3)))], three);
    const [parallel] = note('parallel', [(mean.One * mean.Two) / (mean.One + mean.Two)], three) as [number];
    note('seriesOff', [mean.Series - series], hundredths);
    note('parallelOff', [mean.Parallel - parallel], hundredths);
  });
});
