import { brotliDecompressSync } from 'node:zlib';

/** Places in the file, from W3C, WOFF File Format 2.0, sections 4 and 5. */
const HEADER = 48;
const OTHER_TAG = 63;
const TAG = { cmap: 0, hmtx: 3, glyf: 10, loca: 11 } as const;

/** The code points for which a WOFF2 font has a glyph. */
export function characters(font: Buffer): Set<number> {
  const compressed = font.readUInt32BE(20);
  const { offset, length, end } = findCmap(font);
  const tables = brotliDecompressSync(font.subarray(end, end + compressed));
  return mapped(tables.subarray(offset, offset + length));
}

/** Where the table lies among the unpacked ones, and where the directory ends. */
function findCmap(font: Buffer): { offset: number; length: number; end: number } {
  let at = HEADER;
  let offset = 0;
  let cmap: { offset: number; length: number } | undefined;
  const number = () => {
    let value = 0;
    for (;;) {
      const byte = font[at++]!;
      value = value * 128 + (byte & 127);
      if (byte < 128) return value;
    }
  };
  for (let left = font.readUInt16BE(12); left > 0; left--) {
    const flags = font[at++]!;
    const tag = flags & 63;
    if (tag === OTHER_TAG) at += 4;
    const original = number();
    const length = isTransformed(tag, flags >> 6) ? number() : original;
    if (tag === TAG.cmap) cmap = { offset, length };
    offset += length;
  }
  if (!cmap) throw new Error('a font without a table of characters');
  return { ...cmap, end: at };
}

/** For outlines, version 3 means untouched; for every other table, version 0. */
function isTransformed(tag: number, version: number): boolean {
  return tag === TAG.glyf || tag === TAG.loca ? version !== 3 : version !== 0;
}

/** The characters of a `cmap` table, of its formats 4 and 12 (ISO/IEC 14496-22, 5.2.1). */
function mapped(cmap: Buffer): Set<number> {
  const found = new Set<number>();
  for (let i = 0; i < cmap.readUInt16BE(2); i++) {
    const table = cmap.subarray(cmap.readUInt32BE(8 + 8 * i));
    const format = table.readUInt16BE(0);
    for (const [first, last, glyph] of format === 12 ? groups(table) : format === 4 ? segments(table) : []) {
      for (let code = first; code <= last; code++) if (glyph(code) !== 0) found.add(code);
    }
  }
  return found;
}

type Run = [first: number, last: number, glyph: (code: number) => number];

function groups(table: Buffer): Run[] {
  return Array.from({ length: table.readUInt32BE(12) }, (_, i): Run => {
    const [first, last, start] = [0, 4, 8].map((field) => table.readUInt32BE(16 + 12 * i + field)) as [number, number, number];
    return [first, last, (code) => start + code - first];
  });
}

function segments(table: Buffer): Run[] {
  const count = table.readUInt16BE(6) / 2;
  const entry = (list: number, i: number) => table.readUInt16BE(list + 2 * i);
  const [ends, starts, deltas, offsets] = [14, 16 + 2 * count, 16 + 4 * count, 16 + 6 * count] as const;
  return Array.from({ length: count }, (_, i): Run => {
    const [first, offset] = [entry(starts, i), entry(offsets, i)];
    const direct = (code: number) => (code + entry(deltas, i)) & 0xffff;
    const listed = (code: number) => table.readUInt16BE(offsets + 2 * i + offset + 2 * (code - first));
    // The last segment is the terminator, 0xffff.
    return [first, Math.min(entry(ends, i), 0xfffe), offset === 0 ? direct : listed];
  });
}
