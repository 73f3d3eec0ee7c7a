import { readFileSync } from "node:fs";
import path from "node:path";

const u16 = (...values: number[]) => Buffer.concat(values.map((v) => { const b = Buffer.alloc(2); b.writeUInt16BE(v); return b; }));
const u32 = (...values: number[]) => Buffer.concat(values.map((v) => { const b = Buffer.alloc(4); b.writeUInt32BE(v); return b; }));
const box = (type: string, ...parts: Buffer[]): Buffer => {
  const body = Buffer.concat(parts);
  return Buffer.concat([u32(8 + body.length), Buffer.from(type, "latin1"), body]);
};
/** A box with a version and flags (ISO/IEC 14496-12, 4.2). */
const full = (type: string, version: number, flags: number, ...parts: Buffer[]): Buffer => box(type, u32((version << 24) | flags), ...parts);

/** The first box of a type anywhere in a file, its header included. Good for the small fixture it is asked of. */
function boxOf(file: Buffer, type: string): Buffer {
  const at = file.indexOf(type, 0, "latin1") - 4;
  return file.subarray(at, at + file.readUInt32BE(at));
}

const TILE = { width: 640, height: 480 } as const;

interface Shown {
  /** Cut to this size. */
  size?: { width: number; height: number };
  transforms?: readonly Buffer[];
  /** Instead of the fixture's profile. */
  icc?: Buffer;
  /** The tiles are pictures in their own right, beside the main one, as in a burst. */
  areTilesPictures?: boolean;
  /** The brands it claims, the major one first; without, the fixture's. */
  brands?: readonly string[];
}
/** Anticlockwise by quarters of a turn (ISO/IEC 23008-12, 6.5.10). */
export const rotated = (quarters: number): Buffer => box("irot", Buffer.from([quarters]));
/** 0 swaps top and bottom, 1 left and right (6.5.12). */
export const mirrored = (axis: 0 | 1): Buffer => box("imir", Buffer.from([axis]));
/** The middle part of a picture (ISO/IEC 14496-12, 12.1.4): width, height, and how far its middle is from the picture's, as fractions. */
export const middlePart = (width: number, height: number): Buffer => box("clap", u32(width, 1, height, 1, 0, 1, 0, 1));

/**
 * A HEIC picture as telephones write them, a grid of tiles (ISO/IEC 23008-12, 6.6.2.3), `columns` × `rows` of 640 × 480 pixels.
 * Every tile is the picture of the fixture, so that it is as large as wanted without an encoder.
 */
export function gridHeic(columns: number, rows: number, { size = { width: columns * TILE.width, height: rows * TILE.height }, transforms = [], icc, areTilesPictures = false, brands }: Shown = {}): Buffer {
  const fixture = readFileSync(path.resolve("tests/fixtures/rug.heic"));
  const location = boxOf(fixture, "iloc");
  // Of its first item: base offset, offset of its one extent, and length (ISO/IEC 14496-12, 8.11.3).
  const from = location.readUInt32BE(20) + location.readUInt32BE(26), length = location.readUInt32BE(30);
  const tile = fixture.subarray(from, from + length);
  const count = columns * rows, grid = count + 1, tiles = Array.from({ length: count }, (_, i) => i + 1);
  const described = Buffer.concat([Buffer.from([0, 0, rows - 1, columns - 1]), u16(size.width, size.height)]);
  const entry = (id: number, type: string, hidden: boolean) => full("infe", 2, hidden ? 1 : 0, u16(id, 0), Buffer.from(`${type}\0`, "latin1"));
  const properties = box("ipco", boxOf(fixture, "hvcC"), full("ispe", 0, 0, u32(TILE.width, TILE.height)), icc ? box("colr", Buffer.from("prof", "latin1"), icc) : boxOf(fixture, "colr"), boxOf(fixture, "pixi"), full("ispe", 0, 0, u32(size.width, size.height)), ...transforms);
  const associations = full("ipma", 0, 0, u32(grid), ...tiles.map((id) => Buffer.concat([u16(id), Buffer.from([4, 0x81, 2, 3, 4])])), u16(grid), Buffer.from([3 + transforms.length, 5, 3, 4, ...transforms.map((_, n) => 0x86 + n)]));
  const meta = (start: number) => full("meta", 0, 0,
    boxOf(fixture, "hdlr"), full("pitm", 0, 0, u16(grid)),
    full("iloc", 0, 0, Buffer.from([0x44, 0]), u16(grid), ...[...tiles, grid].map((id) => Buffer.concat([u16(id, 0, 1), id === grid ? u32(start + length, described.length) : u32(start, length)]))),
    full("iinf", 0, 0, u16(grid), ...tiles.map((id) => entry(id, "hvc1", !areTilesPictures)), entry(grid, "grid", false)),
    full("iref", 0, 0, box("dimg", u16(grid, count), u16(...tiles))),
    box("iprp", properties, associations));
  const head = brands ? box("ftyp", Buffer.from(`${brands[0]}\0\0\0\0${brands.join("")}`, "latin1")) : boxOf(fixture, "ftyp");
  return Buffer.concat([head, meta(head.length + meta(0).length + 8), box("mdat", tile, described)]);
}
