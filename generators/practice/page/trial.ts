import { all } from './elements.ts';

/** An instrument that is tried by itself, in its part of the page. */
export interface Trial {
  root: HTMLElement;
  say(text: string): void;
  /** What stands in one of its fields. */
  field(name: string): string;
}

/** What an instrument does: puts another thing on it, by a number, and judges what the student read or set. */
export interface Tried {
  put(number: number): void;
  judge(): string;
}

/** Lets an instrument be tried: again and again with another thing on it, and judged when the student asks. */
export function trial(name: string, make: (on: Trial) => Tried): void {
  const root = document.querySelector<HTMLElement>(`[data-instrument="${name}"]`)!;
  const said = root.querySelector('[data-instrument-said]')!;
  const fields = all<HTMLInputElement>('[data-field]', root);
  const say = (text: string) => void (said.textContent = text);
  const { put, judge } = make({ root, say, field: (wanted) => fields.find(({ dataset }) => dataset['field'] === wanted)!.value.trim() });
  let number = 1;
  const show = () => {
    put(number);
    for (const field of fields) field.value = '';
    say('');
  };
  root.querySelector('[data-do="check"]')!.addEventListener('click', () => say(judge()));
  root.querySelector('[data-do="another"]')!.addEventListener('click', () => {
    number++;
    show();
  });
  show();
}
