import type { Plan } from "./plan";
import { markCells, type Box, type Polygon } from "./polygon";

/** Side of a cell, in cm; a piece keeps clear of every cell that damage touches. */
export const CELL_CM = 1;

/** Cells of the plan, row by row; 1 where damage touches one. */
export interface Grid { readonly columns: number; readonly rows: number; readonly cells: Uint8Array; /** The smallest box round all that is hit. */ readonly hit: Box }
type Cells = Pick<Grid, "columns" | "rows" | "cells">;
/** Where the lines between columns and rows lie, in cells: one more than there are of either. */
interface Lines { readonly x: readonly number[]; readonly y: readonly number[] }

/** The damage on cells, or null where none lies on the rug. */
export function gridOf({ widthCm, lengthCm }: Pick<Plan, "widthCm" | "lengthCm">, damaged: readonly Polygon[]): Grid | null {
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

/** A side with a border of so many cells at both ends: each border is one wide step, since no cut runs along inside it. */
function linesOf(cells: number, border: number): number[] {
  if (2 * border >= cells) return [0, cells];
  const inner = Array.from({ length: cells - 2 * border + 1 }, (_, i) => border + i);
  return border > 0 ? [0, ...inner, cells] : inner;
}

/** The largest sound rectangle no side of which cuts a border lengthwise; without a border, the largest of all. */
export function largestKeepingBorders(grid: Cells, border: number): Box {
  const lines = { x: linesOf(grid.columns, border), y: linesOf(grid.rows, border) };
  const [columns, rows] = [lines.x.length - 1, lines.y.length - 1];
  const cells = new Uint8Array(columns * rows);
  const columnOf = new Int32Array(grid.columns);
  for (let x = 0, column = 0; x < grid.columns; x++) { if (x >= (lines.x[column + 1] as number)) column++; columnOf[x] = column; }
  for (let y = 0, row = 0; y < grid.rows; y++) {
    if (y >= (lines.y[row + 1] as number)) row++;
    for (let x = 0; x < grid.columns; x++) if (grid.cells[y * grid.columns + x] !== 0) cells[row * columns + (columnOf[x] as number)] = 1;
  }
  return largestSound({ columns, rows, cells }, lines);
}

/**
 * The largest rectangle of sound cells, by the histogram of sound cells above each row and a stack of rising heights: one
 * step a cell (Morgan 1994, Programming from Specifications, from memory). Of equal ones the first met.
 */
export function largestSound({ columns, rows, cells }: Cells, lines: Lines = { x: linesOf(columns, 0), y: linesOf(rows, 0) }): Box {
  const heights = new Int32Array(columns + 1);
  const stack = new Int32Array(columns + 1);
  let best: Box = { left: 0, top: 0, right: 0, bottom: 0 }, most = 0;
  for (let y = 0; y < rows; y++) {
    let depth = 0;
    const bottom = lines.y[y + 1] as number, step = bottom - (lines.y[y] as number);
    for (let x = 0; x <= columns; x++) {
      const right = lines.x[x] as number;
      const height = x === columns ? 0 : (heights[x] = cells[y * columns + x] === 0 ? (heights[x] as number) + step : 0);
      while (depth > 0 && (heights[stack[depth - 1] as number] as number) >= height) {
        const tall = heights[stack[--depth] as number] as number;
        const left = lines.x[depth > 0 ? (stack[depth - 1] as number) + 1 : 0] as number;
        if (tall * (right - left) > most) {
          most = tall * (right - left);
          best = { left, top: bottom - tall, right, bottom };
        }
      }
      stack[depth++] = x;
    }
  }
  return best;
}

/**
 * The largest sound rectangle about the middle of the rug, so that the pattern stays even both ways; no side of it cuts a
 * border lengthwise. Null where the middle itself is damaged.
 */
export function largestCentred({ columns, rows, cells }: Cells, border: number): Box | null {
  // How many rows must go at both ends for this column to be sound.
  const goes = Int32Array.from({ length: columns }, (_, x) => {
    let most = 0;
    for (let y = 0; y < rows; y++) if (cells[y * columns + x] !== 0) most = Math.max(most, Math.min(y, rows - 1 - y) + 1);
    return most;
  });
  let best: Box | null = null, most = 0, ends = 0;
  for (let left = Math.floor((columns - 1) / 2); left >= 0; left--) {
    ends = Math.max(ends, goes[left] as number, goes[columns - 1 - left] as number);
    if (left > 0 && left < border) continue;
    const top = ends > 0 ? Math.max(ends, border) : 0;
    const area = (columns - 2 * left) * (rows - 2 * top);
    if (rows - 2 * top > 0 && area > most) [most, best] = [area, { left, top, right: columns - left, bottom: rows - top }];
  }
  return best;
}
