import { mkdir, writeFile } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import { experimentNamed } from '../experiments/index.ts';
import { UserMistake } from '../mistake.ts';
import { readingColumns } from '../order/reading-columns.ts';
import { orderFlags } from '../order/flags.ts';
import { orderFromFlags } from '../order/read-order.ts';
import { documentHtml } from '../press/documents.ts';
import { openPress } from '../press/print.ts';
import { templates } from '../press/templates.ts';
import { wholeFolder } from '../press/whole-folder.ts';
import { type Doubt, doubts } from '../sheets/doubts.ts';
import { programOf } from '../sheets/issue.ts';
import { measuredSheet } from '../sheets/measured.ts';
import { quantityOf } from '../sheets/measured-columns.ts';
import type { Sheet } from '../sheets/sheet.ts';
import { askFor } from '../sheets/tables.ts';
import { bytes } from './asked.ts';
import { needed } from './class-order.ts';
import type { Command } from './command.ts';
import { type Flag, readCommandLine } from './command-line.ts';
import { knownNames, loadTables, loadWords } from './content.ts';
import { orderHelp } from './help.ts';
import { measuredRecord } from './sheet-pages.ts';

const FLAGS: readonly Flag[] = [
  { name: 'out', many: false, takes: 'the path of a folder', meaning: 'the folder for record.pdf and record.html' },
  { name: 'name', many: false, takes: 'a name', meaning: 'who took the readings' },
];

export const working: Command = {
  usage: 'working READINGS.csv --experiment ID --wire WIRE --out DIR',
  about: 'the full working for readings that were really taken: the table is checked and becomes the worked record',
  help: () => orderHelp(working, FLAGS),
  async run(args) {
    const tables = loadTables();
    const known = knownNames(tables);
    const { flags, positionals } = readCommandLine(args, [...FLAGS, ...orderFlags(known)]);
    const [path, ...more] = positionals;
    if (path === undefined || more.length > 0) throw new UserMistake('give one file of readings: slidewire working READINGS.csv --experiment ID --wire WIRE --out DIR');
    const folder = resolve(needed(flags['out'], 'say where the record goes: --out DIR'));
    if (flags['wire'] === undefined) throw new UserMistake('say which wire it was, so that the record can name its material: --wire "constantan, SWG 28, 60 cm"');
    const order = orderFromFlags(flags, known);
    const experiment = experimentNamed(order.experiment);
    const words = loadWords(order.language, order.experiment);
    const names = { values: (words.experiment['values'] ?? {}) as Record<string, string> };
    const ask = askFor(order, order.wires, tables);
    const { form } = experiment.ideal(ask);
    const { columns, notices } = readingColumns(bytes(path), basename(path), (head) => quantityOf(head, programOf(experiment, { form }).steps, names) !== undefined);
    for (const notice of notices) process.stderr.write(`${notice}\n`);
    const sheet = measuredSheet(columns, experiment, order, ask, names, basename(path));
    const found = doubts(sheet, programOf(experiment, sheet), experiment.layout, ask);
    const page = measuredRecord(order, tables, words)(sheet, String(flags['name'] ?? ''), found);
    const html = documentHtml(templates(), { order, words: words.sheet, experiment: words.experiment, title: words.experiment.title }, [page]);
    await wholeFolder(folder, async (partial) => {
      await mkdir(partial, { recursive: true });
      await writeFile(join(partial, 'record.html'), html);
      const press = await openPress();
      try {
        await press.print(html, join(partial, 'record.pdf'));
      } finally {
        await press.close();
      }
    });
    for (const doubt of found) process.stdout.write(`${doubtInWords(doubt, sheet, order.window, words.spoken.symbols[doubt.id] ?? doubt.id)}\n`);
    process.stdout.write(`The worked record: ${join(folder, 'record.pdf')} and record.html\n`);
  },
};

function doubtInWords({ about, id, row }: Doubt, { readings }: Sheet, [low, high]: readonly [number, number], symbol: string): string {
  if (about === 'window') return `Row ${row + 1}: the null point ${symbol} = ${[readings[id]!].flat()[row]} cm lies outside ${low} to ${high} cm; choose another R there.`;
  return `Row ${row + 1}: ${symbol} does not fit the other rows; look at its readings again, or take them again.`;
}
