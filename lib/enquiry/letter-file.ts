import "server-only";
import { letterAsEml } from "../mail/outbox";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";

/** A letter as a file that mail programs open (.eml), for staff: what goes out, or what would. */
export async function letterFile(caller: Caller, letterId: string): Promise<Result<{ bytes: Buffer; type: "message/rfc822" }>> {
  const no = authorise(caller, "read-desk");
  if (no) return no;
  const bytes = await letterAsEml(letterId);
  return bytes ? ok({ bytes, type: "message/rfc822" }) : NOT_THERE;
}
