import { join } from 'node:path';
import type nunjucks from 'nunjucks';
import { experimentNamed } from '../experiments/index.ts';
import { bridgeCircuit } from '../figures/circuit.ts';
import type { Order } from '../order/schema.ts';
import { readWireAsk } from '../order/wire-ask.ts';
import { documentHtml } from '../press/documents.ts';
import { unprintable } from '../press/fonts.ts';
import type { Press } from '../press/print.ts';
import { templates } from '../press/templates.ts';
import { type Issue, programOf } from '../sheets/issue.ts';
import { keyPage, solutionPage, worksheetPage } from '../sheets/pages.ts';
import { type Tables, askFor } from '../sheets/tables.ts';
import { workOut } from '../sheets/worked.ts';
import { type Words, knownNames } from './content.ts';
import { gridPage } from '../sheets/grid.ts';
import { cardsPage } from '../sheets/cards.ts';
import type { Progress } from './progress.ts';

export interface PackWork {
  partial: string;
  press: Press;
  order: Order;
  tables: Tables;
  issues: Issue[];
  words: Words;
  progress: Progress;
}

/** A part of all sheets together holds about so many pages: longer documents cost the browser more than their share. */
const PART_PAGES = 100;

/** Prints everything of a pack but its ledger. */
export async function printPack(work: PackWork): Promise<void> {
  for (const lack of unprintableNames(work.issues)) process.stderr.write(`${lack}\n`);
  const printer = makePrinter(work);
  await printer.kind('worksheet', 'students/worksheets', 'students/single/worksheet');
  if (work.order.readings === 'blank') return printer.cards();
  await printer.kind('key', 'teacher/keys', 'teacher/single/key');
  // Where each student has to start on an odd page, the pages of every sheet must be counted first.
  await printer.kind('solution', 'teacher/solutions', work.order['double-sided'] ? 'teacher/single/solution' : undefined);
  await printer.grid();
}

/** Which characters of whose name no bundled font has. */
export function unprintableNames(issues: readonly Pick<Issue, 'roll' | 'name'>[]): string[] {
  return issues.flatMap(({ roll, name }) => {
    const lacking = unprintable(`${roll} ${name}`).map((character) => `${character} (U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')})`);
    return lacking.length === 0 ? [] : [`roll ${roll}: no bundled font has ${lacking.join(', ')}; print the name without, or look at the sheet before handing it out`];
  });
}

type Kind = 'worksheet' | 'key' | 'solution';

/** Lays out and prints the sheets of a pack. */
export function makePrinter({ partial, press, order, tables, issues, words, progress }: PackWork) {
  const environment: nunjucks.Environment = templates();
  const experiment = experimentNamed(order.experiment);
  const known = knownNames(tables);
  const settings = { order, words: words.sheet, experiment: words.experiment };
  const { title } = words.experiment;
  const pageWords = { spoken: words.spoken, known: words.experiment.known, figures: words.figures };

  const pageOf = (kind: Kind, issue: Issue, place: number): object => {
    const program = programOf(experiment, issue.sheet);
    const ask = askFor(order, readWireAsk(issue.wire, known), tables);
    const circuit = bridgeCircuit({ id: `circuit-${place}`, known: ask.known, symbol: order.symbols === 'IEC' ? 'rectangle' : 'zigzag', named: true }, words.figures);
    const common = { issue, order, ask, words: pageWords, circuit, place };
    if (kind === 'worksheet') return worksheetPage(common, program, experiment);
    const worked = workOut(issue.sheet, program);
    return kind === 'key' ? keyPage(common, worked, experiment) : solutionPage(common, worked, experiment);
  };

  const print = (pages: object[], file: string, heading: string, orientation: 'portrait' | 'landscape' = 'portrait') =>
    press.print(documentHtml(environment, { ...settings, title: heading, orientation }, pages), join(partial, `${file}.pdf`));

  async function singles(kind: Kind, file: string): Promise<number[]> {
    progress.start(`${kind}s, one for each student:`, issues.length);
    return Promise.all(
      issues.map(async (issue, place) => {
        const { pages } = await print([pageOf(kind, issue, 0)], `${file}-${fileName(issue.roll, place, issues.length)}`, `${title} · ${issue.roll}`);
        progress.step();
        return pages;
      }),
    );
  }

  async function parts(kind: Kind, file: string, pages: number[] | undefined): Promise<void> {
    const perSheet = Math.max(1, ...(pages ?? [4]));
    const size = Math.max(1, Math.floor(PART_PAGES / perSheet));
    const count = Math.ceil(issues.length / size);
    progress.start(`${kind}s together:`, count);
    for (let part = 0; part < count; part++) {
      const from = part * size;
      const sheets = issues.slice(from, from + size).flatMap((issue, i) => {
        const odd = (pages?.[from + i] ?? 0) % 2 === 1;
        return [pageOf(kind, issue, i), ...(order['double-sided'] && odd ? [{ template: 'blank', foot: '' }] : [])];
      });
      await print(sheets, `${file}-${part + 1}`, title);
      progress.step();
    }
  }

  return {
    /** Pages of one sheet, counted in print. */
    async sample(kind: Kind): Promise<number> {
      return (await print([pageOf(kind, issues[0]!, 0)], `sample-${kind}`, title)).pages;
    },
    async kind(kind: Kind, together: string, single: string | undefined): Promise<void> {
      await parts(kind, together, single === undefined ? undefined : await singles(kind, single));
    },
    /** For readings that are really taken there is no key, but a card for each wire. */
    async cards(): Promise<void> {
      const wires = [...new Set(issues.map(({ wire }) => wire))].map((wire) => askFor(order, readWireAsk(wire, known), tables));
      const page = cardsPage(wires, experiment, programOf(experiment, issues[0]!.sheet), words.spoken);
      progress.start('cards:', 1);
      await print([page], 'teacher/cards', title);
      progress.step();
    },
    async grid(): Promise<void> {
      progress.start('marking grid:', 1);
      const page = gridPage(issues, experiment, words.spoken);
      await print([page], 'teacher/marking-grid', title, 'landscape');
      progress.step();
    },
  };
}

/** A file is named by its place in the list and what of the roll is safe in a path: '007-12A'. */
function fileName(roll: string, place: number, count: number): string {
  const number = String(place + 1).padStart(String(count).length, '0');
  const safe = roll.replace(/[^A-Za-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 20);
  return safe === '' ? number : `${number}-roll-${safe}`;
}
