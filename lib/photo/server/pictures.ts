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

/** Levels of grey that we hold, 8 bits each. */
export const fromGrey = (sheet: { data: Uint8Array; width: number; height: number }): Sharp =>
  sharp(sheet.data, { raw: { width: sheet.width, height: sheet.height, channels: 1 }, limitInputPixels: MAX_PIXELS });

export interface Pixels {
  data: Uint8Array;
  width: number;
  height: number;
  channels: 3;
}
