/** What a drag does, in the lengths of the drawing that it goes on in: `starts` gives what the drag begins from. */
interface Drag {
  starts(x: number): number;
  moves(start: number, by: number): void;
}

/** Lets a part of a drawing be dragged sideways by a pointer. */
export function dragged(part: SVGElement, { starts, moves }: Drag): void {
  const svg = part instanceof SVGSVGElement ? part : part.ownerSVGElement!;
  let from: { client: number; start: number } | undefined;
  const scale = () => svg.viewBox.baseVal.width / svg.getBoundingClientRect().width;
  part.addEventListener('pointerdown', (event) => {
    part.setPointerCapture(event.pointerId);
    from = { client: event.clientX, start: starts((event.clientX - svg.getBoundingClientRect().left) * scale()) };
  });
  part.addEventListener('pointermove', ({ clientX }) => from && moves(from.start, (clientX - from.client) * scale()));
  for (const end of ['pointerup', 'pointercancel']) part.addEventListener(end, () => (from = undefined));
}
