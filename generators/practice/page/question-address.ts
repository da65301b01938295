import type { Family } from '../../questions/family.ts';
import type { Wish } from '../questions/make-question.ts';
import { type SetCode, readSetCode } from '../set-code.ts';
import { namedIn } from './named-in.ts';

/** What an address asks for: '#set-048213?ask=left&gap=right'. */
export function readAddress(hash: string, { choices = {} }: Family): { code: SetCode | undefined; wish: Wish } {
  const [, wishes = ''] = hash.split('?');
  const wished = new URLSearchParams(wishes);
  const ask = wished.get('ask');
  const choice = Object.fromEntries(Object.keys(choices).flatMap((name) => (wished.has(name) ? [[name, wished.get(name)!]] : [])));
  return { code: readSetCode(namedIn(hash)), wish: { choice, ...(ask !== null && { ask }) } };
}

/** What an address has of a set and of what is asked of it, without the '#'. */
export function addressOf(code: SetCode, { ask, choice }: Wish): string {
  const wished = new URLSearchParams({ ...(ask !== undefined && { ask }), ...choice }).toString();
  return wished === '' ? code : `${code}?${wished}`;
}
