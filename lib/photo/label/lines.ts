import { shrunk, type Grey } from "./grey";

/** How the lines of print lie in a picture of print (0 cloth, 1 print). Numbers elicited on drawn labels. */

/** Degrees each way that are looked for, first by the step, then around the best by the fine step. */
const MOST_DEGREES = 9, STEP = 1, FINE = 0.25;
/** Pixels of the long side at which the lie of lines is looked for: enough for letters some five pixels high. */
const LIE_SIDE = 420;
/** Print counts as such from here. */
const INK = 0.5;
/** Letters higher than this share of the picture are none; as pixels, lower is noise. */
const HIGHEST = 0.45, LOWEST = 5;

/** The angle by which lines of print lie turned clockwise, −9 to 9 degrees, and how clearly: lines apart give a high contrast of rows. */
export function lieOf(print: Grey): { degrees: number; clear: number } {
  const small = shrunk(print, Math.max(1, Math.round(Math.max(print.width, print.height) / LIE_SIDE)));
  const ink: [number, number, number][] = [];
  small.data.forEach((v, i) => { if (v > 0.25) ink.push([i % small.width, Math.floor(i / small.width), v]); });
  const tried = new Map<number, number>();
  const clearAt = (degrees: number) => {
    const known = tried.get(degrees) ?? rowContrast(ink, small, degrees);
    tried.set(degrees, known);
    return known;
  };
  const around = (middle: number, reach: number, step: number) => {
    let best = middle;
    for (let d = middle - reach; d <= middle + reach + 1e-9; d += step) if (clearAt(d) > clearAt(best)) best = d;
    return best;
  };
  const degrees = around(around(0, MOST_DEGREES, STEP), STEP, FINE);
  return { degrees, clear: clearAt(degrees) };
}

/** Sum of squared steps between neighbouring rows of print, by the print there is. */
function rowContrast(ink: readonly (readonly [number, number, number])[], { width, height }: Grey, degrees: number): number {
  const angle = (degrees * Math.PI) / 180, cos = Math.cos(angle), sin = Math.sin(angle);
  const rows = new Float32Array(height + 2 * width);
  let all = 0;
  for (const [x, y, v] of ink) {
    const at = y * cos - x * sin + width, row = Math.floor(at), rest = at - row;
    rows[row]! += v * (1 - rest);
    rows[row + 1]! += v * rest;
    all += v;
  }
  let steps = 0;
  for (let i = 1; i < rows.length; i++) steps += (rows[i]! - rows[i - 1]!) ** 2;
  return all === 0 ? 0 : steps / all ** 2 * rows.length;
}

/** The middle height of what hangs together in the print, in pixels: between that of small letters and of capitals. Null where nothing looks like letters. */
export function letterHeight(print: Grey): number | null {
  const { data, width, height } = print;
  const open = Uint8Array.from(data, (v) => (v > INK ? 1 : 0));
  const heights: number[] = [];
  for (let start = 0; start < open.length; start++) {
    if (!open[start]) continue;
    open[start] = 0;
    const blob = [start];
    let [left, right, top, bottom] = [width, 0, height, 0];
    for (const i of blob) {
      const x = i % width, y = (i - x) / width;
      [left, right, top, bottom] = [Math.min(left, x), Math.max(right, x), Math.min(top, y), Math.max(bottom, y)];
      for (let dy = -1; dy <= 1; dy++)
        for (let dx = -1; dx <= 1; dx++) {
          const j = i + dy * width + dx;
          if (x + dx < 0 || x + dx >= width || j < 0 || j >= open.length || !open[j]) continue;
          open[j] = 0;
          blob.push(j);
        }
    }
    const [w, h] = [right - left + 1, bottom - top + 1];
    if (h >= LOWEST && h <= HIGHEST * height && w <= 6 * h && w >= h / 12 && blob.length >= 0.12 * w * h) heights.push(h);
  }
  if (heights.length < 4) return null;
  heights.sort((a, b) => a - b);
  // The small ones are dots, accents and pieces of the weave.
  const high = heights.slice(Math.floor(heights.length * 0.3));
  return high[Math.floor(high.length / 2)] ?? null;
}
