import type { Step } from '../quantities/step.ts';

/**
 * A stretch of the bridge wire as it really is, in cm of a wire of the mean resistance: what lies between two places of
 * the scale, with one long bow and one double bow of the resistance along the wire. The ends, the joints of the gaps and
 * the ratio arms are the same before and after the interchange and are not in it.
 */
function stretch(from: string, to: string): string {
  const bow = (place: string) => `${place} * (W - ${place}) / W * (uneven + unevenTwice * (1 - 2 * ${place} / W))`;
  return `(${to} - ${from} + ${bow(to)} - ${bow(from)})`;
}

/**
 * Carey Foster's method. First R is interchanged with a copper strip, which gives the resistance of the bridge wire per cm;
 * then X with Y, X left first. Y − X = ρ (l1 − l2): R. T. Glazebrook and W. N. Shaw, Practical Physics.
 */
export const careyFosterSteps: Step[] = [
  { kind: 'given', id: 'W', tex: '100', unit: 'cm' },
  { kind: 'influence', id: 'boxError', tex: '\\kappa', unit: '' },
  { kind: 'influence', id: 'uneven', tex: 'a', unit: '' },
  { kind: 'influence', id: 'unevenTwice', tex: 'b', unit: '' },
  { kind: 'reading', id: 'R', tex: 'R', unit: 'Ω', per: 'strip', on: 'box' },
  { kind: 'reading', id: 'la', tex: 'l_{\\mathrm{a}}', unit: 'cm', per: 'strip', on: 'scale' },
  { kind: 'reading', id: 'lb', tex: 'l_{\\mathrm{b}}', unit: 'cm', per: 'strip', on: 'scale' },
  { kind: 'relation', id: 'ba', tex: '(l_{\\mathrm{b}} - l_{\\mathrm{a}})', unit: 'cm', per: 'strip', as: 'lb - la', digits: { decimals: 1 } },
  {
    kind: 'relation',
    id: 'perCm',
    tex: '\\rho',
    unit: 'Ω/cm',
    per: 'strip',
    as: 'R / ba',
    model: `R * (1 + boxError) / ${stretch('la', 'lb')}`,
    digits: { figures: 3 },
    slips: [
      { id: 'ratio inverted', as: 'ba / R' },
      { id: 'one null point alone', as: 'R / lb' },
    ],
  },
  { kind: 'summary', id: 'meanPerCm', tex: '\\overline{\\rho}', unit: 'Ω/cm', by: 'mean', of: ['perCm'], digits: { figures: 3 } },
  { kind: 'reading', id: 'P', tex: 'P', unit: 'Ω', per: 'pair' },
  { kind: 'reading', id: 'l1', tex: 'l_{1}', unit: 'cm', per: 'pair', on: 'scale' },
  { kind: 'reading', id: 'l2', tex: 'l_{2}', unit: 'cm', per: 'pair', on: 'scale' },
  {
    kind: 'relation',
    id: 'shift',
    tex: '(l_{1} - l_{2})',
    unit: 'cm',
    per: 'pair',
    as: 'l1 - l2',
    digits: { decimals: 1 },
    slips: [{ id: 'difference the other way round', as: 'l2 - l1' }],
  },
  {
    kind: 'relation',
    id: 'diff',
    tex: '(Y - X)',
    unit: 'Ω',
    per: 'pair',
    as: 'meanPerCm * shift',
    model: `meanPerCm * ${stretch('l2', 'l1')}`,
    digits: { figures: 3 },
  },
  { kind: 'summary', id: 'meanDiff', tex: '\\overline{(Y - X)}', unit: 'Ω', by: 'mean', of: ['diff'], digits: { figures: 3 } },
  {
    kind: 'verdict',
    id: 'larger',
    choices: ['X', 'Y', 'neither'],
    decide: ({ value, worst }) => (Math.abs(value('meanDiff')) <= worst('meanDiff') ? 'neither' : value('meanDiff') > 0 ? 'Y' : 'X'),
  },
];
