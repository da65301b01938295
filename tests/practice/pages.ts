import { loadTables, loadWords } from '../../generators/cli/content.ts';
import { loadMarkingWords } from '../../generators/cli/marking-content.ts';
import { type PracticePage, practicePage } from '../../generators/cli/site/practice-page.ts';
import { experiments } from '../../generators/experiments/index.ts';
import { type PracticeSet, makeSet } from '../../generators/practice/make-set.ts';
import { type Place, placesOf } from '../../generators/practice/places.ts';
import type { SetCode } from '../../generators/practice/set-code.ts';
import type { Program } from '../../generators/quantities/program.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { workOut } from '../../generators/sheets/worked.ts';

export const marking = loadMarkingWords('en');

const made = new Map<string, PracticePage>();

/** Experiments whose record comes filled in, for its mistakes to be found. */
export const finished = ['find-the-faults'];

/** Experiments that a student works out. */
export const practised = Object.keys(experiments).filter((id) => !finished.includes(id));

/** The page of an experiment, made once. */
export function pageOf(id: string): PracticePage {
  const page = made.get(id) ?? practicePage(experiments[id]!, loadTables(), loadWords('en', id), marking);
  made.set(id, page);
  return page;
}

/** A set with its places and the right text for each. */
export function setOf(id: string, code: SetCode): { set: PracticeSet; steps: Program; places: Place[]; right: Record<string, string> } {
  const { experiment, kit } = pageOf(id);
  const set = makeSet(experiment, kit, code);
  const steps = programOf(experiment, set.sheet);
  const places = placesOf(steps, experiment.layout, set.sheet);
  const { values } = workOut(set.sheet, steps);
  return { set, steps, places, right: Object.fromEntries(places.map(({ key, id: step, row }) => [key, values.written.get(step)![row]!])) };
}
