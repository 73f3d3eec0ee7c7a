import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { composeFollowing } from "../../../lib/reply/following";
import { ONCE_DRY } from "../../../lib/reply/moved";
import { PARAGRAPHS } from "../../../lib/reply/paragraphs";
import type { DraftInput } from "../../../lib/reply/pieces";
import type { MethodId, Verdict } from "../../../lib/triage/assessment";
import type { Sketch } from "./make";
import { action, FIRST_AID_SAID, inputOf, range, WOOL_METHODS } from "./make";

const WOOL: Sketch = {
  fibres: { wool: 0.9 }, evidence: [{ what: "touch", value: "warm-springy", strength: "told" }], mechanisms: { "food-old": 0.8 }, methods: WOOL_METHODS,
  rest: { advice: action("quote-with-limits"), improvement: range(20, 50, 75) },
};
const rug = (wetNow: "damp" | "no", rest: Sketch["rest"] = {}, methods: Partial<Record<MethodId, Verdict>> = {}) =>
  inputOf({ sketch: { ...WOOL, methods: { ...WOOL_METHODS, ...methods }, rest: { ...WOOL.rest, ...rest } }, enquiry: { wetNow } });
function following(before: DraftInput, after: DraftInput): string {
  const { text, paragraphs, leftOut } = composeDraft(before);
  return composeFollowing(after, { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: false, answers: true, photos: 0, tested: false } }).text;
}

describe("a following letter, once what was damp is dry", () => {
  it.each([["we would clean it", "quote-with-limits", 0.1, /^Once it is dry, we would clean it/m], ["we advise against it", "advise-claim-or-replacement", 0.8, /^Once it is dry, if it is cleaned at all/m]] as const)("says nothing of a change where “once it is dry” alone went (%s)", (_, id, beyondRepair, was) => {
    const rest = { advice: action(id), beyondRepair };
    expect(composeDraft(rug("damp", rest)).text).toMatch(was);
    expect(following(rug("damp", rest), rug("no", rest))).not.toMatch(/has changed|replaces|can say more|hidden corner/);
  });
  it("says that how it may be cleaned has changed where another way is left, and where we advise against cleaning it now", () => {
    for (const after of [rug("no", {}, { "immersion-wash": "ruled-out", "wet-hand-clean": "ruled-out" }), rug("no", { advice: action("advise-claim-or-replacement") })])
      expect(following(rug("damp"), after)).toMatch(/This replaces what we wrote before about [^.]*how it may be cleaned[^]*hidden corner/);
  });
  it("says of a rug that was dry and is damp now that it dries first, and not that another way of cleaning is left", () => {
    const text = following(rug("no"), rug("damp"));
    expect(text).toMatch(/can say more[^]*Once it is dry, we would clean it/);
    expect(text).not.toMatch(/has changed|replaces/);
  });
  it("knows each way of cleaning that is told of a wet rug, and nothing that is no paragraph of the same place", () => {
    const placeOf = (id: string) => PARAGRAPHS.find((p) => p.id === id)?.place;
    const told = PARAGRAPHS.filter(({ place, text }) => place === "care" && /\bit is dry\b/.test(text)).map(({ id }) => id);
    expect(Object.keys(ONCE_DRY).filter((id) => placeOf(id) === "care").sort()).toEqual(told.sort());
    for (const [wet, dry] of Object.entries(ONCE_DRY)) expect([...new Set(dry.map(placeOf))]).toEqual([placeOf(wet)]);
  });
  it("says nothing of a change of what happened where a dye has run as likely as before, and does where that is likelier", () => {
    const ran = (wetNow: "damp" | "no", chance: number) => inputOf({ sketch: { ...WOOL, mechanisms: { "dye-bleed": chance } }, enquiry: { wetNow } });
    expect(composeDraft(ran("damp", 0.8)).text).toMatch(/While the rug is wet the dye may run on/);
    expect(following(ran("damp", 0.8), ran("no", 0.8))).not.toMatch(/has changed|replaces|can say more|a dye has run/);
    expect(following(ran("damp", 0.8), ran("no", 0.95))).toMatch(/replaces what we wrote before about what has happened to it[^]*a dye has run/);
  });
  it("says what nobody may touch as no change where first aid said it before", () => {
    const flooded = (firstAid: typeof FIRST_AID_SAID | null) => inputOf({ sketch: { ...WOOL, rest: { ...WOOL.rest, firstAid } }, answers: { incidents: ["flood"] }, enquiry: { wetNow: firstAid ? "damp" : "no" } });
    const text = following(flooded(FIRST_AID_SAID), flooded(null));
    expect(text).toMatch(/let nobody touch the rug/);
    expect(text).not.toMatch(/has changed|replaces|can say more/);
  });
});

describe("a back of latex that was told of", () => {
  const latex = (rest: Sketch["rest"] = {}, methods: Partial<Record<MethodId, Verdict>> = {}) => {
    const input = rug("no", rest, methods);
    return { ...input, assessments: input.assessments.map((r) => ({ ...r, assessment: { ...r.assessment, findings: [...r.assessment.findings, { what: "back", value: "cloth", strength: "told" as const, from: "client", decibans: 0, staff: "", client: "" }] } })) };
  };
  it("is not told again where only how far it comes back moved, and is beside another way of cleaning", () => {
    expect(composeDraft(latex()).text).toMatch(/Latex seems to hold its back/);
    expect(following(latex(), latex({ improvement: range(40, 60, 80) }))).toMatch(/how far it may come back[^]*hidden corner/);
    expect(following(latex(), latex({ improvement: range(40, 60, 80) }))).not.toMatch(/Latex/);
    expect(following(latex(), latex({}, { "immersion-wash": "ruled-out" }))).toMatch(/Latex seems to hold its back/);
  });
});
