import "server-only";
import { suppressedWhy } from "../mail/suppression";
import { database, type Tx } from "../store/database";
import { readSettings } from "../workshop/settings";
import { acknowledgeAgain } from "./acknowledge-again";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { asSeen, clientSchema, isSameAddress, type Contact } from "./client-schema";
import { enquiriesOfAddress } from "./enquiries-of-address";
import { beginFreshDraft } from "./fresh-draft";
import { holdBack } from "./hold-back";
import { inOneStep } from "./one-step";
import { unlessOwn } from "./own-address";
import { redirectLetters, type Redirected } from "./redirect-letters";
import { waitingInPost } from "./waiting-in-post";
import { pokeOutbox } from "./write-letter";

export interface ClientCorrection {
  enquiryId: string;
  /** What stood there when the person began, as `asSeen` writes it: where somebody changed it since, nothing is overwritten. */
  seen: string;
  contact: Contact;
  /** The old address is another person's: the links sent before open nothing any more. Means nothing where the address stays. */
  isSomebodyElses: boolean;
}

interface Done extends Redirected {
  /** The address before and now; null for none. */
  was: string | null;
  is: string | null;
  /** Whether the links to the client's own page were ended. */
  areLinksEnded: boolean;
  /** Whether the acknowledgement, with a new link, goes to the new address. */
  isAcknowledged: boolean;
}
export interface Corrected extends Done {
  /** Why nothing is sent to the new address either; null where it may be written to. */
  suppressedWhy: string | null;
  /** References of other clients' enquiries that have the old address still. */
  others: string[];
}

/**
 * Corrects how a client is reached, for all enquiries of that client. Letters that no server has taken go to the new address; one of
 * which nobody knows whether it arrived is not sent again, and is ours to write anew. That mail was refused is said of an address, so
 * a new one begins without it. Refused while a letter is leaving for the old address, and where somebody changed the details meanwhile.
 */
export async function correctClient(caller: Caller, given: ClientCorrection, now: Date): Promise<Result<Corrected>> {
  const no = authorise(caller, "correct-client");
  if (no) return no;
  const { name, email, telephone } = given.contact;
  const parsed = clientSchema.safeParse({ name, email: email ?? "", telephone: telephone ?? "" });
  if (!parsed.success) return refuse("invalid", "Please look at this once more.", Object.fromEntries(parsed.error.issues.map((i) => [String(i.path[0]), i.message])));
  const is = parsed.data;
  const own = unlessOwn(is.email, await readSettings(), "email");
  if (own) return own;
  const done = await inOneStep((tx) => correct(tx, caller, { ...given, contact: is }, now));
  if (!done.ok) return done;
  pokeOutbox();
  const { was } = done.value;
  const others = was && !isSameAddress(was, is.email) ? await enquiriesOfAddress(database(), was) : [];
  return ok({ ...done.value, suppressedWhy: is.email ? await suppressedWhy(database(), is.email) : null, others: others.map((e) => e.reference) });
}

async function correct(tx: Tx, caller: Caller, { enquiryId, seen, contact: is, isSomebodyElses }: ClientCorrection, now: Date): Promise<Result<Done>> {
  const enquiry = await tx.enquiry.findUnique({ where: { id: enquiryId }, select: { client: { select: { id: true, name: true, email: true, telephone: true } } } });
  if (!enquiry) return NOT_THERE;
  const { id: clientId, ...was } = enquiry.client;
  if (asSeen(was) !== seen) return refuse("changed-meanwhile", `Somebody has corrected this meanwhile. It is now: ${inWords(was)}. What you wrote is still here: look at every field before you keep it.`);
  const changed = changes(was, is);
  if (Object.keys(changed).length === 0) return refuse("invalid", "Nothing is different from what stands there already.");
  const isNewAddress = !isSameAddress(was.email, is.email);
  const areLinksEnded = isNewAddress && isSomebodyElses;
  const lifted = isNewAddress ? { suppressedAt: null, suppressedWhy: null } : {};
  const { count } = await tx.client.updateMany({ where: { id: clientId, ...was }, data: { ...is, ...lifted } });
  if (count !== 1) return NOT_THERE;
  const letters = await redirectLetters(tx, caller, { clientId, was, is, areLinksEnded }, now);
  if (!letters.ok) return letters;
  if (areLinksEnded) await tx.clientLink.updateMany({ where: { enquiry: { clientId }, revokedAt: null }, data: { revokedAt: now } });
  const detail = { ...changed, ...letters.value, areLinksEnded: Number(areLinksEnded) };
  let isAcknowledged = false;
  const isWrittenFrom = isNewAddress && (await waitingInPost(tx, is.email)).length > 0;
  for (const { id } of await tx.enquiry.findMany({ where: { clientId }, select: { id: true } })) {
    if (isNewAddress && (await acknowledgeAgain(tx, { enquiryId: id, to: is, was: was.email, isDue: areLinksEnded || was.email === null }, now))) isAcknowledged = true;
    await beginFreshDraft(tx, id, now);
    if (isWrittenFrom) await holdBack(tx, id, now);
    await audit(tx, caller, { action: was.email === is.email ? "client-corrected" : "address-corrected", enquiryId: id, at: now, detail });
  }
  return ok({ ...letters.value, was: was.email, is: is.email, areLinksEnded, isAcknowledged });
}

/** What was and what is, of each detail that differs. */
function changes(was: Contact, is: Contact): Record<string, string | null> {
  const fields = ["name", "email", "telephone"] as const;
  return Object.fromEntries(fields.filter((f) => was[f] !== is[f]).flatMap((f) => [[`${f}Was`, was[f]], [`${f}Is`, is[f]]]));
}

const inWords = ({ name, email, telephone }: Contact): string => [name, email ?? "no e-mail address", telephone ?? "no telephone number"].join(", ");
