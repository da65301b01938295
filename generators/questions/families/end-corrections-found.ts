import { round } from '../../quantities/written.ts';
import type { Family } from '../family.ts';
import { bridgeWire, nullPoint, ohms } from '../kinds.ts';

/** As large as they are on a bridge with worn or dirty ends; common practice, no source. */
const ENDS = ['0.4', '0.5', '0.6', '0.7', '0.8', '0.9', '1.0', '1.1', '1.2', '1.3', '1.4', '1.5', '1.6', '1.7', '1.8', '1.9', '2.0'] as const;

const end = (tex: string) => ({ tex, unit: 'cm', values: ENDS, between: [undefined, undefined] as const, eitherWay: true as const, neat: 0.05, printed: [0.2, 2.5] as const });

/** Two known resistances, then interchanged, give the end corrections. */
export const endCorrectionsFound: Family = {
  id: 'end-corrections-found',
  tags: ['metre-bridge', 'end-corrections'],
  body: {
    quantities: {
      P: ohms('P'),
      Q: ohms('Q'),
      l1: { ...nullPoint('l_1'), values: { from: 15, to: 85, step: '0.1' } },
      l2: { ...nullPoint('l_2'), values: { from: 15, to: 85, step: '0.1' }, neat: 0.1 },
      alpha: end('\\alpha'),
      beta: end('\\beta'),
      W: bridgeWire,
    },
    condition: ['P * (W - l1 + beta) = Q * (l1 + alpha)', 'Q * (W - l2 + beta) = P * (l2 + alpha)'],
    holds: { 'the two resistances differ': '(P - Q) * (P - Q)' },
    draw: (random, ask) => {
      const [P, Q] = random.pick(PAIRS);
      const [alpha, beta] = [random.pick(ENDS), random.pick(ENDS)];
      if (ask === 'nulls') return { P, Q, alpha, beta };
      const whole = 100 + Number(alpha) + Number(beta);
      const at = (left: string, right: string) => round((whole * Number(left)) / (Number(left) + Number(right)) - Number(alpha), { decimals: 1 }, 'even');
      return { P, Q, l1: at(P, Q), l2: at(Q, P) };
    },
    asks: {
      ends: {
        finds: ['alpha', 'beta'],
        algebra: 3,
        steps: [
          { id: 'alpha', as: '(Q * l1 - P * l2) / (P - Q)', slips: { 'resistances exchanged': '(P * l1 - Q * l2) / (P - Q)' } },
          { id: 'beta', as: '(P * l1 - Q * l2) / (P - Q) - W', slips: { 'wire not taken off': '(P * l1 - Q * l2) / (P - Q)' } },
        ],
      },
      nulls: {
        finds: ['l1', 'l2'],
        algebra: 2,
        steps: [
          { id: 'l1', as: '(P * (W + beta) - Q * alpha) / (P + Q)', slips: { 'ends left out': 'W * P / (P + Q)' } },
          { id: 'l2', as: '(Q * (W + beta) - P * alpha) / (P + Q)', slips: { 'ends left out of the second': 'W * Q / (P + Q)' } },
        ],
      },
    },
  },
};

/** Pairs in simple ratios, so that null points fall on whole tenths. */
const PAIRS = [['10', '20'], ['20', '10'], ['15', '60'], ['60', '15'], ['50', '100'], ['100', '50'], ['20', '30'], ['30', '20'], ['12', '36'], ['36', '12'], ['40', '10']] as const;
