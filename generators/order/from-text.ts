/*
 * What the order file and the flags give is text; these make values of it where it can be read, and leave it as it is
 * where it cannot, for the schema to refuse. Values that are no text pass through.
 */

const NUMBER = /^[-+]?(\d+([.,]\d+)?|[.,]\d+)$/;

function ofText(read: (text: string) => unknown): (value: unknown) => unknown {
  return (value) => (typeof value === 'string' ? read(value.trim().normalize('NFC')) : value);
}

export const asText = ofText((text) => text.replace(/\s*[\r\n]+\s*/g, ' '));

/** '4', '0.5' or '0,5'. */
export const asNumber = ofText((text) => (NUMBER.test(text) ? Number(text.replace(',', '.')) : text));

/** '0.5' or '0.5 %'. */
export const asPercent = ofText((text) => asNumber(text.replace(/\s*(%|per ?cent)$/, '')));

/** 'yes' or 'no', and the words that other programs write for them. */
export const asFlag = ofText((text) => {
  const word = text.toLowerCase();
  if (['yes', 'true', 'on'].includes(word)) return true;
  return ['no', 'false', 'off'].includes(word) ? false : text;
});

/** The word of the list that is meant, whatever its capitals and spaces: '18 PT' is '18pt'. */
export function asChoice(words: readonly string[]): (value: unknown) => unknown {
  const plain = (word: string) => word.toLowerCase().replaceAll(' ', '');
  return ofText((text) => words.find((word) => plain(word) === plain(text)) ?? text);
}

/** A list whose items stand apart by spaces or commas, or by semicolons where items hold commas; or a ready list. */
export function asList(item: (value: unknown) => unknown): (value: unknown) => unknown {
  return (value) => {
    const list = typeof value === 'string' ? pieces(value, value.includes(';') ? /;/ : /[\s,]+/) : value;
    return Array.isArray(list) ? list.map(item) : list;
  };
}

/** A list, of which a single item may stand alone. */
export function asOneOrMore(value: unknown): unknown {
  return typeof value === 'string' ? [value] : value;
}

const RANGE = /^([\d.,]+)\s*(?:-|–|to|,\s|\s)\s*([\d.,]+)(?:\s*cm)?$/;

/** '40-60', '40 to 60', '40, 60' or a list of two. */
export function asRange(value: unknown): unknown {
  const list = typeof value === 'string' ? (RANGE.exec(value.trim())?.slice(1) ?? value) : value;
  return Array.isArray(list) ? list.map(asNumber) : list;
}

function pieces(text: string, separator: RegExp): string[] {
  return text.split(separator).map((piece) => piece.trim()).filter((piece) => piece !== '');
}
