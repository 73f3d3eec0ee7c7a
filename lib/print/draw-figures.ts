import "server-only";
import type { Block } from "../reply/documents/blocks";
import { GRAPHITE, keepTogether, KEPT, LOST, MARGIN, SLATE, SMALL, tagged, write, type Pdf, type Structure } from "./pen";

/** Points, by eye. */
const MOST_PHOTO_HEIGHT = 260;
const PLAN_SIDE = 220;
const BETWEEN = 14;
const CAPTION_ROOM = 30;

type Photo = Extract<Block, { kind: "photo" }>;
type Plan = Extract<Block, { kind: "plan" }>;
/** The JPEG bytes of a photo by its id, or null where it is gone. */
export type PhotoBytes = (photoId: string) => Buffer | null;

/** What a drawn block takes at once; 0 for text, which may break. */
export const heightOf = (block: Block | undefined): number =>
  block?.kind === "photo" ? MOST_PHOTO_HEIGHT : block?.kind === "plan" ? (PLAN_SIDE * block.lengthCm) / Math.max(block.widthCm, block.lengthCm) : 0;

/** Where a figure stands on its page, from the upper left corner. */
interface Place { readonly left: number; readonly top: number; readonly width: number; readonly height: number }

function figure(pdf: Pdf, root: Structure, { alternative, at, draw }: { alternative: string; at: Place; draw: () => void }): void {
  const bbox: [number, number, number, number] = [at.left, at.top, at.left + at.width, at.top + at.height];
  root.add(pdf.struct("Figure", { alt: alternative, ...({ bbox, placement: "Block" } as object) }, draw));
}

/** Photos that follow each other stand two abreast; one by itself is larger. */
export function drawPhotos(pdf: Pdf, root: Structure, photos: readonly Photo[], bytesOf: PhotoBytes): void {
  const there = photos.flatMap((p) => { const bytes = bytesOf(p.photoId); return bytes ? [{ ...p, bytes }] : []; });
  const full = pdf.page.width - 2 * MARGIN;
  const width = there.length > 1 ? (full - BETWEEN) / 2 : full;
  for (let i = 0; i < there.length; i += 2) drawRow(pdf, root, there.slice(i, i + 2), width);
  for (const { caption } of photos.filter((p) => bytesOf(p.photoId) === null)) tagged(pdf, root, "P", () => write(pdf, `${caption} (The photo is no longer there.)`, { size: SMALL, colour: SLATE }));
}

function drawRow(pdf: Pdf, root: Structure, row: readonly (Photo & { bytes: Buffer })[], width: number): void {
  const sized = row.map((p) => {
    const { width: w, height: h } = pdf.openImage(p.bytes);
    const scale = Math.min(width / w, MOST_PHOTO_HEIGHT / h);
    return { ...p, width: w * scale, height: h * scale };
  });
  keepTogether(pdf, Math.max(...sized.map((p) => p.height)) + CAPTION_ROOM);
  const top = pdf.y;
  let bottom = top;
  sized.forEach(({ alternative, caption, bytes, width: w, height }, i) => {
    const left = MARGIN + i * (width + BETWEEN);
    figure(pdf, root, { alternative, at: { left, top, width: w, height }, draw: () => { pdf.image(bytes, left, top, { width: w, height }); } });
    pdf.y = top + height + 6;
    tagged(pdf, root, "Caption", () => write(pdf, caption, { size: SMALL, colour: SLATE, gap: 10, x: left, width }));
    bottom = Math.max(bottom, pdf.y);
  });
  pdf.y = bottom;
}

/** The rug from above, to scale: what remains is tinted and outlined, the rug as it is dashed, the damage filled. */
export function drawPlan(pdf: Pdf, root: Structure, { widthCm, lengthCm, keep, damaged, alternative }: Plan): void {
  const scale = PLAN_SIDE / Math.max(widthCm, lengthCm);
  const at: Place = { left: MARGIN, top: 0, width: widthCm * scale, height: lengthCm * scale };
  keepTogether(pdf, at.height + CAPTION_ROOM);
  const top = pdf.y;
  const on = (x: number, y: number): [number, number] => [MARGIN + x * scale, top + y * scale];
  const draw = () => {
    for (const r of keep) pdf.rect(...on(r.left, r.top), (r.right - r.left) * scale, (r.bottom - r.top) * scale).fillColor(KEPT).fill();
    for (const outline of damaged) {
      outline.forEach((p, i) => { if (i === 0) pdf.moveTo(...on(p.x, p.y)); else pdf.lineTo(...on(p.x, p.y)); });
      pdf.closePath().fillColor(LOST).fill();
    }
    pdf.rect(MARGIN, top, at.width, at.height).lineWidth(0.6).dash(3, { space: 3 }).strokeColor(LOST).stroke().undash();
    for (const r of keep) pdf.rect(...on(r.left, r.top), (r.right - r.left) * scale, (r.bottom - r.top) * scale).lineWidth(1.4).strokeColor(GRAPHITE).stroke();
  };
  figure(pdf, root, { alternative, at: { ...at, top }, draw });
  pdf.y = top + at.height + 8;
  tagged(pdf, root, "Caption", () => write(pdf, alternative, { size: SMALL, colour: SLATE, gap: 8 }));
}
