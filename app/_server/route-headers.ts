/** Headers of what is no page: nothing in it may run, be framed, be embedded elsewhere or be kept by a cache. */
export const INERT_HEADERS = {
  "x-content-type-options": "nosniff",
  "content-security-policy": "default-src 'none'; frame-ancestors 'none'; sandbox",
  "cross-origin-resource-policy": "same-origin",
  "referrer-policy": "no-referrer",
  "cache-control": "private, no-store",
  "strict-transport-security": "max-age=31536000; includeSubDomains",
  "x-robots-tag": "noindex",
} as const;
