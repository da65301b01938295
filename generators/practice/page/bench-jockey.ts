import { onWire } from '../../figures/bench/bridge.ts';
import { fill } from '../../quantities/spoken.ts';
import { shown } from '../bench.ts';
import { type Stand, needleNow, oneIn } from './bench-stand.ts';
import { dragged, perPixel } from './drag.ts';
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
    const seen = () => `${needleNow(stand)}${setting.isClosed ? '' : ` ${words.keyOpen}`}`;
    const before = seen();
    setting.isPressed = isPressed;
    stand.show();
    // A short press is over before what it shows can be read or heard.
    stand.say(isPressed ? seen() : `${needleNow(stand)} ${fill(words.pressed, { cm: shown(stand.bench, setting, 'scale'), seen: before })}`);
  };

  const [bridge, tape] = [handle.ownerSVGElement!, one<SVGSVGElement>('[data-tape]')];
  const onBridge = (pixels: number) => (pixels * perPixel(bridge)) / (onWire(1) - onWire(0));
  const here = () => setting.millimetres;
  const touched = ({ clientX }: PointerEvent) => {
    move(onBridge(clientX - bridge.getBoundingClientRect().left) - onWire(0) / (onWire(1) - onWire(0)));
    return here();
  };
  dragged(one<SVGElement>('[data-wire]'), { starts: touched, moves: (start, right) => move(start + onBridge(right)) });
  dragged(handle, { starts: here, moves: (start, right) => move(start + onBridge(right)) });
  dragged(tape, { starts: here, moves: (start, right) => move(start + right * perPixel(tape)) });
  const button = one('[data-press]');
  for (const knob of [one<SVGElement>('[data-knob]'), button]) heldByPointer(knob, press);
  heldByKey(button, press);
  keys(handle, { move: (by) => move(setting.millimetres + by), to: move, press, isPressed: () => setting.isPressed });
  for (const button of all('[data-move]', root)) button.addEventListener('click', () => move(setting.millimetres + Number(button.dataset['move'])));
}

/** Pressed as long as a pointer holds it, wherever that goes meanwhile: then it drags. Another finger may work something else. */
function heldByPointer(control: Element, press: (is: boolean) => void): void {
  (control as HTMLElement).addEventListener('pointerdown', ({ pointerId }) => {
    press(true);
    const held = new AbortController();
    const lift = (event: PointerEvent) => {
      if (event.pointerId !== pointerId) return;
      press(false);
      held.abort();
    };
    for (const end of ['pointerup', 'pointercancel'] as const) addEventListener(end, lift, { signal: held.signal });
  });
}

/** Pressed as long as space bar or Enter is; a screen reader's press lasts a moment. */
function heldByKey(button: HTMLElement, press: (is: boolean) => void): void {
  for (const end of ['blur', 'keyup']) button.addEventListener(end, () => press(false));
  button.addEventListener('keydown', (event) => {
    if (![' ', 'Enter'].includes(event.key)) return;
    event.preventDefault();
    press(true);
  });
  button.addEventListener('click', (event: MouseEvent & { pointerType?: string }) => {
    if (event.detail !== 0 || event.pointerType) return;
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
