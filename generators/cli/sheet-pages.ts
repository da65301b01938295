import { circuits } from '../experiments/circuits.ts';
import { experimentNamed } from '../experiments/index.ts';
import { keyNote } from '../marking/key-note.ts';
import { withReasons } from '../marking/reasons.ts';
import type { Order } from '../order/schema.ts';
import { readWireAsk } from '../order/wire-ask.ts';
import type { Doubt } from '../sheets/doubts.ts';
import { gridPage } from '../sheets/grid.ts';
import { type Issue, programOf } from '../sheets/issue.ts';
import { type PageWords, keyPage, knownGap, measuredPage, solutionPage, worksheetPage } from '../sheets/pages.ts';
import { type Tables, askFor } from '../sheets/tables.ts';
import type { Sheet } from '../sheets/sheet.ts';
import { workOut } from '../sheets/worked.ts';
import { type Words, knownNames } from './content.ts';
import { loadMarkingWords } from './marking-content.ts';

/** What is made of one sheet. */
export type Kind = 'worksheet' | 'key' | 'solution';

/** Makes what the templates receive for one sheet; `place` is the sheet's in its document. */
export type MakePage = (kind: Kind, issue: Issue, place: number) => object;

/** Makes the pages of one order's sheets. */
export function sheetPages(order: Order, tables: Tables, words: Words): MakePage {
  const experiment = experimentNamed(order.experiment);
  const known = knownNames(tables);
  const said = loadMarkingWords(order.language);
  return (kind, issue, place) => {
    const program = programOf(experiment, issue.sheet);
    const ask = askFor(order, issue.wires.map((wire) => readWireAsk(wire, known)), tables);
    const wired = experiment.layout.circuit && circuits[experiment.layout.circuit];
    const circuit = wired?.({ id: `circuit-${place}`, known: knownGap(issue.sheet), symbol: order.symbols === 'IEC' ? 'rectangle' : 'zigzag', named: true }, words.figures);
    const common = { issue, order, ask, words: pageWords(words), ...(circuit !== undefined && { circuit }), place };
    if (kind === 'worksheet') return worksheetPage(common, program, experiment);
    const worked = workOut(issue.sheet, program);
    if (kind === 'solution') return { ...solutionPage(common, worked, experiment), slips: said.slips };
    const page = keyPage(common, worked, experiment);
    const reasoned = order.reasons && { answers: withReasons(page.answers, issue.sheet, program, words.spoken, said.reasons), reasons: said.reasons.lead };
    return { ...page, ...reasoned, slips: said.slips, coincide: keyNote(issue.sheet, program, experiment.layout, words.spoken.symbols, said) };
  };
}

/** The marking grid of one order's sheets. */
export function gridOf(issues: readonly Issue[], order: Order, words: Words): object {
  const experiment = experimentNamed(order.experiment);
  const page = gridPage(issues, experiment, words.spoken);
  if (!order.reasons) return page;
  const { reasons } = loadMarkingWords(order.language);
  const rows = page.rows.map((row, i) => {
    const { sheet } = issues[i]!;
    return { ...row, answers: withReasons(row.answers, sheet, programOf(experiment, sheet), words.spoken, reasons) };
  });
  return { ...page, rows, reasons: reasons.lead };
}

/** Makes what the template of a measured record receives. */
export function measuredRecord(order: Order, tables: Tables, words: Words): (sheet: Sheet, name: string, found: readonly Doubt[]) => object {
  const experiment = experimentNamed(order.experiment);
  const ask = askFor(order, order.wires, tables);
  return (sheet, name, found) => measuredPage({ sheet, name, order, ask, words: pageWords(words) }, workOut(sheet, programOf(experiment, sheet)), experiment, found);
}

const pageWords = (words: Words): PageWords => ({ spoken: words.spoken, known: words.experiment.known, figures: words.figures, graphs: words.experiment.graphs ?? {} });
