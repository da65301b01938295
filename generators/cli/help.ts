import { describeOrder, orderFlags } from '../order/flags.ts';
import type { Flag } from './command-line.ts';
import type { Command } from './command.ts';
import { knownNames, loadTables } from './content.ts';

/** The help of a command that takes an order: its own flags, then those that give entries of the order. */
export function orderHelp({ usage, about }: Pick<Command, 'usage' | 'about'>, own: readonly Flag[]): string {
  const known = knownNames(loadTables());
  const defaults = new Map(describeOrder(known).map(({ flag, fallback }) => [flag, fallback]));
  const rows = [...own, ...orderFlags(known)].map((flag) => ({ ...flag, flag: `--${flag.name}`, fallback: defaults.get(`--${flag.name}`) }));
  const width = Math.max(...rows.map(({ flag }) => flag.length));
  const lines = rows.map(({ flag, meaning, takes, many, fallback }) => {
    const value = `takes ${takes}${fallback === undefined ? '' : ` (default: ${fallback})`}${many ? '; may be repeated' : ''}`;
    return `  ${flag.padEnd(width)}  ${meaning}\n  ${''.padEnd(width)}  ${value}`;
  });
  return [
    `slidewire ${usage}`,
    `    ${about}`,
    '',
    'The order may also be given by flags alone; beside a file, a flag takes the place of what the file says.',
    '',
    ...lines,
  ].join('\n');
}
