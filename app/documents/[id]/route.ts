import { callersOfRequest } from "@/app/_server/caller";
import { clientWords } from "@/app/_server/client-words";
import { contentDisposition } from "@/app/_server/content-disposition";
import { INERT_HEADERS } from "@/app/_server/route-headers";
import { refuse, STATUS_OF, type Refusal } from "@/lib/enquiry/caller";
import { retell } from "@/lib/enquiry/retell";
import { wrong } from "@/lib/enquiry/wrong";
import { documentFile } from "@/lib/enquiry/document-file";

/** Not sandboxed: browsers show no PDF in a sandbox. Nothing in the file runs, and nothing may be fetched from it. */
const HEADERS = { ...INERT_HEADERS, "content-security-policy": "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'" };

/** A printed document as it was made, for whoever on this device may read it. */
export async function GET(_request: Request, { params }: { params: Promise<{ id: string }> }): Promise<Response> {
  const { id } = await params;
  let refusal: Refusal = refuse("not-signed-in", wrong("refusal.open-link-first"));
  for (const caller of await callersOfRequest()) {
    const found = await documentFile(caller, id, new Date());
    if (found.ok) {
      const { bytes, fileName, type } = found.value;
      return new Response(new Uint8Array(bytes), { headers: { ...HEADERS, "content-type": type, "content-length": String(bytes.length), "content-disposition": contentDisposition("inline", fileName, "document.pdf") } });
    }
    refusal = found;
  }
  return new Response(retell(await clientWords(), refusal.say), { status: STATUS_OF[refusal.code], headers: { ...HEADERS, "content-type": "text/plain; charset=utf-8" } });
}
