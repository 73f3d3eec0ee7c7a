import "server-only";
import { crc32, deflateSync } from "node:zlib";

/**
 * Puts a colour profile into a PNG: an `iCCP` chunk straight after `IHDR` (PNG specification, 11.3.2.3). The library can
 * attach a profile only by converting to it, and these pixels are in that profile already.
 */
export function tagPng(png: Buffer, icc: Buffer): Buffer {
  const afterHeader = 8 + 25;
  const body = Buffer.concat([Buffer.from("iCCP" + "icc\0\0", "latin1"), deflateSync(icc)]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(body.length - 4);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([png.subarray(0, afterHeader), length, body, check, png.subarray(afterHeader)]);
}
