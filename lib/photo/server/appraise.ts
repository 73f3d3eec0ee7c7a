import "server-only";
import { setImmediate as breath } from "node:timers/promises";
import { MEASURES, type Quality } from "../quality";
import { stripOf, type ColourShare, type Rgb } from "../strip";

/** What is measured in every photo as it comes in, and kept beside it. */
export interface Measured { colours: ColourShare[]; quality: Quality }

/** Measures a picture of about 1024 pixels on its long side, letting others have their turn between the steps. */
export async function appraise(picture: Rgb): Promise<Measured> {
  const colours = stripOf(picture);
  const quality = {};
  for (const measure of MEASURES) {
    await breath();
    Object.assign(quality, measure(picture));
  }
  return { colours, quality: quality as Quality };
}
