import { cookies } from "next/headers";
import { CLIENT_COOKIE, cookieOptions } from "@/app/_server/caller";
import { clientWords } from "@/app/_server/client-words";
import { INERT_HEADERS } from "@/app/_server/route-headers";
import { config } from "@/lib/config/config";
import { openClientLink } from "@/lib/enquiry/open-client-link";
import { retell } from "@/lib/enquiry/retell";
import { readSettings } from "@/lib/workshop/settings";
import { deadLink } from "./dead-link";

const DAY_MS = 86_400_000;

/** A client's link: remembers it in a cookie and shows the clean address. Writes nothing, so a mail scanner does no harm. */
export async function GET(_request: Request, { params }: { params: Promise<{ token: string }> }): Promise<Response> {
  const { token } = await params;
  const link = await openClientLink(token);
  if (!link.ok) {
    const [words, settings] = [await clientWords(), await readSettings()];
    return deadLink({ ...settings, words, say: retell(words, link.say) });
  }
  (await cookies()).set(CLIENT_COOKIE, token, cookieOptions((link.value.expiresAt.getTime() - Date.now()) / DAY_MS));
  return new Response(null, { status: 303, headers: { ...INERT_HEADERS, location: `${config.baseUrl}/your-enquiry` } });
}
