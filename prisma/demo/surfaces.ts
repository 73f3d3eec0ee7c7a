import { cloud, grain, hash, linear, mix, smooth, speck, waver, type Rgb, type Surface } from "./canvas";
import type { Harm } from "./damage";
import type { Design, Weave } from "./design";

/** How pile takes the light. `sheen`: how much its tone follows the way it was last stroked. */
interface Pile { sheen: number; grain: number; fibre: number }
const PILES: Record<Weave, Pile> = {
  knotted: { sheen: 0.07, grain: 0.1, fibre: 0.12 },
  tufted: { sheen: 0.1, grain: 0.09, fibre: 0.16 },
  loomed: { sheen: 0.3, grain: 0.07, fibre: 0.2 },
  machine: { sheen: 0.09, grain: 0.08, fibre: 0.1 },
  flatweave: { sheen: 0, grain: 0.09, fibre: 0.08 },
};

const KINDS_OF_FLOOR = [
  { wood: ["#8a6544", "#7b5838", "#96704c"], plank: 13 },
  { wood: ["#b6936a", "#a98660", "#c09e76"], plank: 16 },
  { wood: ["#5a4433", "#4f3b2b", "#664e3a"], plank: 11 },
  { wood: ["#b9b1a4", "#aca497", "#c3bcb0"], plank: 18 },
] as const;

/** Boards: each its own tone, grain along its length, a dark joint and now and then a knot in the wood. */
export function boards(seed: number): Surface {
  const floor = KINDS_OF_FLOOR[Math.floor(hash(seed, 40) * KINDS_OF_FLOOR.length)]!;
  const tones = floor.wood.map(linear);
  return (x, y, out) => {
    const row = Math.floor(y / floor.plank), along = x + 400 * hash(row, seed);
    const plank = Math.floor(along / 150), own = hash(row * 31 + plank, seed + 5);
    const wood = tones[Math.floor(own * tones.length)]!;
    const wave = 3 * cloud(along * 0.7 + own * 300, y * 3);
    const veins = cloud(along * 1.1 + own * 900, (y + wave) * 26) * 0.16 + grain(along * 1.6, y * 34 + own * 99) * 0.06;
    const rings = 0.05 * Math.sin((y + wave * 1.6) * 5.5 + own * 40);
    const toJoint = Math.min(Math.abs(y - row * floor.plank), Math.abs(y - (row + 1) * floor.plank), Math.abs(along - plank * 150) * 0.7, Math.abs(along - (plank + 1) * 150) * 0.7);
    const light = (0.9 + 0.18 * own + veins + rings) * (0.3 + 0.7 * smooth(0.02, 0.28, toJoint));
    out[0] = wood[0] * light; out[1] = wood[1] * light; out[2] = wood[2] * light;
  };
}

/** Light on the pile seen from afar: strokes, grain, rows. */
export function shadeFar(weave: Weave, x: number, y: number): number {
  const pile = PILES[weave];
  const brushed = pile.sheen && pile.sheen * (cloud(x * 1.9, y * 1.3) + 0.55 * Math.sin(x * 0.11 + 3 * waver(y * 0.5, 90)));
  const rows = weave === "flatweave" ? 0.06 * Math.sin(y * 14) : weave === "loomed" ? 0.035 * Math.sin(x * 9.5 + cloud(x, y)) : 0;
  return 1 + brushed + rows + pile.grain * (speck(x * 4.2, y * 4.2) + 0.6 * speck(x * 9, y * 9)) + 0.05 * cloud(x * 12, y * 12);
}

/** The drawing at a place in centimetres from the rug's corner, blended between cells. */
export function yarnAt(design: Design, x: number, y: number, out: Float32Array): void {
  const fx = x / design.pitch - 0.5, fy = y / design.pitch - 0.5;
  const x0 = Math.min(design.columns - 2, Math.max(0, Math.floor(fx))), y0 = Math.min(design.rows - 2, Math.max(0, Math.floor(fy)));
  const tx = smooth(0.2, 0.8, fx - x0), ty = smooth(0.2, 0.8, fy - y0);
  const { data } = design, a = 3 * (y0 * design.columns + x0), b = a + 3 * design.columns;
  for (let c = 0; c < 3; c++) out[c] = mix(mix(data[a + c]!, data[a + 3 + c]!, tx), mix(data[b + c]!, data[b + 3 + c]!, tx), ty);
}

/** The yarn of the one cell at a place, as the back shows it. */
export function knotAt(design: Design, x: number, y: number, out: Float32Array): void {
  const column = Math.min(design.columns - 1, Math.max(0, Math.floor(x / design.pitch))), row = Math.min(design.rows - 1, Math.max(0, Math.floor(y / design.pitch)));
  const at = 3 * (row * design.columns + column);
  out[0] = design.data[at]!; out[1] = design.data[at + 1]!; out[2] = design.data[at + 2]!;
}

/** Ground of warp and weft where the pile is gone. */
const GROUND: Rgb = linear("#b9a88a");

export interface Front { design: Design; weave: Weave; harms: Harm[] }

/** The pile from afar. */
export function frontFar({ design, weave, harms }: Front): Surface {
  return (x, y, out) => {
    yarnAt(design, x, y, out);
    let bare = 0;
    for (const harm of harms) bare = Math.max(bare, harm(x, y, out));
    const light = shadeFar(weave, x, y);
    for (let c = 0; c < 3; c++) out[c] = mix(out[c]! * light, GROUND[c]! * (0.8 + 0.25 * speck(x * 6, y * 6)), bare);
  };
}

/** The pile from an arm's length: tuft by tuft, each lit on the side of the window. */
export function frontNear(front: Front): Surface {
  return front.weave === "flatweave" ? ribsNear(front) : tuftsNear(front);
}

function tuftsNear({ design, weave, harms }: Front): Surface {
  const pile = PILES[weave];
  const pitch = weave === "loomed" ? 0.3 : 0.34;
  // The tuft of the pixel before: neighbours mostly share it.
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
        if (d < near) { near = d; tx = dx; ty = dy; ci = i; cj = j; }
      }
    // A tuft has one colour and takes a stain as a whole, which is what makes an edge of a stain look like pile.
    if (ci !== lastI || cj !== lastJ) {
      lastI = ci; lastJ = cj; bare = 0;
      const mx = (ci + 0.5) * pitch, my = (cj + 0.5) * pitch * 0.9;
      yarnAt(design, mx, my, yarn);
      for (const harm of harms) bare = Math.max(bare, harm(mx, my, yarn));
    }
    const turn = hash(ci, cj + 7) * 6.28, along = x * Math.cos(turn) + y * Math.sin(turn), across = y * Math.cos(turn) - x * Math.sin(turn);
    const fibres = pile.fibre * grain(across * 34 + ci * 9, along * 7 + cj * 5);
    const brushed = pile.sheen * (cloud(x * 4, y * 3) + 0.5 * cloud(x * 11, y * 9));
    const light = (0.66 + 0.5 * smooth(0.62, 0.02, near)) * (1 - 0.22 * tx - 0.3 * ty) * (1 + fibres + brushed + 0.16 * (hash(ci + 3, cj) - 0.5));
    for (let c = 0; c < 3; c++) out[c] = yarn[c]! * light;
    if (bare > 0) ground(x, y, bare, out);
  };
}

function ribsNear({ design, harms }: Front): Surface {
  const yarn = new Float32Array(3);
  let lastRow = NaN, lastColumn = NaN;
  return (x, y, out) => {
    const wobble = 0.05 * cloud(x * 6, y * 6);
    const row = Math.floor((x + wobble) / 0.16), inRow = (x + wobble) / 0.16 - row;
    const bead = (y + wobble) / 0.42 + (row & 1 ? 0.5 : 0), column = Math.floor(bead), inBead = bead - column;
    if (row !== lastRow || column !== lastColumn) {
      lastRow = row; lastColumn = column;
      const mx = (row + 0.5) * 0.16, my = (column + 0.5 - (row & 1 ? 0.5 : 0)) * 0.42;
      yarnAt(design, mx, my, yarn);
      for (const harm of harms) harm(mx, my, yarn);
    }
    const round = Math.sqrt(Math.max(0, 1 - (2 * inRow - 1) ** 2 * 0.85)) * (0.62 + 0.38 * Math.sin(Math.PI * inBead));
    const light = (0.45 + 0.7 * round) * (1 + 0.12 * grain(x * 30, y * 11) + 0.12 * (hash(row, column) - 0.5) - 0.12 * (2 * inRow - 1));
    for (let c = 0; c < 3; c++) out[c] = yarn[c]! * light;
  };
}

/** Bare warps and wefts. */
function ground(x: number, y: number, amount: number, out: Float32Array): void {
  const weft = Math.sin(x * 26 + (Math.floor(y * 5) & 1) * Math.PI), warp = Math.sin(y * 15.7);
  const light = (0.62 + 0.2 * weft * Math.abs(warp) + 0.16 * warp) * (1 + 0.15 * grain(x * 30, y * 30)) * (1 - 0.6 * smooth(0.95, 0.3, amount));
  for (let c = 0; c < 3; c++) out[c] = mix(out[c]!, GROUND[c]! * light, smooth(0.15, 0.5, amount));
}

/** The back: two small beads of yarn a knot, in rows parted by the weft; pattern as clear as print. */
export function back(design: Design, weave: Weave): Surface {
  const cloth = linear("#b3a58c");
  const beadX = 0.2, beadY = 0.16;
  return (x, y, out) => {
    if (weave === "tufted") {
      const light = 0.86 + 0.1 * Math.sin(x * 38) * Math.sin(y * 38) + 0.07 * grain(x * 22, y * 5) + 0.06 * cloud(x * 5, y * 5);
      for (let c = 0; c < 3; c++) out[c] = cloth[c]! * light;
      return;
    }
    const wx = x + 0.03 * cloud(x * 10, y * 10), wy = y + 0.03 * cloud(x * 10 + 90, y * 10);
    const i = Math.floor(wx / beadX), j = Math.floor(wy / beadY);
    const dx = wx / beadX - i - 0.5, dy = wy / beadY - j - 0.5;
    knotAt(design, (i + 0.5) * beadX, (j + 0.5) * beadY, out);
    const bead = Math.max(0, 1 - (dx * dx * 4.6 + dy * dy * 3.4));
    const light = (0.34 + 0.86 * Math.sqrt(bead)) * (1 - 0.3 * dx - 0.5 * dy) * (1 + 0.14 * grain(x * 42 + dy * 8, y * 30) + 0.16 * (hash(i, j) - 0.5));
    const weft = smooth(0.3, 0.05, bead) * 0.55;
    for (let c = 0; c < 3; c++) out[c] = mix(out[c]! * light, cloth[c]! * 0.42, weft);
  };
}
