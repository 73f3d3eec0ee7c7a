// prisma/demo/draw-rug.ts
import sharp from "sharp";

// prisma/demo/canvas.ts
var SIDE = 512;
var MASK = SIDE - 1;
function seeded(seed) {
  let state = seed >>> 0;
  return () => {
    state = state + 1831565813 >>> 0;
    let t = Math.imul(state ^ state >>> 15, 1 | state);
    t = t + Math.imul(t ^ t >>> 7, 61 | t) ^ t;
    return ((t ^ t >>> 14) >>> 0) / 4294967296;
  };
}
function hash(x, y) {
  let h = Math.imul(x | 0, 668265261) ^ Math.imul(y | 0, 374761393);
  h = Math.imul(h ^ h >>> 15, 2246822507);
  h = Math.imul(h ^ h >>> 13, 3266489909);
  return ((h ^ h >>> 16) >>> 0) / 4294967296;
}
var clamp = (v, low = 0, high = 1) => v < low ? low : v > high ? high : v;
var mix = (a, b, t) => a + (b - a) * t;
var smooth = (from, to, v) => {
  const t = clamp((v - from) / (to - from));
  return t * t * (3 - 2 * t);
};
function linear(hex) {
  const n = parseInt(hex.slice(1), 16);
  const one = (v) => ((v / 255 + 0.055) / 1.055) ** 2.4;
  return [one(n >> 16), one(n >> 8 & 255), one(n & 255)];
}
var WHITE = Float32Array.from({ length: SIDE * SIDE }, (_, i) => 2 * hash(i, 77) - 1);
var CLOUDS = cloudTile();
function cloudTile() {
  const tile = new Float32Array(SIDE * SIDE);
  for (let octave = 0, cell = 64, weight = 0.6; octave < 4; octave++, cell /= 2, weight /= 2) {
    const count = SIDE / cell;
    const corners = Float32Array.from({ length: count * count }, (_, i) => 2 * hash(i % count + 1e3 * octave, Math.floor(i / count)) - 1);
    for (let y = 0; y < SIDE; y++) {
      const gy = Math.floor(y / cell), ty = smooth(0, 1, y / cell - gy), here = gy * count, below = (gy + 1) % count * count;
      for (let x = 0; x < SIDE; x++) {
        const gx = Math.floor(x / cell), tx = smooth(0, 1, x / cell - gx), right = (gx + 1) % count;
        tile[y * SIDE + x] += weight * mix(mix(corners[here + gx], corners[here + right], tx), mix(corners[below + gx], corners[below + right], tx), ty);
      }
    }
  }
  return tile;
}
var speck = (x, y) => WHITE[(Math.floor(y) & MASK) << 9 | Math.floor(x) & MASK];
var grain = (x, y) => between(WHITE, x, y);
var cloud = (x, y) => between(CLOUDS, x, y);
function waver(x, line) {
  const fx = Math.floor(x), row = (line & MASK) << 9, here = CLOUDS[row | fx & MASK];
  return here + (CLOUDS[row | fx + 1 & MASK] - here) * (x - fx);
}
function between(tile, x, y) {
  const fx = Math.floor(x), fy = Math.floor(y);
  const x0 = fx & MASK, x1 = fx + 1 & MASK, y0 = (fy & MASK) << 9, y1 = (fy + 1 & MASK) << 9;
  const tx = x - fx, ty = y - fy;
  const top = tile[y0 | x0] + (tile[y0 | x1] - tile[y0 | x0]) * tx;
  const low = tile[y1 | x0] + (tile[y1 | x1] - tile[y1 | x0]) * tx;
  return top + (low - top) * ty;
}
var LEVELS = Uint8Array.from({ length: 4097 }, (_, i) => {
  const light = i / 2048;
  const v = light < 0.7 ? light : 0.7 + 0.3 * (1 - Math.exp(-(light - 0.7) / 0.3));
  return Math.round(255 * (v <= 31308e-7 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055));
});
var level = (light) => LEVELS[light <= 0 ? 0 : light >= 2 ? 4096 : light * 2048 | 0];

// prisma/demo/damage.ts
var LOOKS = {
  brown: { through: [0.66, 0.5, 0.3], edge: 0.55, soft: 0.5, ragged: 0.5 },
  pale: { cover: { hex: "#e6dcc2", strength: 0.5 }, soft: 0.45, ragged: 0.55 },
  bleed: { through: [0.82, 0.3, 0.32], soft: 0.9, ragged: 0.95 },
  ring: { through: [0.82, 0.7, 0.5], edge: 1, soft: 0.12, ragged: 0.4 },
  wine: { through: [0.5, 0.13, 0.2], edge: 0.35, splashes: 9, soft: 0.2, ragged: 0.55 },
  coffee: { through: [0.47, 0.28, 0.13], edge: 0.8, splashes: 7, soft: 0.16, ragged: 0.5 },
  urine: { through: [0.9, 0.74, 0.34], edge: 0.5, soft: 0.5, ragged: 0.4 },
  wet: { through: [0.56, 0.54, 0.52], soft: 0.16, ragged: 0.5 },
  flat: { cover: { hex: "#c9c2b6", strength: 0.26 }, soft: 0.8, ragged: 0.3 }
};
function harmOf(damage, seed, length, width) {
  const cx = damage.x * length, cy = damage.y * width, r = damage.r * width;
  const from = seed * 53 + Math.round(100 * damage.x);
  if (damage.kind === "moth") return moth(cx, cy, r, from);
  if (damage.kind === "mould") return mould(cx, cy, r, from);
  if (damage.kind === "faded") return faded(cx, length);
  return stain(LOOKS[damage.kind], { cx, cy, r, from });
}
function shape(dx, dy, r, from, ragged) {
  const bend = 0.3 * cloud(dx / r * 12 + from, dy / r * 12 - from);
  const d = Math.sqrt((dx * (1 + bend)) ** 2 + (dy * (1.15 - bend)) ** 2) / r;
  if (d > 2) return d;
  const lobes = 0.9 * cloud(dx / r * 27 + from, dy / r * 27 + from) + 0.45 * cloud(dx / r * 90, dy / r * 90 + from);
  return d + ragged * lobes + 0.1 * cloud(dx * 40, dy * 40) + 0.05 * grain(dx * 3, dy * 3);
}
function stain(look, { cx, cy, r, from }) {
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
    out[0] *= Math.max(0.03, 1 - (1 - tr) * t);
    out[1] *= Math.max(0.03, 1 - (1 - tg) * t);
    out[2] *= Math.max(0.03, 1 - (1 - tb) * t);
    if (cover) for (let c = 0; c < 3; c++) out[c] = mix(out[c], cover[c], mask * look.cover.strength);
    return 0;
  };
}
function moth(cx, cy, r, from) {
  return (x, y) => {
    const d = Math.hypot(x - cx, y - cy) / r;
    if (d > 1.4) return 0;
    const bays = cloud(x * 21 + from, y * 21) + 0.4 * cloud(x * 60, y * 60 + from) + 0.12 * grain(x * 5, y * 5);
    return smooth(-0.05, 0.3, bays - 0.6 * d * d + 0.06);
  };
}
function mould(cx, cy, r, from) {
  return (x, y, out) => {
    const d = Math.hypot(x - cx, y - cy) / r;
    if (d > 1.5) return 0;
    const spots = smooth(0.16, 0.5, cloud(x * 38 + from, y * 38) + 0.35 * cloud(x * 9, y * 9 + from) - 0.45 * d * d);
    const veil = 0.22 * smooth(1.3, 0.2, d + 0.4 * cloud(x * 12, y * 12));
    const t = clamp(spots * 0.85 + veil);
    out[0] = mix(out[0], 0.045, t);
    out[1] = mix(out[1], 0.052, t);
    out[2] = mix(out[2], 0.045, t);
    return 0;
  };
}
function faded(cx, length) {
  return (x, y, out) => {
    const t = 0.55 * smooth(cx + length * 0.05, cx - length * 0.02, x + 2 * cloud(7, y * 2));
    const grey = 0.3 * out[0] + 0.6 * out[1] + 0.1 * out[2];
    out[0] = mix(out[0], 0.45 * out[0] + 0.7 * grey + 0.17, t);
    out[1] = mix(out[1], 0.45 * out[1] + 0.7 * grey + 0.16, t);
    out[2] = mix(out[2], 0.45 * out[2] + 0.65 * grey + 0.13, t);
    return 0;
  };
}

// prisma/demo/design.ts
var PITCH = 0.45;
function drawDesign({ seed, weave, colours, length, width }) {
  const columns = Math.round(length / PITCH), rows = Math.round(width / PITCH);
  const yarns = yarnsOf(colours);
  const half = [columns / 2, rows / 2];
  const draw = DRAUGHTSMEN[weave](seed, half);
  const data = new Float32Array(columns * rows * 3);
  const offset = seed * 37;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const yarn = yarns[draw(column - half[0] + 0.5, row - half[1] + 0.5) % yarns.length];
      const tone = toneOf(weave, column, row, offset);
      const grey = 0.07 * (yarn[0] + yarn[1] + yarn[2]) / 3;
      for (let c = 0; c < 3; c++) data[3 * (row * columns + column) + c] = (0.93 * yarn[c] + grey) * tone * (1 + 0.035 * (hash(column + c * 999, row) - 0.5));
    }
  }
  return { data, columns, rows, pitch: PITCH };
}
function yarnsOf(colours) {
  const given = colours.map(linear);
  const field = given[0] ?? linear("#a79c8c");
  const shade = (yarn, by) => [yarn[0] * by, yarn[1] * by, yarn[2] * by];
  const border = given[1] ?? shade(field, 0.6);
  return [field, border, given[2] ?? shade(field, 1.35), given[3] ?? shade(border, 0.55), given[4] ?? shade(field, 0.8), ...given.slice(5)];
}
function toneOf(weave, column, row, offset) {
  const band = cloud(column * 1.7 + offset, 40 + Math.floor(offset)) * (weave === "knotted" ? 0.34 : weave === "flatweave" ? 0.2 : 0.06);
  const patch = cloud(column * 0.6 + offset, row * 0.6 + 11) * 0.1;
  return 1 + band + patch + (hash(column + offset, row) - 0.5) * 0.14;
}
var DRAUGHTSMEN = {
  knotted: (seed, half) => bordered(half, seed, hash(seed, 3) < 0.6 ? medallion(seed, half) : lattice(seed)),
  machine: (seed, half) => worn(seed, bordered(half, seed, medallion(seed, half))),
  flatweave: (seed, half) => hash(seed, 3) < 0.65 ? diamonds(seed, half) : stripes(seed),
  tufted: (seed, half) => hash(seed, 3) < 0.55 ? forms(seed, half) : arches(seed, half),
  loomed: (_seed, half) => (x, y) => half[1] - Math.abs(y) < 9 || half[0] - Math.abs(x) < 9 ? 4 : 0
};
function figure(seed, n) {
  const random = seeded(seed * 101 + n);
  const wide = n > 5 ? 1.5 : 1;
  const first = Math.floor(random() * 4);
  const rings = Array.from({ length: n + 1 }, (_, i) => [2, 1, 4, 3, 2, 4][(first + i + (random() < 0.3 ? 1 : 0)) % 6]);
  const notches = Array.from({ length: n * n }, () => random() < 0.2);
  const arm = random() < 0.6;
  return (x, y) => {
    const p = Math.abs(Math.round(x)), q = Math.abs(Math.round(y)), i = Math.max(p, q), j = Math.min(p, q);
    if (i >= n) return 0;
    if (arm && j === 0 && i > n * 0.6) return 3;
    const d = Math.max(i, (i + j) * 0.74);
    if (d > n - (arm ? 2 : 1) || d > n * 0.45 && notches[i * n + j]) return 0;
    if (d > n - (arm ? 3 : 2)) return 3;
    return d < 1 ? 2 : rings[Math.floor(d / wide)] ?? 2;
  };
}
function repeated(draw, stepX, stepY, scale) {
  return (x, y) => {
    const row = Math.round(y / stepY);
    const shifted = x + (row & 1 ? stepX / 2 : 0);
    return draw((shifted - Math.round(shifted / stepX) * stepX) / scale, (y - row * stepY) / scale);
  };
}
function lattice(seed) {
  const big = repeated(figure(seed + 1, 13), 64, 32, 1.3), small = repeated(figure(seed + 2, 7), 64, 32, 1.15);
  return (x, y) => {
    const k = Math.round(y / 32), stem = Math.abs(((x + (k & 1 ? 32 : 0)) % 64 + 64) % 64 - 32);
    return big(x, y) || small(x + 32, y) || (stem < 0.6 && Math.abs(y - k * 32) < 15 ? 4 : 0);
  };
}
function medallion(seed, half) {
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
function bordered(half, seed, field) {
  const rosette = figure(seed + 6, 7), bud = figure(seed + 7, 3);
  const along = (steps, p, q) => ((p / steps - Math.round(p / steps)) * steps) ** 2 + q ** 2;
  return (x, y) => {
    const toX = half[0] - Math.abs(x), toY = half[1] - Math.abs(y), edge = Math.min(toX, toY);
    if (edge > 34) return field(x, y);
    if (edge < 3) return 3;
    if (edge > 32 || edge > 8 && edge < 9.5) return 3;
    const [p, q] = toY < toX ? [x, toY] : [y, toX];
    if (edge < 8 || edge > 27) {
      const middle = edge < 8 ? 5.5 : 29.5;
      return bud((p / 8 - Math.round(p / 8)) * 8, q - middle) ? 3 : 2;
    }
    const local = (p / 26 - Math.round(p / 26)) * 26;
    const vine = Math.abs(q - 18 - 5.5 * Math.sin(p / 52 * 2 * Math.PI)) < 0.9, leaf = along(26, p + 13, (q - 18) * 1.5) < 12;
    return rosette(local / 1.15, (q - 18) / 1.15) || (leaf ? 2 : vine ? 4 : 1);
  };
}
function worn(seed, draw) {
  return (x, y) => cloud(x * 2.2 + seed * 13, y * 2.2) + (hash(x | 0, y | 0) - 0.5) * 0.5 > 0.12 ? 0 : draw(x, y);
}
function diamonds(seed, half) {
  const size = half[1] * mix(0.36, 0.5, hash(seed, 8)), order = Math.floor(hash(seed, 9) * 3);
  return (x, y) => {
    const toX = half[0] - Math.abs(x);
    if (toX < 26) return Math.floor(toX / 4.4) % 2 ? 3 : [1, 2, 1][Math.floor(toX / 9)] ?? 1;
    const teeth = Math.abs((y / 11 % 1 + 1) % 1 - 0.5) * 2;
    if (half[1] - Math.abs(y) < 9 + 8 * teeth) return half[1] - Math.abs(y) < 6 + 8 * teeth ? 1 : 3;
    const at = (row2) => {
      const shift = row2 & 1 ? size : 0, k2 = Math.round((x - shift) / (size * 2));
      const sx = Math.floor(Math.abs(x - shift - k2 * size * 2) / 3) * 3, sy = Math.floor(Math.abs(y - row2 * size) / 3) * 3;
      return { row: row2, k: k2, d: (sx + sy) / size };
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
function stripes(seed) {
  return (x, y) => {
    const band = Math.floor(x / 27), inside = (x % 27 + 27) % 27;
    if (inside < 2 || inside > 6 && inside < 8) return 3;
    if (inside < 6) return 2;
    const kind = Math.floor(hash(band, seed) * 4);
    if (kind === 0) return Math.abs((y / 12 % 1 + 1) % 1 - 0.5) * 24 > Math.abs(inside - 17) + 2 ? 1 : 0;
    return kind === 3 ? 1 : kind === 2 && inside > 15 && inside < 19 ? 4 : 0;
  };
}
function forms(seed, half) {
  const random = seeded(seed * 7 + 1);
  const discs = Array.from({ length: 4 }, (_, i) => ({ x: mix(-0.8, 0.8, random()) * half[0], y: mix(-0.7, 0.7, random()) * half[1], r: mix(0.28, 0.6, random()) * half[1], yarn: 1 + i % 4 }));
  const bend = mix(0.15, 0.35, random());
  return (x, y) => {
    const wave = y + half[1] * bend * Math.sin(x / half[0] * 2.4 + seed);
    const over = discs.find((disc) => Math.hypot(x - disc.x, y - disc.y) < disc.r);
    const band = clamp(Math.floor(wave / (half[1] * 0.42)) + 2, 0, 4);
    if (over) return over.yarn;
    return [0, 4, 0, 2, 1][band] ?? 0;
  };
}
function arches(seed, half) {
  const side = half[1] * mix(0.5, 0.67, hash(seed, 14)), rings = 3;
  return (x, y) => {
    const i = Math.floor(x / side), j = Math.floor(y / side), turn = Math.floor(hash(i * 7 + seed, j) * 4);
    const p = x - (i + (turn & 1)) * side, q = y - (j + (turn >> 1)) * side;
    const ring = Math.floor(Math.sqrt(p * p + q * q) / side * rings);
    return ring >= rings ? 0 : [1, 2, 4, 3][(ring + (hash(i, j + seed) < 0.3 ? 1 : 0)) % 4];
  };
}

// prisma/demo/surfaces.ts
var PILES = {
  knotted: { sheen: 0.07, grain: 0.1, fibre: 0.12 },
  tufted: { sheen: 0.1, grain: 0.09, fibre: 0.16 },
  loomed: { sheen: 0.3, grain: 0.07, fibre: 0.2 },
  machine: { sheen: 0.09, grain: 0.08, fibre: 0.1 },
  flatweave: { sheen: 0, grain: 0.09, fibre: 0.08 }
};
var KINDS_OF_FLOOR = [
  { wood: ["#8a6544", "#7b5838", "#96704c"], plank: 13 },
  { wood: ["#b6936a", "#a98660", "#c09e76"], plank: 16 },
  { wood: ["#5a4433", "#4f3b2b", "#664e3a"], plank: 11 },
  { wood: ["#b9b1a4", "#aca497", "#c3bcb0"], plank: 18 }
];
function boards(seed) {
  const floor = KINDS_OF_FLOOR[Math.floor(hash(seed, 40) * KINDS_OF_FLOOR.length)];
  const tones = floor.wood.map(linear);
  return (x, y, out) => {
    const row = Math.floor(y / floor.plank), along = x + 400 * hash(row, seed);
    const plank = Math.floor(along / 150), own = hash(row * 31 + plank, seed + 5);
    const wood = tones[Math.floor(own * tones.length)];
    const wave = 3 * cloud(along * 0.7 + own * 300, y * 3);
    const veins = cloud(along * 1.1 + own * 900, (y + wave) * 26) * 0.16 + grain(along * 1.6, y * 34 + own * 99) * 0.06;
    const rings = 0.05 * Math.sin((y + wave * 1.6) * 5.5 + own * 40);
    const toJoint = Math.min(Math.abs(y - row * floor.plank), Math.abs(y - (row + 1) * floor.plank), Math.abs(along - plank * 150) * 0.7, Math.abs(along - (plank + 1) * 150) * 0.7);
    const light = (0.9 + 0.18 * own + veins + rings) * (0.3 + 0.7 * smooth(0.02, 0.28, toJoint));
    out[0] = wood[0] * light;
    out[1] = wood[1] * light;
    out[2] = wood[2] * light;
  };
}
function shadeFar(weave, x, y) {
  const pile = PILES[weave];
  const brushed = cloud(x * 1.9, y * 1.3) + 0.55 * Math.sin(x * 0.11 + 3 * cloud(x * 0.5, y * 0.5));
  const rows = weave === "flatweave" ? 0.06 * Math.sin(y * 14) : weave === "loomed" ? 0.035 * Math.sin(x * 9.5 + cloud(x, y)) : 0;
  return 1 + pile.sheen * brushed + rows + pile.grain * (speck(x * 4.2, y * 4.2) + 0.6 * speck(x * 9, y * 9)) + 0.05 * cloud(x * 12, y * 12);
}
function yarnAt(design, x, y, out) {
  const fx = x / design.pitch - 0.5, fy = y / design.pitch - 0.5;
  const x0 = Math.min(design.columns - 2, Math.max(0, Math.floor(fx))), y0 = Math.min(design.rows - 2, Math.max(0, Math.floor(fy)));
  const tx = smooth(0.2, 0.8, fx - x0), ty = smooth(0.2, 0.8, fy - y0);
  const { data } = design, a = 3 * (y0 * design.columns + x0), b = a + 3 * design.columns;
  for (let c = 0; c < 3; c++) out[c] = mix(mix(data[a + c], data[a + 3 + c], tx), mix(data[b + c], data[b + 3 + c], tx), ty);
}
function knotAt(design, x, y, out) {
  const column = Math.min(design.columns - 1, Math.max(0, Math.floor(x / design.pitch))), row = Math.min(design.rows - 1, Math.max(0, Math.floor(y / design.pitch)));
  const at = 3 * (row * design.columns + column);
  out[0] = design.data[at];
  out[1] = design.data[at + 1];
  out[2] = design.data[at + 2];
}
var GROUND = linear("#b9a88a");
function frontFar({ design, weave, harms }) {
  return (x, y, out) => {
    yarnAt(design, x, y, out);
    let bare = 0;
    for (const harm of harms) bare = Math.max(bare, harm(x, y, out));
    const light = shadeFar(weave, x, y);
    for (let c = 0; c < 3; c++) out[c] = mix(out[c] * light, GROUND[c] * (0.8 + 0.25 * speck(x * 6, y * 6)), bare);
  };
}
function frontNear(front) {
  return front.weave === "flatweave" ? ribsNear(front) : tuftsNear(front);
}
function tuftsNear({ design, weave, harms }) {
  const pile = PILES[weave];
  const pitch = weave === "loomed" ? 0.3 : 0.34;
  const yarn = new Float32Array(3);
  let lastI = NaN, lastJ = NaN, bare = 0;
  return (x, y, out) => {
    const lean = 0.12 * cloud(x * 3, y * 3);
    const px = x / pitch + lean + 0.16 * grain(x * 9, y * 9), py = y / (pitch * 0.9) + 0.16 * grain(x * 9 + 200, y * 9);
    let near = 9, tx = 0, ty = 0, ci = 0, cj = 0;
    const i0 = Math.floor(px - 0.5), j0 = Math.floor(py - 0.5);
    for (let j = j0; j <= j0 + 1; j++)
      for (let i = i0; i <= i0 + 1; i++) {
        const dx = px - i - 0.5 - 0.55 * (hash(i, j) - 0.5), dy = py - j - 0.5 - 0.55 * (hash(j, i + 99) - 0.5);
        const d = dx * dx + dy * dy;
        if (d < near) {
          near = d;
          tx = dx;
          ty = dy;
          ci = i;
          cj = j;
        }
      }
    if (ci !== lastI || cj !== lastJ) {
      lastI = ci;
      lastJ = cj;
      bare = 0;
      const mx = (ci + 0.5) * pitch, my = (cj + 0.5) * pitch * 0.9;
      yarnAt(design, mx, my, yarn);
      for (const harm of harms) bare = Math.max(bare, harm(mx, my, yarn));
    }
    const turn = hash(ci, cj + 7) * 6.28, along = x * Math.cos(turn) + y * Math.sin(turn), across = y * Math.cos(turn) - x * Math.sin(turn);
    const fibres = pile.fibre * grain(across * 34 + ci * 9, along * 7 + cj * 5);
    const brushed = pile.sheen * (cloud(x * 4, y * 3) + 0.5 * cloud(x * 11, y * 9));
    const light = (0.66 + 0.5 * smooth(0.62, 0.02, near)) * (1 - 0.22 * tx - 0.3 * ty) * (1 + fibres + brushed + 0.16 * (hash(ci + 3, cj) - 0.5));
    for (let c = 0; c < 3; c++) out[c] = yarn[c] * light;
    if (bare > 0) ground(x, y, bare, out);
  };
}
function ribsNear({ design, harms }) {
  const yarn = new Float32Array(3);
  let lastRow = NaN, lastColumn = NaN;
  return (x, y, out) => {
    const wobble = 0.05 * cloud(x * 6, y * 6);
    const row = Math.floor((x + wobble) / 0.16), inRow = (x + wobble) / 0.16 - row;
    const bead = (y + wobble) / 0.42 + (row & 1 ? 0.5 : 0), column = Math.floor(bead), inBead = bead - column;
    if (row !== lastRow || column !== lastColumn) {
      lastRow = row;
      lastColumn = column;
      const mx = (row + 0.5) * 0.16, my = (column + 0.5 - (row & 1 ? 0.5 : 0)) * 0.42;
      yarnAt(design, mx, my, yarn);
      for (const harm of harms) harm(mx, my, yarn);
    }
    const round = Math.sqrt(Math.max(0, 1 - (2 * inRow - 1) ** 2 * 0.85)) * (0.62 + 0.38 * Math.sin(Math.PI * inBead));
    const light = (0.45 + 0.7 * round) * (1 + 0.12 * grain(x * 30, y * 11) + 0.12 * (hash(row, column) - 0.5) - 0.12 * (2 * inRow - 1));
    for (let c = 0; c < 3; c++) out[c] = yarn[c] * light;
  };
}
function ground(x, y, amount, out) {
  const weft = Math.sin(x * 26 + (Math.floor(y * 5) & 1) * Math.PI), warp = Math.sin(y * 15.7);
  const light = (0.62 + 0.2 * weft * Math.abs(warp) + 0.16 * warp) * (1 + 0.15 * grain(x * 30, y * 30)) * (1 - 0.6 * smooth(0.95, 0.3, amount));
  for (let c = 0; c < 3; c++) out[c] = mix(out[c], GROUND[c] * light, smooth(0.15, 0.5, amount));
}
function back(design, weave) {
  const cloth = linear("#b3a58c");
  const beadX = 0.2, beadY = 0.16;
  return (x, y, out) => {
    if (weave === "tufted") {
      const light2 = 0.86 + 0.1 * Math.sin(x * 38) * Math.sin(y * 38) + 0.07 * grain(x * 22, y * 5) + 0.06 * cloud(x * 5, y * 5);
      for (let c = 0; c < 3; c++) out[c] = cloth[c] * light2;
      return;
    }
    const wx = x + 0.03 * cloud(x * 10, y * 10), wy = y + 0.03 * cloud(x * 10 + 90, y * 10);
    const i = Math.floor(wx / beadX), j = Math.floor(wy / beadY);
    const dx = wx / beadX - i - 0.5, dy = wy / beadY - j - 0.5;
    knotAt(design, (i + 0.5) * beadX, (j + 0.5) * beadY, out);
    const bead = Math.max(0, 1 - (dx * dx * 4.6 + dy * dy * 3.4));
    const light = (0.34 + 0.86 * Math.sqrt(bead)) * (1 - 0.3 * dx - 0.5 * dy) * (1 + 0.14 * grain(x * 42 + dy * 8, y * 30) + 0.16 * (hash(i, j) - 0.5));
    const weft = smooth(0.3, 0.05, bead) * 0.55;
    for (let c = 0; c < 3; c++) out[c] = mix(out[c] * light, cloth[c] * 0.42, weft);
  };
}

// prisma/demo/label.ts
var STROKES = {
  A: "0620 2046 1434",
  B: "000636 0030413233 03334536",
  C: "4130100115 151636 3645",
  D: "0006 00304145360 3606",
  E: "400006 46 0333 0646",
  F: "4000 0006 0333",
  G: "41301001051636454333",
  H: "0006 4046 0343",
  I: "2026 1030 1636",
  J: "40453616 1605",
  K: "0006 4003 0346",
  L: "000646",
  M: "0600234046",
  N: "06004640",
  O: "10304145361605011 0110",
  P: "0600304142330 3303",
  Q: "1030414536160501 0110 2446",
  R: "0600304142330 3303 2346",
  S: "413010010213334445361605",
  T: "0040 2026",
  U: "000516364540",
  V: "002640",
  W: "0016233640",
  X: "0046 4006",
  Y: "0023 4023 2326",
  Z: "00400646",
  0: "1030414536160501 0110 4105",
  1: "012026 1636",
  2: "011030414206 0646",
  3: "0110304142332 33444536160 1605",
  4: "30043 0444 3036",
  5: "40000232434536160 1605",
  6: "413010010516364544331303",
  7: "004016",
  8: "1030414233130201 0110 1304051636454433",
  9: "05163645413010010213334 3342",
  "%": "4006 00101101 0100 35464536 3536",
  "/": "4006",
  "-": "1333",
  "+": "2125 0343",
  ".": "2526",
  ",": "2516",
  ":": "2122 2526",
  "'": "2021",
  "(": "3011153 1536",
  ")": "1031351 3516",
  "&": "4612113032042 0415264",
  "?": "01103041422324 2626"
};
var LETTER = { width: 4, height: 6, gap: 2.1 };
var CLOTH = { width: 9.4, height: 6.2 };
var DOTS = 90;
function labelCloth(text, seed) {
  const ink = print(text);
  const white = linear(hash(seed, 31) < 0.3 ? "#e2d9c4" : "#ecebe6"), black = linear("#23252b"), thread = linear("#8c8577");
  const columns = Math.round(CLOTH.width * DOTS), rows = Math.round(CLOTH.height * DOTS);
  return (x, y, out) => {
    const wx = x + 0.05 * cloud(x * 9 + seed, y * 9), wy = y + 0.05 * cloud(x * 9, y * 9 + seed);
    const edge = Math.min(CLOTH.width / 2 - Math.abs(wx), CLOTH.height / 2 - Math.abs(wy));
    if (edge < 0) {
      const shade = 1 - 0.5 * Math.exp(edge / 0.22);
      out[0] *= shade;
      out[1] *= shade;
      out[2] *= shade;
      return;
    }
    const column = Math.floor((wx + CLOTH.width / 2) * DOTS), row = Math.floor((wy + CLOTH.height / 2) * DOTS);
    const printed = column >= 0 && row >= 0 && column < columns && row < rows ? ink[row * columns + column] * (0.9 + 0.1 * speck(x * 60, y * 60)) : 0;
    const fold = 0.1 * cloud(x * 7 + seed * 9, y * 4) + 0.05 * Math.sin(x * 1.1 + y * 2.3 + seed);
    const satin = 0.04 * Math.sin(wy * 140) + 0.035 * Math.sin(wx * 95) + 0.04 * grain(x * 55, y * 55);
    const light = (0.88 + fold + satin) * (0.8 + 0.2 * smooth(0, 0.16, edge));
    for (let c = 0; c < 3; c++) out[c] = mix(white[c], black[c], printed * 0.92) * light;
    const at = Math.abs(wx) > CLOTH.width / 2 - 0.5 ? wy : wx;
    const stitch = smooth(0.055, 0.025, Math.abs(edge - 0.25)) * smooth(0.5, 0.35, Math.abs((at / 0.34 % 1 + 1) % 1 - 0.5));
    for (let c = 0; c < 3; c++) out[c] = mix(out[c], thread[c] * (0.7 + 0.4 * light), stitch);
  };
}
function print(text) {
  const columns = Math.round(CLOTH.width * DOTS), rows = Math.round(CLOTH.height * DOTS);
  const ink = new Float32Array(columns * rows);
  const lines = text.toUpperCase().split("\n").map((line) => line.trim()).filter(Boolean).slice(0, 7);
  const longest = Math.max(8, ...lines.map((line) => line.length));
  const scale = Math.min((columns - 110) / (longest * (LETTER.width + LETTER.gap)), (rows - 110) / (lines.length * 10.5));
  lines.forEach((line, n) => {
    const wide = (line.length * (LETTER.width + LETTER.gap) - LETTER.gap) * scale;
    const left = (columns - wide) / 2, top = rows / 2 + (n - lines.length / 2) * 10.5 * scale + 2.2 * scale;
    [...line].forEach((letter, i) => write(ink, columns, STROKES[letter] ?? "", { x: left + i * (LETTER.width + LETTER.gap) * scale, y: top, scale }));
  });
  return ink;
}
function write(ink, columns, strokes, at) {
  for (const stroke of strokes.split(" ")) {
    for (let i = 0; i + 3 < stroke.length; i += 2) {
      const [x0, y0, x1, y1] = [...stroke.slice(i, i + 4)].map(Number);
      drawLine(ink, columns, { x0: at.x + x0 * at.scale, y0: at.y + y0 * at.scale, x1: at.x + x1 * at.scale, y1: at.y + y1 * at.scale }, at.scale * 0.42);
    }
  }
}
function drawLine(ink, columns, { x0, y0, x1, y1 }, half) {
  const long = Math.hypot(x1 - x0, y1 - y0) || 1, reach = half + 1;
  for (let y = Math.floor(Math.min(y0, y1) - reach); y <= Math.max(y0, y1) + reach; y++) {
    for (let x = Math.floor(Math.min(x0, x1) - reach); x <= Math.max(x0, x1) + reach; x++) {
      const t = Math.min(1, Math.max(0, ((x - x0) * (x1 - x0) + (y - y0) * (y1 - y0)) / (long * long)));
      const d = Math.hypot(x - x0 - t * (x1 - x0), y - y0 - t * (y1 - y0));
      const i = y * columns + x;
      if (i >= 0 && i < ink.length) ink[i] = Math.max(ink[i], smooth(half + 0.8, half - 0.8, d));
    }
  }
}

// prisma/demo/scenes.ts
function wholeRug(front, { length, width }, seed) {
  const floor = boards(seed), pile = frontFar(front);
  const fringe = front.weave === "knotted" || front.weave === "flatweave" && seed % 3 > 0 ? 5.5 : 0;
  const yarn = linear("#d9cdb4");
  const surface = (x, y, out) => {
    const wx = x + 0.5 * waver(y * 1.7 + seed, 3), wy = y + 0.6 * waver(x * 1.3 + seed, 5);
    const outX = Math.max(-wx, wx - length), outY = Math.max(-wy, wy - width), outside = Math.max(outX, outY);
    if (outside < 0) {
      pile(wx, wy, out);
      const edge = 0.78 + 0.22 * smooth(0, -0.9, outside);
      out[0] *= edge;
      out[1] *= edge;
      out[2] *= edge;
      return;
    }
    floor(x, y, out);
    const d = Math.hypot(Math.max(0, outX), Math.max(0, outY));
    const low = wx > length || wy > width ? 1 : 0.55;
    const shade = 1 - (0.5 * Math.exp(-d / 0.9) + 0.26 * Math.exp(-d / 5)) * low;
    out[0] *= shade;
    out[1] *= shade;
    out[2] *= shade;
    if (outX > -0.1 && outX < fringe && outY < 0.3) threads(outX, wy, outX === -wx ? 1 : 2, yarn, out);
  };
  const runner = width < 0.45 * length;
  const turn = runner ? hash(seed, 2) < 0.5 ? -0.42 : 0.42 : (hash(seed, 2) - 0.5) * 0.07;
  return { surface, span: length * (runner ? 1.08 : 1.24) + 2 * fringe, centre: [length / 2 + 3 * (hash(seed, 1) - 0.5), width / 2], turn, tilt: 0.22 + 0.12 * hash(seed, 4) };
}
function threads(outX, y, end, yarn, out) {
  for (let layer = 0; layer < 2; layer++) {
    const drift = outX * (0.22 * cloud(end * 90, y * 6 + layer * 40) + 0.1 * Math.sin(y * 1.7 + layer));
    const at = (y + drift) / 0.5 + layer * 0.5, k = Math.floor(at);
    const far = 4.4 + 1.6 * (hash(k, end + layer * 7) - 0.3);
    if (outX > far) continue;
    const across = Math.abs(at - k - 0.5 + 0.18 * (hash(k, 3) - 0.5)) * 2;
    const cover = smooth(0.85, 0.4, across + 0.5 * smooth(far - 1.2, far, outX));
    const light = (0.62 + 0.35 * (1 - across) + 0.2 * (hash(k + end, layer) - 0.5) + 0.1 * grain(outX * 7, y * 20)) * (layer ? 1 : 0.72);
    for (let c = 0; c < 3; c++) out[c] = mix(out[c], yarn[c] * light, cover);
  }
}
var NEAR_SPAN = 48;
var nearPlace = ({ length, width }, seed) => [
  clamp(length * mix(0.2, 0.45, hash(seed, 51)), Math.min(NEAR_SPAN * 0.55, length / 2), length / 2),
  clamp(width * mix(0.3, 0.6, hash(seed, 52)), Math.min(NEAR_SPAN * 0.42, width / 2), width - Math.min(NEAR_SPAN * 0.42, width / 2))
];
function ontoRug(damage, size, seed) {
  const [x, y] = nearPlace(size, seed);
  return { ...damage, x: (x + (damage.x - 0.5) * NEAR_SPAN) / size.length, y: (y + (damage.y - 0.5) * NEAR_SPAN * 0.75) / size.width, r: damage.r * 0.7 * NEAR_SPAN / size.width };
}
function trouble(front, size, seed) {
  return { surface: frontNear(front), span: NEAR_SPAN, centre: nearPlace(size, seed), turn: (hash(seed, 8) - 0.5) * 0.4, tilt: 0.14 };
}
function foldedCorner(front, seed) {
  const floor = boards(seed), face = frontNear(front), reverse = back(front.design, front.weave);
  const fold = 27;
  const surface = (x, y, out) => {
    const sum = x + y, bend = 0.5 * cloud((x - y) * 3, 9);
    if (sum < fold + bend) {
      floor(x, y, out);
      const d = Math.min(Math.max(0, fold - sum) / 1.41, 99);
      const shade2 = 1 - 0.45 * Math.exp(-d / 1.6);
      out[0] *= shade2;
      out[1] *= shade2;
      out[2] *= shade2;
      return;
    }
    const rx = fold - y, ry = fold - x;
    if (rx > -0.2 + 0.1 * cloud(3, ry * 8) && ry > -0.2 + 0.1 * cloud(rx * 8, 3)) {
      reverse(Math.max(0, rx), Math.max(0, ry), out);
      const across = (sum - fold) / 1.41;
      const roll = 0.62 + 0.5 * smooth(0, 1.6, across) - 0.14 * smooth(1.6, 9, across);
      const selvedge = 1 - 0.35 * smooth(0.7, 0.1, Math.min(rx, ry));
      for (let c = 0; c < 3; c++) out[c] *= roll * selvedge;
      return;
    }
    if (x < 0 || y < 0) {
      floor(x, y, out);
      return;
    }
    face(x, y, out);
    const away = Math.max(0, -rx, -ry);
    const shade = 1 - 0.62 * Math.exp(-away / 1.3) - 0.12 * Math.exp(-away / 6);
    for (let c = 0; c < 3; c++) out[c] *= shade;
  };
  return { surface, span: 40, centre: [19, 19], turn: (hash(seed, 8) - 0.5) * 0.2, tilt: 0.1 };
}
function partedPile(front, { length, width }, seed) {
  const base = [length * (0.3 + 0.2 * hash(seed, 5)), width * (0.3 + 0.2 * hash(seed, 6))];
  const shiny = front.weave === "loomed" ? 1 : 0.25;
  const ground2 = linear("#c4b496");
  const surface = (x, y, out) => {
    const parting = 0.5 * cloud(x * 9 + seed, 4) + 0.12 * cloud(x * 40, 8);
    const side = y > parting ? 1 : -1, d = Math.abs(y - parting) - 0.15;
    if (d + 0.13 * Math.max(0, grain(x * 38, 17 * side)) + 0.06 * grain(x * 95, 29 * side) < 0) {
      const weave = 0.5 + 0.25 * Math.sin(x * 34) + 0.2 * Math.sin(y * 60 + (Math.floor(x * 5.4) & 1) * 3.1);
      for (let c = 0; c < 3; c++) out[c] = ground2[c] * weave * (0.12 + 0.5 * smooth(0.02, -0.14, d));
      return;
    }
    const depth = d + 0.14 * cloud(x * 26 + 50 * side, side * 7), row = Math.max(0, Math.floor(depth / 0.62));
    const lean = x + side * 0.16 * d + 0.1 * cloud(x * 12, d * 14 + side * 60);
    const tuft = Math.floor(lean / 0.3 + hash(row, side) * 0.9), inTuft = lean / 0.3 + hash(row, side) * 0.9 - tuft - 0.5;
    const inRow = depth / 0.62 - row + 0.55 * inTuft * inTuft + 0.3 * (hash(tuft, row * 2 + side) - 0.5);
    knotAt(front.design, base[0] + tuft * 0.3, base[1] + side * (row + 0.5) * 0.5, out);
    const strand = grain(lean * 62, d * 5 + tuft) * 0.5 + grain(lean * 120, d * 9 + tuft * 3) * 0.35 + speck(lean * 210, d * 14 + tuft * 7) * 0.3;
    const deep = row < 1 ? 0.42 + 0.58 * smooth(0, 0.62, d) : 1;
    const tip = 0.58 + 0.55 * smooth(0, 0.75, inRow) - 0.42 * smooth(0.86, 1.12, inRow);
    const gloss = shiny * 0.55 * smooth(0.25, 0.75, 1 - Math.abs(inRow - 0.55) * 2 + 0.5 * strand);
    const light = deep * tip * (1 - 0.75 * inTuft * inTuft) * (1 + 0.42 * strand + (side > 0 ? -0.06 : 0.1));
    for (let c = 0; c < 3; c++) out[c] = out[c] * light + gloss * light * (0.1 + 0.4 * out[c]);
  };
  return { surface, span: 9, centre: [40, 0.3], turn: (hash(seed, 8) - 0.5) * 0.3, tilt: 0.05 };
}
function label(front, text, seed) {
  const reverse = back(front.design, front.weave), cloth = labelCloth(text, seed);
  const surface = (x, y, out) => {
    reverse(x + 60, y + 40, out);
    const shade = 0.86 + 0.1 * cloud(x * 5, y * 5);
    for (let c = 0; c < 3; c++) out[c] *= shade;
    cloth(x, y, out);
  };
  return { surface, span: 13.5, centre: [0.2, 0.1], turn: (hash(seed, 8) - 0.5) * 0.22, tilt: 0.08 };
}

// prisma/demo/draw-rug.ts
async function drawRug(picture, width = 1600, height = 1200) {
  const scene = sceneOf(picture);
  const quality = picture.quality ?? (picture.kind === "bad" ? "blurred" : "good");
  const pixels = expose(scene, { width, height, seed: picture.seed, kind: picture.kind, dark: quality === "dark" });
  const photo = sharp(pixels, { raw: { width, height, channels: 3 } });
  if (quality === "blurred") photo.blur(width / 190);
  return photo.jpeg({ quality: 86 }).toBuffer();
}
function sceneOf(picture) {
  const { seed, weave, colours } = picture;
  const size = { length: picture.lengthCm ?? 240, width: picture.widthCm ?? 170 };
  const asked = [picture.damage ?? []].flat();
  const damages = picture.kind === "trouble" ? asked.map((damage) => ontoRug(damage, size, seed)) : asked;
  const front = {
    design: drawDesign({ seed, weave, colours, ...size }),
    weave,
    harms: damages.map((damage) => harmOf(damage, seed, size.length, size.width))
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
function expose(scene, { width, height, seed, kind, dark }) {
  const pixels = new Uint8Array(width * height * 3);
  const out = new Float32Array(3);
  const tint = dark ? [1.12, 0.96, 0.72] : [1.02 + 0.03 * hash(seed, 12), 1, 0.95 + 0.05 * hash(seed, 13)];
  const gain = (dark ? 0.1 : 0.9) * (kind === "label" ? 0.95 : 1);
  const noise = dark ? 0.012 : 6e-3;
  const [cos, sin] = [Math.cos(scene.turn), Math.sin(scene.turn)];
  const sun = sunlight(seed, kind);
  for (let row = 0; row < height; row++) {
    const v = (row - height / 2) / width, near = 1 + scene.tilt * v;
    let window = 1;
    for (let column = 0; column < width; column++) {
      const u = (column - width / 2) / width;
      const gx = u * scene.span / near, gy = v * scene.span / near;
      scene.surface(scene.centre[0] + gx * cos - gy * sin, scene.centre[1] + gx * sin + gy * cos, out);
      if ((column & 3) === 0) window = 1.1 + sun(u, v) - 0.42 * u - 0.3 * v + 0.1 * cloud(u * 60 + seed * 7, v * 60) - 0.5 * (u * u + v * v);
      const light = gain * window, grit = noise * (speck(column, row) + speck(column * 1.7 + 31, row));
      const at = 3 * (row * width + column);
      pixels[at] = level(out[0] * light * tint[0] + grit * 0.9);
      pixels[at + 1] = level(out[1] * light * tint[1] + grit * 0.8);
      pixels[at + 2] = level(out[2] * light * tint[2] + grit);
    }
  }
  return pixels;
}
function sunlight(seed, kind) {
  if (kind !== "whole" || hash(seed, 21) < 0.45) return () => 0;
  const left = -0.42 + 0.5 * hash(seed, 22), slope = 0.35 + 0.3 * hash(seed, 23), wide = 0.13;
  return (u, v) => {
    const s = u - left - slope * (v + 0.4), pane = s / wide - Math.floor(s / wide);
    if (s < -0.02 || s > 2 * wide + 0.02) return 0;
    const bar = smooth(0.02, 0.1, pane) * smooth(0.98, 0.9, pane), sill = smooth(-0.36, -0.3, v) * smooth(0.3, 0.2, v - 0.1 * s);
    return 0.34 * bar * sill * (0.9 + 0.2 * cloud(u * 40, v * 40));
  };
}
export {
  drawRug
};
