import type { Grey } from "./grey";
import { letterHeight, lieOf } from "./lines";
import { printOf } from "./print";
import { cutOut, onItsSide, turnedBack, type Turned } from "./turned";

/** One way to look at a label: its place with the lines of print level, and how far to enlarge it. */
export interface Look { readonly place: Turned; readonly scale: number }

/** Height of letters, in pixels, at which the reader reads best. Elicited on drawn labels. */
const LETTER = 27;
/** Pixels of the long side while the height of letters is not known, and at most. */
const FIRST_SIDE = 900, MOST_SIDE = 1800;
/** Enlarging further shows nothing that was not in the photo. */
const MOST_SCALE = 3;

/**
 * Of a label, at least this share is bare cloth, with less than FAINT of print's darkness; weave and pile are neither bare nor
 * dark. Elicited on drawn labels, of which all had more than .74 and rugs less than .68.
 */
const LEAST_BARE = 0.71, FAINT = 0.25;

/** The four ways up, the likeliest two first: lines of print lie along the label as it is held, or upside down. None where what is there is no print. */
export function* looksAt(grey: Grey, place: Turned): Generator<Look> {
  const long = Math.max(place.width, place.height), scale = Math.min(1, FIRST_SIDE / long);
  const print = printOf(cutOut(grey, place, scale));
  let bare = 0;
  for (const v of print.data) if (v < FAINT) bare++;
  if (bare < LEAST_BARE * print.data.length) return;
  const lies = [print, turnedBack(print)].map((seen, quarters) => ({ seen, side: onItsSide(place, quarters), ...lieOf(seen) })).sort((a, b) => b.clear - a.clear);
  for (const { seen, side, degrees } of lies) {
    const level = { ...side, degrees: side.degrees + degrees };
    const letters = letterHeight(seen);
    const fit = Math.min(letters === null ? 1 : (LETTER / letters) * scale, MOST_SIDE / long, MOST_SCALE);
    yield { place: level, scale: fit };
    yield { place: onItsSide(level, 2), scale: fit };
  }
}

/** The print at a look as the reader takes it: 0 ink to 255 paper. `size` 1 is what reads best. */
export function sheetOf(grey: Grey, { place, scale }: Look, size: number): { data: Uint8Array; width: number; height: number } {
  const { data, width, height } = printOf(cutOut(grey, place, scale * size));
  const sheet = new Uint8Array(data.length);
  for (let i = 0; i < data.length; i++) sheet[i] = 255 - Math.round(255 * data[i]!);
  return { data: sheet, width, height };
}
