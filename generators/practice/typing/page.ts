import { shownMarks } from '../../marking/shown.ts';
import { fill } from '../../quantities/spoken.ts';
import { answerBook } from './book.ts';
import type { TypingData } from './data.ts';
import { findSheet } from './find.ts';
import { answerFields } from './fields.ts';
import { looker } from './look.ts';
import { saidOf } from './says.ts';
import { saver } from './save.ts';
import { studentList } from './students.ts';

const element = <E extends HTMLElement = HTMLElement>(id: string) => document.getElementById(id) as E;

/** Brings the page for typing answers to life. A sheet is judged when it is shown and when something is typed into it. */
export function startTyping(data: TypingData): void {
  const { sheets, columns, decimal, words } = data;
  const { typing } = words;
  const book = answerBook(data);
  const look = looker(data);
  const list = studentList(element<HTMLSelectElement>('student'), data, book.isComplete);
  const saved = () => {
    const unread = book.unreadable();
    const where = unread.length > 0 && fill(typing.unread, { count: unread.length, roll: sheets[unread[0]!]!.roll });
    element('kept').textContent = where ? `${typing.saved} ${where}` : typing.saved;
  };
  const save = saver(book.csv, saved, element('save'), element<HTMLDetailsElement>('by-hand'), element<HTMLTextAreaElement>('text'));
  let at = 0;

  const tell = () => {
    const { answers, standings, total, full } = look(at, book.texts(at));
    answers.forEach((answer, i) => fields.say(i, saidOf(answer, standings[i]!, decimal, words)));
    element('total').textContent = fill(book.isComplete(at) ? typing.total : typing.soFar, { total: shownMarks(total), full: shownMarks(full) });
    list.refresh(at);
    element('done').textContent = fill(typing.done, { done: sheets.filter((_, place) => book.isComplete(place)).length, all: sheets.length });
  };
  const show = (place: number, answer = 0) => {
    at = Math.max(0, Math.min(sheets.length - 1, place));
    list.choose(at);
    element('sheet').textContent = fill(typing.sheet, { student: list.label(at), code: sheets[at]!.code });
    fields.fill(book.texts(at));
    tell();
    fields.focus(answer);
  };
  const fields = answerFields(data, {
    changed(answer, text) {
      const kept = book.write(at, answer, text);
      element('kept').textContent = kept ? '' : typing.notKept;
      save.changed(kept);
      tell();
    },
    past: (by) => (by > 0 && at + 1 === sheets.length ? element('save').focus() : by > 0 ? show(at + 1) : at > 0 && show(at - 1, columns.length - 1)),
    turn: (by, answer) => show(at + by, answer),
    find: () => element('find').focus(),
  });

  element('student').addEventListener('change', () => show(Number(element<HTMLSelectElement>('student').value)));
  element('find').addEventListener('keydown', (event) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    const { value } = element<HTMLInputElement>('find');
    const found = findSheet(sheets, at, value);
    element('found').textContent = found === undefined ? fill(typing.notFound, { text: value }) : '';
    if (found !== undefined) show(found);
  });
  show(Math.max(0, sheets.findIndex((_, place) => !book.isComplete(place))));
}
