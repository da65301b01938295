import { writtenInto } from '../quantities/evaluate.ts';
import { Hold, print } from '../quantities/print.ts';
import type { Relation } from '../quantities/step.ts';
import { type SpokenWords, fill, spoken } from '../quantities/spoken.ts';
import { texNumber, texSubstituted } from '../quantities/tex.ts';
import { unit } from '../quantities/unit.ts';
import type { Line } from '../quantities/working.ts';
import type { Question } from '../questions/question.ts';

/** What is right for a candidate who goes on from values of their own. */
export interface FollowThrough {
  /** The quantities that their own values are taken of. */
  from: string[];
  /** Each line with the numbers put in, but for what is carried forward. */
  lines: Line[];
  /** Whether a carried quantity goes in in another unit than its answer has. */
  inSi: boolean;
}

/** Of these lines of working, those that hang on earlier quantities; nothing where none does. */
export function followThrough(question: Question, lines: readonly string[], earlier: readonly string[], words: SpokenWords): FollowThrough | undefined {
  const { program } = question;
  const carried = new Set(earlier);
  const found: FollowThrough = { from: [], lines: [], inSi: false };
  for (const id of lines) {
    const step = program.step(id);
    const names = step.kind === 'relation' ? program.compiled(id).as.names : step.kind === 'summary' ? step.of : [];
    const own = names.filter((name) => carried.has(name));
    if (own.length === 0) continue;
    carried.add(id);
    found.from.push(...own.filter((name) => earlier.includes(name) && !found.from.includes(name)));
    if (step.kind !== 'relation') continue;
    found.lines.push(openLine(question, step, carried, words));
    found.inSi ||= step.si === true && own.some((name) => unit(program.step(name).unit).tens !== 0);
  }
  return found.from.length === 0 ? undefined : found;
}

/** A line of working with numbers put in where they are known and symbols where they are carried; a row of a table is all symbols. */
function openLine({ program, values }: Question, step: Relation, carried: ReadonlySet<string>, words: SpokenWords): Line {
  const isOpen = (name: string) => step.per !== undefined || carried.has(name);
  const value = (name: string) => writtenInto(program, step, name, values.written.get(name)![0]!);
  const said = (name: string) => words.symbols[name] ?? name;
  const { expression } = program.compiled(step.id).as;
  const heard = spoken(words, said);
  return {
    tex: `${step.tex} = ${print(expression, { ...texSubstituted(value), name: (name) => (isOpen(name) ? { text: program.step(name).tex, hold: Hold.atom } : texNumber(value(name))) })}`,
    spoken: fill(words.equals, { left: said(step.id), right: print(expression, { ...heard, name: (name) => (isOpen(name) ? heard.name(name) : heard.number(value(name))) }) }),
  };
}
