import { createHash, createVerify, type KeyObject } from "node:crypto";

// A verifier of RFC 6376 of its own, for rsa-sha256 with relaxed/relaxed and no body length: what a receiving server does.

/** §3.4.2: names in small letters, lines unfolded, runs of white space one space, none at the ends or round the colon. */
export function relaxedHeader(field: string): string {
  const colon = field.indexOf(":");
  const value = field.slice(colon + 1).replace(/\r\n/g, "").replace(/[ \t]+/g, " ").trim();
  return `${field.slice(0, colon).trim().toLowerCase()}:${value}`;
}

/** §3.4.4: no white space at the ends of lines, runs of it one space, no empty lines at the end, a line end after the last. */
export function relaxedBody(body: string): string {
  const lines = body.split("\r\n").map((line) => line.replace(/[ \t]+/g, " ").replace(/ $/, ""));
  while (lines.length > 0 && lines.at(-1) === "") lines.pop();
  return lines.map((line) => `${line}\r\n`).join("");
}

const tagsOf = (value: string) => Object.fromEntries(value.split(";").map((t) => t.trim()).filter(Boolean).map((t) => [t.slice(0, t.indexOf("=")).trim(), t.slice(t.indexOf("=") + 1).replace(/\s+/g, "")]));

export interface Verified { tags: Record<string, string>; bodyHolds: boolean; signatureHolds: boolean }

/** Verifies the first DKIM-Signature of a message as received. */
export function verifyDkim(raw: Buffer, key: KeyObject): Verified {
  const text = raw.toString("latin1");
  const end = text.indexOf("\r\n\r\n");
  const fields = text.slice(0, end).split(/\r\n(?![ \t])/);
  const signature = fields.find((f) => /^dkim-signature:/i.test(f)) ?? "";
  const tags = tagsOf(signature.slice(signature.indexOf(":") + 1));
  const bodyHash = createHash("sha256").update(relaxedBody(text.slice(end + 4)), "latin1").digest("base64");
  // §5.4.2: of a field that stands more than once, the lowest that was not taken yet.
  const left = [...fields].reverse();
  const signed = (tags["h"] ?? "").split(":").flatMap((name) => {
    const at = left.findIndex((f) => f.slice(0, f.indexOf(":")).trim().toLowerCase() === name.toLowerCase());
    return at < 0 ? [] : left.splice(at, 1).map(relaxedHeader);
  });
  const own = relaxedHeader(signature).replace(/(;\s*b=)[^;]*/, "$1").trimEnd();
  const verify = createVerify("RSA-SHA256").update([...signed, own].join("\r\n"), "latin1");
  return { tags, bodyHolds: bodyHash === tags["bh"], signatureHolds: verify.verify(key, tags["b"] ?? "", "base64") };
}
