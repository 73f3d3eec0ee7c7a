import { staffCallerOrNull } from "@/app/_server/caller";
import { refuse, STATUS_OF } from "@/lib/enquiry/caller";
import { letterFile } from "@/lib/enquiry/letter-file";

interface Context { params: Promise<{ id: string }> }

/** One letter as a file for a mail program. Nothing of the letter is in the file's name. */
export async function GET(_: Request, { params }: Context): Promise<Response> {
  const { id } = await params;
  const caller = await staffCallerOrNull();
  const file = caller ? await letterFile(caller, id) : refuse("not-signed-in", "Please sign in first.");
  if (!file.ok) return new Response(file.say, { status: STATUS_OF[file.code], headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" } });
  return new Response(new Uint8Array(file.value.bytes), {
    headers: {
      "content-type": file.value.type, "content-disposition": `attachment; filename="letter-${id.replace(/[^a-z0-9-]/gi, "")}.eml"`,
      "cache-control": "no-store", "x-content-type-options": "nosniff",
    },
  });
}
