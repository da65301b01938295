/** Attributes of an element; those without a value are left out. */
type Attributes = Readonly<Record<string, string | undefined>>;

/** An element with what stands in it, which is XML already. */
export function element(name: string, attributes: Attributes, ...inside: readonly string[]): string {
  const written = Object.entries(attributes).flatMap(([key, value]) => (value === undefined ? [] : [` ${key}="${escapeXml(value)}"`])).join('');
  const content = inside.join('');
  return content === '' ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
}

/** Text as XML; characters that XML 1.0 has no place for are left out. */
export function escapeXml(text: string): string {
  return text
    .replace(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, '')
    .replace(/[&<>"]/g, (letter) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[letter]!);
}

export const document = (root: string): string => `<?xml version="1.0" encoding="UTF-8"?>\n${root}\n`;
