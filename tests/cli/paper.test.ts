import { existsSync, readFileSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import type { Questions } from '../../generators/papers/export/data.ts';
import { describeWith } from '../outside.ts';
import { run } from '../press/outside.ts';
import { filesIn } from './files.ts';
import { scratch, slidewire } from './slidewire.ts';

vi.setConfig({ testTimeout: 120_000 });

const { at, write } = scratch();
const data = (folder: string) => JSON.parse(readFileSync(at(folder, 'teacher', 'questions.json'), 'utf8')) as Questions;

describeWith(['pdftotext'], 'a printed paper', () => {
  const order = write('paper.yaml', 'title: Tidewheel class test\ntime: 40 minutes\nversions: 2\nseed: printed\nmarks: { total: 20, forms: { choice: 4, assertion: 1, figure: 3, structured: 4 } }\nquestions:\n  - { family: balance, ask: right, form: choice }\n');
  const text = (...path: string[]) => run('pdftotext', '-layout', at('out', ...path), '-').normalize('NFKC').replace(/\s+/g, ' ');

  /** An exponent at the end stands on a line of its own, and the sign of a degree is a ring by itself. */
  const inPrint = (shown: string) => shown.replace(/(?<=Ω)²$/, '').replace('°C', '∘ C').normalize('NFKC').replace(/\s+/g, ' ');

  test('has, read back from print, every question with its marks, options and answers', async () => {
    expect((await slidewire(['paper', order, '--out', at('out')])).err).toBe('');
    const { versions, marks } = data('out');
    for (const { name, questions } of versions) {
      const paper = text('candidates', `paper-${name}.pdf`);
      const scheme = text('teacher', `mark-scheme-${name}.pdf`);
      expect(paper).toContain(`Version ${name}`);
      expect(paper).toContain(`Marks in all: ${marks.total}`);
      const inMargin = [...paper.matchAll(/\[(\d+)\]/g)].reduce((sum, [, points]) => sum + Number(points), 0);
      expect(inMargin).toBe(marks.total);
      for (const { number, parts } of questions) {
        expect(paper).toContain(` ${number}. `);
        for (const { answers, options, form } of parts) {
          for (const { shown } of answers) expect(scheme, shown).toContain(inPrint(shown));
          for (const option of options) expect(paper).toContain(`${option.letter} ${option.text.normalize('NFKC')}`);
          if (form === 'figure') expect(paper).toContain('Read off the drawing');
        }
      }
      expect(paper).not.toContain('accepted');
    }
    const answers = text('teacher', 'answers.pdf');
    for (const { questions } of versions) for (const { parts } of questions) for (const { options, answers: numbers } of parts) if (options.length === 0) for (const { shown } of numbers) expect(answers).toContain(inPrint(shown));
    expect(answers).toContain('Marks by topic, difficulty and form');
  });

  test('is the same again from the same seed, byte for byte', async () => {
    const before = filesIn(at('out'));
    expect((await slidewire(['paper', order, '--out', at('again')])).code).toBe(0);
    expect(filesIn(at('again'))).toEqual(before);
  });
});

test('used questions are kept beside the file, and do not come next year', async () => {
  const order = write('year.yaml', 'title: Year\nused: used.json\nmarks: { total: 12 }\n');
  const keys = (folder: string) => data(folder).versions.flatMap(({ questions }) => questions.flatMap(({ parts, story = '' }) => parts.map(({ text }) => `${story} ${text}`)));
  for (const year of ['one', 'two']) expect((await slidewire(['paper', order, '--out', at(year), '--as', 'json'])).code).toBe(0);
  expect(keys('one').filter((text) => keys('two').includes(text))).toEqual([]);
  expect(existsSync(at('one', 'candidates'))).toBe(false);
  const { questions } = JSON.parse(readFileSync(at('used.json'), 'utf8')) as { questions: string[] };
  expect(questions.length).toBe(new Set([...keys('one'), ...keys('two')]).size);
});

test('a folder that holds anything is left as it is', async () => {
  const order = write('full.yaml', 'title: Full\nmarks: { total: 5 }\n');
  write('full/candidates/paper-C.pdf', 'of another paper');
  const before = filesIn(at('full'));
  const { code, err } = await slidewire(['paper', order, '--out', at('full'), '--as', 'csv']);
  expect(code).toBe(1);
  expect(err).toContain('the folder is there and is not empty');
  expect(filesIn(at('full'))).toEqual(before);
});

test('every candidate of a class has a paper with name and roll', async () => {
  write('class.csv', 'roll,name\n7,Asmira Tollun\n8,Bero Kint\n9,Cila Marn\n');
  const order = write('own.yaml', 'title: Own\nclass: class.csv\nmarks: { total: 10, forms: { numeric: 10 } }\n');
  expect((await slidewire(['paper', order, '--out', at('own'), '--as', 'json'])).out).toMatch(/^3 candidates, /);
  const { versions } = data('own');
  expect(versions.map(({ roll, name }) => `${roll} ${name}`)).toEqual(['7 Asmira Tollun', '8 Bero Kint', '9 Cila Marn']);
  versions[0]!.questions.forEach((_, place) => expect(new Set(versions.map(({ questions }) => questions[place]!.parts[0]!.answers[0]!.shown)).size).toBe(3));
});

test.each([
  ['title: T\nmarks: { total: 10, forms: { case: 1 } }\n', [], 'bad.yaml, marks.forms.case: 1 are asked, and its questions cannot add up to that'],
  ['title: T\nquestions:\n  - { family: balance, ask: rigth }\n', [], 'bad.yaml, questions 1: balance has no direction "rigth"; did you mean right?'],
  ['title: T\nquestions:\n  - { family: balance, ask: "null", form: choice }\n', [], 'questions 1: balance, null, cannot be put in the form choice; it can in numeric'],
  ['title: T\nquestions:\n  - { family: balance, ask: right, marks: 5 }\n', [], 'its working carries 2 marks, line by line; leave out "marks: 5"'],
  ['title: T\nquestions:\n  - { family: balance, ask: right }\n  - { family: balance, ask: right, form: choice }\n', [], 'questions 2: balance, right, is asked before in this paper, if in another form'],
  ['title: T\nquestions:\n  - { family: kelvin, form: words }\n', [], 'cannot be put in the form words'],
  ['title: T\nclass: none.csv\nmarks: { total: 5 }\n', [], 'there is no such file'],
  ['title: T\nversions: 2\nclass: class.csv\nmarks: { total: 5 }\n', [], 'bad.yaml, row 2, versions: each candidate of the class has a paper of their own; leave out versions, or class'],
  ['title: T\nused: bad.yaml\nmarks: { total: 5 }\n', [], 'this is no list of used questions'],
  ['title: T\nmarks: { total: 5 }\n', ['--as', 'pdf'], '--as: "pdf" is none of print, csv, json, qti'],
])('%j is refused, and nothing is written', async (text, flags, message) => {
  const { code, err } = await slidewire(['paper', write('bad.yaml', text), '--out', at('bad'), ...flags]);
  expect(code).toBe(1);
  expect(err).toContain(message);
  expect(existsSync(at('bad'))).toBe(false);
});
