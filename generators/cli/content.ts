import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';
import { readBench } from '../apparatus/bench.ts';
import { readGauges } from '../apparatus/gauges.ts';
import { readMaterials } from '../apparatus/materials.ts';
import { experiments } from '../experiments/index.ts';
import type { FigureWords } from '../figures/words.ts';
import type { Known } from '../order/known.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import type { GraphsInWords } from '../sheets/graphs.ts';
import type { Tables } from '../sheets/tables.ts';

const folder = fileURLToPath(new URL('../../content/', import.meta.url));

function yaml(path: string): unknown {
  return parse(readFileSync(`${folder}${path}.yaml`, 'utf8'));
}

/** The tables that no language changes. */
export function loadTables(): Tables {
  return {
    bench: readBench(yaml('tables/apparatus')),
    materials: readMaterials(yaml('tables/materials')),
    gauges: readGauges(yaml('tables/gauges')),
  };
}

/** The words of one language for one experiment. */
export interface Words {
  spoken: SpokenWords;
  sheet: Record<string, unknown>;
  experiment: { title: string; about: string; known: Record<string, string>; values?: Record<string, string>; graphs?: GraphsInWords } & Record<string, unknown>;
  figures: FigureWords;
}

export function loadWords(language: string, experiment: string): Words {
  return {
    spoken: yaml(`${language}/spoken`) as Words['spoken'],
    sheet: yaml(`${language}/sheet`) as Words['sheet'],
    experiment: experimentWords(language, experiment),
    figures: loadFigureWords(language),
  };
}

/** An experiment's words after those that it shares with others. */
function experimentWords(language: string, id: string): Words['experiment'] {
  return afterShared(language, `experiments/${id}`) as Words['experiment'];
}

/** The words of a file after those of the files that it lists under `shares`, and of those that these list. */
function afterShared(language: string, path: string): unknown {
  const own = yaml(`${language}/${path}`) as { shares?: string[] };
  return [...(own.shares ?? []).map((shared) => afterShared(language, `shared/${shared}`)), own].reduce(merged);
}

/** Shared words and an experiment's own: lists one after the other, named words together, and of single words the experiment's. */
function merged(shared: unknown, own: unknown): unknown {
  const isNamed = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);
  if (Array.isArray(shared) && Array.isArray(own)) return [...(shared as unknown[]), ...(own as unknown[])];
  if (!isNamed(shared) || !isNamed(own)) return own ?? shared;
  return { ...shared, ...Object.fromEntries(Object.entries(own).map(([name, value]) => [name, merged(shared[name], value)])) };
}

/** The words on and about the drawings. */
export function loadFigureWords(language: string): FigureWords {
  return yaml(`${language}/figures`) as FigureWords;
}

/** The words of a practical examination. */
export interface PracticalWords extends Record<string, unknown> {
  title: string;
  stations: { title: string };
  award: { title: string };
  heads: unknown;
}

export function loadPracticalWords(language: string): PracticalWords {
  return yaml(`${language}/practical`) as PracticalWords;
}

/** The words of the site's pages. */
export function loadSiteWords(language: string): Record<string, Record<string, string>> {
  return yaml(`${language}/site`) as Record<string, Record<string, string>>;
}

/** The language of what a terminal shows. */
export const mainLanguage = () => languages()[0]!;

/** A language is a folder of content that speaks. */
function languages(): string[] {
  return readdirSync(folder).filter((name) => existsSync(`${folder}${name}/sheet.yaml`));
}

/** What an order may name. */
export function knownNames({ materials, gauges }: Tables): Known {
  const numbers = (series: string) => Object.keys(gauges[series]?.diameters ?? {}).map(Number);
  return {
    experiments: Object.keys(experiments),
    materials: Object.keys(materials.materials),
    gauges: { SWG: numbers('SWG'), AWG: numbers('AWG') },
    sources: Object.keys(materials.sources),
    languages: languages(),
  };
}
