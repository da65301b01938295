/** The number of pages in a PDF as Chromium writes it: page objects in plain text. */
export function pageCount(pdf: Uint8Array): number {
  return Buffer.from(pdf).toString('latin1').match(/\/Type \/Page\b/g)?.length ?? 0;
}

/**
 * The same PDF without its dates of making, so that the same sheet gives the same bytes.
 * They stand in plain text in the first object; blanks in their place keep every offset valid.
 */
export function undated(pdf: Uint8Array): Uint8Array {
  const bytes = Buffer.from(pdf);
  const first = bytes.subarray(0, bytes.indexOf('endobj')).toString('latin1');
  const blank = first.replace(/\/(CreationDate|ModDate) \([^)]*\)/g, (date) => ' '.repeat(date.length));
  bytes.write(blank, 'latin1');
  return bytes;
}
