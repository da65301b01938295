import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type BuildOptions, type Plugin, build } from 'esbuild';
import { readyFormulas } from '../../practice/ready-formulas.ts';
import type { PageData } from '../../practice/page/data.ts';
import type { PracticePage } from './practice-page.ts';

const generators = fileURLToPath(new URL('../../', import.meta.url));
const module = (path: string) => `${generators}${path}`;

/** Modules that a page has in place of those that only Node can carry, or that are larger than what is used of them. */
const INSTEAD: Readonly<Record<string, string>> = {
  [module('quantities/formula.ts')]: module('practice/formula.ts'),
  zod: module('practice/no-tables.ts'),
  seedrandom: module('practice/alea.ts'),
};

/** What must never be on its way to a page. */
const NODE_ONLY = /node_modules\/(?:mathjs|katex|zod|nunjucks)\/|generators\/(?:press|cli|order)\//;

const instead: Plugin = {
  name: 'instead',
  setup({ onResolve }) {
    onResolve({ filter: /^(?:zod|seedrandom)$/ }, ({ path }) => ({ path: INSTEAD[path]! }));
    onResolve({ filter: /\/formula\.ts$/ }, ({ path, resolveDir }) => {
      const found = fileURLToPath(new URL(path, `file://${resolveDir}/`));
      return { path: INSTEAD[found] ?? found };
    });
  },
};

/** A module with all that it needs as one classic script, small. */
export async function bundle(entry: Required<Pick<BuildOptions, 'entryPoints'>> | Required<Pick<BuildOptions, 'stdin'>>): Promise<string> {
  const { outputFiles, metafile } = await build({
    ...entry,
    bundle: true,
    write: false,
    minify: true,
    metafile: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    legalComments: 'none',
    charset: 'utf8',
    plugins: [instead],
  });
  const strangers = Object.keys(metafile.inputs).filter((input) => NODE_ONLY.test(input));
  if (strangers.length > 0) throw new Error(`a page would take in ${strangers.join(', ')}`);
  return outputFiles[0]!.text;
}

/** A module of practice/page/ that does its work as it loads. */
export const pageScript = (name: string) => bundle({ entryPoints: [module(`practice/page/${name}.ts`)] });

/** The script of one experiment's page: the experiment itself, its formulas, its data, and what brings the page to life. */
export function practiceScript({ experiment: { id }, kit, ready, signed, scientific, programs }: PracticePage, words: PageData['words']): Promise<string> {
  if (!existsSync(module(`experiments/${id}.ts`))) throw new Error(`the experiment ${id} is not in experiments/${id}.ts`);
  const draws = Object.keys(kit.conventions.drawn).length > 0;
  const contents = `
    import * as own from './experiments/${id}.ts';
    import { startPractice } from './practice/page/practice.ts';
    ${draws ? "import { drawnSlots } from './practice/drawn.ts';" : ''}
    const experiment = Object.values(own).find((each) => each.id === '${id}');
    startPractice({ experiment, ${draws ? 'drawnSlots, ' : ''}formulas: ${readyFormulas(programs)}, ...${JSON.stringify({ kit, ready, signed, scientific, words })} });`;
  return bundle({ stdin: { contents, resolveDir: generators, loader: 'ts' } });
}
