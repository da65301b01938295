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

  test('a unit may stand behind its number, and name=? asks by name', async () => {
    expect((await solve('combination', 'Q1=10Ω', 'l1=60cm', 'Q2=3', 'l2=40', 'A=?')).out).toMatch(/A = 12\.6 Ω/);
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
    [['balance', 'P=2', 'l=120'], 'l: is 120 cm with these givens, and must be above 0 and below 100 cm'],
    [['balance', 'P=-2', 'l=20'], 'P: is -2 Ω with these givens, and must be above 0'],
    [['balance', 'P=2', 'Q=3', 'l=30'], 'Q: the other givens make it 4.67 Ω, not 3; leave one of them out'],
    [['shunt', 'gap=left', 'S=12', 'l1=33.7', 'l2=51.9'], 'a resistor in parallel makes its gap smaller'],
    [['combination', 'Q1=3', 'l1=40', 'Q2=10', 'l2=60'], 'never more than a quarter of the sum'],
    [['balance', 'P=two', 'l=20'], 'P: "two" is no number in Ω; write it as 12.5 or 4.9e-7'],
    [['balance', 'P=0', 'l=20'], 'P: is 0 Ω with these givens, and must be above 0'],
  ])('%s', async (args, reason) => {
    const { code, out, err } = await solve(...args);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(reason);
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
