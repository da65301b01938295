/** The nearest value from low to high. */
export function bounded(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}

/** Steps after which an interval of 100 is far below 1e-12, even if each only halves it. */
const STEPS = 60;

/**
 * Where a rising function passes zero between low and high; the end nearer to it when it does not.
 * False position with the Illinois rule: the value at an end that stays put is halved, so that both ends close in.
 */
export function rootOfRising(rising: (at: number) => number, low: number, high: number): number {
  let [left, right] = [low, high];
  let [below, above] = [rising(left), rising(right)];
  if (below >= 0) return left;
  if (above <= 0) return right;
  let moved: 'left' | 'right' | undefined;
  for (let i = 0; i < STEPS; i++) {
    const between = crossing(left, below, right, above);
    if (between === undefined) return (left + right) / 2;
    const value = rising(between);
    if (value === 0) return between;
    if (value < 0) {
      if (moved === 'left') above /= 2;
      [left, below, moved] = [between, value, 'left'];
    } else {
      if (moved === 'right') below /= 2;
      [right, above, moved] = [between, value, 'right'];
    }
  }
  return (left + right) / 2;
}

/** Where the chord crosses zero, or the middle where it runs too flat; undefined once no number lies between. */
function crossing(left: number, below: number, right: number, above: number): number | undefined {
  const at = left - (below * (right - left)) / (above - below);
  if (at > left && at < right) return at;
  const middle = (left + right) / 2;
  return middle > left && middle < right ? middle : undefined;
}
