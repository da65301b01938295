import { fill } from '../../quantities/spoken.ts';
import type { BenchWords } from './data.ts';
import { make } from './elements.ts';

/** How long a press by a screen reader lasts, in ms: it has no way to hold a button. */
const TAP = 2000;

/** A plug of the box; pressed while it is out. */
export function plug(ohms: string, toggle: () => boolean, show: () => void, words: BenchWords): HTMLElement {
  const button = make('button', { type: 'button', class: 'plug', 'aria-pressed': 'false', 'aria-label': fill(words.plug, { ohms }) }, ohms);
  button.addEventListener('click', () => {
    button.setAttribute('aria-pressed', String(toggle()));
    show();
  });
  return button;
}

/** Puts a plug's place in or takes it out; whether it is in now. */
export function toggled(set: Set<number>, place: number): boolean {
  if (set.delete(place)) return false;
  set.add(place);
  return true;
}

/** Pressed as long as it is held, by pointer or by space bar; a screen reader's press lasts a moment. */
export function holdToPress(button: HTMLElement, press: (isPressed: boolean) => void): void {
  let isHeld = false;
  const hold = (is: boolean) => {
    if (isHeld === is) return;
    isHeld = is;
    press(is);
  };
  button.addEventListener('pointerdown', (event) => {
    button.setPointerCapture(event.pointerId);
    hold(true);
  });
  for (const end of ['pointerup', 'pointercancel', 'blur']) button.addEventListener(end, () => hold(false));
  button.addEventListener('keydown', (event) => {
    if (event.key !== ' ' && event.key !== 'Enter') return;
    event.preventDefault();
    hold(true);
  });
  button.addEventListener('keyup', () => hold(false));
  button.addEventListener('click', ({ detail, pointerType }: MouseEvent & { pointerType?: string }) => {
    if (detail !== 0 || pointerType) return;
    hold(true);
    setTimeout(() => hold(false), TAP);
  });
}
