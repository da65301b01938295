import { UserMistake } from '../mistake.ts';
import type { Flags } from '../order/flags.ts';
import type { Part } from '../sheets/part.ts';

export const SHARD = {
  name: 'shard',
  many: false,
  takes: 'two numbers such as 2/5, for the second of five parts',
  meaning: 'makes one part of the pack, so that several machines can share the work',
};

/** The part that --shard asks for; undefined where it is not given. A part has a student at least. */
export function readShard(value: Flags[string], students: number): Part | undefined {
  if (value === undefined) return undefined;
  const refuse = (why: string) => new UserMistake([{ field: '--shard', what: `${JSON.stringify(value)} ${why}` }]);
  const [, number = '', of = ''] = /^(\d{1,6})\/(\d{1,6})$/.exec(String(value)) ?? [];
  const part = { number: Number(number), of: Number(of) };
  if (of === '') throw refuse(`does not fit here; it takes ${SHARD.takes}`);
  if (part.number < 1 || part.number > part.of) throw refuse(`names no part; the parts are 1/${of} to ${of}/${of}`);
  if (part.of > students) throw refuse(`makes more parts than the class has students; give ${students} at most`);
  return part;
}
