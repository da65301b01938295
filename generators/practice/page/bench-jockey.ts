import { onWire } from '../../figures/bench/bridge.ts';
import { type Stand, needleNow, oneIn } from './bench-stand.ts';
import { dragged } from './drag.ts';
import { all } from './elements.ts';

/** How long a press by a screen reader lasts, in ms: it has no way to hold a button. */
const TAP = 2000;

/** The jockey: dragged along the drawn wire or finely under the magnifier, moved by keys and buttons, pressed as long as it is held. */
export function jockey(stand: Stand): void {
  const { root, setting, words } = stand;
  const one = oneIn(root);
  const handle = one<SVGElement>('[data-jockey]');
  const move = (to: number) => {
    const place = Math.max(0, Math.min(1000, Math.round(to)));
    if (place === setting.millimetres) return;
    setting.millimetres = place;
    stand.show();
    if (setting.isPressed) stand.say(`${words.dragging} ${needleNow(stand)}`);
  };
  const press = (isPressed: boolean) => {
    if (setting.isPressed === isPressed) return;
    setting.isPressed = isPressed;
    stand.show();
    stand.say(`${needleNow(stand)}${isPressed && !setting.isClosed ? ` ${words.keyOpen}` : ''}`);
  };

  const perMillimetre = onWire(1) - onWire(0);
  dragged(one<SVGElement>('[data-wire]'), { starts: (x) => (move((x - onWire(0)) / perMillimetre), setting.millimetres), moves: (start, by) => move(start + by / perMillimetre) });
  dragged(handle, { starts: () => setting.millimetres, moves: (start, by) => move(start + by / perMillimetre) });
  dragged(one<SVGElement>('[data-tape]'), { starts: () => setting.millimetres, moves: (start, by) => move(start + by) });
  for (const knob of [one<SVGElement>('[data-knob]'), one('[data-press]')]) held(knob, press);
  keys(handle, { move: (by) => move(setting.millimetres + by), to: move, press, isPressed: () => setting.isPressed });
  for (const button of all('[data-move]', root)) button.addEventListener('click', () => move(setting.millimetres + Number(button.dataset['move'])));
}

/** Pressed as long as it is held by a pointer or the space bar; a screen reader's press lasts a moment. */
function held(control: Element, press: (is: boolean) => void): void {
  control.addEventListener('pointerdown', () => {
    press(true);
    // Wherever the pointer has gone meanwhile, which drags the jockey.
    for (const end of ['pointerup', 'pointercancel']) addEventListener(end, () => press(false), { once: true });
  });
  for (const end of ['blur', 'keyup']) control.addEventListener(end, () => press(false));
  control.addEventListener('keydown', (event) => {
    if (![' ', 'Enter'].includes((event as KeyboardEvent).key)) return;
    event.preventDefault();
    press(true);
  });
  control.addEventListener('click', (event) => {
    const { detail, pointerType } = event as MouseEvent & { pointerType?: string };
    if (detail !== 0 || pointerType) return;
    press(true);
    setTimeout(() => press(false), TAP);
  });
}

interface Jockey {
  move(by: number): void;
  to(place: number): void;
  press(is: boolean): void;
  isPressed(): boolean;
}

/** Arrows for a millimetre, with Shift or Page for ten; space holds the jockey down, Enter lets it stay down. */
function keys(handle: SVGElement, { move, to, press, isPressed }: Jockey): void {
  const steps: Readonly<Record<string, number>> = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -10, PageUp: 10 };
  handle.addEventListener('keydown', (event) => {
    const { key, shiftKey, repeat } = event;
    const step = steps[key];
    if (step !== undefined) move(shiftKey && Math.abs(step) === 1 ? 10 * step : step);
    else if (key === 'Home') to(0);
    else if (key === 'End') to(1000);
    else if (key === ' ') press(true);
    else if (key === 'Enter') repeat || press(!isPressed());
    else return;
    event.preventDefault();
  });
  handle.addEventListener('keyup', ({ key }) => key === ' ' && press(false));
}
