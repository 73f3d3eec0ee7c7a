import type { LabelState } from "../enquiry/label-view";

/** Who is spoken to. */
export type LabelVoice = "client" | "desk";

/** What is said of a label that stands so; nothing where it is only asked whether it is right. */
export const LABEL_SAYS: Readonly<Record<LabelVoice, Readonly<Record<LabelState, string | null>>>> = {
  client: {
    reading: "Reading the label …",
    read: null,
    unreadable: "We could not make out any words. Could you take it again from closer, so that the label fills the picture, by a window? Or write below what stands on it.",
    failed: "We could not read the label just now. Your photo is with us, and we shall read it ourselves. If you like, write below what stands on it.",
    confirmed: "This is what the label says. Thank you.",
    corrected: "This is what the label says, put right by hand. Thank you.",
    refused: "There is no label in this photo. Thank you.",
    unsure: "Thank you. We shall look at the label ourselves.",
    withdrawn: "Part of this photo was blurred, so what was read of the label no longer counts.",
  },
  desk: {
    reading: "Reading the label …",
    read: null,
    unreadable: "No words could be made out. Frame the label in the photo, or write what stands on it.",
    failed: "The reader did not answer. Frame the label to try again, or write what stands on it.",
    confirmed: "This is what the label says.",
    corrected: "This is what the label says, put right by hand.",
    refused: "There is no label in this photo.",
    unsure: "Whoever was asked could not tell.",
    withdrawn: "Part of the label was blurred, so what was read of it no longer counts.",
  },
};

/** The question stands until somebody has answered it. */
export const isAsked = (state: LabelState): boolean => state === "read" || state === "unsure";
/** There is nothing that could be right, only something to write. */
export const isToWrite = (state: LabelState): boolean => state === "unreadable" || state === "failed" || state === "withdrawn";
