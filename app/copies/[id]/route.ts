import { callersOfRequest } from "@/app/_server/caller";
import { INERT_HEADERS } from "@/app/_server/route-headers";
import { zipResponse } from "@/app/_server/zip-response";
import { refuse, STATUS_OF, type Refusal } from "@/lib/enquiry/caller";
import { copyEnquiry } from "@/lib/enquiry/copy-enquiry";

/** Everything that is kept of an enquiry, for whoever on this device may have it. */
export async function GET(_request: Request, { params }: { params: Promise<{ id: string }> }): Promise<Response> {
  const { id } = await params;
  let refusal: Refusal = refuse("not-signed-in", "Please open the link in our letter first.");
  for (const caller of await callersOfRequest()) {
    const copy = await copyEnquiry(caller, id, new Date());
    if (copy.ok) return zipResponse(copy.value);
    refusal = copy;
  }
  return new Response(refusal.say, { status: STATUS_OF[refusal.code], headers: { ...INERT_HEADERS, "content-type": "text/plain; charset=utf-8" } });
}
