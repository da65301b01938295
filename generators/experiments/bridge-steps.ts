import type { Relation, Slip, Step } from '../quantities/step.ts';

/** Which gap holds the resistance box; X is in the other. */
export type KnownGap = 'left' | 'right';

/** The parts of the wire left and right of `l`, `r` being the rest, as they really are, ends and all; where it is uneven, the left part has `uneven · r/W` of itself more. */
const realParts = (l: string, r: string) => ({
  left: `(${l} * (1 + uneven * ${r} / W) + endLeft + scaleZero)`,
  right: `(${r} * (1 - uneven * ${l} / W) + endRight - scaleZero)`,
});

/** What the quantities of one balance are called: box, null point and the rest of the wire. */
export interface Balanced {
  R: string;
  l: string;
  r: string;
}

/**
 * X from the null point `l`, measured from the left end of the wire, and the rest of the wire, `r`. The joints of the
 * gaps stay where they are: what they add to the wire in one gap, they take from it in the other.
 */
export function balance(known: KnownGap, { R, l, r }: Balanced, joints: '+' | '-' = '+'): Pick<Relation, 'as' | 'model'> & { slips: Slip[] } {
  const parts = realParts(l, r);
  const [facing, own] = known === 'left' ? [r, l] : [l, r];
  const [facingPart, ownPart] = known === 'left' ? [parts.right, parts.left] : [parts.left, parts.right];
  return {
    as: `${R} * ${facing} / ${own}`,
    model: `${R} * (1 + boxError) * ${facingPart} / ${ownPart} ${joints} contact`,
    slips: [
      { id: 'ratio inverted', as: `${R} * ${own} / ${facing}` },
      { id: 'divided by the whole wire', as: `${R} * ${l} / W` },
      { id: 'rest over whole', as: `${R} * ${r} / W` },
    ],
  };
}

/** The length of the wire, and what all rows of a bridge table share without anyone knowing it; several tables share it too. */
export const bridgeInfluences: Step[] = [
  { kind: 'given', id: 'W', tex: '100', unit: 'cm' },
  { kind: 'influence', id: 'boxError', tex: '\\kappa', unit: '' },
  { kind: 'influence', id: 'endLeft', tex: '\\alpha', unit: 'cm' },
  { kind: 'influence', id: 'endRight', tex: '\\beta', unit: 'cm' },
  { kind: 'influence', id: 'scaleZero', tex: 's', unit: 'cm' },
  { kind: 'influence', id: 'uneven', tex: 'a', unit: '' },
  { kind: 'influence', id: 'contact', tex: 'c', unit: 'Ω' },
];

/** Tells several bridge tables of one sheet apart: what their ids end in, and how the resistance that each finds is written. */
export interface TableNames {
  suffix: string;
  tex: string;
}

const onlyTable: TableNames = { suffix: '', tex: 'X' };

/** A bridge table: R, l, the rest of the wire and X in every row; all its ids, the table's `bridge` too, end in the suffix. */
export function bridgeTable(known: KnownGap, { suffix, tex }: TableNames = onlyTable): Step[] {
  const [R, l, r] = [`R${suffix}`, `l${suffix}`, `r${suffix}`];
  const per = `bridge${suffix}`;
  return [
    { kind: 'reading', id: R, tex: 'R', unit: 'Ω', per, on: 'box' },
    { kind: 'reading', id: l, tex: 'l', unit: 'cm', per, on: 'scale' },
    { kind: 'relation', id: r, tex: '(100 - l)', unit: 'cm', per, as: `W - ${l}`, digits: { decimals: 1 } },
    { kind: 'relation', id: `X${suffix}`, tex, unit: 'Ω', per, digits: { figures: 3 }, ...balance(known, { R, l, r }) },
  ];
}

/** The mean of the resistances in a bridge table. */
export function bridgeMean(known: KnownGap, { suffix, tex }: TableNames = onlyTable): Step {
  return {
    kind: 'summary',
    id: `meanX${suffix}`,
    tex: `\\overline{${tex}}`,
    unit: 'Ω',
    by: 'mean',
    of: [`X${suffix}`],
    digits: { figures: 3 },
    slips: [{ id: 'means taken first', as: balance(known, { R: `R${suffix}`, l: `l${suffix}`, r: `r${suffix}` }).as }],
  };
}

/** The only bridge table of a sheet, and the mean X. */
export function bridgeSteps(known: KnownGap): Step[] {
  return [...bridgeInfluences, ...bridgeTable(known), bridgeMean(known)];
}
