import { describe, expect, it } from "vitest";
import { findConflicts } from "../../../lib/triage/conflicts";
import { collectEvidence } from "../../../lib/triage/evidence";
import type { Finding } from "../../../lib/triage/finding";
import { told } from "./belief-helpers";

const label = (says: string) => told("label", { says, text: says }, "label-typed");
const between = (...findings: Finding[]) => findConflicts(collectEvidence(findings, { currency: "GBP", year: 2026 })).map((c) => c.between);

describe("findConflicts", () => {
  it.each([
    ["viscose on the label, silk from the seller", [label("viscose"), told("sellerSaid", "silk")], [["label", "sellerSaid"]]],
    ["the same, the other way round", [told("sellerSaid", "viscose"), label("silk")], [["label", "sellerSaid"]]],
    ["silk from the seller, no shine at all", [told("sellerSaid", "silk"), told("shine", "none")], [["sellerSaid", "shine"]]],
    ["silk from the seller, plastic to the touch: 31 times rarer", [told("sellerSaid", "silk"), told("touch", "plastic")], [["sellerSaid", "touch"]]],
    ["silk from the seller, canvas glued on: 37 times rarer", [told("sellerSaid", "silk"), told("back", "cloth")], [["sellerSaid", "back"]]],
    ["silk from the seller, footprints that stay: twice as rare", [told("sellerSaid", "silk"), told("footprints", "stay")], []],
    ["cotton from the seller, a shiny fringe: 8 times rarer", [told("sellerSaid", "cotton"), told("fringeKind", "shiny")], []],
    ["wool on the label, cool and slippery", [label("wool"), told("touch", "cool-slippery")], [["label", "touch"]]],
    ["viscose on the label, art silk from the seller", [label("viscose"), told("sellerSaid", "art-silk")], []],
    ["silk from both", [label("silk"), told("sellerSaid", "silk")], []],
    ["art silk on the label claims no fibre", [label("art-silk"), told("shine", "none")], []],
    ["nothing claimed", [told("shine", "none"), told("touch", "cool-slippery")], []],
    ["nothing at all", [], []],
  ] as [string, Finding[], string[][]][])("%s", (_, findings, expected) => {
    expect(between(...findings)).toEqual(expected);
  });
  it("says it to staff and to the client, label first", () => {
    const [conflict] = findConflicts(collectEvidence([told("sellerSaid", "silk"), label("viscose")], { currency: "GBP", year: 2026 }));
    expect(conflict).toEqual({
      between: ["label", "sellerSaid"],
      staff: "These do not agree: the label says viscose; the seller called it “Silk”.",
      client: "Two things do not fit together: the label says viscose, but the seller called it “Silk”.",
    });
  });
});
