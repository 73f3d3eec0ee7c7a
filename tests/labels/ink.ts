/** Outlines filled by even strips: a picture of ink, 0 bare to 1 covered. */
export interface Ink { readonly data: Float32Array; readonly width: number; readonly height: number }
export type Outline = readonly (readonly [x: number, y: number])[];

/** Lines of a pixel's height looked at; coverage along each is exact. */
const STRIPS = 4;

/** Fills outlines (closed, in pixels) by the non-zero winding rule into `ink`; what lies outside is cut off. */
export function fill(ink: Ink, outlines: readonly Outline[]): void {
  const rows = new Map<number, [x: number, turn: number][]>();
  for (const outline of outlines)
    for (let i = 0; i < outline.length; i++) {
      const [x0, y0] = outline[i]!, [x1, y1] = outline[(i + 1) % outline.length]!;
      const turn = y1 > y0 ? 1 : -1;
      const from = Math.ceil(Math.min(y0, y1) * STRIPS - 0.5), to = Math.ceil(Math.max(y0, y1) * STRIPS - 0.5);
      for (let s = Math.max(0, from); s < Math.min(to, ink.height * STRIPS); s++) {
        const y = (s + 0.5) / STRIPS;
        const crossings = rows.get(s) ?? [];
        crossings.push([x0 + ((y - y0) / (y1 - y0)) * (x1 - x0), turn]);
        rows.set(s, crossings);
      }
    }
  for (const [s, crossings] of rows) {
    crossings.sort((a, b) => a[0] - b[0]);
    let winding = 0;
    crossings.forEach(([x, turn], i) => {
      if (winding !== 0) cover(ink, Math.floor(s / STRIPS), crossings[i - 1]![0], x);
      winding += turn;
    });
  }
}

function cover(ink: Ink, row: number, from: number, to: number): void {
  for (let x = Math.max(0, Math.floor(from)); x < Math.min(ink.width, to); x++) {
    const share = Math.max(0, Math.min(to, x + 1) - Math.max(from, x)) / STRIPS;
    const at = row * ink.width + x;
    ink.data[at] = Math.min(1, ink.data[at]! + share);
  }
}
