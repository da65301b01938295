import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { isInMathsCut } from './maths-face.ts';
import { characters } from './woff2.ts';

const require = createRequire(import.meta.url);

/**
 * Where a character is looked for, in this order: the typeface of the sheets first, then one for each script, since
 * names come in all of them. Packages cut a typeface into slices of a few hundred characters.
 */
const TYPEFACES: readonly [name: string, style: string][] = [
  ['@fontsource/stix-two-text', '400-normal'],
  ['@fontsource/stix-two-math', '400-normal'],
  ['@fontsource/noto-serif-devanagari', '400-normal'],
  ['@fontsource/noto-serif-bengali', '400-normal'],
  ['@fontsource/noto-serif-gujarati', '400-normal'],
  ['@fontsource/noto-sans-gurmukhi', '400-normal'],
  ['@fontsource/noto-sans-oriya', '400-normal'],
  ['@fontsource/noto-serif-tamil', '400-normal'],
  ['@fontsource/noto-serif-telugu', '400-normal'],
  ['@fontsource/noto-sans-kannada', '400-normal'],
  ['@fontsource/noto-serif-malayalam', '400-normal'],
  ['@fontsource/noto-naskh-arabic', '400-normal'],
  ['@fontsource/noto-serif-hebrew', '400-normal'],
  ['@fontsource-variable/noto-serif-sc', 'wght-normal'],
  ['@fontsource-variable/noto-serif-kr', 'wght-normal'],
];

/** One slice of a typeface, and the family that a style sheet calls it by. */
export interface Face {
  family: string;
  /** A path inside the installed packages. */
  file: string;
}

interface Slice extends Face {
  ranges: [first: number, last: number][];
}

/** In every document, by styles/fonts.css.njk. */
const STANDING = 'stix-two-text-latin';
/** Of this a part is in every document, see maths-face.ts. */
const MATHS = 'stix-two-math-latin';

const EVERYTHING: [number, number] = [0, 0x10ffff];

const slices = new Map<string, Slice[]>();
const glyphs = new Map<string, Set<number>>();
const found = new Map<number, Face | undefined>();

/** The faces that a text needs beside the standing ones, in the order of the typefaces. What no face has is left out. */
export function facesFor(text: string): Face[] {
  const needed = new Set([...new Set(text)].flatMap((character) => further(character) ?? []));
  return TYPEFACES.flatMap(([name, style]) => slicesOf(name, style)).filter((slice) => needed.has(slice));
}

/** The face of a character that no standing one prints. */
function further(character: string): Face | undefined {
  const face = faceOf(character);
  const standing = face?.family === STANDING || (face?.family === MATHS && isInMathsCut(character));
  return standing ? undefined : face;
}

/** The characters of a text that no bundled face can print, each once; invisible ones are nobody's loss. */
export function unprintable(text: string): string[] {
  return [...new Set(text)].filter((character) => !/[\s\p{Default_Ignorable_Code_Point}]/u.test(character) && !faceOf(character));
}

function faceOf(character: string): Face | undefined {
  const code = character.codePointAt(0)!;
  if (!found.has(code)) found.set(code, look(code));
  return found.get(code);
}

function look(code: number): Face | undefined {
  for (const [name, style] of TYPEFACES) {
    const slice = slicesOf(name, style).find((one) => one.ranges.some(([first, last]) => code >= first && code <= last) && has(one.file, code));
    if (slice) return slice;
  }
  return undefined;
}

function has(file: string, code: number): boolean {
  const kept = glyphs.get(file) ?? characters(readFileSync(require.resolve(file)));
  glyphs.set(file, kept);
  return kept.has(code);
}

function slicesOf(name: string, style: string): Slice[] {
  const kept = slices.get(name) ?? readSlices(name, style);
  slices.set(name, kept);
  return kept;
}

/**
 * A package lists its slices with what they are meant for: { "greek": "U+0370-0377,U+037A", "[4]": … }.
 * Where there is one alone, it holds more than it lists.
 */
function readSlices(name: string, style: string): Slice[] {
  const listed = JSON.parse(readFileSync(require.resolve(`${name}/unicode.json`), 'utf8')) as Record<string, string>;
  const typeface = name.slice(name.indexOf('/') + 1);
  const entries = Object.entries(listed);
  return entries.map(([slice, ranges]) => {
    const family = `${typeface}-${slice.replace(/[[\]]/g, '')}`;
    return { family, file: `${name}/files/${family}-${style}.woff2`, ranges: entries.length === 1 ? [EVERYTHING] : ranges.split(',').map(range) };
  });
}

function range(text: string): [number, number] {
  const [first, last] = text.replace(/^U\+/i, '').split('-').map((hex) => parseInt(hex, 16));
  return [first!, last ?? first!];
}

const urls = new Map<string, string>();

/** A font of an installed package, as a data URL. */
export function fontUrl(file: string): string {
  const kept = urls.get(file) ?? `data:font/woff2;base64,${readFileSync(require.resolve(file)).toString('base64')}`;
  urls.set(file, kept);
  return kept;
}
