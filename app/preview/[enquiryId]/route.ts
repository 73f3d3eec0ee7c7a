import * as z from "zod/mini";
import { staffCallerOrNull } from "@/app/_server/caller";
import { INERT_HEADERS } from "@/app/_server/route-headers";
import { isSameOrigin } from "@/app/_server/same-origin";
import { refuse, STATUS_OF, type Result } from "@/lib/enquiry/caller";
import { previewLetter } from "@/lib/enquiry/preview-letter";

interface Context { params: Promise<{ enquiryId: string }> }

const schema = z.object({ kind: z.enum(["reply", "question"]), form: z.enum(["html", "text"]), subject: z.string(), text: z.string() });

/** A letter's own page may have its own style and nothing else; only our pages may frame it. */
const HEADERS = { ...INERT_HEADERS, "content-security-policy": "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'self'; sandbox" };

/** The letter as it will arrive, for a frame at the desk: the words are sent along, because they need not be kept yet. */
export async function POST(request: Request, { params }: Context): Promise<Response> {
  if (!isSameOrigin(request.headers)) return answer(403, "text/plain", "This was not sent from our own page.");
  const { enquiryId } = await params;
  const fields = schema.safeParse(Object.fromEntries(await request.formData()));
  const caller = await staffCallerOrNull();
  const letter: Result<{ html: string; text: string }> = !caller ? refuse("not-signed-in", "Please sign in first.")
    : !fields.success ? refuse("invalid", "That could not be read.") : await previewLetter(caller, { enquiryId, ...fields.data });
  if (!letter.ok) return answer(STATUS_OF[letter.code], "text/plain", letter.say);
  return fields.data?.form === "html" ? answer(200, "text/html", letter.value.html) : answer(200, "text/plain", letter.value.text);
}

const answer = (status: number, type: string, body: string) => new Response(body, { status, headers: { ...HEADERS, "content-type": `${type}; charset=utf-8` } });
