import type { Readings } from '../quantities/evaluate.ts';
import { round } from '../quantities/written.ts';
import type { Direction } from '../questions/direction.ts';
import { digitsOf } from '../questions/number.ts';
import { type Question, question } from '../questions/question.ts';

/** Lines on the way to an answer that a question in parts asks for too, by family; each has its words in content. */
const ASKED: Readonly<Record<string, readonly string[]>> = {
  interchange: ['l1', 'Q'],
  series: ['l1', 'X', 'Y', 'C'],
  removed: ['l1', 'X', 'Y', 'C'],
  shunt: ['l1', 'X', 'Y', 'C'],
  combination: ['T', 'C'],
  ring: ['C'],
  'two-part-wire': ['A', 'B'],
  reshaped: ['k'],
  materials: ['k'],
  temperature: ['X1', 'X2', 'k'],
  temperatures: ['k'],
  currents: ['N', 'I'],
  gradient: ['I', 'k'],
  'off-balance': ['V', 'N'],
  'open-bridge': ['B', 'J'],
  'screw-gauge': ['D', 'e'],
  wheatstone: ['C'],
};

/** What a direction asks for in parts, in the order of the working. */
export function partsOf({ family, ask: { steps, finds } }: Direction): string[] {
  const asked = [...finds, ...(ASKED[family.id] ?? [])];
  return steps.map(({ id }) => id).filter((id) => asked.includes(id));
}

/** The same direction, each part an answer of its own. */
export const inParts = (direction: Direction): Direction => ({ ...direction, ask: { ...direction.ask, finds: partsOf(direction) } });

/** Works it in parts. The key goes on from a part with the figures that it would without, so that parting moves no answer. */
export function questionInParts(direction: Direction, readings: Readings): Question {
  const whole = question(direction, readings);
  const parted = question(inParts(direction), readings);
  const answers = parted.answers.map((part) => whole.answers.find(({ id }) => id === part.id) ?? { ...part, shown: round(part.exact, digitsOf(part.exact, true), 'even') });
  return { ...parted, program: whole.program, values: whole.values, answers };
}
