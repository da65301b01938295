import type { TypingSheet } from './data.ts';

const plain = (text: string) => text.normalize('NFKC').toLowerCase().replace(/[\s-]/g, '');

/** The next sheet after this place, round to the first, of that roll; else with a code that begins so; else with that in its name. */
export function findSheet(sheets: readonly TypingSheet[], after: number, text: string): number | undefined {
  const wanted = plain(text);
  if (wanted === '') return undefined;
  const order = sheets.map((_, i) => (after + 1 + i) % sheets.length);
  const ways: ((sheet: TypingSheet) => boolean)[] = [({ roll }) => plain(roll) === wanted, ({ code }) => plain(code).startsWith(wanted), ({ name }) => plain(name).includes(wanted)];
  for (const fits of ways) {
    const found = order.find((place) => fits(sheets[place]!));
    if (found !== undefined) return found;
  }
  return undefined;
}
