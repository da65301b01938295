import { expect, test } from 'vitest';
import { evaluate } from '../../generators/quantities/evaluate.ts';
import { program } from '../../generators/quantities/program.ts';
import type { Relation, Step } from '../../generators/quantities/step.ts';
import { sensitivities, standardUncertainty } from '../../generators/quantities/uncertainty.ts';
import { streams } from '../../generators/random.ts';
import { describeWithPython, python } from '../outside.ts';
import { expectWithin } from '../quantities/numerical.ts';
import { stepsOf } from '../quantities/practical.ts';

type Measured = Record<'R' | 'l' | 'd' | 'L', [value: number, u: number]>;
type Result = Record<'X' | 'rho', [value: number, u: number]>;

/** The formulas of the practical on single readings. */
const steps: Step[] = (['R', 'l', 'd', 'L'] as const).map((id) => ({ kind: 'reading', id, tex: id, unit: { R: 'Ω', l: 'cm', d: 'mm', L: 'cm' }[id] }));
const formulas = stepsOf({ known: 'left', zero: 'none' }).filter((step): step is Relation => ['r', 'X', 'rho'].includes(step.id)) as Relation[];
const checked = program([
  { kind: 'given', id: 'W', tex: 'W', unit: 'cm' },
  ...steps,
  ...formulas.map(({ per: _, model: _model, slips: _slips, ...relation }): Relation => ({ ...relation, as: relation.as.replace('meanX', 'X'), routes: [] })),
]);

/** The engine takes limits a and makes a/√3 of them. */
const limit = (u: number) => ({ absolute: u * Math.sqrt(3) });

function byEngine({ R, l, d, L }: Measured): Result {
  const values = evaluate(checked, { W: '100', R: String(R[0]), l: String(l[0]), d: String(d[0]), L: String(L[0]) }, 'even');
  const { of, scatters } = sensitivities(checked, values);
  const halfWidths = { R: limit(R[1]), l: limit(l[1]), d: limit(d[1]), L: limit(L[1]) };
  const result = (id: string): [number, number] => [values.exact.get(id)![0]!, standardUncertainty(of(id), scatters, values, halfWidths).u];
  return { X: result('X'), rho: result('rho') };
}

const script = `
import json, math, sys
from uncertainties import ufloat
out = []
for m in json.load(sys.stdin):
    R, l, d, L = (ufloat(*m[name]) for name in ('R', 'l', 'd', 'L'))
    X = R * (100 - l) / l
    rho = math.pi * (d / 1000)**2 * X / (4 * L / 100)
    out.append({'X': [X.n, X.s], 'rho': [rho.n, rho.s]})
print(json.dumps(out))
`;

// The same inputs worked with the Python package uncertainties 3.1, once and for all.
test('X and the resistivity have the uncertainties that were found with the Python package', () => {
  const { X, rho } = byEngine({ R: [2, 0.02], l: [42.5, 0.1], d: [0.376, 0.005], L: [100, 0.1] });
  expectWithin(X[0], 2.70588, 2e-6);
  expectWithin(X[1], 0.029237, 2e-5);
  expectWithin(rho[0], 3.00452e-7, 2e-6);
  expectWithin(rho[1], 8.6302e-9, 1e-5);
});

describeWithPython(['uncertainties'], 'the Python package uncertainties', () => {
  test('finds the same values and standard uncertainties on random readings', () => {
    const random = streams('uncertainties').of('readings');
    const about = (low: number, high: number): [number, number] => {
      const value = random.between(low, high);
      return [value, value * random.between(0, 0.03)];
    };
    const measured = Array.from({ length: 200 }, (): Measured => ({ R: about(1, 10), l: about(20, 80), d: about(0.2, 1.2), L: about(30, 150) }));
    const found = python<Result[]>(script, measured);
    expect(found).toHaveLength(200);
    found.forEach((other, i) => {
      const mine = byEngine(measured[i]!);
      for (const id of ['X', 'rho'] as const) for (const part of [0, 1] as const) expectWithin(mine[id][part], other[id][part], 1e-12);
    });
  });
});
