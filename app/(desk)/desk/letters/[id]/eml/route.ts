import { staffCallerOrNull } from "@/app/_server/caller";
import { emlResponse } from "@/app/(desk)/_server/eml-response";
import { refuse } from "@/lib/enquiry/caller";
import { letterFile } from "@/lib/enquiry/letter-file";

interface Context { params: Promise<{ id: string }> }

/** One letter as a file for a mail program. */
export async function GET(_: Request, { params }: Context): Promise<Response> {
  const { id } = await params;
  const caller = await staffCallerOrNull();
  return emlResponse(caller ? await letterFile(caller, id) : refuse("not-signed-in", "Please sign in first."), `letter-${id}`);
}
