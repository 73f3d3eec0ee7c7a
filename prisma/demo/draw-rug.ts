import sharp from "sharp";
import { cloud, hash, level, smooth, speck, type Rgb } from "./canvas";
import { harmOf, type Damage } from "./damage";
import { drawDesign, type Weave } from "./design";
import { foldedCorner, label, ontoRug, partedPile, trouble, wholeRug, type Scene } from "./scenes";
import type { Front } from "./surfaces";

export type { Damage, DamageKind } from "./damage";
export type { Weave } from "./design";

export interface DrawOptions {
  seed: number;
  /** `bad`: the whole rug as nobody should photograph it. */
  kind: "whole" | "label" | "back" | "pile" | "trouble" | "bad";
  weave: Weave;
  /** "#rrggbb": field, border, then accents. */
  colours: readonly string[];
  damage?: Damage | readonly Damage[];
  /** Lines parted by "\n". */
  labelText?: string;
  quality?: "good" | "dark" | "blurred";
  /** Centimetres, the longer side first. */
  lengthCm?: number;
  widthCm?: number;
}

/**
 * Draws an invented photograph of an invented rug and answers it as JPEG. The same request gives the same picture;
 * one seed, weave, size and set of colours is one rug, so that its whole, its back and its trouble belong together.
 */
export async function drawRug(picture: DrawOptions, width = 1600, height = 1200): Promise<Buffer> {
  const scene = sceneOf(picture);
  const quality = picture.quality ?? (picture.kind === "bad" ? "blurred" : "good");
  const pixels = expose(scene, { width, height, seed: picture.seed, kind: picture.kind, dark: quality === "dark" });
  const photo = sharp(pixels, { raw: { width, height, channels: 3 } });
  if (quality === "blurred") photo.blur(width / 190);
  return photo.jpeg({ quality: 86 }).toBuffer();
}

/** Where a place of the rug, in centimetres from its corner along its length and across, lies in a photo of this width and height: in shares of them. */
export function placeInPhoto(picture: DrawOptions, { x, y }: { x: number; y: number }, width = 1600, height = 1200): { x: number; y: number } {
  const { centre, turn, span, tilt } = sceneOf(picture);
  const [dx, dy, cos, sin] = [x - centre[0], y - centre[1], Math.cos(turn), Math.sin(turn)];
  // The way back from `expose`: it divides by 1 + tilt · v.
  const across = dx * cos + dy * sin, down = dy * cos - dx * sin;
  const v = down / (span - tilt * down), u = (across * (1 + tilt * v)) / span;
  return { x: 0.5 + u, y: 0.5 + (v * width) / height };
}

function sceneOf(picture: DrawOptions): Scene {
  const { seed, weave, colours } = picture;
  const size = { length: picture.lengthCm ?? 240, width: picture.widthCm ?? 170 };
  const asked = [picture.damage ?? []].flat();
  const damages = picture.kind === "trouble" ? asked.map((damage) => ontoRug(damage, size, seed)) : asked;
  const front: Front = {
    design: drawDesign({ seed, weave, colours, ...size }),
    weave,
    harms: damages.map((damage) => harmOf(damage, seed, size.length, size.width)),
  };
  switch (picture.kind) {
    case "whole":
    case "bad":
      return wholeRug(front, size, seed);
    case "trouble":
      return trouble(front, size, seed);
    case "back":
      return foldedCorner(front, seed);
    case "pile":
      return partedPile(front, size, seed);
    case "label":
      return label(front, picture.labelText ?? "", seed);
  }
}

/** Looks at the scene through a phone: perspective, light from a window, the colour of that light, noise. */
function expose(scene: Scene, { width, height, seed, kind, dark }: { width: number; height: number; seed: number; kind: string; dark: boolean }): Uint8Array {
  const pixels = new Uint8Array(width * height * 3);
  const out = new Float32Array(3);
  const tint: Rgb = dark ? [1.12, 0.96, 0.72] : [1.02 + 0.03 * hash(seed, 12), 1, 0.95 + 0.05 * hash(seed, 13)];
  const gain = (dark ? 0.1 : 0.9) * (kind === "label" ? 0.95 : 1);
  const noise = dark ? 0.012 : 0.006;
  const [cos, sin] = [Math.cos(scene.turn), Math.sin(scene.turn)];
  const sun = sunlight(seed, kind);
  for (let row = 0; row < height; row++) {
    const v = (row - height / 2) / width, near = 1 + scene.tilt * v;
    let window = 1;
    for (let column = 0; column < width; column++) {
      const u = (column - width / 2) / width;
      const gx = (u * scene.span) / near, gy = (v * scene.span) / near;
      scene.surface(scene.centre[0] + gx * cos - gy * sin, scene.centre[1] + gx * sin + gy * cos, out);
      // Daylight changes slowly: four pixels share it.
      if ((column & 3) === 0) window = 1.1 + sun(u, v) - 0.42 * u - 0.3 * v + 0.1 * cloud(u * 60 + seed * 7, v * 60) - 0.5 * (u * u + v * v);
      const light = gain * window, grit = noise * (speck(column, row) + speck(column * 1.7 + 31, row));
      const at = 3 * (row * width + column);
      pixels[at] = level(out[0]! * light * tint[0] + grit * 0.9);
      pixels[at + 1] = level(out[1]! * light * tint[1] + grit * 0.8);
      pixels[at + 2] = level(out[2]! * light * tint[2] + grit);
    }
  }
  return pixels;
}

/** Panes of sun that fall through a window onto some of the floors, soft at their edges. */
function sunlight(seed: number, kind: string): (u: number, v: number) => number {
  if (kind !== "whole" || hash(seed, 21) < 0.45) return () => 0;
  const left = -0.42 + 0.5 * hash(seed, 22), slope = 0.35 + 0.3 * hash(seed, 23), wide = 0.13;
  return (u, v) => {
    const s = u - left - slope * (v + 0.4), pane = s / wide - Math.floor(s / wide);
    if (s < -0.02 || s > 2 * wide + 0.02) return 0;
    const bar = smooth(0.02, 0.1, pane) * smooth(0.98, 0.9, pane), sill = smooth(-0.36, -0.3, v) * smooth(0.3, 0.2, v - 0.1 * s);
    return 0.34 * bar * sill * (0.9 + 0.2 * cloud(u * 40, v * 40));
  };
}
