import { describe, expect, it } from 'vitest';
import { nullPlace } from '../../generators/apparatus/null.ts';
import { loadTables } from '../../generators/cli/content.ts';
import { bridgeAlone, celsiusAlone, gaugeAlone, isNull, lengthAlone, ohmsToSet, tried } from '../../generators/practice/alone.ts';
import { atFirst } from '../../generators/practice/page/bench-stand.ts';
import { needle } from '../../generators/practice/bench.ts';
import { lengthAsShown } from '../../generators/practice/rule.ts';
import { thimbleAt } from '../../generators/practice/screw-gauge.ts';

const { bench: sizes } = loadTables();
const numbers = Array.from({ length: 50 }, (_, i) => i + 1);

describe('an instrument that is tried alone', () => {
  it('is the same again for the same number, and another for the next', () => {
    expect(ohmsToSet(sizes.box.plugs, tried(4))).toBe(ohmsToSet(sizes.box.plugs, tried(4)));
    expect(new Set(numbers.map((number) => lengthAlone(tried(number)))).size).toBeGreaterThan(40);
  });

  it('has a null point on the wire, to be told from places where a current flows', () => {
    for (const number of numbers) {
      const bench = bridgeAlone(sizes, tried(number));
      const [{ first, second }] = bench.laid.pairs as unknown as [Record<'first' | 'second', { ohms(): number }>];
      const place = nullPlace(bench.laid.bridge, { left: first.ohms(), right: second.ohms() });
      expect(place).toBeGreaterThan(10);
      expect(place).toBeLessThan(90);
      expect(isNull(bench, Math.round(10 * place) / 10)).toBe(true);
      for (const off of [-5, 5]) {
        expect(isNull(bench, place + off)).toBe(false);
        expect(needle(bench, { ...atFirst(), millimetres: Math.round(10 * (place + off)), isPressed: true, isClosed: true, isProtected: false }) * off).toBeGreaterThan(0);
      }
    }
  });

  it('lies on its scale', () => {
    for (const number of numbers) {
      const { gauge, touching } = gaugeAlone(sizes, tried(number));
      expect(thimbleAt(gauge, touching).turns).toBeGreaterThanOrEqual(0);
      expect(celsiusAlone(tried(number))).toBeLessThan(95);
      expect(Number.isInteger(Math.round(10 * lengthAlone(tried(number))))).toBe(true);
    }
  });
});

describe('a length on the rule', () => {
  it('is taken to a division, with its millimetre', () => {
    expect(lengthAsShown(60.23, '60.2')).toBe('60.2');
    expect(lengthAsShown(60.23, '60,3')).toBe('60.3');
    expect(lengthAsShown(59.98, '60')).toBe('60.0');
    for (const text of ['61.6', '60.5', '', 'sixty']) expect(lengthAsShown(60.23, text), text).toBeUndefined();
  });
});
