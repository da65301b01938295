import { z } from 'zod';
import { entries, type Entry } from './fields.ts';
import type { Known } from './known.ts';
import { orderSchema } from './schema.ts';

/** One entry of the order, as the documentation lists it. */
export interface EntryRow {
  /** Name in the order file; 'limits.l' stands below limits. */
  key: string;
  takes: string;
  /** As it would be written in the file; undefined where there is none. */
  fallback?: string;
  /** In words, where what stands in its place depends on the rest. */
  without?: string;
  meaning: string;
  flag: string;
}

/** A command-line flag that sets an entry of the order. */
export interface OrderFlag {
  /** Without its dashes: 'limit-l'. */
  name: string;
  /** Where the order holds it: ['limits', 'l']. */
  path: readonly string[];
  /** It may be given several times. */
  many: boolean;
  takes: string;
  meaning: string;
}

/** What the flags of a command line hold: text, or a list for a flag that may be repeated. */
export type Flags = Readonly<Record<string, string | readonly string[] | undefined>>;

/** Every entry an order may have, in the order of the schema. */
export function describeOrder(known: Known): EntryRow[] {
  return fields(orderSchema(known)).map(({ path, field, entry }) => {
    const fallback = field instanceof z.ZodPrefault ? String(field.def.defaultValue) : '';
    return {
      key: path.join('.'), takes: entry.takes, ...(fallback !== '' && { fallback }),
      ...(entry.without !== undefined && { without: entry.without }),
      meaning: entry.meaning, flag: `--${entry.flag ?? path.join('-')}`,
    };
  });
}

/** Every flag that sets an entry. */
export function orderFlags(known: Known): OrderFlag[] {
  return fields(orderSchema(known)).map(({ path, entry }) => ({
    name: entry.flag ?? path.join('-'), path, many: entry.many ?? false, takes: entry.takes, meaning: entry.meaning,
  }));
}

function fields(schema: z.ZodObject, above: string[] = []): { path: string[]; field: z.core.$ZodType; entry: Entry }[] {
  return Object.entries(schema.shape).flatMap(([name, field]) => {
    const path = [...above, name];
    const inner = objectIn(field);
    const entry = entries.get(field);
    if (inner) return fields(inner, path);
    return entry ? [{ path, field, entry }] : [];
  });
}

/** The object that a field holds, if it holds one. */
export function objectIn(field: z.core.$ZodType): z.ZodObject | undefined {
  if (field instanceof z.ZodPrefault) return objectIn(field.def.innerType);
  return field instanceof z.ZodObject ? field : undefined;
}
