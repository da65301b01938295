import { describe, expect, test } from 'vitest';
import { describeOrder, orderFlags } from '../../generators/order/flags.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import { known } from './known.ts';

const WIRE = 'wires: constantan, SWG 28, 60 cm\n';
const read = (yaml: string) => readOrder(WIRE + yaml, 'order.yaml', known);
const rows = describeOrder(known);

describe('the documentation of an order', () => {
  test('lists every entry that an order holds, in its order', () => {
    const { limits, latitude, ...order } = read('class: a.csv\nseed: 7\n');
    expect(rows.map(({ key }) => key).toSorted()).toEqual([
      ...Object.keys(order),
      ...Object.keys(limits).map((key) => `limits.${key}`),
      ...Object.keys(latitude).map((key) => `latitude.${key}`),
    ].toSorted());
  });

  test('asks for nothing that has to be given: an experiment has usual wires of its own', () => {
    expect(readOrder('experiment: resistivity\n', 'order.yaml', known).wires.length).toBeGreaterThan(0);
    expect(rows.find(({ key }) => key === 'wires')).toMatchObject({ without: 'wires that suit the experiment' });
  });

  test.each(rows.filter(({ fallback }) => fallback !== undefined).map(({ key, fallback }) => [key, fallback!] as const))('gives the default of %s as it can be written: %s', (key, fallback) => {
    const [outer, inner] = key.split('.');
    expect(read(inner === undefined ? `${outer}: ${fallback}` : `${outer}: {${inner}: ${fallback}}`)).toEqual(read(''));
  });

  test('has a meaning for every entry, and a flag of its own', () => {
    for (const { meaning, takes } of rows) expect([meaning.length > 10, takes.length > 5]).toEqual([true, true]);
    expect(new Set(rows.map(({ flag }) => flag)).size).toBe(rows.length);
    expect(rows.map(({ flag }) => flag)).toEqual(orderFlags(known).map(({ name }) => `--${name}`));
  });
});
