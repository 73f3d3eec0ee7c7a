import type { ColourShare } from "../enquiry/views";

/** One colour of yarn in a woven strip: its colour, and the SVG path of all its short stitches. */
export interface Yarn {
  colour: string;
  d: string;
}

export interface WeaveOptions {
  /** Colours in the order they lie; shares need not sum to 1. */
  colours: readonly ColourShare[];
  /** Stitches along the strip. */
  cells: number;
  /** Runs down instead of across. */
  upright?: boolean;
}

/** Length of one stitch and height of one row, in the units of the viewBox. */
export const STITCH = { long: 9, high: 7, gap: 1, rows: 2 } as const;

/** A repeatable number in [0, 1) for a whole number: the irregularity of hand-spun yarn. */
export const irregular = (n: number): number => {
  let h = Math.imul(n + 1, 0x9e3779b1);
  h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
  return ((h ^ (h >>> 13)) >>> 0) / 2 ** 32;
};

/** The colour that lies at `place` (0 at the beginning, 1 at the end) when shares are laid end to end. */
export function colourAt(colours: readonly ColourShare[], place: number): string | null {
  const total = colours.reduce((sum, c) => sum + c.share, 0);
  let reached = 0;
  for (const c of colours) {
    reached += c.share / total;
    if (place < reached) return c.hex;
  }
  return colours.at(-1)?.hex ?? null;
}

/** `#rrggbb` with each channel multiplied by `factor` and kept within 0–255. */
export function shade(hex: string, factor: number): string {
  const channel = (from: number) =>
    Math.max(0, Math.min(255, Math.round(Number.parseInt(hex.slice(from, from + 2), 16) * factor))).toString(16).padStart(2, "0");
  return `#${channel(1)}${channel(3)}${channel(5)}`;
}

/** Three strengths of every yarn, so that a plain rug still looks woven. */
const SHADES = [0.92, 1, 1.08] as const;
/** How far a stitch may stray from its place, as a share of the strip: edges between colours interlock. */
const STRAY = 0.05;

/**
 * The stitches of a woven strip, two rows of weft, the second half a stitch behind. The same colours always give
 * the same strip. No colours give no yarns.
 */
export function weave({ colours, cells, upright = false }: WeaveOptions): Yarn[] {
  const paths = new Map<string, string>();
  for (let row = 0; row < STITCH.rows; row++) {
    for (let k = 0; k < cells + row; k++) {
      const n = k * STITCH.rows + row;
      const place = (k - row / 2 + 0.5) / cells + (irregular(n) - 0.5) * STRAY;
      const hex = colourAt(colours, Math.min(1, Math.max(0, place)));
      if (hex === null) continue;
      const colour = shade(hex, SHADES[Math.floor(irregular(n + 7919) * SHADES.length)] ?? 1);
      const radius = (STITCH.high - STITCH.gap) / 2;
      const from = (k - row / 2) * STITCH.long + radius + STITCH.gap / 2;
      const across = row * STITCH.high + STITCH.high / 2;
      const run = STITCH.long - STITCH.gap - 2 * radius;
      paths.set(colour, `${paths.get(colour) ?? ""}M${upright ? `${across} ${from}v${run}` : `${from} ${across}h${run}`}`);
    }
  }
  return [...paths].map(([colour, d]) => ({ colour, d }));
}
