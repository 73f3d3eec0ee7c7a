/** A part of a photo, in shares of its width and height, from its upper left corner. */
export interface Frame { x: number; y: number; width: number; height: number }

/**
 * What became of a label so far. `reading`: it is being read; `failed`: the reader did not answer; `unsure`: the person asked
 * could not tell; `withdrawn`: part of it was blurred since.
 */
export const LABEL_STATES = ["reading", "read", "unreadable", "failed", "confirmed", "corrected", "refused", "unsure", "withdrawn"] as const;
export type LabelState = (typeof LABEL_STATES)[number];

/** What was read of the label in a photo. `unsure`: the reader may be wrong; `isFibre`: it names one. */
export interface LabelReadingView {
  photoId: string;
  state: LabelState;
  /** Who said so last; null where nobody has yet. */
  by: "client" | "staff" | null;
  /** As it counts now: what a person wrote, else what was read. */
  text: string;
  lines: { text: string; unsure: boolean; isFibre: boolean }[][];
  /** Of the label, in shares of the photo. */
  crop: Frame;
  /** Pixels of the photo. */
  photo: { width: number; height: number };
}
