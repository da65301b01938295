import { type Dialect, Hold } from './print.ts';

/** A formula as a plain JavaScript expression, for the browser; `power` is multiplication repeated, the same bits everywhere. */
export const numberCode: Dialect = {
  number: (text) => ({ text, hold: Hold.atom }),
  name: (id) => ({ text: id, hold: Hold.atom }),
  pi: () => ({ text: 'Math.PI', hold: Hold.atom }),
  negative: (of) => `-${of}`,
  sqrt: (of) => `Math.sqrt(${of})`,
  sum: (left, right) => `${left}+${right}`,
  difference: (left, right) => `${left}-${right}`,
  product: (left, right) => `${left}*${right}`,
  quotient: (left, right) => `${left}/${right}`,
  power: (base, exponent) => `power(${base},${exponent})`,
  bracket: (inside) => `(${inside})`,
  barGroups: false,
};

const call = (name: string) => (left: string, right: string) => `I.${name}(${left},${right})`;

/** A formula as calls on the interval arithmetic of interval.ts; π is the interval of what schools put for it. */
export const intervalCode: Dialect = {
  number: (text) => ({ text: `[${text},${text}]`, hold: Hold.atom }),
  name: (id) => ({ text: id, hold: Hold.atom }),
  pi: () => ({ text: 'I.schoolPi', hold: Hold.atom }),
  negative: (of) => `I.negative(${of})`,
  sqrt: (of) => `I.sqrt(${of})`,
  sum: call('sum'),
  difference: call('difference'),
  product: call('product'),
  quotient: call('quotient'),
  power: (base, exponent) => `I.power(${base},${exponent})`,
  bracket: (inside) => inside,
  barGroups: true,
};
