import { describe, expect, it } from 'vitest';
import { checkAll, figuresBefore, workingLines } from '../../generators/practice/check.ts';
import { setCode } from '../../generators/practice/set-code.ts';
import { slipped, slipsOf } from '../../generators/marking/slipped.ts';
import { exactly } from '../../generators/marking/reach.ts';
import { round } from '../../generators/quantities/written.ts';
import { pageOf, practised, setOf } from './pages.ts';

const CODES = [3, 4, 5].map(setCode);

describe.each(practised)('practising %s', (id) => {
  it('takes the key as right in every place', () => {
    for (const code of CODES) {
      const { set, steps, places, right } = setOf(id, code);
      expect(places.length).toBeGreaterThan(0);
      const answers = checkAll(set.sheet, steps, places, right);
      for (const [i, answer] of answers.entries()) expect(answer, places[i]!.key).toMatchObject({ is: 'right', byTheKey: false, wrongUnit: false });
    }
  });

  it('names each slip of its steps, the figures before being right', () => {
    const { set, steps, places, right } = setOf(id, setCode(3));
    for (const [i, place] of places.entries()) {
      for (const slip of slipsOf(steps.step(place.id))) {
        const slipAt = slipped(steps, [{ at: place.id, slip }]);
        const own = figuresBefore(places.slice(0, i), right, place.key);
        const exact = exactly({ sheet: set.sheet, program: slipAt, own }, place.id).get(place.id)![place.row]!;
        if (!Number.isFinite(exact)) continue;
        // With a figure or two more than are asked for, so that rounding does not hide the slip.
        const value = round(exact, { figures: 5 }, 'even');
        const answer = checkAll(set.sheet, steps, places, { ...right, [place.key]: value })[i]!;
        // On some readings a slip does not show.
        if (answer.is === 'right') continue;
        expect(answer, `${slip.id} at ${place.key}: ${value}`).toMatchObject({ is: 'wrong' });
        expect(answer.is === 'wrong' && answer.explanations.map((each) => each.slip), place.key).toContain(slip.id);
      }
    }
  });

  it('opens the working from the formula to the value, as the key has it', () => {
    const { set, steps, places, right } = setOf(id, setCode(3));
    for (const place of places.filter(({ kind }) => kind === 'worked')) {
      const lines = workingLines(set.sheet, steps, place, figuresBefore(places, right, place.key), pageOf(id).words.spoken);
      expect(lines.length).toBeGreaterThanOrEqual(3);
      expect(lines.at(-1)!.tex).toContain(lines.at(-2)!.tex);
    }
  });
});

describe('a value judged on the figures before it', () => {
  it('is right where it follows from a wrong one', () => {
    const { set, steps, places } = setOf('resistivity', setCode(3));
    const texts = { 'meanD:0': '0.500', 'e:0': '0.02', 'd:0': '0.480' };
    const answers = new Map(checkAll(set.sheet, steps, places, texts).map((answer, i) => [places[i]!.key, answer.is]));
    expect(answers.get('d:0')).toBe('right');
    expect(answers.get('meanD:0')).toBe('wrong');
  });

  it.each(['2,63', '2.63', ' 2.63 Ω', '2.63e0', '0.263 × 10^1'])('is read from %j', (text) => {
    const { set, steps, places } = setOf('resistivity', setCode(3));
    const at = places.findIndex(({ key }) => key === 'X:0');
    expect(checkAll(set.sheet, steps, places, { 'X:0': text })[at]!.is).not.toMatch(/unreadable|empty/);
  });
});
