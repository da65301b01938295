import { isAlias, isMap, isScalar, isSeq, Lexer, LineCounter, parseDocument, type YAMLError } from 'yaml';
import { UserMistake, type Mistake } from '../mistake.ts';
import { quote } from './quote.ts';

/** The entries of a YAML text, every value as the text that stands in the file, and the line of each. */
export interface YamlText {
  values: unknown;
  /** Line, from 1, of the entry at a path; that of the entry around it where there is none. */
  rowOf(path: readonly PropertyKey[]): number;
  /** Problems that leave the rest readable. */
  mistakes: Mistake[];
}

const LONGEST = 100_000;
/** An order is two deep; the parser takes thousands of levels for a reason to run out of memory. */
const DEEPEST = 30;

/**
 * Read YAML as plain text values: 007 stays '007' and no stays 'no', since the order decides what they mean.
 * An entry left blank counts as not written. Throws a UserMistake for what cannot be read as YAML.
 */
export function readYaml(text: string, file: string): YamlText {
  if (text.length > LONGEST) throw new UserMistake([{ file, what: `the file is longer than ${LONGEST} letters; an order is a page at most` }]);
  if (deeperThan(DEEPEST, text)) throw new UserMistake([{ file, what: 'brackets or dashes are nested too deep; write one entry a line, such as "rows: 4"' }]);
  const lines = new LineCounter();
  const document = parseDocument(text, { schema: 'failsafe', prettyErrors: false, lineCounter: lines });
  const row = (offset: number) => lines.linePos(offset).line;
  const errors = [...document.errors, ...document.warnings].map((error) => ({ code: error.code, mistake: inWords(error, text, file, row) }));
  if (errors.some(({ code }) => !HARMLESS.has(code))) throw new UserMistake(errors.map(({ mistake }) => mistake));
  const walk = new Walk(file, row);
  const values = walk.plain(document.contents, []);
  return { values, rowOf: (path) => walk.rowOf(path), mistakes: [...errors.map(({ mistake }) => mistake), ...walk.mistakes] };
}

/** Errors that do not hide the meaning of the other lines. */
const HARMLESS = new Set<string>(['DUPLICATE_KEY', 'TAG_RESOLVE_FAILED']);

/** How deep brackets, and dashes on one line, are nested, seen by the lexer, which does not recurse. */
function deeperThan(most: number, text: string): boolean {
  let brackets = 0;
  let dashes = 0;
  for (const lexeme of new Lexer().lex(text)) {
    if (lexeme === '[' || lexeme === '{') brackets++;
    else if (lexeme === ']' || lexeme === '}') brackets--;
    else if (lexeme === '-' || lexeme === '?' || lexeme === ':') dashes++;
    else if (lexeme.includes('\n')) dashes = 0;
    if (brackets > most || dashes > most) return true;
  }
  return false;
}

class Walk {
  readonly mistakes: Mistake[] = [];
  readonly #rows = new Map<string, number>();
  readonly #file: string;
  readonly #row: (offset: number) => number;

  constructor(file: string, row: (offset: number) => number) {
    this.#file = file;
    this.#row = row;
  }

  rowOf(path: readonly PropertyKey[]): number {
    return this.#rows.get(key(path)) ?? (path.length === 0 ? 1 : this.rowOf(path.slice(0, -1)));
  }

  /** Undefined for what is blank. */
  plain(node: unknown, path: string[]): unknown {
    if (isScalar(node)) return typeof node.value === 'string' && node.value !== '' ? node.value : undefined;
    if (isSeq(node)) return node.items.map((item, i) => this.#at(item, item, [...path, String(i)])).filter((item) => item !== undefined);
    if (isMap(node)) {
      const pairs = node.items.map((pair): [string, unknown] => {
        const name = isScalar(pair.key) ? String(pair.key.value) : quote(String(pair.key));
        return [name, this.#at(pair.key, pair.value, [...path, name])];
      });
      return Object.fromEntries(pairs.filter(([, value]) => value !== undefined));
    }
    if (isAlias(node)) {
      this.mistakes.push({ file: this.#file, row: this.rowOf(path), what: `${quote(`*${node.source}`)} refers to another entry; write the value itself (in quotation marks if it starts with a *)` });
    }
    return undefined;
  }

  #at(mark: unknown, node: unknown, path: string[]): unknown {
    const offset = (mark as { range?: readonly number[] | null } | null)?.range?.[0];
    if (offset !== undefined) this.#rows.set(key(path), this.#row(offset));
    return this.plain(node, path);
  }
}

function key(path: readonly PropertyKey[]): string {
  return JSON.stringify(path.map(String));
}

function inWords(error: YAMLError, text: string, file: string, row: (offset: number) => number): Mistake {
  const [from] = error.pos;
  const line = row(from);
  const place = { file, row: line };
  const written = quote((text.split('\n')[line - 1] ?? '').trim());
  switch (error.code) {
    case 'DUPLICATE_KEY': {
      const field = /^[^:\s]+/.exec(text.slice(from))?.[0] ?? '';
      return { ...place, field, what: 'appears twice; keep one of the two entries' };
    }
    case 'TAB_AS_INDENT':
      return { ...place, what: 'a tab stands at the start of the line; use spaces' };
    case 'MULTIPLE_DOCS':
      return { ...place, what: 'a second document starts here (---); give each order a file of its own' };
    case 'TAG_RESOLVE_FAILED':
      return { ...place, what: `${written} holds a tag (!); take it out, or put the value in quotation marks` };
    case 'BAD_ALIAS':
      return { ...place, what: `${written} has a * where a value should start; put the value in quotation marks` };
    case 'MISSING_CHAR':
      return { ...place, what: `${written} lacks a closing mark or a colon; write entries as "rows: 4" and close every quotation mark` };
    case 'BLOCK_AS_IMPLICIT_KEY':
      return { ...place, what: `${written} holds a second ": "; put the value in quotation marks` };
    case 'BAD_SCALAR_START':
      return { ...place, what: `${written} starts its value with a sign that has a meaning of its own; put the value in quotation marks` };
    default:
      return { ...place, what: `${written} cannot be read; write one entry a line, such as "rows: 4", and list items on lines of their own after "- "` };
  }
}
