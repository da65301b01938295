import { describe, expect, it } from 'vitest';
import { gaugeBench, isShownOn, thimbleAt } from '../../generators/practice/screw-gauge.ts';
import { setCode } from '../../generators/practice/set-code.ts';
import { setOf } from './pages.ts';

const benches = Array.from({ length: 20 }, (_, i) => {
  const { steps, set } = setOf('resistivity', setCode(1000 * i));
  return { bench: gaugeBench(steps, set)!, readings: set.sheet.readings };
});

describe('the screw gauge of a set', () => {
  it('touches the wire where the printed readings have it, but for the pressure of the screw', () => {
    for (const { bench, readings } of benches) {
      const [main, circular] = [readings['msr'], readings['n']].map((column) => [column!].flat().map(Number)) as [number[], number[]];
      bench.touching.forEach((count, row) => {
        const printed = main[row]! / Number(bench.gauge.leastCount) + circular[row]!;
        // Usual hands scatter by 0.4 of a division, never beyond six times that, and both are rounded.
        expect(Math.abs(count - printed)).toBeLessThanOrEqual(3);
      });
    }
  });

  it('closes at the printed zero', () => {
    for (const { bench, readings } of benches) expect(String(thimbleAt(bench.gauge, bench.closed).division)).toBe(readings['n0']);
    expect(benches.some(({ bench }) => bench.closed < 0) && benches.some(({ bench }) => bench.closed > 0)).toBe(true);
  });

  it('takes a reading that is right to a division, and no half-millimetre missed', () => {
    const [{ bench }] = benches as [(typeof benches)[0]];
    expect(bench.gauge).toMatchObject({ pitch: '0.5', divisions: 50 });
    expect(isShownOn(bench.gauge, 87, '0.5', '37')).toBe(true);
    expect(isShownOn(bench.gauge, 87, '0.5', '38')).toBe(true);
    for (const [main, circular] of [['0.0', '37'], ['0.5', '35'], ['0.3', '37'], ['', '37'], ['0.5', ''], ['0.0', '87']] as const) expect(isShownOn(bench.gauge, 87, main, circular), `${main} ${circular}`).toBe(false);
  });

  it('is there for no set without one to be read', () => {
    for (const id of ['interchange', 'gauge-drill']) {
      const { steps, set } = setOf(id, setCode(7));
      expect(gaugeBench(steps, set), id).toBeUndefined();
    }
  });
});
