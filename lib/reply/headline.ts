import type { ActionId, Assessment } from "../triage/assessment";
import { actionTold, WORDS_TOLD, reasonOf, whyElsewhere, type Known } from "./headline-why";
import { type Inspected } from "./inspected";
import { HARDLY_WORTH, PERHAPS_NOT_WORTH } from "./paragraphs/troubles";
import { beyondLikely } from "./phrases";

/** What a judgement comes to, as the desk reads it above its figures, and what of this enquiry decided it. */
export interface Headline { readonly says: string; readonly why: string }

type Table = Partial<Record<ActionId, string>>;
const SAYS: Readonly<Record<ActionId, string>> = {
  "leave-alone": "Leave it alone", "routine-clean": "Clean it as usual", "first-aid": "Answer with first aid", "ask-for-more": "Ask for more",
  "inspect-and-test": "Invite it for inspection and testing", "quote-with-limits": "Quote, with limits",
  "advise-cut-down": "Propose cutting it down, if an inspection finds sound ground", "advise-claim-or-replacement": "Advise against cleaning: keep it or replace it",
  refer: "Refer to somebody else", "not-our-work": "Not our work",
};

const insteadOfWork = (likely: string) => `Say that it is ${likely} not worth its cost; inspect it if they wish`;
/** Where the letter begins with its not being worth the cost. `likely`: the letter's own word for its chance. */
const hardly = (likely: string): Table => ({
  "routine-clean": insteadOfWork(likely), "quote-with-limits": insteadOfWork(likely), "inspect-and-test": insteadOfWork(likely),
  "first-aid": `Answer with first aid; it is ${likely} not worth its cost after that`,
  "ask-for-more": `Ask for more; as it looks now, it is ${likely} not worth its cost`,
});
/** Where the letter asks it in only once a firm that treats mould has seen it. `likely`: how likely it is not worth its cost, as the letter says; null where the letter does not begin with that. */
function mouldFirst(likely: string | null): Table {
  const says = likely ? `Say that it is ${likely} not worth its cost; if they wish to keep it, a firm that treats mould sees it first` : "Have a firm that treats mould see it first; then inspect and test it";
  return { "routine-clean": says, "quote-with-limits": says, "inspect-and-test": says };
}
/** Where the letter leaves open whether it is worth the cost. */
const OPEN: Table = { "advise-claim-or-replacement": "Advise against cleaning until it has been seen" };
const EVEN: Table = { ...OPEN, "routine-clean": "Clean it as usual, if it turns out worth its cost" };
const TEST_FIRST = "Test it before any cleaning is offered";
/** Where the letter leaves open until a test how it could be cleaned. */
const TESTED_FIRST = { "routine-clean": TEST_FIRST };

/** Where the letter speaks of a claim. */
const CLAIM = { "advise-claim-or-replacement": "Advise against cleaning: keep it, replace it or claim" };

/** Where somebody here has inspected it. */
const SEEN: Table = { "advise-cut-down": "Propose cutting it down, where its ground is sound" };

/** The same after a flood: nobody waits for the firm to say what comes of it, and how it could be cleaned is open until a test. */
const FLOOD_SEEN = { beyond: "Tell them that it is beyond economic repair", notBeyond: TEST_FIRST };
/** The verdict of who inspected it, as what there is to do. Where something else of it is for other hands, it still goes there. */
function saysSeen(a: Assessment, { isBeyondRepair }: Inspected, { known, plain }: { known: Known; plain: Readonly<Record<ActionId, string>> }): string {
  const action = actionTold(a, known.letter);
  const isOfFlood = known.letter.isHeldBack === "flood" && action !== "first-aid" && whyElsewhere(a, known).length === 0;
  return isOfFlood ? FLOOD_SEEN[isBeyondRepair ? "beyond" : "notBeyond"] : (SEEN[action] ?? plain[action]);
}

/** The headline of one rug: it says of the rug's worth what the letter of the same assessment says, and of how far it comes back no range that the letter does not give. */
export function headlineOf(a: Assessment, known: Known): Headline {
  if (known.letter.isHeldBack === "wet") return { says: "Ask first whether it is wet", why: WORDS_TOLD };
  const { inspection, hasClaim, isCleaningOpen } = known.letter;
  const tested: Table = isCleaningOpen ? TESTED_FIRST : {};
  const plain = { ...SAYS, ...(hasClaim ? CLAIM : {}), ...tested };
  const action = actionTold(a, known.letter);
  if (inspection) return { says: saysSeen(a, inspection, { known, plain }), why: reasonOf(a, known, { isHardlyWorth: false, isOpen: false }) };
  const beyond = known.letter.isWorthTold ? (a.beyondRepair ?? 0) : 0;
  const isHardly = beyond >= HARDLY_WORTH.beyondRepair;
  const likely = isHardly ? beyondLikely(beyond, known.words) : null;
  const worth = likely ? hardly(likely) : beyond >= PERHAPS_NOT_WORTH.beyondRepair ? { ...EVEN, ...tested } : OPEN;
  const table = known.letter.firstTo.includes("mould") ? { ...worth, ...mouldFirst(likely) } : worth;
  return { says: table[action] ?? plain[action], why: reasonOf(a, known, { isHardlyWorth: isHardly && action in worth, isOpen: !isHardly && action in worth }) };
}
