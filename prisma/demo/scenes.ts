import { clamp, cloud, grain, hash, linear, mix, smooth, speck, waver, type Surface } from "./canvas";
import type { Damage } from "./damage";
import { back, boards, frontFar, frontNear, knotAt, type Front } from "./surfaces";
import { labelCloth } from "./label";

/** A camera over the floor: `span` centimetres are seen across the middle of the picture. */
export interface Scene { surface: Surface; span: number; centre: [number, number]; turn: number; tilt: number }

interface Size { length: number; width: number }

/** The rug on its floor with some room around it, its shadow, its fringe. The rug's corner is (0, 0). */
export function wholeRug(front: Front, { length, width }: Size, seed: number): Scene {
  const floor = boards(seed), pile = frontFar(front);
  const fringe = front.weave === "knotted" || (front.weave === "flatweave" && seed % 3 > 0) ? 5.5 : 0;
  const yarn = linear("#d9cdb4");
  const surface: Surface = (x, y, out) => {
    const wx = x + 0.5 * waver(y * 1.7 + seed, 3), wy = y + 0.6 * waver(x * 1.3 + seed, 5);
    const outX = Math.max(-wx, wx - length), outY = Math.max(-wy, wy - width), outside = Math.max(outX, outY);
    if (outside < 0) {
      pile(wx, wy, out);
      const edge = 0.78 + 0.22 * smooth(0, -0.9, outside);
      out[0]! *= edge; out[1]! *= edge; out[2]! *= edge;
      return;
    }
    floor(x, y, out);
    const d = outX <= 0 ? outY : outY <= 0 ? outX : Math.sqrt(outX * outX + outY * outY);
    const low = wx > length || wy > width ? 1 : 0.55; // the window is at the upper left
    if (d < 30) {
      const shade = 1 - (0.5 * Math.exp(-d / 0.9) + 0.26 * Math.exp(-d / 5)) * low;
      out[0]! *= shade; out[1]! *= shade; out[2]! *= shade;
    }
    if (outX > -0.1 && outX < fringe && outY < 0.3) threads(outX, wy, outX === -wx ? 1 : 2, yarn, out);
  };
  // A runner lies across the picture's corners, or there would be more floor than rug.
  const runner = width < 0.45 * length;
  const turn = runner ? (hash(seed, 2) < 0.5 ? -0.42 : 0.42) : (hash(seed, 2) - 0.5) * 0.07;
  return { surface, span: length * (runner ? 1.08 : 1.24) + 2 * fringe, centre: [length / 2 + 3 * (hash(seed, 1) - 0.5), width / 2], turn, tilt: 0.22 + 0.12 * hash(seed, 4) };
}

/** Loose warp ends, two or three together, each falling its own way. */
function threads(outX: number, y: number, end: number, yarn: number[], out: Float32Array): void {
  for (let layer = 0; layer < 2; layer++) {
    const drift = outX * (0.22 * cloud(end * 90, y * 6 + layer * 40) + 0.1 * Math.sin(y * 1.7 + layer));
    const at = (y + drift) / 0.5 + layer * 0.5, k = Math.floor(at);
    const far = 4.4 + 1.6 * (hash(k, end + layer * 7) - 0.3);
    if (outX > far) continue;
    const across = Math.abs(at - k - 0.5 + 0.18 * (hash(k, 3) - 0.5)) * 2;
    const cover = smooth(0.85, 0.4, across + 0.5 * smooth(far - 1.2, far, outX));
    const light = (0.62 + 0.35 * (1 - across) + 0.2 * (hash(k + end, layer) - 0.5) + 0.1 * grain(outX * 7, y * 20)) * (layer ? 1 : 0.72);
    for (let c = 0; c < 3; c++) out[c] = mix(out[c]!, yarn[c]! * light, cover);
  }
}

/** Centimetres across a photo of the trouble. */
const NEAR_SPAN = 48;

/** Where on the rug the photo of the trouble is taken, centimetres from its corner. */
const nearPlace = ({ length, width }: Size, seed: number): [number, number] => [
  clamp(length * mix(0.2, 0.45, hash(seed, 51)), Math.min(NEAR_SPAN * 0.55, length / 2), length / 2),
  clamp(width * mix(0.3, 0.6, hash(seed, 52)), Math.min(NEAR_SPAN * 0.42, width / 2), width - Math.min(NEAR_SPAN * 0.42, width / 2)),
];

/** What fills the picture as (x, y, r) in shares of it, as the same place on the rug in shares of the rug. */
export function ontoRug(damage: Damage, size: Size, seed: number): Damage {
  const [x, y] = nearPlace(size, seed);
  return { ...damage, x: (x + (damage.x - 0.5) * NEAR_SPAN) / size.length, y: (y + (damage.y - 0.5) * NEAR_SPAN * 0.75) / size.width, r: (damage.r * 0.7 * NEAR_SPAN) / size.width };
}

/** One place from an arm's length, with untouched rug around it. */
export function trouble(front: Front, size: Size, seed: number): Scene {
  return { surface: frontNear(front), span: NEAR_SPAN, centre: nearPlace(size, seed), turn: (hash(seed, 8) - 0.5) * 0.4, tilt: 0.14 };
}

/** A corner folded over: floor where it lay, the back of it on top of the front, a shadow under it. */
export function foldedCorner(front: Front, seed: number): Scene {
  const floor = boards(seed), face = frontNear(front), reverse = back(front.design, front.weave);
  const fold = 27;
  const surface: Surface = (x, y, out) => {
    const sum = x + y, bend = 0.5 * cloud((x - y) * 3, 9);
    if (sum < fold + bend) {
      floor(x, y, out);
      const d = Math.min(Math.max(0, fold - sum) / 1.41, 99);
      const shade = 1 - 0.45 * Math.exp(-d / 1.6);
      out[0]! *= shade; out[1]! *= shade; out[2]! *= shade;
      return;
    }
    const rx = fold - y, ry = fold - x; // where this place of the flap lies when unfolded
    if (rx > -0.2 + 0.1 * cloud(3, ry * 8) && ry > -0.2 + 0.1 * cloud(rx * 8, 3)) {
      reverse(Math.max(0, rx), Math.max(0, ry), out);
      const across = (sum - fold) / 1.41;
      const roll = 0.62 + 0.5 * smooth(0, 1.6, across) - 0.14 * smooth(1.6, 9, across);
      const selvedge = 1 - 0.35 * smooth(0.7, 0.1, Math.min(rx, ry));
      for (let c = 0; c < 3; c++) out[c]! *= roll * selvedge;
      return;
    }
    if (x < 0 || y < 0) { floor(x, y, out); return; }
    face(x, y, out);
    const away = Math.max(0, -rx, -ry);
    const shade = 1 - 0.62 * Math.exp(-away / 1.3) - 0.12 * Math.exp(-away / 6);
    for (let c = 0; c < 3; c++) out[c]! *= shade;
  };
  return { surface, span: 40, centre: [19, 19], turn: (hash(seed, 8) - 0.5) * 0.2, tilt: 0.1 };
}

/** Pile parted down to its ground, as close as a phone stays sharp. */
export function partedPile(front: Front, { length, width }: Size, seed: number): Scene {
  const base: [number, number] = [length * (0.3 + 0.2 * hash(seed, 5)), width * (0.3 + 0.2 * hash(seed, 6))];
  const shiny = front.weave === "loomed" ? 1 : 0.25;
  const ground = linear("#c4b496");
  const surface: Surface = (x, y, out) => {
    const parting = 0.5 * cloud(x * 9 + seed, 4) + 0.12 * cloud(x * 40, 8);
    const side = y > parting ? 1 : -1, d = Math.abs(y - parting) - 0.15;
    // Single hairs fall across the parting.
    if (d + 0.13 * Math.max(0, grain(x * 38, 17 * side)) + 0.06 * grain(x * 95, 29 * side) < 0) {
      const weave = 0.5 + 0.25 * Math.sin(x * 34) + 0.2 * Math.sin(y * 60 + (Math.floor(x * 5.4) & 1) * 3.1);
      for (let c = 0; c < 3; c++) out[c] = ground[c]! * weave * (0.12 + 0.5 * smooth(0.02, -0.14, d));
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
    for (let c = 0; c < 3; c++) out[c] = out[c]! * light + gloss * light * (0.1 + 0.4 * out[c]!);
  };
  return { surface, span: 9, centre: [40, 0.3], turn: (hash(seed, 8) - 0.5) * 0.3, tilt: 0.05 };
}

/** A cloth label sewn under a corner. */
export function label(front: Front, text: string, seed: number): Scene {
  const reverse = back(front.design, front.weave), cloth = labelCloth(text, seed);
  const surface: Surface = (x, y, out) => {
    reverse(x + 60, y + 40, out);
    const shade = 0.86 + 0.1 * cloud(x * 5, y * 5);
    for (let c = 0; c < 3; c++) out[c]! *= shade;
    cloth(x, y, out);
  };
  return { surface, span: 13.5, centre: [0.2, 0.1], turn: (hash(seed, 8) - 0.5) * 0.22, tilt: 0.08 };
}
