import { type Direction, arrangements, directions } from '../questions/direction.ts';
import { drawGivens } from '../questions/draw.ts';
import type { Choice, Family, Quantity } from '../questions/family.ts';
import { families as all } from '../questions/index.ts';
import { question } from '../questions/question.ts';
import { quantityText } from '../questions/refusal.ts';
import { questionText } from '../questions/text.ts';
import { questionView } from '../questions/view.ts';
import { streams } from '../random.ts';
import { readCommandLine } from './command-line.ts';
import type { Command } from './command.ts';
import { loadFamilyWords, loadQuestionWords } from './question-words.ts';

export const families: Command = {
  usage: 'families',
  about: 'all families of questions: id, arrangements, quantities, what is found from what, and a sample of each',
  help: () => `slidewire ${families.usage}\n    ${families.about}`,
  async run(args) {
    readCommandLine(args, []);
    const shared = loadQuestionWords('en');
    for (const family of all) {
      const words = loadFamilyWords('en', family.id);
      const [first] = directions(family);
      const sample = question(first!, drawGivens(first!, streams('sample').of(family.id)));
      const lines = [...choices(family), ...quantities(family), ...starts(family), questionText(questionView(sample, words, shared))];
      process.stdout.write(`${family.id}  ${words.title}\n${lines.map((line) => `    ${line}\n`).join('')}`);
    }
  },
};

const choices = (family: Family) => Object.entries(family.choices ?? {}).map(([name, values]) => `${name}=${values.join('|')}`);

/** 'P in Ω, Q in Ω, l in cm; W is 100 cm unless given' */
function quantities(family: Family): string[] {
  const every = arrangements(family).flatMap((choice) => directions(family, choice));
  const known = new Map(every.flatMap(({ body }) => Object.entries(body.quantities)));
  const used = new Set(every.flatMap(({ givens, ask }) => [...givens, ...ask.finds.filter((id) => known.has(id))]));
  const free = [...known].flatMap(([id, quantity]) => (used.has(id) && quantity.fixed === undefined ? [named(id, quantity)] : []));
  const fixed = [...known].flatMap(([id, quantity]) => (quantity.fixed === undefined || quantity.count !== undefined ? [] : [`${id} is ${quantityText(Number(quantity.fixed), quantity)}`]));
  return free.length === 0 ? [] : [`${free.join(', ')}${fixed.length === 0 ? '' : `; ${fixed.join(', ')} unless given`}`];
}

const named = (id: string, { unit, per }: Quantity) => `${id}${unit === '' ? '' : ` in ${unit}`}${per === undefined ? '' : ` row by row (${id}=1,2,3)`}`;

/** 'P l → Q; Q l → P', for each arrangement that has its own. */
function starts(family: Family): string[] {
  const groups = new Map<string, Choice[]>();
  for (const choice of arrangements(family)) {
    const text = directions(family, choice).map(start).join('; ');
    groups.set(text, [...(groups.get(text) ?? []), choice]);
  }
  return [...groups].map(([text, own]) => (groups.size === 1 ? text : `${valuesOf(family, own)}: ${text}`));
}

const start = ({ givens, ask }: Direction) => `${givens.join(' ')} → ${ask.finds.join(' ')}`.trim();

/** 'change=length', of the choices that tell some arrangements from the rest. */
function valuesOf({ choices: every = {} }: Family, own: readonly Choice[]): string {
  return Object.entries(every)
    .map(([name, values]) => [name, values.filter((value) => own.some((choice) => choice[name] === value)), values.length] as const)
    .flatMap(([name, values, count]) => (values.length < count ? [`${name}=${values.join('|')}`] : []))
    .join(' ');
}
