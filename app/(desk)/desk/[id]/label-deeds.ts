import { DESK_LABEL } from "@/lib/ui/label-words";
import { answerLabel, frameLabelOf, lookAtLabelOf } from "./actions";

/** What staff can do with the label in a photo. */
export const LABELS = { look: lookAtLabelOf, answer: answerLabel, frame: frameLabelOf, says: DESK_LABEL };
