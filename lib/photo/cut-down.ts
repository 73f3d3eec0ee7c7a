import type { Plan } from "./plan";
import { markCells, type Box, type Polygon } from "./polygon";

/**
 * What can be kept of a rug when its damaged places are cut away: rectangles along warp and weft, in whole centimetres.
 * Geometry only; what cutting needs and costs is said by whoever calls.
 */
export const CUT_KINDS = ["edge-off", "equal-ends", "split-in-two", "smaller-rectangle"] as const;
/**
 * `edge-off` one side goes, whole · `equal-ends` the same strip goes from two opposite sides, so that the pattern stays
 * even · `split-in-two` the damaged band goes and two rugs remain · `smaller-rectangle` the largest sound rectangle.
 */
export type CutKind = (typeof CUT_KINDS)[number];

export interface CutDown {
  readonly kind: CutKind;
  /** One piece, or two; in cm on the plan. */
  readonly pieces: readonly Box[];
  readonly areaKeptCm2: number;
  /** Of the whole rug, 0 to 1. */
  readonly shareKept: number;
  /** New edges to be bound, in cm, without any allowance. */
  readonly newEdgesCm: readonly number[];
  /** Metres of binding: the new edges, each with the turn at its ends. */
  readonly bindingM: number;
}

export interface CutWishes {
  /** Added to every new edge, in cm. */
  readonly turnCm: number;
  /** The least side of a piece that is still a rug to its owner, in cm. */
  readonly leastSideCm: number;
}

/** Side of a cell, in cm; a piece keeps clear of every cell that damage touches. */
export const CELL_CM = 1;

/** All ways that leave a piece of use, the one that keeps most first; of one kind only the best. Empty where nothing of use remains. */
export function cutDowns(plan: Pick<Plan, "widthCm" | "lengthCm">, damaged: readonly Polygon[], wishes: CutWishes): CutDown[] {
  const grid = gridOf(plan, damaged);
  if (!grid) return [];
  const { hit } = grid;
  const found: [CutKind, Box[]][] = [
    ...edgesOff(grid, hit).map((b): [CutKind, Box[]] => ["edge-off", [b]]),
    ...equalEnds(grid, hit).map((b): [CutKind, Box[]] => ["equal-ends", [b]]),
    ...splits(grid, hit).map((b): [CutKind, Box[]] => ["split-in-two", b]),
    ["smaller-rectangle", [largestSound(grid)]],
  ];
  const whole = { left: 0, top: 0, right: grid.columns, bottom: grid.rows };
  const ways = found
    .filter(([, pieces]) => pieces.every((p) => Math.min(p.right - p.left, p.bottom - p.top) * CELL_CM >= wishes.leastSideCm))
    .map(([kind, pieces]) => wayOf(kind, { pieces, whole, turnCm: wishes.turnCm }));
  const best = CUT_KINDS.flatMap((kind) => ways.filter((w) => w.kind === kind).sort(byKept)[0] ?? []);
  return best.filter((w, i) => !best.slice(0, i).some((v) => same(v.pieces, w.pieces))).sort(byKept);
}

const byKept = (a: CutDown, b: CutDown) => b.areaKeptCm2 - a.areaKeptCm2 || a.bindingM - b.bindingM;
const same = (a: readonly Box[], b: readonly Box[]) => JSON.stringify(a) === JSON.stringify(b);

interface Grid { readonly columns: number; readonly rows: number; readonly cells: Uint8Array; /** The smallest box round all that is hit. */ readonly hit: Box }

function gridOf({ widthCm, lengthCm }: Pick<Plan, "widthCm" | "lengthCm">, damaged: readonly Polygon[]): Grid | null {
  const [columns, rows] = [Math.floor(widthCm / CELL_CM), Math.floor(lengthCm / CELL_CM)];
  const cells = new Uint8Array(columns * rows);
  for (const polygon of damaged) markCells(cells, { columns, rows, cell: CELL_CM }, polygon);
  let [left, top, right, bottom] = [columns, rows, 0, 0];
  cells.forEach((hit, i) => {
    if (hit === 0) return;
    const [x, y] = [i % columns, Math.floor(i / columns)];
    left = Math.min(left, x); right = Math.max(right, x + 1); top = Math.min(top, y); bottom = Math.max(bottom, y + 1);
  });
  return right > 0 ? { columns, rows, cells, hit: { left, top, right, bottom } } : null;
}

const edgesOff = ({ columns, rows }: Grid, hit: Box): Box[] => [
  { left: hit.right, top: 0, right: columns, bottom: rows }, { left: 0, top: 0, right: hit.left, bottom: rows },
  { left: 0, top: hit.bottom, right: columns, bottom: rows }, { left: 0, top: 0, right: columns, bottom: hit.top },
];

/** Equal strips go from both ends; only where the damage does not reach past the middle. */
function equalEnds({ columns, rows }: Grid, hit: Box): Box[] {
  const across = Math.min(hit.right, columns - hit.left), along = Math.min(hit.bottom, rows - hit.top);
  return [
    ...(2 * across < columns ? [{ left: across, top: 0, right: columns - across, bottom: rows }] : []),
    ...(2 * along < rows ? [{ left: 0, top: along, right: columns, bottom: rows - along }] : []),
  ];
}

const splits = ({ columns, rows }: Grid, hit: Box): Box[][] => [
  [{ left: 0, top: 0, right: hit.left, bottom: rows }, { left: hit.right, top: 0, right: columns, bottom: rows }],
  [{ left: 0, top: 0, right: columns, bottom: hit.top }, { left: 0, top: hit.bottom, right: columns, bottom: rows }],
];

/**
 * The largest rectangle of sound cells, by the histogram of sound cells above each row and a stack of rising heights: one
 * step a cell (Morgan 1994, Programming from Specifications, from memory). Of equal ones the first met.
 */
export function largestSound({ columns, rows, cells }: Pick<Grid, "columns" | "rows" | "cells">): Box {
  const heights = new Int32Array(columns + 1);
  const stack = new Int32Array(columns + 1);
  let best: Box = { left: 0, top: 0, right: 0, bottom: 0 }, most = 0;
  for (let y = 0; y < rows; y++) {
    let depth = 0;
    for (let x = 0; x <= columns; x++) {
      const height = x === columns ? 0 : (heights[x] = cells[y * columns + x] === 0 ? (heights[x] as number) + 1 : 0);
      while (depth > 0 && (heights[stack[depth - 1] as number] as number) >= height) {
        const tall = heights[stack[--depth] as number] as number;
        const left = depth > 0 ? (stack[depth - 1] as number) + 1 : 0;
        if (tall * (x - left) > most) {
          most = tall * (x - left);
          best = { left, top: y + 1 - tall, right: x, bottom: y + 1 };
        }
      }
      stack[depth++] = x;
    }
  }
  return best;
}

function wayOf(kind: CutKind, { pieces, whole, turnCm }: { pieces: readonly Box[]; whole: Box; turnCm: number }): CutDown {
  const areaOfBox = (b: Box) => (b.right - b.left) * (b.bottom - b.top) * CELL_CM ** 2;
  const newEdgesCm = pieces.flatMap((p) => [
    ...(p.top > whole.top ? [p.right - p.left] : []), ...(p.bottom < whole.bottom ? [p.right - p.left] : []),
    ...(p.left > whole.left ? [p.bottom - p.top] : []), ...(p.right < whole.right ? [p.bottom - p.top] : []),
  ]).map((cells) => cells * CELL_CM);
  const areaKeptCm2 = pieces.reduce((sum, p) => sum + areaOfBox(p), 0);
  return {
    kind, pieces, areaKeptCm2, shareKept: areaKeptCm2 / areaOfBox(whole), newEdgesCm,
    bindingM: newEdgesCm.reduce((sum, cm) => sum + cm + turnCm, 0) / 100,
  };
}
