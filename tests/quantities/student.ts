import type { Readings } from '../../generators/quantities/evaluate.ts';
import type { Digits } from '../../generators/quantities/step.ts';
import { type Ties, round } from '../../generators/quantities/written.ts';
import type { Random } from '../../generators/random.ts';
import type { Variant } from './practical.ts';

/** How a student works; nothing here comes from the steps of the practical. */
export interface Habits {
  /** What is written down of a value whose stated digits are these. */
  keep(value: number, digits: Digits): number;
  /** What is gone on with: the written number, or what was in the calculator. */
  carry(value: number, written: number, digits: Digits): number;
  pi: number;
  route: 'diameter' | 'radius' | 'area' | 'radius, then area';
  /** Factors over divisors; a sum comes as one factor. */
  product(factors: number[], divisors: number[]): number;
}

export const routes: Habits['route'][] = ['diameter', 'radius', 'area', 'radius, then area'];
const pis = [3.14, 22 / 7, 3.142, 3.1416, Math.PI];
const MOST_EXTRA = 9;

const more = (digits: Digits, extra: number): Digits => ('decimals' in digits ? { decimals: digits.decimals + extra } : { figures: digits.figures + extra });

function allRoundings(value: number, digits: Digits): number[] {
  const rounded = (['even', 'up'] as const).flatMap((ties: Ties) => Array.from({ length: MOST_EXTRA + 1 }, (_, extra) => Number(round(value, more(digits, extra), ties))));
  return [value, ...rounded];
}

const withCalculator = (factors: number[], divisors: number[]) =>
  factors.reduce((a, b) => a * b, 1) / divisors.reduce((a, b) => a * b, 1);

const logarithm = (value: number) => Math.round(Math.log10(Math.abs(value)) * 1e4) / 1e4;

/** By four-figure tables: every logarithm to four places, the antilogarithm to four figures. */
export function withTables(factors: number[], divisors: number[]): number {
  const sum = factors.reduce((all, value) => all + logarithm(value), 0) - divisors.reduce((all, value) => all + logarithm(value), 0);
  return Math.sign(withCalculator(factors, divisors)) * Number(round(10 ** sum, { figures: 4 }, 'up'));
}

/** Rounds anyhow: to the stated digits, to more or not at all, ties either way, here so and there so. */
export function anyStudent(random: Random, product = withCalculator): Habits {
  const keep = (value: number, digits: Digits) => {
    const extra = random.integer(-1, MOST_EXTRA);
    return extra < 0 ? value : Number(round(value, more(digits, random.pick([0, 0, extra])), random.pick(['even', 'up'])));
  };
  return {
    keep,
    carry: (value, written, digits) => random.pick([written, value, keep(value, digits)]),
    pi: random.pick(pis),
    route: random.pick(routes),
    product,
  };
}

/** Rounds every value down as far as may be, or up, so that the ends of what can be reached are reached. */
export function extremeStudent(end: 'lowest' | 'highest', route: Habits['route'], product = withCalculator): Habits {
  const keep = (value: number, digits: Digits) => Math[end === 'lowest' ? 'min' : 'max'](...allRoundings(value, digits));
  return { keep, carry: (_, written) => written, pi: end === 'lowest' ? 3.14 : 22 / 7, route, product };
}

/** The whole practical, worked by hand from the readings: every value that the student writes down. */
export function workedBy(student: Habits, readings: Readings, { known, zero }: Variant): Record<string, number[]> {
  const out: Record<string, number[]> = {};
  const numbers = (id: string) => [readings[id]!].flat().map(Number);
  const number = (id: string) => numbers(id)[0]!;
  const note = (id: string, values: number[], digits: Digits): number[] => {
    const written = values.map((value) => student.keep(value, digits));
    out[id] = written;
    return values.map((value, row) => student.carry(value, written[row]!, digits));
  };
  /** Sums of short decimals need no rounding. */
  const noteExact = (id: string, values: number[]) => (out[id] = values);
  const mean = (values: number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const three = { figures: 3 };

  const l = numbers('l');
  const rest = noteExact('r', l.map((value) => number('W') - value));
  const R = numbers('R');
  const X = note('X', l.map((value, row) => (known === 'left' ? student.product([R[row]!, rest[row]!], [value]) : student.product([R[row]!, value], [rest[row]!]))), three);
  const [meanX] = note('meanX', [mean(X)], three) as [number];

  const leastCount = number('pitch') / number('N');
  const turned = zero === 'negative' ? number('n0') - number('N') : number('n0');
  const [e] = noteExact('e', [turned * leastCount]) as [number];
  const n = numbers('n');
  const diameters = noteExact('dObs', numbers('msr').map((main, row) => main + n[row]! * leastCount));
  const [meanD] = note('meanD', [mean(diameters)], { decimals: 3 }) as [number];
  const [d] = note('d', [meanD - e], { decimals: 3 }) as [number];

  const [rho] = note('rho', [resistivity(student, d / 1000, meanX, number('L') / 100)], three) as [number];
  note('off', [student.product([100, rho - number('rhoTable')], [number('rhoTable')])], { decimals: 1 });
  return out;
}

function resistivity({ keep, pi, route, product }: Habits, d: number, X: number, L: number): number {
  const three = { figures: 3 };
  const half = () => keep(d / 2, three);
  switch (route) {
    case 'diameter':
      return product([pi, d, d, X], [4, L]);
    case 'radius': {
      const a = half();
      return product([pi, a, a, X], [L]);
    }
    case 'area':
      return product([X, keep(product([pi, d, d], [4]), three)], [L]);
    case 'radius, then area': {
      const a = half();
      return product([X, keep(product([pi, a, a], []), three)], [L]);
    }
  }
}
