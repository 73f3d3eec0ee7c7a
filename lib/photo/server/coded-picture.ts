import "server-only";
import { readFile } from "node:fs/promises";
import { isSrgb } from "../profile";
import { openPicture } from "./pictures";

/** Markers of ITU-T T.81, table B.1. */
const START = 0xd8, END = 0xd9, SCAN = 0xda, ADOBE_NOTE = 0xee, COMMENT = 0xfe;
const isNote = (marker: number) => marker === COMMENT || (marker >= 0xe0 && marker <= 0xef);
const isRestart = (marker: number) => marker >= 0xd0 && marker <= 0xd7;
/** Start of a picture and a JFIF head (ITU-T T.871, 10.1) that says only that the colours are those of JFIF. */
const HEAD = Buffer.from([0xff, START, 0xff, 0xe0, 0, 16, ...Buffer.from("JFIF\0"), 1, 2, 0, 0, 1, 0, 1, 0, 0]);
/** Segments and scans of one picture: a progressive one of a camera has some 30. *elicited* */
const MOST_PARTS = 200;

/**
 * What a segment must look like to be kept, byte for byte (T.81, B.2): frames of 8 bits in grey or in the three colours of
 * JFIF, tables of the very length their content has, restart intervals, heads of scans.
 */
const isFrame = (body: Buffer) => {
  const colours = body[5];
  return body[0] === 8 && (colours === 1 || colours === 3) && body.length === 6 + 3 * colours && Array.from({ length: colours }, (_, n) => body[6 + 3 * n]).every((id, n) => id === n + 1);
};
const AS_IT_SHOULD: Readonly<Record<number, (body: Buffer) => boolean>> = {
  0xc0: isFrame, 0xc1: isFrame, 0xc2: isFrame,
  0xdb: (body) => body.length % 65 === 0 && Array.from({ length: body.length / 65 }, (_, n) => body[65 * n]!).every((id) => id < 4),
  0xc4: (body) => {
    let at = 0;
    while (at + 17 <= body.length && (body[at]! & 0xec) === 0) at += 17 + body.subarray(at + 1, at + 17).reduce((sum, codes) => sum + codes, 0);
    return at === body.length;
  },
  0xdd: (body) => body.length === 2,
  [SCAN]: (body) => body.length === 4 + 2 * body[0]!,
};

/** Marks by which other programs find an archive, a page, a script or a document inside a file that begins as something else. */
const OTHER_FORMATS = /PK(?:\x01\x02|\x03\x04|\x05\x06|\x06[\x06\x07]|\x07\x08)|%PDF-|Rar!\x1a|7z\xbc\xaf|EICAR-STANDARD/;
const MARKUP = /<(?:script|html|head|body|svg|iframe|img|\?php|\?xml|!doctype)/i;

/**
 * The picture inside a JPEG as the camera coded it, with no note, profile, thumbnail or anything behind its end. Null where
 * it lies on its side or has colours other than sRGB, and where the smallest thing about it is unusual: such a picture is
 * coded anew.
 */
export async function codedPicture(file: string): Promise<Buffer | null> {
  const { orientation = 1, icc, space } = await openPicture(file).metadata();
  if (orientation !== 1 || (space !== "srgb" && space !== "b-w") || (icc && !isSrgb(icc))) return null;
  const bare = withoutNotes(await readFile(file));
  const text = bare?.toString("latin1") ?? "";
  return OTHER_FORMATS.test(text) || MARKUP.test(text) ? null : bare;
}

/** Null for all that is not built exactly as a simple JPEG. */
export function withoutNotes(sent: Buffer): Buffer | null {
  const parts: Uint8Array[] = [HEAD];
  for (let at = 2, frames = 0, scans = 0; parts.length < MOST_PARTS && at + 2 <= sent.length; ) {
    const marker = sent[at + 1]!;
    if (sent[at] !== 0xff) return null;
    if (marker === END) return frames === 1 && scans > 0 ? Buffer.concat([...parts, sent.subarray(at, at + 2)]) : null;
    const end = at + 2 + (at + 4 <= sent.length ? sent.readUInt16BE(at + 2) : 0);
    if (end < at + 4 || end > sent.length) return null;
    const body = sent.subarray(at + 4, end);
    if (isNote(marker) ? marker === ADOBE_NOTE && !isOfJfifColours(body) : !AS_IT_SHOULD[marker]?.(body)) return null;
    const next = marker === SCAN ? endOfScan(sent, end) : end;
    if (!isNote(marker)) parts.push(sent.subarray(at, next));
    if (AS_IT_SHOULD[marker] === isFrame) frames++;
    if (marker === SCAN) scans++;
    at = next;
  }
  return null;
}

/** Without this note three colours are taken as JFIF has them; with it they are where its last byte is 1 (T.872, 6.5.3). */
const isOfJfifColours = (body: Buffer) => body.toString("latin1", 0, 5) === "Adobe" && body.length === 12 && body[11] === 1;

/** Where the next marker stands behind coded data; in them FF is followed by 00 or by a restart (T.81, B.1.1.5). */
function endOfScan(sent: Buffer, from: number): number {
  for (let at = sent.indexOf(0xff, from); at >= 0; at = sent.indexOf(0xff, at + 2)) {
    const next = sent[at + 1] ?? END;
    if (next !== 0 && !isRestart(next)) return at;
  }
  return sent.length;
}
