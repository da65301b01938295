import { type Mistake, UserMistake } from '../mistake.ts';
import { type WhereIs, fieldName } from './check.ts';
import { readYaml } from './yaml-text.ts';

/** A YAML file of entries in the course of being checked part by part, so that all its mistakes are told at once. */
export interface EntriesFile {
  values: unknown;
  whereIs: WhereIs;
  /** Every mistake so far. */
  mistakes: Mistake[];
  /** What `read` gives; its mistakes join the others. */
  gather<T>(read: () => T): T | undefined;
}

/** Reads the text of such a file; UserMistake for what is no YAML at all. */
export function entriesFile(source: string, file: string): EntriesFile {
  const { values = {}, rowOf, mistakes } = readYaml(source, file);
  return {
    values,
    mistakes,
    whereIs(path) {
      const row = rowOf(path);
      return { file, ...(row !== undefined && { row }), ...(path.length > 0 && { field: fieldName(path) }) };
    },
    gather(read) {
      try {
        return read();
      } catch (error) {
        if (!(error instanceof UserMistake)) throw error;
        mistakes.push(...error.mistakes);
        return undefined;
      }
    },
  };
}
