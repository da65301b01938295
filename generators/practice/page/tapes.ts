/** Moves the window of a drawn scale so that it begins at a place; the rest of its view stays. */
export function lookAt(tape: Element, from: number): void {
  const [, top, width, height] = tape.getAttribute('viewBox')!.split(' ').map(Number) as [number, number, number, number];
  // A margin on both sides, so that a number at the first or the last mark is whole.
  const begins = from - Number((tape as SVGElement).dataset['margin'] ?? 4);
  tape.setAttribute('viewBox', `${begins} ${top} ${width} ${height}`);
}
