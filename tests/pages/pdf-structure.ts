import { execFileSync } from 'node:child_process';

/** One element of a tagged PDF's structure, in reading order. */
export interface Element {
  /** 'H1', 'Table', 'Figure' … */
  tag: string;
  alt?: string;
  children: Element[];
}

type Dictionary = Record<string, unknown>;

/** The structure tree of a PDF, read by qpdf from the file itself. */
export function structureOf(file: string): { root: Element; language: string | undefined; title: string | undefined } {
  const json = JSON.parse(execFileSync('qpdf', ['--json=2', '--json-key=qpdf', file], { encoding: 'utf8', maxBuffer: 1e9 })) as {
    qpdf: [unknown, Record<string, { value?: unknown }>];
  };
  const objects = json.qpdf[1];
  const resolve = (value: unknown): unknown =>
    typeof value === 'string' && /^\d+ \d+ R$/.test(value) ? resolve(objects[`obj:${value}`]?.value) : value;
  const trailer = (objects['trailer'] as { value: Dictionary }).value;
  const catalog = resolve(trailer['/Root']) as Dictionary;
  const info = resolve(trailer['/Info']) as Dictionary | undefined;
  const element = (node: Dictionary): Element => ({
    tag: String(node['/S'] ?? '/Root').slice(1),
    ...(node['/Alt'] === undefined ? {} : { alt: plain(resolve(node['/Alt'])) ?? '' }),
    children: [resolve(node['/K'])].flat().map(resolve).filter(isElement).map(element),
  });
  return { root: element(resolve(catalog['/StructTreeRoot']) as Dictionary), language: plain(catalog['/Lang']), title: plain(info?.['/Title']) };
}

const isElement = (value: unknown): value is Dictionary => typeof value === 'object' && value !== null && '/S' in value;

/** qpdf marks its strings: 'u:' for text. */
const plain = (value: unknown) => (typeof value === 'string' ? value.replace(/^[ub]:/, '') : undefined);

/** All elements below one, in reading order, itself first. */
export function all(element: Element): Element[] {
  return [element, ...element.children.flatMap(all)];
}
