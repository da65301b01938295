import type { Column } from '../../generators/marking/columns.ts';
import type { Random } from '../../generators/random.ts';

/** Ways in which an answer is typed that is no plain number with its unit; how often each is no source's, but often enough to be met. */
const WAYS: ((text: string, unit: string, random: Random) => string)[] = [
  () => '',
  () => '-',
  () => 'x',
  (_, __, random) => random.pick(['two', '1,2.3', '2.6 3.1', '4.97e-7 Ω k', '12 34', '1e99']),
  (text) => text.split(' ')[0]!,
  (text) => `${text.split(' ')[0]!} ${text.includes('Ω') ? 'mm' : 'ohm'}`,
  (text) => text.replace(/^(-?)(\d)/, (_, sign: string, digit: string) => (sign === '' ? `-${digit}` : digit)),
  (text, unit) => `${Number(text.split(' ')[0]) * 10} ${unit}`,
  (text) => text.replace(/e(-?\d+)/, (_, power: string) => `×10^${power}`).replace('-', '−'),
];

/** Texts as they may be typed: most as they are, some blank, struck out, unreadable, without a unit, with another. */
export function messy(texts: readonly string[], columns: readonly Column[], random: Random): string[] {
  return texts.map((text, i) => (text === '-' || random.uniform() < 0.7 ? text : random.pick(WAYS)(text, columns[i]!.unit, random).trim()));
}
