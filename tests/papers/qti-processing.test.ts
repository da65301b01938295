import { expect, test } from 'vitest';
import { qtiPackage } from '../../generators/papers/export/qti-package.ts';
import { describeWithPython, python } from '../outside.ts';
import { paperOfEveryForm } from './every-form.ts';

/** Response processing as the information model of QTI 3.0 tells it, for the expressions that these items have. */
const PROCESS = `
import json, sys
import xml.etree.ElementTree as ET
A = '{http://www.imsglobal.org/xsd/imsqtiasi_v3p0}'
given = json.load(sys.stdin)
def typed(kind, text): return float(text) if kind == 'float' else text
def valued(e, v, items):
    name = e.tag.replace(A, '')
    parts = [valued(c, v, items) for c in e]
    if name == 'qti-variable': return v[e.get('identifier')]
    if name == 'qti-correct': return items[e.get('identifier')]
    if name == 'qti-base-value': return typed(e.get('base-type'), e.text)
    if name == 'qti-sum': return sum(parts)
    if name == 'qti-is-null': return parts[0] is None
    if name == 'qti-not': return not parts[0]
    if name == 'qti-and': return all(parts)
    if name == 'qti-match': return parts[0] is not None and parts[0] == parts[1]
    if name == 'qti-equal': return parts[0] is not None and abs(parts[0] - parts[1]) <= float(e.get('tolerance'))
    raise ValueError(name)
def run(rules, v, items):
    for rule in rules:
        if rule.tag == A + 'qti-set-outcome-value': v[rule.get('identifier')] = valued(rule[0], v, items)
        elif rule.tag == A + 'qti-response-condition':
            for branch in rule:
                if branch.tag == A + 'qti-response-else': run(branch, v, items); break
                if valued(branch[0], v, items): run(branch[1:], v, items); break
        else: raise ValueError(rule.tag)
out = []
for attempt in given['attempts']:
    root = ET.fromstring(given['files'][attempt['file']].encode())
    v, items = {}, {}
    for d in root.iter(A + 'qti-outcome-declaration'):
        value = d.find(A + 'qti-default-value/' + A + 'qti-value')
        v[d.get('identifier')] = None if value is None else typed(d.get('base-type'), value.text)
    for d in root.iter(A + 'qti-response-declaration'):
        answer = attempt['responses'].get(d.get('identifier'))
        v[d.get('identifier')] = None if answer is None else typed(d.get('base-type'), answer)
        right = d.find(A + 'qti-correct-response/' + A + 'qti-value')
        items[d.get('identifier')] = None if right is None else typed(d.get('base-type'), right.text)
    run(root.find(A + 'qti-response-processing'), v, items)
    said = [''.join(f.itertext()) for f in root.iter(A + 'qti-modal-feedback') if f.get('identifier') == v['FEEDBACK']]
    out.append(dict(score=v['SCORE'], most=v['MAXSCORE'], said=said))
print(json.dumps(out))
`;

interface Attempt {
  file: string;
  responses: Record<string, string>;
}

describeWithPython(['xml.etree.ElementTree'], 'a QTI item scores', () => {
  const { data, views, words } = paperOfEveryForm();
  const files = qtiPackage(data, views, 'en', words);
  const paths = Object.keys(files).filter((path) => path.startsWith('items/') && path.endsWith('.xml'));
  const items = data.versions.flatMap(({ questions }) => questions.flatMap(({ parts }) => parts)).map((part, i) => ({ part, file: paths[i]! }));
  const numeric = items.filter(({ part }) => part.options.length === 0 && part.answers.length > 0 && part.words.length === 0);
  const choices = items.filter(({ part }) => part.options.length > 0);
  const score = (attempts: Attempt[]) => python<{ score: number; most: number; said: string[] }[]>(PROCESS, { files, attempts });
  const all = (file: string, values: number[]): Attempt => ({ file, responses: Object.fromEntries(values.map((value, i) => [values.length === 1 ? 'RESPONSE' : `RESPONSE_${i + 1}`, String(value)])) });

  test('every mark for answers anywhere in their accept ranges, ends included', () => {
    const ends = (['from', 'to', 'value'] as const).flatMap((end) => numeric.map(({ part, file }) => ({ part, attempt: all(file, part.answers.map((answer) => answer[end])) })));
    const scored = score(ends.map(({ attempt }) => attempt));
    expect(scored.length).toBeGreaterThan(150);
    scored.forEach(({ score: own, most, said }, i) => expect([own, most, said], ends[i]!.attempt.file).toEqual([ends[i]!.part.marks, ends[i]!.part.marks, [words.correct]]));
  });

  test('none for answers beside their ranges, by one in five thousand or more', () => {
    const beside = [1 - 2e-4, 1 + 2e-4].flatMap((by) => numeric.map(({ part, file }) => all(file, part.answers.map(({ from, to }) => Math.sign(from) * (by < 1 ? Math.min(Math.abs(from), Math.abs(to)) : Math.max(Math.abs(from), Math.abs(to))) * by))));
    for (const [i, { score: own }] of score(beside).entries()) expect(own, beside[i]!.file).toBe(0);
  });

  test('the marks of each answer by itself', () => {
    const several = numeric.filter(({ part }) => part.answers.length > 1);
    expect(several.length).toBeGreaterThan(20);
    const firsts = score(several.map(({ part, file }) => all(file, [part.answers[0]!.value, ...part.answers.slice(1).map(({ to }) => 3 * Math.abs(to) + 1)])));
    firsts.forEach(({ score: own }, i) => expect(own, several[i]!.file).toBe(several[i]!.part.answers[0]!.marks));
  });

  test('less than all for a usual slip, and says which it was', () => {
    const slips = numeric.flatMap(({ part, file }) => part.slips.map(({ values, feedback }) => ({ part, feedback, attempt: all(file, part.answers.map(({ symbol, value }) => values[symbol] ?? value)) })));
    expect(slips.length).toBeGreaterThan(100);
    score(slips.map(({ attempt }) => attempt)).forEach(({ score: own, most, said }, i) => {
      expect(own, slips[i]!.attempt.file).toBeLessThan(most);
      expect(said, slips[i]!.attempt.file).toEqual([slips[i]!.feedback]);
    });
  });

  test('a right letter alone, with its word for every letter', () => {
    const letters = choices.flatMap(({ part, file }) => part.options.map((option) => ({ option, attempt: { file, responses: { RESPONSE: option.letter } } })));
    score(letters.map(({ attempt }) => attempt)).forEach(({ score: own, said }, i) => {
      const { right, feedback } = letters[i]!.option;
      expect([own, said]).toEqual([right ? 1 : 0, [right ? words.correct : (feedback ?? words.incorrect)]]);
    });
  });

  test('nothing, and says nothing of a letter, where nothing is answered', () => {
    const empty = score([...numeric, ...choices].map(({ file }) => ({ file, responses: {} })));
    expect(empty.every(({ score: own }) => own === 0)).toBe(true);
    for (const { said } of empty.slice(numeric.length)) expect(said).toEqual([]);
  });
});
