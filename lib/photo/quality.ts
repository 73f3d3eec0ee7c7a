import type { Rgb } from "./strip";

/** What can be said of a photo before anybody judges a rug by it. */
export interface Quality {
  /** 0 blurred to 1 crisp: one minus the blur of Crete et al. (2007). */
  sharpness: number;
  /** Mean light, 0 black to 1 white, as levels of the picture (not linear). */
  mean: number;
  /** Share of pixels as good as black, 0 to 1. */
  clippedDark: number;
  /** Share of pixels as good as white, 0 to 1. */
  clippedLight: number;
  /** The one thing to do better, in a sentence; null when the photo will do. */
  remark: string | null;
}

/** All *elicited* on drawn and phone pictures brought to 1024 pixels; first that holds is said. */
export const LIMITS = { sharpness: 0.35, tooDark: 0.22, tooLight: 0.86, clippedDark: 0.3, clippedLight: 0.2 } as const;

/** Of full light: what a sensor's noise and JPEG's rounding leave even in a blurred picture. *elicited* */
const NOISE = 2.5 / 255;

/** Measures a picture of about 1024 pixels on its long side (the limits hold at that size). RGB, 8 bits each. */
export function qualityOf(picture: Rgb): Quality {
  const count = picture.width * picture.height;
  const grey = new Float32Array(count);
  let sum = 0, dark = 0, light = 0;
  for (let i = 0; i < count; i++) {
    const r = picture.data[3 * i]!, g = picture.data[3 * i + 1]!, b = picture.data[3 * i + 2]!;
    grey[i] = (0.299 * r + 0.587 * g + 0.114 * b) / 255; // Rec. ITU-R BT.601 luma
    sum += grey[i]!;
    if (Math.max(r, g, b) <= 8) dark++;
    if (Math.min(r, g, b) >= 250) light++;
  }
  const measured = { sharpness: 1 - blurOf(grey, picture.width, picture.height), mean: sum / count, clippedDark: dark / count, clippedLight: light / count };
  return { ...measured, remark: remarkOn(measured) };
}

/** Light first: in the dark everything looks blurred as well, and light cures both. */
export function remarkOn(q: Omit<Quality, "remark">): string | null {
  if (q.mean < LIMITS.tooDark || q.clippedDark > LIMITS.clippedDark) return "This photo is rather dark. Could you take it again in daylight, by a window, with the lamp off?";
  if (q.mean > LIMITS.tooLight || q.clippedLight > LIMITS.clippedLight) return "Part of this photo is washed out by light. Could you take it again without flash or direct sun on the rug?";
  if (q.sharpness < LIMITS.sharpness) return "This photo is blurred. Could you take it again with the phone held still, and tap on the rug first so that it focuses there?";
  return null;
}

/**
 * Blur from 0 to 1, whatever the contrast: how little a picture's neighbour differences fall when it is blurred once
 * more. The worse of both directions. Source: Crete, Dolmiere, Ladret & Nicolas (2007), "The blur effect", Proc. SPIE
 * 6492, filter of nine pixels (from memory); here the first NOISE of every difference is not counted. A picture without
 * any difference counts as wholly blurred.
 */
export function blurOf(grey: Float32Array, width: number, height: number): number {
  return Math.max(blurAlong(grey, { along: 1, across: width, length: width, lines: height }), blurAlong(grey, { along: width, across: 1, length: height, lines: width }));
}

function blurAlong(grey: Float32Array, { along, across, length, lines }: { along: number; across: number; length: number; lines: number }): number {
  let before = 0, lost = 0;
  for (let line = 0; line < lines; line++) {
    const start = line * across;
    for (let i = 5; i < length - 4; i++) {
      const entering = grey[start + (i + 4) * along]!, leaving = grey[start + (i - 5) * along]!;
      // Two neighbouring means of nine differ by what enters and what leaves.
      const blurred = Math.abs(entering - leaving) / 9;
      const sharp = Math.max(0, Math.abs(grey[start + i * along]! - grey[start + (i - 1) * along]!) - NOISE);
      before += sharp;
      lost += Math.max(0, sharp - blurred);
    }
  }
  return before === 0 ? 1 : (before - lost) / before;
}
