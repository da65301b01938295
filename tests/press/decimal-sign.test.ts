import { describe, expect, test } from 'vitest';
import { experiments } from '../../generators/experiments/index.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import { withDecimalCommas } from '../../generators/press/decimal-sign.ts';
import { mathsFace, MATHS_CUT } from '../../generators/press/maths-face.ts';
import { documentsOf, issuesOf, known, orderOf, wordsOf } from '../sheets/class.ts';

const inHtml = (html: string) => withDecimalCommas([], () => html);

describe('a decimal comma', () => {
  test.each([
    ['in what is read', '<p>X = 2.63 Ω, or 4.9 × 10⁻⁷ Ω m.</p>', '<p>X = 2,63 Ω, or 4,9 × 10⁻⁷ Ω m.</p>'],
    ['in a formula', '<math><mn>0.376</mn></math>', '<math><mn>0,376</mn></math>'],
    ['in what is heard', '<span role="img" aria-label="minus 0.5 ohms">', '<span role="img" aria-label="minus 0,5 ohms">'],
    ['before the stop of a sentence', '<p>t = 2.26. 95 % lie inside.</p>', '<p>t = 2,26. 95 % lie inside.</p>'],
    ['with semicolons in a list', '<desc>0.1, 0.2, 1, 2 ohms</desc>', '<desc>0,1; 0,2; 1; 2 ohms</desc>'],
    ['and none in a list of whole numbers', '<p>rows 1, 2, 3</p>', '<p>rows 1, 2, 3</p>'],
    ['not in a style or a drawing', '<style>p { top: 0.5mm }</style><path d="M1.5 2.5" style="top: 0.5mm"/>', '<style>p { top: 0.5mm }</style><path d="M1.5 2.5" style="top: 0.5mm"/>'],
    ['not in a date, or the number of a clause', '<p>12.3.2024, JCGM 100:2008, 7.2.6, v2.1</p>', '<p>12.3.2024, JCGM 100:2008, 7.2.6, v2.1</p>'],
  ])('%s', (_, point, comma) => expect(inHtml(point)).toBe(comma));

  test('leaves rolls, names, codes and titles as they are', () => {
    const page = { title: 'Term 1.2', rows: [{ roll: '11.07', name: 'A 2.5 B', code: 'X.1.2', value: '3.5' }] };
    const html = withDecimalCommas([page], ([one]) => {
      const { title, rows: [row] } = one!;
      return `<p title="${title}">${title} ${row!.roll} ${row!.name} ${row!.code} ${row!.value}</p>`;
    });
    expect(html).toBe('<p title="Term 1.2">Term 1.2 11.07 A 2.5 B X.1.2 3,5</p>');
  });
});

/** Both decimal signs, and both signs between the members of a list, made one. */
const unsigned = (html: string) => html.replace(/(\d)[.,](?=\d)/g, '$1·').replace(/[;,] /g, ', ');

describe.each(Object.keys(experiments))('an order of %s with a decimal comma', (id) => {
  const orderWith = (decimal: string) => readOrder(`experiment: ${id}\nreasons: yes\ndecimal: ${decimal}\n`, 'order.yaml', known);

  test('prints what it prints with a point, but for the sign, and no point is left in any number', async () => {
    const issues = issuesOf(orderWith('point')).slice(0, 1);
    const point = await documentsOf(orderWith('point'), issues);
    const comma = await documentsOf(orderWith('comma'), issues);
    expect([...comma.keys()]).toEqual([...point.keys()]);
    for (const [file, html] of comma) {
      expect(unsigned(html) === unsigned(point.get(file)!), file).toBe(true);
      expect(wordsOf(html).match(/.{20}\d\.\d.{20}/g), file).toBeNull();
      expect(mathsFace(html) === MATHS_CUT, file).toBe(mathsFace(point.get(file)!) === MATHS_CUT);
    }
  });
});

test('drawings to be read have it too', async () => {
  const order = orderOf('drawn: scale plugs gauge rule\ndecimal: comma\n');
  const documents = await documentsOf(order, issuesOf(order).slice(0, 1));
  for (const [file, html] of documents) expect(wordsOf(html).match(/.{20}\d\.\d.{20}/g), file).toBeNull();
  const drawing = [...documents].find(([file]) => file.includes('worksheet'))![1];
  expect(drawing).toMatch(/<text[^>]*>0,[125]<\/text>/);
});
