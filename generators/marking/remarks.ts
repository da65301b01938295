import type { Rows } from '../experiments/layout.ts';
import { fill } from '../quantities/spoken.ts';
import type { Marked } from './award.ts';
import { rowName } from './heads.ts';
import type { Explanation } from './slip.ts';
import { type MarkingWords, slipWords } from './words.ts';

/** What is said about a sheet: what went wrong in each answer and what to do, and what several answers share. */
export function remarks(answers: readonly Marked[], nameOf: (answer: Marked) => string, words: MarkingWords): string[] {
  const { feedback } = words;
  const explained = answers.filter(({ explanations }) => explanations.length > 0).map((answer) => whatHappened(answer, nameOf(answer), words));
  const shared = (sentence: string, is: (answer: Marked) => boolean, more: Record<string, string> = {}) => {
    const those = answers.filter(is).map(nameOf);
    return those.length === 0 ? [] : [fill(sentence, { answers: those.join(', '), ...more })];
  };
  const losesFigures = ({ earned, column, verdict, explanations }: Marked) => earned.figures < column.marks.figures && verdict !== 'absent' && !explanations.some(({ slip }) => slip === 'rounded too far');
  const missing = answers.filter(({ unitMissing, column }) => unitMissing && column.marks.unit > 0);
  const times = missing.some(({ unitMissing }) => unitMissing === 'has cost') || missing.length === 1 ? feedback.once : feedback.each;
  return [
    ...explained,
    ...shared(feedback.unexplained, ({ verdict, explanations }) => verdict === 'wrong' && explanations.length === 0),
    ...shared(feedback.byTheKey, ({ verdict }) => verdict === 'right by the key'),
    ...shared(feedback.unitMissing, (answer) => missing.includes(answer), { times }),
    ...answers.filter(({ wrongUnit }) => wrongUnit).map((answer) => fill(feedback.unitWrong, { answer: nameOf(answer), unit: answer.column.unit })),
    ...shared(feedback.tooMany, (answer) => losesFigures(answer) && answer.extraFigures > 0),
    ...shared(feedback.tooFew, (answer) => losesFigures(answer) && answer.extraFigures < 0),
  ];
}

/** One slip with its remedy; several that give the same value side by side. */
function whatHappened({ explanations, column }: Marked, name: string, words: MarkingWords): string {
  const { feedback } = words;
  const ways = waysInWords(explanations, words, column.rows);
  const [first] = ways as [{ says: string; do: string }];
  if (ways.length === 1) return fill(feedback.says, { answer: name, ...first }).trim();
  const numbered = ways.map(({ says }, i) => fill(feedback.way, { number: i + 1, says })).join(' ');
  return fill(feedback.either, { answer: name, count: ways.length, ways: numbered });
}

/** Each way in which a wrong value can have come about, with its remedy. */
export function waysInWords(explanations: readonly Explanation[], words: MarkingWords, rows?: Rows): { says: string; do: string }[] {
  return grouped(explanations).map((each) => inWords(each, words, rows));
}

type Grouped = Omit<Explanation, 'row'> & { rows: number[] };

/** The same slip in one of several rows is one way. */
function grouped(explanations: readonly Explanation[]): Grouped[] {
  return explanations.reduce<Grouped[]>((so, { row, ...slip }) => {
    const same = so.find((each) => row !== undefined && each.slip === slip.slip && each.at === slip.at && each.with?.slip === slip.with?.slip);
    same?.rows.push(row!);
    return same ? so : [...so, { ...slip, rows: row === undefined ? [] : [row] }];
  }, []);
}

/** The words of an explanation, those of its second slip after them. */
function inWords({ slip, rows, with: second }: Grouped, words: MarkingWords, called?: Rows): { says: string; do: string } {
  const row = rows.map((each) => String(rowName(each - 1, called))).reduce((one, other) => (one === '' ? other : fill(words.feedback.or, { one, other })), '');
  const one = slipWords(words, slip);
  const says = fill(one.says, { row });
  if (!second) return { says, do: fill(one.do, { row }) };
  const other = slipWords(words, second.slip);
  return { says: fill(words.feedback.both, { one: says, other: other.says }), do: `${one.do} ${other.do}` };
}
