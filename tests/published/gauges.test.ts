import { execFileSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { tableValue } from '../../generators/apparatus/materials.ts';
import { gauges, materials } from '../apparatus/tables.ts';
import { describeWith } from '../outside.ts';

/** GNU Units, terse: the number of `to` in `from`. */
function units(from: string, to: string): number {
  return Number(execFileSync('units', ['--terse', '--digits', '12', from, to], { encoding: 'utf8' }));
}

describeWith(['units'], 'wire tables against GNU Units', () => {
  const series: [string, string, number][] = [
    ['SWG', 'brwiregauge', 3],
    ['AWG', 'awg', 4],
  ];
  test.each(series)('%s: every diameter is that of %s to its last digit, %i decimals', (name, theirs, decimals) => {
    const diameters = Object.entries(gauges[name]!.diameters);
    expect(diameters.length).toBeGreaterThan(15);
    for (const [number, mm] of diameters) {
      expect(mm.split('.')[1]).toHaveLength(decimals);
      const lastDigit = Number(`1e-${decimals}`);
      expect(Math.abs(Number(mm) - units(`${theirs}(${number})`, 'mm')), `${name} ${number}`).toBeLessThanOrEqual(0.5001 * lastDigit);
    }
  });

  test('copper of IEC 60028 has the conductivity of annealed copper', () => {
    const { rho } = tableValue(materials, 'copper', 'iec-60028');
    expect(Math.abs(Number(rho) - units('1 / copperconductivity', 'ohm m'))).toBeLessThanOrEqual(0.5e-12);
  });
});
