import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { facesFor } from '../../generators/press/fonts.ts';
import { MATHS_CUT, MATHS_WHOLE, mathsFace } from '../../generators/press/maths-face.ts';
import { documentsOf, issuesOf, orderOf } from '../sheets/class.ts';
import { cutMaths } from './cut-maths.ts';

test('the part of the maths font that is kept is the part that is cut (npm run fonts)', async () => {
  expect(readFileSync(MATHS_CUT).equals(await cutMaths())).toBe(true);
});

test('worksheets, keys and solutions carry that part, and not the whole', async () => {
  const order = orderOf('');
  const documents = await documentsOf(order, issuesOf(order, [{ roll: '1', name: 'Bevan Oxmarsh' }]));
  for (const kind of ['worksheet', 'key', 'solution', 'marking-grid']) expect([...documents.keys()].some((file) => file.includes(kind)), kind).toBe(true);
  for (const html of documents.values()) {
    expect(html).toContain(readFileSync(MATHS_CUT).toString('base64'));
    expect(html.length).toBeLessThan(400_000);
  }
});

test('a formula with another character carries the whole; text around it does not count, nor do words for it', () => {
  expect(mathsFace('<p>आ</p><span class="math" role="img" aria-label="आ">𝑅<wbr>= 2</span>')).toBe(MATHS_CUT);
  expect(mathsFace('<p><math><mi>ℝ</mi></math></p>')).toBe(MATHS_WHOLE);
  expect(mathsFace('<span class="math" role="img" aria-label="R">ℝ</span>')).toBe(MATHS_WHOLE);
  expect(mathsFace()).toBe(MATHS_WHOLE);
});

test('a character in text that only the whole maths font has brings it along', () => {
  expect(facesFor('ℝ ∮').map(({ family }) => family)).toContain('stix-two-math-latin');
  expect(facesFor('∑ 𝑅 ℎ −').map(({ family }) => family)).not.toContain('stix-two-math-latin');
});
