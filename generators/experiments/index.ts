import { careyFoster } from './carey-foster.ts';
import { endCorrections } from './end-corrections.ts';
import { circuitCheck } from './circuit-check.ts';
import type { Experiment } from './experiment.ts';
import { findTheFaults } from './find-the-faults.ts';
import { gaugeDrill } from './gauge-drill.ts';
import { graph } from './graph.ts';
import { interchange } from './interchange.ts';
import { resistanceLength } from './resistance-length.ts';
import { kelvin } from './kelvin.ts';
import { resistivity } from './resistivity.ts';
import { scaleDrill } from './scale-drill.ts';
import { seriesParallel } from './series-parallel.ts';
import { temperatureCoefficient } from './temperature-coefficient.ts';
import { whereToBalance } from './where-to-balance.ts';
import { whichMaterial } from './which-material.ts';

/** Every experiment by its id. */
export const experiments: Readonly<Record<string, Experiment>> = { resistivity, interchange, 'end-corrections': endCorrections, graph, 'resistance-length': resistanceLength, 'which-material': whichMaterial, 'temperature-coefficient': temperatureCoefficient, 'series-parallel': seriesParallel, 'where-to-balance': whereToBalance, 'gauge-drill': gaugeDrill, 'scale-drill': scaleDrill, 'circuit-check': circuitCheck, 'find-the-faults': findTheFaults, 'carey-foster': careyFoster, kelvin };

/** The experiment of that id; a name that is not there is a mistake of the program, since orders are checked before. */
export function experimentNamed(id: string): Experiment {
  const found = experiments[id];
  if (!found) throw new Error(`no experiment is called ${id}`);
  return found;
}
