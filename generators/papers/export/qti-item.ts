import type { PartData } from './data.ts';
import { plain } from './plain.ts';
import { document, element, escapeXml } from './xml.ts';

/*
 * Elements, attributes and their order: the examples that 1EdTech publishes with Question and Test Interoperability 3.0
 * (repository 1EdTech/qti-examples): Example01-modalFeedback, BG007, BG011, template_digging, essay, rubric_block,
 * TextEntrynumeric_2040297025, SineRule-002-maths. A test holds every file to them.
 */

/** Namespace and schema of items and tests: 1EdTech QTI 3.0.1, ASI XSD binding. */
export const ASI = {
  xmlns: 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0',
  'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
  'xsi:schemaLocation': 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0 https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0p1_v1p0.xsd',
} as const;

export interface QtiItem {
  identifier: string;
  title: string;
  language: string;
  story?: string;
  part: PartData;
  /** Path of the drawing from the item's file. */
  figure?: string;
}

/** Words that stand in items. */
export interface QtiWords {
  correct: string;
  incorrect: string;
  /** How a power of ten is typed. */
  tens: string;
}

/** One part of a question as an assessment item: options, numbers with their tolerance, or words for a reader to mark. */
export function qtiItem(item: QtiItem, words: QtiWords): string {
  const { identifier, title, language, part } = item;
  const { declarations, body, processing, feedback } = part.options.length > 0 ? choice(part, words) : part.answers.length > 0 && part.words.length === 0 ? numbers(part, words) : inWords(part);
  const head = { ...ASI, identifier, title, adaptive: 'false', 'time-dependent': 'false', 'xml:lang': language };
  return document(element('qti-assessment-item', head, ...declarations, element('qti-item-body', {}, ...told(item), ...body), ...processing, ...feedback));
}

interface Pieces {
  declarations: string[];
  body: string[];
  processing: string[];
  feedback: string[];
}

const paragraph = (text: string, ...more: string[]) => element('p', {}, escapeXml(text), ...more);

function told({ story, part, figure }: QtiItem): string[] {
  return [...(story === undefined ? [] : [paragraph(story)]), paragraph(part.text), ...(figure === undefined ? [] : [element('div', {}, element('img', { src: figure, alt: part.figure ?? '' }))])];
}

const response = (identifier: string, type: string, ...values: string[]) =>
  element('qti-response-declaration', { identifier, cardinality: 'single', 'base-type': type }, ...(values.length > 0 ? [element('qti-correct-response', {}, ...values.map((value) => element('qti-value', {}, escapeXml(value))))] : []));

const outcome = (identifier: string, type: string, value?: number, more: Record<string, string> = {}) =>
  element('qti-outcome-declaration', { identifier, cardinality: 'single', 'base-type': type, ...more }, ...(value === undefined ? [] : [element('qti-default-value', {}, element('qti-value', {}, String(value)))]));

/** What may be had, and what was. */
export const scored = (marks: number) => [outcome('SCORE', 'float', 0), outcome('MAXSCORE', 'float', marks)];
const base = (type: string, value: string) => element('qti-base-value', { 'base-type': type }, value);
const variable = (identifier: string) => element('qti-variable', { identifier });
const set = (identifier: string, value: string) => element('qti-set-outcome-value', { identifier }, value);
const say = (identifier: string) => set('FEEDBACK', base('identifier', identifier));
const when = (...inside: string[]) => element('qti-response-if', {}, ...inside);
const otherwise = (...inside: string[]) => element('qti-response-else', {}, ...inside);
const condition = (...inside: string[]) => element('qti-response-condition', {}, ...inside);
const feedbackOf = (identifier: string, text: string) => element('qti-modal-feedback', { 'outcome-identifier': 'FEEDBACK', 'show-hide': 'show', identifier }, element('qti-content-body', {}, paragraph(text)));

function choice({ options, marks }: PartData, words: QtiWords): Pieces {
  const right = options.find((option) => option.right)!;
  const wrong = options.filter((option) => !option.right);
  const isAnswered = element('qti-not', {}, element('qti-is-null', {}, variable('RESPONSE')));
  const isRight = element('qti-match', {}, variable('RESPONSE'), element('qti-correct', { identifier: 'RESPONSE' }));
  return {
    declarations: [response('RESPONSE', 'identifier', right.letter), ...scored(marks), outcome('FEEDBACK', 'identifier')],
    body: [
      element(
        'qti-choice-interaction',
        { 'response-identifier': 'RESPONSE', shuffle: 'false', 'max-choices': '1' },
        ...options.map(({ letter, text }) => element('qti-simple-choice', { identifier: letter }, escapeXml(text))),
      ),
    ],
    processing: [element('qti-response-processing', {}, condition(when(isRight, set('SCORE', variable('MAXSCORE'))), otherwise(set('SCORE', base('float', '0')))), condition(when(isAnswered, set('FEEDBACK', variable('RESPONSE')))))],
    feedback: [feedbackOf(right.letter, words.correct), ...wrong.map(({ letter, feedback = words.incorrect }) => feedbackOf(letter, feedback))],
  };
}

/** Beside the range itself, so that what binary arithmetic and six figures leave of an end does not shut it out. */
const MARGIN = 1e-5;

/** A value within the accept range, ends included: so far either way from its middle, which no order of two tolerances can turn round. */
function within(identifier: string, from: number, to: number): string {
  const middle = plain((from + to) / 2);
  const reach = Math.max(Number(middle) - from, to - Number(middle)) + MARGIN * Math.max(Math.abs(from), Math.abs(to));
  return element('qti-equal', { 'tolerance-mode': 'absolute', tolerance: plain(reach) }, variable(identifier), base('float', middle));
}

/** Whether the answer is written with a power of ten, which a keyboard writes in its own way. */
const hasPower = ({ shown }: PartData['answers'][number]) => shown.includes(' × 10');

/** A value that is a slip's to half a per cent, which keeps two slips apart. */
const SLIP = 0.005;

function numbers({ answers, slips, marks }: PartData, words: QtiWords): Pieces {
  const ids = answers.map((_, i) => (answers.length === 1 ? 'RESPONSE' : `RESPONSE_${i + 1}`));
  const each = answers.map(({ marks: own, from, to }, i) => condition(when(within(ids[i]!, from, to), set('SCORE', element('qti-sum', {}, variable('SCORE'), base('float', String(own)))))));
  const allRight = element('qti-and', {}, ...answers.map(({ from, to }, i) => within(ids[i]!, from, to)));
  const told = slips.map(({ values, feedback }, i) => ({ feedback, id: `slip_${i + 1}`, is: element('qti-and', {}, ...answers.map((answer, k) => slipped(ids[k]!, answer, values[answer.symbol]))) }));
  const elseIf = told.map(({ id, is }) => element('qti-response-else-if', {}, is, say(id)));
  return {
    declarations: [...answers.map(({ value }, i) => response(ids[i]!, 'float', plain(value))), ...scored(marks), outcome('FEEDBACK', 'identifier')],
    body: [
      ...answers.map(({ label, symbol, unit }, i) => paragraph(`${label === undefined ? '' : `${label} `}${symbol} = `, element('qti-text-entry-interaction', { 'response-identifier': ids[i]!, 'expected-length': '12' }), escapeXml(` ${unit}`))),
      ...(answers.some(hasPower) ? [paragraph(words.tens)] : []),
    ],
    processing: [element('qti-response-processing', {}, ...each, condition(when(allRight, say('correct')), ...elseIf, otherwise(say('incorrect'))))],
    feedback: [feedbackOf('correct', words.correct), ...told.map(({ id, feedback }) => feedbackOf(id, feedback)), feedbackOf('incorrect', words.incorrect)],
  };
}

/** What a slip makes of an answer; one that it leaves right is as right as any. */
function slipped(identifier: string, { from, to }: PartData['answers'][number], value: number | undefined): string {
  if (value === undefined || (value >= from && value <= to)) return within(identifier, from, to);
  return within(identifier, value - SLIP * Math.abs(value), value + SLIP * Math.abs(value));
}

/** A sentence, which a person marks; the answer is for that person's eyes. */
function inWords({ marks, answers, words }: PartData): Pieces {
  const key = [...answers.map(({ symbol, shown }) => `${symbol} = ${shown}`), ...words].map((line) => paragraph(line));
  return {
    declarations: [response('RESPONSE', 'string'), outcome('SCORE', 'float', undefined, { 'normal-maximum': String(marks), 'external-scored': 'human' })],
    body: [element('qti-extended-text-interaction', { 'response-identifier': 'RESPONSE' }), element('qti-rubric-block', { view: 'scorer', use: 'scoring' }, element('qti-content-body', {}, ...key))],
    processing: [],
    feedback: [],
  };
}
