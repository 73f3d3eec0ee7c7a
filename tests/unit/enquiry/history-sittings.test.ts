import { describe, expect, it } from "vitest";
import { withoutGoneOnWith } from "../../../lib/enquiry/history";

const entry = (action: string, actorId: string, minute: number) => ({ action, actorId, at: new Date(Date.UTC(2026, 10, 2, 8, minute)) });
const kept = (...entries: ReturnType<typeof entry>[]) => withoutGoneOnWith(entries).map((e) => `${e.action} ${e.actorId} ${e.at.getTime() / 60_000 - Date.UTC(2026, 10, 2, 8) / 60_000}`);

describe("withoutGoneOnWith", () => {
  it("leaves of edits within an hour of each other the last, by one person", () => {
    expect(kept(entry("draft-saved", "ivo", 0), entry("draft-saved", "ivo", 1), entry("draft-saved", "ivo", 61))).toEqual(["draft-saved ivo 61"]);
    expect(kept(entry("draft-saved", "ivo", 0), entry("draft-saved", "ivo", 61))).toEqual(["draft-saved ivo 0", "draft-saved ivo 61"]);
  });
  it("leaves what somebody else edited or did between", () => {
    expect(kept(entry("draft-saved", "ivo", 0), entry("draft-saved", "pia", 1), entry("draft-saved", "ivo", 2))).toHaveLength(3);
    expect(kept(entry("draft-saved", "ivo", 0), entry("address-corrected", "ivo", 1), entry("draft-saved", "ivo", 2))).toHaveLength(3);
    expect(kept(entry("moved", "ivo", 0), entry("moved", "ivo", 1))).toHaveLength(2);
  });
});
