import { type Blanks, prose } from '../../practice/prose.ts';
import { type AnswerWords, type WordsOfFamily, questionFillings, worded } from '../../practice/questions/fillings.ts';
import { makeQuestion } from '../../practice/questions/make-question.ts';
import { placesOf } from '../../practice/questions/places.ts';
import { type Fillings, formulaHtml } from '../../practice/fillings.ts';
import { listed } from '../../practice/questions/working.ts';
import { setCode } from '../../practice/set-code.ts';
import { type Direction, arrangements, directions } from '../../questions/direction.ts';
import type { Family } from '../../questions/family.ts';
import { plainText } from '../../questions/plain-text.ts';
import { difficulty } from '../../questions/question.ts';
import { fill } from '../../quantities/spoken.ts';
import type { FamilyWords, QuestionWords } from '../../questions/words.ts';
import { DEFAULT_SET } from './practice-page.ts';

/** The words of the question pages, as content/LANGUAGE/site.yaml holds them. */
export interface QuestionSiteWords extends AnswerWords {
  /** Blanks {finds} and {givens}. */
  direction: string;
  /** What a line that decides finds. */
  inWords: Record<string, string>;
  /** What the lists of arrangements are called, and their values where these are no words of the language. */
  arrangements: Record<string, { label: string; values?: Record<string, string> }>;
  levels: Record<'1' | '2' | '3', string>;
  start: string;
  progress: string;
  done: string;
}

/** A value of a list with what it is called. */
interface Choosable {
  value: string;
  label: string;
}

/** Everything of one family's page. */
export interface QuestionPage {
  family: Family;
  words: FamilyWords;
  /** The default set, as it stands without scripts. */
  slots: Fillings;
  sample: string;
  /** What can be picked. */
  asks: (Choosable & { html: string })[];
  arrangements: { name: string; label: string; values: Choosable[] }[];
  /** Some answer is a number, not a choice alone. */
  hasNumbers: boolean;
  /** The first of its topics, and the levels of difficulty that its directions have. */
  topic: string;
  levels: string[];
  /** Quantities that can be negative, and those that are written with a power of ten. */
  signed: string[];
  scientific: string[];
}

export function questionPage(family: Family, words: FamilyWords, shared: QuestionWords, site: QuestionSiteWords): QuestionPage {
  const first = makeQuestion(family, DEFAULT_SET);
  const ofFamily: WordsOfFamily = { family: words, shared, answers: site };
  const inWords = worded(first, ofFamily);
  const all = directionsOf(family);
  const lists = Object.entries(family.choices ?? {}).flatMap(([name, values]) => arrangementInWords(name, values, site));
  const asks = [...new Map(all.map((one) => [one.name, directionInWords(one, site)])).values()];
  const html = ({ sentence, blanks }: { sentence: string; blanks: Blanks }) => prose(sentence, blanks);
  return {
    family,
    words,
    slots: questionFillings(first, inWords, ofFamily),
    sample: `${html(inWords.view.stem)} ${html(inWords.view.ask)}`,
    asks: asks.map((ask) => withArrangement(ask, asks, all, lists)),
    arrangements: lists,
    hasNumbers: all.some(({ ask, body }) => ask.finds.some((id) => body.quantities[id] !== undefined)),
    topic: family.tags[0]!,
    levels: [...new Set(all.map(({ ask }) => difficulty({ ask }).level))].sort().map((level) => site.levels[level]),
    signed: signedIn(all),
    scientific: scientificIn(family, all),
  };
}

/** All directions in all arrangements. */
export const directionsOf = (family: Family): Direction[] => arrangements(family).flatMap((choice) => directions(family, choice));

/** 'Q and l₂ from P and l₁', for a list and for a page. */
function directionInWords({ name, ask, givens, body, program }: Direction, { direction, inWords, hints }: QuestionSiteWords): QuestionPage['asks'][number] {
  const tex = (id: string) => body.quantities[id]?.tex ?? program.step(id).tex;
  const say = (symbol: (tex: string) => string) => {
    const list = (ids: readonly string[]) => listed(ids.map((id) => inWords[id] ?? symbol(tex(id))), hints.list);
    return fill(givens.length > 0 ? direction : '{finds}', { finds: list(ask.finds), givens: list(givens) });
  };
  return { value: name, label: say(plainText), html: say((symbol) => formulaHtml({ tex: symbol, spoken: '' })) };
}

/** What is asked alike in several arrangements, and not in all, is told with those: 'T from P and Q (with a resistor in parallel)'. */
function withArrangement(ask: QuestionPage['asks'][number], asks: QuestionPage['asks'], all: readonly Direction[], lists: QuestionPage['arrangements']): QuestionPage['asks'][number] {
  if (asks.filter(({ label }) => label === ask.label).length === 1) return ask;
  const found = all.filter(({ name }) => name === ask.value);
  const only = lists.flatMap(({ name, values }) => {
    const there = values.filter(({ value }) => found.some(({ choice }) => choice[name] === value));
    return there.length < values.length ? there.map(({ label }) => label) : [];
  });
  const told = only.length > 0 ? ` (${only.join(', ')})` : '';
  return { ...ask, label: ask.label + told, html: ask.html + told };
}

/** A list to pick an arrangement from; one that content has no name for is left to the set. */
function arrangementInWords(name: string, values: readonly string[], { arrangements: words }: QuestionSiteWords): QuestionPage['arrangements'] {
  const own = words[name];
  return own ? [{ name, label: own.label, values: values.map((value) => ({ value, label: own.values?.[value] ?? value })) }] : [];
}

/** Quantities whose lower bound lies below zero. */
function signedIn(all: readonly Direction[]): string[] {
  const found = new Set<string>();
  for (const { ask, body } of all) {
    for (const { id } of ask.steps) {
      const { between: [low] = ['0'] } = body.quantities[id] ?? {};
      if (low === undefined || low.startsWith('-')) found.add(id);
    }
  }
  return [...found];
}

/** Sets that are looked at for powers of ten, in every direction. */
const SAMPLES = 2;

function scientificIn(family: Family, all: readonly Direction[]): string[] {
  const found = new Set<string>();
  for (const { name, choice } of all) {
    for (let set = 0; set < SAMPLES; set++) {
      const { question } = makeQuestion(family, setCode(set), { ask: name, choice });
      for (const { id, row } of placesOf(question)) if (question.values.written.get(id)![row]!.includes('e')) found.add(id);
    }
  }
  return [...found];
}
