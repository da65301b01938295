import { type ParseArgsConfig, parseArgs } from 'node:util';
import { type Mistake, UserMistake } from '../mistake.ts';
import { nearMiss } from '../near-miss.ts';
import type { Flags, OrderFlag } from '../order/flags.ts';

/** A flag of a command; every flag takes a value. */
export type Flag = Pick<OrderFlag, 'name' | 'many' | 'takes' | 'meaning'>;

type Token = NonNullable<ReturnType<typeof parseArgs>['tokens']>[number];
type OptionToken = Extract<Token, { kind: 'option' }>;

/** What stands on a command line besides the command; UserMistake with everything that is wrong with the flags. */
export function readCommandLine(args: string[], flags: readonly Flag[]): { flags: Flags; positionals: string[] } {
  const options: ParseArgsConfig['options'] = {};
  for (const { name, many } of flags) options[name] = { type: 'string', multiple: many };
  const { values, positionals, tokens } = parseArgs({ args, options, allowPositionals: true, strict: false, tokens: true });
  const given = tokens.filter((token) => token.kind === 'option');
  const mistakes = given.flatMap((token, place) => mistakesOf(token, given.slice(0, place), flags));
  if (mistakes.length > 0) throw new UserMistake(mistakes);
  return { flags: values as Flags, positionals };
}

function mistakesOf(token: OptionToken, before: readonly OptionToken[], flags: readonly Flag[]): Mistake[] {
  const flag = flags.find(({ name }) => name === token.name);
  if (!flag) return [{ what: unknownFlag(token, flags) }];
  const field = `--${flag.name}`;
  if (lacksValue(token)) return [{ field, what: `stands without a value; it takes ${flag.takes}` }];
  const twice = !flag.many && before.some(({ name }) => name === flag.name);
  return twice ? [{ field, what: 'is given twice; give it once' }] : [];
}

/** A flag that is followed by another has lost its value; one that begins with a dash is written --flag=-1. */
function lacksValue({ value, inlineValue }: OptionToken): boolean {
  return value === undefined || (!inlineValue && value.startsWith('-'));
}

function unknownFlag({ name, rawName }: OptionToken, flags: readonly Flag[]): string {
  const near = nearMiss(name, flags.map((flag) => flag.name));
  return `there is no flag ${rawName}; ${near === undefined ? '--help lists those there are' : `did you mean --${near}?`}`;
}
