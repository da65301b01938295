import { crc32 } from 'node:zlib';

/** Day and time of every entry, so that the same files give the same bytes: 1 January 1980, the first that ZIP can say. */
const FIRST_DAY = 0x21;
/** Names are in UTF-8: general purpose bit 11. */
const UTF8 = 0x800;
const VERSION = 20;

/** Files by their path as a ZIP archive, stored without compression (PKWARE, APPNOTE.TXT, .ZIP File Format Specification). */
export function zip(files: Readonly<Record<string, string>>): Uint8Array {
  const parts: Buffer[] = [];
  const directory: Buffer[] = [];
  let offset = 0;
  for (const [path, content] of Object.entries(files)) {
    const name = Buffer.from(path);
    const bytes = Buffer.from(content);
    const common = fields(name.length, bytes);
    const local = Buffer.concat([signature(0x04034b50), common, name, bytes]);
    directory.push(Buffer.concat([signature(0x02014b50), short(VERSION), common, short(0), short(0), short(0), long(0), long(offset), name]));
    parts.push(local);
    offset += local.length;
  }
  const central = Buffer.concat(directory);
  const end = Buffer.concat([signature(0x06054b50), short(0), short(0), short(directory.length), short(directory.length), long(central.length), long(offset), short(0)]);
  return Buffer.concat([...parts, central, end]);
}

/** What the header before a file and its line in the directory share, from the version needed to the extra field's length. */
function fields(nameLength: number, bytes: Buffer): Buffer {
  return Buffer.concat([short(VERSION), short(UTF8), short(0), short(0), short(FIRST_DAY), long(crc32(bytes)), long(bytes.length), long(bytes.length), short(nameLength), short(0)]);
}

const signature = (value: number) => long(value);

function short(value: number): Buffer {
  const buffer = Buffer.alloc(2);
  buffer.writeUInt16LE(value);
  return buffer;
}

function long(value: number): Buffer {
  const buffer = Buffer.alloc(4);
  buffer.writeUInt32LE(value);
  return buffer;
}
