import { onWire } from '../../figures/bench/bridge.ts';
import { SWING } from '../../figures/bench/dial.ts';
import { fill } from '../../quantities/spoken.ts';
import { needle, shown, thermometerAt } from '../bench.ts';
import { type Stand, oneIn } from './bench-stand.ts';
import { all } from './elements.ts';
import { lookAt } from './tapes.ts';

/** Millimetres of the scale that the magnified window shows, and how near its edges the jockey may come before the window moves on. */
const SPAN = 60;
const NEAR = 6;

/** Moves the drawn parts of a bench to where they are set. */
export function picture({ root }: Stand): (stand: Stand) => void {
  const one = oneIn(root);
  const [jockey, lead, tape, onTape, needleLine] = ['[data-jockey]', '[data-lead]', '[data-tape]', '[data-tape-jockey]', '[data-needle]'].map((name) => one<SVGElement>(name)) as [SVGElement, SVGElement, SVGElement, SVGElement, SVGElement];
  const [x, y] = lead.dataset['lead']!.split(' ').map(Number) as [number, number];
  let from = 500 - SPAN / 2;
  return ({ bench, setting, words }) => {
    const { millimetres: at, isPressed } = setting;
    const place = onWire(at);
    root.classList.toggle('pressed', isPressed);
    root.classList.toggle('touching', isPressed && setting.isClosed);
    jockey.setAttribute('transform', `translate(${place} ${isPressed ? 0 : -6})`);
    lead.setAttribute('d', `M${x} ${y}C${x} ${y + 24} ${place} ${y + 4} ${place} ${isPressed ? 120 : 114}`);
    jockey.setAttribute('aria-valuenow', String(at));
    jockey.setAttribute('aria-valuetext', fill(words.at, { cm: shown(bench, setting, 'scale') }));
    if (at < from + NEAR || at > from + SPAN - NEAR) from = Math.max(0, Math.min(1000 - SPAN, 10 * Math.round(at / 10) - SPAN / 2));
    lookAt(tape, from);
    onTape.setAttribute('transform', `translate(${at} ${isPressed ? 0 : -1.5})`);
    const { divisions } = bench.laid.bridge.galvanometer;
    needleLine.setAttribute('transform', `rotate(${(needle(bench, setting) * SWING) / divisions})`);
    for (const control of all('[data-switch]', root)) control.setAttribute('aria-checked', String(setting[control.dataset['switch'] as 'isClosed' | 'isProtected']));
  };
}

/** The thermometer of a bench in the bath that it has. */
export function bathPicture({ root, bench, setting }: Stand): void {
  const bath = root.querySelector('[data-bath]');
  if (bath) thread(bath, thermometerAt(bench, setting));
}

/** Where the thread of a drawn thermometer ends, in °C; 50 °C of its scale are seen. */
export function thread(thermometer: Element, celsius: number): void {
  thermometer.querySelector('[data-thread]')!.setAttribute('width', String(10 + 2 * celsius));
  lookAt(thermometer, 2 * Math.max(0, Math.min(50, 10 * Math.round(celsius / 10) - 20)));
}
