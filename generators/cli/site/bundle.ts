import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type BuildOptions, type Plugin, build } from 'esbuild';
import { readyFormulas } from '../../practice/ready-formulas.ts';
import type { MineData, PageData } from '../../practice/page/data.ts';
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

/** A script of one experiment: the experiment itself, its formulas, its data, and `start` of practice/page/, which brings the page to life. */
async function experimentScript({ experiment: { id }, kit, ready, signed, scientific, programs }: PracticePage, words: object, start: { name: string; from: string; takes: Record<string, string> }): Promise<string> {
  if (!existsSync(module(`experiments/${id}.ts`))) throw new Error(`the experiment ${id} is not in experiments/${id}.ts`);
  const contents = `
    import * as own from './experiments/${id}.ts';
    import { ${start.name} } from './practice/page/${start.from}.ts';
    ${Object.entries(start.takes).map(([name, from]) => `import { ${name} } from './practice/${from}.ts';`).join('\n')}
    const experiment = Object.values(own).find((each) => each.id === '${id}');
    ${start.name}({ experiment, ${Object.keys(start.takes).map((name) => `${name}, `).join('')}formulas: ${readyFormulas(programs)}, ...${JSON.stringify({ kit, ready, signed, scientific, words })} });`;
  return bundle({ stdin: { contents, resolveDir: generators, loader: 'ts' } });
}

/** The script of a practice page; drawings and the screw gauge are taken in only where there are some. */
export const practiceScript = (page: PracticePage, words: PageData['words']) =>
  experimentScript(page, words, {
    name: 'startPractice',
    from: 'practice',
    takes: { ...(Object.keys(page.kit.conventions.drawn).length > 0 && { drawnSlots: 'drawn' }), ...(page.hasGauge && { startGauge: 'page/gauge' }) },
  });

/** The script of a page for readings that were really taken. */
export const mineScript = (page: PracticePage, words: MineData['words']) => experimentScript(page, words, { name: 'startMine', from: 'mine', takes: {} });
