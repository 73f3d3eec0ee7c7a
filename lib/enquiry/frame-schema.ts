import * as z from "zod/mini";
import { LEAST } from "../photo/area";
import { wrong } from "./wrong";

const share = z.number().check(z.minimum(0), z.maximum(1));
const side = z.number().check(z.minimum(LEAST, wrong("wrong.frame-small")), z.maximum(1));
/** Lets through what rounding leaves over the edge; the picture ends where it ends. */
const OVER = 1e-6;

/** The part of a photo in which a person says the label lies. */
export const frameSchema = z.strictObject({ x: share, y: share, width: side, height: side })
  .check(z.refine((f) => f.x + f.width <= 1 + OVER && f.y + f.height <= 1 + OVER, wrong("wrong.frame-outside")));
export const framedLabelSchema = z.strictObject({ photoId: z.string().check(z.minLength(1), z.maxLength(64)), frame: frameSchema });
export type FramedLabel = z.infer<typeof framedLabelSchema>;
