import type { Relation, Step } from '../quantities/step.ts';
import { type KnownGap, bridgeTable } from './bridge-steps.ts';

/**
 * What is shared by all rows. End corrections and the zero of the scale are not here: the experiment finds both together,
 * as they act on a null point. A gap's joints are `joint` ± contact/2.
 */
const influences: Step[] = [
  { kind: 'given', id: 'W', tex: '100', unit: 'cm' },
  { kind: 'influence', id: 'boxError', tex: '\\kappa', unit: '' },
  { kind: 'influence', id: 'secondError', tex: '\\lambda', unit: '' },
  { kind: 'influence', id: 'uneven', tex: 'a', unit: '' },
  { kind: 'influence', id: 'joint', tex: 'j', unit: 'Ω' },
  { kind: 'influence', id: 'contact', tex: 'c', unit: 'Ω' },
];

const first = '(R1 * (1 + boxError))';
const second = '(R2 * (1 + secondError))';
const joints = { left: '(joint + contact / 2)', right: '(joint - contact / 2)' };

/** The left gap's share of both gaps. */
const share = (left: string, right: string) => `((${left} + ${joints.left}) / (${left} + ${right} + 2 * joint))`;
const shares = { direct: share(first, second), interchanged: share(second, first) };

/** The left part of an uneven wire, in cm of the mean wire. */
const part = (l: string) => `(${l} * (1 + uneven * (W - ${l}) / W))`;

/** With the left gap's share f1 and then f2, l1 + α and l2 + α are f1 and f2 of the whole, 100 + α + β. */
const leftEnd = `((${part('l1')} * ${shares.interchanged} - ${part('l2')} * ${shares.direct}) / (${shares.direct} - ${shares.interchanged}))`;
const whole = `((${part('l1')} - ${part('l2')}) / (${shares.direct} - ${shares.interchanged}))`;

const alpha: Pick<Relation, 'as' | 'model' | 'slips'> = {
  as: '(R2 * l1 - R1 * l2) / (R1 - R2)',
  model: leftEnd,
  slips: [
    { id: 'null points taken for each other', as: '(R2 * l2 - R1 * l1) / (R1 - R2)' },
    { id: 'the wrong way round', as: '(R1 * l2 - R2 * l1) / (R1 - R2)' },
    { id: 'sum in the divisor', as: '(R2 * l1 - R1 * l2) / (R1 + R2)' },
  ],
};

const beta: Pick<Relation, 'as' | 'model' | 'slips'> = {
  as: '(R1 * l1 - R2 * l2) / (R1 - R2) - W',
  model: `${whole} - W - ${leftEnd}`,
  slips: [
    { id: 'length of the wire not taken off', as: '(R1 * l1 - R2 * l2) / (R1 - R2)' },
    { id: 'the wrong way round', as: 'W - (R1 * l1 - R2 * l2) / (R1 - R2)' },
    { id: 'sum in the divisor', as: '(R1 * l1 - R2 * l2) / (R1 + R2) - W' },
  ],
};

/** X with the end corrections added to the parts of the wire. */
function corrected(known: KnownGap): Pick<Relation, 'as' | 'model' | 'slips'> {
  const at = (left: string, right: string) => (known === 'left' ? `R * ${right} / ${left}` : `R * ${left} / ${right}`);
  const [own, other] = known === 'left' ? [joints.left, joints.right] : [joints.right, joints.left];
  const real = at(`(${part('l')} + meanAlpha)`, `(W - ${part('l')} + meanBeta)`);
  return {
    as: at('(l + meanAlpha)', '(r + meanBeta)'),
    model: `${real.replace('R *', `(R * (1 + boxError) + ${own}) *`)} - ${other}`,
    slips: [
      { id: 'end corrections taken off', as: at('(l - meanAlpha)', '(r - meanBeta)') },
      { id: 'end corrections at the wrong ends', as: at('(l + meanBeta)', '(r + meanAlpha)') },
      { id: 'end corrections left out', as: at('l', 'r') },
      { id: 'ratio inverted', as: at('(r + meanBeta)', '(l + meanAlpha)') },
    ],
  };
}

/** X without the end corrections is taken as it is: what spoils it is found, not unknown. */
function asItIs(step: Step): Step {
  if (step.kind !== 'relation') return step;
  const { model: _, ...plain } = step;
  return plain;
}

/** α and β from known resistances R1 and R2 and the interchange; then X from a table of its own, without and with them. */
export function endCorrectionsSteps(known: KnownGap): Step[] {
  return [
    ...influences,
    { kind: 'reading', id: 'R1', tex: 'R_{1}', unit: 'Ω', per: 'ends', on: 'box' },
    { kind: 'reading', id: 'R2', tex: 'R_{2}', unit: 'Ω', per: 'ends', on: 'box' },
    { kind: 'reading', id: 'l1', tex: 'l_{1}', unit: 'cm', per: 'ends', on: 'scale' },
    { kind: 'reading', id: 'l2', tex: 'l_{2}', unit: 'cm', per: 'ends', on: 'scale' },
    { kind: 'relation', id: 'alpha', tex: '\\alpha', unit: 'cm', per: 'ends', digits: { decimals: 2 }, ...alpha },
    { kind: 'relation', id: 'beta', tex: '\\beta', unit: 'cm', per: 'ends', digits: { decimals: 2 }, ...beta },
    { kind: 'summary', id: 'meanAlpha', tex: '\\overline{\\alpha}', unit: 'cm', by: 'mean', of: ['alpha'], digits: { decimals: 2 } },
    { kind: 'summary', id: 'meanBeta', tex: '\\overline{\\beta}', unit: 'cm', by: 'mean', of: ['beta'], digits: { decimals: 2 } },
    ...bridgeTable(known).map(asItIs),
    { kind: 'relation', id: 'Xc', tex: 'X_{\\mathrm{c}}', unit: 'Ω', per: 'bridge', digits: { figures: 3 }, ...corrected(known) },
    { kind: 'summary', id: 'meanX', tex: '\\overline{X}', unit: 'Ω', by: 'mean', of: ['X'], digits: { figures: 3 } },
    { kind: 'summary', id: 'meanXc', tex: '\\overline{X_{\\mathrm{c}}}', unit: 'Ω', by: 'mean', of: ['Xc'], digits: { figures: 3 } },
    {
      kind: 'verdict',
      id: 'ends',
      choices: ['both', 'left', 'right', 'neither'],
      decide({ value, expanded }) {
        const seen = (id: string) => Math.abs(value(id)) > expanded(id);
        if (seen('meanAlpha')) return seen('meanBeta') ? 'both' : 'left';
        return seen('meanBeta') ? 'right' : 'neither';
      },
    },
  ];
}
