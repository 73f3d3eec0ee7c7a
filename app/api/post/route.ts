import { Readable } from "node:stream";
import type { ReadableStream as NodeReadableStream } from "node:stream/web";
import { staffCallerOrNull } from "@/app/_server/caller";
import { readUpload } from "@/app/_server/read-upload";
import { INERT_HEADERS } from "@/app/_server/route-headers";
import { isSameOrigin } from "@/app/_server/same-origin";
import { bringPost } from "@/lib/enquiry/bring-post";
import { refuse, STATUS_OF, type Result } from "@/lib/enquiry/caller";
import { MOST_KEPT_BYTES } from "@/lib/enquiry/keep-post";

export const runtime = "nodejs";

const SAYS = { noForm: "Send the message as a form does.", noFile: "No message came with this.", cut: "This message did not arrive whole. Please send it again." };

/** Takes one saved message (.eml) of somebody at the desk as multipart/form-data, streamed on as it comes. */
export async function POST(request: Request): Promise<Response> {
  if (!isSameOrigin(request.headers)) return answer(refuse("not-allowed", "This was not sent from our own page."));
  const caller = await staffCallerOrNull();
  if (!caller) return answer(refuse("not-signed-in", "Please sign in first."));
  if (!request.body) return answer(refuse("invalid", "No message came with this."));
  const body = Readable.fromWeb(request.body as NodeReadableStream);
  return answer(await readUpload(body, request.headers, ({ file }) => bringPost(caller, file, new Date()), { mostBytes: MOST_KEPT_BYTES, says: SAYS }));
}

const answer = (result: Result<unknown>): Response => Response.json(result, { status: result.ok ? 201 : STATUS_OF[result.code], headers: INERT_HEADERS });
