/** A resistor between two named points, in Ω. */
export type Resistor = readonly [from: string, to: string, ohms: number];

/**
 * Potentials at all points of a network of resistors, in V, with a source of these volts straight across two points:
 * Kirchhoff's law of currents at every other point, solved by elimination. It shares no code with the generators.
 */
export function potentials(resistors: readonly Resistor[], [plus, minus]: readonly [string, string], volts = 1): Record<string, number> {
  const points = [...new Set(resistors.flatMap(([from, to]) => [from, to]))];
  const free = points.filter((point) => point !== plus && point !== minus);
  const held: Record<string, number> = { [plus]: volts, [minus]: 0 };
  const rows = free.map((point) => {
    const row = Array.from({ length: free.length + 1 }, () => 0);
    for (const [from, to, ohms] of resistors) {
      if (from === to || (from !== point && to !== point)) continue;
      const other = from === point ? to : from;
      row[free.indexOf(point)]! += 1 / ohms;
      if (other in held) row[free.length]! += held[other]! / ohms;
      else row[free.indexOf(other)]! -= 1 / ohms;
    }
    return row;
  });
  const solved = linear(rows);
  return { ...held, ...Object.fromEntries(free.map((point, i) => [point, solved[i]!])) };
}

/** Solves rows of coefficients with the right side last, by elimination with the largest pivot. */
export function linear(rows: number[][]): number[] {
  const n = rows.length;
  for (let i = 0; i < n; i++) {
    let pivot = i;
    for (let k = i; k < n; k++) if (Math.abs(rows[k]![i]!) > Math.abs(rows[pivot]![i]!)) pivot = k;
    [rows[i], rows[pivot]] = [rows[pivot]!, rows[i]!];
    for (let k = i + 1; k < n; k++) {
      const factor = rows[k]![i]! / rows[i]![i]!;
      for (let j = i; j <= n; j++) rows[k]![j]! -= factor * rows[i]![j]!;
    }
  }
  const out = Array.from({ length: n }, () => 0);
  for (let i = n - 1; i >= 0; i--) {
    let rest = rows[i]![n]!;
    for (let j = i + 1; j < n; j++) rest -= rows[i]![j]! * out[j]!;
    out[i] = rest / rows[i]![i]!;
  }
  return out;
}

/** What is in a gap: one resistance, or resistors between the points 'in' and 'out'. */
export type Gap = number | readonly Resistor[];

/** Resistors of a gap between two points of the bridge; inner points get names of their own. */
function inGap(gap: Gap, name: string, from: string, to: string): Resistor[] {
  if (typeof gap === 'number') return [[from, to, gap]];
  const point = (inner: string) => (inner === 'in' ? from : inner === 'out' ? to : `${name} ${inner}`);
  return gap.map(([a, b, ohms]) => [point(a), point(b), ohms]);
}

/** The wire bridge with an open galvanometer branch: potential of the middle strip less that of the jockey, for one volt. Zero at the null. */
export function offNull(left: Gap, right: Gap, wireLeft: number, wireRight: number): number {
  const at = potentials(
    [...inGap(left, 'left', 'A', 'B'), ...inGap(right, 'right', 'B', 'C'), ['A', 'J', wireLeft], ['J', 'C', wireRight]],
    ['A', 'C'],
  );
  return at['B']! - at['J']!;
}

export const parallel = (...ohms: number[]): Gap => ohms.map((each): Resistor => ['in', 'out', each]);
export const series = (a: number, b: number): Gap => [['in', 'x', a], ['x', 'out', b]];
