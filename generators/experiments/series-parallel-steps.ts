import type { Step } from '../quantities/step.ts';
import { type KnownGap, type TableNames, bridgeInfluences, bridgeMean, bridgeTable } from './bridge-steps.ts';

/** What is put into the gap in turn. */
export const COMBINATIONS = ['One', 'Two', 'Series', 'Parallel'] as const;
export type Combination = (typeof COMBINATIONS)[number];

const symbols: Record<Combination, string> = { One: 'r_{1}', Two: 'r_{2}', Series: 'r_{\\mathrm{s}}', Parallel: 'r_{\\mathrm{p}}' };
const theory: Pick<typeof symbols, 'Series' | 'Parallel'> = { Series: 'r_{\\mathrm{s,t}}', Parallel: 'r_{\\mathrm{p,t}}' };

const table = (suffix: Combination): TableNames => ({ suffix, tex: symbols[suffix] });

/** A table for each wire alone and for each way of joining them; what theory says of the joined ones, and how far the bridge lies from it. */
export function seriesParallelSteps(known: KnownGap): Step[] {
  return [
    ...bridgeInfluences,
    { kind: 'influence', id: 'joint', tex: 'j', unit: 'Ω' },
    ...COMBINATIONS.flatMap((each) => [...bridgeTable(known, table(each)), bridgeMean(known, table(each))]),
    {
      kind: 'relation',
      id: 'series',
      tex: theory.Series,
      unit: 'Ω',
      as: 'meanXOne + meanXTwo',
      digits: { figures: 3 },
      slips: [{ id: 'taken as parallel', as: 'meanXOne * meanXTwo / (meanXOne + meanXTwo)' }],
    },
    {
      kind: 'relation',
      id: 'parallel',
      tex: theory.Parallel,
      unit: 'Ω',
      as: 'meanXOne * meanXTwo / (meanXOne + meanXTwo)',
      digits: { figures: 3 },
      routes: [byReciprocals],
      slips: [
        { id: 'taken as series', as: 'meanXOne + meanXTwo' },
        { id: 'sum over product', as: '(meanXOne + meanXTwo) / (meanXOne * meanXTwo)' },
        { id: 'mean of the two', as: '(meanXOne + meanXTwo) / 2' },
      ],
    },
    { kind: 'relation', id: 'seriesOff', tex: 'D_{\\mathrm{s}}', unit: 'Ω', as: 'meanXSeries - series', model: 'meanXSeries - series - joint', digits: { decimals: 2 } },
    { kind: 'relation', id: 'parallelOff', tex: 'D_{\\mathrm{p}}', unit: 'Ω', as: 'meanXParallel - parallel', digits: { decimals: 2 } },
    agreement('seriesAgrees', 'seriesOff'),
    agreement('parallelAgrees', 'parallelOff'),
  ];
}

/** 1/r = 1/r1 + 1/r2, each reciprocal written down. */
const byReciprocals = {
  id: 'by reciprocals',
  via: [
    { id: 'g', as: '1 / meanXOne', digits: { figures: 3 } },
    { id: 'h', as: '1 / meanXTwo', digits: { figures: 3 } },
    { id: 'k', as: 'g + h', digits: { figures: 3 } },
  ],
  as: '1 / k',
};

const agreement = (id: string, off: string): Step => ({
  kind: 'verdict',
  id,
  choices: ['agrees', 'differs'],
  decide: ({ value, expanded }) => (Math.abs(value(off)) <= expanded(off) ? 'agrees' : 'differs'),
});
