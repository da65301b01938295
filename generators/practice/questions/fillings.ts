import { type Line, symbolLine } from '../../quantities/working.ts';
import type { SpokenWords } from '../../quantities/spoken.ts';
import { unit } from '../../quantities/unit.ts';
import { plainText } from '../../questions/plain-text.ts';
import { type QuestionView, type Sentence, questionView, spokenFor, symbolBlanks } from '../../questions/view.ts';
import type { FamilyWords, QuestionWords } from '../../questions/words.ts';
import { type Fillings, formulaHtml } from '../fillings.ts';
import { escape, prose } from '../prose.ts';
import type { Place } from '../places.ts';
import type { PracticeQuestion } from './make-question.ts';
import { placesOf } from './places.ts';
import type { HintWords } from './working.ts';

/** Words of a question's page that hang on the set. */
export interface AnswerWords {
  /** Blanks {quantity} and {row}. */
  row: string;
  choose: string;
  /** Blanks {low} and {high}. */
  accept: string;
  hints: HintWords;
  /** What to think of after a wrong choice, by the line that decides. */
  lookAgain: Readonly<Record<string, string>>;
}

/** All words of one family's page. */
export interface WordsOfFamily {
  family: FamilyWords;
  shared: QuestionWords;
  answers: AnswerWords;
}

/** A question in the words of its page. */
export interface Worded {
  view: QuestionView;
  spoken: SpokenWords;
  /** What is said to who made a slip, by its name. */
  slips: Readonly<Record<string, Sentence>>;
}

/** Puts a set's question into words. */
export function worded({ question, wording }: PracticeQuestion, { family: own, shared }: WordsOfFamily): Worded {
  const family = askedForChoice(own, question.direction.name);
  const blanks = symbolBlanks(question, family, shared);
  const names = question.direction.ask.steps.flatMap(({ slips = {} }) => Object.keys(slips));
  const say = (id: string): Sentence => {
    const sentence = family.slips?.[id] ?? shared.slips[id];
    if (sentence === undefined) throw new Error(`${question.direction.family.id} has no words for the slip ${id}`);
    return { sentence, blanks };
  };
  return { view: questionView(question, family, shared, wording), spoken: spokenFor(question, shared), slips: Object.fromEntries(names.map((id) => [id, say(id)])) };
}

/** Where there is one, the wording for an answer that is chosen and not written. */
function askedForChoice(family: FamilyWords, ask: string): FamilyWords {
  const choice = family.asks[`${ask} choice`];
  return choice ? { ...family, asks: { ...family.asks, [ask]: choice } } : family;
}

const html = ({ sentence, blanks }: Sentence) => prose(sentence, blanks);

/** The slots of a question's page: the question, the places for lines and answers, and the key. */
export function questionFillings(made: PracticeQuestion, { view, spoken }: Worded, words: WordsOfFamily): Fillings {
  return {
    code: made.code,
    question: `<p>${html(view.stem)} ${html(view.ask)}</p>`,
    answers: made.question.direction.ask.steps.map(({ id, decide }) => (decide ? choices(id, made, words) : block(id, made, view, spoken, words))).join(''),
    key: keyOf(view, words),
  };
}

/** A line's places, with what is said before it; a line that no answer needs is opened by the student. */
function block(id: string, { question }: PracticeQuestion, view: QuestionView, spoken: SpokenWords, { answers }: WordsOfFamily): string {
  const places = placesOf(question).filter((place) => place.id === id);
  const isHelp = places[0]!.optional === true;
  const say = view.steps.find((step) => step.id === id)!.say;
  const symbol = symbolLine(question.program, id, spoken);
  const named = ({ inTable, row }: Place) => (inTable ? prose(answers.row, { quantity: symbol, row: String(row + 1) }) : formulaHtml(symbol));
  const rows = places.map((place) => `<p class="answer">${named(place)} = ${holder(place, question.program.step(id).tex, answers)}</p>`).join('');
  return `<div class="block" data-line="${id}"${isHelp ? ' hidden' : ''}>${isHelp && say ? `<p class="small">${html(say)}</p>` : ''}${rows}<div class="said" data-said role="status"></div></div>`;
}

function holder({ key, row, inTable, unit: name }: Place, tex: string, { row: inRow }: AnswerWords): string {
  const symbol = plainText(tex);
  const label = inTable ? inRow.replace('{quantity}', symbol).replace('{row}', String(row + 1)) : symbol;
  const { tex: unitTex } = unit(name);
  const line: Line = { tex: unitTex, spoken: '' };
  return `<span class="place" data-place="${key}" data-label="${escape(label)}"></span>${unitTex ? ` <span class="unit">${formulaHtml(line)}</span>` : ''}`;
}

/** An answer in words, to be chosen. */
function choices(id: string, { question, offered }: PracticeQuestion, { family, shared, answers }: WordsOfFamily): string {
  const blanks = symbolBlanks(question, family, shared);
  const items = offered[id]!.map((value) => `<p><label><input type="radio" name="${id}" value="${escape(value)}"> ${prose(family.verdicts![id]![value]!, blanks)}</label></p>`);
  return `<fieldset data-verdict="${id}:0"><legend>${escape(answers.choose)}</legend>${items.join('')}<p role="status"><span class="mark"></span> <span data-hint="${escape(answers.lookAgain[id] ?? '')}"></span></p></fieldset>`;
}

function keyOf({ steps, answers, verdicts }: QuestionView, { answers: { accept } }: WordsOfFamily): string {
  const lines = steps
    .filter((step) => step.lines.length > 0)
    .map(({ say, lines }) => `<li>${say ? html(say) : ''}${lines.map((line) => `<span class="line">${formulaHtml(line)}</span>`).join('')}</li>`);
  const values = answers.map(({ symbol, value, fraction, low, high }) => {
    const range = low.text === high.text ? '' : ` <span class="range">(${prose(accept, { low, high })})</span>`;
    return `<p><span class="value">${formulaHtml(symbol)} = ${fraction === undefined ? '' : `${fraction} = `}${formulaHtml(value)}</span>${range}</p>`;
  });
  return [...(lines.length > 0 ? [`<ol class="solution">${lines.join('')}</ol>`] : []), ...values, ...verdicts.map(({ say }) => `<p class="value">${html(say)}</p>`)].join('');
}
