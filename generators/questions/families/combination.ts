import type { Random } from '../../random.ts';
import type { Readings } from '../../quantities/evaluate.ts';
import type { Family, Work } from '../family.ts';
import { bridgeWire, nullPoint, ohms } from '../kinds.ts';
import { asPrinted } from '../number.ts';

const resistors = ['2.0', '3.0', '4.0', '5.0', '6.0', '8.0', '10', '12', '15', '20', '24', '30'] as const;

const seriesLine: Work = { id: 'T', as: 'Q1 * l1 / (W - l1)', slips: { 'ratio inverted': 'Q1 * (W - l1) / l1' } };
const parallelLine: Work = { id: 'C', as: 'Q2 * l2 / (W - l2)', slips: { 'ratio inverted in the second': 'Q2 * (W - l2) / l2' } };

/** The right gap's resistors follow from the null points that are to be. */
function drawCombination(random: Random, ask: string): Readings {
  const [A, B] = random.shuffle(resistors).slice(0, 2).sort((a, b) => Number(b) - Number(a)) as [string, string];
  const [l1, l2] = [random.pick(NULLS), random.pick(NULLS)];
  const facing = (own: number, l: string) => asPrinted((own * (100 - Number(l))) / Number(l));
  const [T, Z] = [Number(A) + Number(B), Number(A) * Number(B)];
  const known = { Q1: facing(T, l1), Q2: facing(Z / T, l2) };
  return ask === 'nulls' ? { A, B, ...known } : { ...known, l1, l2 };
}

const NULLS = ['20.0', '25.0', '30.0', '37.5', '40.0', '45.0', '50.0', '55.0', '60.0', '62.5', '70.0', '75.0', '80.0'] as const;

/** Two resistors A and B in the left gap, first in series (T), then in parallel (C), against known ones in the right. */
export const combination: Family = {
  id: 'combination',
  tags: ['metre-bridge', 'combinations'],
  body: {
    quantities: {
      A: ohms('A', resistors),
      B: ohms('B', resistors),
      Q1: ohms('Q_1'),
      l1: nullPoint('l_1'),
      Q2: ohms('Q_2'),
      l2: nullPoint('l_2'),
      T: { tex: 'T', unit: 'Ω' },
      C: { tex: 'C', unit: 'Ω' },
      Z: { tex: 'Z', unit: 'Ω²' },
      D: { tex: 'D', unit: 'Ω', between: [undefined, undefined] },
      W: bridgeWire,
    },
    condition: ['T * (W - l1) = Q1 * l1', 'C * (W - l2) = Q2 * l2', 'Z = T * C', 'A + B = T', 'A * B = Z', 'A * B = (A + B) * C'],
    holds: { 'the parallel resistance is at most a quarter of the series one': 'T - 4 * C + 0.0000001 * T' },
    draw: drawCombination,
    asks: {
      product: {
        finds: ['Z'],
        algebra: 2,
        steps: [seriesLine, parallelLine, { id: 'Z', as: 'T * C', slips: { 'parallel resistance taken for the product': 'C' } }],
      },
      each: {
        finds: ['A', 'B'],
        algebra: 3,
        steps: [
          seriesLine,
          parallelLine,
          { id: 'D', as: 'sqrt(T^2 - 4 * T * C)' },
          { id: 'A', as: '(T + D) / 2' },
          { id: 'B', as: '(T - D) / 2', slips: { 'not halved': 'T - D' } },
        ],
      },
      nulls: {
        finds: ['l1', 'l2'],
        algebra: 2,
        steps: [
          { id: 'T', as: 'A + B' },
          { id: 'l1', as: 'W * T / (T + Q1)', slips: { 'wrong end': 'W * Q1 / (T + Q1)' } },
          { id: 'C', as: 'A * B / (A + B)' },
          { id: 'l2', as: 'W * C / (C + Q2)', slips: { 'wrong end in the second': 'W * Q2 / (C + Q2)' } },
        ],
      },
    },
  },
};
