import type { Result } from "@/lib/enquiry/caller";
import type { Words } from "./use-draft";

/** The Fetch standard's bound for what may outlive its page: 64 KiB over all such requests; some is left for another that is on its way. */
const MOST_OUTLIVING_BYTES = 60_000;

/** Sends the words of a reply to be kept; it arrives also where the page is left meanwhile. Throws where the server cannot be reached. */
export async function keepDraft(given: Words & { enquiryId: string; from: number }): Promise<Result<{ number: number }>> {
  const body = new Blob([JSON.stringify(given)], { type: "application/json" });
  const response = await fetch("/api/drafts", { method: "POST", body, keepalive: body.size < MOST_OUTLIVING_BYTES });
  return (await response.json()) as Result<{ number: number }>;
}
