import { LABEL } from "@/lib/words/en/label";
import type { LabelSays } from "@/lib/words/label-says";
import { answerLabel, frameLabelOf, lookAtLabelOf } from "./actions";

/** What is said of a label at the desk, which is read in English: nobody is thanked, and staff are told what they can do. */
const DESK_LABEL: LabelSays = {
  ...LABEL,
  "label.unreadable": "No words could be made out. Frame the label in the photo, or write what stands on it.",
  "label.guessed": "The words could not be made out well enough. Frame the label in the photo, or write what stands on it.",
  "label.unread-told": "No words could be made out in this photo. Frame the label, or correct the words that were typed.",
  "label.failed-told": "The reader did not answer. Frame the label to try again, or correct the words that were typed.",
  "label.you-wrote": "Typed of the label",
  "label.told": "Typed of the label, and not the same",
  "label.take-told": "Take the words that were typed",
  "label.look-silk": "Look whether a word stands before “silk”, such as “art” or “artificial”.",
  "label.why-silk": "It may not have been read, and it changes what the rug is made of.",
  "label.silk-more": "Yes, write what the label says",
  "label.failed": "The reader did not answer. Frame the label to try again, or write what stands on it.",
  "label.confirmed": "This is what the label says.",
  "label.corrected": "This is what the label says, put right by hand.",
  "label.refused": "There is no label in this photo.",
  "label.unsure": "Whoever was asked could not tell.",
  "label.withdrawn": "Part of the label was blurred, so what was read of it no longer counts.",
};

/** What staff can do with the label in a photo. */
export const LABELS = { look: lookAtLabelOf, answer: answerLabel, frame: frameLabelOf, says: DESK_LABEL };
