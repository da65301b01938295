import type { Experiment } from '../experiments/experiment.ts';
import type { Decided } from '../experiments/layout.ts';
import type { SpokenWords } from '../quantities/spoken.ts';
import { type Line, formulaLine } from '../quantities/working.ts';
import { programOf } from './issue.ts';
import type { Sheet } from './sheet.ts';

/** A sheet's form, with what is not known before the student has read it left open. */
export interface OpenForm {
  form: Record<string, string>;
  /** The formula in each case of an open choice, by the choice. */
  cases: Record<string, Record<string, Line>>;
  /** Quantities whose formula may not stand alone. */
  undecided: string[];
}

/** Nothing may be said of a choice as long as the reading behind it is not printed. */
export function openForm(experiment: Experiment, { form }: Pick<Sheet, 'form'>, isPrinted: (id: string) => boolean, words: SpokenWords): OpenForm {
  const open = (experiment.layout.decided ?? []).filter(({ by }) => !isPrinted(by));
  return {
    form: { ...form, ...Object.fromEntries(open.map(({ choice }) => [choice, 'open'])) },
    cases: Object.fromEntries(open.map((decided) => [decided.choice, casesOf(experiment, form, decided, words)])),
    undecided: open.map(({ formula }) => formula),
  };
}

function casesOf(experiment: Experiment, form: Sheet['form'], { choice, formula, cases }: Decided, words: SpokenWords): Record<string, Line> {
  return Object.fromEntries(
    cases.map((one) => {
      const program = programOf(experiment, { form: { ...form, [choice]: one } });
      const step = program.step(formula);
      if (step.kind !== 'relation') throw new Error(`${formula} is no relation`);
      return [one, formulaLine(program, step, words)];
    }),
  );
}
