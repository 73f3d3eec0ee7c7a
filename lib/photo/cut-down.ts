import { CELL_CM, gridOf, largestCentred, largestKeepingBorders, type Grid } from "./cut-grid";
import type { Plan } from "./plan";
import type { Box, Polygon } from "./polygon";

/**
 * What can be kept of a rug when its damaged places are cut away: rectangles along warp and weft, in whole centimetres.
 * Geometry only; what cutting needs and costs is said by whoever calls.
 */
export const CUT_KINDS = ["edge-off", "equal-ends", "split-in-two", "smaller-rectangle", "centred"] as const;
/**
 * `edge-off` one side goes, whole · `equal-ends` the same strip goes from two opposite sides, so that the pattern stays
 * even · `split-in-two` the damaged band goes and two rugs remain · `smaller-rectangle` the largest sound rectangle ·
 * `centred` the largest about the middle of the rug.
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
  /** Width of the border all round, in cm; 0 where none is to be kept. No cut runs lengthwise inside it: a side keeps its border whole or loses it whole. */
  readonly borderCm: number;
  /** Only ways that leave the pattern even: equal strips, a rectangle about the middle, two equal pieces. */
  readonly isSymmetric: boolean;
}

/** All ways that leave a piece of use, the one that keeps most first; of one kind only the best. Empty where nothing of use remains. */
export function cutDowns(plan: Pick<Plan, "widthCm" | "lengthCm">, damaged: readonly Polygon[], wishes: CutWishes): CutDown[] {
  const grid = gridOf(plan, damaged);
  if (!grid) return [];
  const border = Math.ceil(wishes.borderCm / CELL_CM);
  const whole = { left: 0, top: 0, right: grid.columns, bottom: grid.rows };
  const ways = (wishes.isSymmetric ? evenWays(grid, border) : anyWays(grid, border))
    .map(([kind, pieces]) => [kind, pieces.map((p) => clearOfBorders(p, whole, border))] as const)
    .filter(([, pieces]) => pieces.every((p) => Math.min(p.right - p.left, p.bottom - p.top) * CELL_CM >= wishes.leastSideCm))
    .map(([kind, pieces]) => wayOf(kind, { pieces, whole, turnCm: wishes.turnCm }));
  const best = CUT_KINDS.flatMap((kind) => ways.filter((w) => w.kind === kind).sort(byKept)[0] ?? []);
  return best.filter((w, i) => !best.slice(0, i).some((v) => same(v.pieces, w.pieces))).sort(byKept);
}

type Way = readonly [CutKind, Box[]];

const anyWays = (grid: Grid, border: number): Way[] => [
  ...edgesOff(grid).map((b): Way => ["edge-off", [b]]),
  ...equalEnds(grid).map((b): Way => ["equal-ends", [b]]),
  ...splits(grid).map((b): Way => ["split-in-two", b]),
  ["smaller-rectangle", [largestKeepingBorders(grid, border)]],
];

function evenWays(grid: Grid, border: number): Way[] {
  const centred = largestCentred(grid, border);
  return [
    ...equalEnds(grid).map((b): Way => ["equal-ends", [b]]),
    ...equalHalves(grid).map((b): Way => ["split-in-two", b]),
    ...(centred ? [["centred", [centred]] satisfies Way] : []),
  ];
}

const byKept = (a: CutDown, b: CutDown) => b.areaKeptCm2 - a.areaKeptCm2 || a.bindingM - b.bindingM;
const same = (a: readonly Box[], b: readonly Box[]) => JSON.stringify(a) === JSON.stringify(b);

/** A cut inside a border moves to where the border ends; what would be left of a border alone is no piece. */
function clearOfBorders(p: Box, whole: Box, border: number): Box {
  const start = (at: number, end: number) => (at > 0 && at < border ? border : at < end && at > end - border ? end : at);
  const stop = (at: number, end: number) => (at < end && at > end - border ? end - border : at > 0 && at < border ? 0 : at);
  return { left: start(p.left, whole.right), right: stop(p.right, whole.right), top: start(p.top, whole.bottom), bottom: stop(p.bottom, whole.bottom) };
}

const edgesOff = ({ columns, rows, hit }: Grid): Box[] => [
  { left: hit.right, top: 0, right: columns, bottom: rows }, { left: 0, top: 0, right: hit.left, bottom: rows },
  { left: 0, top: hit.bottom, right: columns, bottom: rows }, { left: 0, top: 0, right: columns, bottom: hit.top },
];

/** Equal strips go from both ends; only where the damage does not reach past the middle. */
function equalEnds({ columns, rows, hit }: Grid): Box[] {
  const across = Math.min(hit.right, columns - hit.left), along = Math.min(hit.bottom, rows - hit.top);
  return [
    ...(2 * across < columns ? [{ left: across, top: 0, right: columns - across, bottom: rows }] : []),
    ...(2 * along < rows ? [{ left: 0, top: along, right: columns, bottom: rows - along }] : []),
  ];
}

const splits = ({ columns, rows, hit }: Grid): Box[][] => [
  [{ left: 0, top: 0, right: hit.left, bottom: rows }, { left: hit.right, top: 0, right: columns, bottom: rows }],
  [{ left: 0, top: 0, right: columns, bottom: hit.top }, { left: 0, top: hit.bottom, right: columns, bottom: rows }],
];

/** Two pieces of one size, one from each end. */
function equalHalves({ columns, rows, hit }: Grid): Box[][] {
  const across = Math.min(hit.left, columns - hit.right), along = Math.min(hit.top, rows - hit.bottom);
  return [
    [{ left: 0, top: 0, right: across, bottom: rows }, { left: columns - across, top: 0, right: columns, bottom: rows }],
    [{ left: 0, top: 0, right: columns, bottom: along }, { left: 0, top: rows - along, right: columns, bottom: rows }],
  ];
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
