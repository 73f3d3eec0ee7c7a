import { differenceOf, type Difference, type Lab } from "./colour";
import { greyScaleGrade } from "./grey-scale";
import { NOT_COMPARED } from "./sentences";
import { spotColour, type Spot, type SpotColour } from "./spot";
import type { Rgb } from "./strip";
import { yellownessOf } from "./yellowness";

/**
 * Which way a colour changed, from the untouched spot to the affected one:
 * `none` nothing that this photo can show · `yellower-darker` browned · `yellower` yellowed · `lighter-paler` bleached or faded ·
 * `darker` deeper in the same hue, as wet pile is · `greyer` darker and duller, as soil makes it · `lightness-only` lighter or
 * darker and nothing else, as pile that lies the other way looks · `another-hue` a colour came in.
 */
export const DIRECTIONS = ["none", "yellower-darker", "yellower", "lighter-paler", "darker", "greyer", "lightness-only", "another-hue"] as const;
export type Direction = (typeof DIRECTIONS)[number];

/** Two spots of one photo, compared. Never across photos: each has a light and a white balance of its own. */
export interface Comparison extends Difference {
  /** Standard deviation of ΔE00, from the pixels and from light that falls unevenly over the photo. */
  readonly uncertainty: number;
  /** Change of the yellowness index of ASTM E313 (D65, 2°). */
  readonly yellowness: number;
  /** Grade by the formula of ISO 105-A05, 5 to 1; indicative, from a photo. */
  readonly grade: number;
  readonly direction: Direction;
  /** Share of the draws within the uncertainty that have this direction, 0 to 1. */
  readonly sureness: number;
  readonly untouched: SpotColour;
  readonly affected: SpotColour;
  /** In one sentence. */
  readonly says: string;
}

/** Light falls off over a room: standard deviation of L* between two spots a whole diagonal apart. *elicited* */
const LIGHT_SD_ACROSS = 5;
/** What a phone's own processing leaves between two places of one colour, in L*, a* and b*. *elicited* */
const PHONE_SD = 0.5;
const DRAWS = 400;

/** Compares two spots of one picture. A string, in words, where one of them is too small or lost in black or white. */
export function compareSpots(picture: Rgb, spots: { untouched: Spot; affected: Spot }): Comparison | string {
  const [untouched, affected] = [spotColour(picture, spots.untouched), spotColour(picture, spots.affected)];
  if (!untouched || !affected) return NOT_COMPARED.small;
  if (Math.max(untouched.clipped, affected.clipped) > MOST_CLIPPED) return NOT_COMPARED.lost;
  const difference = differenceOf(untouched.mean, affected.mean);
  const sd = errorOf(untouched, affected, distance(picture, spots));
  const drawn = draws(untouched.mean, affected.mean, sd);
  const direction = commonest(drawn.map((d) => d.direction));
  const measured = {
    ...difference, untouched, affected, direction,
    uncertainty: Math.sqrt(drawn.reduce((sum, d) => sum + (d.deltaE - difference.deltaE) ** 2, 0) / drawn.length),
    yellowness: yellownessOf(affected.mean) - yellownessOf(untouched.mean),
    grade: greyScaleGrade(untouched.mean, affected.mean),
    sureness: drawn.filter((d) => d.direction === direction).length / drawn.length,
  };
  return { ...measured, says: sayComparison(measured) };
}

/** More lost pixels than this and a mean colour is none. *elicited* */
const MOST_CLIPPED = 0.3;

const centreOf = (s: Spot) => (s.shape === "circle" ? s : { x: s.x + s.width / 2, y: s.y + s.height / 2 });
/** Between two spots, in shares of the picture's diagonal. */
function distance({ width, height }: Rgb, spots: { untouched: Spot; affected: Spot }): number {
  const [p, q] = [centreOf(spots.untouched), centreOf(spots.affected)];
  return Math.hypot((p.x - q.x) * width, (p.y - q.y) * height) / Math.hypot(width, height);
}

function errorOf(p: SpotColour, q: SpotColour, apart: number): Lab {
  return {
    L: Math.hypot(p.error.L, q.error.L, PHONE_SD, LIGHT_SD_ACROSS * apart),
    a: Math.hypot(p.error.a, q.error.a, PHONE_SD),
    b: Math.hypot(p.error.b, q.error.b, PHONE_SD),
  };
}

/** The change drawn anew within its error, the same draws every time: points of the Halton sequence through the normal. */
function draws(untouched: Lab, affected: Lab, sd: Lab): { deltaE: number; direction: Direction }[] {
  return Array.from({ length: DRAWS }, (_, i) => {
    const seen: Lab = { L: affected.L + sd.L * normal(i, 2, 3), a: affected.a + sd.a * normal(i, 5, 7), b: affected.b + sd.b * normal(i, 11, 13) };
    return { deltaE: differenceOf(untouched, seen).deltaE, direction: directionOf(untouched, seen) };
  });
}

/** Radical inverse of i in a base (Halton 1960). */
function halton(i: number, base: number): number {
  let [share, value] = [1 / base, 0];
  for (let rest = i + 1; rest > 0; rest = Math.floor(rest / base), share /= base) value += share * (rest % base);
  return value;
}
/** A standard normal number from two Halton points (Box and Muller 1958). */
const normal = (i: number, p: number, q: number): number => Math.sqrt(-2 * Math.log(halton(i, p))) * Math.cos(2 * Math.PI * halton(i, q));

/** Below this ΔE00 nobody sees a change without looking for it. *elicited*, near the limit of a trained eye. */
const SEEN_FROM = 1.5;
/** In L*, chroma and b*: how far each must move to count. *elicited* */
const MOVES_FROM = 1.2;
/** Degrees of hue beyond which another colour came in, where there is chroma enough to speak of a hue. *elicited* */
const ANOTHER_HUE_DEG = 40;
const HUE_FROM_CHROMA = 8;
/** In L*: what has grown so much lighter was bleached, whatever tint it was left with; yellowing darkens. *elicited* */
const LIGHTER_FROM = 5;
/** Degrees within which a hue is still the same. *elicited* */
const SAME_HUE_DEG = 15;

/** The direction of one change, from colour alone. */
export function directionOf(untouched: Lab, affected: Lab): Direction {
  if (differenceOf(untouched, affected).deltaE < SEEN_FROM) return "none";
  const dL = affected.L - untouched.L;
  const [c0, c1] = [Math.hypot(untouched.a, untouched.b), Math.hypot(affected.a, affected.b)];
  const dC = c1 - c0, dB = affected.b - untouched.b;
  const moved = Math.hypot(affected.a - untouched.a, dB);
  if (moved < MOVES_FROM) return "lightness-only";
  if (c1 > HUE_FROM_CHROMA && !isYellowish(affected) && (c0 <= HUE_FROM_CHROMA ? moved > HUE_FROM_CHROMA : turned(untouched, affected) > ANOTHER_HUE_DEG)) return "another-hue";
  // A blue that fades or soils moves towards yellow too, along its own hue.
  const duller = dC < -MOVES_FROM && c0 > HUE_FROM_CHROMA && turned(untouched, affected) < SAME_HUE_DEG;
  if (duller && Math.abs(dL) > MOVES_FROM) return dL > 0 ? "lighter-paler" : "greyer";
  if (dL > LIGHTER_FROM && dC < dL) return "lighter-paler";
  if (dB > MOVES_FROM && towardsYellow(untouched, affected)) return dL < -MOVES_FROM ? "yellower-darker" : "yellower";
  if (dL > MOVES_FROM && dC < 0) return "lighter-paler";
  // Wine on blue darkens it and turns it: neither soil nor water does that.
  if (dL < -MOVES_FROM && Math.min(c0, c1) > HUE_FROM_CHROMA && turned(untouched, affected) > SAME_HUE_DEG && isMoreHueThanChroma(untouched, affected)) return "another-hue";
  if (dL < -MOVES_FROM) return dC < -MOVES_FROM ? "greyer" : "darker";
  return turned(untouched, affected) > ANOTHER_HUE_DEG ? "another-hue" : dC < 0 ? "lighter-paler" : "another-hue";
}

/** In their parts of ΔE00. */
function isMoreHueThanChroma(p: Lab, q: Lab): boolean {
  const { hue, chroma } = differenceOf(p, q);
  return Math.abs(hue) > Math.abs(chroma);
}

const DEGREES = 180 / Math.PI;
const hue = ({ a, b }: Lab) => Math.atan2(b, a) * DEGREES;
const turned = (p: Lab, q: Lab) => Math.abs(((hue(q) - hue(p) + 540) % 360) - 180);
/** Hues of browned cellulose: from orange to yellow, 40 to 110 degrees. *elicited* */
const isYellowish = (c: Lab) => hue(c) >= 40 && hue(c) <= 110;
/** What was added is itself yellow or brown. */
const towardsYellow = (p: Lab, q: Lab) => isYellowish({ L: 0, a: q.a - p.a, b: q.b - p.b });

function commonest(values: readonly Direction[]): Direction {
  const count = (d: Direction) => values.filter((v) => v === d).length;
  return DIRECTIONS.reduce((best, d) => (count(d) > count(best) ? d : best));
}

const IN_WORDS: Readonly<Record<Direction, string>> = {
  none: "no change that this photo can show",
  "yellower-darker": "browner: yellower and darker",
  yellower: "yellower",
  "lighter-paler": "lighter, as bleached or faded pile is",
  darker: "darker in the same hue, as wet pile is",
  greyer: "darker and duller, as soil makes it",
  "lightness-only": "lighter or darker and nothing else, as pile that lies the other way looks",
  "another-hue": "another hue: a colour has come in",
};

/** The measurement in one sentence, with its range and what it is not. */
export function sayComparison(c: Pick<Comparison, "deltaE" | "uncertainty" | "direction" | "sureness" | "grade">): string {
  const low = Math.max(0, c.deltaE - 1.28 * c.uncertainty), high = c.deltaE + 1.28 * c.uncertainty;
  const words = c.direction === "none" ? `The affected spot shows ${IN_WORDS.none}` : `The affected spot is ${IN_WORDS[c.direction]}${c.sureness < SURE_FROM ? ", though that is not sure" : ""}`;
  return `${words} (ΔE00 ${low.toFixed(1)} to ${high.toFixed(1)}; grey-scale grade about ${c.grade.toFixed(1)}, indicative, from a photo, not an ISO 105 measurement).`;
}
/** A direction with less of the draws is said as unsure. *elicited* */
const SURE_FROM = 0.75;
