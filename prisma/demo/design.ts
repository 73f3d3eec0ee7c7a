import { clamp, cloud, hash, linear, mix, seeded, type Rgb } from "./canvas";

/** How a rug is made, which decides both its drawing and its surface. */
export type Weave = "knotted" | "flatweave" | "tufted" | "loomed" | "machine";

/** A drawing, knot by knot: linear light, row after row; columns run along the rug's length. */
export interface Design { data: Float32Array; columns: number; rows: number; pitch: number }

/** Centimetres of one cell of the drawing. */
const PITCH = 0.45;

/** x along the length and y across, both in cells from the middle; answers which yarn lies there (0 is the field). */
type Draughtsman = (x: number, y: number) => number;

/** Draws a rug of `length` by `width` centimetres in the given yarns: field, border, then accents. */
export function drawDesign({ seed, weave, colours, length, width }: { seed: number; weave: Weave; colours: readonly string[]; length: number; width: number }): Design {
  const columns = Math.round(length / PITCH), rows = Math.round(width / PITCH);
  const yarns = yarnsOf(colours);
  const half: [number, number] = [columns / 2, rows / 2];
  const draw = DRAUGHTSMEN[weave](seed, half);
  const data = new Float32Array(columns * rows * 3);
  const offset = seed * 37;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const yarn = yarns[draw(column - half[0] + 0.5, row - half[1] + 0.5) % yarns.length]!;
      const tone = toneOf(weave, column, row, offset);
      const grey = 0.07 * (yarn[0] + yarn[1] + yarn[2]) / 3;
      for (let c = 0; c < 3; c++) data[3 * (row * columns + column) + c] = (0.93 * yarn[c]! + grey) * tone * (1 + 0.035 * (hash(column + c * 999, row) - 0.5));
    }
  }
  return { data, columns, rows, pitch: PITCH };
}

/** Always at least five yarns, so that every drawing has its outlines: missing ones are mixed from those given. */
function yarnsOf(colours: readonly string[]): Rgb[] {
  const given = colours.map(linear);
  const field = given[0] ?? linear("#a79c8c");
  const shade = (yarn: Rgb, by: number): Rgb => [yarn[0] * by, yarn[1] * by, yarn[2] * by];
  const border = given[1] ?? shade(field, 0.6);
  return [field, border, given[2] ?? shade(field, 1.35), given[3] ?? shade(border, 0.55), given[4] ?? shade(field, 0.8), ...given.slice(5)];
}

/** Abrash: each batch of dyed wool a little different, in bands across the rug; and every knot a little of its own. */
function toneOf(weave: Weave, column: number, row: number, offset: number): number {
  const band = cloud(column * 1.7 + offset, 40 + Math.floor(offset)) * (weave === "knotted" ? 0.34 : weave === "flatweave" ? 0.2 : 0.06);
  const patch = cloud(column * 0.6 + offset, row * 0.6 + 11) * 0.1;
  return 1 + band + patch + (hash(column + offset, row) - 0.5) * 0.14;
}

const DRAUGHTSMEN: Record<Weave, (seed: number, half: [number, number]) => Draughtsman> = {
  knotted: (seed, half) => bordered(half, seed, hash(seed, 3) < 0.6 ? medallion(seed, half) : lattice(seed)),
  machine: (seed, half) => worn(seed, bordered(half, seed, medallion(seed, half))),
  flatweave: (seed, half) => (hash(seed, 3) < 0.65 ? diamonds(seed, half) : stripes(seed)),
  tufted: (seed, half) => (hash(seed, 3) < 0.55 ? forms(seed, half) : arches(seed, half)),
  loomed: (_seed, half) => (x, y) => (half[1] - Math.abs(y) < 9 || half[0] - Math.abs(x) < 9 ? 4 : 0),
};

/** A small figure with eight mirrors, rings within rings, as drawn by somebody who counts knots. 2n - 1 cells wide; answers 0 or a yarn. */
function figure(seed: number, n: number): (x: number, y: number) => number {
  const random = seeded(seed * 101 + n);
  const wide = n > 5 ? 1.5 : 1;
  const first = Math.floor(random() * 4);
  const rings = Array.from({ length: n + 1 }, (_, i) => [2, 1, 4, 3, 2, 4][(first + i + (random() < 0.3 ? 1 : 0)) % 6]!);
  const notches = Array.from({ length: n * n }, () => random() < 0.2);
  const arm = random() < 0.6;
  return (x, y) => {
    const p = Math.abs(Math.round(x)), q = Math.abs(Math.round(y)), i = Math.max(p, q), j = Math.min(p, q);
    if (i >= n) return 0;
    if (arm && j === 0 && i > n * 0.6) return 3;
    const d = Math.max(i, (i + j) * 0.74);
    if (d > n - (arm ? 2 : 1) || (d > n * 0.45 && notches[i * n + j])) return 0;
    if (d > n - (arm ? 3 : 2)) return 3;
    return d < 1 ? 2 : (rings[Math.floor(d / wide)] ?? 2);
  };
}

/** Repeats a figure; every second row is shifted by half. `scale` cells make one of the figure's. */
function repeated(draw: (x: number, y: number) => number, stepX: number, stepY: number, scale: number): Draughtsman {
  return (x, y) => {
    const row = Math.round(y / stepY);
    const shifted = x + (row & 1 ? stepX / 2 : 0);
    return draw((shifted - Math.round(shifted / stepX) * stepX) / scale, (y - row * stepY) / scale);
  };
}

function lattice(seed: number): Draughtsman {
  const big = repeated(figure(seed + 1, 13), 64, 32, 1.3), small = repeated(figure(seed + 2, 7), 64, 32, 1.15);
  return (x, y) => {
    const k = Math.round(y / 32), stem = Math.abs(((x + (k & 1 ? 32 : 0)) % 64 + 64) % 64 - 32);
    return big(x, y) || small(x + 32, y) || (stem < 0.6 && Math.abs(y - k * 32) < 15 ? 4 : 0);
  };
}

function medallion(seed: number, half: [number, number]): Draughtsman {
  const [a, b] = [half[0] * 0.6, half[1] * 0.62];
  const heart = figure(seed + 3, 22), sprinkle = repeated(figure(seed + 4, 7), 34, 24, 1.15), ring = repeated(figure(seed + 5, 5), 22, 22, 1.1);
  return (x, y) => {
    const step = 3.5, sx = Math.floor(Math.abs(x) / step) * step, sy = Math.floor(Math.abs(y) / step) * step;
    const lobes = 0.05 * Math.cos(Math.atan2(sy / b, sx / a) * 12);
    const d = Math.max(sx / a + sy / b, Math.hypot(sx / a, sy / b) * 1.12) + lobes;
    if (Math.hypot(x, y) < 40) return heart(x / 1.6, y / 1.6) || (Math.hypot(x, y) < 36 ? 2 : 3);
    if (d < 0.58) return ring(x, y) || 4;
    if (d < 0.63) return 3;
    if (d < 0.93) return sprinkle(x + 15, y + 15) || 1;
    if (d < 0.97) return 2;
    if (d < 1) return 3;
    const corner = (half[0] - 34 - sx) / (a * 0.62) + (half[1] - 34 - sy) / (b * 0.62);
    if (corner < 1) return corner > 0.94 ? 3 : corner > 0.88 ? 2 : ring(x + 11, y + 11) || 1;
    return sprinkle(x, y);
  };
}

/** Guard stripe, main border of figures, guard stripe, then what it frames. */
function bordered(half: [number, number], seed: number, field: Draughtsman): Draughtsman {
  const rosette = figure(seed + 6, 7), bud = figure(seed + 7, 3);
  const along = (steps: number, p: number, q: number) => ((p / steps - Math.round(p / steps)) * steps) ** 2 + q ** 2;
  return (x, y) => {
    const toX = half[0] - Math.abs(x), toY = half[1] - Math.abs(y), edge = Math.min(toX, toY);
    if (edge > 34) return field(x, y);
    if (edge < 3) return 3;
    if (edge > 32 || (edge > 8 && edge < 9.5)) return 3;
    const [p, q] = toY < toX ? [x, toY] : [y, toX];
    if (edge < 8 || edge > 27) {
      const middle = edge < 8 ? 5.5 : 29.5;
      return bud((p / 8 - Math.round(p / 8)) * 8, q - middle) ? 3 : 2;
    }
    const local = (p / 26 - Math.round(p / 26)) * 26;
    const vine = Math.abs(q - 18 - 5.5 * Math.sin((p / 52) * 2 * Math.PI)) < 0.9, leaf = along(26, p + 13, (q - 18) * 1.5) < 12;
    return rosette(local / 1.15, (q - 18) / 1.15) || (leaf ? 2 : vine ? 4 : 1);
  };
}

/** A pattern half gone, as printed and sheared on purpose by a machine. */
function worn(seed: number, draw: Draughtsman): Draughtsman {
  return (x, y) => (cloud(x * 2.2 + seed * 13, y * 2.2) + (hash(x | 0, y | 0) - 0.5) * 0.5 > 0.12 ? 0 : draw(x, y));
}

function diamonds(seed: number, half: [number, number]): Draughtsman {
  const size = half[1] * mix(0.36, 0.5, hash(seed, 8)), order = Math.floor(hash(seed, 9) * 3);
  return (x, y) => {
    const toX = half[0] - Math.abs(x);
    if (toX < 26) return Math.floor(toX / 4.4) % 2 ? 3 : [1, 2, 1][Math.floor(toX / 9)] ?? 1;
    const teeth = Math.abs(((y / 11) % 1 + 1) % 1 - 0.5) * 2;
    if (half[1] - Math.abs(y) < 9 + 8 * teeth) return half[1] - Math.abs(y) < 6 + 8 * teeth ? 1 : 3;
    // Diamonds of two rows set into each other fill the field.
    const at = (row: number) => {
      const shift = row & 1 ? size : 0, k = Math.round((x - shift) / (size * 2));
      const sx = Math.floor(Math.abs(x - shift - k * size * 2) / 3) * 3, sy = Math.floor(Math.abs(y - row * size) / 3) * 3;
      return { row, k, d: (sx + sy) / size };
    };
    const [above, below] = [at(Math.floor(y / size)), at(Math.floor(y / size) + 1)];
    const { row, k, d } = above.d <= below.d ? above : below;
    if (d > 1) return 3;
    const other = row & 1;
    if (d < 0.14) return other ? 2 : 3;
    if (d < 0.26) return other ? 3 : 2;
    if (d < 0.5) return (Math.abs(k) + row + order) % 3 === 0 ? 4 : 1;
    if (d < 0.57) return 2;
    if (d < 0.82) return other ? 4 : 0;
    if (d < 0.9) return 3;
    return other ? 2 : 0;
  };
}

function stripes(seed: number): Draughtsman {
  return (x, y) => {
    const band = Math.floor(x / 27), inside = ((x % 27) + 27) % 27;
    if (inside < 2 || (inside > 6 && inside < 8)) return 3;
    if (inside < 6) return 2;
    const kind = Math.floor(hash(band, seed) * 4);
    if (kind === 0) return Math.abs((((y / 12) % 1) + 1) % 1 - 0.5) * 24 > Math.abs(inside - 17) + 2 ? 1 : 0;
    return kind === 3 ? 1 : kind === 2 && inside > 15 && inside < 19 ? 4 : 0;
  };
}

/** Large quiet forms, as tufted to somebody's drawing. */
function forms(seed: number, half: [number, number]): Draughtsman {
  const random = seeded(seed * 7 + 1);
  const discs = Array.from({ length: 4 }, (_, i) => ({ x: mix(-0.8, 0.8, random()) * half[0], y: mix(-0.7, 0.7, random()) * half[1], r: mix(0.28, 0.6, random()) * half[1], yarn: 1 + (i % 4) }));
  const bend = mix(0.15, 0.35, random());
  return (x, y) => {
    const wave = y + half[1] * bend * Math.sin((x / half[0]) * 2.4 + seed);
    const over = discs.find((disc) => Math.hypot(x - disc.x, y - disc.y) < disc.r);
    const band = clamp(Math.floor(wave / (half[1] * 0.42)) + 2, 0, 4);
    if (over) return over.yarn;
    return [0, 4, 0, 2, 1][band] ?? 0;
  };
}

/** Quarter rings in squares, each square turned as chance had it. */
function arches(seed: number, half: [number, number]): Draughtsman {
  const side = half[1] * mix(0.5, 0.67, hash(seed, 14)), rings = 3;
  return (x, y) => {
    const i = Math.floor(x / side), j = Math.floor(y / side), turn = Math.floor(hash(i * 7 + seed, j) * 4);
    const p = x - (i + (turn & 1)) * side, q = y - (j + (turn >> 1)) * side;
    const ring = Math.floor((Math.sqrt(p * p + q * q) / side) * rings);
    return ring >= rings ? 0 : [1, 2, 4, 3][(ring + (hash(i, j + seed) < 0.3 ? 1 : 0)) % 4]!;
  };
}
