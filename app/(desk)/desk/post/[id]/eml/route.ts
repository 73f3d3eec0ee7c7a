import { staffCallerOrNull } from "@/app/_server/caller";
import { refuse } from "@/lib/enquiry/caller";
import { postFile } from "@/lib/enquiry/post-file";
import { emlResponse } from "@/app/(desk)/_server/eml-response";

interface Context { params: Promise<{ id: string }> }

/** One message as it came. It is saved and never shown by the browser: what is in it was written by strangers. */
export async function GET(_: Request, { params }: Context): Promise<Response> {
  const { id } = await params;
  const caller = await staffCallerOrNull();
  return emlResponse(caller ? await postFile(caller, id) : refuse("not-signed-in", "Please sign in first."), `message-${id}`);
}
