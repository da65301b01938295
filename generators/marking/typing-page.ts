import type { Own } from '../quantities/evaluate.ts';
import type { Program } from '../quantities/program.ts';
import type { Interval } from '../quantities/step.ts';
import type { Issue } from '../sheets/issue.ts';
import { workOut } from '../sheets/worked.ts';
import type { Column } from './columns.ts';
import type { Decimal } from './entry.ts';
import { headOf } from './heads.ts';
import { type Work, exactly, reach, widened } from './reach.ts';
import type { Scheme } from './scheme.ts';
import { chainCode } from './typing-code.ts';
import type { MarkingWords } from './words.ts';

/** What the page for typing answers needs, as JSON, and the steps of each form as code. */
export interface TypingPage {
  words: MarkingWords['typing'];
  lead: string;
  data: string;
  /** One function body a form. */
  forms: string[];
}

interface TypingSheet {
  roll: string;
  name: string;
  code: string;
  form: number;
  readings: Record<string, number[]>;
  /** By answer: the key's range; and how far the range reaches below and above where every earlier figure is given, as a part of the value where figures are asked for. */
  key: Interval[];
  beside: Interval[];
}

export function typingPage(issues: readonly Issue[], programFor: (issue: Issue) => Program, columns: readonly Column[], scheme: Scheme, symbols: Record<string, string>, words: MarkingWords, decimal: Decimal): TypingPage {
  const forms: Program[] = [];
  const formOf = (program: Program) => (forms.includes(program) ? forms.indexOf(program) : forms.push(program) - 1);
  const sheets = issues.map((issue): TypingSheet => sheetOf(issue, programFor(issue), columns, formOf));
  const data = {
    words: words.typing,
    decimal,
    units: scheme.units,
    heads: [words.heads.roll, words.heads.name, words.heads.code, ...columns.map((column) => headOf(column, symbols, words.heads))],
    columns: columns.map(({ id, row, unit, digits, inTable }) => ({ id, row, unit, inTable, relative: 'figures' in digits })),
    // The table that each reading belongs to, so that the page can count its rows.
    tables: Object.fromEntries(forms[0]!.steps.flatMap((step) => ('per' in step && step.per && step.kind === 'reading' ? [[step.per, step.id]] : []))),
    storage: `slidewire ${issues[0]!.code}`,
    sheets,
  };
  // No text of ours can end the script that it stands in.
  return { words: words.typing, lead: scheme.units === 'typed' ? words.typing.lead : words.typing.leadAssumed, data: JSON.stringify(data).replaceAll('<', '\\u003c'), forms: forms.map(chainCode) };
}

function sheetOf({ roll, name, code, sheet }: Issue, program: Program, columns: readonly Column[], formOf: (program: Program) => number): TypingSheet {
  const { values, cells } = workOut(sheet, program);
  const own: Own = {};
  for (const { id, row } of columns) (own[id] ??= [])[row] = values.written.get(id)![row]!;
  const whole: Work = { sheet, program, own: {} };
  const key = columns.map(({ id, row }) => widened(whole, id, cells(id).map(({ accept }) => accept))[row]!);
  const work: Work = { sheet, program, own };
  const all = reach(work);
  const beside = columns.map(({ id, row, digits }): Interval => {
    const [low, high] = widened(work, id, all.get(id)!)[row]!;
    const exact = exactly(work, id).get(id)![row]!;
    return 'figures' in digits ? [low / exact - 1, high / exact - 1] : [low - exact, high - exact];
  });
  const readings = Object.fromEntries(Object.entries(sheet.readings).map(([id, read]) => [id, [read].flat().map(Number)]));
  return { roll, name, code, form: formOf(program), readings, key, beside };
}
