/** The wires that the tables of materials and gauges can describe. */
export interface KnownWires {
  materials: readonly string[];
  /** Gauge numbers that have a diameter in the table. */
  gauges: { SWG: readonly number[]; AWG: readonly number[] };
}

/** What an order may name. The caller takes these lists from content and experiments. */
export interface Known extends KnownWires {
  experiments: readonly string[];
  /** Sources of resistivity; the first one is the default. */
  sources: readonly string[];
  /** Languages that content/ speaks; the first one is the default. */
  languages: readonly string[];
}
