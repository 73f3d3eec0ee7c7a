import "server-only";
import { randomUUID } from "node:crypto";
import { faultsOf, overpromisesOf, type Fault } from "../reply/check-paragraph";
import { shippedParagraph, type Wording } from "../reply/library";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Refusal, type Result } from "./caller";
import { readLibrary } from "./library";
import { wordingOf, type ParagraphInput } from "./paragraph-form";
import { addVersion, onNewest } from "./paragraph-version";
import { sendingReasonSchema } from "./sending-reason";

export interface ParagraphToSave {
  /** Of a shipped paragraph or one of the workshop's own; null: a new one. */
  id: string | null;
  /** The newest version of the workshop's own that the person saw; 0 where there was none. */
  seen: number;
  input: ParagraphInput;
}

/** Adds a version of a paragraph. Letters from now on use it, and so do the drafts that nobody has touched; letters that were sent keep what they used. */
export async function saveParagraph(caller: Caller, { id, seen, input }: ParagraphToSave, now: Date): Promise<Result<{ id: string; version: number }>> {
  const no = authorise(caller, "change-paragraphs");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  const paragraphId = id ?? `own-${randomUUID()}`;
  return onNewest({ id: paragraphId, seen, now }, async (tx, newest) => {
    if (id !== null && !newest && !shippedParagraph(id)) return NOT_THERE;
    const wording = wordingOf(input, paragraphId, await readLibrary(tx));
    const wrong = refused(paragraphId, wording, input.reason);
    if (wrong) return wrong;
    const [reason, version] = [overpromisesOf(wording).length > 0 ? input.reason : null, seen + 1];
    await addVersion(tx, caller, { id: paragraphId, version, wording, reason, action: "paragraph-written", at: now });
    return ok({ id: paragraphId, version });
  });
}

/** Every fault under its field, one after the other. */
const byField = (faults: readonly Fault[]): Record<string, string> =>
  Object.fromEntries([...new Set(faults.map(({ field }) => field))].map((field) => [field, faults.filter((f) => f.field === field).map(({ say }) => say).join(" ")]));

/** Why a wording is not kept; null where it may be. Words that say more than is known take a reason. */
function refused(id: string, wording: Wording, reason: string): Refusal | null {
  const faults = byField(faultsOf(id, wording));
  const over = sendingReasonSchema.safeParse(reason).success ? [] : overpromisesOf(wording);
  const why = over.map((o) => `“${o.sentence}” ${o.why} ${o.suggestion}`).join(" ");
  const asks = why === "" ? {} : { reason: `${why} To keep ${over.length === 1 ? "it as it is" : "them as they are"}, say why.` };
  const wrong = { ...faults, ...asks };
  if (Object.keys(wrong).length === 0) return null;
  return refuse("invalid", Object.keys(faults).length > 0 ? "Please look at the paragraph again." : asks.reason ?? "", wrong);
}
