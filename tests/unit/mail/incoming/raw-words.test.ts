import { deflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { LOOKED_BYTES, rawWords } from "../../../../lib/mail/incoming/raw-words";

describe("rawWords", () => {
  it("gives the words among bytes that are none, a line each, in any script", () => {
    const bytes = Buffer.concat([Buffer.from([0, 1, 2, 255]), Buffer.from("The red has run into the fringe.\r\n"), Buffer.from([7, 0]), Buffer.from("Цвет потёк на бахрому"), Buffer.from([254])]);
    expect(rawWords(bytes)).toBe("The red has run into the fringe.\nЦвет потёк на бахрому");
  });
  it("keeps markup as the text it is, and drops what no reader sees", () => {
    expect(rawWords(Buffer.from("<script>alert one</script> and \u202Etwo words more"))).toBe("<script>alert one</script> and\ntwo words more");
  });
  it("finds nothing in an empty file, and none in what is packed", () => {
    expect(rawWords(Buffer.alloc(0))).toBe("");
    expect(rawWords(deflateSync(Buffer.from(Array.from({ length: 4_000 }, (_, n) => (n * 7919) % 251))))).toBe("");
  });
  it("is cut where it grows long, and looks no further than its first bytes", () => {
    expect(rawWords(Buffer.from("some words ".repeat(500))).length).toBeLessThan(1_300);
    expect(rawWords(Buffer.concat([Buffer.alloc(LOOKED_BYTES), Buffer.from("words that stand too far")]))).toBe("");
  });
});
