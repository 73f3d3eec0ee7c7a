import { homographyOf, type Corners, type Point } from "./homography";
import { POINTING_SD } from "./plan";

/** Which two of the four edges the width runs along: the first and third as marked, the other two, or the photo does not tell. */
export type Sides = "as-marked" | "swapped" | "unclear";

/** How many times likelier one reading must be than the other to be chosen. *elicited* */
const CLEAR_ODDS = 20;
/** How far, as a natural logarithm, a stated ratio of sides and the rug's own shape lie apart: people measure roughly, rugs are not square. *elicited* */
const STATED_SD = 0.06;
/** Focal lengths as if on 35 mm film: a phone's wide lens, its main lens, its longer ones. *common practice*; their weights are *elicited*. */
const FOCAL_LENGTHS = [{ mm: 14, weight: 0.1 }, { mm: 24, weight: 0.25 }, { mm: 28, weight: 0.35 }, { mm: 50, weight: 0.2 }, { mm: 77, weight: 0.1 }] as const;
/** Diagonal of a frame of 35 mm film, 36 × 24 mm (ISO 1007). */
const FRAME_DIAGONAL_MM = Math.hypot(36, 24);
/** Step of the derivatives, in shares of the photo. */
const NUDGE = 1e-4;

interface Photo { readonly width: number; readonly height: number }
/** Of the rectangle behind four corners: the cosine of the angle at its first corner, and the logarithm of its first edge over its second. */
interface Shape { readonly cosine: number; readonly logRatio: number }

/**
 * Chooses by Bayes between the two readings of a stated size, over the lenses a photo may have been taken with. Of a
 * rectangle seen by a camera whose lens points at the middle of the photo the shape follows from its four corners
 * (Hartley & Zisserman, Multiple View Geometry, 2nd ed., section 8.8). Unclear too where the sides are alike, where
 * the corners go round nothing, and where a size is no number.
 */
export function sidesIn(photo: Photo, corners: Corners, { widthCm, lengthCm }: { widthCm: number; lengthCm: number }): Sides {
  const stated = Math.log(widthCm / lengthCm);
  let [asMarked, swapped] = [0, 0];
  for (const { mm, weight } of FOCAL_LENGTHS) {
    const shape = shapeSeen(photo, corners, mm);
    if (!shape) return "unclear";
    const sd = pointingSd(photo, corners, mm, shape);
    const ratioSd = Math.hypot(sd.logRatio, STATED_SD);
    const byLens = weight * normal(shape.cosine, Math.hypot(sd.cosine, STATED_SD));
    asMarked += byLens * normal(shape.logRatio - stated, ratioSd);
    swapped += byLens * normal(shape.logRatio + stated, ratioSd);
  }
  if (asMarked > CLEAR_ODDS * swapped) return "as-marked";
  return swapped > CLEAR_ODDS * asMarked ? "swapped" : "unclear";
}

const normal = (x: number, sd: number): number => Math.exp(-((x / sd) ** 2) / 2) / sd;

const UNIT: Corners = [{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 1, y: 1 }, { x: 0, y: 1 }];

/** The shape as a lens of this focal length saw it; null where the corners go round nothing. */
function shapeSeen({ width, height }: Photo, corners: Corners, mm: number): Shape | null {
  const focalPx = (Math.hypot(width, height) * mm) / FRAME_DIAGONAL_MM;
  const rays = corners.map(({ x, y }) => ({ x: ((x - 0.5) * width) / focalPx, y: ((y - 0.5) * height) / focalPx })) as unknown as Corners;
  const h = homographyOf(UNIT, rays);
  if (!h) return null;
  const [along, down] = [[h[0], h[3], h[6]], [h[1], h[4], h[7]]] as const;
  const [a, b] = [Math.hypot(...along), Math.hypot(...down)];
  return { cosine: (along[0] * down[0] + along[1] * down[1] + along[2] * down[2]) / (a * b), logRatio: Math.log(a / b) };
}

/** Standard deviations of a shape whose corners were pointed at by hand, first order (JCGM 100:2008, 5.1.2). */
function pointingSd(photo: Photo, corners: Corners, mm: number, shape: Shape): Shape {
  let [cosine, logRatio] = [0, 0];
  for (let i = 0; i < 4; i++)
    for (const by of [{ x: NUDGE, y: 0 }, { x: 0, y: NUDGE }]) {
      const moved = corners.map((p: Point, k) => (k === i ? { x: p.x + by.x, y: p.y + by.y } : p)) as unknown as Corners;
      const seen = shapeSeen(photo, moved, mm) ?? shape;
      cosine += ((seen.cosine - shape.cosine) / NUDGE) ** 2;
      logRatio += ((seen.logRatio - shape.logRatio) / NUDGE) ** 2;
    }
  return { cosine: POINTING_SD * Math.sqrt(cosine), logRatio: POINTING_SD * Math.sqrt(logRatio) };
}
