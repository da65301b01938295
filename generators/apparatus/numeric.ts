/** The nearest value from low to high. */
export function bounded(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}

/** Halvings after which an interval of 100 is far below 1e-12. */
const HALVINGS = 60;

/** Where a rising function passes zero between low and high; the end nearer to it when it does not. */
export function rootOfRising(rising: (at: number) => number, low: number, high: number): number {
  let [left, right] = [low, high];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (left + right) / 2;
    if (rising(middle) < 0) left = middle;
    else right = middle;
  }
  return (left + right) / 2;
}
