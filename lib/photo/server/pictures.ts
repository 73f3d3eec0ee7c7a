import "server-only";
import sharp, { type Sharp } from "sharp";
import { MAX_PIXELS } from "../limits";

/** Only these readers exist in this process: an SVG, GIF or TIFF is refused before any parser of theirs sees a byte. */
sharp.block({ operation: ["VipsForeignLoad"] });
sharp.unblock({ operation: ["VipsForeignLoadJpeg", "VipsForeignLoadPng", "VipsForeignLoadWebp", "VipsForeignLoadHeif"] });
// Each picture is read once: a cache would only hold memory.
sharp.cache(false);

/** Opens an untrusted picture. The slightest damage is an error: half a picture is no evidence. A "warning" fails already at what is merely odd. */
export const openPicture = (input: string | Buffer, failOn: "error" | "warning" = "error"): Sharp => sharp(input, { limitInputPixels: MAX_PIXELS, failOn });

/** Pixels that we already hold: RGB or RGBA, 8 bits each. */
export const fromPixels = (pixels: { data: Uint8Array; width: number; height: number; channels: 3 | 4 }): Sharp =>
  sharp(pixels.data, { raw: { width: pixels.width, height: pixels.height, channels: pixels.channels }, limitInputPixels: MAX_PIXELS });

/** Levels of grey with white around, in pixels, as a picture that takes no time to open: PGM of Netpbm, its binary kind (netpbm.sourceforge.net/doc/pgm.html). */
export function pgmOf({ data, width, height }: { data: Uint8Array; width: number; height: number }, edge: number): Buffer {
  const row = width + 2 * edge, rows = height + 2 * edge;
  const head = Buffer.from(`P5\n${row} ${rows}\n255\n`, "latin1");
  const picture = Buffer.alloc(head.length + row * rows, 255);
  head.copy(picture);
  for (let y = 0; y < height; y++) picture.set(data.subarray(y * width, (y + 1) * width), head.length + (edge + y) * row + edge);
  return picture;
}

export interface Pixels {
  data: Uint8Array;
  width: number;
  height: number;
  channels: 3;
}
