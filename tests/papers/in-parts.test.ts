import { evaluate } from 'mathjs';
import { expect, test } from 'vitest';
import { loadFigureWords } from '../../generators/cli/content.ts';
import { loadFamilyWords, loadPaperWords, loadQuestionWords } from '../../generators/cli/question-words.ts';
import type { AskedView } from '../../generators/papers/asked-view.ts';
import type { Made } from '../../generators/papers/item.ts';
import { makePaper } from '../../generators/papers/paper.ts';
import { pool } from '../../generators/papers/pool.ts';
import { versionView } from '../../generators/papers/view.ts';
import { exactly } from '../../generators/questions/exact.ts';
import { plainText } from '../../generators/questions/plain-text.ts';
import { question } from '../../generators/questions/question.ts';
import { streams } from '../../generators/random.ts';

/** Every question in parts that a paper can have, in two versions. */
const set = pool('sample').filter(({ form }) => form === 'structured');
const words = loadPaperWords('en');
const versions = makePaper({ set, pool: [], demands: {}, whose: [{ name: 'A' }, { name: 'B' }], isClass: false, used: new Set() }, streams('in parts'));
const content = { wordsOf: (family: string) => loadFamilyWords('en', family), shared: loadQuestionWords('en'), figures: loadFigureWords('en'), stories: words.stories, parts: words.parts };
const asked: { made: Made; parts: AskedView[] }[] = versions.flatMap((version, v) => versionView(version, v, content).items.map(({ parts }, i) => ({ made: version.items[i]!.parts[0]!, parts: parts[0]!.asked })));

const nameOf = ({ question: { direction } }: Made) => `${direction.family.id} ${direction.name}`;

test('directions with one answer and several lines of working can be put in parts too', () => {
  const single = asked.filter(({ made: { question: { direction } } }) => direction.body.asks[direction.name]!.finds.length === 1);
  expect(new Set(single.map(({ made }) => nameOf(made))).size).toBeGreaterThan(20);
  for (const { parts, made } of single) expect(parts.length, nameOf(made)).toBeGreaterThan(1);
});

test('every part says in words what it asks for', () => {
  for (const { made } of asked) for (const id of made.question.direction.ask.finds) expect(words.parts.what[made.question.direction.family.id]?.[id], `${nameOf(made)}: ${id}`).toContain(`{${id}}`);
});

test('the marks of the parts are those of the question, and their lines all of its lines', () => {
  for (const { made, parts } of asked) {
    expect(parts.reduce((sum, part) => sum + part.marks, 0), nameOf(made)).toBe(made.marks);
    const lines = made.question.direction.ask.steps.map(({ id }) => id);
    const last = made.question.direction.ask.finds.at(-1)!;
    expect(parts.flatMap(({ steps }) => steps.map(({ id }) => id)), nameOf(made)).toEqual(lines.slice(0, lines.indexOf(last) + 1));
  }
});

test('a part on the way moves no answer', () => {
  for (const { made } of asked) {
    const { direction, readings, answers } = made.question;
    const [whole] = [direction.body.asks[direction.name]!];
    const alone = question({ ...direction, ask: whole }, readings);
    for (const answer of alone.answers) expect(answers.find(({ id }) => id === answer.id)).toMatchObject({ shown: answer.shown, exact: answer.exact });
  }
});

/** A line of text as mathjs reads it. */
const readable = (text: string) => text.replace(/10⁻([⁰¹²³⁴⁵⁶⁷⁸⁹])/g, (_, digit: string) => `1e-${'⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(digit)}`).replace(/²/g, '^2').replace(/×/g, '*').replace(/−/g, '-').replace(/√([\p{L}\d_.₀-₉]+)/gu, 'sqrt($1)').replace(/√(sqrt\([^()]*\))/g, 'sqrt($1)').replace(/√/g, 'sqrt').replace(/π/g, 'pi');

test('what follows through is what the working makes of the candidate’s own value', () => {
  let tried = 0;
  for (const { made: { question: one }, parts } of asked) {
    const tables = one.program.steps.some((step) => step.kind !== 'verdict' && step.per !== undefined);
    if (tables) continue;
    parts.forEach(({ follow, answer }) => {
      if (!follow || follow.inSi) return;
      const own = Object.fromEntries(follow.ids.map((id, k) => [id, one.values.exact.get(id)![0]! * (1.07 + 0.02 * k)]));
      const wrong = exactly(one.program, one.readings, new Map(Object.entries(own).map(([id, value]) => [id, [value]])));
      const scope: Record<string, number> = {};
      let text = follow.lines.map((line) => readable(line.text)).join('\n');
      const ids = [...follow.ids, ...one.direction.ask.steps.map(({ id }) => id)];
      const symbols = [...new Set(ids)].map((id) => ({ id, symbol: symbolOf(one, id) })).sort((a, b) => b.symbol.length - a.symbol.length);
      for (const { id, symbol } of symbols) text = text.replaceAll(new RegExp(`(?<![A-Za-z])${symbol.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![A-Za-z\\d_])`, 'g'), `q_${id}`);
      for (const [id, value] of Object.entries(own)) scope[`q_${id}`] = value;
      for (const line of text.split('\n')) evaluate(line, scope);
      const si = one.program.step(answer.id);
      if (si.kind === 'relation' && si.si) return;
      expect(scope[`q_${answer.id}`]! / wrong.get(answer.id)![0]!, `${one.direction.family.id} ${one.direction.name} ${text}`).toBeCloseTo(1, 3);
      tried++;
    });
  }
  expect(tried).toBeGreaterThan(60);
});

const symbolOf = ({ program }: Made['question'], id: string) => plainText(program.step(id).tex);
