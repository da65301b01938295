import type { Random } from '../../random.ts';
import { round } from '../../quantities/written.ts';
import type { Family } from '../family.ts';
import { bridgeWire, partsAt } from '../kinds.ts';
import { asPrinted } from '../number.ts';

const ROWS = ['1', '2', '3', '4', '5', '6', '7', '8'] as const;

/** Rows of R and l for one unknown X in the gap of the choice; one row does not fit the others. */
export const inconsistentRow: Family = {
  id: 'inconsistent-row',
  tags: ['metre-bridge', 'practical'],
  choices: { gap: ['right', 'left'] },
  body: (choice) => {
    const { own, other } = partsAt(choice, 'l');
    return {
      quantities: {
        R: { tex: 'R', unit: 'Ω', per: 'rows' },
        l: { tex: 'l', unit: 'cm', per: 'rows', between: ['0', 'W'] },
        X: { tex: 'X', unit: 'Ω', per: 'rows' },
        W: bridgeWire,
      },
      condition: [`X * ${other} = R * ${own}`],
      fault: (columns) => unclear(columns.get('R')!.length, columns.get('l')!.length, columns.get('X')!),
      draw: (random) => drawRows(random, choice['gap'] === 'right'),
      asks: {
        row: {
          finds: ['row'],
          algebra: 2,
          steps: [
            { id: 'X', as: `R * ${own} / ${other}` },
            { id: 'row', decide: { choices: ROWS, by: ({ rows }) => ROWS[farthest(rows('X'))] ?? ROWS[0] } },
          ],
        },
      },
    };
  },
};

/** Why the rows make no question. */
function unclear(known: number, lengths: number, X: readonly number[]): string | undefined {
  if (known !== lengths) return 'as many resistances as null points';
  if (X.length < 3 || X.length > ROWS.length) return 'three to eight rows';
  const others = X.filter((_, row) => row !== farthest(X));
  const spread = Math.max(...others) - Math.min(...others);
  const off = Math.min(...others.map((one) => Math.abs(one - X[farthest(X)]!)));
  return off > 2 * spread && off > 0.02 * Math.max(...others) ? undefined : 'one row stands out';
}

/** The row farthest, in proportion, from the middle of all. */
function farthest(all: readonly number[]): number {
  const sorted = [...all].sort((a, b) => a - b);
  const middle = (sorted[Math.floor((sorted.length - 1) / 2)]! + sorted[Math.floor(sorted.length / 2)]!) / 2;
  const off = all.map((value) => Math.abs(value - middle));
  return off.indexOf(Math.max(...off));
}

/** Four rows near one X, of which one is a tenth or more off. */
function drawRows(random: Random, right: boolean) {
  const X = random.between(3, 9);
  const wrong = random.integer(0, 3);
  const R = random.shuffle([2, 3, 4, 5, 6, 8, 10]).slice(0, 4);
  const l = R.map((ohms, row) => {
    const seen = X * (row === wrong ? random.pick([0.75, 0.85, 1.2, 1.3]) : random.between(0.99, 1.01));
    return (100 * (right ? ohms : seen)) / (ohms + seen);
  });
  return { R: R.map(asPrinted), l: l.map((cm) => round(cm, { decimals: 1 }, 'even')) };
}
