import { REFUSALS } from "../words/en/refusals";
import { refuse, type Caller, type Refusal, type StaffRole } from "./caller";

/** Who may do what. The one table of permissions; which enquiry a client or an intake may touch is decided beside the data. */
const EVERYONE_HERE = ["owner", "reviewer", "trainee"] as const;
const SIGNS = ["owner", "reviewer"] as const;
const OWNER = ["owner"] as const;

type Kind = Exclude<Caller["kind"], "staff">;
interface Rule {
  staff: readonly StaffRole[];
  others: readonly Kind[];
}

export const DEEDS = {
  "open-intake": { staff: [], others: ["public", "intake"] },
  "fill-intake": { staff: [], others: ["intake"] },
  "add-photo": { staff: EVERYONE_HERE, others: ["intake", "client"] },
  "see-photo": { staff: EVERYONE_HERE, others: ["intake", "client"] },
  /** Cannot be undone. */
  "blur-photo": { staff: SIGNS, others: [] },
  /** Touching an untouched and an affected spot. */
  "measure-photo": { staff: EVERYONE_HERE, others: ["intake", "client"] },
  "plan-rug": { staff: EVERYONE_HERE, others: [] },
  "read-label": { staff: EVERYONE_HERE, others: ["intake", "client"] },
  "enter-enquiry": { staff: EVERYONE_HERE, others: ["system"] },
  "bring-post": { staff: EVERYONE_HERE, others: ["system"] },
  "sort-post": { staff: EVERYONE_HERE, others: ["system"] },
  "lift-suppression": { staff: SIGNS, others: [] },
  "read-desk": { staff: EVERYONE_HERE, others: [] },
  "edit-draft": { staff: EVERYONE_HERE, others: [] },
  /** A trainee's approval waits for a second person. */
  approve: { staff: EVERYONE_HERE, others: [] },
  second: { staff: SIGNS, others: [] },
  /** Whoever rang a client without an address says so. */
  "record-read-out": { staff: EVERYONE_HERE, others: [] },
  "take-back": { staff: EVERYONE_HERE, others: [] },
  move: { staff: SIGNS, others: [] },
  /** Cannot be undone. Clients: their own, as long as nothing was ordered. */
  "erase-enquiry": { staff: SIGNS, others: ["client"] },
  "copy-enquiry": { staff: SIGNS, others: ["client"] },
  "record-test": { staff: EVERYONE_HERE, others: [] },
  /** Puts an enquiry in its place that words nobody had read brought to the top. */
  "set-words-aside": { staff: EVERYONE_HERE, others: [] },
  /** Sends what waits to another address, and may end a client's links. */
  "correct-client": { staff: SIGNS, others: [] },
  "correct-answer": { staff: EVERYONE_HERE, others: [] },
  /** Whoever inspected a rug signs for it. */
  "record-inspection": { staff: SIGNS, others: [] },
  "make-document": { staff: EVERYONE_HERE, others: [] },
  "read-document": { staff: EVERYONE_HERE, others: ["client"] },
  /** To one's own address, never to a client. */
  "send-test-letter": { staff: EVERYONE_HERE, others: [] },
  "assess-rug": { staff: EVERYONE_HERE, others: ["system"] },
  "read-own-page": { staff: [], others: ["client"] },
  "write-to-workshop": { staff: [], others: ["client"] },
  "change-settings": { staff: OWNER, others: ["system"] },
  /** The workshop's own letters: their paragraphs, when they apply, their tone. */
  "change-paragraphs": { staff: OWNER, others: [] },
  "switch-reagent": { staff: OWNER, others: [] },
  "manage-staff": { staff: OWNER, others: [] },
} as const satisfies Record<string, Rule>;
export type Deed = keyof typeof DEEDS;

/** null when the caller may; otherwise why not: `not-signed-in` for anybody who is not staff, `not-allowed` for a role too low. */
export function forbids(caller: Caller, deed: Deed): Refusal | null {
  const rule: Rule = DEEDS[deed];
  if (caller.kind === "staff") {
    return rule.staff.includes(caller.role) ? null : refuse("not-allowed", "Your role does not include this. Ask the owner of the workshop.");
  }
  if (rule.others.includes(caller.kind)) return null;
  return rule.staff.length > 0 ? refuse("not-signed-in", REFUSALS["refusal.sign-in-first"]) : refuse("not-allowed", REFUSALS["refusal.not-open"]);
}
