import { join } from 'node:path';
import { experimentNamed } from '../experiments/index.ts';
import type { Order } from '../order/schema.ts';
import { readWireAsk } from '../order/wire-ask.ts';
import { type Job, abreast } from '../press/abreast.ts';
import { documentHtml } from '../press/documents.ts';
import { unprintable } from '../press/fonts.ts';
import type { Press } from '../press/print.ts';
import { templates } from '../press/templates.ts';
import { cardsPage } from '../sheets/cards.ts';
import { type Issue, programOf } from '../sheets/issue.ts';
import { type Tables, askFor } from '../sheets/tables.ts';
import { type Words, knownNames } from './content.ts';
import type { Progress } from './progress.ts';
import { type Kind, gridOf, sheetPages } from './sheet-pages.ts';

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

/** Pages of a sheet where none has been counted. */
const USUAL_PAGES = 4;

/** Documents under way at once: two at the press, and one that is laid out meanwhile. */
const UNDER_WAY = 3;

/** Prints everything of a pack but its ledger. */
export async function printPack(work: PackWork): Promise<void> {
  for (const lack of unprintableNames(work.issues)) process.stderr.write(`${lack}\n`);
  const printer = makePrinter(work);
  // Where each student has to start on an odd page, the pages of every sheet must be counted first.
  const counted = work.order['double-sided'];
  const one = work.issues.length === 1;
  // What one student gets by itself need not be printed together with nothing else.
  const wanted = (kind: Kind, together: string, single: string, alone: boolean): Wanted => ({ kind, ...(!(one && alone) && { together }), ...(alone && { single }) });
  const alone = work.order.singles || counted || one;
  const worksheets = wanted('worksheet', 'students/worksheets', 'students/single/worksheet', alone);
  if (work.order.readings === 'blank') return printer.print([worksheets], [printer.cards]);
  await printer.print(
    [
      worksheets,
      wanted('key', 'teacher/keys', 'teacher/single/key', alone),
      wanted('solution', 'teacher/solutions', 'teacher/single/solution', counted && !one),
    ],
    [printer.grid],
  );
}

/** Which characters of whose name no bundled font has. */
export function unprintableNames(issues: readonly Pick<Issue, 'roll' | 'name'>[]): string[] {
  return issues.flatMap(({ roll, name }) => {
    const lacking = unprintable(`${roll} ${name}`).map((character) => `${character} (U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')})`);
    return lacking.length === 0 ? [] : [`roll ${roll}: no bundled font has ${lacking.join(', ')}; print the name without, or look at the sheet before handing it out`];
  });
}

/** A kind of sheet, and where it goes: all together, each by itself, or both. */
interface Wanted {
  kind: Kind;
  together?: string;
  single?: string;
}

/** Lays out and prints the sheets of a pack. A document is made when its turn comes, so that a large class needs no more memory than a small one. */
export function makePrinter({ partial, press, order, tables, issues, words, progress }: PackWork) {
  const environment = templates();
  const experiment = experimentNamed(order.experiment);
  const pageOf = sheetPages(order, tables, words);
  const settings = { order, words: words.sheet, experiment: words.experiment };
  const { title } = words.experiment;

  const print = (pages: object[], file: string, heading: string, orientation: 'portrait' | 'landscape' = 'portrait') =>
    press.print(documentHtml(environment, { ...settings, title: heading, orientation }, pages), join(partial, `${file}.pdf`));

  const single = async (kind: Kind, file: string, place: number): Promise<number> => {
    const issue = issues[place]!;
    const { pages } = await print([pageOf(kind, issue, 0)], `${file}-${fileName(issue.roll, place, issues.length)}`, `${title} · ${issue.roll}`);
    return pages;
  };

  /** Each student's sheet; notes its pages in `counted`. */
  function* singles({ kind, single: file }: Wanted, counted: number[]): Generator<Job> {
    if (file === undefined) return;
    for (const place of issues.keys()) yield async () => void (counted[place] = await single(kind, file, place));
  }

  /** All students' sheets, in parts; a blank page after a sheet that ends on an odd one, where that is asked for. */
  function* parts({ kind, together }: Wanted, counted: readonly number[]): Generator<Job> {
    if (together === undefined) return;
    const most = counted.reduce((most, pages) => Math.max(most, pages), counted.length === 0 ? USUAL_PAGES : 1);
    const size = Math.max(1, Math.floor(PART_PAGES / most));
    for (let from = 0; from < issues.length; from += size) {
      yield async () => {
        const sheets = issues.slice(from, from + size).flatMap((issue, i) => {
          const odd = (counted[from + i] ?? 0) % 2 === 1;
          return [pageOf(kind, issue, i), ...(order['double-sided'] && odd ? [{ template: 'blank', foot: '' }] : [])];
        });
        await print(sheets, `${together}-${from / size + 1}`, title);
      };
    }
  }

  async function work(what: string, jobs: Iterable<Job>, total: number): Promise<void> {
    if (total === 0) return;
    progress.start(what, total);
    await abreast(UNDER_WAY, told(jobs, progress));
  }

  return {
    /** Pages of one sheet, counted in print. */
    async sample(kind: Kind): Promise<number> {
      return (await print([pageOf(kind, issues[0]!, 0)], `sample-${kind}`, title)).pages;
    },
    /** Prints kinds of sheets, each student's first, and further documents. */
    async print(wanted: readonly Wanted[], further: readonly Job[] = []): Promise<void> {
      const kinds = wanted.map((one) => ({ one, counted: [] as number[] }));
      const alone = kinds.filter(({ one }) => one.single !== undefined).length * issues.length;
      await work('sheets, one for each student:', chained(kinds.map(({ one, counted }) => singles(one, counted))), alone);
      const together = [...kinds.flatMap(({ one, counted }) => [...parts(one, counted)]), ...further];
      await work('sheets together:', together, together.length);
    },
    /** For readings that are really taken there is no key, but a card for each wire. */
    async cards(): Promise<void> {
      const known = knownNames(tables);
      const wires = [...new Set(issues.flatMap((issue) => issue.wires))].map((wire) => askFor(order, [readWireAsk(wire, known)], tables));
      await print([cardsPage(wires, experiment, programOf(experiment, issues[0]!.sheet), words.spoken)], 'teacher/cards', title);
    },
    async grid(): Promise<void> {
      await print([gridOf(issues, order, words)], 'teacher/marking-grid', title, 'landscape');
    },
  };
}

function* chained<T>(lists: readonly Iterable<T>[]): Generator<T> {
  for (const list of lists) yield* list;
}

/** The same jobs, each of which tells when it is done. */
function* told(jobs: Iterable<Job>, progress: Progress): Generator<Job> {
  for (const job of jobs) yield () => job().then(progress.step);
}

/** A file is named by its place in the list and what of the roll is safe in a path: '007-12A'. */
function fileName(roll: string, place: number, count: number): string {
  const number = String(place + 1).padStart(String(count).length, '0');
  const safe = roll.replace(/[^A-Za-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 20);
  return safe === '' ? number : `${number}-roll-${safe}`;
}
