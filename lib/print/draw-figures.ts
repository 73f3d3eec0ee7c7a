import "server-only";
import type { Block } from "../reply/documents/blocks";
import type { Words } from "../words/words";
import { BELOW, GRAPHITE, keepTogether, KEPT, LOST, MARGIN, SLATE, SMALL, tagged, textHeight, write, type Pdf, type Structure } from "./pen";

/** Points, by eye. */
const MOST_PHOTO_HEIGHT = 260;
const PLAN_SIDE = 220;
const BETWEEN = 14;
const CAPTION_ROOM = 30;
/** For a side's length along it. */
const SIDE_ROOM = 16;

type Photo = Extract<Block, { kind: "photo" }>;
type Plan = Extract<Block, { kind: "plan" }>;
/** The JPEG bytes of a photo by its id, or null where it is gone. */
export type PhotoBytes = (photoId: string) => Buffer | null;

/** What a photo takes at most, with its caption. */
export const PHOTO_ROOM = MOST_PHOTO_HEIGHT + CAPTION_ROOM;
/** What a plan takes, with its sides and its caption. */
export const planHeight = (pdf: Pdf, { widthCm, lengthCm, sizes, alternative }: Plan): number =>
  (sizes ? SIDE_ROOM : 0) + (PLAN_SIDE * lengthCm) / Math.max(widthCm, lengthCm) + BELOW.drawing + textHeight(pdf, alternative, { size: SMALL }) + BELOW.caption;

/** Where a figure stands on its page, from the upper left corner. */
interface Place { readonly left: number; readonly top: number; readonly width: number; readonly height: number }

function figure(pdf: Pdf, root: Structure, { alternative, at, draw }: { alternative: string; at: Place; draw: () => void }): void {
  const bbox: [number, number, number, number] = [at.left, at.top, at.left + at.width, at.top + at.height];
  root.add(pdf.struct("Figure", { alt: alternative, ...({ bbox, placement: "Block" } as object) }, draw));
}

/** Photos that follow each other stand two abreast; one by itself is larger. */
export function drawPhotos(pdf: Pdf, root: Structure, photos: readonly Photo[], { bytesOf, words }: { bytesOf: PhotoBytes; words: Words }): void {
  const there = photos.flatMap((p) => { const bytes = bytesOf(p.photoId); return bytes ? [{ ...p, bytes }] : []; });
  const full = pdf.page.width - 2 * MARGIN;
  const width = there.length > 1 ? (full - BETWEEN) / 2 : full;
  for (let i = 0; i < there.length; i += 2) drawRow(pdf, root, there.slice(i, i + 2), width);
  for (const { caption } of photos.filter((p) => bytesOf(p.photoId) === null)) tagged(pdf, root, "P", () => write(pdf, words.say("print.photo-gone", { caption }), { size: SMALL, colour: SLATE }));
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

/** Where the plan's own corner stands, and how large a centimetre is drawn. */
interface Sheet { readonly left: number; readonly top: number; readonly scale: number }

/** The rug from above, to scale, with its sides: what remains is tinted, outlined and measured, the rug as it is dashed, the damage filled. */
export function drawPlan(pdf: Pdf, root: Structure, plan: Plan): void {
  const { widthCm, lengthCm, sizes, alternative } = plan;
  const scale = PLAN_SIDE / Math.max(widthCm, lengthCm);
  const room = sizes ? SIDE_ROOM : 0;
  const at = { width: widthCm * scale + room, height: lengthCm * scale + room };
  const top = pdf.y;
  const sheet: Sheet = { left: MARGIN + room, top: top + room, scale };
  figure(pdf, root, { alternative, at: { left: MARGIN, top, ...at }, draw: () => { drawRug(pdf, plan, sheet); if (sizes) drawSizes(pdf, plan, { sizes, sheet }); } });
  pdf.x = MARGIN;
  pdf.y = top + at.height + BELOW.drawing;
  tagged(pdf, root, "Caption", () => write(pdf, alternative, { size: SMALL, colour: SLATE, gap: BELOW.caption }));
}

function drawRug(pdf: Pdf, { widthCm, lengthCm, keep, damaged }: Plan, { left, top, scale }: Sheet): void {
  const on = (x: number, y: number): [number, number] => [left + x * scale, top + y * scale];
  for (const r of keep) pdf.rect(...on(r.left, r.top), (r.right - r.left) * scale, (r.bottom - r.top) * scale).fillColor(KEPT).fill();
  for (const outline of damaged) {
    outline.forEach((p, i) => { if (i === 0) pdf.moveTo(...on(p.x, p.y)); else pdf.lineTo(...on(p.x, p.y)); });
    pdf.closePath().fillColor(LOST).fill();
  }
  pdf.rect(left, top, widthCm * scale, lengthCm * scale).lineWidth(0.6).dash(3, { space: 3 }).strokeColor(LOST).stroke().undash();
  for (const r of keep) pdf.rect(...on(r.left, r.top), (r.right - r.left) * scale, (r.bottom - r.top) * scale).lineWidth(1.4).strokeColor(GRAPHITE).stroke();
}

/** The two sides along them, and in each piece its size, where there is room for it this way or upright. */
function drawSizes(pdf: Pdf, { widthCm, lengthCm, keep }: Plan, { sizes, sheet: { left, top, scale } }: { sizes: NonNullable<Plan["sizes"]>; sheet: Sheet }): void {
  const centred = (text: string, x: number, y: number) => {
    pdf.font("plain").fontSize(SMALL).fillColor(SLATE);
    pdf.text(text, x - pdf.widthOfString(text) / 2, y - SMALL / 2, { lineBreak: false });
  };
  const upright = (text: string, x: number, y: number) => {
    pdf.save().rotate(-90, { origin: [x, y] });
    centred(text, x, y);
    pdf.restore();
  };
  const [middle, centre] = [left + (widthCm * scale) / 2, top + (lengthCm * scale) / 2];
  centred(sizes.across, middle, top - SIDE_ROOM / 2);
  upright(sizes.along, left - SIDE_ROOM / 2, centre);
  keep.forEach((r, i) => {
    const text = sizes.kept[i] ?? "";
    pdf.font("plain").fontSize(SMALL);
    const [wide, high, needed] = [(r.right - r.left) * scale, (r.bottom - r.top) * scale, pdf.widthOfString(text) + 2 * SMALL];
    const at: [number, number] = [left + ((r.left + r.right) / 2) * scale, top + ((r.top + r.bottom) / 2) * scale];
    if (needed <= wide && 2 * SMALL <= high) centred(text, ...at);
    else if (needed <= high && 2 * SMALL <= wide) upright(text, ...at);
  });
}
