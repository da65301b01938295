/**
 * Which of some numbers a text holds to four figures or more, cut off or rounded. Numbers that have three figures
 * or fewer themselves are not looked for: they may stand on a sheet for another reason.
 */
export function leaks(text: string, numbers: Readonly<Record<string, number>>): string[] {
  return Object.entries(numbers).flatMap(([name, value]) => {
    if (Number(value.toPrecision(3)) === value) return [];
    const found = figures(value).filter((digits) => new RegExp(`(?<![\\d.])${digits.replace('.', '\\.')}`).test(text));
    return found.map((digits) => `${name} as ${digits}`);
  });
}

/** Four figures of a number, cut off and rounded: in full, and as they stand before a power of ten. */
function figures(value: number): string[] {
  const size = Math.abs(value);
  const mantissa = size.toExponential(15).slice(0, 5);
  const rounded = size.toExponential(3).slice(0, 5);
  const plain = size >= 1e-4 && size < 1e4 ? [inFull(size.toExponential(15).slice(0, 5), size), inFull(rounded, size)] : [];
  return [...new Set([mantissa, rounded, ...plain])];
}

/** '2.647' in the decade of 26.47 is '26.47'. */
function inFull(mantissa: string, size: number): string {
  const exponent = Math.floor(Math.log10(size));
  const digits = mantissa.replace('.', '');
  return exponent < 0 ? `0.${'0'.repeat(-exponent - 1)}${digits}` : `${digits.slice(0, exponent + 1)}.${digits.slice(exponent + 1)}`;
}
