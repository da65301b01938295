/** What a drag does: `starts` gives what it begins from, `moves` is told how far the pointer has gone since, in its pixels. */
interface Drag {
  starts(event: PointerEvent): number;
  moves(start: number, right: number, down: number): void;
}

/** Lets a part of the page be dragged by a pointer. */
export function dragged(element: Element, { starts, moves }: Drag): void {
  const part = element as HTMLElement;
  let from: { x: number; y: number; start: number } | undefined;
  part.addEventListener('pointerdown', (event) => {
    part.setPointerCapture(event.pointerId);
    from = { x: event.clientX, y: event.clientY, start: starts(event) };
  });
  part.addEventListener('pointermove', ({ clientX, clientY }) => from && moves(from.start, clientX - from.x, clientY - from.y));
  for (const end of ['pointerup', 'pointercancel'] as const) part.addEventListener(end, () => (from = undefined));
}

/** Lengths of a drawing that go into one pixel of the screen. */
export const perPixel = (svg: SVGSVGElement) => svg.viewBox.baseVal.width / svg.getBoundingClientRect().width;
