import { Readable } from "node:stream";
import type { ReadableStream as NodeReadableStream } from "node:stream/web";
import { clientCaller, intakeCallerOrOpen, staffCallerOrNull } from "@/app/_server/caller";
import { clientWords } from "@/app/_server/client-words";
import { readUpload } from "@/app/_server/read-upload";
import { INERT_HEADERS } from "@/app/_server/route-headers";
import { isSameOrigin } from "@/app/_server/same-origin";
import { addPhoto } from "@/lib/enquiry/add-photo";
import { ok, refuse, STATUS_OF, type Caller, type Result } from "@/lib/enquiry/caller";
import { readPhotoLabel } from "@/lib/enquiry/read-photo-label";
import { retellPhoto, retellResult } from "@/lib/enquiry/retell";
import { wrong } from "@/lib/enquiry/wrong";
import { MAX_PHOTO_BYTES } from "@/lib/photo/limits";

export const runtime = "nodejs";

const SAYS = { noForm: wrong("refusal.photo-form"), noFile: wrong("refusal.no-photo"), cut: wrong("refusal.photo-cut") };

/**
 * Takes one photo as multipart/form-data: `kind`, `rugId` where it belongs to a rug, `as` ("client" or "staff", else the
 * questionnaire), `key` (a UUID of the sender's, the same when it is sent again), then `photo`. The fields must stand before the file, which is streamed on as it comes.
 */
export async function POST(request: Request): Promise<Response> {
  const words = await clientWords();
  if (!isSameOrigin(request.headers)) return answer(retellResult(words, refuse("not-allowed", wrong("refusal.not-our-page"))));
  if (!request.body) return answer(retellResult(words, refuse("invalid", SAYS.noFile)));
  const body = Readable.fromWeb(request.body as NodeReadableStream);
  const taken = await readUpload(body, request.headers, async ({ fields, file, name, type }) => {
    const caller = await callerAs(fields.as);
    if (!caller.ok) return caller;
    const added = await addPhoto(caller.value, { kind: fields.kind ?? "", ...(fields.key ? { key: fields.key } : {}), ...(fields.rugId ? { rugId: fields.rugId } : {}) }, file, { name, type });
    const told = fields.as === "staff" ? added : retellPhoto(words, added);
    // Begun at once, so that it is read by the time anybody looks; and looked at without script it is read too.
    if (!told.ok || told.value.kind !== "label") return told;
    const label = await readPhotoLabel(caller.value, told.value.id);
    return label.ok ? ok({ ...told.value, label: label.value }) : told;
  }, { mostBytes: MAX_PHOTO_BYTES, says: SAYS });
  return answer(taken);
}

async function callerAs(who: string | undefined): Promise<Result<Caller>> {
  if (who === undefined || who === "intake") return intakeCallerOrOpen();
  const caller = who === "staff" ? await staffCallerOrNull() : who === "client" ? await clientCaller() : null;
  return caller ? ok(caller) : refuse("not-signed-in", wrong(who === "staff" ? "refusal.sign-in-first" : "refusal.open-link-again"));
}

function answer(result: Result<unknown>): Response {
  const headers = { ...INERT_HEADERS, ...(result.ok || result.code !== "too-many" ? {} : { "retry-after": "600" }) };
  return Response.json(result, { status: result.ok ? 201 : STATUS_OF[result.code], headers });
}
