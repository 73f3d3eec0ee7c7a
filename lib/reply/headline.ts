import type { ActionId, Assessment } from "../triage/assessment";
import { HARDLY_WORTH, PERHAPS_NOT_WORTH } from "./paragraphs/troubles";

/** What a judgement comes to, as the desk reads it above its figures, and why. */
export interface Headline { readonly says: string; readonly why: string }

const SAYS: Readonly<Record<ActionId, string>> = {
  "leave-alone": "Leave it alone", "routine-clean": "Clean it as usual", "first-aid": "Answer with first aid", "ask-for-more": "Ask for more",
  "inspect-and-test": "Invite it for inspection and testing", "quote-with-limits": "Quote, with limits",
  "advise-cut-down": "Propose cutting it down, if an inspection finds sound ground", "advise-claim-or-replacement": "Advise against cleaning: keep it, replace it or claim",
  refer: "Refer to somebody else", "not-our-work": "Not our work",
};

const ONLY_INSPECTION = "It is provisional: nobody here has inspected it, and only an inspection could change it.";
const INSTEAD_OF_WORK: Headline = { says: "Say that it is likely not worth its cost; inspect it if they wish", why: ONLY_INSPECTION };
/** Where the letter begins with its not being worth the cost. */
const HARDLY: Partial<Record<ActionId, Headline>> = {
  "routine-clean": INSTEAD_OF_WORK, "quote-with-limits": INSTEAD_OF_WORK, "inspect-and-test": INSTEAD_OF_WORK,
  "first-aid": { says: "Answer with first aid; it is likely not worth its cost after that", why: "Something is wet or fresh, and that comes first." },
  "ask-for-more": { says: "Ask for more; as it looks now, it is likely not worth its cost", why: ONLY_INSPECTION },
};
/** Where the letter leaves open whether it is worth the cost. */
const OPEN: Partial<Record<ActionId, Headline>> = {
  "advise-claim-or-replacement": { says: "Advise against cleaning until it has been seen", why: "Whether cleaning would be worth its cost is open from here: no money should be spent on it unseen." },
};
const EVEN: Partial<Record<ActionId, Headline>> = { ...OPEN, "routine-clean": { says: "Clean it as usual, if it turns out worth its cost", why: "It is very likely ordinary soil, but whether cleaning is worth its cost is open from here." } };

const isAntique = ({ findings }: Pick<Assessment, "findings">): boolean => findings.some((f) => f.what === "age" && f.value === "antique");

/** The headline of one rug: it says of the rug's worth what the letter of the same assessment says. Of an antique the letter says nothing of it. */
export function headlineOf(a: Pick<Assessment, "advice" | "beyondRepair" | "findings">): Headline {
  const { action, why } = a.advice;
  const beyond = isAntique(a) ? 0 : a.beyondRepair ?? 0;
  const table = beyond >= HARDLY_WORTH.beyondRepair ? HARDLY : beyond >= PERHAPS_NOT_WORTH.beyondRepair ? EVEN : OPEN;
  return table[action] ?? { says: SAYS[action], why };
}
