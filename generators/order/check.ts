import type { z } from 'zod';
import type { Mistake, Place } from '../mistake.ts';
import { allMistakes } from './all-mistakes.ts';
import { experiments } from '../experiments/index.ts';
import { entries, type Entry } from './fields.ts';
import { objectIn } from './flags.ts';
import type { Known } from './known.ts';
import { didYouMean } from '../near-miss.ts';
import { quote } from './quote.ts';
import { FIRST, orderSchema, type Order } from './schema.ts';

/** Where the value at a path of the order was written. */
export type WhereIs = (path: readonly PropertyKey[]) => Place;

/**
 * Check the values of an order, as text or ready. Throws a UserMistake with every problem, each in the words
 * of the entry it belongs to and at the place that `whereIs` gives.
 */
export function checkOrder(values: unknown, known: Known, whereIs: WhereIs = inField): Order {
  return checkEntries(orderSchema(known), withUsual(values), values, whereIs);
}

/** The same for any file of entries; `written` are the values without what was put in their place. */
export function checkEntries<Schema extends z.ZodObject>(schema: Schema, values: unknown, written: unknown, whereIs: WhereIs): z.output<Schema> {
  const result = schema.safeParse(values, { reportInput: true });
  if (result.success) return result.data;
  throw allMistakes(result.error.issues.flatMap((issue) => inWords(issue, written, schema, whereIs)));
}

/** What an experiment takes where the order names nothing; an experiment that is mistyped is told of by itself. */
function withUsual(values: unknown): unknown {
  if (!isObject(values) || Array.isArray(values)) return values;
  const { experiment = FIRST } = values as { experiment?: unknown };
  return { ...(experiments[String(experiment).trim()] ?? experiments[FIRST]!).usual, ...values };
}

function inField(path: readonly PropertyKey[]): Place {
  return path.length === 0 ? {} : { field: fieldName(path) };
}

/** 'wires 2' for the second wire, 'limits.l' for an entry below another. */
export function fieldName(path: readonly PropertyKey[]): string {
  return path.map((key, i) => (typeof key === 'number' ? ` ${key + 1}` : `${i === 0 ? '' : '.'}${String(key)}`)).join('');
}

function inWords(issue: z.core.$ZodIssue, values: unknown, schema: z.ZodObject, whereIs: WhereIs): Mistake[] {
  const { path } = issue;
  const { inner, entry } = fieldAt(schema, path);
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({ ...whereIs([...path, key]), what: unknownKey(key, Object.keys(inner?.shape ?? {})) }));
  }
  if (!entry) return [{ ...whereIs(path), what: 'the order is not a list of entries; write one entry a line, such as "rows: 4"' }];
  // A wire's own words, and those alone, come from this project; the rest is zod's.
  if (path[0] === 'wires' && path.length === 2) return [{ ...whereIs(path), what: issue.message }];
  return [{ ...whereIs(path), what: refusal(written(values, path) ?? issue.input, entry) }];
}

/** The value at a path as the user wrote it; undefined where it is part of a text. */
function written(values: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce((value, key) => (isObject(value) ? value[key] : undefined), values);
}

function isObject(value: unknown): value is Record<PropertyKey, unknown> {
  return typeof value === 'object' && value !== null;
}

function refusal(value: unknown, { takes, words }: Entry): string {
  if (value === undefined) return `is missing; it takes ${takes}`;
  const near = typeof value === 'string' && words ? didYouMean(value, words) : '';
  return `${quote(value)} does not fit here${near || `; it takes ${takes}`}`;
}

function unknownKey(key: string, keys: string[]): string {
  return `there is no entry ${quote(key)}${didYouMean(key, keys) || `; the entries are ${keys.join(', ')}`}`;
}

/** The innermost object and the innermost entry on the way down a path. */
function fieldAt(schema: z.ZodObject, path: readonly PropertyKey[]): { inner?: z.ZodObject; entry?: Entry } {
  let inner: z.ZodObject | undefined = schema;
  let entry: Entry | undefined;
  for (const key of path) {
    const field: z.core.$ZodType | undefined = inner?.shape[String(key)];
    if (!field) break;
    entry = entries.get(field) ?? entry;
    inner = objectIn(field);
  }
  return { ...(inner && { inner }), ...(entry && { entry }) };
}
