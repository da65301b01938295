/**
 * Two-sided 95 % points of Student's t, by degrees of freedom
 * (JCGM 100:2008, table G.2; the same values in the NIST/SEMATECH e-Handbook, 1.3.6.7.2).
 */
const upToThirty = [
  12.71, 4.3, 3.18, 2.78, 2.57, 2.45, 2.36, 2.31, 2.26, 2.23, 2.2, 2.18, 2.16, 2.14, 2.13, 2.12, 2.11, 2.1, 2.09, 2.09,
  2.08, 2.07, 2.07, 2.06, 2.06, 2.06, 2.05, 2.05, 2.05, 2.04,
];

/** The same point of the normal distribution. */
const z = 1.959964;

/** t for 95 % coverage; effective degrees of freedom are cut to the whole number below (G.4.1), Infinity allowed. */
export function t95(freedom: number): number {
  if (!(freedom >= 1)) throw new RangeError(`no t for ${freedom} degrees of freedom`);
  const whole = Math.floor(freedom);
  return upToThirty[whole - 1] ?? beyondThirty(whole);
}

/** The expansion in 1/ν (Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.5), good to 0.0001 here. */
function beyondThirty(freedom: number): number {
  const cube = z * z * z;
  const first = (cube + z) / (4 * freedom);
  const second = (5 * cube * z * z + 16 * cube + 3 * z) / (96 * freedom * freedom);
  return z + first + second;
}
