import type { ErrorCode, YAMLError } from 'yaml';
import type { Mistake } from '../mistake.ts';
import { quote } from './quote.ts';

/** Errors that do not hide the meaning of the other lines. */
const HARMLESS: readonly ErrorCode[] = ['DUPLICATE_KEY', 'TAG_RESOLVE_FAILED'];

export function isHarmless(error: YAMLError): boolean {
  return HARMLESS.includes(error.code);
}

/** What to do about the usual errors, after the line they stand in. */
const ADVICE: Partial<Record<ErrorCode, string>> = {
  TAB_AS_INDENT: 'starts with a tab; use spaces',
  TAG_RESOLVE_FAILED: 'holds a tag (!); take it out, or put the value in quotation marks',
  BAD_ALIAS: 'has a * where a value should start; put the value in quotation marks',
  BLOCK_AS_IMPLICIT_KEY: 'holds a second ": "; put the value in quotation marks',
  BAD_SCALAR_START: 'starts its value with a sign that has a meaning of its own; put the value in quotation marks',
  BAD_DQ_ESCAPE: 'holds a backslash (\\) between double quotation marks; use single ones',
  MISSING_CHAR: 'lacks a closing mark or a colon; write entries as "rows: 4" and close every quotation mark',
};
const OTHERWISE = 'cannot be read; write one entry a line, such as "rows: 4", and the items of a list below it, each after "- "';

/** An error of the YAML parser in words for a teacher; `row` gives the line of an offset. */
export function yamlMistake({ code, pos: [from] }: YAMLError, text: string, row: (offset: number) => number): Mistake {
  const line = row(from);
  if (code === 'DUPLICATE_KEY') {
    const field = /^[^:\s]*/.exec(text.slice(from))![0];
    return { row: line, field, what: 'appears twice; keep one of the two entries' };
  }
  if (code === 'MULTIPLE_DOCS') {
    return { row: line, what: 'a second document starts here (---); give each order a file of its own' };
  }
  return { row: line, what: `${quote(text.split('\n')[line - 1] ?? '')} ${ADVICE[code] ?? OTHERWISE}` };
}
