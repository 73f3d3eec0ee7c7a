import * as z from "zod/mini";
import { asStaff } from "@/app/(desk)/_server/as-staff";
import { INERT_HEADERS } from "@/app/_server/route-headers";
import { isSameOrigin } from "@/app/_server/same-origin";
import { refuse, STATUS_OF } from "@/lib/enquiry/caller";
import { letterSchema, saveDraft } from "@/lib/enquiry/save-draft";

export const runtime = "nodejs";

const { subject, text } = letterSchema.shape;
const draftSchema = z.strictObject({ enquiryId: z.string().check(z.minLength(1), z.maxLength(64)), from: z.int().check(z.minimum(1)), subject, text });

/**
 * Keeps a reply as it is written, as JSON. No server action: it is asked while somebody types, without the whole page in its
 * answer, and it may outlive the page, which actions cannot. As an action it answers 200 to whoever asks from our own page: a
 * refusal, such as of a draft that changed meanwhile, is a result with its code.
 */
export async function POST(request: Request): Promise<Response> {
  if (!isSameOrigin(request.headers)) return Response.json(refuse("not-allowed", "This was not sent from our own page."), { status: STATUS_OF["not-allowed"], headers: INERT_HEADERS });
  const given: unknown = await request.json().catch(() => null);
  return Response.json(await asStaff(draftSchema, given, (caller, value) => saveDraft(caller, value)), { headers: INERT_HEADERS });
}
