import type { Step } from '../quantities/step.ts';
import { balance, bridgeInfluences } from './bridge-steps.ts';

/** The bridge table with R first in the left gap (null point l), then in the right (null point m); X from each, and their mean. */
export const interchangeSteps: Step[] = [
  ...bridgeInfluences,
  { kind: 'reading', id: 'R', tex: 'R', unit: 'Ω', per: 'bridge', on: 'box' },
  { kind: 'reading', id: 'l', tex: 'l_{1}', unit: 'cm', per: 'bridge', on: 'scale' },
  { kind: 'relation', id: 'r', tex: '(100 - l_{1})', unit: 'cm', per: 'bridge', as: 'W - l', digits: { decimals: 1 } },
  { kind: 'relation', id: 'X1', tex: 'X_{1}', unit: 'Ω', per: 'bridge', digits: { figures: 3 }, ...balance('left', { R: 'R', l: 'l', r: 'r' }) },
  { kind: 'reading', id: 'm', tex: 'l_{2}', unit: 'cm', per: 'bridge', on: 'scale' },
  { kind: 'relation', id: 'q', tex: '(100 - l_{2})', unit: 'cm', per: 'bridge', as: 'W - m', digits: { decimals: 1 } },
  { kind: 'relation', id: 'X2', tex: 'X_{2}', unit: 'Ω', per: 'bridge', digits: { figures: 3 }, ...balance('right', { R: 'R', l: 'm', r: 'q' }, '-') },
  { kind: 'relation', id: 'X', tex: 'X', unit: 'Ω', per: 'bridge', as: '(X1 + X2) / 2', digits: { figures: 3 } },
  { kind: 'summary', id: 'meanX', tex: '\\overline{X}', unit: 'Ω', by: 'mean', of: ['X'], digits: { figures: 3 } },
];
