import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { readBench } from '../../generators/apparatus/bench.ts';
import { readGauges } from '../../generators/apparatus/gauges.ts';
import { readMaterials } from '../../generators/apparatus/materials.ts';

const folder = new URL('../../content/tables/', import.meta.url);

/** A table as the program loads it, before it is checked. */
export function rawTable(file: string): unknown {
  return parse(readFileSync(new URL(file, folder), 'utf8'));
}

export const bench = readBench(rawTable('apparatus.yaml'));
export const materials = readMaterials(rawTable('materials.yaml'));
export const gauges = readGauges(rawTable('gauges.yaml'));
