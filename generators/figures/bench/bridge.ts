import { element } from '../svg.ts';
import { drawn, label, stroke } from './ink.ts';

/** How a bridge is wired: which gaps it has, what the jockey is joined to, and where the cell lies. */
export type Wired = 'bridge' | 'carey-foster' | 'kelvin';

/** What stands beside the parts of the drawing. */
export interface BridgeWords {
  cell: string;
  key: string;
  protective: string;
  arms: string;
}

/** The place on the drawn wire of a reading of its scale in mm. */
export const onWire = (millimetres: number) => 20 + 0.36 * millimetres;

/** Outer edges of the gaps that the student fills, and of the ratio arms where there are any. */
const gaps = {
  bridge: { left: [104, 164], right: [236, 296] },
  kelvin: { left: [104, 164], right: [236, 296] },
  'carey-foster': { left: [34, 94], right: [306, 366] },
} as const;
const arms = [[122, 174], [226, 278]] as const;

const strip = { top: 56, bottom: 66 };
const wire = 150;

/** The metre bridge from above, ready to be used: 400 × 232, in lengths of its own. The parts that move or can be worked carry `data-` names; the style gives them their colours. */
export function benchBridge(wired: Wired, words: BridgeWords): string {
  return [
    drawn('rect', { class: 'board', x: 4, y: 46, width: 392, height: 138, rx: 3 }),
    supply(wired, words),
    ...strips(wired),
    ...(['left', 'right'] as const).map((side) => gap(side, gaps[wired][side])),
    ...(wired === 'carey-foster' ? arms.flatMap(([from, to]) => [boxIn(from, to), label((from + to) / 2, 17, words.arms)]) : []),
    scale(),
    stroke(`M17 ${wire}H383`, { class: 'wire' }),
    wired === 'kelvin' ? '' : branch(words),
    jockey(wired),
  ].join('');
}

function strips(wired: Wired): string[] {
  const { top, bottom } = strip;
  const reach = gaps[wired].left[0] + 6;
  const copper = (d: string) => drawn('path', { class: 'copper', d });
  const between = wired === 'carey-foster' ? [[88, 128], [168, 232], [272, 312]] : [[158, 242]];
  return [
    copper(`M10 ${top}H${reach}V${bottom}H24V${wire + 6}H10Z`),
    copper(`M390 ${top}H${400 - reach}V${bottom}H376V${wire + 6}H390Z`),
    ...between.map(([from, to]) => copper(`M${from} ${top}H${to}V${bottom}H${from}Z`)),
  ];
}

const terminal = (x: number, y: number) => drawn('circle', { class: 'screw', cx: x, cy: y, r: 2.6 });

/** A gap with each of what can be in it; one is shown at a time, its name above it. */
function gap(side: 'left' | 'right', [from, to]: readonly [number, number]): string {
  const middle = (from + to) / 2;
  return element('g', { 'data-gap': side }, [
    element('g', { 'data-put': 'box' }, boxIn(from, to)),
    element('g', { 'data-put': 'thing' }, `${leads(from, to)}${stroke(`M${from} 30h6${'q2.4 -9 4.8 0t4.8 0'.repeat(5)}h6`, {})}${terminals(from, to)}`),
    element('g', { 'data-put': 'strip' }, `${drawn('path', { class: 'copper', d: `M${from} ${strip.top + 1}H${to}V${strip.bottom - 1}H${from}Z` })}${terminals(from, to)}`),
    element('g', { 'data-put': 'galvanometer' }, `${leads(from, to)}${stroke(`M${from} 30H${to}`, {})}${drawn('circle', { class: 'paper', cx: middle, cy: 30, r: 10 })}${label(middle, 34, 'G')}${terminals(from, to)}`),
    label(middle, 15, '', { 'data-name': side }),
  ].join(''));
}

const leads = (from: number, to: number) => stroke(`M${from} 61V30M${to} 61V30`, {});
const terminals = (from: number, to: number) => terminal(from, 61) + terminal(to, 61);

function boxIn(from: number, to: number): string {
  return `${leads(from, to)}${stroke(`M${from} 30H${to}`, {})}${drawn('rect', { class: 'paper', x: from + 7, y: 22, width: to - from - 14, height: 16, rx: 1.5 })}${terminals(from, to)}`;
}

/** A mark every centimetre, a number every ten; the strip can be touched to bring the jockey there. */
function scale(): string {
  const marks = Array.from({ length: 101 }, (_, cm) => `M${onWire(10 * cm)} 160v${cm % 10 === 0 ? 7 : cm % 5 === 0 ? 5 : 3.4}`).join('');
  const numbers = Array.from({ length: 11 }, (_, i) => label(onWire(100 * i), 178, String(10 * i)));
  return drawn('rect', { class: 'paper', x: 9, y: 160, width: 382, height: 21 }) + stroke(marks, { class: 'mark' }) + numbers.join('');
}

/** From the middle strip through the protective resistance, which a short link cuts out, to the galvanometer. */
function branch({ protective }: BridgeWords): string {
  return [
    stroke('M200 61V84H216', {}),
    terminal(200, 61),
    element(
      'g',
      { class: 'worked', 'data-switch': 'isProtected', tabindex: 0, role: 'switch', 'aria-checked': 'true', 'aria-label': protective },
      [
        drawn('rect', { class: 'hit', x: 206, y: 70, width: 62, height: 34 }),
        stroke('M216 84H258', {}),
        drawn('rect', { class: 'paper', x: 222, y: 78, width: 30, height: 12 }),
        drawn('path', { class: 'link', d: 'M218 84C222 68 252 68 256 84' }),
        drawn('circle', { class: 'screw', cx: 218, cy: 84, r: 2 }),
        drawn('circle', { class: 'screw', cx: 256, cy: 84, r: 2 }),
      ].join(''),
    ),
    label(194, 88, protective, { 'text-anchor': 'end' }),
    stroke('M258 84H280', {}),
    drawn('circle', { class: 'paper', cx: 290, cy: 84, r: 10 }),
    label(290, 88, 'G'),
    stroke('M300 84H312', {}),
  ].join('');
}

/** The lead hangs from the galvanometer or from the middle strip; the page bends it after the jockey. */
function jockey(wired: Wired): string {
  const from = wired === 'kelvin' ? [200, 61] : [312, 84];
  return [
    wired === 'kelvin' ? terminal(200, 61) : '',
    stroke('', { class: 'lead', 'data-lead': from.join(' ') }),
    drawn('rect', { class: 'hit reach', 'data-wire': '', x: 4, y: 118, width: 392, height: 66 }),
    element(
      'g',
      { class: 'worked', 'data-jockey': '', tabindex: 0, role: 'slider', 'aria-valuemin': 0, 'aria-valuemax': 1000, 'aria-valuenow': 500 },
      drawn('rect', { class: 'hit', x: -16, y: 116, width: 32, height: 50 }) + drawn('path', { class: 'handle', d: 'M-7 120H7V134L1 146H-1L-7 134Z' }) + stroke('M0 146V164', { class: 'edge' }),
    ),
  ].join('');
}

/** Cell and key across the ends of the wire, or, with four gaps, between the outer gaps and the inner ones. */
function supply(wired: Wired, { cell, key }: BridgeWords): string {
  const outer = wired === 'carey-foster' ? 'M108 61V3H1.5V214H118M292 61V3H398.5V214H282' : 'M17 120H1.5V214H118M383 120H398.5V214H282';
  return [
    stroke(outer, {}),
    ...(wired === 'carey-foster' ? [terminal(108, 61), terminal(292, 61)] : []),
    stroke('M118 214H146M146 204V224M152 214H236', {}),
    stroke('M152 209V219', { class: 'plate' }),
    label(149, 199, cell),
    element(
      'g',
      { class: 'worked', 'data-switch': 'isClosed', tabindex: 0, role: 'switch', 'aria-checked': 'false', 'aria-label': key },
      [
        drawn('rect', { class: 'hit', x: 226, y: 188, width: 62, height: 42 }),
        stroke('M272 214H282', {}),
        drawn('path', { class: 'lever', d: 'M238 214L266 203' }),
        drawn('path', { class: 'lever closed', d: 'M238 214H272' }),
        drawn('circle', { class: 'screw', cx: 238, cy: 214, r: 2.6 }),
        drawn('circle', { class: 'screw', cx: 272, cy: 214, r: 2.6 }),
      ].join(''),
    ),
    label(255, 199, key),
  ].join('');
}
