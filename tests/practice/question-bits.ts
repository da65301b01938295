import type { Family } from '../../generators/questions/family.ts';
import { makeQuestion } from '../../generators/practice/questions/make-question.ts';
import { setCode } from '../../generators/practice/set-code.ts';

/** The 64 bits of numbers in hex: no two numbers are written alike, not even 0 and −0. */
function bits(numbers: readonly number[]): string {
  const view = new DataView(new ArrayBuffer(8));
  return numbers
    .map((number) => {
      view.setFloat64(0, number);
      return view.getBigUint64(0).toString(16).padStart(16, '0');
    })
    .join(' ');
}

/** Questions of a family with their answers, ranges and slips, each as a text; the same text only where every bit is the same. */
export function questionsInBits(family: Family, codes: readonly number[]): string[] {
  return codes.map((number) => {
    const { question, wording, offered } = makeQuestion(family, setCode(number));
    const { direction, readings, values, answers, verdicts, slips } = question;
    return JSON.stringify({
      asked: [direction.name, direction.choice, wording, offered, readings, verdicts],
      exact: [...values.exact].map(([id, column]) => [id, bits(column)]),
      written: [...values.written],
      answers: answers.map(({ id, shown, fraction, accept }) => [id, shown, fraction, bits(accept)]),
      slips: slips.map(({ id, answers: of }) => [id, Object.keys(of), bits(Object.values(of))]),
    });
  });
}
