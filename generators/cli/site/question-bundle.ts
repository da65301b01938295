import { existsSync } from 'node:fs';
import { basename } from 'node:path';
import type { Plugin } from 'esbuild';
import type { FamilyData, QuestionPageWords } from '../../practice/page/question-data.ts';
import { questionFormulas } from '../../practice/questions/ready-formulas.ts';
import { bundle, generators } from '../../press/bundle.ts';
import { type QuestionPage, directionsOf } from './question-page.ts';

/** Modules that a family finds in the script that all share, so that they are loaded once. */
const SHARED: Readonly<Record<string, string>> = { 'written.ts': 'quantities/written.ts', 'number.ts': 'questions/number.ts' };

const fromEngine: Plugin = {
  name: 'from the engine',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /\/(?:written|number)\.ts$/ }, ({ path }) => ({ path: SHARED[basename(path)]!, namespace: 'engine' }));
    onLoad({ filter: /.*/, namespace: 'engine' }, ({ path }) => ({ contents: `module.exports = slidewireQuestions.parts[${JSON.stringify(path)}];` }));
  },
};

/** The script that the pages of all families share: how a question is made, judged and shown, and the words for it. */
export function engineScript(words: QuestionPageWords): Promise<string> {
  const contents = `
    import { provideEngine } from './practice/page/question-engine.ts';
    provideEngine(${JSON.stringify(words)});`;
  return bundle({ stdin: { contents, resolveDir: generators, loader: 'ts' } });
}

/** The script of one family: the family itself, its formulas and its words. */
export async function familyScript({ family, words, signed, scientific }: QuestionPage): Promise<string> {
  if (!existsSync(`${generators}questions/families/${family.id}.ts`)) throw new Error(`the family ${family.id} is not in questions/families/${family.id}.ts`);
  const data: Omit<FamilyData, 'family' | 'formulas'> = { words, signed, scientific };
  const contents = `
    import * as own from './questions/families/${family.id}.ts';
    const family = Object.values(own).find((each) => each.id === '${family.id}');
    slidewireQuestions.start({ family, formulas: ${questionFormulas(directionsOf(family))}, ...${JSON.stringify(data)} });`;
  return bundle({ stdin: { contents, resolveDir: generators, loader: 'ts' } }, [fromEngine]);
}
