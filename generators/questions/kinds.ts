import type { Written } from '../quantities/step.ts';
import type { Choice, Quantity } from './family.ts';

/** Resistances of two figures that a question is set with; common practice, no source. */
export const RESISTANCES: readonly Written[] = [
  '1.5', '2.0', '2.5', '3.0', '4.0', '5.0', '6.0', '7.5', '8.0', '9.0', '10', '12', '15', '16', '18', '20', '24', '25', '30', '36', '40', '45', '50', '60', '75', '80',
];

/** A resistance in Ω. */
export const ohms = (tex: string, values: readonly Written[] = RESISTANCES): Quantity => ({ tex, unit: 'Ω', values, printed: [0.5, 250] });

/** A null point in cm from the left end of the wire, on a whole or half centimetre. */
export const nullPoint = (tex: string): Quantity => ({
  tex,
  unit: 'cm',
  values: { from: 20, to: 80, step: '0.5' },
  between: ['0', 'W'],
  printed: [10, 90],
  neat: 0.5,
});

/** The length of the bridge wire in cm, in formulas as the number that it is. */
export const bridgeWire: Quantity = { unit: 'cm', fixed: '100' };

/** How far the null point moves, positive to the right; given, it is drawn positive. */
export const shift: Quantity = {
  tex: 's',
  unit: 'cm',
  values: { from: 5, to: 50, step: '2.5' },
  between: ['-W', 'W'],
  eitherWay: true,
  neat: 0.5,
};

/** A pure number. */
export const pure = (tex: string, values: readonly Written[]): Quantity => ({ tex, unit: '', values });

/** The gap that something happens in. */
export const gaps = { gap: ['left', 'right'] } as const;

/** The parts of the wire beside the gap of a choice and beside the other, for a null point l. */
export const partsAt = ({ gap }: Choice, l: string) =>
  gap === 'right' ? { own: `(W - ${l})`, other: l } : { own: l, other: `(W - ${l})` };

/** How far a null point moves towards the gap of a choice. */
export const towards = ({ gap }: Choice, from: string, to: string) => (gap === 'right' ? `${to} - ${from}` : `${from} - ${to}`);

/** Where a null point comes to that moves so far towards the gap of a choice. */
export const movedBy = ({ gap }: Choice, from: string, by: string) => (gap === 'right' ? `${from} + ${by}` : `${from} - ${by}`);

/** The null point whose part beside the gap of a choice is this. */
export const nullAt = ({ gap }: Choice, own: string) => (gap === 'right' ? `W - ${own}` : own);
