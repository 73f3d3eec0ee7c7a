import "server-only";
import type { FileHandle } from "node:fs/promises";
import { NOT_A_PHOTO } from "../sentences";

/** What a file is by its first bytes alone. Neither its name nor what the sender called it is asked. */
export type PictureType = "image/jpeg" | "image/png" | "image/webp" | "image/heic";
export type Sniffed = { type: PictureType } | { refused: string };

/** Bytes of the head that `sniff` needs. */
export const HEAD_BYTES = 64;
/**
 * Brands of pictures packed with HEVC, of sequences of such pictures, and those that say nothing about the packing
 * (ISO/IEC 23008-12, annex B). A sequence may hold a still picture besides; then it claims that brand too.
 */
const STILL_BRANDS = ["heic", "heix", "heim", "heis"], SEQUENCE_BRANDS = ["hevc", "hevx", "hevm", "hevs"];
const NEUTRAL_STILL = "mif1", NEUTRAL_SEQUENCE = "msf1";
/** Of films: QuickTime, which is the moving half of a Live Photo; ISO/IEC 14496-14; 3GPP TS 26.244. */
const FILM_BRANDS = /^(qt  |mp4.|M4V.?|isom|iso\d|avc1|3g[p2].)$/;

/** [first bytes as latin-1, what it is]. ISO base media files are told by their brand, below. */
const NOT_PHOTOS: readonly (readonly [string, keyof typeof NOT_A_PHOTO])[] = [
  ["GIF8", "gif"],
  ["II*\0", "raw"],
  ["MM\0*", "raw"],
  ["%PDF", "pdf"],
  ["PK\x03\x04", "office"],
  ["\x1f\x8b", "archive"],
  ["MZ", "program"],
  ["\x7fELF", "program"],
  ["BM", "bmp"],
  ["\0\0\0\x0cjP  ", "jp2"],
  ["\0\0\0\x0cJXL ", "jxl"],
  ["\xff\x0a", "jxl"],
];

export function sniff(head: Uint8Array): Sniffed {
  const text = Buffer.from(head).toString("latin1");
  if (text.startsWith("\xff\xd8\xff")) return { type: "image/jpeg" };
  if (text.startsWith("\x89PNG\r\n\x1a\n")) return { type: "image/png" };
  if (text.startsWith("RIFF") && text.slice(8, 12) === "WEBP") return { type: "image/webp" };
  if (text.slice(4, 8) === "ftyp") return sniffBrand(text.slice(8, 12), text.slice(16, Math.max(16, Math.min(HEAD_BYTES, Buffer.from(head).readUInt32BE(0)))));
  if (head.length === 0) return { refused: NOT_A_PHOTO.empty };
  if (/^(\xef\xbb\xbf)?\s*</.test(text)) return { refused: NOT_A_PHOTO.page };
  const known = NOT_PHOTOS.find(([start]) => text.startsWith(start));
  return { refused: NOT_A_PHOTO[known?.[1] ?? "unknown"] };
}

/** `others` are the brands the file claims besides, four letters each. */
function sniffBrand(brand: string, others: string): Sniffed {
  const claims = [brand, ...(others.match(/.{4}/gs) ?? [])];
  const claimsOne = (of: readonly string[]) => claims.some((b) => of.includes(b));
  if ([...STILL_BRANDS, ...SEQUENCE_BRANDS, NEUTRAL_STILL, NEUTRAL_SEQUENCE].includes(brand) && claimsOne([...STILL_BRANDS, ...SEQUENCE_BRANDS]))
    return claimsOne([...STILL_BRANDS, NEUTRAL_STILL]) ? { type: "image/heic" } : { refused: NOT_A_PHOTO.burst };
  const avif = claims.some((b) => b.startsWith("avi"));
  return { refused: NOT_A_PHOTO[avif ? "avif" : FILM_BRANDS.test(brand) ? "film" : "unknown"] };
}

/**
 * Does a PNG move? An animation announces itself by an `acTL` chunk before the first `IDAT` (PNG specification, third
 * edition, W3C 2025, 11.3.6.1). Our decoder would show its first frame without a word, so we look ourselves.
 */
export async function isAnimatedPng(file: FileHandle): Promise<boolean> {
  const chunk = Buffer.alloc(8);
  for (let at = 8, seen = 0; seen < 10_000; seen++) {
    if ((await file.read(chunk, 0, 8, at)).bytesRead < 8) return false;
    const name = chunk.toString("latin1", 4, 8);
    if (name === "acTL") return true;
    if (name === "IDAT" || name === "IEND") return false;
    at += 12 + chunk.readUInt32BE(0);
  }
  return false;
}

/**
 * Bits of one colour of a JPEG, from its frame header (ITU-T T.81, B.2.2); our decoder takes eight. NaN where there is no
 * such header, which decoding will find out.
 */
export async function bitsOfJpeg(file: FileHandle): Promise<number> {
  const segment = Buffer.alloc(5);
  for (let at = 2, seen = 0; seen < 1000; seen++) {
    if ((await file.read(segment, 0, 5, at)).bytesRead < 5 || segment[0] !== 0xff) return Number.NaN;
    const marker = segment[1]!;
    // C4, C8 and CC are no frames: tables, an extension, conditioning.
    if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)) return segment[4]!;
    at += marker === 0xff ? 1 : 2 + segment.readUInt16BE(2);
  }
  return Number.NaN;
}
