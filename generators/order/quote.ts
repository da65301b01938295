const LONGEST = 60;

/** What the user wrote, in quotation marks, on one line and cut short, so that a message stays readable. */
export function quote(value: unknown): string {
  const text = typeof value === 'string' ? value : JSON.stringify(value) ?? String(value);
  const letters = [...text.replace(/[\s\p{Cc}]+/gu, ' ').trim()];
  return `"${letters.length > LONGEST ? `${letters.slice(0, LONGEST).join('')}…` : letters.join('')}"`;
}
