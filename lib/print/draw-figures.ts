import "server-only";
import type { Block } from "../reply/documents/blocks";
import type { Words } from "../words/words";
import { BELOW, GRAPHITE, keepTogether, KEPT, LOST, MARGIN, SLATE, SMALL, tagged, textHeight, write, type Pdf, type Structure } from "./pen";

/** Points, by eye: of one photo by itself, and of photos side by side, of which so many stand in a row at most. */
const MOST_PHOTO_HEIGHT = { alone: 260, abreast: 170 } as const;
const MOST_ABREAST = 3;
/** Two ways of cutting a rug stand on one page. */
const PLAN_SIDE = 150;
const BETWEEN = 14;
const CAPTION_ROOM = 30;
/** For a side's length along it. */
const SIDE_ROOM = 16;

type Photo = Extract<Block, { kind: "photo" }>;
type Plan = Extract<Block, { kind: "plan" }>;
/** The JPEG bytes of a photo by its id, or null where it is gone. */
export type PhotoBytes = (photoId: string) => Buffer | null;

/** What a photo takes at most, with its caption. */
export const PHOTO_ROOM = MOST_PHOTO_HEIGHT.abreast + CAPTION_ROOM;
/** What a plan takes, with its sides and its caption. */
export const planHeight = (pdf: Pdf, { widthCm, lengthCm, sizes, alternative }: Plan): number =>
  (sizes ? SIDE_ROOM : 0) + (PLAN_SIDE * lengthCm) / Math.max(widthCm, lengthCm) + BELOW.drawing + textHeight(pdf, alternative, { size: SMALL }) + BELOW.caption;

/** Where a figure stands on its page, from the upper left corner. */
interface Place { readonly left: number; readonly top: number; readonly width: number; readonly height: number }

function figure(pdf: Pdf, root: Structure, { alternative, at, draw }: { alternative: string; at: Place; draw: () => void }): void {
  const bbox: [number, number, number, number] = [at.left, at.top, at.left + at.width, at.top + at.height];
  root.add(pdf.struct("Figure", { alt: alternative, ...({ bbox, placement: "Block" } as object) }, draw));
}

/** Photos that follow each other stand side by side, as many in each row as in the next or one more, and all of a row equally high; one by itself is larger. */
export function drawPhotos(pdf: Pdf, root: Structure, photos: readonly Photo[], { bytesOf, words }: { bytesOf: PhotoBytes; words: Words }): void {
  const there = photos.flatMap((p) => { const bytes = bytesOf(p.photoId); return bytes ? [{ ...p, bytes }] : []; });
  const abreast = Math.ceil(there.length / Math.ceil(there.length / MOST_ABREAST));
  for (let i = 0; i < there.length; i += abreast) drawRow(pdf, root, there.slice(i, i + abreast), MOST_PHOTO_HEIGHT[there.length > 1 ? "abreast" : "alone"]);
  for (const { caption } of photos.filter((p) => bytesOf(p.photoId) === null)) tagged(pdf, root, "P", () => write(pdf, words.say("print.photo-gone", { caption }), { size: SMALL, colour: SLATE }));
}

function drawRow(pdf: Pdf, root: Structure, row: readonly (Photo & { bytes: Buffer })[], most: number): void {
  const shaped = row.map((p) => {
    const { width, height } = pdf.openImage(p.bytes);
    return { ...p, shape: width / height };
  });
  const room = pdf.page.width - 2 * MARGIN - BETWEEN * (row.length - 1);
  const height = Math.min(most, room / shaped.reduce((sum, p) => sum + p.shape, 0));
  keepTogether(pdf, height + CAPTION_ROOM);
  const top = pdf.y;
  let [left, bottom] = [MARGIN, top];
  for (const { alternative, caption, bytes, shape } of shaped) {
    const at: Place = { left, top, width: shape * height, height };
    figure(pdf, root, { alternative, at, draw: () => { pdf.image(bytes, at.left, top, { width: at.width, height }); } });
    pdf.y = top + height + 6;
    tagged(pdf, root, "Caption", () => write(pdf, caption, { size: SMALL, colour: SLATE, gap: 10, x: at.left, width: at.width }));
    bottom = Math.max(bottom, pdf.y);
    left += at.width + BETWEEN;
  }
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
