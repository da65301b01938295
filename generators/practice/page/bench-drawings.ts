const SVG = 'http://www.w3.org/2000/svg';

function drawn<K extends keyof SVGElementTagNameMap>(tag: K, attributes: Readonly<Record<string, string | number>>, text = ''): SVGElementTagNameMap[K] {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  element.textContent = text;
  return element;
}

/** Millimetres of the scale that the magnified window shows. */
const SPAN = 60;

/** Draws the whole scale once; the window moves along it. Gives what moves it, to a place in mm from the left. */
export function magnifiedScale(svg: SVGSVGElement): (millimetres: number) => void {
  const marks = Array.from({ length: 1001 }, (_, mm) => `M${mm} 5V${mm % 10 === 0 ? 10 : mm % 5 === 0 ? 8.6 : 7.4}`).join('');
  const numbers = Array.from({ length: 101 }, (_, cm) => drawn('text', { x: 10 * cm, y: 14, 'font-size': 3.6, 'text-anchor': 'middle', fill: 'currentColor' }, String(cm)));
  const jockey = drawn('path', { d: 'M0 5L-1.2 1H1.2Z', fill: 'currentColor' });
  svg.replaceChildren(drawn('path', { d: 'M0 5H1000', stroke: 'currentColor', 'stroke-width': 0.5 }), drawn('path', { d: marks, stroke: 'currentColor', 'stroke-width': 0.16 }), ...numbers, jockey);
  return (millimetres) => {
    svg.setAttribute('viewBox', `${millimetres - SPAN / 2} 0 ${SPAN} 15`);
    jockey.setAttribute('transform', `translate(${millimetres} 0)`);
  };
}

/** Degrees from the zero of the dial to its last division. */
const SWING = 50;

/** Draws the dial of a galvanometer with so many divisions on each side. Gives what turns the needle, to a place in divisions. */
export function needleOn(svg: SVGSVGElement, divisions: number): (at: number) => void {
  const turned = (by: number) => `rotate(${(by * SWING) / divisions})`;
  const marks = Array.from({ length: 2 * divisions + 1 }, (_, i) => i - divisions).map((division) =>
    drawn('path', { d: `M0 -40V${division % 5 === 0 ? -34 : -37}`, stroke: 'currentColor', 'stroke-width': 0.4, transform: turned(division) }),
  );
  const numbers = [-divisions, 0, divisions].map((division) => drawn('text', { y: -41.5, 'font-size': 4, 'text-anchor': 'middle', fill: 'currentColor', transform: turned(division) }, String(Math.abs(division))));
  const pointer = drawn('path', { d: 'M0 2V-36', stroke: 'currentColor', 'stroke-width': 0.8, class: 'needle' });
  svg.replaceChildren(...marks, ...numbers, pointer, drawn('circle', { r: 2.2, fill: 'currentColor' }));
  return (at) => pointer.setAttribute('transform', turned(at));
}
