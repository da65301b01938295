/**
 * How the resistance of the bridge wire grows along it. With u the fraction of the length,
 * the fraction of the resistance is u + a·u(1 − u) + b·u(1 − u)(1 − 2u): nothing at the left end,
 * all at the right, in between one long bow and one double bow. The resistance of a short piece
 * departs from the mean by a(1 − 2u) + b(1 − 6u + 6u²), never by more than |a| + |b|, which is
 * below 1, so that the profile rises all along.
 */
export interface Profile {
  a: number;
  b: number;
}

/** Fraction of the wire's resistance that lies left of the fraction `u` of its length. */
export function resistanceShare({ a, b }: Profile, u: number): number {
  return u + u * (1 - u) * (a + b * (1 - 2 * u));
}
