import type { Step } from '../quantities/step.ts';
import { type KnownGap, balance, bridgeInfluences } from './bridge-steps.ts';

const names = { R: 'R', l: 'l', r: 'r' };

/**
 * R against the ratio q of the wire's part on its side to the other: a line through the origin whose slope is X.
 * As it really is, q is what R/X comes to with the ends of the wire, the joints and the box's error.
 */
export function graphSteps(known: KnownGap): Step[] {
  const [own, facing] = known === 'left' ? ['l', 'r'] : ['r', 'l'];
  return [
    ...bridgeInfluences,
    { kind: 'reading', id: 'R', tex: 'R', unit: 'Ω', per: 'bridge', on: 'box' },
    { kind: 'reading', id: 'l', tex: 'l', unit: 'cm', per: 'bridge', on: 'scale' },
    { kind: 'relation', id: 'r', tex: '(100 - l)', unit: 'cm', per: 'bridge', as: 'W - l', digits: { decimals: 1 } },
    {
      kind: 'relation',
      id: 'ratio',
      tex: 'q',
      unit: '',
      per: 'bridge',
      as: `${own} / ${facing}`,
      model: `R / (${balance(known, names).model})`,
      digits: { figures: 3 },
      slips: [
        { id: 'ratio inverted', as: `${facing} / ${own}` },
        { id: 'divided by the whole wire', as: `${own} / W` },
      ],
    },
    {
      kind: 'summary',
      id: 'X',
      tex: 'X',
      unit: 'Ω',
      by: 'slope through origin',
      of: ['ratio', 'R'],
      byEye: true,
      digits: { figures: 3 },
      slips: [{ id: 'run over rise', as: 'ratio / R' }],
    },
  ];
}
