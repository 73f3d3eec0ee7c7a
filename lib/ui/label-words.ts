import type { LabelState } from "../enquiry/label-view";
import type { LabelSays } from "../words/label-says";

/** How a reading stands, in a sentence; nothing where it is only asked whether it is right. */
export const saysOf = (says: LabelSays, state: LabelState): string | null => (state === "read" ? null : says[`label.${state}`]);

/** The question stands until somebody has answered it. */
export const isAsked = (state: LabelState): boolean => state === "read" || state === "unsure";
/** There is nothing that could be right, only something to write. */
export const isToWrite = (state: LabelState): boolean => state === "unreadable" || state === "failed" || state === "withdrawn";
