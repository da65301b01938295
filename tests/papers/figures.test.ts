import { expect, test } from 'vitest';
import { loadFigureWords } from '../../generators/cli/content.ts';
import { loadFamilyWords, loadPaperWords, loadQuestionWords } from '../../generators/cli/question-words.ts';
import { makePaper } from '../../generators/papers/paper.ts';
import { pool } from '../../generators/papers/pool.ts';
import { versionView } from '../../generators/papers/view.ts';
import { sentenceText } from '../../generators/questions/view.ts';
import { streams } from '../../generators/random.ts';
import { labels } from '../figures/read-svg.ts';

/** Every question with a figure that a paper can have. */
const set = pool('sample').filter(({ form }) => form === 'figure');
const words = loadPaperWords('en');
const content = { wordsOf: (family: string) => loadFamilyWords('en', family), shared: loadQuestionWords('en'), figures: loadFigureWords('en'), stories: words.stories, parts: words.parts };
const versions = makePaper({ set, pool: [], demands: {}, whose: [{ name: 'A' }], isClass: false, used: new Set() }, streams('figures'));
const drawn = versions.flatMap((version, v) => versionView(version, v, content).items.map(({ parts: [part] }) => ({ view: part!.view, figure: part!.figure! })));

const CIRCUITS = ['series', 'shunt', 'both-gaps', 'currents', 'off-balance', 'carey-foster', 'wheatstone'];

test('fifteen families or more have a figure, with words for who cannot see it', () => {
  expect(new Set(drawn.map(({ view }) => view.family)).size).toBeGreaterThanOrEqual(15);
  for (const { figure } of drawn) expect(figure.svg).toContain('aria-label="');
});

test('what a figure shows is named in the question, and its value told nowhere else', () => {
  for (const { view, figure } of drawn) {
    const text = `${sentenceText(view.stem)} ${sentenceText(view.ask)}`;
    for (const symbol of figure.reads) expect(text, `${view.family} ${view.direction}`).toContain(symbol.text);
    for (const { value } of figure.readings) expect(text, `${view.family} ${view.direction}`).not.toContain(value.text);
    expect(figure.reads.length).toBeGreaterThan(0);
  }
});

test('a circuit has each of its values written once and said in its words, and what is asked for by its symbol alone', () => {
  const circuits = drawn.filter(({ view }) => CIRCUITS.includes(view.family));
  expect(new Set(circuits.map(({ view }) => view.family)).size).toBe(CIRCUITS.length);
  for (const { view, figure } of circuits) {
    const written = labels(figure.svg).map(({ text }) => text);
    for (const { value } of figure.readings) {
      expect(written.filter((text) => text === value.text), `${view.family} ${view.direction} ${value.text}`).toHaveLength(1);
      expect(figure.seen).toContain(value.text);
    }
    for (const { symbol, value } of view.answers) expect(written).not.toContain(`${symbol.text} = ${value.text}`);
  }
});
