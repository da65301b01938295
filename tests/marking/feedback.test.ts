import { describe, expect, test } from 'vitest';
import { loadWords } from '../../generators/cli/content.ts';
import { loadMarkingWords } from '../../generators/cli/marking-content.ts';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { readEntry } from '../../generators/marking/entry.ts';
import { accepted, feedbackSlip } from '../../generators/marking/feedback.ts';
import { markClass } from '../../generators/marking/mark-class.ts';
import { streams } from '../../generators/random.ts';
import { programOf } from '../../generators/sheets/issue.ts';
import { classOf, practical } from './classes.ts';
import { simulate } from './simulated-class.ts';

const words = loadMarkingWords('en');
const experiment = experimentNamed('resistivity');
const made = classOf(40, '', 'feedback');

describe('the range beside a wrong value', () => {
  const rows = [1, 2, 3].flatMap((time) => markClass(experiment, made.issues, simulate(experiment, made, streams('feedback').of(time)), made.columns, practical));
  const wrong = rows.flatMap(({ answers }) => answers.filter(({ verdict }) => verdict === 'wrong'));
  const ends = (answer: (typeof wrong)[number]) => accepted(answer, { ...words, feedback: { ...words.feedback, from: '{low}|{high}' } }).split('|').map((end) => Number(end.replace(/\u00a0×\u00a010(\S+)/, (_, power: string) => `e${[...power].map((sign) => '0123456789-'['⁰¹²³⁴⁵⁶⁷⁸⁹⁻'.indexOf(sign)]).join('')}`).replace('−', '-').split('\u00a0')[0]));

  test('never seems to hold it, however near it lies', () => {
    const seem = wrong.filter((answer) => {
      const [low, high = low] = ends(answer) as [number, number?];
      return Number(answer.value) >= low && Number(answer.value) <= high!;
    });
    expect(seem).toEqual([]);
    expect(wrong.length).toBeGreaterThan(60);
  });

  test('shuts out nothing that is accepted', () => {
    for (const answer of wrong) {
      const [low, high = low] = ends(answer) as [number, number?];
      expect(low, String(answer.accept)).toBeLessThanOrEqual(answer.accept[0] + 1e-12 * Math.abs(answer.accept[0]));
      expect(high!).toBeGreaterThanOrEqual(answer.accept[1] - 1e-12 * Math.abs(answer.accept[1]));
    }
  });
});

test('a unit of another quantity stands on the slip as the student wrote it', () => {
  const [issue] = made.issues;
  const texts = made.columns.map(({ id }) => (id === 'meanD' ? '0.489 ohm' : '-'));
  const [student] = markClass(experiment, [issue!], [{ row: 2, issue: issue!, texts, entries: texts.map((text) => readEntry(text, 'point')) }], made.columns, practical);
  const { lines } = feedbackSlip(student!, programOf(experiment, issue!.sheet), loadWords('en', 'resistivity').spoken, words);
  expect(lines.map(({ wrote }) => wrote)).toContain('0.489 ohm');
});

test('a further sheet of a student says on the slip which sitting it is of', () => {
  const [first] = made.issues;
  const names = [first!, { ...first!, sitting: 2 }].map((issue) => {
    const [student] = markClass(experiment, [issue], [], made.columns, practical);
    return feedbackSlip(student!, programOf(experiment, issue.sheet), loadWords('en', 'resistivity').spoken, words).name;
  });
  expect(names).toEqual(['Student 1', 'Student 1, sitting 2']);
});
