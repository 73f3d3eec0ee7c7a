import type { Rgb } from "../strip";
import { greyOf, mean, withoutStrokes, type Grey } from "./grey";
import type { Turned } from "./turned";

/**
 * Where a label may lie in a photo of a rug: an even, four-sided patch with dark strokes on it. All numbers elicited on
 * drawn photos brought to FIND_SIDE pixels.
 */
export const FIND_SIDE = 480;
/** Strokes up to about twice this many pixels wide are taken for print. */
const STROKE = 4;
/** Levels between neighbours within one patch. */
const EVEN = 5;
/** Of the picture: smaller holds no words that could be read, larger is the picture itself. */
const LEAST_SHARE = 0.002, MOST_SHARE = 0.97;
/** Of its smallest rectangle, what a patch must fill to count as four-sided. */
const LEAST_FILLED = 0.72;
/** Of the patch, how much is print: none is bare cloth, more is pattern. */
const LEAST_PRINT = 0.015, MOST_PRINT = 0.45;
/** A patch that reaches so many edges of the photo is the rug, or a label that fills the photo: it is looked at last. */
const MOST_EDGES = 3;
const MOST_PLACES = 5;
/**
 * Darker than the cloth by less than this share is smooth: pile and weave are so hardly anywhere, cloth between letters nearly
 * everywhere. How much that counts beside size.
 */
const SMOOTH = 0.07, SMOOTH_COUNTS = 3, SIZE_COUNTS = 0.25;

type Place = readonly [x: number, y: number];

/** Up to five places, the likeliest first, in pixels of the picture; turned by at most 45 degrees either way. */
export function findLabels(picture: Rgb): Turned[] {
  const grey = greyOf(picture);
  const bare = mean(withoutStrokes(mean(grey, 1), STROKE), 1);
  const area = grey.width * grey.height;
  const found = patches(bare).filter((p) => p.length >= LEAST_SHARE * area && p.length <= MOST_SHARE * area).flatMap((pixels) => {
    const around = smallestRectangle(pixels, grey.width);
    const filled = pixels.length / Math.max(1, around.width * around.height);
    const print = pixels.filter((i) => bare.data[i]! - grey.data[i]! > Math.max(10, 0.12 * bare.data[i]!)).length / pixels.length;
    if (filled < LEAST_FILLED || print < LEAST_PRINT || print > MOST_PRINT) return [];
    const smooth = pixels.filter((i) => bare.data[i]! - grey.data[i]! < SMOOTH * bare.data[i]!).length / pixels.length;
    return [{ place: around, isCut: edgesTouched(pixels, grey) >= MOST_EDGES, score: filled * smooth ** SMOOTH_COUNTS * (pixels.length / area) ** SIZE_COUNTS }];
  });
  return found.sort((a, b) => Number(a.isCut) - Number(b.isCut) || b.score - a.score).slice(0, MOST_PLACES).map((f) => f.place);
}

function edgesTouched(pixels: readonly number[], { width, height }: Grey): number {
  const touches = [(x: number) => x <= 1, (x: number) => x >= width - 2, (_: number, y: number) => y <= 1, (_: number, y: number) => y >= height - 2];
  return touches.filter((at) => pixels.some((i) => at(i % width, Math.floor(i / width)))).length;
}

/** Pixels that hang together without a step in light, as indexes. */
function patches({ data, width, height }: Grey): number[][] {
  const step = (i: number) => {
    const x = i % width, y = (i - x) / width;
    const [left, right] = [data[i - (x > 0 ? 1 : 0)]!, data[i + (x < width - 1 ? 1 : 0)]!];
    const [up, down] = [data[i - (y > 0 ? width : 0)]!, data[i + (y < height - 1 ? width : 0)]!];
    return Math.max(Math.abs(right - left), Math.abs(down - up));
  };
  const even = Uint8Array.from(data, (_, i) => (step(i) < 2 * EVEN ? 1 : 0));
  const all: number[][] = [];
  for (let start = 0; start < even.length; start++) {
    if (!even[start]) continue;
    even[start] = 0;
    const patch = [start];
    for (const i of patch)
      for (const [dx, dy] of [[-1, 0], [1, 0], [0, -1], [0, 1]] as const) {
        const x = (i % width) + dx, j = i + dx + dy * width;
        if (x < 0 || x >= width || j < 0 || j >= even.length || !even[j]) continue;
        even[j] = 0;
        patch.push(j);
      }
    all.push(patch);
  }
  return all;
}

/** Rotating calipers over the convex hull: one side of the smallest rectangle lies on a side of the hull (Freeman & Shapira 1975). */
function smallestRectangle(pixels: readonly number[], width: number): Turned {
  const hull = convexHull(rowEnds(pixels, width));
  let best: Turned | null = null;
  hull.forEach(([x0, y0], i) => {
    const [x1, y1] = hull[(i + 1) % hull.length]!;
    const around = rectangleAlong(hull, Math.atan2(y1 - y0, x1 - x0));
    if (!best || around.width * around.height < best.width * best.height) best = around;
  });
  return best ?? rectangleAlong(hull, 0);
}

/** The first and last pixel of every row: all that a hull needs. */
function rowEnds(pixels: readonly number[], width: number): Place[] {
  const ends = new Map<number, [number, number]>();
  for (const i of pixels) {
    const x = i % width, y = Math.floor(i / width);
    const known = ends.get(y);
    ends.set(y, known ? [Math.min(known[0], x), Math.max(known[1], x)] : [x, x]);
  }
  return [...ends].flatMap(([y, [from, to]]) => [[from, y], [to + 1, y], [from, y + 1], [to + 1, y + 1]] as Place[]);
}

/** Andrew's monotone chain. */
function convexHull(places: readonly Place[]): Place[] {
  const sorted = [...places].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (points: readonly Place[]) => {
    const chain: Place[] = [];
    for (const p of points) {
      while (chain.length > 1 && turn(chain.at(-2)!, chain.at(-1)!, p) <= 0) chain.pop();
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}
const turn = (a: Place, b: Place, c: Place): number => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

function rectangleAlong(hull: readonly Place[], angle: number): Turned {
  const quarter = Math.PI / 2;
  const along = angle - Math.round(angle / quarter) * quarter;
  const cos = Math.cos(along), sin = Math.sin(along);
  const us = hull.map(([x, y]) => x * cos + y * sin), vs = hull.map(([x, y]) => y * cos - x * sin);
  const [u0, u1, v0, v1] = [Math.min(...us), Math.max(...us), Math.min(...vs), Math.max(...vs)];
  const [u, v] = [(u0 + u1) / 2, (v0 + v1) / 2];
  return { x: u * cos - v * sin, y: u * sin + v * cos, width: u1 - u0, height: v1 - v0, degrees: (along * 180) / Math.PI };
}
