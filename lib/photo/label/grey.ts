import type { Rgb } from "../strip";

/** Levels of light, 0 black to 255 white, row by row. */
export interface Grey { readonly data: Float32Array; readonly width: number; readonly height: number }

/** Luma by Rec. ITU-R BT.601. */
export function greyOf({ data, width, height }: Rgb): Grey {
  const grey = new Float32Array(width * height);
  for (let i = 0, at = 0; i < grey.length; i++, at += 3) grey[i] = 0.299 * data[at]! + 0.587 * data[at + 1]! + 0.114 * data[at + 2]!;
  return { data: grey, width, height };
}

type Line = (from: Float32Array, to: Float32Array, start: number, step: number, count: number) => void;

function alongBoth({ data, width, height }: Grey, work: Line): Grey {
  const half = new Float32Array(data.length), whole = new Float32Array(data.length);
  for (let y = 0; y < height; y++) work(data, half, y * width, 1, width);
  for (let x = 0; x < width; x++) work(half, whole, x, width, height);
  return { data: whole, width, height };
}

/** The greatest (or, with `least`, the least) level within `reach` pixels each way, edges repeated. */
export function extreme(grey: Grey, reach: number, least = false): Grey {
  const sign = least ? -1 : 1;
  // Places along a line whose levels fall from `head` to `end`: the first is the greatest of those in reach.
  const queue = new Int32Array(Math.max(grey.width, grey.height)), levels = new Float32Array(queue.length);
  return alongBoth(grey, (from, to, start, step, count) => {
    let head = 0, end = 0;
    for (let i = 0; i < count + reach; i++) {
      if (i < count) {
        const level = sign * from[start + i * step]!;
        while (end > head && level >= levels[end - 1]!) end--;
        queue[end] = i;
        levels[end++] = level;
      }
      const at = i - reach;
      if (at < 0) continue;
      while (queue[head]! < at - reach) head++;
      to[start + at * step] = sign * levels[head]!;
    }
  });
}

/** The mean within `reach` pixels each way, edges repeated; 0 leaves it as it is. */
export const mean = (grey: Grey, reach: number): Grey =>
  reach < 1 ? grey : alongBoth(grey, (from, to, start, step, count) => {
    const at = (i: number) => from[start + Math.min(count - 1, Math.max(0, i)) * step]!;
    let sum = 0;
    for (let i = -reach; i <= reach; i++) sum += at(i);
    for (let i = 0; i < count; i++) {
      to[start + i * step] = sum / (2 * reach + 1);
      sum += at(i + reach + 1) - at(i - reach);
    }
  });

/** Dark strokes narrower than `2 reach + 1` filled with the light beside them. */
export const withoutStrokes = (grey: Grey, reach: number): Grey => extreme(extreme(grey, reach), reach, true);

export const inverted = ({ data, width, height }: Grey): Grey => ({ data: data.map((v) => 255 - v), width, height });

/** Every `by` × `by` pixels as their mean; a rest at the right or the bottom is left out. */
export function shrunk(grey: Grey, by: number): Grey {
  if (by <= 1) return grey;
  const width = Math.floor(grey.width / by), height = Math.floor(grey.height / by);
  const data = new Float32Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let row = 0, from = y * by * grey.width + x * by; row < by; row++, from += grey.width) for (let n = 0; n < by; n++) sum += grey.data[from + n]!;
      data[y * width + x] = sum / (by * by);
    }
  return { data, width, height };
}

/** Between four pixels; beyond the edge, the edge. */
export function levelAt({ data, width, height }: Grey, x: number, y: number): number {
  const px = Math.min(width - 1, Math.max(0, x)), py = Math.min(height - 1, Math.max(0, y));
  const x0 = Math.floor(px), y0 = Math.floor(py), x1 = Math.min(width - 1, x0 + 1), y1 = Math.min(height - 1, y0 + 1);
  const tx = px - x0, ty = py - y0;
  const top = data[y0 * width + x0]! + (data[y0 * width + x1]! - data[y0 * width + x0]!) * tx;
  const low = data[y1 * width + x0]! + (data[y1 * width + x1]! - data[y1 * width + x0]!) * tx;
  return top + (low - top) * ty;
}

/** One row of a picture `by` times as large as `small`, between its pixels; beyond the edge, the edge. */
export function enlargedRow({ data, width, height }: Grey, by: number, y: number, into: Float32Array): void {
  const inside = (at: number, count: number) => Math.min(count - 1, Math.max(0, at));
  const py = inside((y + 0.5) / by - 0.5, height), y0 = Math.floor(py), ty = py - y0, y1 = inside(y0 + 1, height);
  const row = data.slice(y0 * width, (y0 + 1) * width);
  for (let x = 0; x < width; x++) row[x]! += (data[y1 * width + x]! - row[x]!) * ty;
  for (let x = 0; x < into.length; x++) {
    const px = inside((x + 0.5) / by - 0.5, width), x0 = Math.floor(px), left = row[x0]!;
    into[x] = left + ((row[x0 + 1] ?? left) - left) * (px - x0);
  }
}

/** So many pixels, evenly chosen, stand for all. */
const SAMPLE = 8_192;

/** The levels below which these shares of the pixels lie, from an even sample. */
export function quantiles({ data }: Grey, shares: readonly number[]): number[] {
  const step = Math.max(1, data.length / SAMPLE);
  const sorted = new Float32Array(Math.floor(data.length / step));
  for (let i = 0; i < sorted.length; i++) sorted[i] = data[Math.floor(i * step)]!;
  sorted.sort();
  return shares.map((share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0);
}
