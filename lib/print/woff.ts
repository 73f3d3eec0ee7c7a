import "server-only";
import { inflateSync } from "node:zlib";

const HEAD = 44, ENTRY = 20, SFNT_HEAD = 12, SFNT_ENTRY = 16;
const SIGNATURE = 0x774f4646;
const padded = (length: number): number => Math.ceil(length / 4) * 4;

/**
 * The typeface in a WOFF 1 file as TrueType or OpenType keeps it, each table unpacked (W3C, WOFF File Format 1.0, sections 3 to 5).
 * fontkit reads WOFF too, but unpacks the table of outlines anew for every letter that it takes into a document.
 * @throws Error where the bytes are not WOFF 1, or a table is not as long as its entry says.
 */
export function unpacked(woff: Buffer): Buffer {
  if (woff.length < HEAD || woff.readUInt32BE(0) !== SIGNATURE) throw new Error("The typeface is not a WOFF 1 file.");
  const count = woff.readUInt16BE(12);
  const head = Buffer.alloc(SFNT_HEAD + count * SFNT_ENTRY);
  woff.copy(head, 0, 4, 8);
  head.writeUInt16BE(count, 4);
  // Fields for a search by halves: 16 times the greatest power of two in the count, its exponent, and what is left.
  const power = Math.floor(Math.log2(Math.max(count, 1)));
  head.writeUInt16BE(2 ** power * 16, 6);
  head.writeUInt16BE(power, 8);
  head.writeUInt16BE(Math.max(0, count * 16 - 2 ** power * 16), 10);
  const tables: Buffer[] = [];
  let at = head.length;
  for (let i = 0; i < count; i += 1) {
    const entry = woff.subarray(HEAD + i * ENTRY, HEAD + (i + 1) * ENTRY);
    const table = tableOf(woff, entry);
    const to = SFNT_HEAD + i * SFNT_ENTRY;
    entry.copy(head, to, 0, 4);
    entry.copy(head, to + 4, 16, 20);
    head.writeUInt32BE(at, to + 8);
    head.writeUInt32BE(table.length, to + 12);
    tables.push(table, Buffer.alloc(padded(table.length) - table.length));
    at += padded(table.length);
  }
  return Buffer.concat([head, ...tables]);
}

/** A table by its entry; one that would not have grown shorter is kept as it is. */
function tableOf(woff: Buffer, entry: Buffer): Buffer {
  const [offset, packed, length] = [entry.readUInt32BE(4), entry.readUInt32BE(8), entry.readUInt32BE(12)];
  const bytes = woff.subarray(offset, offset + packed);
  const table = packed < length ? inflateSync(bytes) : bytes;
  if (table.length !== length) throw new Error(`A table of the typeface is ${table.length} bytes long, not ${length}.`);
  return table;
}
