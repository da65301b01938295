const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻';
const LEVEL = '0123456789+-';

/** What a keyboard, a word processor or a spreadsheet makes of a number, in plain signs: '4.9×10⁻⁷' as '4.9×10^-7', any minus as '-'. */
export function plainText(text: string): string {
  return text
    .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻]+/gu, (raised) => `^${[...raised].map((sign) => LEVEL[RAISED.indexOf(sign)]).join('')}`)
    .normalize('NFKC')
    .replace(/[−‐‑‒–—]/gu, '-')
    .replace(/\p{Cf}/gu, '')
    .trim();
}
