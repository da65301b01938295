import type { Relation, Slip, Step } from '../quantities/step.ts';

/** Which gap holds the resistance box; X is in the other. */
export type KnownGap = 'left' | 'right';

/** The parts of the wire left and right of `l`, `r` being the rest, as they really are, ends and all; where it is uneven, the left part has `uneven · r/W` of itself more. */
export const realParts = (l: string, r: string) => ({
  left: `(${l} * (1 + uneven * ${r} / W) + endLeft + scaleZero)`,
  right: `(${r} * (1 - uneven * ${l} / W) + endRight - scaleZero)`,
});

const { left: leftPart, right: rightPart } = realParts('l', 'r');

/** X from the balance length l, measured from the left end of the wire, and the rest of the wire, r = W − l. */
const balance: Record<KnownGap, Pick<Relation, 'as' | 'model' | 'slips'>> = {
  left: {
    as: 'R * r / l',
    model: `R * (1 + boxError) * ${rightPart} / ${leftPart} + contact`,
    slips: [...commonSlips('R * l / r'), { id: 'rest over whole', as: 'R * r / W' }],
  },
  right: {
    as: 'R * l / r',
    model: `R * (1 + boxError) * ${leftPart} / ${rightPart} + contact`,
    slips: [...commonSlips('R * r / l'), { id: 'rest over whole', as: 'R * r / W' }],
  },
};

function commonSlips(inverted: string): Slip[] {
  return [
    { id: 'ratio inverted', as: inverted },
    { id: 'divided by the whole wire', as: 'R * l / W' },
  ];
}

/** The length of the wire, and what all rows of a bridge table share without anyone knowing it. */
export const bridgeInfluences: Step[] = [
  { kind: 'given', id: 'W', tex: '100', unit: 'cm' },
  { kind: 'influence', id: 'boxError', tex: '\\kappa', unit: '' },
  { kind: 'influence', id: 'endLeft', tex: '\\alpha', unit: 'cm' },
  { kind: 'influence', id: 'endRight', tex: '\\beta', unit: 'cm' },
  { kind: 'influence', id: 'scaleZero', tex: 's', unit: 'cm' },
  { kind: 'influence', id: 'uneven', tex: 'a', unit: '' },
  { kind: 'influence', id: 'contact', tex: 'c', unit: 'Ω' },
];

/** The bridge table: R, l, the rest of the wire and X in every row, and the mean X. */
export function bridgeSteps(known: KnownGap): Step[] {
  return [
    ...bridgeInfluences,
    { kind: 'reading', id: 'R', tex: 'R', unit: 'Ω', per: 'bridge', on: 'box' },
    { kind: 'reading', id: 'l', tex: 'l', unit: 'cm', per: 'bridge', on: 'scale' },
    { kind: 'relation', id: 'r', tex: '(100 - l)', unit: 'cm', per: 'bridge', as: 'W - l', digits: { decimals: 1 } },
    { kind: 'relation', id: 'X', tex: 'X', unit: 'Ω', per: 'bridge', digits: { figures: 3 }, ...balance[known] },
    {
      kind: 'summary',
      id: 'meanX',
      tex: '\\overline{X}',
      unit: 'Ω',
      by: 'mean',
      of: ['X'],
      digits: { figures: 3 },
      slips: [{ id: 'means taken first', as: balance[known].as }],
    },
  ];
}
