import { knownNames, loadTables, loadWords } from '../../generators/cli/content.ts';
import { experiments } from '../../generators/experiments/index.ts';
import { orderFromFlags } from '../../generators/order/read-order.ts';
import { issueSheets, programOf } from '../../generators/sheets/issue.ts';
import { keyView } from '../../generators/sheets/view.ts';
import { workOut } from '../../generators/sheets/worked.ts';

/** Every formula in TeX that the keys of some sheets of an experiment hold. */
export function formulasOn(id: string, sheets: number): Set<string> {
  const tables = loadTables();
  const order = orderFromFlags({ experiment: id, seed: 'corpus' }, knownNames(tables));
  const experiment = experiments[id]!;
  const issues = issueSheets({ order, experiment, tables, secret: 'corpus' }, Array.from({ length: sheets }, (_, i) => ({ roll: String(i), name: '' })));
  const found = new Set<string>();
  for (const { sheet } of issues) collect(keyView(sheet, workOut(sheet, programOf(experiment, sheet)), experiment.layout, loadWords('en', id).spoken), found);
  return found;
}

function collect(value: unknown, into: Set<string>): void {
  if (typeof value !== 'object' || value === null) return;
  if ('tex' in value && typeof value.tex === 'string') into.add(value.tex);
  for (const inner of Object.values(value)) collect(inner, into);
}
