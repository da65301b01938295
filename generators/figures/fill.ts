/** Puts values into the {places} of a sentence from content; a place without a value is a bug. */
export function fill(sentence: string, values: Record<string, string | number>): string {
  return sentence.replace(/\{(\w+)\}/g, (_, place: string) => {
    const value = values[place];
    if (value === undefined) throw new RangeError(`nothing to put at {${place}} in "${sentence}"`);
    return String(value);
  });
}
