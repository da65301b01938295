import { describe, expect, test } from 'vitest';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { round } from '../../generators/quantities/written.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import type { Sheet } from '../../generators/sheets/sheet.ts';
import { workOut } from '../../generators/sheets/worked.ts';
import { issuesOf, orderOf } from './class.ts';

const experiment = experimentNamed('resistivity');
const crowd = Array.from({ length: 20 }, (_, i) => ({ roll: `${i}`, name: '' }));
const left = issuesOf(orderOf(), crowd);
const right = issuesOf(orderOf('gap: right\n'), crowd);

const work = (sheet: Sheet, own = {}) => workOut(sheet, programOf(experiment, sheet), own);
const numbers = ({ readings }: Sheet, id: string) => [readings[id]!].flat().map(Number);
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** The practical by hand, from the printed readings, unrounded: mean X in Ω, corrected diameter in mm, ρ in Ω m. */
function byHand(sheet: Sheet, gap: 'left' | 'right') {
  const [R, l] = [numbers(sheet, 'R'), numbers(sheet, 'l')];
  const X = R.map((ohms, row) => (gap === 'left' ? (ohms * (100 - l[row]!)) / l[row]! : (ohms * l[row]!) / (100 - l[row]!)));
  const [pitch, N, n0] = ['pitch', 'N', 'n0'].map((id) => numbers(sheet, id)[0] ?? 0) as [number, number, number];
  const leastCount = pitch / N;
  const zero = sheet.form['zero'] === 'negative' ? (n0 - N) * leastCount : n0 * leastCount;
  const observed = numbers(sheet, 'msr').map((msr, row) => msr + numbers(sheet, 'n')[row]! * leastCount);
  const d = mean(observed) - zero;
  const meanX = mean(X);
  return { X, meanX, d, rho: (Math.PI * (d / 1000) * (d / 1000) * meanX) / 4 / (numbers(sheet, 'L')[0]! / 100) };
}

describe('a worked sheet', () => {
  test.each([['left', left], ['right', right]] as const)('is worked from the printed readings, the box in the %s gap', (gap, issues) => {
    for (const { sheet } of issues) {
      const worked = work(sheet);
      const hand = byHand(sheet, gap);
      worked.cells('X').forEach(({ exact }, row) => expect(exact).toBeCloseTo(hand.X[row]!, 10));
      expect(worked.cells('meanX')[0]!.exact).toBeCloseTo(hand.meanX, 10);
      expect(worked.cells('d')[0]!.exact).toBeCloseTo(hand.d, 10);
      expect(worked.cells('rho')[0]!.exact / hand.rho).toBeCloseTo(1, 10);
    }
  });

  test('accepts what was worked by hand without rounding, and what the key shows', () => {
    for (const { sheet } of left) {
      const worked = work(sheet);
      for (const [id, value] of Object.entries({ meanX: byHand(sheet, 'left').meanX, rho: byHand(sheet, 'left').rho })) {
        const { accept, shown } = worked.cells(id)[0]!;
        for (const answer of [value, Number(shown)]) {
          expect(answer).toBeGreaterThanOrEqual(accept[0]);
          expect(answer).toBeLessThanOrEqual(accept[1]);
        }
      }
    }
  });

  test('is the same from a sheet that went through JSON, and changes nothing on the sheet', () => {
    for (const { sheet } of left) {
      const before = JSON.stringify(sheet);
      const [direct, again] = [work(sheet), work(JSON.parse(before) as Sheet)];
      for (const id of [...experiment.layout.working, ...experiment.layout.answers]) expect(again.cells(id)).toEqual(direct.cells(id));
      expect(again.verdicts()).toEqual(direct.verdicts());
      expect(JSON.stringify(sheet)).toBe(before);
    }
  });

  test('does not come out at the truth: it knows the readings alone', () => {
    for (const { sheet, truth } of left) {
      expect(work(sheet).cells('meanX')[0]!.exact).not.toBe(truth['X']);
      expect(work(sheet).cells('rho')[0]!.exact).not.toBe(truth['rho']);
    }
  });
});

describe('an error carried forward', () => {
  test('goes into every later step, and into no earlier one', () => {
    for (const { sheet } of left) {
      const right = work(sheet);
      const shown = Number(right.cells('meanX')[0]!.shown);
      const slip = round(1.3 * shown, { figures: 3 }, 'even');
      const wrong = work(sheet, { meanX: [slip] });
      expect(wrong.cells('X')).toEqual(right.cells('X'));
      expect(wrong.cells('d')).toEqual(right.cells('d'));
      const ratio = wrong.cells('rho')[0]!.exact / right.cells('rho')[0]!.exact;
      expect(ratio).toBeCloseTo(Number(slip) / right.cells('meanX')[0]!.exact, 6);
    }
  });

  test('makes the consistent answer the accepted one, and the right one a wrong one', () => {
    for (const { sheet } of left) {
      const right = work(sheet).cells('rho')[0]!;
      const slip = round(1.3 * Number(work(sheet).cells('meanX')[0]!.shown), { figures: 3 }, 'even');
      const { d } = byHand(sheet, 'left');
      const consistent = (Math.PI * (d / 1000) * (d / 1000) * Number(slip)) / 4 / (numbers(sheet, 'L')[0]! / 100);
      const [low, high] = work(sheet, { meanX: [slip] }).cells('rho')[0]!.accept;
      expect(consistent).toBeGreaterThanOrEqual(low);
      expect(consistent).toBeLessThanOrEqual(high);
      expect(right.exact < low || right.exact > high).toBe(true);
    }
  });
});
