import { isAlias, isMap, isScalar, isSeq, type Pair, type ParsedNode } from 'yaml';
import type { Mistake } from '../mistake.ts';
import { quote } from './quote.ts';

/** What a YAML text holds, every value as the text that stands there. */
export interface PlainValues {
  /** Objects, lists and text; undefined where nothing is written. */
  values: unknown;
  /** The line of the value at a path, or of the entry around it; undefined where neither is written. */
  rowOf(path: readonly PropertyKey[]): number | undefined;
  /** Values that only point to another one. They are not followed: a few lines of them can stand for millions. */
  aliases: Mistake[];
}

type Path = readonly PropertyKey[];

/** Walk the tree; `row` gives the line of an offset. An entry left blank counts as not written. */
export function plainValues(root: ParsedNode | null, row: (offset: number) => number): PlainValues {
  const rows = new Map<string, number>();
  const aliases: Mistake[] = [];

  function plain(node: unknown, path: Path): unknown {
    if (isScalar(node)) return String(node.value ?? '');
    if (isSeq(node)) return node.items.map((item, i) => placed(item, item, [...path, i]));
    if (isMap(node)) return Object.fromEntries(node.items.flatMap((pair) => entry(pair, path)));
    if (isAlias(node)) aliases.push(aliasMistake(node.source, rowOf(path)));
    return undefined;
  }

  function entry({ key, value }: Pair, path: Path): [string, unknown][] {
    const name = isScalar(key) ? String(key.value ?? '') : String(key);
    const found = placed(key, value, [...path, name]);
    return found === '' || found === undefined ? [] : [[name, found]];
  }

  function placed(mark: unknown, node: unknown, path: Path): unknown {
    const offset = (mark as ParsedNode | null)?.range[0];
    if (offset !== undefined) rows.set(JSON.stringify(path), row(offset));
    return plain(node, path);
  }

  function rowOf(path: Path): number | undefined {
    return path.length === 0 ? undefined : (rows.get(JSON.stringify(path)) ?? rowOf(path.slice(0, -1)));
  }

  return { values: root === null ? undefined : plain(root, []), rowOf, aliases };
}

function aliasMistake(name: string, row: number | undefined): Mistake {
  const what = `${quote(`*${name}`)} refers to another entry; write the value itself, in quotation marks if it starts with a *`;
  return { ...(row !== undefined && { row }), what };
}
