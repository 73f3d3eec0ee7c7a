/** What was read of the label in a photo. `unsure`: the reader may be wrong; `isFibre`: it names one. */
export interface LabelReadingView {
  photoId: string;
  state: "read" | "unreadable" | "confirmed" | "corrected" | "refused";
  /** As it counts now: what a person wrote, else what was read. */
  text: string;
  lines: { text: string; unsure: boolean; isFibre: boolean }[][];
  /** Of the label, in shares of the photo. */
  crop: { x: number; y: number; width: number; height: number };
  /** Pixels of the photo. */
  photo: { width: number; height: number };
}
