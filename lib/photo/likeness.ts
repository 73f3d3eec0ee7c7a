import type { Rgb } from "./strip";

/** Side of the small grey picture, and of the square of slow waves that is kept of it. */
const SIDE = 32;
const WAVES = 8;
/** Pixels from one that is looked at to the next: a cell of a picture of 1024 pixels still holds hundreds. */
const STEP = 2;
/** Levels (0–255) by which the slow waves must differ on average for a picture to have a likeness at all. *elicited* */
const DETAIL = 0.6;
/** Bits of 64 by which one picture may differ after another size, another JPEG or a hair of cropping. *elicited* on drawn rugs */
export const SAME_BITS = 4;

/**
 * A picture's likeness in 64 bits, as 16 hexadecimal digits: which of the slowest waves of its lightness are stronger than
 * their median (the "perceptual hash" by cosine transform; Zauner 2010, from memory). The same picture in another size or
 * file gives nearly the same bits. null for a picture without any form, whose bits would be noise.
 */
export function likenessOf(picture: Rgb): string | null {
  const waves = slowWaves(small(picture));
  const moving = waves.slice(1); // the first is the mean light
  if (moving.reduce((sum, w) => sum + Math.abs(w), 0) / moving.length < DETAIL) return null;
  const median = [...moving].sort((p, q) => p - q)[Math.floor(moving.length / 2)]!;
  const bits = waves.map((w, i) => (i > 0 && w > median ? "1" : "0")).join("");
  return (bits.match(/.{4}/g) ?? []).map((nibble) => parseInt(nibble, 2).toString(16)).join("");
}

/** Are these the same picture, as far as their likenesses tell? */
export function isSame(one: string, other: string): boolean {
  let different = 0;
  for (let i = 0; i < 16; i++) for (let bits = parseInt(one[i]!, 16) ^ parseInt(other[i]!, 16); bits; bits &= bits - 1) different++;
  return different <= SAME_BITS;
}

/** SIDE × SIDE means of lightness (Rec. ITU-R BT.601 luma), whatever the picture's proportions. */
function small({ data, width, height }: Rgb): Float64Array {
  const sums = new Float64Array(SIDE * SIDE), counts = new Float64Array(SIDE * SIDE);
  for (let y = 0; y < height; y += STEP) {
    for (let x = 0; x < width; x += STEP) {
      const at = 3 * (y * width + x), cell = Math.floor((y * SIDE) / height) * SIDE + Math.floor((x * SIDE) / width);
      sums[cell]! += 0.299 * data[at]! + 0.587 * data[at + 1]! + 0.114 * data[at + 2]!;
      counts[cell]!++;
    }
  }
  return sums.map((sum, i) => (counts[i] ? sum / counts[i]! : 0));
}

const COSINES = Array.from({ length: WAVES }, (_, k) => Float64Array.from({ length: SIDE }, (_, n) => Math.cos((Math.PI / SIDE) * (n + 0.5) * k)));

/** The WAVES × WAVES slowest coefficients of the two-dimensional cosine transform (DCT-II), as levels, row by row. */
function slowWaves(grey: Float64Array): number[] {
  const rows = Array.from({ length: SIDE }, (_, y) => COSINES.map((wave) => wave.reduce((sum, c, x) => sum + c * grey[y * SIDE + x]!, 0) * (2 / SIDE)));
  return COSINES.flatMap((wave) => COSINES.map((_, k) => wave.reduce((sum, c, y) => sum + c * rows[y]![k]!, 0) * (2 / SIDE)));
}
