import type { Label } from './read-svg.ts';

export interface Extent {
  text: string;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** About the room that a label takes: half a letter's size for every letter, capitals two thirds of it high. */
export function extent({ text, at: [x, y], size, anchor, turned }: Label): Extent {
  const width = 0.5 * size * text.length;
  const before = anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0;
  const height = 0.66 * size;
  return turned
    ? { text, left: x - height, right: x, top: y - width + before, bottom: y + before }
    : { text, left: x - before, right: x - before + width, top: y - height, bottom: y };
}

/** Pairs of labels that run into each other. */
export function overlaps(labels: readonly Label[]): string[] {
  const boxes = labels.map(extent);
  return boxes.flatMap((a, i) => boxes.slice(i + 1).filter((b) => meet(a, b)).map((b) => `${a.text} / ${b.text}`));
}

function meet(a: Extent, b: Extent): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
