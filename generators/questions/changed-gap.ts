import type { Body, Choice, Work } from './family.ts';
import { bridgeWire, movedBy, nullAt, nullPoint, ohms, partsAt, shift, towards } from './kinds.ts';

/** How a resistor S makes of X what the gap then holds, C. */
export interface Change {
  /** C from X and S. */
  together: Omit<Work, 'id'>;
  /** S from X and C. */
  other: Omit<Work, 'id'>;
  /** X from C and S. */
  own: Omit<Work, 'id'>;
  /** The same, without a division. */
  condition: string;
  /** C − X as a part of S and X: X from S and the ratios of the wire's parts before (`b`) and after (`a`), multiplied out. */
  alone(b: { own: string; other: string }, a: { own: string; other: string }): string;
  /** Whether C is smaller than X, so that the null point moves towards the gap. */
  smaller: boolean;
  /** Name of the reason for which a null point that moves the other way is refused. */
  reason: string;
}

/**
 * A bridge before and after the resistance of one gap is changed by a resistor S: X is what the gap holds before, C after,
 * Y what the other gap holds; s is how far the null point moves, towards the changed gap where C is smaller.
 */
export function changedGap(choice: Choice, change: Change): Body {
  const before = partsAt(choice, 'l1');
  const after = partsAt(choice, 'l2');
  const toward = { gap: (choice['gap'] === 'right') === change.smaller ? 'right' : 'left' };
  return {
    quantities: { X: ohms('X'), Y: ohms('Y'), S: ohms('S'), C: ohms('C'), l1: nullPoint('l_1'), l2: nullPoint('l_2'), s: { ...shift, between: ['0', 'W'] }, W: bridgeWire },
    condition: [`X * ${before.other} = Y * ${before.own}`, `C * ${after.other} = Y * ${after.own}`, change.condition, `s = ${towards(toward, 'l1', 'l2')}`],
    holds: { [change.reason]: change.smaller ? `${before.own} - ${after.own}` : `${after.own} - ${before.own}` },
    asks: asks(choice, change, toward),
  };
}

function asks(choice: Choice, { together, other, own, alone }: Change, toward: Choice): Body['asks'] {
  const before = partsAt(choice, 'l1');
  const after = partsAt(choice, 'l2');
  const first: Work = { id: 'X', as: `Y * ${before.own} / ${before.other}`, slips: { 'ratio inverted': `Y * ${before.other} / ${before.own}` } };
  const facing: Work = { id: 'Y', as: `X * ${before.other} / ${before.own}`, slips: { 'ratio inverted': `X * ${before.own} / ${before.other}` } };
  const fromNull = (slip: string): Work => ({ id: 'C', as: `Y * ${after.own} / ${after.other}`, slips: { [slip]: `Y * ${after.other} / ${after.own}` } });
  const only = fromNull('ratio inverted');
  const combined = fromNull('ratio inverted in the second');
  const fromBoth: Work = { id: 'C', ...together };
  const added: Work = { id: 'S', ...other };
  const firstNull: Work = { id: 'l1', as: nullAt(choice, 'W * X / (X + Y)') };
  const secondNull: Work = { id: 'l2', as: nullAt(choice, 'W * C / (C + Y)') };
  const moved: Work = { id: 's', as: towards(toward, 'l1', 'l2'), slips: { 'second null for the shift': 'l2' } };
  return {
    both: { finds: ['X', 'Y'], algebra: 3, steps: [{ id: 'X', as: `S * ${alone(before, after)}` }, facing] },
    'both from a shift': {
      finds: ['X', 'Y'],
      algebra: 3,
      drawnBy: 'shift, gap unknown',
      steps: [{ id: 'l2', as: movedBy(toward, 'l1', 's') }, { id: 'X', as: `S * ${alone(before, after)}` }, facing],
    },
    'resistor from a shift': { finds: ['S'], algebra: 2, drawnBy: 'shift, gap unknown', steps: [first, { id: 'l2', as: movedBy(toward, 'l1', 's') }, combined, added] },
    resistor: { finds: ['S'], algebra: 2, steps: [first, combined, added] },
    'resistor, gap known': { finds: ['S'], algebra: 2, steps: [facing, combined, added] },
    'resistor for a null': { finds: ['S'], algebra: 2, steps: [only, added] },
    'resistor for a shift': { finds: ['S'], algebra: 2, steps: [firstNull, { id: 'l2', as: movedBy(toward, 'l1', 's') }, combined, added] },
    'own from a null': { finds: ['X'], algebra: 2, steps: [only, { id: 'X', ...own }] },
    'other from a null': { finds: ['Y'], algebra: 2, steps: [fromBoth, { id: 'Y', as: `C * ${after.other} / ${after.own}`, slips: { 'ratio inverted': `C * ${after.own} / ${after.other}` } }] },
    shift: { finds: ['l2', 's'], algebra: 2, steps: [firstNull, fromBoth, secondNull, moved] },
    'shift, gap unknown': { finds: ['X', 'l2', 's'], algebra: 2, steps: [first, fromBoth, secondNull, moved] },
    'shift, other unknown': { finds: ['Y', 'l2', 's'], algebra: 2, steps: [facing, fromBoth, secondNull, moved] },
  };
}
