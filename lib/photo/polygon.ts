import { turnOf, type Point } from "./homography";

/** A closed outline, in any one unit; the last point joins the first. At least three points; either way round. */
export type Polygon = readonly Point[];
export interface Box { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number }

/** Area by the shoelace formula, in the unit squared. Of an outline that crosses itself, the loops count against each other. */
export const areaOf = (polygon: Polygon): number =>
  Math.abs(polygon.reduce((sum, p, i) => { const q = polygon[(i + 1) % polygon.length] as Point; return sum + p.x * q.y - q.x * p.y; }, 0)) / 2;

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

/**
 * Which cells of a grid a polygon touches with more than an edge, by even–odd rows at `steps` heights a cell and by its
 * own sides. Marks `1` in `grid` (row by row, `columns` wide, cells of `cell` units from the origin).
 */
export function markCells(grid: Uint8Array, { columns, rows, cell }: { columns: number; rows: number; cell: number }, polygon: Polygon): void {
  const steps = 4;
  for (let row = 0; row < rows; row++)
    for (let k = 0; k < steps; k++) {
      const y = (row + (k + 0.5) / steps) * cell;
      const cuts = crossings(polygon, y);
      for (let i = 0; i + 1 < cuts.length; i += 2) {
        const from = Math.max(0, Math.floor((cuts[i] as number) / cell));
        const to = Math.min(columns - 1, Math.ceil((cuts[i + 1] as number) / cell) - 1);
        if (from <= to) grid.fill(1, row * columns + from, row * columns + to + 1);
      }
    }
  markCorners(grid, { columns, rows, cell }, polygon);
}

/** A corner may poke into a cell between two heights: the cell just inside the corner counts. */
function markCorners(grid: Uint8Array, { columns, rows, cell }: { columns: number; rows: number; cell: number }, polygon: Polygon): void {
  polygon.forEach((p, i) => {
    const { x, y } = justInside(p, polygon[(i + polygon.length - 1) % polygon.length] as Point, polygon[(i + 1) % polygon.length] as Point);
    const column = Math.floor(x / cell), row = Math.floor(y / cell);
    if (column >= 0 && column < columns && row >= 0 && row < rows) grid[row * columns + column] = 1;
  });
}

/** A point a hair's breadth from a corner, between its two sides. */
function justInside(corner: Point, before: Point, after: Point): Point {
  const towards = (to: Point) => { const far = Math.hypot(to.x - corner.x, to.y - corner.y) || 1; return { x: (to.x - corner.x) / far, y: (to.y - corner.y) / far }; };
  const [p, q] = [towards(before), towards(after)];
  return { x: corner.x + 1e-6 * (p.x + q.x), y: corner.y + 1e-6 * (p.y + q.y) };
}

/** Where a horizontal line meets the sides, from left to right. */
function crossings(polygon: Polygon, y: number): number[] {
  return polygon.flatMap((p, i) => {
    const q = polygon[(i + 1) % polygon.length] as Point;
    return p.y <= y === q.y <= y ? [] : [p.x + ((y - p.y) * (q.x - p.x)) / (q.y - p.y)];
  }).sort((a, b) => a - b);
}
