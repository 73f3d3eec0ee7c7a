import { blurOf } from "./blur";
import { castOf, type Light } from "./cast";
import { isSame, likenessOf } from "./likeness";
import { REMARKS } from "./sentences";
import type { Rgb } from "./strip";
import { subjectShareOf } from "./subject";

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
  /** Share of pixels exactly like the one to the left and the one above, 0 to 1: a camera's noise leaves few. */
  flat: number;
  /** How far all colours are shifted from grey, in Lab units, and toward which light; null toward none that we know. */
  cast: number;
  castToward: Light | null;
  /** Share of the picture, 0 to 1, that is not what runs along its edges. */
  subject: number;
  /** What the picture looks like in 64 bits; null where it shows no form. */
  likeness: string | null;
  /** Pixels of its long side, of at most those it is measured at. */
  longSide: number;
}

/** All *elicited* on drawn and phone pictures brought to 1024 pixels. Less subject than `speck` is one thing that fills the picture. */
export const LIMITS = { sharpness: 0.35, tooDark: 0.22, tooLight: 0.86, whiteTooLight: 0.97, whiteClipped: 0.9, clippedDark: 0.3, clippedLight: 0.2, flat: 0.5, cast: 21, subject: 0.06, speck: 0.008, longSide: 640 } as const;

/** The measurements one by one, so that a server can do something else between them. Each takes a picture of about 1024 pixels on its long side. */
export const MEASURES = [lightOf, (p: Rgb) => ({ sharpness: sharpnessOf(p) }), tintOf, (p: Rgb) => ({ subject: subjectShareOf(p) }), (p: Rgb) => ({ likeness: likenessOf(p) })] as const;

/** Measures a picture of about 1024 pixels on its long side (the limits hold at that size). RGB, 8 bits each. */
export const qualityOf = (picture: Rgb): Quality => Object.assign({}, ...MEASURES.map((measure) => measure(picture))) as Quality;

function lightOf({ data, width, height }: Rgb): Pick<Quality, "mean" | "clippedDark" | "clippedLight" | "flat" | "longSide"> {
  const count = width * height;
  let sum = 0, dark = 0, light = 0, flat = 0;
  for (let i = 0; i < count; i++) {
    const at = 3 * i, r = data[at]!, g = data[at + 1]!, b = data[at + 2]!;
    sum += luma(r, g, b);
    if (r <= 8 && g <= 8 && b <= 8) dark++;
    if (r >= 250 && g >= 250 && b >= 250) light++;
    const left = at - 3, above = at - 3 * width;
    if (above >= 0 && r === data[left] && r === data[above] && g === data[left + 1] && g === data[above + 1] && b === data[left + 2] && b === data[above + 2]) flat++;
  }
  return { mean: sum / count, clippedDark: dark / count, clippedLight: light / count, flat: flat / count, longSide: Math.max(width, height) };
}

function sharpnessOf({ data, width, height }: Rgb): number {
  const grey = new Float32Array(width * height);
  for (let i = 0; i < grey.length; i++) grey[i] = luma(data[3 * i]!, data[3 * i + 1]!, data[3 * i + 2]!);
  return 1 - blurOf(grey, width, height);
}

function tintOf(picture: Rgb): Pick<Quality, "cast" | "castToward"> {
  const { amount, toward } = castOf(picture);
  return { cast: amount, castToward: toward };
}

/** Rec. ITU-R BT.601, of levels, 0 to 1. */
const luma = (r: number, g: number, b: number): number => (0.299 * r + 0.587 * g + 0.114 * b) / 255;

/** Of a photo that is held against others. `fills`: it should show the whole of something, as large as it will go. `others`: likenesses of those sent besides. */
export interface Asked { fills?: boolean; /** What it shows may be white by itself, as a label is. */ white?: boolean; others?: readonly (string | null)[] }

const SEEN: readonly { holds: (q: Quality, asked: Asked) => boolean; says: (q: Quality) => keyof typeof REMARKS }[] = [
  // A screen's black bars first: no daylight helps a picture of a screen. The words of a label are the same on a screen. In the dark without any form few levels are left, and so many are alike.
  { holds: (q, { white }) => white !== true && q.flat > LIMITS.flat && !(q.mean < LIMITS.tooDark && q.likeness === null) && (q.flat - q.clippedDark > LIMITS.flat || q.mean / (1 - q.clippedDark) > LIMITS.tooDark), says: () => "drawn" },
  // Then light: in the dark everything looks blurred as well, and light cures both.
  { holds: (q) => q.mean < LIMITS.tooDark || q.clippedDark > LIMITS.clippedDark, says: () => "dark" },
  { holds: (q, { white }) => q.mean > (white ? LIMITS.whiteTooLight : LIMITS.tooLight) || q.clippedLight > (white ? LIMITS.whiteClipped : LIMITS.clippedLight), says: () => "light" },
  { holds: (q, { white }) => white !== true && q.longSide < LIMITS.longSide, says: () => "coarse" },
  { holds: (q) => q.sharpness < LIMITS.sharpness, says: () => "blurred" },
  { holds: (q, { others = [] }) => q.likeness !== null && others.some((o) => o !== null && isSame(o, q.likeness as string)), says: () => "same" },
  { holds: (q) => q.cast > LIMITS.cast && q.castToward !== null, says: (q) => q.castToward as Light },
  { holds: (q, { fills }) => fills === true && q.subject < LIMITS.subject && q.subject > LIMITS.speck, says: () => "small" },
];

/** Too dark, too light or too blurred to judge a rug by: such a photo is asked for again. */
const SPOILT: readonly (keyof typeof REMARKS)[] = ["dark", "light", "blurred"];
export const isSpoilt = (quality: Quality, asked: Asked = {}): boolean => SEEN.some((r) => r.holds(quality, asked) && SPOILT.includes(r.says(quality)));

/** The one thing to do better, in a sentence: the first that holds. null when the photo will do. */
export function remarkOn(quality: Quality, asked: Asked = {}): string | null {
  const seen = SEEN.find((r) => r.holds(quality, asked));
  return seen ? REMARKS[seen.says(quality)] : null;
}
