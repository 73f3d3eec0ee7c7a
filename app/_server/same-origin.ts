import { config } from "@/lib/config/config";

/**
 * Whether a request that changes something was sent by a page of ours: its Origin is the address people reach the server by
 * or, without HTTPS (one's own machine, where "localhost" and "127.0.0.1" are both typed), the host it was sent to. None and
 * "null" count as foreign; forwarded host names are never asked.
 */
export function isSameOrigin(headers: Headers, baseUrl: string = config.baseUrl): boolean {
  const origin = headers.get("origin");
  if (origin === null || !URL.canParse(origin)) return false;
  const base = new URL(baseUrl);
  return origin === base.origin || (base.protocol === "http:" && origin === `http://${headers.get("host")}`);
}
