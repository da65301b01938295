import { readFileSync } from 'node:fs';
import { UserMistake } from '../mistake.ts';
import { didYouMean } from '../near-miss.ts';
import type { Command } from './command.ts';

/** Commands by name, each loaded when it is called: one that prints nothing starts no browser code. */
export type Commands = Readonly<Record<string, () => Promise<Command>>>;

const ALL: Commands = {
  pack: async () => (await import('./pack.ts')).pack,
  issue: async () => (await import('./issue.ts')).issue,
  join: async () => (await import('./join.ts')).join,
  mark: async () => (await import('./mark.ts')).mark,
  practical: async () => (await import('./practical.ts')).practical,
  working: async () => (await import('./working.ts')).working,
  experiments: async () => (await import('./experiments.ts')).experiments,
  plan: async () => (await import('./plan.ts')).plan,
  solve: async () => (await import('./solve.ts')).solve,
  families: async () => (await import('./families.ts')).families,
  paper: async () => (await import('./paper.ts')).paper,
  site: async () => (await import('./site.ts')).site,
};

const USER = 1;
/** EX_SOFTWARE of sysexits.h: a fault of the program. */
const BUG = 70;

/** Runs the command line and gives the exit code: 0, 1 for what the user can put right, 70 for a bug. */
export async function main(args: string[], commands: Commands = ALL): Promise<number> {
  try {
    await run(args, commands);
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

async function run([name = 'help', ...rest]: string[], commands: Commands): Promise<void> {
  if (name === '--version') return say(version());
  if (['help', '--help', '-h'].includes(name)) return say(await help(commands, rest[0]));
  const command = await commandNamed(name, commands);
  if (rest.some((each) => each === '--help' || each === '-h')) return say(command.help());
  await command.run(rest);
}

const say = (text: string) => void process.stdout.write(`${text}\n`);

async function commandNamed(name: string, commands: Commands): Promise<Command> {
  const load = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (load) return load();
  throw new UserMistake(`no command "${name}"${didYouMean(name, Object.keys(commands)) || '; slidewire help lists them'}`);
}

async function help(commands: Commands, name: string | undefined): Promise<string> {
  if (name !== undefined) return (await commandNamed(name, commands)).help();
  const all = await Promise.all(Object.keys(commands).map((each) => commandNamed(each, commands)));
  return [...all.map(({ usage, about }) => `slidewire ${usage}\n    ${about}`), 'slidewire help COMMAND\n    all flags of a command'].join('\n');
}

function version(): string {
  const description = readFileSync(new URL('../../package.json', import.meta.url), 'utf8');
  return (JSON.parse(description) as { version: string }).version;
}

function inFull(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const cause = error.cause === undefined ? '' : `\ncaused by: ${inFull(error.cause)}`;
  return `${error.stack ?? error.message}${cause}`;
}
