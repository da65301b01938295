import { sentenceText } from '../../questions/view.ts';
import { figuresBefore } from '../check.ts';
import { provideFormulas } from '../formula.ts';
import { type Worded, questionFillings, worded } from '../questions/fillings.ts';
import { type PracticeQuestion, type Wish, makeQuestion } from '../questions/make-question.ts';
import { placesOf, sheetOf } from '../questions/places.ts';
import { type WholeWorking, wholeWorking } from '../questions/working.ts';
import type { Place } from '../places.ts';
import type { SetCode } from '../set-code.ts';
import { startChoices } from './choices.ts';
import { all, onPress } from './elements.ts';
import { putFields } from './fields.ts';
import { kept } from './kept.ts';
import { type Notebook, holderOf, judgeAll } from './notebook.ts';
import { addressOf, readAddress } from './question-address.ts';
import type { FamilyData, QuestionPageWords } from './question-data.ts';
import { startPicker } from './question-picker.ts';
import { setTools } from './tools.ts';

/** A question on the page. */
interface QuestionNotebook extends Notebook {
  printed: PracticeQuestion;
  own: Worded;
}

/** Brings the page of a family to life: its question, its fields, and what is said of them. */
export function startQuestion(data: FamilyData, words: QuestionPageWords): void {
  provideFormulas(data.formulas);
  const { family } = data;
  let notebook: QuestionNotebook;
  let putChoices: () => void = () => {};
  const asked = () => readAddress(location.hash, family);
  const code = () => asked().code ?? (document.body.dataset['set'] as SetCode);
  const open = () => {
    notebook = openQuestion(data, words, code(), asked().wish);
    const { slips } = notebook.own;
    const marking = { plain: words.plain, slips: Object.fromEntries(Object.entries(slips).map(([id, slip]) => [id, { says: sentenceText(slip), do: '' }])) };
    putFields(notebook, { ...data, words: { practice: words.practice, spoken: notebook.own.spoken, marking } });
    putChoices = startChoices(() => notebook, words.practice);
    putChoices();
    showLines(notebook);
    for (const progress of all('[data-progress]')) progress.hidden = notebook.places.every(({ optional }) => optional);
  };
  addEventListener('hashchange', open);
  open();
  startPicker(() => asked().wish, (wish) => (location.hash = addressOf(code(), wish)));
  document.querySelector('[data-slot="answers"]')!.addEventListener('change', ({ target }) => openLineOf(notebook, target as HTMLElement, words));
  onPress('open-line', () => {
    const line = all('[data-line][hidden]')[0];
    if (line) show(line);
    line?.querySelector('input')?.focus();
  });
  setTools(() => notebook, words.practice, () => putChoices(), (set) => addressOf(set, asked().wish));
}

function openQuestion({ family, words: own }: FamilyData, words: QuestionPageWords, code: SetCode, wish: Wish): QuestionNotebook {
  const printed = makeQuestion(family, code, wish);
  const { question } = printed;
  const { direction } = question;
  const ofFamily = { family: own, shared: words.questions, answers: words.answers };
  const inWords = worded(printed, ofFamily);
  const slots = questionFillings(printed, inWords, ofFamily);
  for (const slot of all('[data-slot]')) slot.innerHTML = slots[slot.dataset['slot']!] ?? '';
  const name = ['question', family.id, direction.name, ...Object.values(direction.choice), code].join(':');
  const notebook: QuestionNotebook = {
    name,
    printed,
    own: inWords,
    sheet: sheetOf(question),
    steps: direction.program,
    places: placesOf(question),
    texts: kept(name),
    fields: new Map(),
    helps: new Map(),
    known: new Map(),
    working: (place) => workingOf(notebook, place, words),
  };
  judgeAll(notebook);
  return notebook;
}

function workingOf({ printed: { question }, own: { view, spoken }, places, texts }: QuestionNotebook, place: Place, { answers: { hints } }: QuestionPageWords): WholeWorking {
  return wholeWorking({ question, view }, place, figuresBefore(places, texts, place.key), { spoken, hints });
}

/** Lines that were filled in before stay open; the button is there as long as one is closed. */
function showLines({ places, texts }: Notebook): void {
  for (const { key } of places) if ((texts[key] ?? '') !== '') holderOf(key)!.closest<HTMLElement>('[data-line]')!.hidden = false;
  showOpener();
}

function show(line: HTMLElement): void {
  line.hidden = false;
  showOpener();
}

function showOpener(): void {
  const isMore = all('[data-line][hidden]').length > 0;
  for (const button of all('[data-do="open-line"]')) button.hidden = !isMore;
}

/** After a wrong value that no slip explains, the line that it hangs on first opens, to be written. */
function openLineOf(notebook: QuestionNotebook, target: HTMLElement, words: QuestionPageWords): void {
  const place = notebook.places.find(({ key }) => key === target.closest<HTMLElement>('[data-place]')?.dataset['place']);
  const answer = place && notebook.known.get(place.key)!;
  if (answer?.is !== 'wrong' || answer.explanations.length > 0) return;
  const line = document.querySelector<HTMLElement>(`[data-line="${workingOf(notebook, place!, words).open}"]`);
  if (line) show(line);
}
