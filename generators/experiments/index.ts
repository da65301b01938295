import { circuitCheck } from './circuit-check.ts';
import type { Experiment } from './experiment.ts';
import { gaugeDrill } from './gauge-drill.ts';
import { interchange } from './interchange.ts';
import { resistivity } from './resistivity.ts';
import { scaleDrill } from './scale-drill.ts';
import { seriesParallel } from './series-parallel.ts';

/** Every experiment by its id. */
export const experiments: Readonly<Record<string, Experiment>> = { resistivity, interchange, 'series-parallel': seriesParallel, 'gauge-drill': gaugeDrill, 'scale-drill': scaleDrill, 'circuit-check': circuitCheck };

/** The experiment of that id; a name that is not there is a mistake of the program, since orders are checked before. */
export function experimentNamed(id: string): Experiment {
  const found = experiments[id];
  if (!found) throw new Error(`no experiment is called ${id}`);
  return found;
}
