import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { readClassList } from '../../generators/order/class-list.ts';
import { readOrder } from '../../generators/order/read-order.ts';
import type { WireAsk } from '../../generators/order/wire-ask.ts';

const read = (path: string) => readFileSync(new URL(`../../content/${path}`, import.meta.url));
const table = (name: string) => parse(read(`tables/${name}.yaml`).toString());
const materials = table('materials');
const gauges = table('gauges');
const numbers = (system: string) => Object.keys(gauges[system].diameters).map(Number);
const known = {
  materials: Object.keys(materials.materials),
  gauges: { SWG: numbers('SWG'), AWG: [] },
  experiments: ['resistivity'],
  sources: Object.keys(materials.sources),
  languages: ['en'],
};
const order = readOrder(read('demo/order.yaml').toString(), 'order.yaml', known);
const { students, notices } = readClassList(read('demo/class.csv'), 'class.csv', known);

/** ρ L / A in ohms, by the source that the order names. */
function ohms({ material, gauge, lengthCm }: WireAsk): number {
  const { rho } = materials.materials[material].values.find(({ source }: { source: string }) => source === order.resistivity);
  const mm = Number('mm' in gauge ? gauge.mm : gauges[gauge.system].diameters[gauge.number]);
  return (Number(rho) * lengthCm * 1e-2) / ((Math.PI / 4) * (mm * 1e-3) * (mm * 1e-3));
}

describe('the demo', () => {
  test('is a class of 30 with a seed of its own, and reads without a notice', () => {
    expect(students).toHaveLength(30);
    expect(notices).toEqual([]);
    expect(order.seed).toBe('heron-demo');
  });

  test('has wires of 1.5 to 9 Ω, in the order and in the class list', () => {
    const asked = [...order.wires, ...students.flatMap(({ wire }) => (wire ? [wire] : []))];
    expect(asked).toHaveLength(11);
    for (const wire of asked) {
      expect(ohms(wire)).toBeGreaterThan(1.5);
      expect(ohms(wire)).toBeLessThan(9);
    }
  });

  test('states the resistances that ρ L / A gives', () => {
    expect(order.wires.map((wire) => ohms(wire).toPrecision(2))).toEqual(['2.6', '4.4', '7.5', '3.6', '3.1', '5.6', '2.7', '5.9', '8.7']);
  });
});
