import { describe, expect, test } from 'vitest';
import { boxValues } from '../../generators/apparatus/box.ts';
import type { Bridge } from '../../generators/apparatus/bridge.ts';
import { nullPlace } from '../../generators/apparatus/null.ts';
import { endCorrections } from '../../generators/experiments/end-corrections.ts';
import { isFit } from '../../generators/experiments/plan.ts';
import { dimensionFault } from '../../generators/quantities/dimension.ts';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { program } from '../../generators/quantities/program.ts';
import { streams } from '../../generators/random.ts';
import { ideal } from '../apparatus/ideal.ts';
import { benchSets, coverage, numbers, usualAsks } from './bench-sets.ts';
import { hands } from './demo.ts';
import { expectHonestWorkAccepted, hundredths, meanOf, three } from './honest-work.ts';

const worked = { left: program(endCorrections.steps({ known: 'left' })), right: program(endCorrections.steps({ known: 'right' })) };

describe('the steps', () => {
  test.each(['left', 'right'] as const)('have dimensions that fit, the box in the %s gap', (known) => {
    const args = { W: 100, R1: 80, R2: 9, l1: 90.3, l2: 9.4, alpha: 0.4, beta: 0.2, meanAlpha: 0.4, meanBeta: 0.2, R: 2.5, l: 43.2, r: 56.8 };
    for (const step of worked[known].steps) if (step.kind === 'relation') expect(dimensionFault(worked[known], step, args)).toBeUndefined();
  });

  // NSEP 2016: 50 Ω and 100 Ω balance at 33 cm, interchanged at 67 cm; both end corrections are 1 cm.
  test('give 1 cm at both ends for 50 and 100 Ω with null points at 33 and 67 cm', () => {
    const { exact } = evaluate(worked.left, { W: '100', R1: ['50', '50'], R2: ['100', '100'], l1: ['33', '33'], l2: ['67', '67'], R: ['15'], l: ['43'] }, 'even');
    expect(exact.get('meanAlpha')![0]).toBeCloseTo(1, 10);
    expect(exact.get('meanBeta')![0]).toBeCloseTo(1, 10);
  });

  // JEE: 15 Ω in the left gap, null point at 43 cm, end corrections of 2 cm and 1 cm; X = 58/3 Ω. The null points of 50 and
  // 100 Ω that give these ends, by hand: (l1 + 2)/103 = 1/3 and (l2 + 2)/103 = 2/3.
  test('give 58/3 Ω for 15 Ω and a null point at 43 cm with ends of 2 cm and 1 cm', () => {
    const [l1, l2] = [String(103 / 3 - 2), String(206 / 3 - 2)];
    const { exact } = evaluate(worked.left, { W: '100', R1: ['50'], R2: ['100'], l1: [l1], l2: [l2], R: ['15'], l: ['43'] }, 'even');
    expect(exact.get('Xc')![0]).toBeCloseTo(58 / 3, 9);
  });
});

/** A bridge with ends, a shifted scale, joints and a bowed wire of its own. */
function anyBridge(i: number): Bridge {
  const random = streams('bridges with ends').of(i);
  const joints = () => ({ inSeries: random.between(0, 0.05), across: Infinity });
  return {
    ...ideal,
    endCorrection: { left: random.between(0, 2), right: random.between(0, 2) },
    scaleOffset: i % 2 === 0 ? random.between(-0.3, 0.3) : 0,
    profile: { a: i % 2 === 0 ? 0 : random.between(-0.01, 0.01), b: 0 },
    terminals: { left: joints(), right: joints() },
  };
}

describe.each(['left', 'right'] as const)('on exact null points of a bridge with every imperfection, the box in the %s gap', (known) => {
  test('the formulas with their influences in place give back the ends, counted from the zero of the scale, and the resistance', () => {
    for (let i = 0; i < 200; i++) {
      const bridge = anyBridge(i);
      const [R1, R2, R, X] = [80, 9.5, 2, 3.7];
      const at = (left: number, right: number) => nullPlace(bridge, { left, right });
      const { left, right } = bridge.terminals;
      const values: Record<string, number> = {
        W: 100, R1, R2, R, boxError: 0, secondError: 0, uneven: bridge.profile.a,
        joint: (left.inSeries + right.inSeries) / 2, contact: left.inSeries - right.inSeries,
        l1: at(R1, R2), l2: at(R2, R1), l: known === 'left' ? at(R, X) : at(X, R),
        meanAlpha: bridge.endCorrection.left + bridge.scaleOffset, meanBeta: bridge.endCorrection.right - bridge.scaleOffset,
      };
      values['r'] = 100 - values['l']!;
      const model = (id: string) => {
        const { model: made } = worked[known].compiled(id);
        return made.value(made.names.map((name) => values[name]!));
      };
      expect(model('alpha')).toBeCloseTo(values['meanAlpha']!, 6);
      expect(model('beta')).toBeCloseTo(values['meanBeta']!, 6);
      expect(model('Xc')).toBeCloseTo(X, 6);
    }
  });
});

describe('the plan', () => {
  test('takes the usual wires with the usual box', () => {
    for (const ask of usualAsks(endCorrections)) expect(isFit(endCorrections.plan(ask))).toBe(true);
  });
  test('refuses a box whose resistances are too small beside the joints, and says which would do', () => {
    const [ask] = usualAsks(endCorrections, { box: [0.1, 0.2, 0.2, 0.5, 1, 2, 2, 5] });
    expect(endCorrections.plan(ask!).unfit).toEqual([expect.stringContaining('a box with the plugs 0.1 0.2 0.2 0.5 1 2 2 5 10 20 20 50 Ω would do')]);
  });
});

const asks = hands.flatMap((which) => [{ hands: which }, { hands: which, gap: 'right' as const, rows: 6 }].flatMap((change) => usualAsks(endCorrections, change)));

test('no set of 10 000 breaks a rule of the bench: settings of the box, R1 well above R2, millimetres, X inside the window', () => {
  const broken = new Set<string>();
  const all = benchSets(endCorrections, asks, 10_000, 'end corrections');
  for (const { ask, observed } of all) {
    const column = (id: string) => observed.readings[id] as string[];
    const settings = boxValues(ask.bench.box.plugs);
    if (!['R1', 'R2', 'R'].every((id) => column(id).length === ask.rows && column(id).every((value) => settings.includes(value)))) broken.add('settings');
    if (new Set(column('R1')).size < ask.rows || new Set(column('R')).size < ask.rows) broken.add('no R1 and no R twice');
    if (!numbers(observed, 'R1').every((R1, row) => R1 >= 4 * numbers(observed, 'R2')[row]!)) broken.add('ratio');
    if (!['l1', 'l2', 'l'].every((id) => column(id).every((value) => /^\d{1,2}\.\d$/.test(value)))) broken.add('millimetres');
    if (!numbers(observed, 'l').every((l) => l >= ask.window[0] && l <= ask.window[1])) broken.add('window');
    if (!numbers(observed, 'l1').every((l1, row) => l1 > 75 && numbers(observed, 'l2')[row]! < 25)) broken.add('far from mid-wire');
  }
  expect([...broken]).toEqual([]);
  expect(all.length).toBeGreaterThan(9_900);
});

describe.each(hands)('sets in %s hands', (which) => {
  const sets = benchSets(endCorrections, usualAsks(endCorrections, { hands: which }), 800, `ends ${which}`);

  // 800 sets know a share of 95 % to 0.8 %. The box's class and the joints are limits, which have no tails: X is covered a little too often.
  test.each([
    ['meanAlpha', 'endLeft', 93, 97.5],
    ['meanBeta', 'endRight', 93, 97.5],
    ['meanXc', 'X', 94.5, 98.5],
  ])('the interval stated for %s holds the true %s about as often as it says', (id, truth, low, high) => {
    const percent = coverage(endCorrections, sets, id, (observed) => observed.truth[truth]!);
    expect(percent).toBeGreaterThan(low);
    expect(percent).toBeLessThan(high);
  });
});

test('in careful hands the corrected resistance lies nearer to the true one than the other in most sets', () => {
  const sets = benchSets(endCorrections, usualAsks(endCorrections), 600, 'nearer');
  const off = sets.map(({ observed }) => {
    const { exact } = evaluate(worked.left, observed.readings, 'even');
    const error = (id: string) => Math.abs(exact.get(id)![0]! / observed.truth['X']! - 1);
    return { plain: error('meanX'), corrected: error('meanXc') };
  });
  expect(off.filter(({ plain, corrected }) => corrected < plain).length / off.length).toBeGreaterThan(0.5);
  expect(meanOf(off.map(({ corrected }) => corrected))).toBeLessThan(meanOf(off.map(({ plain }) => plain)));
});

test("the honest student's results, however they are rounded, lie in the accept ranges", () => {
  expectHonestWorkAccepted(endCorrections, benchSets(endCorrections, asks, 120, 'honest'), (observed, note) => {
    const [R1, R2, l1, l2, R, l] = ['R1', 'R2', 'l1', 'l2', 'R', 'l'].map((id) => numbers(observed, id)) as [number[], number[], number[], number[], number[], number[]];
    const alpha = note('alpha', R1.map((one, row) => (R2[row]! * l1[row]! - one * l2[row]!) / (one - R2[row]!)), hundredths);
    const beta = note('beta', R1.map((one, row) => (one * l1[row]! - R2[row]! * l2[row]!) / (one - R2[row]!) - 100), hundredths);
    const [left] = note('meanAlpha', [meanOf(alpha)], hundredths) as [number];
    const [right] = note('meanBeta', [meanOf(beta)], hundredths) as [number];
    const X = (a: number, b: number) => R.map((ohms, row) => (observed.form['known'] === 'left' ? (ohms * (100 - l[row]! + b)) / (l[row]! + a) : (ohms * (l[row]! + a)) / (100 - l[row]! + b)));
    note('meanX', [meanOf(note('X', X(0, 0), three))], three);
    note('meanXc', [meanOf(note('Xc', X(left, right), three))], three);
  });
});
