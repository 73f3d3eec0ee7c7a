/** Of full light: what a sensor's noise and JPEG's rounding leave even in a blurred picture. *elicited* */
const NOISE = 2.5 / 255;
/** Of so many lines one is looked at: neighbours say the same. */
const EVERY = 3;

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
  for (let line = 0; line < lines; line += EVERY) {
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
