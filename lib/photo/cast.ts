import { labOf } from "./colour";
import type { Rgb } from "./strip";

/** How far a whole picture is shifted from grey, in units of Lab's a and b, and toward which light. 0 and null: not. */
export interface Cast { amount: number; toward: Light | null }
export type Light = "yellow" | "green" | "blue";

/** Hue angles in degrees of Lab between which a light that is not daylight tints: lamps, tubes, open shade. *elicited* */
const LIGHTS: readonly { toward: Light; from: number; to: number }[] = [
  { toward: "yellow", from: 50, to: 105 }, { toward: "green", from: 105, to: 200 }, { toward: "blue", from: 220, to: 310 },
];
/** Of every so many pixels one is looked at. */
const STEP = 61;
/** L between which a pixel's colour can be told. *elicited* */
const TELLING = { from: 15, to: 97 } as const;
/** Share of the pixels that counts as the lightest: gloss shows the light's own colour. *elicited* */
const LIGHTEST = 0.03;

/**
 * A tint that lies over everything. The colours of a tinted picture crowd round a place away from grey: the distance of
 * their mean from grey less their spread, after Gasparini & Schettini (2003), "Color correction for digital photographs"
 * (from memory); it counts no further than the lightest places are tinted too, because a white that is white excuses the
 * rest. A rug of one warm colour that fills the picture looks the same, so the words that go with it must leave that open.
 */
export function castOf({ data, width, height }: Rgb): Cast {
  const colours = [];
  for (let at = 0; at < width * height; at += STEP) {
    const lab = labOf(data[3 * at]!, data[3 * at + 1]!, data[3 * at + 2]!);
    if (lab.L >= TELLING.from && lab.L <= TELLING.to) colours.push(lab);
  }
  if (colours.length === 0) return { amount: 0, toward: null };
  const { a, b, spread } = crowd(colours);
  const lightest = crowd(colours.sort((p, q) => q.L - p.L).slice(0, Math.ceil(colours.length * LIGHTEST)));
  const along = Math.hypot(a, b) === 0 ? 0 : (lightest.a * a + lightest.b * b) / Math.hypot(a, b);
  const amount = Math.max(0, Math.min(Math.hypot(a, b) - spread, along));
  const hue = (Math.atan2(b, a) * 180 / Math.PI + 360) % 360;
  return { amount, toward: amount === 0 ? null : (LIGHTS.find((l) => hue >= l.from && hue < l.to)?.toward ?? null) };
}

function crowd(colours: readonly { a: number; b: number }[]): { a: number; b: number; spread: number } {
  const n = colours.length;
  const a = colours.reduce((sum, c) => sum + c.a, 0) / n, b = colours.reduce((sum, c) => sum + c.b, 0) / n;
  return { a, b, spread: Math.sqrt(colours.reduce((sum, c) => sum + (c.a - a) ** 2 + (c.b - b) ** 2, 0) / n) };
}
