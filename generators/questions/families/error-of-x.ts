import type { Ask, Family } from '../family.ts';
import { bridgeWire, gaps, partsAt } from '../kinds.ts';

const TWO = { figures: 2 };
const small = (tex: string, unit: string, values: readonly string[]) => ({ tex, unit, values, neat: 'any' as const });

/** X in the gap of the choice, with its maximum permissible error: the parts of R, l and the rest of the wire added up. */
export const errorOfX: Family = {
  id: 'error-of-x',
  tags: ['metre-bridge', 'errors'],
  choices: { ...gaps },
  body: (choice) => {
    const { own, other } = partsAt(choice, 'l');
    return {
      quantities: {
        R: { tex: 'R', unit: 'Ω', values: ['2.0', '3.0', '4.0', '5.0', '6.0', '8.0', '10'] },
        dR: { ...small('\\Delta R', 'Ω', ['0.01', '0.02', '0.05']), between: ['0', 'R'], mayBeLeast: true },
        l: { tex: 'l', unit: 'cm', values: { from: 20, to: 80, step: '0.5' }, between: ['0', 'W'], printed: [15, 85] },
        dl: { ...small('\\Delta l', 'cm', ['0.1', '0.2']), between: ['0', 'l'], mayBeLeast: true },
        X: { tex: 'X', unit: 'Ω', neat: 'any' },
        p: { tex: 'p', unit: '%', neat: 'any', accepted: TWO },
        dX: { tex: '\\Delta X', unit: 'Ω', neat: 'any', digits: TWO },
        W: bridgeWire,
      },
      condition: [`X * ${other} = R * ${own}`, `p * R * l * (W - l) = 100 * (dR * l * (W - l) + R * W * dl)`, 'dX * 100 = X * p'],
      asks: {
        'error of the length': errors(own, other, ''),
        error: errors(own, other, 'dR / R + '),
      },
    };
  },
};

/** X and what it may be off by; `known` is the part of R, where that is not exact. */
const errors = (own: string, other: string, known: string): Ask => ({
  finds: ['X', 'p', 'dX'],
  algebra: 2,
  steps: [
    { id: 'X', as: `R * ${own} / ${other}`, slips: { 'ratio inverted': `R * ${other} / ${own}` } },
    {
      id: 'p',
      as: `100 * (${known}dl / l + dl / (W - l))`,
      slips: { 'rest of the wire taken as exact': `100 * (${known}dl / l)`, 'errors subtracted': `100 * sqrt((${known}dl / l - dl / (W - l))^2)`, 'over the whole wire': `100 * (${known}dl / W)` },
    },
    { id: 'dX', as: 'X * p / 100' },
  ],
});
