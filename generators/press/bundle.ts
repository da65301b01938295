import { fileURLToPath } from 'node:url';
import { type BuildOptions, type Plugin, build } from 'esbuild';

/** Where modules of the program are, for what is put together in memory. */
export const generators = fileURLToPath(new URL('../', import.meta.url));
const module = (path: string) => `${generators}${path}`;

/** Modules that a page has in place of those that only Node can carry, or that are larger than what is used of them. */
const INSTEAD: Readonly<Record<string, string>> = {
  [module('quantities/formula.ts')]: module('practice/formula.ts'),
  zod: module('practice/no-tables.ts'),
  seedrandom: module('practice/alea.ts'),
  'decimal.js': module('practice/decimal.ts'),
};

/** What must never be on its way to a page. */
const NODE_ONLY = /node_modules\/(?:mathjs|katex|zod|nunjucks)\/|generators\/(?:press|cli|order)\//;

const instead: Plugin = {
  name: 'instead',
  setup({ onResolve }) {
    onResolve({ filter: /^(?:zod|seedrandom|decimal\.js)$/ }, ({ path }) => ({ path: INSTEAD[path]! }));
    onResolve({ filter: /\/formula\.ts$/ }, ({ path, resolveDir }) => {
      const found = fileURLToPath(new URL(path, `file://${resolveDir}/`));
      return { path: INSTEAD[found] ?? found };
    });
  },
};

/** A module with all that it needs as one classic script, small; `more` plugins come first. */
export async function bundle(entry: Required<Pick<BuildOptions, 'entryPoints'>> | Required<Pick<BuildOptions, 'stdin'>>, more: readonly Plugin[] = []): Promise<string> {
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
    plugins: [...more, instead],
  });
  const strangers = Object.keys(metafile.inputs).filter((input) => NODE_ONLY.test(input));
  if (strangers.length > 0) throw new Error(`a page would take in ${strangers.join(', ')}`);
  return outputFiles[0]!.text;
}
