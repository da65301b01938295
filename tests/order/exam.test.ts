import { expect, test } from 'vitest';
import { readExam } from '../../generators/order/exam.ts';
import { known } from './known.ts';
import { linesOf } from './lines.ts';

const TASK = 'tasks:\n  - experiment: resistivity\n    wires: constantan, SWG 28, 60 cm\n';
const read = (text: string) => readExam(text, 'exam.yaml', known);

test('an examination has tasks that are orders, with defaults for the rest', () => {
  const exam = read(`class: class.csv\n${TASK}`);
  expect(exam).toMatchObject({ batch: 24, minutes: 90, draw: 'beforehand', paper: 'A4' });
  expect(exam.tasks.map(({ experiment, rows }) => [experiment, rows])).toEqual([['resistivity', 4]]);
});

test('heads of the award sheet are the setter\'s own where given', () => {
  expect(read(`class: class.csv\n${TASK}marks:\n  - {for: readings, marks: 8}\n`).marks).toEqual([{ for: 'readings', marks: 8 }]);
});

test.each<[string, string, string[]]>([
  ['no class', TASK, ['exam.yaml, class: is missing; it takes the path of a CSV file with the columns roll and name']],
  ['no tasks', 'class: class.csv\n', ['exam.yaml, tasks: is missing; it takes one or more tasks, each with the entries of an order (experiment, wires, box …)']],
  ['a batch too large', `class: class.csv\nbatch: 200\n${TASK}`, ['exam.yaml, row 2, batch: "200" does not fit here; it takes a whole number from 1 to 60']],
  ['an entry that there is not', `class: class.csv\nminuts: 30\n${TASK}`, ['exam.yaml, row 2, minuts: there is no entry "minuts"; did you mean minutes?']],
  ['a wrong entry in a task', `class: class.csv\n${TASK}    rows: 9\n`, ['exam.yaml, row 5, tasks 1.rows: "9" does not fit here; it takes a whole number from 3 to 6']],
  ['a draw of another kind', `class: class.csv\ndraw: never\n${TASK}`, ['exam.yaml, row 2, draw: "never" does not fit here; it takes one of the words beforehand, by hand']],
])('%s is refused with its row and entry', (_, text, lines) => {
  expect(linesOf(() => read(text))).toEqual(lines);
});
