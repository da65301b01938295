import { LineCounter, parseDocument } from 'yaml';
import { UserMistake, type Mistake } from '../mistake.ts';
import { allMistakes } from './all-mistakes.ts';
import { nestsDeeperThan } from './yaml-depth.ts';
import { isHarmless, yamlMistake } from './yaml-mistake.ts';
import { plainValues, type PlainValues } from './yaml-values.ts';

/** The entries of a YAML text as text. */
export interface YamlText extends Pick<PlainValues, 'values' | 'rowOf'> {
  /** Problems that leave the rest readable. */
  mistakes: Mistake[];
}

const LONGEST = 100_000;
/** An order is two deep; far deeper the parser can run out of memory, which nothing catches. */
const DEEPEST = 30;

/**
 * Read YAML as plain text values: 007 stays '007' and no stays 'no', since the order decides what they mean.
 * Throws a UserMistake for what cannot be read as YAML.
 */
export function readYaml(text: string, file: string): YamlText {
  if (text.length > LONGEST) {
    throw new UserMistake([{ file, what: `the file is longer than ${LONGEST} letters; an order is a page at most` }]);
  }
  if (nestsDeeperThan(DEEPEST, text)) {
    throw new UserMistake([{ file, what: 'brackets or dashes are nested too deep; write one entry a line, such as "rows: 4"' }]);
  }
  const lines = new LineCounter();
  const document = parseDocument(text, { schema: 'failsafe', prettyErrors: false, lineCounter: lines });
  const row = (offset: number) => lines.linePos(offset).line;
  const errors = [...document.errors, ...document.warnings];
  const mistakes = errors.map((error) => ({ file, ...yamlMistake(error, text, row) }));
  if (!errors.every(isHarmless)) throw allMistakes(mistakes);
  const read = plainValues(document.contents, row);
  if (read.aliases.length > 0) throw allMistakes([...mistakes, ...read.aliases.map((mistake) => ({ file, ...mistake }))]);
  return { values: read.values, rowOf: read.rowOf, mistakes };
}
