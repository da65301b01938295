import { z } from 'zod';
import type { Written } from '../quantities/step.ts';
import { entry, plainText, readTable, sourceText } from './table.ts';

const gaugesSchema = z.record(z.string(), z.strictObject({ source: sourceText, diameters: z.record(z.string(), plainText) }));

/** Wire gauges by series ('SWG') and number ('28'); diameters in mm. */
export type Gauges = z.output<typeof gaugesSchema>;

/** The gauges from content/tables/gauges.yaml; UserMistake with every place that is wrong. */
export function readGauges(table: unknown, file = 'gauges.yaml'): Gauges {
  return readTable(gaugesSchema, table, file);
}

/** Nominal diameter in mm; UserMistake for a series or number that is not in the table. */
export function gaugeDiameter(gauges: Gauges, series: string, number: string): Written {
  return entry(`${series} gauge`, number, entry('wire gauge series', series, gauges).diameters);
}
