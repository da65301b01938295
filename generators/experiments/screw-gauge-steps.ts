import type { Slip, Step } from '../quantities/step.ts';

/** Which side of zero the closed screw gauge stands on. */
export type ZeroError = 'none' | 'positive' | 'negative';

const forwards = (n0: string) => ({ as: `${n0} * LC`, slips: [] });

const zeroError: Record<ZeroError, (n0: string) => { as: string; slips: Slip[] }> = {
  none: forwards,
  positive: forwards,
  negative: (n0) => ({ as: `-(N - ${n0}) * LC`, slips: [{ id: 'negative zero error read forwards', as: `${n0} * LC` }] }),
};

/** The pitch and the divisions of a screw gauge, and its least count. */
export const leastCount: Step[] = [
  { kind: 'given', id: 'pitch', tex: 'p', unit: 'mm' },
  { kind: 'given', id: 'N', tex: 'N', unit: '' },
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
];

/** Zero error and observed diameters of one gauge. A second gauge of the same kind has a name, which ends its ids and its table's. */
export function gaugeReadings(zero: ZeroError, name = ''): Step[] {
  const per = `gauge${name}`;
  const [n0, n, csr, msr] = [`n0${name}`, `n${name}`, `csr${name}`, `msr${name}`];
  const named = (...below: string[]) => [...below, ...(name === '' ? [] : [`\\mathrm{${name}}`])].join(',');
  const symbol = (tex: string, ...below: string[]) => (named(...below) === '' ? tex : `${tex}_{${named(...below)}}`);
  const { as, slips } = zeroError[zero](n0);
  return [
    { kind: 'reading', id: n0, tex: symbol('n', '0'), unit: '', on: 'closed jaws' },
    { kind: 'relation', id: `e${name}`, tex: symbol('e'), unit: 'mm', digits: { decimals: 2 }, as, slips },
    { kind: 'reading', id: msr, tex: '\\mathrm{MSR}', unit: 'mm', per, on: 'main scale' },
    { kind: 'reading', id: n, tex: 'n', unit: '', per, on: 'circular scale' },
    { kind: 'relation', id: csr, tex: 'n \\times \\mathrm{LC}', unit: 'mm', per, as: `${n} * LC`, digits: { decimals: 2 } },
    {
      kind: 'relation',
      id: `dObs${name}`,
      tex: symbol('d', '\\mathrm{obs}'),
      unit: 'mm',
      per,
      as: `${msr} + ${csr}`,
      digits: { decimals: 2 },
      slips: [{ id: 'main-scale division missed', as: `${msr} - pitch + ${csr}` }],
    },
  ];
}

/** What goes wrong in taking the zero error off an observed diameter. */
export const correctionSlips = (observed: string, error: string): Slip[] => [
  { id: 'zero error with the wrong sign', as: `${observed} + ${error}` },
  { id: 'zero error ignored', as: observed },
];

/** Least count, zero error, the table of diameters, their mean and the corrected diameter. */
export function screwGaugeSteps(zero: ZeroError): Step[] {
  return [
    ...leastCount,
    { kind: 'influence', id: 'gaugeError', tex: 'g', unit: 'mm' },
    { kind: 'influence', id: 'gaugeStep', tex: 'q', unit: 'mm' },
    ...gaugeReadings(zero),
    { kind: 'summary', id: 'meanD', tex: '\\overline{d_{\\mathrm{obs}}}', unit: 'mm', by: 'mean', of: ['dObs'], digits: { decimals: 3 }, resolution: 'gaugeStep' },
    {
      kind: 'relation',
      id: 'd',
      tex: 'd',
      unit: 'mm',
      as: 'meanD - e',
      model: 'meanD - e + gaugeError + gaugeStep',
      digits: { decimals: 3 },
      slips: correctionSlips('meanD', 'e'),
    },
  ];
}
