/**
 * The code of a practice set: 'set-' and six figures, which a phone's number pad can type. Sheet codes are eight letters
 * and figures in two fours without 'set', so that neither can be taken for the other.
 */
export type SetCode = `set-${string}`;

const FIGURES = 6;
const COUNT = 1_000_000;

/** The code of that number, from 0 to 999999. */
export function setCode(number: number): SetCode {
  if (!Number.isInteger(number) || number < 0 || number >= COUNT) throw new RangeError(`no set has the number ${number}`);
  return `set-${String(number).padStart(FIGURES, '0')}`;
}

/** The set code in what someone typed or an address holds, '#set-048213', '048 213', with whatever dash a phone puts there; undefined where there is none. */
export function readSetCode(text: string): SetCode | undefined {
  const [, figures] = /^#?(?:set[-‐‑–— ]?)?(\d{3} ?\d{3})$/i.exec(text.trim()) ?? [];
  return figures === undefined ? undefined : `set-${figures.replace(' ', '')}`;
}
