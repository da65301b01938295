import { formula } from '../quantities/formula.ts';
import { type Program, program } from '../quantities/program.ts';
import type { Given, Step } from '../quantities/step.ts';
import type { Ask, Body, Choice, Family, Quantity, Work } from './family.ts';

/** One direction of asking in one arrangement, ready to be worked. */
export interface Direction {
  family: Family;
  choice: Choice;
  name: string;
  body: Body;
  ask: Ask;
  /** Answers to three figures, or to as few as are accepted; accept ranges go by them. */
  program: Program;
  /** What a question must state, the idle included. */
  givens: readonly string[];
  /** What it uses and need not state. */
  fixed: readonly string[];
}

/** The arrangement where a setter leaves out some of it. */
export function choiceOf({ choices = {} }: Family, some: Choice = {}): Choice {
  return Object.fromEntries(Object.entries(choices).map(([name, values]) => [name, some[name] ?? values[0]!]));
}

/** Every arrangement of a family. */
export function arrangements({ choices = {} }: Family): Choice[] {
  return Object.entries(choices).reduce<Choice[]>((all, [name, values]) => all.flatMap((one) => values.map((value) => ({ ...one, [name]: value }))), [{}]);
}

const made = new Map<string, Direction[]>();

/** All directions of a family in one arrangement, in the order in which they are written. */
export function directions(family: Family, choice: Choice = choiceOf(family)): Direction[] {
  const key = JSON.stringify([family.id, choice]);
  const kept = made.get(key);
  if (kept && kept[0]?.family === family) return kept;
  const body = typeof family.body === 'function' ? family.body(choice) : family.body;
  const all = Object.entries(body.asks).map(([name, ask]) => direction(family, choice, body, name, ask));
  made.set(key, all);
  return all;
}

function direction(family: Family, choice: Choice, body: Body, name: string, ask: Ask): Direction {
  const used = [...usedBy(ask, body), ...(ask.idle ?? [])];
  const isFixed = (id: string) => quantityIn(body, id).fixed !== undefined;
  const own = Object.entries(body.quantities).filter(([id, { fixed }]) => used.includes(id) || fixed !== undefined).map(([id]) => id);
  return {
    family,
    choice,
    name,
    body,
    ask,
    program: program([...own.map((id) => given(id, quantityIn(body, id))), ...ask.steps.map((work) => step(work, body))]),
    givens: own.filter((id) => !isFixed(id)),
    fixed: own.filter(isFixed),
  };
}

function quantityIn({ quantities }: Body, id: string): Quantity {
  const found = quantities[id];
  if (!found) throw new Error(`a family asks for ${id}, which is none of its quantities`);
  return found;
}

/** The names that the lines of an ask use before they make them. */
function usedBy({ steps }: Ask, body: Body): string[] {
  const known = new Set(Object.keys(body.quantities));
  const ready = new Set<string>();
  const used = new Set<string>();
  for (const { id, as, mean, slips = {} } of steps) {
    const expressions = [...(as === undefined ? [] : [as]), ...Object.values(slips)];
    const names = [...expressions.flatMap((text) => formula(text, known).names), ...(mean === undefined ? [] : [mean])];
    for (const name of names) if (!ready.has(name)) used.add(name);
    ready.add(id);
  }
  return [...used];
}

function given(id: string, { tex, unit, per }: Quantity): Given {
  return { kind: 'given', id, tex: tex ?? id, unit, ...(per === undefined ? {} : { per }) };
}

const THREE = { figures: 3 };

function step({ id, as, mean, decide, slips = {}, si }: Work, body: Body): Step {
  if (decide) return { kind: 'verdict', id, choices: [...decide.choices], decide: decide.by };
  const { tex = id, unit, per, digits: shown = THREE, accepted: digits = shown } = quantityIn(body, id);
  const common = { id, tex, unit, digits, ...(per === undefined ? {} : { per }), slips: Object.entries(slips).map(([name, expression]) => ({ id: name, as: expression })) };
  if (mean !== undefined) return { kind: 'summary', by: 'mean', of: [mean], ...common };
  if (as === undefined) throw new Error(`${id} has neither an expression nor a mean`);
  return { kind: 'relation', as, ...common, ...(si && { si }) };
}
