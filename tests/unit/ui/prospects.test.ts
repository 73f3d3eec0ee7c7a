import { describe, expect, it } from "vitest";
import { whyUnstated } from "../../../lib/ui/prospects";

describe("whyUnstated", () => {
  it("says a reason once that holds for several expectations, and keeps what differs, in their order", () => {
    expect(whyUnstated({ improvement: "Nothing changed.", worse: "Nothing changed.", beyondRepair: "It is mended." })).toEqual(["Nothing changed.", "It is mended."]);
  });
  it("says nothing where all is stated, and leaves reasons of other figures to their own places", () => {
    expect(whyUnstated({})).toEqual([]);
    expect(whyUnstated({ money: "The size is not known." })).toEqual([]);
  });
});
