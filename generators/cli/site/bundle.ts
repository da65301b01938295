import { existsSync } from 'node:fs';
import { readyFormulas } from '../../practice/ready-formulas.ts';
import type { FaultsData, MineData, PageData } from '../../practice/page/data.ts';
import type { InstrumentsData } from '../../practice/page/instruments.ts';
import { bundle, generators } from '../../press/bundle.ts';
import type { PracticePage } from './practice-page.ts';

export { bundle };

const module = (path: string) => `${generators}${path}`;

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

/** The script of a practice page; drawings, the bench and the screw gauge are taken in only where there are some. */
export const practiceScript = (page: PracticePage, words: PageData['words']) =>
  experimentScript(page, words, {
    name: 'startPractice',
    from: 'practice',
    takes: { ...(Object.keys(page.kit.conventions.drawn).length > 0 && { drawnSlots: 'drawn' }), ...(page.hasBench && { startBench: 'page/bench' }), ...(page.hasGauge && { startGauge: 'page/gauge' }), ...(page.hasRule && { startRule: 'page/rule' }) },
  });

/** The script of a page on which a finished record is judged. */
export const faultsScript = (page: PracticePage, words: FaultsData['words']) => experimentScript(page, words, { name: 'startFaults', from: 'faults', takes: {} });

/** The script of the page on which instruments are tried. */
export const instrumentsScript = (data: InstrumentsData) =>
  bundle({ stdin: { contents: `import { startInstruments } from './practice/page/instruments.ts'; startInstruments(${JSON.stringify(data)});`, resolveDir: generators, loader: 'ts' } });

/** The script of a page for readings that were really taken. */
export const mineScript = (page: PracticePage, words: MineData['words']) => experimentScript(page, words, { name: 'startMine', from: 'mine', takes: {} });
