import { describe, expect, test } from 'vitest';
import { resistivity } from '../../generators/experiments/resistivity.ts';
import { award } from '../../generators/marking/award.ts';
import { columnsOf } from '../../generators/marking/columns.ts';
import { readEntry } from '../../generators/marking/entry.ts';
import { judge } from '../../generators/marking/judge.ts';
import { plainSlips } from '../../generators/marking/plain-slips.ts';
import { type Scheme, readScheme } from '../../generators/marking/scheme.ts';
import { experiments } from '../../generators/experiments/index.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import type { Sheet } from '../../generators/sheets/sheet.ts';
import { UserMistake } from '../../generators/mistake.ts';
import { plainReadings } from '../quantities/practical.ts';
import { practical, schemeNamed } from './classes.ts';

/** R = 2.0 Ω, l = 43.2 cm, zero error +0.03 mm, d = 0.38 mm, L = 60.0 cm, table value 4.9e-7 Ω m; three rows alike. */
const sheet: Sheet = {
  format: 1,
  edition: 1,
  experiment: 'resistivity',
  origin: 'generated',
  form: { known: 'left', zero: 'positive' },
  readings: plainReadings({ known: 'left', zero: 'positive' }),
  conventions: { ties: 'even', tables: false, drawn: {}, limits: {}, halfWidths: {} },
};

/** By hand: X = 2.0 · 56.8 / 43.2 = 2.6296; ρ = π · 0.38² · 2.63 / (4 · 0.6) · 1e-6 = 4.971e-7; δ = 7/490. */
const RIGHT = { X: '2.63 Ω', meanX: '2.63 Ω', e: '0.03 mm', meanD: '0.410 mm', d: '0.380 mm', rho: '4.97×10⁻⁷ Ω m', off: '1.4 %' };

function marked(change: Partial<typeof RIGHT>, scheme: Scheme = practical) {
  const typed: Record<string, string> = { ...RIGHT, ...change };
  const columns = columnsOf(scheme, resistivity, [sheet]);
  const entries = columns.map(({ id }) => readEntry(typed[id]!, 'point'));
  return award(judge(sheet, programOf(resistivity, sheet), columns, entries), scheme);
}

// X, mean X, mean D, d and ρ: method 1, answer 1, unit ½, figures ½; e and δ: method ½, answer ½. Together 17.
describe('marks by the scheme of the practical record, added up by hand', () => {
  test.each<[string, Partial<typeof RIGHT>, number]>([
    ['everything right', {}, 17],
    ['a diameter in cm beside its unit is right', { d: '0.0380 cm' }, 17],
    ['one figure more than asked for', { rho: '4.971e-7 Ω m' }, 17],
    ['mean X 3.63, unexplained: its method and answer; ρ = 6.86e-7 and δ = 40.0 follow', { meanX: '3.63 Ω', rho: '6.86e-7 Ω m', off: '40.0 %' }, 15],
    ['ratio inverted in every row: X = 1.52 costs method and answer, mean X, ρ and δ follow', { X: '1.52 Ω', meanX: '1.52 Ω', rho: '2.87e-7 Ω m', off: '-41.4 %' }, 15],
    ['ratio inverted, where X itself was left blank: its 3 marks, and method and answer of mean X', { X: '-', meanX: '1.52 Ω', rho: '2.87e-7 Ω m', off: '-41.4 %' }, 12],
    ['zero error added: d = 0.440, ρ = 6.665e-7 and δ = 36.0 follow', { d: '0.440 mm', rho: '6.665e-7 Ω m', off: '36.0 %' }, 15],
    ['diameter for radius: ρ = 1.99e-6, δ = 306.1', { rho: '1.99e-6 Ω m', off: '306.1 %' }, 15],
    ['ten times too large: the method stands', { rho: '4.97e-6 Ω m', off: '914.3 %' }, 16],
    ['length in cm is 100 times too small: the method stands, as after any power of ten', { rho: '4.97e-9 Ω m', off: '-99.0 %' }, 16],
    ['the sign of δ lost: its answer', { off: '-1.4 %' }, 16.5],
    ['mean X as 2.6, from which nothing follows that was worked with 2.63: the figures', { meanX: '2.6 Ω' }, 16.5],
    ['mean X as 3, two figures short: method, answer and figures', { meanX: '3 Ω' }, 14.5],
    ['far too many figures', { X: '2.62963 Ω' }, 16.5],
    ['no unit anywhere costs one unit mark', { X: '2.63', meanX: '2.63', meanD: '0.410', d: '0.380', rho: '4.97e-7' }, 16.5],
    ['the unit of a resistance beside a resistivity', { rho: '4.97e-7 Ω' }, 16.5],
    ['a diameter typed in m beside mm: the answer alone, its figures are there', { d: '0.000380 mm', rho: '4.97e-13 Ω m', off: '-100.0 %' }, 16],
    ['a diameter with its point one place to the right: the answer alone', { d: '3.80 mm', rho: '4.97e-5 Ω m', off: '10042.9 %' }, 16],
    ['a diameter in mm beside cm: the answer alone', { d: '0.380 cm', rho: '4.97e-5 Ω m', off: '10042.9 %' }, 16],
    ['d left blank', { d: '-' }, 14],
    ['d struck out', { d: 'x' }, 14],
    ['nothing but X', { meanX: '-', e: '-', meanD: '-', d: '-', rho: '-', off: '-' }, 3],
    ['ρ right though d is wrong: it is the key\'s, and earns its marks', { d: '0.111 mm' }, 15],
  ])('%s', (_, change, total) => expect(marked(change)).toMatchObject({ total, full: 17 }));
});

test('a slip that explains an answer, and not the wrong one after it, is no measure of that', () => {
  // A least count ten times too large gives e = 0.3 mm, and would give a mean diameter of 3.8 mm or more.
  const { answers } = marked({ e: '0.30 mm', meanD: '0.777 mm' });
  const [e, meanD] = [answers[2]!, answers[3]!];
  expect(e.explanations[0]).toMatchObject({ slip: 'least count ten times too large' });
  expect(meanD).toMatchObject({ verdict: 'wrong', explanations: [] });
  expect(meanD.accept[0]).toBeCloseTo(0.41, 3);
});

test('a value is no power of ten beside a range round zero, which holds the digits of any', () => {
  const wrong = { written: '3.3', right: [-0.2, 0.5] as [number, number], stated: -1 };
  expect(plainSlips(wrong)).toEqual([]);
  expect(plainSlips({ ...wrong, right: [0.32, 0.34] })).toEqual([{ slip: 'power of ten', places: 1 }]);
});

describe('marks by other schemes', () => {
  test('strict: every missing unit costs ½, and one figure too many too', () => {
    expect(marked({ X: '2.63', meanX: '2.63', meanD: '0.410', d: '0.380', rho: '4.971e-7' }, schemeNamed('strict')).total).toBe(17 - 5 * 0.5 - 0.5);
  });
  test('answers alone: seven marks, units are taken as written', () => {
    expect(marked({ X: '2.63', meanX: '2.6', d: '0.440', rho: '6.66e-7', off: '35.9' }, schemeNamed('answers'))).toMatchObject({ total: 5, full: 7 });
  });
  test('where units are assumed, ! says that one is missing', () => {
    const assumed = { ...practical, units: 'assumed' as const };
    expect(marked({ X: '2.63', meanX: '2.63' }, assumed).total).toBe(17);
    expect(marked({ X: '2.63 !', meanX: '2.63 !' }, assumed).total).toBe(16.5);
  });
});

describe('a scheme', () => {
  test.each(['practical', 'answers', 'strict'])('%s fits every experiment that it lists, with five to seven answers', (name) => {
    const scheme = schemeNamed(name);
    for (const [id, answers] of Object.entries(scheme.experiments)) {
      expect(experiments[id], id).toBeDefined();
      const columns = answers.flatMap(({ step, rows }) => (rows ?? [1]).map((row) => `${step} ${row}`));
      expect(columns.length, id).toBeGreaterThanOrEqual(5);
      expect(columns.length, id).toBeLessThanOrEqual(7);
    }
  });
  test('that gives thirds of marks, or names what is not there, is refused with file and field', () => {
    const wrong = { ...practical, each: { ...practical.each, method: 0.3 }, units: 'none' };
    expect(() => readScheme(wrong, 'mine.yaml')).toThrow(/mine\.yaml, units: [^]*mine\.yaml, each\.method: marks go in halves/);
    const other = readScheme({ ...practical, experiments: { resistivity: [{ step: 'sigma' }] } }, 'mine.yaml');
    expect(() => columnsOf(other, resistivity, [sheet])).toThrow(UserMistake);
  });
});
