import { expect, describe, test } from 'vitest';
import { slidewire } from './slidewire.ts';

const solve = (...args: string[]) => slidewire(['solve', ...args]);

describe('a family is worked on own numbers', () => {
  test('what is left out is asked, with working, answer, accept range and slips', async () => {
    const { code, out } = await solve('balance', 'Q=12.5', 'l=39.5');
    expect(code).toBe(0);
    expect(out).toContain('P = 12.5 × 39.5 / (100 − 39.5) = 8.16 Ω');
    expect(out).toContain('accepted from 8.160 Ω to 8.162 Ω');
    expect(out).toContain('19.1 Ω: The ratio');
  });

  test('a number may have a unit of another size, which is converted', async () => {
    expect((await solve('balance', 'Q=2.4kohm', 'l=0.375m')).out).toMatch(/P = 2400 × 37\.5 \/ \(100 − 37\.5\) = 1440 Ω/);
  });

  test('a unit may stand behind its number, and name=? asks by name', async () => {
    expect((await solve('combination', 'Q1=10Ω', 'l1=60cm', 'Q2=3', 'l2=40', 'A=?')).out).toMatch(/A = 12\.6 Ω/);
  });

  test('the marks of lines and answers add up to those of the question', async () => {
    for (const args of [['shunt', 'Y=6', 'l1=40', 'S=18'], ['viva', 'topic=cell'], ['gauge', 'rho=4.9e-7', 'X=5', 'L=1']]) {
      const { out } = await solve(...args);
      const [all, ...each] = Array.from(out.matchAll(/\((\d+) marks?\)/g), ([, count]) => Number(count));
      expect(each.reduce((sum, count) => sum + count, 0), args.join(' ')).toBe(all);
    }
  });

  test('as JSON it is the whole question', async () => {
    const { out } = await solve('balance', 'P=15', 'l=37.5', '--as', 'json');
    expect(JSON.parse(out)).toMatchObject({ family: 'balance', direction: 'right', answers: [{ id: 'Q', value: { text: '25.0 Ω' } }], marks: 2 });
  });

  test('as HTML it is one document with its formulas in MathML', async () => {
    const { out } = await solve('balance', 'P=15', 'l=37.5', '--as', 'html');
    expect(out).toMatch(/^<!doctype html>[^]*<math[^]*<\/html>\n$/);
  });
});

describe('a set that makes no question is refused with the reason', () => {
  test.each([
    [['balance', 'P=2', 'l=120'], 'l: is 120 cm and must be above 0 and below 100 cm'],
    [['balance', 'P=-2', 'l=20'], 'P: is -2 Ω and must be above 0'],
    [['balance', 'P=2', 'Q=3', 'l=30'], 'Q: the other givens make it 4.67 Ω, not 3; leave one of them out'],
    [['shunt', 'gap=left', 'S=12', 'l1=33.7', 'l2=51.9'], 'a resistor in parallel makes its gap smaller'],
    [['combination', 'Q1=3', 'l1=40', 'Q2=10', 'l2=60'], 'never more than a quarter of the sum'],
    [['balance', 'P=two', 'l=20'], 'P: "two" is no number in Ω; write it as 12.5 or 4.9e-7'],
    [['balance', 'P=0', 'l=20'], 'P: is 0 Ω and must be above 0'],
    [['balance', 'P=5', 'l=100'], 'l: is 100 cm and must be above 0 and below 100 cm'],
    [['balance', 'P=nan', 'l=40'], 'P: "nan" is no number in Ω'],
    [['balance', 'P=1e400', 'l=40'], 'P: "1e400" is no number in Ω'],
    [['balance', 'P=5', 'l=40V'], 'l: "40V" is no number in cm'],
    [['gradient', 'E=2', 'w=5', 'k=0.05'], 'R: is -3 Ω with these givens, and must be above 0'],
    [['ring', 'r=12', 'Y=3', 'theta=400'], 'theta: is 400° and must be above 0 and below 360°'],
    [['error-of-x', 'R=5', 'l=40', 'dl=-0.1'], 'dl: is -0.1 cm and must be 0 or more and below 40 cm'],
    [['equal-shunts', 'R=5', 'n=2.5', 'm=1.5'], 'n: is 2.5 and must be a whole number'],
    [['equal-shunts', 'R=5', 'n=2', 'm=3'], 'the distance cannot grow as much as the right gap is made smaller'],
    [['inconsistent-row', 'R=2,4,6', 'l=60,43'], 'every row needs its R and its l'],
    [['inconsistent-row', 'R=2,4', 'l=60,43'], 'three to eight'],
    [['inconsistent-row', 'gap=left', 'R=2,4,6', 'l=60,43,33.3'], 'no row lies clearly apart'],
    [['diameter-report', 'd=0.41'], 'n: is 1 and must be above 1'],
    [['scaling', 'k=1', 'l1=50'], 'one is no change'],
    [['gauge', 'rho=4.9e-7', 'X=5', 'L=1000'], 'no even gauge'],
    [['wheatstone', 'T=3', 'S=3'], 'T: wheatstone has this only with arm=shunted|lengthened'],
  ])('%s', async (args, reason) => {
    const { code, out, err } = await solve(...args);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(reason);
    expect(err.trim().split('\n')).toHaveLength(1);
  });
});

describe('names that are none are told with what is near', () => {
  test.each([
    [['balence', 'P=2'], 'no family "balence"; did you mean balance?'],
    [['end-corrections', 'alpa=2'], 'alpa: end-corrections has no such quantity; did you mean alpha?'],
    [['shunt', 'gap=lef'], 'gap: "lef" is none of left, right; did you mean left?'],
    [['balance', 'P=2'], 'balance cannot be worked from P; give one of these:\n    P, l (finds Q)'],
    [['balance', 'P=2', 'P=3'], 'P: is given twice; give it once'],
    [['balance', 'P'], '"P" gives no quantity'],
    [['balance', 'P='], '"P=" gives no quantity'],
    [['balance', '__proto__=1'], '"__proto__=1" gives no quantity'],
    [['balance', 'constructor=1'], 'constructor: balance has no such quantity; it has P, Q, l, W'],
    [['__proto__', 'P=1'], 'no family "__proto__"'],
    [['shunt', 'gap=left', 'gap=right'], 'gap: is given twice; give it once'],
    [['viva', 'topic=cell', 'P=3'], 'P: viva has no such quantity; it has topic'],
    [[], 'say which family'],
    [['balance', 'P=2', 'l=30', '--as', 'pdf'], '--as: "pdf" is none of text, html, json'],
  ])('%s', async (args, message) => {
    const { code, err } = await solve(...args);
    expect(code).toBe(1);
    expect(err).toContain(message);
  });
});

test('families lists every family, its id first, with a sample', async () => {
  const { code, out } = await slidewire(['families']);
  expect(code).toBe(0);
  for (const id of ['balance', 'shunt', 'carey-foster', 'viva']) expect(out).toMatch(new RegExp(`^${id}  \\S`, 'm'));
  expect(out).not.toMatch(/[{}\\]|undefined/);
});

test('families tells the arrangements of a family, its quantities with units, and what each arrangement finds from what', async () => {
  const { out } = await slidewire(['families']);
  const lines = out.split('\n');
  const own = (id: string) => lines.slice(lines.findIndex((line) => line.startsWith(`${id}  `)) + 1).slice(0, 4).map((line) => line.trim());
  expect(own('bridge-wire')).toEqual(['change=resistance|length', 'l1 in cm, k, l2 in cm, V in cm; W is 100 cm unless given', 'change=resistance: l1 k → l2', 'change=length: l1 V → l2; l1 l2 → V']);
  expect(own('ring').slice(0, 2)).toEqual(['gap=left|right', 'r in Ω, Y in Ω, l in cm; theta is 180°, W is 100 cm unless given']);
  expect(own('inconsistent-row').slice(1, 3)).toEqual(['R in Ω row by row (R=1,2,3), l in cm row by row (l=1,2,3); W is 100 cm unless given', 'R l → row']);
});
