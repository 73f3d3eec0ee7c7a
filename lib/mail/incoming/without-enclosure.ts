import "server-only";
import { createHash } from "node:crypto";

/** What stands in a message in place of an enclosure that was taken out. */
const NOTE = "A picture was here. Part of it was blurred for good, so it is no longer kept with this message.";

/**
 * A message (RFC 5322) without the enclosure whose content has this SHA-256: a sentence stands in its place, all else keeps its
 * bytes. null where it holds none. Looks into multipart bodies and forwarded messages (RFC 2045, 2046).
 */
export function withoutEnclosure(message: Buffer, sha256: string): Buffer | null {
  // One character a byte, so that whatever is left alone is left as it is.
  const cut = withoutIn(message.toString("latin1"), sha256);
  return cut === null ? null : Buffer.from(cut, "latin1");
}

function withoutIn(entity: string, sha256: string): string | null {
  const { head, gap, body } = split(entity);
  const type = headerOf(head, "content-type");
  const boundary = /^multipart\//iu.test(type) ? /boundary="?([^";\r\n]+)"?/iu.exec(type)?.[1]?.trim() : undefined;
  if (boundary) return inParts(entity, { at: head.length + gap.length, boundary, sha256 });
  if (/^message\/rfc822/iu.test(type)) {
    const isCoded = /^base64/iu.test(headerOf(head, "content-transfer-encoding"));
    const inner = withoutIn(isCoded ? Buffer.from(body, "base64").toString("latin1") : body, sha256);
    return inner === null ? null : head + gap + (isCoded ? inLines(Buffer.from(inner, "latin1")) : inner);
  }
  if (createHash("sha256").update(decoded(body, headerOf(head, "content-transfer-encoding"))).digest("hex") !== sha256) return null;
  const line = /\r?\n/u.exec(head)?.[0] ?? "\r\n";
  const kept = unfolded(head).filter((h) => !/^content-/iu.test(h));
  return [...kept, "Content-Type: text/plain; charset=utf-8", "", NOTE, ""].join(line);
}

/** As base64, in lines of 76 characters (RFC 2045, section 6.8). */
const inLines = (bytes: Buffer): string => bytes.toString("base64").replace(/.{76}(?=.)/gu, "$&\r\n");

/** Each part between its boundaries, the first line end before a boundary being the boundary's own. */
function inParts(entity: string, { at, boundary, sha256 }: { at: number; boundary: string; sha256: string }): string | null {
  const line = new RegExp(`(?:^|\\r?\\n)--${boundary.replace(/[.*+?^${}()|[\]\\]/gu, "\\$&")}(?:--)?[ \\t]*(?=\\r?\\n|$)`, "gu");
  const body = entity.slice(at);
  const marks = [...body.matchAll(line)];
  let cut = entity.slice(0, at), from = 0, isCut = false;
  marks.forEach((mark, n) => {
    const next = marks[n + 1];
    if (!next) return;
    const begin = mark.index + mark[0].length + (/^\r?\n/u.exec(body.slice(mark.index + mark[0].length, mark.index + mark[0].length + 2))?.[0].length ?? 0);
    if (begin > next.index) return;
    const part = withoutIn(body.slice(begin, next.index), sha256);
    if (part === null) return;
    cut += body.slice(from, begin) + part;
    from = next.index;
    isCut = true;
  });
  return isCut ? cut + body.slice(from) : null;
}

function split(entity: string): { head: string; gap: string; body: string } {
  const gap = /\r?\n\r?\n/u.exec(entity);
  return gap ? { head: entity.slice(0, gap.index), gap: gap[0], body: entity.slice(gap.index + gap[0].length) } : { head: entity, gap: "", body: "" };
}
const unfolded = (head: string): string[] => head.replace(/\r?\n[ \t]+/gu, " ").split(/\r?\n/u);
const headerOf = (head: string, name: string): string => unfolded(head).find((h) => h.toLowerCase().startsWith(`${name}:`))?.slice(name.length + 1).trim() ?? "";

function decoded(body: string, encoding: string): Buffer {
  if (/^base64/iu.test(encoding)) return Buffer.from(body, "base64");
  if (/^quoted-printable/iu.test(encoding)) return Buffer.from(body.replace(/=[ \t]*\r?\n/gu, "").replace(/=([0-9A-F]{2})/giu, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16))), "latin1");
  return Buffer.from(body, "latin1");
}
