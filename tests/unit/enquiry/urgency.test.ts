import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byNeed } from "../../../lib/enquiry/slip";
import { urgencyId, urgencyRank, worstUrgency } from "../../../lib/enquiry/urgency";
import type { UrgencyLevel } from "../../../lib/triage/assessment";

const LEVELS: UrgencyLevel[] = ["hours", "two-days", "a-week", "can-wait"];
const level = fc.constantFrom(...LEVELS);

describe("worstUrgency", () => {
  it("is the most urgent of the rugs, with its own reason", () => {
    expect(
      worstUrgency([
        { level: "a-week", why: "Moths." },
        { level: "hours", why: "Wet." },
        { level: "can-wait", why: "-" },
      ]),
    ).toEqual({ urgency: "hours", why: "Wet." });
  });
  it("is never less urgent than any rug, in whatever order they come", () => {
    fc.assert(
      fc.property(fc.array(level, { minLength: 1 }), (levels) => {
        const rugs = levels.map((l) => ({ level: l, why: l }));
        const { urgency, why } = worstUrgency(rugs);
        expect(Math.min(...levels.map((l) => urgencyRank(urgencyId(l))))).toBe(urgencyRank(urgency));
        expect(worstUrgency([...rugs].reverse())).toEqual({ urgency, why });
      }),
    );
  });
  it("needs a rug", () => {
    expect(() => worstUrgency([])).toThrow("Expected at least one rug");
  });
});

describe("byNeed", () => {
  const row = fc.record({
    id: fc.uuid(),
    urgency: level.map(urgencyId),
    stateSince: fc.date({ min: new Date(0), max: new Date(4e12), noInvalidDate: true }),
    client: fc.record({ isTrade: fc.boolean() }),
  });
  it("orders by what waiting costs, then by time waited, whatever the order before", () => {
    fc.assert(
      fc.property(fc.uniqueArray(row, { selector: (r) => r.id, minLength: 2 }), (rows) => {
        const sorted = [...rows].sort(byNeed);
        expect([...rows].reverse().sort(byNeed)).toEqual(sorted);
        for (const [n, b] of sorted.entries()) {
          const a = sorted[n - 1];
          if (!a) continue;
          const [ra, rb] = [urgencyRank(a.urgency), urgencyRank(b.urgency)];
          const [ca, cb] = [a, b].map((w) => w.urgency === "hours" && w.client.isTrade);
          expect(ra < rb || (ra === rb && (ca !== cb ? ca : a.stateSince <= b.stateSince))).toBe(true);
        }
      }),
    );
  });
});
