import { z } from 'zod';
import { type Mistake, UserMistake } from '../mistake.ts';
import { didYouMean } from '../near-miss.ts';

/** Checks a table as it comes from its file; all its mistakes at once, each with the place in the file. */
export function readTable<Table>(schema: z.ZodType<Table>, table: unknown, file: string): Table {
  const result = schema.safeParse(table);
  if (result.success) return result.data;
  throw new UserMistake(result.error.issues.map((issue) => ({ file, ...placed(issue) })));
}

function placed(issue: z.core.$ZodIssue): Mistake {
  return issue.path.length === 0
    ? { what: issue.message }
    : { field: issue.path.join('.'), what: issue.message };
}

/** The entry of that name in a table; a UserMistake with near misses where there is none. */
export function entry<T>(kind: string, name: string, table: Readonly<Record<string, T>>): T {
  const found = Object.hasOwn(table, name) ? table[name] : undefined;
  if (found !== undefined) return found;
  const names = Object.keys(table);
  throw new UserMistake(`no ${kind} "${name}"${didYouMean(name, names) || `; choose one of ${names.join(', ')}`}`);
}

/** A decimal number written as text, so that its digits are kept: '49e-8', '0.60'. */
export const decimalText = z
  .string()
  .regex(/^-?\d+(\.\d+)?(e-?\d+)?$/, 'write a decimal number in quotes, like "0.376" or "49e-8"');

/** The same without a power of ten and above zero. */
export const plainText = z
  .string()
  .regex(/^\d+(\.\d+)?$/, 'write a plain decimal number in quotes, like "0.5"')
  .refine((text) => Number(text) > 0, 'must be above zero');

/** Where a value comes from, in words. */
export const sourceText = z.string().min(1, 'say where the value comes from');
