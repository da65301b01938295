import type { Step } from '../quantities/step.ts';

/** Which side of zero the closed screw gauge stands on. */
export type ZeroError = 'none' | 'positive' | 'negative';

const zeroError = {
  none: { as: 'n0 * LC', slips: [] },
  positive: { as: 'n0 * LC', slips: [] },
  negative: { as: '-(N - n0) * LC', slips: [{ id: 'negative zero error read forwards', as: 'n0 * LC' }] },
};

/** Least count, zero error, the table of diameters, their mean and the corrected diameter. */
export function screwGaugeSteps(zero: ZeroError): Step[] {
  return [
    { kind: 'given', id: 'pitch', tex: 'p', unit: 'mm' },
    { kind: 'given', id: 'N', tex: 'N', unit: '' },
    { kind: 'influence', id: 'gaugeError', tex: 'g', unit: 'mm' },
    { kind: 'influence', id: 'gaugeStep', tex: 'q', unit: 'mm' },
    {
      kind: 'relation',
      id: 'LC',
      tex: '\\mathrm{LC}',
      unit: 'mm',
      as: 'pitch / N',
      digits: { decimals: 2 },
      slips: [
        { id: 'least count ten times too large', as: '10 * pitch / N' },
        { id: 'least count ten times too small', as: 'pitch / (10 * N)' },
      ],
    },
    { kind: 'reading', id: 'n0', tex: 'n_{0}', unit: '', on: 'closed jaws' },
    { kind: 'relation', id: 'e', tex: 'e', unit: 'mm', digits: { decimals: 2 }, ...zeroError[zero] },
    { kind: 'reading', id: 'msr', tex: '\\mathrm{MSR}', unit: 'mm', per: 'gauge', on: 'main scale' },
    { kind: 'reading', id: 'n', tex: 'n', unit: '', per: 'gauge', on: 'circular scale' },
    { kind: 'relation', id: 'csr', tex: 'n \\times \\mathrm{LC}', unit: 'mm', per: 'gauge', as: 'n * LC', digits: { decimals: 2 } },
    {
      kind: 'relation',
      id: 'dObs',
      tex: 'd_{\\mathrm{obs}}',
      unit: 'mm',
      per: 'gauge',
      as: 'msr + csr',
      digits: { decimals: 2 },
      slips: [{ id: 'main-scale division missed', as: 'msr - pitch + csr' }],
    },
    { kind: 'summary', id: 'meanD', tex: '\\overline{d_{\\mathrm{obs}}}', unit: 'mm', by: 'mean', of: ['dObs'], digits: { decimals: 3 }, resolution: 'gaugeStep' },
    {
      kind: 'relation',
      id: 'd',
      tex: 'd',
      unit: 'mm',
      as: 'meanD - e',
      model: 'meanD - e + gaugeError + gaugeStep',
      digits: { decimals: 3 },
      slips: [
        { id: 'zero error with the wrong sign', as: 'meanD + e' },
        { id: 'zero error ignored', as: 'meanD' },
      ],
    },
  ];
}
