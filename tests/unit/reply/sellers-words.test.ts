import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sellersOwnWords } from "../../../lib/reply/sellers-words";

describe("sellersOwnWords", () => {
  it.each([
    ["pure silk, from Kashmir - he said it would last a lifetime", "pure silk, from Kashmir"],
    ["hand-knotted silk – she told us twice", "hand-knotted silk"], ["Art silk — the seller also promised it was washable", "Art silk"],
    ["vegan silk, they said", "vegan silk"], ["Silk (he told my husband)", "Silk"], ["real silk; my sister thought so too", "real silk"],
  ])("leaves the client's telling out: %s", (told, own) => expect(sellersOwnWords(told)).toBe(own));
  it.each([
    ["He said “pure mulberry silk” and we believed him", "pure mulberry silk"], ['they called it "bamboo silk"', "bamboo silk"], ["it's ‘art silk’ on the ticket, isn't it", "art silk"],
    ["„echte Seide“ stood on the ticket", "echte Seide"], ["the man said 'silk' and later 'half silk'", "silk … half silk"],
  ])("takes what stands in marks of quotation: %s", (told, own) => expect(sellersOwnWords(told)).toBe(own));
  it.each(["pure silk, end of line", "hand-knotted silk", "silk-wool mix – 60 % silk", "He said it was silk", "the shop's own silk, isn't it", "silk, it shines", ""])("leaves what cannot be told apart as it is: %s", (told) => expect(sellersOwnWords(told)).toBe(told));
  it("says nothing that was not told, and never nothing of words", () => {
    fc.assert(fc.property(fc.string({ unit: fc.constantFrom("a", "b", " ", "“", "”", '"', "'", "-", ",", "he said ", "silk", "\n") }), (told) => {
      const own = sellersOwnWords(told);
      for (const part of own.split(" … ")) expect(told).toContain(part);
      if (/\p{L}/u.test(told)) expect(own).toMatch(/\p{L}/u);
    }));
  });
});
