import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { Point } from '../../generators/figures/svg.ts';
import type { FigureWords } from '../../generators/figures/words.ts';

/** The English words of the figures, as they stand in content. */
export const words = parse(readFileSync(new URL('../../content/en/figures.yaml', import.meta.url), 'utf8')) as FigureWords;

export interface Element {
  name: string;
  attributes: Record<string, string>;
  /** Letters only, without marks of style. */
  text: string;
}

export interface Label {
  text: string;
  part: string | undefined;
  at: Point;
  size: number;
  anchor: string;
  turned: boolean;
}

/** The flat list of what a drawing holds; tspans count with their text. */
export function elements(svg: string): Element[] {
  return [...svg.matchAll(/<(\w+)((?: [\w:-]+="[^"]*")*)(?:\/>|>)/g)]
    .filter(([, name]) => name !== 'tspan')
    .map((match) => {
      const attributes = Object.fromEntries([...match[2]!.matchAll(/ ([\w:-]+)="([^"]*)"/g)].map(([, key, value]) => [key!, value!]));
      const after = svg.slice(match.index + match[0].length);
      const text = match[1] === 'text' ? after.slice(0, after.indexOf('</text>')).replace(/<[^>]+>/g, '') : '';
      return { name: match[1]!, attributes, text };
    });
}

/** The polylines of the one path that carries this part; an error where there are none or several. */
export function polylines(svg: string, part: string): Point[][] {
  const found = elements(svg).filter(({ name, attributes }) => name === 'path' && attributes['data-part'] === part);
  if (found.length !== 1) throw new Error(`${found.length} paths are called ${part}`);
  return found[0]!.attributes.d!.split('M').slice(1).map((line) => line.split('L').map(point));
}

function point(text: string): Point {
  const [x, y] = text.trim().split(/\s+/).map(Number);
  return [x!, y!];
}

export function labels(svg: string, part?: string): Label[] {
  return elements(svg)
    .filter(({ name, attributes }) => name === 'text' && (part === undefined || attributes['data-part'] === part))
    .map(({ attributes, text }) => ({
      text,
      part: attributes['data-part'],
      at: [Number(attributes.x), Number(attributes.y)] as const,
      size: Number(attributes['font-size']),
      anchor: attributes['text-anchor'] ?? 'start',
      turned: attributes.transform !== undefined,
    }));
}

/** Of many, the one with the least distance. */
export function nearest<T>(list: readonly T[], distance: (item: T) => number): T {
  return list.reduce((best, item) => (distance(item) < distance(best) ? item : best));
}

/** Reads a ruled scale as an eye does: the numbers stand at their marks, the rest is measured between the first and the last. */
export function readScale(numbers: readonly Label[], axis: 0 | 1, at: number): number {
  const [first, last] = [numbers[0]!, numbers.at(-1)!];
  const share = (at - first.at[axis]) / (last.at[axis] - first.at[axis]);
  return Number(first.text) + share * (Number(last.text) - Number(first.text));
}
