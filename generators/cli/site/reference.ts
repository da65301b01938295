import { unitLine } from '../../sheets/record.ts';
import type { Tables } from '../../sheets/tables.ts';
import { formulaLine, symbolLine } from '../../quantities/working.ts';
import type { PracticePage } from './practice-page.ts';
import { prose } from './site-templates.ts';

/** What the page of tables and symbols shows. */
export function reference({ materials, gauges }: Tables, pages: readonly PracticePage[]): object {
  const letterOf = (source: string) => LETTERS[Object.keys(materials.sources).indexOf(source)]!;
  return {
    sources: Object.entries(materials.sources).map(([source, { name }]) => ({ letter: letterOf(source), name })),
    materials: halves(Object.entries(materials.materials).map(([name, { also = [], values }]) => ({
      name,
      also,
      values: values.map(({ rho, celsius, alpha, source, note }) => ({
        rho: { tex: scientificTex(rho), spoken: rho },
        celsius,
        alpha: alpha ? `${alpha.value}${alpha.spread === undefined ? '' : ` ± ${alpha.spread}`}` : '',
        alphaCelsius: alpha?.celsius ?? '',
        source: letterOf(source),
        note: note?.replaceAll(/(\d)e(-?)(\d+)/g, powerOfTen) ?? '',
      })),
    }))),
    gauges: Object.entries(gauges).map(([name, { source, diameters }]) => ({ name, source, sizes: Object.entries(diameters).map(([number, diameter]) => ({ number, diameter })) })),
    experiments: pages.filter(({ isFinished }) => !isFinished).map((one) => ({ id: one.experiment.id, title: titleOf(one), formulas: formulasOf(one), symbols: symbolsOf(one) })),
    lists: { precautions: together(pages, 'precautions'), cautions: together(pages, 'cautions') },
  };
}

/** Sources go by a letter in a table, and by name below it. */
const LETTERS = 'abcdefghijklmnopqrstuvwxyz';

/** Materials in two tables of about as many lines, which stand side by side where there is room. */
function halves<Material extends { values: readonly unknown[] }>(materials: readonly Material[]): Material[][] {
  const lines = (of: readonly Material[]) => of.reduce((sum, { values }) => sum + values.length, 0);
  const first = materials.filter((_, i) => 2 * lines(materials.slice(0, i)) < lines(materials));
  return [first, materials.slice(first.length)];
}

const RAISED: Readonly<Record<string, string>> = { '-': '⁻', 0: '⁰', 1: '¹', 2: '²', 3: '³', 4: '⁴', 5: '⁵', 6: '⁶', 7: '⁷', 8: '⁸', 9: '⁹' };

/** A power of ten in a note: '30e-8' is 30 × 10⁻⁸. */
const powerOfTen = (_: string, digit: string, sign: string, power: string) => `${digit} × 10${[...(sign + power)].map((each) => RAISED[each]).join('')}`;

const titleOf = ({ words: { experiment } }: PracticePage) => String(experiment['short'] ?? experiment.title);

const scientificTex = (rho: string) => rho.replace(/^(.*)e(.*)$/, '$1 \\times 10^{$2}');

function formulasOf({ words, page, programs }: PracticePage) {
  const listed = (words.experiment['formula'] ?? []) as { say: string; formula: string }[];
  const steps = programs[0]!;
  return listed.flatMap(({ say, formula }) => {
    const step = steps.step(formula);
    return step.kind === 'relation' || step.kind === 'summary' ? [{ say: prose(say, page.blanks), formula: formulaLine(steps, step, words.spoken) }] : [];
  });
}

function symbolsOf({ words, programs }: PracticePage) {
  const steps = programs[0]!;
  const names = words.experiment['values'] as Record<string, string> | undefined;
  return Object.entries(names ?? {}).flatMap(([id, name]) => {
    const step = steps.steps.find((each) => each.id === id);
    return step && step.kind !== 'verdict' ? [{ symbol: symbolLine(steps, id, words.spoken), name, unit: unitLine(step.unit, words.spoken) }] : [];
  });
}

/** What several experiments say alike stands once; sentences about a sheet's own quantities are left to its page. */
function together(pages: readonly PracticePage[], list: string): string[] {
  return [...new Set(pages.flatMap(({ words }) => (words.experiment[list] ?? []) as string[]))].filter((sentence) => !sentence.includes('{'));
}
