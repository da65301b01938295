import { plain } from './plain.ts';
import type { PartData, Questions } from './data.ts';

/** Columns of the CSV: one row for each part of each question of each version. */
export const COLUMNS = ['version', 'roll', 'number', 'part', 'topic', 'level', 'form', 'family', 'direction', 'marks', 'question', 'options', 'answer', 'unit', 'accepted from', 'accepted to'] as const;

/** All questions for a spreadsheet: every cell in quotes, and none that it would take for a formula. */
export function csv({ versions }: Questions): string {
  const rows = versions.flatMap(({ name, roll = '', questions }) =>
    questions.flatMap(({ number, topic, level, form, story = '', parts }) => parts.map((part, i) => [name, roll, String(number), part.label, topic, level, form, part.family, part.ask, String(part.marks), i === 0 ? `${story} ${part.text}`.trim() : part.text, ...answerCells(part)])),
  );
  return `${[[...COLUMNS], ...rows].map((cells) => cells.map(cellText).join(',')).join('\r\n')}\r\n`;
}

function answerCells({ options, answers, words }: PartData): string[] {
  const right = options.find((option) => option.right)?.letter;
  const own = [...answers.map(({ symbol, shown }) => `${symbol} = ${shown}`), ...words].join('; ');
  const each = (cell: (answer: PartData['answers'][number]) => string) => (right === undefined ? answers.map(cell).join('; ') : '');
  return [options.map(({ letter, text }) => `${letter} ${text}`).join(' | '), right ?? own, each(({ unit }) => unit), each(({ from }) => plain(from)), each(({ to }) => plain(to))];
}

/** A bare number stays one, its minus sign included. */
const NUMBER = /^-?\d+(\.\d+)?(e-?\d+)?$/;

function cellText(text: string): string {
  const harmless = /^[=+\-@\t\r\n]/.test(text) && !NUMBER.test(text) ? `'${text}` : text;
  return `"${harmless.replaceAll('"', '""')}"`;
}
