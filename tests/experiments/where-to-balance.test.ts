import { describe, expect, test } from 'vitest';
import { boxValues } from '../../generators/apparatus/box.ts';
import { isFit } from '../../generators/experiments/plan.ts';
import { whereToBalance } from '../../generators/experiments/where-to-balance.ts';
import { dimensionFault } from '../../generators/quantities/dimension.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { program } from '../../generators/quantities/program.ts';
import { benchSets, coverage, numbers, usualAsks } from './bench-sets.ts';
import { hands } from './demo.ts';
import { expectHonestWorkAccepted, hundredths, meanOf, three } from './honest-work.ts';

const programs = { left: program(whereToBalance.steps({ known: 'left' })), right: program(whereToBalance.steps({ known: 'right' })) };
const worked = programs.left;

describe('the steps', () => {
  test('have dimensions that fit', () => {
    const args = { W: 100, dl: 0.1, R: 4, l: 50, r: 50, meanX: 4, RAlong: 0.4, lAlong: 9.1, rAlong: 90.9, XAlong: 4 };
    for (const step of worked.steps) if (step.kind === 'relation') expect(dimensionFault(worked, step, args)).toBeUndefined();
  });

  // By hand: 1 mm of 50 and 50 cm is 0.40 %, of 40 and 60 cm 0.42 %, of 20 and 80 cm 0.62 or 0.63 % (a tie, 0.625), of 10 and 90 cm 1.11 %.
  test('say how much a millimetre matters at 50, 40, 20 and 10 cm', () => {
    const places = ['50.0', '40.0', '20.0', '10.0'];
    const readings = { W: '100.0', dl: '0.1', R: ['4.0', '4.0'], l: ['50.0', '50.0'], RAlong: ['4.0', '4.0', '4.0', '4.0'], lAlong: places };
    expect(evaluate(worked, readings, 'even').written.get('reach')).toEqual(['0.40', '0.42', '0.62', '1.11']);
    expect(evaluate(worked, readings, 'up').written.get('reach')).toEqual(['0.40', '0.42', '0.63', '1.11']);
  });
});

describe('the plan', () => {
  test('takes the usual wires with the usual box', () => {
    for (const ask of usualAsks(whereToBalance)) expect(isFit(whereToBalance.plan(ask))).toBe(true);
  });
  test('refuses a box that does not reach both ends of the wire, and says which places it misses', () => {
    const [ask] = usualAsks(whereToBalance, { box: [0.1, 0.2, 0.2, 0.5, 1, 2, 2, 5, 10, 20] });
    expect(whereToBalance.plan(ask!).unfit).toEqual([expect.stringMatching(/no setting of the box balances within 2 cm of 95 cm; .* would do$/)]);
  });
});

const asks = hands.flatMap((which) => [{ hands: which }, { hands: which, gap: 'right' as const, rows: 5 }].flatMap((change) => usualAsks(whereToBalance, change)));
const sets = benchSets(whereToBalance, asks, 10_000, 'where to balance');

test('no set of 10 000 breaks a rule of the bench: settings of the box, millimetres, mid-wire rows inside the window, the others from end to end', () => {
  const broken = new Set<string>();
  for (const { ask, observed } of sets) {
    const column = (id: string) => observed.readings[id] as string[];
    const settings = boxValues(ask.bench.box.plugs);
    if (column('R').length !== ask.rows || ![...column('R'), ...column('RAlong')].every((value) => settings.includes(value))) broken.add('settings');
    if (![...column('l'), ...column('lAlong')].every((value) => /^\d{1,2}\.\d$/.test(value))) broken.add('millimetres');
    if (!numbers(observed, 'l').every((l) => l >= ask.window[0] && l <= ask.window[1])) broken.add('window');
    const along = numbers(observed, 'lAlong');
    if (!along.every((l, row) => row === 0 || l > along[row - 1]!)) broken.add('from end to end');
    if (along[0]! < 1 || along[0]! > 10 || along.at(-1)! < 90 || along.at(-1)! > 99) broken.add('both ends');
  }
  expect([...broken]).toEqual([]);
  expect(sets.length).toBeGreaterThan(9_900);
});

test('rows near the ends stray several times as far from the mid-wire value as rows near the middle', () => {
  const stray = [0, 3, 6].map((row) => {
    const squares = sets.slice(0, 1200).map(({ observed }) => {
      const away = evaluate(programs[observed.form['known'] as 'left' | 'right'], observed.readings, 'even').exact.get('away')![row]!;
      return away * away;
    });
    return Math.sqrt(meanOf(squares));
  }) as [number, number, number];
  expect(stray[0] / stray[1]).toBeGreaterThan(3);
  expect(stray[2] / stray[1]).toBeGreaterThan(3);
});

// 800 sets know a share of 95 % to 0.8 %.
test.each(hands)('in %s hands the interval stated for the mid-wire mean holds the true resistance about as often as it says', (which) => {
  const own = benchSets(whereToBalance, usualAsks(whereToBalance, { hands: which }), 800, `middle ${which}`);
  const percent = coverage(whereToBalance, own, 'meanX', (observed) => observed.truth['X']!);
  expect(percent).toBeGreaterThan(92);
  expect(percent).toBeLessThan(97.5);
});

test("the honest student's results, however they are rounded and by either form of the error, lie in the accept ranges", () => {
  expectHonestWorkAccepted(whereToBalance, sets.slice(0, 90), (observed, note) => {
    const rest = (l: number) => (1000 - Math.round(10 * l)) / 10;
    const X = (R: number[], l: number[]) => R.map((ohms, row) => (observed.form['known'] === 'left' ? (ohms * rest(l[row]!)) / l[row]! : (ohms * l[row]!) / rest(l[row]!)));
    const [mean] = note('meanX', [meanOf(note('X', X(numbers(observed, 'R'), numbers(observed, 'l')), three))], three) as [number];
    const along = numbers(observed, 'lAlong');
    const found = note('XAlong', X(numbers(observed, 'RAlong'), along), three);
    note('away', found.map((one) => (100 * (one - mean)) / mean), { decimals: 1 });
    note('reach', along.map((l) => 100 * (0.1 / l + 0.1 / rest(l))), hundredths);
    note('reach', along.map((l) => (100 * 0.1 * 100) / (l * rest(l))), hundredths);
  });
});
