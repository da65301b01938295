import { describe, expect, test } from 'vitest';
import { loadFigureWords } from '../../generators/cli/content.ts';
import { loadFamilyWords, loadPaperWords, loadQuestionWords } from '../../generators/cli/question-words.ts';
import { cases } from '../../generators/papers/cases.ts';
import { readsOff } from '../../generators/papers/figures.ts';
import type { Made } from '../../generators/papers/item.ts';
import { makePaper } from '../../generators/papers/paper.ts';
import { versionView } from '../../generators/papers/view.ts';
import { question } from '../../generators/questions/question.ts';
import { sentenceText } from '../../generators/questions/view.ts';
import { streams } from '../../generators/random.ts';

const set = cases();
const words = loadPaperWords('en');
const content = { wordsOf: (family: string) => loadFamilyWords('en', family), shared: loadQuestionWords('en'), figures: loadFigureWords('en'), stories: words.stories, parts: words.parts };
const versions = makePaper({ set, pool: [], demands: {}, whose: Array.from({ length: 4 }, (_, i) => ({ name: String(i + 1) })), isClass: false, used: new Set() }, streams('cases'));
const views = versions.map((version, v) => versionView(version, v, content));

const symbolOf = ({ question: { direction } }: Made, id: string) => direction.body.quantities[id]!.tex;
const givensOf = ({ question: { direction } }: Made) => [...direction.givens, ...direction.fixed].filter((id) => direction.body.quantities[id]!.tex !== undefined);

describe.each(set.map((entry, place) => [entry.story!, place] as const))('the case %s', (story, place) => {
  const made = versions.map(({ items }) => items[place]!.parts);

  test('has one value under one symbol all through, given or found, and a part that goes on from another', () => {
    for (const parts of made) {
      const known = new Map<string, string>();
      let shared = 0;
      for (const part of parts) {
        for (const id of givensOf(part)) {
          const symbol = symbolOf(part, id)!;
          const value = String(part.question.readings[id]);
          if (known.has(symbol)) {
            expect(value, symbol).toBe(known.get(symbol));
            shared++;
          }
          known.set(symbol, known.get(symbol) ?? value);
        }
        for (const { id, shown } of part.question.answers) known.set(symbolOf(part, id)!, shown);
      }
      expect(shared).toBeGreaterThan(0);
      expect(parts.some(({ carried }) => carried.length > 0)).toBe(true);
    }
  });

  test('accepts what follows from every value that it accepts before', () => {
    for (const parts of made) {
      const found = new Map(parts.flatMap((part) => part.question.answers.map(({ id }, i) => [symbolOf(part, id)!, part.accept[i]!] as const)));
      for (const part of parts) {
        for (const share of [0, 0.3, 1]) {
          const own = Object.fromEntries(part.carried.map((id) => {
            const [low, high] = found.get(symbolOf(part, id)!)!;
            return [id, String(low + share * (high - low))];
          }));
          question(part.question.direction, { ...part.question.readings, ...own }).answers.forEach(({ exact }, i) => {
            const slack = 1e-5 * Math.abs(exact);
            expect(exact, `${story} ${JSON.stringify(own)}`).toBeGreaterThanOrEqual(part.accept[i]![0] - slack);
            expect(exact).toBeLessThanOrEqual(part.accept[i]![1] + slack);
          });
        }
      }
    }
  });

  test('tells every given once with its value, but for those that a drawing shows', () => {
    views.forEach(({ items }, v) => {
      const { parts, story: opening = '' } = items[place]!;
      const text = [opening, ...parts.map(({ view }) => sentenceText(view.stem))].join(' ');
      expect(text).not.toMatch(/[{}]/);
      const seen = new Set<string>();
      parts.forEach(({ view: { givens }, form }, p) => {
        const part = made[v]![p]!;
        for (const { id, value } of givens) {
          const symbol = symbolOf(part, id);
          if (part.carried.includes(id) || symbol === undefined || seen.has(symbol)) continue;
          seen.add(symbol);
          const isDrawn = form === 'figure' && readsOff(part.question.direction).includes(id);
          expect(text.split(value.text).length - 1, `${story}: ${value.text}`).toBe(isDrawn ? 0 : 1);
        }
      });
    });
  });

  test('can be asked part by part: with the story alone, each has all that it takes', () => {
    const [first] = made;
    const { parts, story: opening = '' } = views[0]!.items[place]!;
    first!.forEach((part, p) => {
      const needed = first!.filter((other, o) => o < p && part.carried.some((id) => other.question.answers.some((answer) => symbolOf(other, answer.id) === symbolOf(part, id))));
      for (const other of [part, ...needed]) {
        const own = other === part ? ` ${sentenceText(parts[p]!.view.stem)}` : '';
        for (const { id, value } of parts[first!.indexOf(other)]!.view.givens) {
          const isDrawn = other.form === 'figure' && readsOff(other.question.direction).includes(id);
          if (!other.carried.includes(id) && !isDrawn) expect(opening + own, `${story} ${p}`).toContain(value.text);
        }
      }
    });
  });
});

test('the mark scheme of a part that goes on from another says what follows through', () => {
  views.forEach(({ items }, v) => items.forEach(({ parts }, i) => parts.forEach(({ follow }, p) => expect(follow === undefined).toBe(versions[v]!.items[i]!.parts[p]!.carried.length === 0))));
});
