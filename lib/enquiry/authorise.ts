import "server-only";
import { forbids, type Deed } from "../staff/deeds";
import { noteSecurity } from "../staff/security-log";
import { actorOf } from "./audit";
import { refuse, type Caller, type Refusal } from "./caller";
import { wrong } from "./wrong";

/** The same words whether something does not exist or belongs to somebody else, so that nobody can find out which. */
export const NOT_THERE: Refusal = refuse("not-found", wrong("refusal.not-here"));

/** Whose it is: the enquiry and the questionnaire a thing belongs to, null where it belongs to none. */
export interface Belonging {
  enquiryId: string | null;
  intakeId: string | null;
}

/**
 * The one gate of every operation: null when the caller may, otherwise the refusal. A client reaches only what belongs to
 * their enquiry, a questionnaire only what belongs to it; staff who may do the deed may do it to every enquiry. A refusal
 * of somebody we know is logged.
 */
export function authorise(caller: Caller, deed: Deed, thing?: Belonging): Refusal | null {
  const no = forbids(caller, deed) ?? (thing && !reaches(caller, thing) ? NOT_THERE : null);
  if (no && caller.kind !== "public") noteSecurity("not allowed", { deed, kind: caller.kind, who: actorOf(caller) });
  return no;
}

function reaches(caller: Caller, thing: Belonging): boolean {
  if (caller.kind === "client") return thing.enquiryId === caller.enquiryId;
  if (caller.kind === "intake") return thing.intakeId === caller.intakeId;
  return true;
}
