import { element, mm } from '../svg.ts';

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** A part whose colour the page's style gives, so that it follows light and dark. */
export const drawn = (name: string, attributes: Attributes) => element(name, attributes);

/** A line in the page's ink. */
export const stroke = (d: string, more: Attributes) => element('path', { ...more, class: ['ink', more['class']].filter(Boolean).join(' '), d });

/** Letters in the page's ink, their baseline at the place. */
export const label = (x: number, y: number, text: string, more: Attributes = {}) => element('text', { ...more, x, y }, text);

/** Marks of a scale that goes right from x = 0, `step` apart: data of one path, with lengths by the mark's number. */
export function marks(count: number, step: number, y: number, length: (mark: number) => number): string {
  return `M0 ${mm(y)}${Array.from({ length: count }, (_, mark) => `v${mm(length(mark))}m${mm(step)}-${mm(length(mark))}`).join('')}`;
}
