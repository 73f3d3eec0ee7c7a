import "server-only";
import { compareSpots, type Comparison } from "../compare";
import { proposeSpots } from "../propose-spots";
import type { Spot } from "../spot";
import { pixelsOf } from "./sizes";
import { openPicture } from "./pictures";

/** Pixels of the long side on which spots are compared: the kept copy's own. */
const COMPARE_SIDE = 1600;
const PROPOSE_SIDE = 480;

/** Compares two spots of a kept picture; a string says in words why it cannot. */
export async function measureSpots(file: string, spots: { untouched: Spot; affected: Spot }): Promise<Comparison | string> {
  return compareSpots(await pixelsOf(openPicture(file), COMPARE_SIDE), spots);
}

/** Two spots worth comparing in a kept picture, for a person to move; null where none stand out. */
export async function proposeSpotsIn(file: string): Promise<{ untouched: Spot; affected: Spot } | null> {
  return proposeSpots(await pixelsOf(openPicture(file), PROPOSE_SIDE));
}
