import { createHash } from "node:crypto";
import type { Words } from "@/lib/words/words";
import { INERT_HEADERS } from "@/app/_server/route-headers";

/** In the colours of app/globals.css; this page is no part of the application and may load nothing. */
const STYLE = `:root{color-scheme:light dark}body{margin:0;background:#f5f5f2;color:#26282a;font:1.0625rem/1.5 system-ui,sans-serif}main{max-width:34rem;margin:0 auto;padding:2rem 1.25rem}
h1{font:500 1.75rem/1.2 Georgia,serif;margin:0 0 1rem}a{color:inherit;text-underline-offset:.18em}li{margin:.5rem 0}ul{padding:0;list-style:none}
@media(prefers-color-scheme:dark){body{background:#191b1c;color:#ecebe6}}`;
const POLICY = `default-src 'none'; style-src 'sha256-${createHash("sha256").update(STYLE).digest("base64")}'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`;

const escaped = (text: string) => text.replace(/[&<>"']/g, (c) => `&#${c.charCodeAt(0)};`);

/** Where a link no longer opens anything: what it says, how to reach the workshop, the way to the beginning. Status 410. */
export function deadLink({ words, say, name, telephone, email }: { words: Words; say: string; name: string; telephone: string; email: string }): Response {
  const ways = [
    telephone && `<li>${escaped(words.say("dead-link.telephone"))} <a href="tel:${escaped(telephone.replace(/[^\d+]/g, ""))}">${escaped(telephone)}</a></li>`,
    email && `<li>${escaped(words.say("dead-link.email"))} <a href="mailto:${escaped(email)}">${escaped(email)}</a></li>`,
  ].filter(Boolean);
  const title = escaped(words.say("dead-link.title"));
  const page = `<!doctype html><html lang="${words.locale}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${title}</title><style>${STYLE}</style></head>
<body><main><p>${escaped(name)}</p><h1>${title}</h1><p>${escaped(say)}</p><ul>${ways.join("")}</ul><p><a href="/">${escaped(words.say("page.to-beginning"))}</a></p></main></body></html>`;
  return new Response(page, { status: 410, headers: { ...INERT_HEADERS, "content-security-policy": POLICY, "content-type": "text/html; charset=utf-8" } });
}
