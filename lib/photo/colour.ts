/**
 * Colour arithmetic on sRGB pixels. Lab here is CIE 1976 L*a*b* relative to D65, the white of sRGB itself, so that no
 * chromatic adaptation stands between a pixel and its Lab value.
 * Sources: IEC 61966-2-1 (sRGB), CIE 15:2004 (L*a*b*), Sharma, Wu & Dalal (2005) Color Res. Appl. 30(1) 21-30 (ΔE00).
 */
export interface Lab { L: number; a: number; b: number }

/** XYZ of the white: the sum of each row of the matrix below, so that r = g = b gives a = b = 0. */
const TO_XYZ = [
  506752 / 1228815, 87881 / 245763, 12673 / 70218,
  87098 / 409605, 175762 / 245763, 12673 / 175545,
  7918 / 409605, 87881 / 737289, 1001167 / 1053270,
] as const;
/** XYZ under D65, the white at Y = 1, to the light of sRGB; row by row. */
export const FROM_XYZ = [
  12831 / 3959, -329 / 214, -1974 / 3959,
  -851781 / 878810, 1648619 / 878810, 36519 / 878810,
  705 / 12673, -2585 / 12673, 705 / 667,
] as const;
const WHITE_X = TO_XYZ[0] + TO_XYZ[1] + TO_XYZ[2];
const WHITE_Y = TO_XYZ[3] + TO_XYZ[4] + TO_XYZ[5];
const WHITE_Z = TO_XYZ[6] + TO_XYZ[7] + TO_XYZ[8];

const LINEAR = Float64Array.from({ length: 256 }, (_, level) => {
  const v = level / 255;
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
});

/** Light of an sRGB level (integer 0 to 255), 0 to 1. */
export const linearOf = (level: number): number => LINEAR[level] ?? NaN;

/** CIE 15:2004, with the exact fractions for the linear part near black. */
const lightness = (t: number): number => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
const unlightness = (f: number): number => (f ** 3 > 216 / 24389 ? f ** 3 : (116 * f - 16) / (24389 / 27));

/** sRGB levels (integers 0 to 255) to Lab: L 0 to 100. */
export function labOf(red: number, green: number, blue: number): Lab {
  const r = linearOf(red), g = linearOf(green), b = linearOf(blue);
  const fx = lightness((TO_XYZ[0] * r + TO_XYZ[1] * g + TO_XYZ[2] * b) / WHITE_X);
  const fy = lightness((TO_XYZ[3] * r + TO_XYZ[4] * g + TO_XYZ[5] * b) / WHITE_Y);
  const fz = lightness((TO_XYZ[6] * r + TO_XYZ[7] * g + TO_XYZ[8] * b) / WHITE_Z);
  return { L: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

/** Tristimulus values of a Lab colour under D65, the white at Y = 1. */
export function xyzOf({ L, a, b }: Lab): [x: number, y: number, z: number] {
  const fy = (L + 16) / 116;
  return [WHITE_X * unlightness(fy + a / 500), WHITE_Y * unlightness(fy), WHITE_Z * unlightness(fy - b / 200)];
}

/** sRGB level (0 to 255, not rounded) of light; what lies outside 0 to 1 is clipped. */
export function levelOf(light: number): number {
  const v = Math.min(1, Math.max(0, light));
  return 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055);
}

/** Lab to "#rrggbb"; what lies outside sRGB is clipped to its nearest level. */
export function hexOf(colour: Lab): string {
  const [x, y, z] = xyzOf(colour);
  const level = (row: 0 | 3 | 6) => Math.round(levelOf(FROM_XYZ[row] * x + FROM_XYZ[row + 1]! * y + FROM_XYZ[row + 2]! * z));
  return "#" + ([0, 3, 6] as const).map((row) => level(row).toString(16).padStart(2, "0")).join("");
}

const DEG = Math.PI / 180;
const POW25_7 = 25 ** 7;
/** Hue angle in degrees, 0 to 360; 0 for a grey. */
const hueOf = (a: number, b: number): number => (a === 0 && b === 0 ? 0 : (Math.atan2(b, a) / DEG + 360) % 360);

/** ΔE00 and what it is made of: signed, weighted parts of lightness, chroma and hue, from the first colour to the second. */
export interface Difference { deltaE: number; lightness: number; chroma: number; hue: number }

/** Colour difference ΔE00 with kL = kC = kH = 1: 0 for equal colours, about 1 where a trained eye begins to see it. Symmetric. */
export const deltaE00 = (one: Lab, two: Lab): number => differenceOf(one, two).deltaE;

/**
 * ΔE00 with its parts. Its square is the sum of the squares of the parts and a term that turns blue, so the parts alone
 * need not make it up. Numbers in the comments are the equations of Sharma, Wu & Dalal (2005).
 */
export function differenceOf(one: Lab, two: Lab): Difference {
  const chroma = (Math.hypot(one.a, one.b) + Math.hypot(two.a, two.b)) / 2;
  const stretch = 1.5 - 0.5 * Math.sqrt(chroma ** 7 / (chroma ** 7 + POW25_7)); // 1 + G (4)
  const a1 = one.a * stretch, a2 = two.a * stretch;
  const c1 = Math.hypot(a1, one.b), c2 = Math.hypot(a2, two.b);
  const h1 = hueOf(a1, one.b), h2 = hueOf(a2, two.b);
  const grey = c1 * c2 === 0;
  const turn = grey ? 0 : ((h2 - h1 + 540) % 360) - 180; // (10)
  const dH = 2 * Math.sqrt(c1 * c2) * Math.sin((turn / 2) * DEG); // (11)
  const meanL = (one.L + two.L) / 2, meanC = (c1 + c2) / 2;
  const meanH = meanHue(h1, h2, grey);
  const t = 1 - 0.17 * Math.cos((meanH - 30) * DEG) + 0.24 * Math.cos(2 * meanH * DEG) // (15)
    + 0.32 * Math.cos((3 * meanH + 6) * DEG) - 0.2 * Math.cos((4 * meanH - 63) * DEG);
  const fromMiddle = (meanL - 50) ** 2;
  const l = (two.L - one.L) / (1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle)); // (18)
  const c = (c2 - c1) / (1 + 0.045 * meanC); // (19)
  const h = dH / (1 + 0.015 * meanC * t); // (20)
  const rotation = -2 * Math.sqrt(meanC ** 7 / (meanC ** 7 + POW25_7)) // (17), (21)
    * Math.sin(60 * Math.exp(-(((meanH - 275) / 25) ** 2)) * DEG);
  return { deltaE: Math.sqrt(Math.max(0, l * l + c * c + h * h + rotation * c * h)), lightness: l, chroma: c, hue: h };
}

/** Equation (14). Exactly opposite hues have two middles; the paper takes half the sum. */
function meanHue(h1: number, h2: number, grey: boolean): number {
  const sum = h1 + h2;
  if (grey) return sum;
  if (Math.abs(h1 - h2) <= 180) return sum / 2;
  return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
}
