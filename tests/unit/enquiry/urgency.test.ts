import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byNeed } from "../../../lib/enquiry/slip";
import { urgencyId, urgencyRank, worstUrgency } from "../../../lib/enquiry/urgency";
import { urgencyWhyTold } from "../../../lib/enquiry/urgency-why";
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

describe("urgencyWhyTold", () => {
  const UNASKED = "Nobody has said whether it is wet; nothing else in it is lost by waiting.";
  const BY_WORDS = "By their own words it is dry; nothing in it is lost by waiting.";
  const at = (minute: number) => new Date(Date.UTC(2026, 10, 28, 9, minute));
  const story = (value: string) => ({ question: "story", value, at: at(0) });
  const message = (value: string, minute: number) => ({ question: "message", value, at: at(minute) });
  const why = (...rugs: ReturnType<typeof story>[][]) => urgencyWhyTold({ urgencyWhy: UNASKED, rugs: rugs.map((answers) => ({ answers })) });
  it.each([
    ["say that it is dry", [story("A glass went over it last year. The rug is dry now.")], BY_WORDS],
    ["say so in a later message", [story("There is a ring on it."), message("Hello again, it is dry.", 5)], BY_WORDS],
    ["speak of no water", [story("There is a ring on it.")], UNASKED],
    ["only wait for it", [story("We will send photos as soon as it is dry.")], UNASKED],
    ["speak of water again since", [story("The rug is dry."), message("The pipe has burst again!", 5)], UNASKED],
  ])("where nobody was asked and their own words %s", (_, answers, expected) => expect(why(answers)).toBe(expected));
  it("goes by the words of every rug", () => {
    expect(why([story("This rug is dry.")], [story("And this one has a ring.")])).toBe(UNASKED);
    expect(why([story("This rug is dry.")], [story("And this one has a ring. It is dry.")])).toBe(BY_WORDS);
  });
  it("leaves every other reason as it is", () =>
    expect(urgencyWhyTold({ urgencyWhy: "Insects go on eating, and spread to other wool.", rugs: [{ answers: [story("The rug is dry.")] }] })).toBe("Insects go on eating, and spread to other wool."));
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
