import { plainText } from './plain-text.ts';

/** A unit as someone wrote it: what it measures, and its power of ten over the SI unit of that. */
export interface StatedUnit {
  /** 'm', 'm Ω', '' for a pure number: base symbols in order, each with its power where that is not one. */
  of: string;
  tens: number;
}

const PREFIXES: Readonly<Record<string, number>> = { '': 0, p: -12, n: -9, μ: -6, u: -6, m: -3, c: -2, k: 3, M: 6, G: 9 };
const SYMBOL = /^([pnμumckMG]?)(Ω|m|V|A|W|K|s|°C|°)(?:\^([+-]?\d))?/u;

/** Words and signs that stand for symbols; the sign of a prefix comes before that of its unit. */
const SPELT: readonly (readonly [RegExp, string])[] = [
  [/per\s?cent/gi, '%'],
  [/(?:degrees?|deg\.?)\s*C(?:elsius)?/gi, '°C'],
  [/micro[- ]?(?=ohm|met)/gi, 'μ'],
  [/milli[- ]?(?=ohm|met)/gi, 'm'],
  [/centi[- ]?(?=met)/gi, 'c'],
  [/kilo[- ]?(?=ohm|met)/gi, 'k'],
  [/ohms?/gi, 'Ω'],
  [/met(?:er|re)s?/gi, 'm'],
];

/** Reads 'Ω m', 'ohm-metres', 'mm', 'Ω/cm', 'cm⁻¹', '%'; undefined for what is no unit that is known. */
export function readUnit(text: string): StatedUnit | undefined {
  let rest = SPELT.reduce((so, [word, sign]) => so.replace(word, sign), plainText(text)).trim();
  if (rest === '%') return { of: '', tens: -2 };
  const powers = new Map<string, number>();
  let tens = 0;
  let side = 1;
  if (/^1\s*\//.test(rest)) rest = rest.slice(1);
  while (rest !== '') {
    const [joint] = /^\s*(?:[·⋅.*×-]\s*|\/\s*)?/u.exec(rest)!;
    if (joint.includes('/')) side = -1;
    const [all, prefix, symbol, power] = SYMBOL.exec(rest.slice(joint.length)) ?? [];
    if (all === undefined) return undefined;
    const by = side * Number(power ?? 1);
    powers.set(symbol!, (powers.get(symbol!) ?? 0) + by);
    tens += by * PREFIXES[prefix!]!;
    rest = rest.slice(joint.length + all.length);
  }
  return { of: [...powers].filter(([, by]) => by !== 0).sort(([a], [b]) => (a < b ? -1 : 1)).map(([symbol, by]) => (by === 1 ? symbol : `${symbol}^${by}`)).join(' '), tens };
}
