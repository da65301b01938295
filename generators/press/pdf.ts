/** The number of pages in a PDF as Chromium writes it: page objects in plain text. */
export function pageCount(pdf: Uint8Array): number {
  return Buffer.from(pdf).toString('latin1').match(/\/Type \/Page\b/g)?.length ?? 0;
}

/**
 * The same PDF as it would be if nothing had been printed before it, at no time: the same sheet gives the same bytes.
 */
export function settled(pdf: Uint8Array): Uint8Array {
  return renumbered(undated(pdf));
}

/**
 * The same PDF without its dates of making. They stand in plain text in the first object; blanks in their place keep every offset valid.
 */
export function undated(pdf: Uint8Array): Uint8Array {
  const bytes = Buffer.from(pdf);
  const first = bytes.subarray(0, bytes.indexOf('endobj')).toString('latin1');
  const blank = first.replace(/\/(CreationDate|ModDate) \([^)]*\)/g, (date) => ' '.repeat(date.length));
  bytes.write(blank, 'latin1');
  return bytes;
}

/** Where table headings are named, where cells name them, and where the names are listed in their order. */
const NAMING = /\/ID \(node\d+\)|\/(?:Headers|Limits|Names) \[[^\]]*\]/g;
const NUMBER = /(?<=\(node)\d+(?=\))/g;

/**
 * The same PDF with its table headings named by numbers from 1, in as many digits and the same order: Chromium counts
 * on from document to document, in plain text.
 */
export function renumbered(pdf: Uint8Array): Uint8Array {
  const bytes = Buffer.from(pdf);
  const namings = [...bytes.toString('latin1').matchAll(NAMING)];
  const numbers = [...new Set(namings.flatMap(([names]) => names.match(NUMBER) ?? []))].sort();
  const ranks = new Map(numbers.map((number, i) => [number, String(i + 1).padStart(number.length, '0')]));
  for (const { 0: names, index } of namings) bytes.write(names.replace(NUMBER, (number) => ranks.get(number)!), index, 'latin1');
  return bytes;
}
