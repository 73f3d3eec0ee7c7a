import { createReadStream } from "node:fs";
import { Readable } from "node:stream";
import { callersOfRequest } from "@/app/_server/caller";
import { clientWords } from "@/app/_server/client-words";
import { INERT_HEADERS } from "@/app/_server/route-headers";
import { NOT_THERE } from "@/lib/enquiry/authorise";
import { STATUS_OF } from "@/lib/enquiry/caller";
import { retell } from "@/lib/enquiry/retell";
import { photoFile } from "@/lib/enquiry/photo-file";

/** One size of a photo, for whoever on this device may see it. Private: never cached outside of the browser's own page. */
export async function GET(_request: Request, { params }: { params: Promise<{ id: string; size: string }> }): Promise<Response> {
  const { id, size } = await params;
  const nobody = await photoFile({ kind: "public", addressHash: null }, id, size);
  let refusal = nobody.ok ? NOT_THERE : nobody;
  for (const caller of await callersOfRequest()) {
    const found = await photoFile(caller, id, size);
    if (found.ok) {
      const { path, type, bytes } = found.value;
      const body = Readable.toWeb(createReadStream(path)) as ReadableStream<Uint8Array>;
      return new Response(body, {
        headers: { ...INERT_HEADERS, "content-type": type, "content-length": String(bytes), "content-disposition": `inline; filename="${id}.jpg"` },
      });
    }
    refusal = found;
  }
  return new Response(retell(await clientWords(), refusal.say), { status: STATUS_OF[refusal.code], headers: { ...INERT_HEADERS, "content-type": "text/plain; charset=utf-8" } });
}
