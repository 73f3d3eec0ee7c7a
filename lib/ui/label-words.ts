import type { LabelState } from "../enquiry/label-view";
import { LABEL } from "../words/en/label";
import type { LabelSays } from "../words/label-says";

/** The same at the desk, which is read in English: nobody is thanked, and staff are told what they can do. */
export const DESK_LABEL: LabelSays = {
  ...LABEL,
  "label.unreadable": "No words could be made out. Frame the label in the photo, or write what stands on it.",
  "label.failed": "The reader did not answer. Frame the label to try again, or write what stands on it.",
  "label.confirmed": "This is what the label says.",
  "label.corrected": "This is what the label says, put right by hand.",
  "label.refused": "There is no label in this photo.",
  "label.unsure": "Whoever was asked could not tell.",
  "label.withdrawn": "Part of the label was blurred, so what was read of it no longer counts.",
};

/** How a reading stands, in a sentence; nothing where it is only asked whether it is right. */
export const saysOf = (says: LabelSays, state: LabelState): string | null => (state === "read" ? null : says[`label.${state}`]);

/** The question stands until somebody has answered it. */
export const isAsked = (state: LabelState): boolean => state === "read" || state === "unsure";
/** There is nothing that could be right, only something to write. */
export const isToWrite = (state: LabelState): boolean => state === "unreadable" || state === "failed" || state === "withdrawn";
