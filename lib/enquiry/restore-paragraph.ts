import "server-only";
import { shippedParagraph } from "../reply/library";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { addVersion, onNewest } from "./paragraph-version";

/** Goes back to the shipped text of a paragraph, as a version of its own: what was written before stays to be seen. Where it is the shipped text already, nothing is added. */
export async function restoreParagraph(caller: Caller, { id, seen }: { id: string; seen: number }, now: Date): Promise<Result<{ version: number }>> {
  const no = authorise(caller, "change-paragraphs");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  if (!shippedParagraph(id)) return NOT_THERE;
  return onNewest({ id, seen, now }, async (tx, newest) => {
    if (!newest?.wording) return ok({ version: seen });
    const version = seen + 1;
    await addVersion(tx, caller, { id, version, wording: null, reason: null, action: "paragraph-restored", at: now });
    return ok({ version });
  });
}
