import type { Arm } from '../figures/arms.ts';
import { labelledBridge, labelledDiamond } from '../figures/labelled-circuit.ts';
import type { Figure } from './figures.ts';

/** The values that a circuit diagram shows are exact. */
const exact = (...ids: string[]): Figure['latitude'] => Object.fromEntries(ids.map((id) => [id, 0]));

const one = (...labels: string[]): Arm => ({ join: 'one', labels });
const pair = (join: 'series' | 'parallel', ...labels: string[]): Arm => ({ join, labels });

/** IEC 60617 draws a resistor as a rectangle. */
const symbol = 'rectangle' as const;

/** S with X in the gap of the choice, and the null point after. */
export const joined = (join: 'series' | 'parallel'): Figure => ({
  latitude: exact('X', 'Y', 'S', 'l2'),
  least: 2,
  draw({ label, choice }, id, words) {
    const changed = pair(join, label('X'), label('S'));
    const gaps = choice['gap'] === 'left' ? [changed, one(label('Y'))] : [one(label('Y')), changed];
    return labelledBridge({ id, symbol, gaps, length: label('l2') }, words);
  },
});

export const bothGaps: Figure = {
  latitude: exact('P', 'Q', 'p', 'q', 'l2'),
  least: 2,
  draw: ({ label }, id, words) => labelledBridge({ id, symbol, gaps: [pair('series', label('P'), label('p')), pair('series', label('Q'), label('q'))], length: label('l2') }, words),
};

/** The bridge with its cell; `beside` is what the galvanometer branch is labelled with. */
const fed = (beside?: string): Figure => ({
  latitude: exact('P', 'Q', 'l', 'E', ...(beside === undefined ? [] : [beside])),
  draw: ({ label }, id, words) => labelledBridge({ id, symbol, gaps: [one(label('P')), one(label('Q'))], length: label('l'), cell: label('E'), ...(beside !== undefined && { galvanometer: label(beside) }) }, words),
});
export const atBalance = fed();
export const offBalance = fed('G');

export const fourGaps: Figure = {
  latitude: exact('X', 'Y', 'l1'),
  draw: ({ label }, id, words) => labelledBridge({ id, symbol, gaps: [one(label('X')), one('P'), one('Q'), one(label('Y'))], length: label('l1') }, words),
};

/** The fourth arm alone, or with T in parallel or in series. */
export const diamond: Figure = {
  latitude: exact('P', 'Q', 'R', 'S', 'E'),
  draw({ label, choice, has }, id, words) {
    const join = choice['arm'] === 'shunted' ? 'parallel' : choice['arm'] === 'lengthened' ? 'series' : undefined;
    const fourth = join ? pair(join, label('S'), label('T')) : one(label('S'));
    const arms = [one(label('P')), one(label('Q')), one(label('R')), fourth] as const;
    return labelledDiamond({ id, symbol, arms, ...(has('E') && { cell: label('E') }) }, words);
  },
};

