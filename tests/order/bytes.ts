const encode = (text: string) => new TextEncoder().encode(text);

function utf16(text: string, littleEndian: boolean): Uint8Array {
  const view = new DataView(new ArrayBuffer(text.length * 2));
  for (let i = 0; i < text.length; i++) view.setUint16(i * 2, text.charCodeAt(i), littleEndian);
  return new Uint8Array(view.buffer);
}

/** The encodings that keep every letter, as programs write them. */
export const ENCODINGS: Record<string, (text: string) => Uint8Array> = {
  'UTF-8': encode,
  'UTF-8 with a mark': (text) => encode(`\ufeff${text}`),
  'UTF-16, little end first': (text) => utf16(`\ufeff${text}`, true),
  'UTF-16, big end first': (text) => utf16(`\ufeff${text}`, false),
  'UTF-16 without a mark': (text) => utf16(text, true),
};

export const utf8 = encode;

/** Bytes of a text whose letters are all below U+0100. */
export const singleBytes = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
