import { cookies } from "next/headers";
import { CLIENT_COOKIE, cookieOptions } from "@/app/_server/caller";
import { INERT_HEADERS } from "@/app/_server/route-headers";
import { config } from "@/lib/config/config";
import { openClientLink } from "@/lib/enquiry/open-client-link";
import { readSettings } from "@/lib/workshop/settings";

const DAY_MS = 86_400_000;

/** A client's link: remembers it in a cookie and shows the clean address. Writes nothing, so a mail scanner does no harm. */
export async function GET(_request: Request, { params }: { params: Promise<{ token: string }> }): Promise<Response> {
  const { token } = await params;
  const link = await openClientLink(token);
  if (!link.ok)
    return new Response(await deadLinkPage(link.say), { status: 410, headers: { ...INERT_HEADERS, "content-type": "text/html; charset=utf-8" } });
  (await cookies()).set(CLIENT_COOKIE, token, cookieOptions((link.value.expiresAt.getTime() - Date.now()) / DAY_MS));
  return new Response(null, { status: 303, headers: { ...INERT_HEADERS, location: `${config.baseUrl}/your-enquiry` } });
}

const escaped = (text: string) => text.replace(/[&<>"']/g, (c) => `&#${c.charCodeAt(0)};`);

async function deadLinkPage(say: string): Promise<string> {
  const { name, telephone, email } = await readSettings();
  const ways = [telephone, email]
    .filter(Boolean)
    .map((w) => `<p>${escaped(w)}</p>`)
    .join("");
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>This link is too old</title></head>
<body><main><h1>This link is too old</h1><p>${escaped(say)}</p><p>${escaped(name)}</p>${ways}</main></body></html>`;
}
