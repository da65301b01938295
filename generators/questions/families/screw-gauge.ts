import type { Random } from '../../random.ts';
import type { Readings } from '../../quantities/evaluate.ts';
import type { Exact } from '../exact.ts';
import type { Body, Family } from '../family.ts';
import { isMultiple } from '../number.ts';

const mm = (tex: string, values: readonly string[]) => ({ tex, unit: 'mm', values, neat: 'any' as const });

/** Reading of a screw gauge with its zero error; with a positive zero error the zero has not yet come up to the line. */
export const screwGauge: Family = {
  id: 'screw-gauge',
  tags: ['instruments'],
  choices: { zero: ['known', 'positive', 'negative'] },
  body: ({ zero }): Body => ({
    quantities: {
      p: mm('p', ['0.5', '1.0']),
      N: { tex: 'N', unit: '', values: ['50', '100'] },
      c: { ...mm('c', ['0.01']), printed: [0.009, 0.011] },
      m: { ...mm('m', ['0.0', '0.5', '1.0', '1.5', '2.0']), mayBeLeast: true },
      n: { tex: 'n', unit: '', values: { from: 3, to: 47, step: '1' }, between: ['0', 'N'], mayBeLeast: true, neat: 1 },
      z: { tex: 'n_0', unit: '', values: { from: 1, to: 6, step: '1' }, between: ['0', 'N'], mayBeLeast: true, neat: 1 },
      e: { ...mm('e', ['0.02', '0.03', '0.05', '-0.02', '-0.03', '-0.05']), between: [undefined, undefined], eitherWay: true, digits: { decimals: 2 } },
      D: { ...mm('D', []), digits: { decimals: 2 } },
      d: { ...mm('d', []), digits: { decimals: 2 }, printed: [0.1, 3] },
    },
    condition: zero === 'known' ? ['d = m + n * c - e'] : ['c * N = p', zero === 'positive' ? 'e = z * c' : 'e = (z - N) * c', 'd = m + n * c - e'],
    holds: zero === 'known' ? {} : { 'the zero is near': zero === 'negative' ? 'z - N / 2' : 'N / 2 - z' },
    ...(zero !== 'known' && { draw: (random: Random) => drawScales(random, zero === 'negative'), fault: lineMissing }),
    asks: zero === 'known' ? known : { [zero!]: fromScales(zero!) },
  }),
};

/** The lines of the main scale are a turn apart, and the circular scale reads less than a turn: as the usual gauges are made. */
function drawScales(random: Random, isPast: boolean): Readings {
  const [p, N, lines] = random.pick([['0.5', '50', ['0.0', '0.5', '1.0', '1.5']], ['1.0', '100', ['0.0', '1.0', '2.0']]] as const);
  const off = random.integer(1, 6);
  return { p, N, m: random.pick(lines), n: String(random.integer(8, Number(N) - 3)), z: String(isPast ? Number(N) - off : off) };
}

/** Whether the main scale has no line where it is read. */
const lineMissing = (columns: Exact) => (isMultiple(columns.get('m')![0]!, columns.get('p')![0]!) ? undefined : 'the main scale has a line there');

const observed = (missed: Record<string, string>) => ({ id: 'D', as: 'm + n * c', slips: { ...missed, 'least count ten times too large': 'm + 10 * n * c' } });
const corrected = { id: 'd', as: 'D - e', slips: { 'zero error with the wrong sign': 'D + e', 'zero error ignored': 'D' } };

const known: Body['asks'] = { known: { finds: ['d'], algebra: 1, steps: [observed({ 'half-millimetre line missed': 'm + n * c - 0.5' }), corrected] } };

function fromScales(zero: string) {
  const e = zero === 'positive' ? { id: 'e', as: 'z * c' } : { id: 'e', as: '(z - N) * c', slips: { 'negative zero error read as positive': 'z * c' } };
  return { finds: ['e', 'd'], algebra: 1 as const, steps: [{ id: 'c', as: 'p / N' }, observed({ 'line of the main scale missed': 'm + n * c - p' }), e, corrected] };
}
