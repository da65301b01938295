import type { Readings } from '../quantities/evaluate.ts';
import type { Finished } from '../quantities/finished.ts';
import type { Step } from '../quantities/step.ts';
import type { Limit } from '../quantities/uncertainty.ts';
import type { Streams } from '../random.ts';
import type { Ask } from './ask.ts';
import type { Layout } from './layout.ts';
import type { LayBench } from './on-bench.ts';
import type { Plan } from './plan.ts';

/** A set of readings as the instruments gave them, and what lay behind. */
export interface Observed {
  /** Plain choices that decide which steps stand. */
  form: Record<string, string>;
  readings: Readings;
  /** A record that an imaginary student has finished, mistakes and all, to be corrected. */
  finished?: Finished;
  /** True values, for the teacher; by name, in the units of the quantity. */
  truth: Record<string, number>;
}

export interface Experiment {
  id: string;
  /** Goes up when the same seed would make other numbers. */
  edition: number;
  /** How many different wires a student works with. */
  wires: number;
  /** Entries of the order where the teacher names none, as they would be written in its file. */
  usual: Readonly<Record<string, string | readonly string[]>>;
  /** The exercise is on readings that are given: no student can take them, so that they cannot be left blank. */
  readingsGiven?: true;
  layout: Layout;
  /** The steps of a sheet; its form decides between variants. */
  steps(form: Record<string, string>): Step[];
  plan(ask: Ask): Plan;
  /** One set of readings from the simulated bench; undefined where these draws gave none that can be used. */
  observe(ask: Ask, streams: Streams): Observed | undefined;
  /** The bench on which a student can take the readings that go with a null point; left out where there are none to take. */
  bench?: LayBench;
  /** The readings that ideal apparatus would give, for the plan. */
  ideal(ask: Ask): Pick<Observed, 'form' | 'readings'>;
  /** Half-widths of what all rows share, from the sizes of the bench. */
  halfWidths(ask: Ask): Record<string, Limit>;
}
