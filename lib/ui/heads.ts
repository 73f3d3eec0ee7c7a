import type { QuestionId } from "../trade/questions";

/** A word or two for each question, where its answers stand in a list that staff scan. */
export const QUESTION_HEADS: Record<QuestionId, string> = {
  wetNow: "Wet now", reason: "Why they wrote", sellerSaid: "It was called", boughtWhere: "Came from", shine: "Shine", footprints: "A line drawn in the pile",
  touch: "Touch", back: "Back", fringe: "Fringe", fringeKind: "Feel of the fringe", incidents: "What happened", liquid: "What got on it", since: "When",
  treatments: "Done about it", treatedBy: "By whom", changes: "How it changed", room: "Walked on", household: "Household", age: "Age of the rug", matters: "What matters",
};
