import "server-only";
import type { Block, PlanSide } from "../reply/documents/blocks";
import type { Words } from "../words/words";
import { drawList, listHeight } from "./draw-list";
import { drawMarks } from "./draw-marks";
import { inFont } from "./fonts";
import { BELOW, GRAPHITE, keepTogether, KEPT, LOST, MARGIN, say, SLATE, SMALL, textHeight, type Pdf, type Structure } from "./pen";

/** Points, by eye: of one photo by itself, and of photos side by side, of which so many stand in a row at most. */
const MOST_PHOTO_HEIGHT = { alone: 260, abreast: 170 } as const;
const MOST_ABREAST = 3;
/** Down to this share of its height a row is drawn smaller to end a page. By eye. */
const LEAST_SHARE = 0.6;
/** Two ways of cutting a rug stand on one page. */
const PLAN_SIDE = 150;
const BETWEEN = 14;
/** Between a photo and its caption, and below that. */
const CAPTION = { above: 6, below: 10 } as const;
/** Between a plan and the list beside it. */
const BESIDE_PLAN = 24;
/** For a side's length along it, and for the mark of the photo's top beside that. */
const SIDE_ROOM = 16;
const TOP_ROOM = 13;
/** Half of the arrow of that mark. */
const ARROW = 3.2;

type Photo = Extract<Block, { kind: "photo" }>;
type Plan = Extract<Block, { kind: "plan" }>;
/** The JPEG bytes of a photo by its id, or null where it is gone. */
export type PhotoBytes = (photoId: string) => Buffer | null;

/** What a photo asks for at least, alone or in a row, with a caption of two lines. */
export const photoRoom = (isAlone: boolean): number => LEAST_SHARE * MOST_PHOTO_HEIGHT[isAlone ? "alone" : "abreast"] + CAPTION.above + 2 * SMALL + CAPTION.below;
/** What a plan takes, with its sides, its caption and the list beside it. */
export const planHeight = (pdf: Pdf, plan: Plan, beside: readonly string[]): number =>
  planTop(pdf, plan, beside).high + BELOW.drawing + textHeight(pdf, plan.alternative, { size: SMALL }) + BELOW.caption;
/** How far right the list beside a plan begins, and how high both stand. */
function planTop(pdf: Pdf, plan: Plan, beside: readonly string[]): { left: number; high: number } {
  const { width, height } = planSize(plan);
  const left = MARGIN + width + BESIDE_PLAN;
  return { left, high: Math.max(height, listHeight(pdf, beside, left)) };
}
/** A drawing with what stands round the rug, in points. */
function planSize(plan: Plan): { width: number; height: number; scale: number } {
  const { widthCm, lengthCm } = plan;
  const scale = PLAN_SIDE / Math.max(widthCm, lengthCm);
  const { top, right, bottom, left } = roomsOf(plan);
  return { width: widthCm * scale + left + right, height: lengthCm * scale + top + bottom, scale };
}
/** What stands round the rug, in points. */
const roomsOf = ({ sizes, photoTop }: Plan): Record<PlanSide, number> => {
  const room = (edge: PlanSide, beside: number) => beside + (photoTop?.edge === edge ? TOP_ROOM : 0);
  const side = sizes ? SIDE_ROOM : 0;
  return { top: room("top", side), left: room("left", side), right: room("right", 0), bottom: room("bottom", 0) };
};

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
  for (const { caption } of photos.filter((p) => bytesOf(p.photoId) === null)) say(pdf, root, "P", words.say("print.photo-gone", { caption }), { size: SMALL, colour: SLATE });
}

type Shown = Omit<Photo, "shape"> & { readonly bytes: Buffer; /** Its width by its height. */ readonly shape: number };

/** As high as a row may be; where less is left of a page, smaller there, unless that would be too small: then on the next. Captions keep their width. */
function drawRow(pdf: Pdf, root: Structure, photos: readonly (Photo & { bytes: Buffer })[], most: number): void {
  const row = photos.map((p): Shown => {
    const { width, height } = pdf.openImage(p.bytes);
    return { ...p, shape: width / height };
  });
  const room = pdf.page.width - 2 * MARGIN - BETWEEN * (row.length - 1);
  const full = Math.min(most, room / row.reduce((sum, p) => sum + p.shape, 0));
  const captions = CAPTION.above + Math.max(...row.map((p) => textHeight(pdf, p.caption, { size: SMALL, width: p.shape * full }))) + CAPTION.below;
  const left = pdf.page.maxY() - pdf.y - captions;
  const height = left < LEAST_SHARE * full ? full : Math.min(full, left);
  keepTogether(pdf, height + captions);
  const top = pdf.y;
  let [x, bottom] = [MARGIN, top];
  for (const { alternative, caption, bytes, shape, marks } of row) {
    const at: Place = { left: x, top, width: shape * height, height };
    figure(pdf, root, { alternative, at, draw: () => { pdf.image(bytes, at.left, top, { width: at.width, height }); drawMarks(pdf, marks ?? [], at); } });
    pdf.y = top + height + CAPTION.above;
    say(pdf, root, "Caption", caption, { size: SMALL, colour: SLATE, gap: CAPTION.below, x, width: shape * full });
    bottom = Math.max(bottom, pdf.y);
    x += shape * full + BETWEEN;
  }
  pdf.y = bottom;
}

/** Where the plan's own corner stands, and how large a centimetre is drawn. */
interface Sheet { readonly left: number; readonly top: number; readonly scale: number }

/**
 * The rug from above, to scale, with its sides: what remains is tinted, outlined and measured, the rug as it is dashed, the damage
 * filled. Its caption below, and beside it what is said of it.
 */
export function drawPlan(pdf: Pdf, root: Structure, plan: Plan, beside: readonly string[]): void {
  const { sizes, photoTop, alternative } = plan;
  const room = roomsOf(plan);
  const { scale, ...at } = planSize(plan);
  const { left, high } = planTop(pdf, plan, beside);
  const top = pdf.y;
  const sheet: Sheet = { left: MARGIN + room.left, top: top + room.top, scale };
  figure(pdf, root, {
    alternative, at: { left: MARGIN, top, ...at },
    draw: () => { drawRug(pdf, plan, sheet); if (sizes) drawSizes(pdf, plan, { sizes, sheet }); if (photoTop) drawTop(pdf, plan, { photoTop, sheet }); },
  });
  pdf.x = MARGIN;
  pdf.y = top + high + BELOW.drawing;
  say(pdf, root, "Caption", alternative, { size: SMALL, colour: SLATE, gap: BELOW.caption });
  const bottom = pdf.y;
  if (beside.length > 0) {
    pdf.y = Math.min(sheet.top, top + high - listHeight(pdf, beside, left));
    drawList(pdf, root, beside, left);
  }
  pdf.y = bottom;
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

/** Words about a point, along the page or up it. */
function centred(pdf: Pdf, text: string, x: number, y: number): void {
  inFont(pdf, "plain").fontSize(SMALL).fillColor(SLATE);
  pdf.text(text, x - pdf.widthOfString(text) / 2, y - SMALL / 2, { lineBreak: false });
}
function upright(pdf: Pdf, text: string, x: number, y: number): void {
  pdf.save().rotate(-90, { origin: [x, y] });
  centred(pdf, text, x, y);
  pdf.restore();
}

/** The two sides along them, and in each piece its size, where there is room for it this way or upright. */
function drawSizes(pdf: Pdf, { widthCm, lengthCm, keep }: Plan, { sizes, sheet: { left, top, scale } }: { sizes: NonNullable<Plan["sizes"]>; sheet: Sheet }): void {
  centred(pdf, sizes.across, left + (widthCm * scale) / 2, top - SIDE_ROOM / 2);
  upright(pdf, sizes.along, left - SIDE_ROOM / 2, top + (lengthCm * scale) / 2);
  keep.forEach((r, i) => {
    const text = sizes.kept[i] ?? "";
    inFont(pdf, "plain").fontSize(SMALL);
    const [wide, high, needed] = [(r.right - r.left) * scale, (r.bottom - r.top) * scale, pdf.widthOfString(text) + 2 * SMALL];
    const at: [number, number] = [left + ((r.left + r.right) / 2) * scale, top + ((r.top + r.bottom) / 2) * scale];
    if (needed <= wide && 2 * SMALL <= high) centred(pdf, text, ...at);
    else if (needed <= high && 2 * SMALL <= wide) upright(pdf, text, ...at);
  });
}

/** Beside the edge that lies towards the top of the photo: an arrow away from the rug, and its words along the edge. */
function drawTop(pdf: Pdf, { widthCm, lengthCm, sizes }: Plan, { photoTop: { edge, words }, sheet: { left, top, scale } }: { photoTop: NonNullable<Plan["photoTop"]>; sheet: Sheet }): void {
  const [wide, high, away] = [widthCm * scale, lengthCm * scale, (sizes ? SIDE_ROOM : 0) + TOP_ROOM / 2];
  const middle = { top: [left + wide / 2, top - away], bottom: [left + wide / 2, top + high + TOP_ROOM / 2], left: [left - away, top + high / 2], right: [left + wide + TOP_ROOM / 2, top + high / 2] } as const;
  const [x, y] = middle[edge];
  inFont(pdf, "plain").fontSize(SMALL);
  const before = pdf.widthOfString(words) / 2 + 2 * ARROW;
  const isUpright = edge === "left" || edge === "right";
  (isUpright ? upright : centred)(pdf, words, x, y);
  const [atX, atY] = isUpright ? [x, y + before] : [x - before, y];
  const tip = edge === "top" || edge === "left" ? -ARROW : ARROW;
  const tips: [number, number][] = isUpright ? [[atX - tip, atY - ARROW], [atX - tip, atY + ARROW], [atX + tip, atY]] : [[atX - ARROW, atY - tip], [atX + ARROW, atY - tip], [atX, atY + tip]];
  pdf.polygon(...tips).fillColor(SLATE).fill();
}
