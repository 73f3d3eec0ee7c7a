import { turnOf, type Point } from "./homography";

/** A closed outline, in any one unit; the last point joins the first. At least three points; either way round. */
export type Polygon = readonly Point[];
export interface Box { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number }

/** Area by the shoelace formula, in the unit squared. Of an outline that crosses itself, the loops count against each other. */
export const areaOf = (polygon: Polygon): number =>
  Math.abs(polygon.reduce((sum, p, i) => { const q = polygon[(i + 1) % polygon.length] as Point; return sum + p.x * q.y - q.x * p.y; }, 0)) / 2;

/**
 * Area that outlines cover together, each place once: rows of `step` units, in each the stretches inside any of them.
 * Out by no more than a fraction of the step times the outlines' length.
 */
export function coveredArea(polygons: readonly Polygon[], step: number): number {
  const boxes = polygons.map(boxOf);
  const [top, bottom] = [Math.min(...boxes.map((b) => b.top)), Math.max(...boxes.map((b) => b.bottom))];
  let area = 0;
  for (let y = top + step / 2; y < bottom; y += step) {
    const inside = polygons.flatMap((p) => { const cuts = crossings(p, y); return cuts.flatMap((x, i) => (i % 2 === 0 ? [[x, cuts[i + 1] as number] as const] : [])); });
    let reached = -Infinity;
    for (const [from, to] of inside.sort(([a], [b]) => a - b)) {
      area += Math.max(0, to - Math.max(from, reached)) * step;
      reached = Math.max(reached, to);
    }
  }
  return area;
}

export const boxOf = (polygon: Polygon): Box => ({
  left: Math.min(...polygon.map((p) => p.x)), top: Math.min(...polygon.map((p) => p.y)),
  right: Math.max(...polygon.map((p) => p.x)), bottom: Math.max(...polygon.map((p) => p.y)),
});

/** True where two sides that do not meet cross each other: such an outline has no area one could mean. */
export function crossesItself(polygon: Polygon): boolean {
  const n = polygon.length;
  const side = (i: number) => [polygon[i] as Point, polygon[(i + 1) % n] as Point] as const;
  for (let i = 0; i < n; i++)
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue;
      const [a, b] = side(i), [c, d] = side(j);
      if (turnOf(a, b, c) * turnOf(a, b, d) < 0 && turnOf(c, d, a) * turnOf(c, d, b) < 0) return true;
    }
  return false;
}

/** Of a cell: what lies this near to a line between cells lies on it. */
const ON_LINE = 1e-9;

/**
 * Marks `1` in `grid` (row by row, `columns` wide, cells of `cell` units from the origin) each cell that a polygon covers
 * in part: one of its sides runs through the cell, or the cell's middle lies inside. What only touches an edge does not count.
 */
export function markCells(grid: Uint8Array, { columns, rows, cell }: { columns: number; rows: number; cell: number }, polygon: Polygon): void {
  const mark = (row: number, low: number, high: number) => {
    const from = Math.max(0, Math.floor(low + ON_LINE)), to = Math.min(columns, Math.ceil(high - ON_LINE));
    if (from < to) grid.fill(1, row * columns + from, row * columns + to);
  };
  const scaled = polygon.map((p) => ({ x: p.x / cell, y: p.y / cell }));
  scaled.forEach((p, i) => {
    const q = scaled[(i + 1) % scaled.length] as Point;
    const [top, bottom] = [Math.max(0, Math.min(p.y, q.y)), Math.min(rows, Math.max(p.y, q.y))];
    for (let row = Math.floor(top + ON_LINE); row < Math.ceil(bottom - ON_LINE); row++) {
      const at = (y: number) => p.x + ((y - p.y) * (q.x - p.x)) / (q.y - p.y);
      const ends = [at(Math.max(row, top)), at(Math.min(row + 1, bottom))] as const;
      mark(row, Math.min(...ends), Math.max(...ends));
    }
  });
  for (let row = 0; row < rows; row++) {
    const cuts = crossings(scaled, row + 0.5);
    // From the first middle inside to the last.
    for (let i = 0; i + 1 < cuts.length; i += 2) mark(row, Math.ceil((cuts[i] as number) - 0.5), Math.floor((cuts[i + 1] as number) + 0.5));
  }
}

/** Where a horizontal line meets the sides, from left to right. */
function crossings(polygon: Polygon, y: number): number[] {
  return polygon.flatMap((p, i) => {
    const q = polygon[(i + 1) % polygon.length] as Point;
    return p.y <= y === q.y <= y ? [] : [p.x + ((y - p.y) * (q.x - p.x)) / (q.y - p.y)];
  }).sort((a, b) => a - b);
}
