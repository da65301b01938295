import type { Interval, Written } from '../quantities/step.ts';
import { round } from '../quantities/written.ts';
import type { Direction } from '../questions/direction.ts';
import type { Quantity } from '../questions/family.ts';
import { type Question, question } from '../questions/question.ts';
import type { Made } from './item.ts';

/** What quantities of a family are in a case, in place of what their family says. */
export type Restated = Readonly<Record<string, Partial<Pick<Quantity, 'tex' | 'values' | 'printed'>>>>;

/** A value that an earlier part of the case has under the same symbol. */
interface Found {
  written: Written;
  /** What is accepted for it where it was asked for. */
  accept?: Interval;
}

/** A direction as a part of a case, and which of its givens the candidate has found in earlier parts. */
export interface InCase {
  direction: Direction;
  carried: Readonly<Record<string, Interval>>;
  /** Whether any of its numbers is settled already. */
  isBound: boolean;
}

/** Puts a direction into a case: its own symbols, and the values that these have had already. */
export function inCase(plain: Direction, restated: Restated, earlier: readonly Made[]): InCase {
  const known = knownSymbols(earlier);
  const given = [...plain.givens, ...plain.fixed];
  const carried: Record<string, Interval> = {};
  let isBound = false;
  const quantities = Object.entries(plain.body.quantities).map(([id, quantity]): [string, Quantity] => {
    const own = { ...quantity, ...restated[id] };
    const before = own.tex !== undefined && given.includes(id) ? known.get(own.tex) : undefined;
    if (before) isBound = true;
    if (before?.accept) carried[id] = before.accept;
    return [id, before ? { ...own, values: [before.written] } : own];
  });
  const { draw: _, ...body } = plain.body;
  const { drawnBy: __, ...ask } = plain.ask;
  const loose = quantities.map(([id, quantity]): [string, Quantity] => [id, ask.finds.includes(id) ? { ...quantity, neat: 'any' } : quantity]);
  const direction = isBound ? { ...plain, ask, body: { ...body, quantities: Object.fromEntries(loose) } } : { ...plain, body: { ...plain.body, quantities: Object.fromEntries(quantities) } };
  return { direction, carried, isBound };
}

function knownSymbols(earlier: readonly Made[]): Map<string, Found> {
  const known = new Map<string, Found>();
  for (const { question: { direction, readings, answers }, accept } of earlier) {
    const put = (id: string, found: Found) => {
      const { tex } = direction.body.quantities[id]!;
      if (tex !== undefined && !known.has(tex)) known.set(tex, found);
    };
    for (const id of [...direction.givens, ...direction.fixed]) if (typeof readings[id] === 'string') put(id, { written: readings[id] });
    answers.forEach(({ id, shown }, i) => put(id, { written: shown, accept: accept[i]! }));
  }
  return known;
}

/** The accept ranges of a part, for every value that is accepted of what it goes on from. */
export function acceptedOn({ direction, readings }: Question, carried: InCase['carried'], own: readonly Interval[]): Interval[] {
  const corners = Object.entries(carried).reduce<Record<string, Written>[]>((all, [id, ends]) => all.flatMap((one) => ends.map((end) => ({ ...one, [id]: round(end, { figures: 6 }, 'even') }))), [{}]);
  const others = corners.map((corner) => question(direction, { ...readings, ...corner }).answers);
  return own.map(([low, high], i) => [Math.min(low, ...others.map((answers) => answers[i]!.accept[0])), Math.max(high, ...others.map((answers) => answers[i]!.accept[1]))]);
}
