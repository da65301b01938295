import { existsSync } from 'node:fs';
import { chmod } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { experiments } from '../experiments/index.ts';
import { UserMistake } from '../mistake.ts';
import { didYouMean } from '../near-miss.ts';
import { families } from '../questions/index.ts';
import { wholeFolder } from '../press/whole-folder.ts';
import { needed } from './class-order.ts';
import { readCommandLine } from './command-line.ts';
import type { Command } from './command.ts';
import { mainLanguage } from './content.ts';
import { buildSite } from './site/build-site.ts';

const OUT = { name: 'out', many: false, takes: 'the path of a folder that is not there yet, or of an earlier site', meaning: 'the folder for the site' };

/** Parts that a teacher may leave out. */
const PARTS = ['my-readings'];
const WITHOUT = { name: 'without', many: false, takes: `the word ${PARTS.join(', ')}`, meaning: 'leaves out the pages on which students work readings that they really took' };
const FLAGS = [OUT, WITHOUT];

export const site: Command = {
  usage: 'site --out DIR',
  about: 'a site for students to practise on: it opens from the folder, or from any web server',
  help: () => [`slidewire ${site.usage}`, `    ${site.about}`, '', ...FLAGS.map(({ name, meaning, takes }) => `  --${name.padEnd(7)}  ${meaning}\n             takes ${takes}`)].join('\n'),
  async run(args) {
    const { flags, positionals } = readCommandLine(args, FLAGS);
    if (positionals.length > 0) throw new UserMistake(`the site takes no order, but here is "${positionals[0]}"; say where it goes with --out DIR`);
    const folder = resolve(needed(flags['out'], 'say where the site goes: --out DIR'));
    if (existsSync(folder) && !existsSync(join(folder, 'notebook.css'))) throw new UserMistake([{ file: folder, what: 'the folder is there and holds no site; choose another with --out, or remove it' }]);
    const { without } = flags;
    if (without !== undefined && !PARTS.includes(String(without))) throw new UserMistake([{ field: '--without', what: `"${String(without)}" is no part that can be left out${didYouMean(String(without), PARTS) || `; it takes ${WITHOUT.takes}`}` }]);
    const contents = { experiments: Object.values(experiments), myReadings: without === undefined, families };
    await wholeFolder(folder, (partial) => buildSite(partial, mainLanguage(), contents));
    // A folder in the making is its owner's alone; a web server has to read this one.
    await chmod(folder, 0o755);
    process.stdout.write(`Open ${join(folder, 'index.html')}, or put the folder on any web server.\n`);
  },
};
