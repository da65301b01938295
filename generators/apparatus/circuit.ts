/** Resistances of the five branches round a bridge and its electromotive force, in Ω and V; Infinity is an open branch. */
export interface Circuit {
  /** Left gap: from the left strip to the middle strip. */
  left: number;
  /** Right gap: from the middle strip to the right strip. */
  right: number;
  /** Bridge wire left of the jockey, from the left strip. */
  wireLeft: number;
  /** Bridge wire right of the jockey, to the right strip. */
  wireRight: number;
  /** From the middle strip through the galvanometer to the jockey. */
  galvanometer: number;
  /** The cell with what is in series with it. */
  cell: number;
  /** In V, positive where the left strip is at the cell's positive pole. */
  emf: number;
}

/**
 * Current through the galvanometer in A, positive from the middle strip to the jockey.
 * Kirchhoff's laws for six branches; multiplied out, so that a branch may be shorted (0).
 * A gap that is open (Infinity) has its resistance divided out first.
 */
export function galvanometerCurrent(circuit: Circuit): number {
  const { left: p, right: q, wireLeft: a, wireRight: b, galvanometer: g, cell: r, emf } = circuit;
  if ((p === Infinity && q === Infinity) || g === Infinity || r === Infinity) return 0;
  if (p === Infinity) return (-emf * b) / (r * (g + q + b) + (g + q) * (a + b) + a * b);
  if (q === Infinity) return (emf * a) / (r * (g + p + a) + (g + p) * (a + b) + a * b);
  const parallelToCell = (p + q) * (a + b);
  const loops = r * (g * (p + q + a + b) + (p + a) * (q + b));
  return (emf * (q * a - p * b)) / (loops + g * parallelToCell + p * q * (a + b) + a * b * (p + q));
}
