import { NextResponse, type NextRequest } from "next/server";
import { isSameOrigin } from "./app/_server/same-origin";

const SAFE_METHODS: readonly string[] = ["GET", "HEAD", "OPTIONS"];

/**
 * Security headers of every page, and no request from a foreign page that could change anything (Next lets a server action
 * without an Origin, or with "null", pass). Nobody is authorised here: that is done beside the data. Upload routes are left
 * out, because a body that passes a proxy is cut at 10 MB, and so are pictures, documents, copies, the letter in its frame and the
 * client's link; each sets its own.
 */
export function proxy(request: NextRequest): NextResponse {
  if (!SAFE_METHODS.includes(request.method) && !isSameOrigin(request.headers)) {
    return new NextResponse("This was not sent from our own page.", {
      status: 403,
      headers: { ...PAGE_HEADERS, "content-type": "text/plain; charset=utf-8" },
    });
  }
  const nonce = btoa(crypto.randomUUID());
  const policy = contentSecurityPolicy(nonce);
  const headers = new Headers(request.headers);
  headers.set("x-nonce", nonce);
  headers.set("content-security-policy", policy);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set("content-security-policy", policy);
  for (const [name, value] of Object.entries(PAGE_HEADERS)) response.headers.set(name, value);
  return response;
}

const isDevelopment = process.env.NODE_ENV === "development";

/** Scripts by nonce alone; lengths drawn as widths need style attributes. `blob:` shows a photo before it is sent. */
function contentSecurityPolicy(nonce: string): string {
  return [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${isDevelopment ? " 'unsafe-eval'" : ""}`,
    `style-src 'self' ${isDevelopment ? "'unsafe-inline'" : `'nonce-${nonce}'`}`,
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' blob: data:",
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
}

const PAGE_HEADERS = {
  "x-content-type-options": "nosniff",
  // Not "no-referrer": a form sent under it has the origin "null" and would be refused as foreign.
  "referrer-policy": "same-origin",
  "x-frame-options": "DENY",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "permissions-policy": "camera=(), microphone=(), geolocation=(), payment=(), usb=()",
  // Browsers heed it over HTTPS only.
  "strict-transport-security": "max-age=31536000; includeSubDomains",
  "x-robots-tag": "noindex",
} as const;

export const config = { matcher: ["/((?!api/photos|api/post|photos/|documents/|copies/|preview/|e/|_next/static|_next/image|favicon.ico).*)"] };
