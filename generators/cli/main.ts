import { UserMistake } from '../mistake.ts';
import type { Command } from './command.ts';

/** Every command, loaded when it is called: one that prints nothing starts no browser code. */
const commands: Record<string, () => Promise<Command>> = {
  pack: async () => (await import('./pack.ts')).pack,
  plan: async () => (await import('./plan.ts')).plan,
};

const USER = 1;
/** EX_SOFTWARE of sysexits.h: a fault of the program. */
const BUG = 70;

/** Runs the command line and gives the exit code: 0, 1 for what the user can put right, 70 for a bug. */
export async function main(args: string[]): Promise<number> {
  try {
    const [name = 'help', ...rest] = args;
    if (['help', '--help', '-h'].includes(name)) return await help(rest[0]);
    const command = await commandNamed(name);
    if (rest.includes('--help')) return await help(name);
    await command.run(rest);
    return 0;
  } catch (error) {
    if (error instanceof UserMistake) {
      process.stderr.write(`${error.message}\n`);
      return USER;
    }
    process.stderr.write(`slidewire: this is a fault of the program, not yours. Please report it with all that follows.\n${inFull(error)}\n`);
    return BUG;
  }
}

async function commandNamed(name: string): Promise<Command> {
  const load = commands[name];
  if (load) return load();
  const { didYouMean } = await import('../near-miss.ts');
  throw new UserMistake(`no command "${name}"${didYouMean(name, Object.keys(commands)) || ''}; run slidewire help`);
}

async function help(name?: string): Promise<number> {
  const names = name === undefined ? Object.keys(commands) : [name];
  const list = await Promise.all(names.map(commandNamed));
  const text = name === undefined ? list.map(({ usage, about }) => `slidewire ${usage}\n    ${about}`) : list.map((command) => command.help());
  process.stdout.write(`${text.join('\n')}\n`);
  return 0;
}

function inFull(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const cause = error.cause === undefined ? '' : `\ncaused by: ${inFull(error.cause)}`;
  return `${error.stack ?? error.message}${cause}`;
}
