import { labOf, type Lab } from "./colour";
import type { Rgb } from "./strip";

/** Cells of the long side that a picture is gathered in: coarse enough that weave and noise are gone. *elicited* */
const CELLS = 48;
/** Lab units within which a cell looks like one of the edge. *elicited* */
const ALIKE = 6;
/** Share of the edge's cells that must look like a cell for it to be ground: a corner of something else is none. *elicited* */
const GROUND = 0.06;
/** Pixels from one that is looked at to the next. */
const STEP = 2;

/**
 * Share of the picture, 0 to 1, that does not look like what runs along its four edges: floor, wall, table. A picture that
 * its subject fills shows it along the edges too, so next to nothing means "one thing fills it", not "far away".
 */
export function subjectShareOf(picture: Rgb): number {
  const { cells, across, down } = cellsOf(picture);
  const edge = cells.filter((_, i) => { const x = i % across, y = Math.floor(i / across); return x === 0 || y === 0 || x === across - 1 || y === down - 1; });
  const needed = Math.max(1, edge.length * GROUND);
  const isGround = (cell: Lab) => {
    let alike = 0;
    return edge.some((e) => (cell.L - e.L) ** 2 + (cell.a - e.a) ** 2 + (cell.b - e.b) ** 2 <= ALIKE ** 2 && ++alike >= needed);
  };
  return cells.filter((cell) => !isGround(cell)).length / cells.length;
}

/** Mean colours of square cells, row by row. */
function cellsOf({ data, width, height }: Rgb): { cells: Lab[]; across: number; down: number } {
  const side = Math.max(STEP, Math.ceil(Math.max(width, height) / CELLS));
  const across = Math.ceil(width / side), down = Math.ceil(height / side);
  const sums = new Float64Array(across * down * 4);
  for (let y = 0; y < height; y += STEP) {
    for (let x = 0; x < width; x += STEP) {
      const from = 3 * (y * width + x), to = 4 * (Math.floor(y / side) * across + Math.floor(x / side));
      for (let c = 0; c < 3; c++) sums[to + c]! += data[from + c]!;
      sums[to + 3]!++;
    }
  }
  const mean = (i: number, c: number) => Math.round(sums[4 * i + c]! / sums[4 * i + 3]!);
  return { cells: Array.from({ length: across * down }, (_, i) => labOf(mean(i, 0), mean(i, 1), mean(i, 2))), across, down };
}
