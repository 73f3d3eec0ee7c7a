import type { EnquiryFile } from "../../lib/enquiry/enquiry-file";
import type { CutKind } from "../../lib/photo/cut-down";
import type { DrawOptions } from "./draw-rug";

/** A photo of the demo: everything `drawRug` needs but the seed, which comes from its place in the list. */
export type DemoPhoto = Omit<DrawOptions, "seed">;

/** Two spots of a photo, in shares of its width and height. */
export interface DemoSpots { untouched: { x: number; y: number }; affected: { x: number; y: number } }
/** The plan of a photo of the whole rug: corners, size and damage follow from how it was drawn. */
export interface DemoPlan { chosen: CutKind | null; borderCm?: number; isSymmetric?: boolean }
/** What is measured in a photo of the first rug, by its place, and by whom; `open`: nobody has said yet what the label says. */
export type DemoMark = { photo: number; by: "staff" | "client" } & ({ spots: DemoSpots } | { plan: DemoPlan } | { label: "open" | "right" });

/** One invented enquiry. Photos are given per rug and drawn when the demo is first started. */
export interface DemoEnquiry {
  /** How long before the demo's start it came in. */
  minutesAgo: number;
  file: EnquiryFile;
  photos: DemoPhoto[][];
  marks?: DemoMark[];
}
