import type { Lab } from "./colour";

/**
 * Grey-scale grade for a change in colour, 5 (none) to 1, by the formula of ISO 105-A05. From a photo it is indicative
 * only: the standard asks for a spectrophotometer and the 10° observer.
 * Source of the last step and of the hue term: EN ISO 105-A05:1997, clauses 7.2 and 8, as implemented in a laboratory's
 * code (read there); of the rest of clause 7: from memory.
 */
export const greyScaleGrade = (untouched: Lab, affected: Lab): number => gradeOfDifference(assessedDifference(untouched, affected));

/** The grade of an assessed difference ΔEF, 0 or more, to one decimal: half a grade is a step of the scale (clause 8). */
export function gradeOfDifference(deltaEF: number): number {
  const grade = deltaEF <= 3.4 ? 5 - deltaEF / 1.7 : 5 - Math.log2(deltaEF / 0.85);
  return Math.round(Math.max(1, grade) * 10) / 10;
}

const DEGREES = 180 / Math.PI;
const hueOf = ({ a, b }: Lab): number => (a === 0 && b === 0 ? 0 : (Math.atan2(b, a) * DEGREES + 360) % 360);

/** ΔEF, the difference as an assessor of the grey scale weighs it (clause 7). */
export function assessedDifference(untouched: Lab, affected: Lab): number {
  const [c0, c1] = [Math.hypot(untouched.a, untouched.b), Math.hypot(affected.a, affected.b)];
  const [h0, h1] = [hueOf(untouched), hueOf(affected)];
  const deltaL = affected.L - untouched.L;
  const deltaC = c1 - c0;
  const apart = Math.hypot(affected.a - untouched.a, affected.b - untouched.b);
  const deltaH = Math.sqrt(Math.max(0, apart ** 2 - deltaC ** 2)) * Math.sign(turn(h0, h1));
  const meanC = (c0 + c1) / 2;
  const d = (deltaC * meanC * Math.exp(-hueTerm(middle(h0, h1)))) / 100;
  const chroma = (deltaC - d) / (1 + ((20 * meanC) / 1000) ** 2);
  const hue = (deltaH - d) / (1 + ((10 * meanC) / 1000) ** 2);
  return Math.hypot(deltaL, chroma, hue);
}

/** From one hue to the other the short way, −180 to 180 degrees. */
const turn = (from: number, to: number): number => ((to - from + 540) % 360) - 180;
const middle = (h0: number, h1: number): number => (h0 + turn(h0, h1) / 2 + 360) % 360;
/** x of clause 7.2: how far the mean hue lies from 280 degrees. */
function hueTerm(meanHue: number): number {
  const from = Math.abs(meanHue - 280);
  return ((from <= 180 ? from : 360 - from) / 30) ** 2;
}
