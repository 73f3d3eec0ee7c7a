import "server-only";
import { STATUS_OF, type Result } from "@/lib/enquiry/caller";

/** A letter as a file to save. Nothing of the letter is in the file's name. */
export function emlResponse(file: Result<{ bytes: Buffer; type: string }>, name: string): Response {
  if (!file.ok) return new Response(file.say, { status: STATUS_OF[file.code], headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" } });
  return new Response(new Uint8Array(file.value.bytes), {
    headers: {
      "content-type": file.value.type, "content-disposition": `attachment; filename="${name.replace(/[^a-z0-9-]/gi, "")}.eml"`,
      "cache-control": "no-store", "x-content-type-options": "nosniff",
    },
  });
}
