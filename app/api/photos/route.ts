import { Readable } from "node:stream";
import type { ReadableStream as NodeReadableStream } from "node:stream/web";
import { clientCaller, intakeCallerOrOpen, staffCallerOrNull } from "@/app/_server/caller";
import { readUpload } from "@/app/_server/read-upload";
import { INERT_HEADERS } from "@/app/_server/route-headers";
import { isSameOrigin } from "@/app/_server/same-origin";
import { addPhoto } from "@/lib/enquiry/add-photo";
import { ok, refuse, STATUS_OF, type Caller, type Result } from "@/lib/enquiry/caller";
import { MAX_PHOTO_BYTES } from "@/lib/photo/server/spool";

export const runtime = "nodejs";

/**
 * Takes one photo as multipart/form-data: `kind`, `rugId` where it belongs to a rug, `as` ("client" or "staff", else the
 * questionnaire), `key` (a UUID of the sender's, the same when it is sent again), then `photo`. The fields must stand before the file, which is streamed on as it comes.
 */
export async function POST(request: Request): Promise<Response> {
  if (!isSameOrigin(request.headers)) return answer(refuse("not-allowed", "This photo was not sent from our own page."));
  if (!request.body) return answer(refuse("invalid", "No photo came with this."));
  const body = Readable.fromWeb(request.body as NodeReadableStream);
  return answer(
    await readUpload(body, request.headers, async ({ fields, file, name, type }) => {
      const caller = await callerAs(fields.as);
      if (!caller.ok) return caller;
      return addPhoto(caller.value, { kind: fields.kind ?? "", ...(fields.key ? { key: fields.key } : {}), ...(fields.rugId ? { rugId: fields.rugId } : {}) }, file, { name, type });
    }, { what: "photo", mostBytes: MAX_PHOTO_BYTES }),
  );
}

async function callerAs(who: string | undefined): Promise<Result<Caller>> {
  if (who === undefined || who === "intake") return intakeCallerOrOpen();
  const caller = who === "staff" ? await staffCallerOrNull() : who === "client" ? await clientCaller() : null;
  return caller ? ok(caller) : refuse("not-signed-in", who === "staff" ? "Please sign in first." : "Please open the link in your letter again.");
}

function answer(result: Result<unknown>): Response {
  const headers = { ...INERT_HEADERS, ...(result.ok || result.code !== "too-many" ? {} : { "retry-after": "600" }) };
  return Response.json(result, { status: result.ok ? 201 : STATUS_OF[result.code], headers });
}
