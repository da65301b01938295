import { keyedHash } from '../random.ts';

/** Sixteen hex digits: enough to notice what was changed, and no burden in a file of two thousand entries. */
const DIGITS = 16;

/**
 * The seal of a ledger's entry, by which a later change is noticed; the same however its keys are ordered. It guards
 * against accidents alone: whoever has the ledger has the secret, and could seal anything.
 */
export function sealOf(secret: string, entry: object): string {
  const { seal: _, ...sealed } = entry as { seal?: string };
  return keyedHash(secret, ['seal', JSON.stringify(sealed, sortedKeys)]).slice(0, DIGITS);
}

function sortedKeys(_: string, value: unknown): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
}
