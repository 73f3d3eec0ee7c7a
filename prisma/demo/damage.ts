import { clamp, cloud, grain, hash, linear, mix, smooth, type Rgb } from "./canvas";

export const DAMAGE_KINDS = ["brown", "pale", "bleed", "ring", "wine", "coffee", "urine", "wet", "moth", "flat", "mould", "faded"] as const;
export type DamageKind = (typeof DAMAGE_KINDS)[number];
/** Where, 0 to 1: on the whole rug `x` along its length, `y` across and `r` in widths; in a photo of the trouble all three in shares of the photo. */
export interface Damage { kind: DamageKind; x: number; y: number; r: number }

/** Changes the colour at (x, y), centimetres from the rug's corner. Answers how far the pile is gone, 0 to 1. */
export type Harm = (x: number, y: number, out: Float32Array) => number;

/** What a stain does: `through` is the light it lets pass, `cover` the colour it lays on top with its strength. */
interface Look { through?: Rgb; edge?: number; cover?: { hex: string; strength: number }; splashes?: number; soft: number; ragged: number }
const LOOKS: Record<Exclude<DamageKind, "moth" | "mould" | "faded">, Look> = {
  brown: { through: [0.66, 0.5, 0.3], edge: 0.55, soft: 0.5, ragged: 0.5 },
  pale: { cover: { hex: "#e6dcc2", strength: 0.5 }, soft: 0.45, ragged: 0.55 },
  bleed: { through: [0.82, 0.3, 0.32], soft: 0.9, ragged: 0.95 },
  ring: { through: [0.82, 0.7, 0.5], edge: 1, soft: 0.12, ragged: 0.4 },
  wine: { through: [0.5, 0.13, 0.2], edge: 0.35, splashes: 9, soft: 0.2, ragged: 0.55 },
  coffee: { through: [0.47, 0.28, 0.13], edge: 0.8, splashes: 7, soft: 0.16, ragged: 0.5 },
  urine: { through: [0.9, 0.74, 0.34], edge: 0.5, soft: 0.5, ragged: 0.4 },
  wet: { through: [0.56, 0.54, 0.52], soft: 0.16, ragged: 0.5 },
  flat: { cover: { hex: "#c9c2b6", strength: 0.26 }, soft: 0.8, ragged: 0.3 },
};

export function harmOf(damage: Damage, seed: number, length: number, width: number): Harm {
  const cx = damage.x * length, cy = damage.y * width, r = damage.r * width;
  const from = seed * 53 + Math.round(100 * damage.x);
  if (damage.kind === "moth") return moth(cx, cy, r, from);
  if (damage.kind === "mould") return mould(cx, cy, r, from);
  if (damage.kind === "faded") return faded(cx, length);
  return stain(LOOKS[damage.kind], { cx, cy, r, from });
}

/** 0 in the middle, 1 at the edge, of a shape no compass drew: lobes, bays, and the unevenness of threads that wick. */
function shape(dx: number, dy: number, r: number, from: number, ragged: number): number {
  const bend = 0.3 * cloud((dx / r) * 12 + from, (dy / r) * 12 - from);
  const d = Math.sqrt((dx * (1 + bend)) ** 2 + (dy * (1.15 - bend)) ** 2) / r;
  if (d > 2) return d;
  const lobes = 0.9 * cloud((dx / r) * 27 + from, (dy / r) * 27 + from) + 0.45 * cloud((dx / r) * 90, (dy / r) * 90 + from);
  return d + ragged * lobes + 0.1 * cloud(dx * 40, dy * 40) + 0.05 * grain(dx * 3, dy * 3);
}

function stain(look: Look, { cx, cy, r, from }: { cx: number; cy: number; r: number; from: number }): Harm {
  const [tr, tg, tb] = look.through ?? [1, 1, 1];
  const cover = look.cover && linear(look.cover.hex);
  const drops = Array.from({ length: look.splashes ?? 0 }, (_, i) => {
    const angle = hash(from, i) * 6.28, far = r * mix(1.15, 2.3, hash(from, i + 50));
    return { x: cx + Math.cos(angle) * far, y: cy + Math.sin(angle) * far, r: r * mix(0.04, 0.17, hash(from, i + 90) ** 2), squeeze: mix(0.7, 1.5, hash(from, i + 130)) };
  });
  return (x, y, out) => {
    if (Math.abs(x - cx) > 2.6 * r || Math.abs(y - cy) > 2.6 * r) return 0;
    const d = shape(x - cx, y - cy, r, from, look.ragged);
    let mask = smooth(1 + look.soft * 0.4, 1 - look.soft, d);
    const rim = (look.edge ?? 0) * smooth(0.72 - look.soft * 0.2, 0.95, d) * smooth(1.12, 0.98, d);
    for (const drop of drops) {
      const nx = x - drop.x, ny = (y - drop.y) * drop.squeeze, near = Math.sqrt(nx * nx + ny * ny) / drop.r;
      if (near < 1.8) mask = Math.max(mask, smooth(1.3, 0.6, near + 0.5 * cloud(x * 26, y * 26) + 0.12 * grain(x * 3, y * 3)) * 0.85);
    }
    if (mask + rim <= 0) return 0;
    const uneven = mask * (look.edge === 1 ? 0.55 : 1) * (0.86 + 0.3 * cloud(x * 5 + from, y * 5)) + rim * 0.55;
    const t = clamp(uneven, 0, 1.25);
    out[0]! *= Math.max(0.03, 1 - (1 - tr) * t);
    out[1]! *= Math.max(0.03, 1 - (1 - tg) * t);
    out[2]! *= Math.max(0.03, 1 - (1 - tb) * t);
    if (cover) for (let c = 0; c < 3; c++) out[c] = mix(out[c]!, cover[c]!, mask * look.cover!.strength);
    return 0;
  };
}

/** Grazed to the ground in small bays that run together. */
function moth(cx: number, cy: number, r: number, from: number): Harm {
  return (x, y) => {
    const d = Math.hypot(x - cx, y - cy) / r;
    if (d > 1.4) return 0;
    const bays = cloud(x * 21 + from, y * 21) + 0.4 * cloud(x * 60, y * 60 + from) + 0.12 * grain(x * 5, y * 5);
    return smooth(-0.05, 0.3, bays - 0.6 * d * d + 0.06);
  };
}

function mould(cx: number, cy: number, r: number, from: number): Harm {
  return (x, y, out) => {
    const d = Math.hypot(x - cx, y - cy) / r;
    if (d > 1.5) return 0;
    const spots = smooth(0.16, 0.5, cloud(x * 38 + from, y * 38) + 0.35 * cloud(x * 9, y * 9 + from) - 0.45 * d * d);
    const veil = 0.22 * smooth(1.3, 0.2, d + 0.4 * cloud(x * 12, y * 12));
    const t = clamp(spots * 0.85 + veil);
    out[0] = mix(out[0]!, 0.045, t); out[1] = mix(out[1]!, 0.052, t); out[2] = mix(out[2]!, 0.045, t);
    return 0;
  };
}

/** Bleached by daylight from one end; the line is where furniture stood. */
function faded(cx: number, length: number): Harm {
  return (x, y, out) => {
    const t = 0.55 * smooth(cx + length * 0.05, cx - length * 0.02, x + 2 * cloud(7, y * 2));
    const grey = 0.3 * out[0]! + 0.6 * out[1]! + 0.1 * out[2]!;
    out[0] = mix(out[0]!, 0.45 * out[0]! + 0.7 * grey + 0.17, t); out[1] = mix(out[1]!, 0.45 * out[1]! + 0.7 * grey + 0.16, t); out[2] = mix(out[2]!, 0.45 * out[2]! + 0.65 * grey + 0.13, t);
    return 0;
  };
}
