import { experiments as all } from '../experiments/index.ts';
import type { Command } from './command.ts';
import { readCommandLine } from './command-line.ts';
import { loadWords, mainLanguage } from './content.ts';

export const experiments: Command = {
  usage: 'experiments',
  about: 'every experiment: its id, what it is, and what its order takes where you name nothing',
  help: () => `slidewire ${experiments.usage}\n${experiments.about}`,
  async run(args) {
    readCommandLine(args, []);
    for (const [id, { usual }] of Object.entries(all)) process.stdout.write(`${id}\n    ${loadWords(mainLanguage(), id).experiment.about}\n${usualInWords(usual)}`);
  },
};

function usualInWords(usual: Readonly<Record<string, string | readonly string[]>>): string {
  return Object.entries(usual)
    .map(([entry, value]) => `    ${entry}: ${[value].flat().join('; ')}\n`)
    .join('');
}
