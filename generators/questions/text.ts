import { fill } from '../quantities/spoken.ts';
import { type QuestionView, sentenceText } from './view.ts';
import type { QuestionWords } from './words.ts';

/** The question alone, in a line. */
export function questionText({ stem, ask }: QuestionView): string {
  return `${sentenceText(stem)} ${sentenceText(ask)}`;
}

/** A question with its working, answers and slips, for a terminal. */
export function solutionText(view: QuestionView, { headings }: QuestionWords): string {
  const marks = (count: number) => `(${count} ${count === 1 ? headings['mark'] : headings['marks']})`;
  const steps = view.steps.flatMap(({ say, lines, marks: count }) => [
    ...(say ? [`  ${sentenceText(say)}`] : []),
    ...lines.map(({ text }, place) => `    ${text}${place === lines.length - 1 ? `   ${marks(count)}` : ''}`),
  ]);
  const answers = view.answers.map(({ symbol, value, fraction, low, high }) => {
    const range = low.text === high.text ? headings['only']! : fill(headings['accept']!, { low: low.text, high: high.text });
    return `  ${symbol.text} = ${fraction === undefined ? '' : `${fraction} = `}${value.text}   ${marks(1)}   ${range}`;
  });
  const slips = view.slips.map(({ values, say }) => `  ${values.map(({ text }) => text).join(', ')}: ${sentenceText(say)}`);
  return [
    `${view.title} ${marks(view.marks)}`,
    '',
    questionText(view),
    '',
    ...(view.steps.some(({ lines }) => lines.length > 0) ? [headings['working']!, ...steps] : []),
    headings['answer']!,
    ...answers,
    ...view.verdicts.map(({ id, say }) => `  ${sentenceText(say)}   ${marks(1 + view.steps.find((step) => step.id === id)!.marks)}`),
    ...(slips.length > 0 ? [headings['slips']!, ...slips] : []),
  ].join('\n');
}
