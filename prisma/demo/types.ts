import type { EnquiryFile } from "../../lib/enquiry/enquiry-file";
import type { DrawOptions } from "./draw-rug";

/** A photo of the demo: everything `drawRug` needs but the seed, which comes from its place in the list. */
export type DemoPhoto = Omit<DrawOptions, "seed">;

/** One invented enquiry. Photos are given per rug and drawn when the demo is first started. */
export interface DemoEnquiry {
  /** How long before the demo's start it came in. */
  minutesAgo: number;
  file: EnquiryFile;
  photos: DemoPhoto[][];
}
