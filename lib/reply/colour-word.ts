/**
 * One plain word for a colour, from its hue, saturation and lightness (HSL of sRGB). The words are basic colour terms;
 * the bounds between them are elicited by eye, hue in degrees, saturation and lightness from 0 to 1.
 */
const HUES = [
  [14, "red"], [40, "orange"], [65, "yellow"], [165, "green"], [200, "turquoise"], [255, "blue"], [312, "purple"], [335, "pink"], [360, "red"],
] as const;
/** Every word `colourWord` can give. */
export const COLOUR_WORDS = ["white", "cream", "beige", "black", "grey", "brown", "gold", ...new Set(HUES.map(([, word]) => word))] as const;
export type ColourWord = (typeof COLOUR_WORDS)[number];

interface Hsl { hue: number; saturation: number; lightness: number }

function hslOf(hex: string): Hsl {
  const [r, g, b] = [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16) / 255) as [number, number, number];
  const [max, min] = [Math.max(r, g, b), Math.min(r, g, b)];
  const [lightness, spread] = [(max + min) / 2, max - min];
  if (spread === 0) return { hue: 0, saturation: 0, lightness };
  const sector = max === r ? (g - b) / spread : max === g ? 2 + (b - r) / spread : 4 + (r - g) / spread;
  return { hue: (sector * 60 + 360) % 360, saturation: spread / (1 - Math.abs(2 * lightness - 1)), lightness };
}

/** Between red and yellow, people name dull and dark colours by words of their own. */
function earth({ saturation, lightness }: Hsl): ColourWord | null {
  if (lightness >= 0.85) return "cream";
  if (lightness >= 0.65 && saturation < 0.65) return "beige";
  return lightness < 0.42 || saturation < 0.4 ? "brown" : null;
}

/** The word for `#rrggbb`. @throws Error where it is not written so. */
export function colourWord(hex: string): ColourWord {
  if (!/^#[0-9a-f]{6}$/i.test(hex)) throw new Error(`Expected a colour such as "#8a8f98" but received ${JSON.stringify(hex)}`);
  const hsl = hslOf(hex);
  if (hsl.lightness <= 0.1) return "black";
  if (hsl.lightness >= 0.95) return "white";
  if (hsl.saturation < 0.12) return hsl.lightness > 0.9 ? "white" : hsl.lightness < 0.16 ? "black" : "grey";
  if (hsl.hue >= 14 && hsl.hue < 65) {
    const word = earth(hsl);
    if (word) return word;
    if (hsl.hue >= 40 && hsl.lightness < 0.55 && hsl.saturation < 0.9) return "gold";
  }
  const word = HUES.find(([upTo]) => hsl.hue < upTo)?.[1] ?? "red";
  return word === "red" && hsl.lightness >= 0.68 ? "pink" : word;
}
