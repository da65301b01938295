import { describe, expect, test } from 'vitest';
import { UserMistake } from '../../generators/mistake.ts';
import { readPaper } from '../../generators/order/paper-order.ts';

const read = (text: string) => readPaper(text, 'paper.yaml');

describe('a paper file', () => {
  test('gives what it names, and the usual for the rest', () => {
    const order = read('title: Test\nmarks: { total: 20, levels: { 1: 8 } }\nquestions:\n  - { family: series, ask: both, gap: right, count: 2 }\n  - { family: diameter-report }\nsd: population\n');
    expect(order).toMatchObject({ title: 'Test', versions: 2, paper: 'A4', size: 'normal', demands: { total: 20, levels: { 1: 8 } } });
    expect(order.questions).toHaveLength(3);
    expect(order.questions[1]).toMatchObject({ ask: 'both', choice: { gap: 'right' } });
    expect(order.questions[2]!.choice).toEqual({ sd: 'population' });
  });

  test.each([
    ['marks: { total: 5 }\n', 'title: is missing'],
    ['title: T\n', 'paper.yaml: asks for nothing; give questions, or marks such as "marks: {total: 30}"'],
    ['title: T\nquestions:\n  - { family: balence }\n', 'paper.yaml, row 3, questions 1.family: "balence" does not fit here; did you mean balance?'],
    ['title: T\nquestions:\n  - { family: series, gap: rigth }\n', 'questions 1.gap: "rigth" does not fit here; did you mean right?'],
    ['title: T\nquestions:\n  - { family: balance, gap: right }\n', 'questions 1.gap: there is no entry "gap"; the entries are family, ask, form, marks, count'],
    ['title: T\nquestions:\n  - { family: balance, form: essay }\n', 'questions 1.form: "essay" does not fit here'],
    ['title: T\nquestions:\n  - { family: balance, count: 0 }\n', 'questions 1.count: "0" does not fit here'],
    ['title: T\nquestions:\n  - { family: balance }\n  - { family: viva }\n  - { family: balance }\n', 'balance is asked twice in the same way; leave one out, or write "count: 2"'],
    ['title: T\nmarks: { total: 0 }\n', 'marks.total: "0" does not fit here'],
    ['title: T\nmarks: { topics: { wire: 4 } }\n', 'marks.topics.wire: there is no such name; did you mean wires?'],
    ['title: T\nmarks: { levels: { 4: 4 } }\n', 'marks.levels.4: there is no such name; there are 1, 2, 3'],
    ['title: T\nmarks: { forms: { numeric: -2 } }\n', 'marks.forms'],
    ['title: T\nmarks: { form: { numeric: 2 } }\n', 'marks.form: there is no entry "form"; did you mean forms?'],
    ['title: T\nversions: 27\nmarks: { total: 5 }\n', 'versions: "27" does not fit here; it takes a whole number from 1 to 26'],
    ['title: T\nsd: both\nmarks: { total: 5 }\n', 'sd: "both" does not fit here'],
    ['title: [T\n', 'paper.yaml'],
    ['questions: 3\ntitle: T\n', 'questions: "3" does not fit here; it takes a list of questions'],
    ['title: T\nquestions: [3]\n', 'paper.yaml, row 2, questions 1'],
  ])('%j is refused', (text, message) => {
    expect(() => read(text)).toThrow(UserMistake);
    expect(() => read(text)).toThrow(message);
  });
});
