import { keyedHash } from '../random.ts';

/** Letters and digits that are not taken for each other when read aloud or written by hand (no I, L, O, U). */
const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/**
 * The code of an assessed sheet, 'K7QM-2D9P': 40 bits of a keyed hash, so that it tells nothing of the
 * readings and cannot be made without the secret.
 */
export function sheetCode(secret: string, roll: string, attempt: number): string {
  const bits = BigInt(`0x${keyedHash(secret, ['sheet code', roll, attempt]).slice(0, 10)}`);
  const letters = Array.from({ length: 8 }, (_, i) => ALPHABET[Number((bits >> BigInt(5 * i)) & 31n)]);
  return `${letters.slice(0, 4).join('')}-${letters.slice(4).join('')}`;
}
