import type { PaperQuestionView } from './paper-view.ts';
import { sentenceText } from './view.ts';

/** Columns of the CSV, one row a question of a version. */
const COLUMNS = ['version', 'number', 'family', 'form', 'marks', 'question', 'options', 'answer', 'accepted from', 'accepted to'];

/** All questions as CSV for a spreadsheet: text in quotes, and never a cell that a spreadsheet would take for a formula. */
export function csv(versions: readonly { name: string; questions: readonly PaperQuestionView[] }[]): string {
  const rows = versions.flatMap(({ name, questions }) => questions.map((one) => row(name, one)));
  return `${[COLUMNS, ...rows].map((cells) => cells.map(cellText).join(',')).join('\r\n')}\r\n`;
}

function row(version: string, { number, form, marks, view, options }: PaperQuestionView): string[] {
  const texts = options.map(({ letter, value, say }) => `${letter} ${say ? sentenceText(say) : value!.text}`);
  const right = options.find(({ isRight }) => isRight)?.letter;
  const numbers = view.answers.map(({ symbol, value }) => `${symbol.text} = ${value.text}`);
  const answer = right ?? ([...numbers, ...view.verdicts.map(({ say }) => sentenceText(say))].join('; '));
  const range = (end: 'low' | 'high') => view.answers.map((one) => one[end].text).join('; ');
  return [version, String(number), view.family, form, String(marks), `${sentenceText(view.stem)} ${sentenceText(view.ask)}`, texts.join(' | '), answer, range('low'), range('high')];
}

function cellText(text: string): string {
  const harmless = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return `"${harmless.replaceAll('"', '""')}"`;
}
