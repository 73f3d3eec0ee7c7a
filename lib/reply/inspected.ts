import type { ActionId, Assessment } from "../triage/assessment";
import type { Words } from "../words/words";
import { beyondTold } from "./damage-told";
import { actionOf } from "./kept-whole";

/** A named person's own inspection of a rug, as letters, the desk and documents tell it. `on`: its day, written out. */
export interface Inspected { readonly by: string; readonly on: string; readonly isBeyondRepair: boolean }
/** A rug's judgement, and the newest inspection of it that stands; absent or null: nobody here has inspected it. */
export interface PerhapsSeen { assessment: Assessment; inspection?: Inspected | null }

/** What it found, as a fact of letters. */
export const foundBy = ({ inspection }: PerhapsSeen): "none" | "beyond" | "not-beyond" => (!inspection ? "none" : inspection.isBeyondRepair ? "beyond" : "not-beyond");

/** The person's judgement, in a sentence. */
export const verdictIn = ({ by, on, isBeyondRepair }: Inspected, words: Words): string => words.say(isBeyondRepair ? "report.beyond" : "report.not-beyond", { by, day: on });

/** The chance that it is beyond economic repair, 0–1, as it is told: once a person has judged that, theirs alone, which knows no chance where they say that it is not. */
export function beyondSeen({ assessment, inspection }: PerhapsSeen): number | null {
  if (!inspection) return beyondTold(assessment);
  return inspection.isBeyondRepair ? 1 : null;
}

/** What asks for an inspection, or for more, or offers work: none of it is advised of a rug that was found beyond economic repair. */
const FOR_WORK: readonly ActionId[] = ["ask-for-more", "routine-clean", "inspect-and-test", "quote-with-limits"];
/** What waits for an inspection, or holds that the work is not worth its cost: after one that found otherwise, the work is quoted for. */
const UNSEEN: readonly ActionId[] = ["ask-for-more", "inspect-and-test", "advise-claim-or-replacement", "not-our-work"];

/** What is advised once an inspection stands: the judgement's own advice as far as the person's judgement leaves it room. */
export function actionSeen({ assessment, inspection }: PerhapsSeen): ActionId {
  const action = actionOf(assessment);
  if (!inspection) return action;
  if (inspection.isBeyondRepair) return FOR_WORK.includes(action) ? "advise-claim-or-replacement" : action;
  return UNSEEN.includes(action) ? "quote-with-limits" : action;
}
