/** A place on the drawing, in millimetres, y downwards. */
export type Point = readonly [x: number, y: number];

/** What every figure takes: an id, unique on its page, and how many times its true size it is printed. */
export interface Frame {
  id: string;
  /** 1 when left out; large print takes more. */
  enlarge?: number;
}

/** An instrument to be read: its picture, and in words which marks are seen, never the reading. */
export interface Drawing {
  svg: string;
  seen: string;
}

/** Widths of lines in mm. Office printers lose lines thinner than 0.1 mm (common practice, no source). */
export const pen = { hair: 0.12, thin: 0.2, line: 0.3, bold: 0.6 } as const;

/** Light greys that still print as a clean tint. */
export const tint = { pale: '#eee', light: '#ddd', fine: '#c4c4c4', heavy: '#8a8a8a' } as const;

type Attributes = Record<string, string | number | undefined>;

/** A number as SVG text, to the micrometre, so that the last bits of a sine never show. */
export function mm(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a drawing cannot hold ${value}`);
  const rounded = Math.round(value * 1000) / 1000;
  return String(rounded === 0 ? 0 : rounded);
}

export function escape(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
}

export function element(name: string, attributes: Attributes, content = ''): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? mm(value) : escape(value!)}"`);
  return content === '' ? `<${name}${written.join('')}/>` : `<${name}${written.join('')}>${content}</${name}>`;
}

/**
 * The whole picture, `width` × `height` mm. A page may set another width; the height follows.
 * The text alternative stands in aria-label, which a browser hands on to the tags of a PDF.
 */
export function figure(frame: Frame, width: number, height: number, alternative: string, parts: readonly string[]): string {
  const enlarge = frame.enlarge ?? 1;
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      id: frame.id,
      class: 'figure',
      viewBox: `0 0 ${mm(width)} ${mm(height)}`,
      width: `${mm(width * enlarge)}mm`,
      height: `${mm(height * enlarge)}mm`,
      role: 'img',
      'aria-label': alternative,
      'font-family': "'STIX Two Text', serif",
      'stroke-linejoin': 'round',
    },
    parts.join(''),
  );
}

/** Any number of open polylines as the data of one path. */
export function trace(lines: readonly (readonly Point[])[]): string {
  return lines.map((line) => `M${line.map(([x, y]) => `${mm(x)} ${mm(y)}`).join('L')}`).join('');
}

/** Lines of one width in one path, which prints faster than many elements; nothing for no lines. */
export function lines(list: readonly (readonly Point[])[], width: number, more: Attributes = {}): string {
  if (list.length === 0) return '';
  return element('path', { d: trace(list), fill: 'none', stroke: '#000', 'stroke-width': width, ...more });
}

/** A black shape without an outline, as an arrow's head. */
export function solid(corners: readonly Point[]): string {
  return element('path', { d: `${trace([corners])}Z` });
}

/** A closed shape, white unless told. */
export function shape(corners: readonly Point[], more: Attributes = {}): string {
  return element('path', { d: `${trace([corners])}Z`, fill: '#fff', stroke: '#000', 'stroke-width': pen.thin, ...more });
}

export function box(x: number, y: number, width: number, height: number, more: Attributes = {}): string {
  return element('rect', { x, y, width, height, fill: '#fff', stroke: '#000', 'stroke-width': pen.thin, ...more });
}

/** A ground without an outline. */
export function patch(x: number, y: number, width: number, height: number, fill = '#fff'): string {
  return element('rect', { x, y, width, height, fill });
}

export function circle([cx, cy]: Point, r: number, more: Attributes = {}): string {
  return element('circle', { cx, cy, r, fill: '#fff', stroke: '#000', 'stroke-width': pen.line, ...more });
}
