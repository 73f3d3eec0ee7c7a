export interface Point { readonly x: number; readonly y: number }
/** Row by row, the last number 1: maps (x, y) to ((h0 x + h1 y + h2) / w, (h3 x + h4 y + h5) / w), w = h6 x + h7 y + 1. */
export type Homography = readonly [number, number, number, number, number, number, number, number, 1];
export type Corners = readonly [Point, Point, Point, Point];

/**
 * The projective map that takes four points to four others, by the direct linear transformation (Hartley & Zisserman,
 * Multiple View Geometry, 2nd ed., section 4.1). Null where three of either four lie on a line.
 */
export function homographyOf(from: Corners, to: Corners): Homography | null {
  if (isFlat(from) || isFlat(to)) return null;
  const rows = from.flatMap(({ x, y }, i) => {
    const { x: u, y: v } = to[i] as Point;
    return [[x, y, 1, 0, 0, 0, -u * x, -u * y, u], [0, 0, 0, x, y, 1, -v * x, -v * y, v]];
  });
  const h = solved(rows);
  return h ? ([...h, 1] as unknown as Homography) : null;
}

/** Where a point goes; NaN on the line that the map sends to infinity. */
export function mapped(h: Homography, { x, y }: Point): Point {
  const w = h[6] * x + h[7] * y + 1;
  return { x: (h[0] * x + h[1] * y + h[2]) / w, y: (h[3] * x + h[4] * y + h[5]) / w };
}

/** Twice the signed area of a triangle. */
export const turnOf = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** True where three corners nearly lie on a line, or the four do not go round a convex shape. */
export function isFlat(corners: Corners): boolean {
  const turns = corners.map((_, i) => turnOf(corners[i] as Point, corners[(i + 1) % 4] as Point, corners[(i + 2) % 4] as Point));
  const size = Math.max(...corners.flatMap((p) => corners.map((q) => (p.x - q.x) ** 2 + (p.y - q.y) ** 2)));
  const least = 1e-4 * size;
  return !(turns.every((t) => t > least) || turns.every((t) => t < -least));
}

/** Solves the augmented rows by Gauss with partial pivoting; null where they are singular. */
function solved(rows: readonly (readonly number[])[]): number[] | null {
  const m = rows.map((r) => [...r]);
  const n = m.length;
  for (let k = 0; k < n; k++) {
    const pivot = m.reduce((best, r, i) => (i >= k && Math.abs(r[k] as number) > Math.abs((m[best] as number[])[k] as number) ? i : best), k);
    [m[k], m[pivot]] = [m[pivot] as number[], m[k] as number[]];
    const row = m[k] as number[];
    if (Math.abs(row[k] as number) < 1e-12) return null;
    for (let i = 0; i < n; i++) {
      if (i === k) continue;
      const other = m[i] as number[];
      const factor = (other[k] as number) / (row[k] as number);
      for (let j = k; j <= n; j++) other[j] = (other[j] as number) - factor * (row[j] as number);
    }
  }
  return m.map((r, i) => (r[n] as number) / (r[i] as number));
}
