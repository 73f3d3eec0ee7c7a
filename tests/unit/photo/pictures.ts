import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { crc32, deflateSync } from "node:zlib";
import sharp, { type Sharp } from "sharp";
import { afterAll } from "vitest";

/** A folder that is gone after the test file. */
export function tempFolder(): string {
  const folder = mkdtempSync(path.join(tmpdir(), "photos-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
export const listed = (folder: string): string[] => readdirSync(folder);
export const sha256 = (data: Uint8Array): string => createHash("sha256").update(data).digest("hex");

/** Bytes as they would arrive, in pieces. */
export async function* inPieces(data: Uint8Array, size = 64 * 1024): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < data.length; at += size) yield data.subarray(at, at + size);
}

/** Left half brick red, right half slate blue, with a fine check over both. */
export function drawn(width: number, height: number) {
  const data = Buffer.alloc(width * height * 3);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const fleck = ((x >> 2) + (y >> 2)) & 1 ? 8 : 0;
      const colour = x < width / 2 ? [150, 50, 40] : [50, 70, 120];
      data.set(colour.map((v) => v + fleck), 3 * (y * width + x));
    }
  return sharp(data, { raw: { width, height, channels: 3 } });
}

const GPS = { GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 0/1", GPSLongitudeRef: "W", GPSLongitude: "0/1 7/1 0/1" };
/** 120 × 80 pixels on the sensor, to be shown 80 × 120; with place, time and exposure. */
export const phoneJpeg = (): Promise<Buffer> =>
  drawn(120, 80).jpeg().withMetadata({ orientation: 6 }).withExif({
    IFD0: { Make: "Example", Artist: "Somebody" },
    IFD2: { DateTimeOriginal: "2026:03:14 15:09:26", ExposureTime: "1/50", FNumber: "18/10", ISOSpeedRatings: "125", Flash: "25" },
    IFD3: GPS,
  }).toBuffer();

const chunk = (name: string, body: Buffer): Buffer => {
  const typed = Buffer.concat([Buffer.from(name, "latin1"), body]);
  const ends = Buffer.alloc(8);
  ends.writeUInt32BE(body.length, 0);
  ends.writeUInt32BE(crc32(typed), 4);
  return Buffer.concat([ends.subarray(0, 4), typed, ends.subarray(4)]);
};

/** A valid black and white PNG of any size, small as a file. */
export function bombPng(side: number): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(side, 0);
  header.writeUInt32BE(side, 4);
  header[8] = 1;
  const rows = Buffer.alloc(side * (1 + Math.ceil(side / 8)));
  return Buffer.concat([Buffer.from("\x89PNG\r\n\x1a\n", "latin1"), chunk("IHDR", header), chunk("IDAT", deflateSync(rows)), chunk("IEND", Buffer.alloc(0))]);
}

/** The same PNG with an `acTL` chunk, which says that it moves. */
export function animatedPng(png: Buffer): Buffer {
  const control = Buffer.alloc(8);
  control.writeUInt32BE(2, 0);
  return Buffer.concat([png.subarray(0, 33), chunk("acTL", control), png.subarray(33)]);
}

export async function animatedWebp(): Promise<Buffer> {
  const frames = await Promise.all([drawn(40, 30).png().toBuffer(), drawn(40, 30).negate().png().toBuffer()]);
  return sharp(frames, { join: { animated: true } }).webp({ loop: 0 }).toBuffer();
}

/** The pixels lib/photo measures: RGB, at most 1024 on the long side. */
export async function rgbOf(picture: Buffer | Sharp): Promise<{ data: Uint8Array; width: number; height: number }> {
  const { data, info } = await (Buffer.isBuffer(picture) ? sharp(picture) : picture)
    .resize(1024, 1024, { fit: "inside", withoutEnlargement: true }).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height };
}
