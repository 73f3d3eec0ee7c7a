import type { Assessment } from "../../triage/assessment";
import { HARDLY_WORTH } from "../paragraphs/troubles";
import type { Beyond } from "./beyond";
import { clausesOf } from "./sentences";

const DONE = "(?:clean|wash|repair|restor|mend|sav|rescu)(?:ed|ing|e)?";
const WORK = "(?:cleans?|cleaning|wash|washing|repairs?|restoration|treatment)";
/** That work on it is worth its cost. */
const WORTH_IT = new RegExp([
  `\\bworth (?:having (?:it|the rug|your rug|this) )?${DONE}\\b`, `\\bworth (?:it|its (?:cost|price)|the (?:cost|price|money|expense|outlay)|paying|every)\\b`, "\\bmoney well spent\\b|\\bmoney\\b.*\\bnot wasted\\b",
  `\\b(?:${WORK}|having it ${DONE})\\b.*\\b(?:makes? (?:good )?sense|pays? (?:off|for itself)|repays?|(?:is|are) (?:an? )?(?:sensible|reasonable|good|justified|money))\\b`, `\\bpay you to have it ${DONE}`, `\\b(?:deserves?|merits?) an? (?:\\w+ )?${WORK}\\b`, `\\bdo well to have it ${DONE}`,
  `\\b(?:recommend|advise|suggest) (?:an?|the|having it) (?:\\w+ )?(?:${WORK}|${DONE})\\b`,
].join("|"), "u");
/** It speaks of work, or of the rug; what is worth a question or a photo is none. */
const OF_WORK = new RegExp(`\\b(?:${WORK}|${DONE})\\b|\\bmoney\\b`, "u");
/** Denied, left open, or hung on something. */
const HELD_OFF = /\b(?:not(?! wasted)|never|no|cannot|hardly|scarcely|doubt\w*|unlikely|whether|if|unless|(?:may|might|could)(?! well)|perhaps|make it worth|too \w+ to|only|than|you (?:asked|wrote|feel|think))\b/u;

/** That the work is worth its cost, where it probably is not. */
export function worthBeyond(plain: string, { beyondRepair }: Assessment): Beyond[] {
  if (beyondRepair === null || beyondRepair < HARDLY_WORTH.beyondRepair) return [];
  if (!clausesOf(plain).some((clause) => WORTH_IT.test(clause) && OF_WORK.test(clause) && !HELD_OFF.test(clause))) return [];
  return [{ rule: "verdict", why: `The assessment gives a chance of ${Math.round(beyondRepair * 100)} in 100 that the work is not worth its cost.`, suggestion: "Say that it is probably not worth its cost, or leave it out." }];
}
