import type { FigureWords } from '../figures/words.ts';
import { quantityLine } from '../quantities/working.ts';
import { round, roundOutward } from '../quantities/written.ts';
import { plainText } from '../questions/plain-text.ts';
import { type QuestionView, type Sentence, type Shown, questionView, sentenceText } from '../questions/view.ts';
import type { FamilyWords, QuestionWords } from '../questions/words.ts';
import { type AnswerLine, type AskedView, type FollowView, type PartWords, answerLine, askedViews, followView, linesFor, togetherAsked } from './asked-view.ts';
import { type StoryWords, tellCase } from './case-view.ts';
import { drawFigure, latitudeOf, readsOff } from './figures.ts';
import type { Form } from './forms.ts';
import type { Made } from './item.ts';
import type { Version } from './paper.ts';

/** An option under its letter: a value, or a sentence. */
export interface OptionView {
  letter: string;
  isRight: boolean;
  value?: Shown;
  say?: Sentence;
  /** What is said to who chose it. */
  feedback?: Sentence;
}

/** A drawing, the symbols of what is read off it, and the readings with what is allowed either way. */
export interface FigureView {
  svg: string;
  seen: string;
  reads: Shown[];
  readings: { value: Shown; slack: string }[];
}

export interface PartView {
  /** '(a)' in a case. */
  label: string;
  form: Made['form'];
  marks: number;
  view: QuestionView;
  options: OptionView[];
  /** What is to be found, part by part, where the question has several. */
  asked: AskedView[];
  /** Lines of answer space, and where the answers are written below them. */
  space: number;
  lines: AnswerLine[];
  figure?: FigureView;
  /** What a case tells before its first part. */
  opening?: Sentence;
  /** What follows through from earlier parts of a case. */
  follow?: FollowView;
}

export interface ItemView {
  number: number;
  form: Form;
  topic: string;
  level: string;
  marks: number;
  story?: string;
  parts: PartView[];
}

/** A version as templates and exports show it. */
export interface VersionView {
  name: string;
  roll?: string;
  items: ItemView[];
}

/** The content that a paper speaks with. */
export interface PaperContent {
  wordsOf(family: string): FamilyWords;
  shared: QuestionWords;
  figures: FigureWords;
  stories: Readonly<Record<string, StoryWords>>;
  parts: PartWords;
}

const LETTERS = 'ABCDEFGH';
const PARTS = 'abcdefgh';

/** All questions of a version, numbered; `place` is that of the version among all, from 0. */
export function versionView({ name, roll, items }: Version, place: number, content: PaperContent): VersionView {
  return {
    name,
    ...(roll !== undefined && { roll }),
    items: items.map(({ entry: { form, topic, level, marks, story }, parts }, i) => ({
      number: i + 1,
      form,
      topic,
      level,
      marks,
      ...told(story, parts.map((part, p) => ({ made: part, view: partView(part, parts.length > 1 ? `(${PARTS[p]})` : '', `${place + 1}-${i + 1}-${p + 1}`, content) })), content),
    })),
  };
}

/** The parts of a question; those of a case in its words. */
function told(story: string | undefined, parts: readonly { made: Made; view: PartView }[], { stories }: PaperContent): Pick<ItemView, 'story' | 'parts'> {
  if (story === undefined) return { parts: parts.map(({ view }) => view) };
  const words = tellCase(stories[story] ?? missing(story), parts.map(({ made, view }) => ({ made, view: view.view })));
  const empty = (sentence: Sentence): Sentence => ({ ...sentence, sentence: '' });
  return {
    story: sentenceText(words.story),
    parts: parts.map(({ view }, p) => ({ ...view, view: { ...view.view, stem: words.parts[p]!, ask: empty(words.story) }, ...(p === 0 && { opening: words.story }) })),
  };
}

function missing(story: string): never {
  throw new Error(`the content of papers has no story "${story}"`);
}

function partView(made: Made, label: string, id: string, content: PaperContent): PartView {
  const { question, form, marks, wording } = made;
  const words = forForm(content.wordsOf(question.direction.family.id), made);
  const plain = questionView(question, words, content.shared, { stem: wording, ask: wording });
  const asked = form === 'structured' ? askedViews(made, plain, content.shared, content.parts, PARTS) : [];
  const view = form === 'figure' ? asDrawn(made, plain, content) : asked.length > 0 ? { ...plain, ask: togetherAsked(asked, plain.ask) } : plain;
  const isWritten = form !== 'choice' && asked.length === 0;
  const follow = followView(question, view.steps.map(({ id }) => id), made.carried, content.shared);
  return {
    label,
    form,
    marks,
    view,
    options: optionViews(made, view, words, content.shared),
    asked,
    space: isWritten ? linesFor(marks) : 0,
    lines: isWritten ? view.answers.map(({ id }) => answerLine(question, id, view, content.shared)) : [],
    ...(form === 'figure' && { figure: figureView(made, view, id, content) }),
    ...(follow && { follow }),
  };
}

/** A direction may be asked in other words where there are options: 'answer choice' in content. */
function forForm(words: FamilyWords, { question: { direction: { name } }, form }: Made): FamilyWords {
  const own = words.asks[`${name} ${form}`];
  return own ? { ...words, asks: { ...words.asks, [name]: own } } : words;
}

/** The question without the readings that the drawing shows, and what is accepted off it. */
function asDrawn({ question, accept }: Made, view: QuestionView, { shared }: PaperContent): QuestionView {
  const hidden = readsOff(question.direction);
  const bare = (sentence: Sentence): Sentence => ({ ...sentence, blanks: { ...sentence.blanks, ...Object.fromEntries(hidden.map((id) => [`${id}_told`, sentence.blanks[id]!])) } });
  const answers = view.answers.map((answer, i) => {
    const [low, high] = roundOutward(accept[i]!, { figures: 3 });
    const { unit } = question.program.step(answer.id);
    return { ...answer, low: shown(low, unit, shared), high: shown(high, unit, shared) };
  });
  return { ...view, stem: bare(view.stem), ask: bare(view.ask), answers };
}

function shown(written: string, unit: string, shared: QuestionWords): Shown {
  const line = quantityLine(written, unit, shared.spoken);
  return { ...line, text: plainText(line.tex) };
}

function figureView({ question: { direction, readings, program } }: Made, view: QuestionView, id: string, { figures, shared }: PaperContent): FigureView {
  const { svg, seen } = drawFigure(direction, readings, `figure-${id}`, figures);
  const ids = readsOff(direction);
  const slack = latitudeOf(direction, readings);
  return {
    svg,
    seen,
    reads: ids.map((one) => view.stem.blanks[one] as Shown),
    readings: ids.map((one) => ({ value: view.givens.find((given) => given.id === one)!.value, slack: slack[one] === 0 ? '' : shown(String(slack[one]), program.step(one).unit, shared).text })),
  };
}

function optionViews({ options = [], question }: Made, view: QuestionView, words: FamilyWords, shared: QuestionWords): OptionView[] {
  const [answer] = question.answers;
  return options.map(({ value, slip, isRight }, i): OptionView => {
    const common = { letter: LETTERS[i]!, isRight };
    if (typeof value === 'string') {
      const { id } = question.direction.ask.steps.find(({ decide }) => decide)!;
      return { ...common, say: { sentence: words.verdicts![id]![value]!, blanks: view.stem.blanks } };
    }
    const written = isRight ? answer!.shown : round(value, { figures: 3 }, 'even');
    const feedback = slip === undefined ? undefined : view.slips[slip]!.say;
    return { ...common, value: shown(written, question.program.step(answer!.id).unit, shared), ...(feedback && { feedback }) };
  });
}
