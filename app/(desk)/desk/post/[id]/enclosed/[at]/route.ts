import { staffCallerOrNull } from "@/app/_server/caller";
import { contentDisposition } from "@/app/_server/content-disposition";
import { INERT_HEADERS } from "@/app/_server/route-headers";
import { refuse, STATUS_OF } from "@/lib/enquiry/caller";
import { enclosedFile } from "@/lib/enquiry/post-file";

interface Context { params: Promise<{ id: string; at: string }> }

/** A file that a stranger enclosed. It is saved and never shown by the browser, whatever it calls itself. */
export async function GET(_: Request, { params }: Context): Promise<Response> {
  const { id, at } = await params;
  const caller = await staffCallerOrNull();
  const file = caller ? await enclosedFile(caller, { postId: id, at: /^\d{1,4}$/u.test(at) ? Number(at) : -1 }) : refuse("not-signed-in", "Please sign in first.");
  if (!file.ok) return new Response(file.say, { status: STATUS_OF[file.code], headers: { ...INERT_HEADERS, "content-type": "text/plain; charset=utf-8" } });
  const { bytes, fileName } = file.value;
  return new Response(new Uint8Array(bytes), {
    headers: { ...INERT_HEADERS, "content-type": "application/octet-stream", "content-length": String(bytes.length), "content-disposition": contentDisposition("attachment", fileName, "enclosure") },
  });
}
