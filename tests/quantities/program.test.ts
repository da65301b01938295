import { describe, expect, test } from 'vitest';
import { program } from '../../generators/quantities/program.ts';
import type { Relation, Step, Summary } from '../../generators/quantities/step.ts';
import { stepsOf, variantName, variants } from './practical.ts';

const reading = (id: string, per?: string): Step => ({ kind: 'reading', id, tex: id, unit: 'cm', ...(per ? { per } : {}) });
const relation = (id: string, as: string, more: Partial<Relation> = {}): Step => ({ kind: 'relation', id, tex: id, unit: 'cm', as, digits: { decimals: 1 }, ...more });
const summary = (id: string, by: Summary['by'], of: string[], more: Partial<Summary> = {}): Step => ({ kind: 'summary', id, tex: id, unit: 'cm', by, of, digits: { decimals: 1 }, ...more });

test.each(variants.map((variant) => ({ name: variantName(variant), variant })))('the practical stands: $name', ({ variant }) => {
  const steps = stepsOf(variant);
  expect(program(steps).steps).toBe(steps);
});

describe('a formula may name only what stands above it', () => {
  test('a name that nothing has is refused, L is never a litre', () => {
    expect(() => program([reading('l'), relation('x', 'l * L')])).toThrow('"l * L" names L, which does not stand above it');
  });
  test('what stands below is refused', () => {
    expect(() => program([relation('x', '2 * l'), reading('l')])).toThrow('names l');
  });
  test('its own name is refused', () => {
    expect(() => program([reading('l'), relation('x', 'x + l')])).toThrow('names x');
  });
  test.each([
    ['model', { model: 'l + missing' }],
    ['slip', { slips: [{ id: 'some slip', as: 'l - missing' }] }],
    ['last line of a route', { routes: [{ id: 'some route', via: [], as: 'missing' }] }],
    ['line of a route', { routes: [{ id: 'some route', via: [{ id: 'a', as: 'missing', digits: { figures: 3 } }], as: 'a' }] }],
  ])('also in a %s', (_, more) => {
    expect(() => program([reading('l'), relation('x', 'l', more)])).toThrow('names missing');
  });
  test('a line of a route may name the lines before it', () => {
    const via = [{ id: 'a', as: 'l / 2', digits: { figures: 3 } }, { id: 'b', as: 'a^2', digits: { figures: 3 } }];
    expect(() => program([reading('l'), relation('x', 'l^2 / 4', { routes: [{ id: 'halves', via, as: 'b' }] })])).not.toThrow();
  });
  test('a line of one route is not seen by another', () => {
    const routes = [{ id: 'one', via: [{ id: 'a', as: 'l', digits: { figures: 3 } }], as: 'a' }, { id: 'other', via: [], as: 'a' }];
    expect(() => program([reading('l'), relation('x', 'l', { routes })])).toThrow('names a');
  });
});

describe('ids', () => {
  test('two steps of one name are refused', () => {
    expect(() => program([reading('l'), relation('l', '2 * l')])).toThrow('two steps are called l');
  });
  test('a verdict takes a name too', () => {
    expect(() => program([reading('l'), { kind: 'verdict', id: 'l', choices: [], decide: () => '' }])).toThrow('two steps are called l');
  });
  test('an unknown id is refused when it is asked for', () => {
    expect(() => program([reading('l')]).step('m')).toThrow('no step is called m');
  });
});

describe('tables are one level deep', () => {
  const two = [reading('a', 'first'), reading('b', 'second'), reading('c')];

  test('a row sees its own row and the scalars', () => {
    expect(() => program([...two, relation('x', 'a + c', { per: 'first' })])).not.toThrow();
  });
  test('a row does not see another table', () => {
    expect(() => program([...two, relation('x', 'a + b', { per: 'first' })])).toThrow('names b');
  });
  test('a scalar does not see a column', () => {
    expect(() => program([...two, relation('x', 'a + c')])).toThrow('names a');
  });
  test.each([
    ['a scalar', ['c']],
    ['a name that nothing has', ['z']],
  ])('a mean below %s is refused', (_, of) => {
    expect(() => program([...two, summary('m', 'mean', of)])).toThrow('columns of one table');
  });
  test('a line through columns of two tables is refused', () => {
    expect(() => program([...two, summary('s', 'slope', ['a', 'b'])])).toThrow('columns of one table');
  });
  test.each([['mean', ['a', 'a']], ['slope', ['a']], ['intercept', ['a']], ['mean', []]] as [Summary['by'], string[]][])('a %s of %j is refused: wrong number of columns', (by, of) => {
    expect(() => program([...two, summary('s', by, of)])).toThrow(/taken of \d columns?/);
  });
  test('the slip of a summary sees the columns of its table, and no others', () => {
    const slip = (as: string) => ({ slips: [{ id: 'some slip', as }] });
    expect(() => program([...two, summary('m', 'mean', ['a'], slip('a * c'))])).not.toThrow();
    expect(() => program([...two, summary('m', 'mean', ['a'], slip('a * b'))])).toThrow('names b');
  });
});
