import { callersOfRequest } from "@/app/_server/caller";
import { clientWords } from "@/app/_server/client-words";
import { INERT_HEADERS } from "@/app/_server/route-headers";
import { zipResponse } from "@/app/_server/zip-response";
import { refuse, STATUS_OF, type Refusal } from "@/lib/enquiry/caller";
import { retell } from "@/lib/enquiry/retell";
import { wrong } from "@/lib/enquiry/wrong";
import { copyEnquiry } from "@/lib/enquiry/copy-enquiry";

/** Everything that is kept of an enquiry, for whoever on this device may have it. */
export async function GET(_request: Request, { params }: { params: Promise<{ id: string }> }): Promise<Response> {
  const { id } = await params;
  let refusal: Refusal = refuse("not-signed-in", wrong("refusal.open-link-first"));
  for (const caller of await callersOfRequest()) {
    const copy = await copyEnquiry(caller, id, new Date());
    if (copy.ok) return zipResponse(copy.value);
    refusal = copy;
  }
  return new Response(retell(await clientWords(), refusal.say), { status: STATUS_OF[refusal.code], headers: { ...INERT_HEADERS, "content-type": "text/plain; charset=utf-8" } });
}
