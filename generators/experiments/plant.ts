import type { Latitude } from '../quantities/accept.ts';
import { type Readings, at, evaluate, formulaValue } from '../quantities/evaluate.ts';
import { type Fault, type Finished, faultsIn } from '../quantities/finished.ts';
import type { Program } from '../quantities/program.ts';
import type { Computed, Written } from '../quantities/step.ts';
import { round } from '../quantities/written.ts';
import type { Random } from '../random.ts';

/** A mistake to be planted: at a step, in one of its rows if it has several. */
export type Plantable = Pick<Fault, 'id' | 'slip'>;

/** Four-figure tables allowed, which is where a slip is hardest to tell from honest rounding. */
const WIDEST: Latitude = { tables: true, drawn: {} };

/** A record in which an imaginary student made these mistakes and went on from each; undefined where one of them cannot be made, or would not show. */
export function plant(program: Program, readings: Readings, planted: readonly Plantable[], random: Random): Finished | undefined {
  const finished: Finished = {};
  const made: Fault[] = [];
  for (const step of program.steps) {
    if (step.kind !== 'relation' && step.kind !== 'summary') continue;
    const written = evaluate(program, readings, 'even', finished).written.get(step.id)!;
    for (const { slip } of planted.filter(({ id }) => id === step.id)) {
      const row = random.integer(0, written.length - 1);
      const instead = mistaken(program, readings, { id: step.id, row, slip }, finished, random);
      if (instead === undefined) return undefined;
      written[row] = instead;
      made.push({ id: step.id, row, slip });
    }
    finished[step.id] = written;
  }
  return same(faultsIn(program, readings, WIDEST, finished), made) ? finished : undefined;
}

function mistaken(program: Program, readings: Readings, { id, row, slip }: Fault, finished: Finished, random: Random): Written | undefined {
  const step = program.step(id) as Computed;
  const { written, exact } = evaluate(program, readings, 'even', finished);
  if (slip === 'arithmetic') return round(Number(written.get(id)![row]) + random.pick(BORROWED), step.digits, 'even');
  if (slip === 'too many digits') return allFigures(exact.get(id)![row]!);
  const formula = program.compiled(id).slips.find((each) => each.id === slip)?.as;
  // A zero error above zero, say, cannot be read forwards by mistake.
  if (step.kind !== 'relation' || !formula) return undefined;
  const value = formulaValue(program, step, formula, (name) => Number(at(written.get(name)!, row)));
  // Earlier mistakes may have left nothing to divide by.
  return Number.isFinite(value) ? round(value, step.digits, 'even') : undefined;
}

/** A one or a ten too much or too little, as in a subtraction with a borrow. */
const BORROWED = [1, -1, 10, -10];

/** As a calculator shows them; common practice, no source. */
const ALL_FIGURES = 8;

/** A value that ends sooner has no more digits to show. */
function allFigures(value: number): Written | undefined {
  const written = round(value, { figures: ALL_FIGURES }, 'even');
  return /0(e|$)/.test(written) ? undefined : written;
}

function same(one: readonly Fault[], other: readonly Fault[]): boolean {
  return one.length === other.length && one.every(({ id, row, slip }, i) => id === other[i]!.id && row === other[i]!.row && slip === other[i]!.slip);
}
