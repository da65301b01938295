import iconv from 'iconv-lite';
import { UserMistake } from '../mistake.ts';

/** A file's text, and what the user should know about the way it was read. */
export interface DecodedText {
  text: string;
  notices: string[];
}

/**
 * The text of a file that a spreadsheet or an editor wrote: UTF-8 or UTF-16, with or without a byte order mark,
 * else Windows-1252, which is a guess and gives a notice. Throws a UserMistake for a file that is not text.
 */
export function decodeText(bytes: Uint8Array, fileName: string): DecodedText {
  refuseBinary(bytes, fileName);
  const utf16 = utf16Order(bytes);
  const text = decoded(bytes, utf16 ?? 'utf-8');
  if (text?.includes('\0')) throw notText(fileName);
  if (text !== undefined) return { text, notices: [] };
  if (utf16 || bytes.includes(0)) throw notText(fileName);
  return {
    // Not TextDecoder: some versions of Node decode windows-1252 as Latin-1, without its quotes and dashes.
    text: iconv.decode(bytes, 'windows-1252'),
    notices: [
      `${fileName} is not in UTF-8; it was read as Windows-1252. `
      + 'Check the names on the sheets, and save the file as UTF-8 if one is wrong',
    ],
  };
}

/** First bytes of files that are taken for text by mistake: zip (xlsx, ods, docx), old Office files, PDF. */
const BINARY: readonly (readonly number[])[] = [
  [0x50, 0x4b, 0x03, 0x04],
  [0xd0, 0xcf, 0x11, 0xe0],
  [0x25, 0x50, 0x44, 0x46],
];

function refuseBinary(bytes: Uint8Array, fileName: string): void {
  if (BINARY.some((start) => start.every((byte, i) => bytes[i] === byte))) throw notText(fileName);
}

function notText(file: string): UserMistake {
  const what = 'this is not a text file; if it is a spreadsheet, open it, choose "Save as" or "Export", and save it as CSV (UTF-8)';
  return new UserMistake([{ file, what }]);
}

/** The byte order from the mark, or from where the zero half of the first letter stands. */
function utf16Order(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  const [first, second] = bytes;
  if (second === undefined) return undefined;
  if ((first === 0xff && second === 0xfe) || (first !== 0 && second === 0)) return 'utf-16le';
  if ((first === 0xfe && second === 0xff) || (first === 0 && second !== 0)) return 'utf-16be';
  return undefined;
}

/** Undefined where the bytes are not valid in that encoding. The mark at the start is taken off. */
function decoded(bytes: Uint8Array, encoding: string): string | undefined {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
