import * as z from "zod/mini";
import { LEAST } from "../photo/area";

const share = z.number().check(z.minimum(0), z.maximum(1));
const side = z.number().check(z.minimum(LEAST), z.maximum(1));
/** More than this in one photo, and it is better taken again. Elicited. */
export const MOST_AREAS = 20;
/** Lets through what rounding leaves over the edge; the picture ends where it ends. */
const OVER = 1e-6;

/** What is to be blurred: at least one area, each inside the picture. */
export const areasSchema = z
  .array(z.strictObject({ left: share, top: share, width: side, height: side }).check(z.refine((a) => a.left + a.width <= 1 + OVER && a.top + a.height <= 1 + OVER, "An area reaches out of the picture.")))
  .check(z.minLength(1, "Mark what is to be blurred first."), z.maxLength(MOST_AREAS, `A photo takes ${MOST_AREAS} areas at most.`));
