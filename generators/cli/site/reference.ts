import { unitLine } from '../../sheets/record.ts';
import type { Tables } from '../../sheets/tables.ts';
import { formulaLine, symbolLine } from '../../quantities/working.ts';
import type { PracticePage } from './practice-page.ts';
import { prose } from './site-templates.ts';

/** What the page of tables and symbols shows. */
export function reference({ materials, gauges }: Tables, pages: readonly PracticePage[]): object {
  return {
    materials: Object.entries(materials.materials).map(([name, { also = [], values }]) => ({
      name,
      also,
      values: values.map(({ rho, celsius, alpha, source, note }) => ({
        rho: { tex: scientificTex(rho), spoken: rho },
        celsius,
        alpha: alpha ? `${alpha.value}${alpha.spread === undefined ? '' : ` ± ${alpha.spread}`}` : '',
        alphaCelsius: alpha?.celsius ?? '',
        source: [materials.sources[source]!.name, note].filter((part) => part !== undefined).join(', '),
      })),
    })),
    gauges: Object.entries(gauges).map(([name, { source, diameters }]) => ({ name, source, sizes: Object.entries(diameters).map(([number, diameter]) => ({ number, diameter })) })),
    formulas: pages.map(formulasOf).filter(({ formulas }) => formulas.length > 0),
    symbols: pages.map(symbolsOf),
    lists: { precautions: together(pages, 'precautions'), cautions: together(pages, 'cautions') },
  };
}

const titleOf = ({ words: { experiment } }: PracticePage) => String(experiment['short'] ?? experiment.title);

const scientificTex = (rho: string) => rho.replace(/^(.*)e(.*)$/, '$1 \\times 10^{$2}');

function formulasOf(one: PracticePage) {
  const { experiment, words, page, programs } = one;
  const listed = (words.experiment['formula'] ?? []) as { say: string; formula: string }[];
  const steps = programs[0]!;
  return {
    id: experiment.id,
    title: titleOf(one),
    formulas: listed.flatMap(({ say, formula }) => {
      const step = steps.step(formula);
      return step.kind === 'relation' || step.kind === 'summary' ? [{ say: prose(say, page.blanks), formula: formulaLine(steps, step, words.spoken) }] : [];
    }),
  };
}

function symbolsOf(one: PracticePage) {
  const { words, programs } = one;
  const steps = programs[0]!;
  const names = words.experiment['values'] as Record<string, string> | undefined;
  const rows = Object.entries(names ?? {}).flatMap(([id, name]) => {
    const step = steps.steps.find((each) => each.id === id);
    return step && step.kind !== 'verdict' ? [{ symbol: symbolLine(steps, id, words.spoken), name, unit: unitLine(step.unit, words.spoken) }] : [];
  });
  return { title: titleOf(one), rows };
}

/** What several experiments say alike stands once; sentences about a sheet's own quantities are left to its page. */
function together(pages: readonly PracticePage[], list: string): string[] {
  return [...new Set(pages.flatMap(({ words }) => (words.experiment[list] ?? []) as string[]))].filter((sentence) => !sentence.includes('{'));
}
