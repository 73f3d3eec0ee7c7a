import { describe, expect, it } from "vitest";
import { documentsOffered } from "../../../../lib/reply/documents/offered";
import type { RugAnswers } from "../../../../lib/trade/questions";
import { assessmentOf } from "../make";

describe("documentsOffered", () => {
  const offers = (answers: RugAnswers) => documentsOffered({ answers, assessment: assessmentOf({ fibres: { polypropylene: 0.9 } }), hasPlan: false });
  it.each(["silk", "wool-and-silk", "art-silk"] as const)("offers the letter to the seller where the word was %s", (sellerSaid) => expect(offers({ sellerSaid })).toContain("letter-to-seller"));
  it.each(["silk-look", "viscose", "wool", "cotton", "other", "nothing", "unsure", undefined] as const)("offers none where nobody called it silk: %s", (sellerSaid) => {
    expect(offers({ sellerSaid, labelText: "100% polypropylene, silk look" })).not.toContain("letter-to-seller");
  });
});
