import type { Relation, Slip, Step } from '../quantities/step.ts';

/** Which gap holds the resistance box; X is in the other. */
export type KnownGap = 'left' | 'right';

/** The parts of the wire left and right of `l`, `r` being the rest, as they really are, ends and all; where it is uneven, the left part has `uneven · r/W` of itself more. */
const realParts = (l: string, r: string) => ({
  left: `(${l} * (1 + uneven * ${r} / W) + endLeft + scaleZero)`,
  right: `(${r} * (1 - uneven * ${l} / W) + endRight - scaleZero)`,
});

/**
 * X from the null point `l`, measured from the left end of the wire, and the rest of the wire, `r`. The joints of the
 * gaps stay where they are: what they add to the wire in one gap, they take from it in the other.
 */
export function balance(known: KnownGap, l: string, r: string, joints: '+' | '-' = '+'): Pick<Relation, 'as' | 'model'> & { slips: Slip[] } {
  const parts = realParts(l, r);
  const [facing, own] = known === 'left' ? [r, l] : [l, r];
  const [facingPart, ownPart] = known === 'left' ? [parts.right, parts.left] : [parts.left, parts.right];
  return {
    as: `R * ${facing} / ${own}`,
    model: `R * (1 + boxError) * ${facingPart} / ${ownPart} ${joints} contact`,
    slips: [
      { id: 'ratio inverted', as: `R * ${own} / ${facing}` },
      { id: 'divided by the whole wire', as: `R * ${l} / W` },
      { id: 'rest over whole', as: `R * ${r} / W` },
    ],
  };
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
  const inRow = balance(known, 'l', 'r');
  return [
    ...bridgeInfluences,
    { kind: 'reading', id: 'R', tex: 'R', unit: 'Ω', per: 'bridge', on: 'box' },
    { kind: 'reading', id: 'l', tex: 'l', unit: 'cm', per: 'bridge', on: 'scale' },
    { kind: 'relation', id: 'r', tex: '(100 - l)', unit: 'cm', per: 'bridge', as: 'W - l', digits: { decimals: 1 } },
    { kind: 'relation', id: 'X', tex: 'X', unit: 'Ω', per: 'bridge', digits: { figures: 3 }, ...inRow },
    {
      kind: 'summary',
      id: 'meanX',
      tex: '\\overline{X}',
      unit: 'Ω',
      by: 'mean',
      of: ['X'],
      digits: { figures: 3 },
      slips: [{ id: 'means taken first', as: inRow.as }],
    },
  ];
}
