import { type Entry, readEntry } from '../marking/entry.ts';
import { type Judged, judge, ownFigures } from '../marking/judge.ts';
import type { Explanation } from '../marking/slip.ts';
import { type Own, evaluate } from '../quantities/evaluate.ts';
import type { Program } from '../quantities/program.ts';
import { round } from '../quantities/written.ts';
import { type Line, conversionLines, formulaLine, workedLine } from '../quantities/working.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import type { Sheet } from '../sheets/sheet.ts';
import type { Place } from './places.ts';

/** What is to be said of one place. */
export type Answer =
  | { is: 'empty' }
  | { is: 'unreadable' }
  | { is: 'right'; byTheKey: boolean; extraFigures: number; wrongUnit: boolean }
  | { is: 'wrong'; explanations: Explanation[]; wrongUnit: boolean };

/** Judges every place on the student's own figures before it, as sheets are marked; a reading off a drawing within its latitude. */
export function checkAll(sheet: Sheet, program: Program, places: readonly Place[], texts: Readonly<Record<string, string>>): Answer[] {
  const entries = places.map(({ key }) => readNumber(texts[key] ?? ''));
  return judge(sheet, program, places, entries).map((judged, i) => answerOf(judged, places[i]!, sheet));
}

function answerOf(judged: Judged, place: Place, { conventions }: Sheet): Answer {
  const { entry, verdict, explanations, extraFigures, wrongUnit, value, expected } = judged;
  if (entry.is === 'unreadable') return { is: 'unreadable' };
  if (entry.is !== 'number') return { is: 'empty' };
  const near = place.kind === 'drawn' && Math.abs(Number(value) - expected) <= conventions.drawn[place.id]! * (1 + 1e-9);
  if (verdict === 'wrong' && !near) return { is: 'wrong', explanations, wrongUnit };
  return { is: 'right', byTheKey: verdict === 'right by the key', extraFigures: place.kind === 'drawn' || place.anyFigures ? 0 : extraFigures, wrongUnit };
}

/** A number in any usual form; one comma and no point is a decimal comma, and a fraction of whole numbers its decimal. */
export function readNumber(text: string): Entry {
  return readEntry(withoutFraction(text), text.includes(',') && !text.includes('.') ? 'comma' : 'point');
}

/** '58/3 Ω' as '19.33333333 Ω'. */
function withoutFraction(text: string): string {
  const [, above, below, rest = ''] = /^\s*([-−]?\s*\d+)\s*\/\s*(\d+)(?![\d.,])(.*)$/s.exec(text) ?? [];
  if (above === undefined || Number(below) === 0) return text;
  return round(Number(above.replace('−', '-').replace(/\s/g, '')) / Number(below), { figures: FRACTION_FIGURES }, 'even') + rest;
}

/** More than any answer is asked for. */
const FRACTION_FIGURES = 10;

/** The student's figures in every place but one: what that one is to be worked from. */
export function figuresBefore(places: readonly Place[], texts: Readonly<Record<string, string>>, but: string): Own {
  return ownFigures(places, places.map(({ key }) => (key === but ? { is: 'not entered' } : readNumber(texts[key] ?? ''))));
}

/** The working of a place line by line, from the formula to the value, on the student's own figures before it. */
export function workingLines(sheet: Sheet, program: Program, { id, row, kind }: Pick<Place, 'id' | 'row' | 'kind'>, own: Own, words: SpokenWords): Line[] {
  const step = program.step(id);
  if (kind === 'drawn' || (step.kind !== 'relation' && step.kind !== 'summary')) return [];
  const values = evaluate(program, sheet.readings, sheet.conventions.ties, own);
  const whole = workedLine(program, step, row, values, words);
  const conversions = step.kind === 'relation' && step.per === undefined ? conversionLines(program, step, values, words) : [];
  return [formulaLine(program, step, words), ...conversions, { ...whole, tex: whole.tex.split(' = ').slice(0, -1).join(' = ') }, whole];
}
