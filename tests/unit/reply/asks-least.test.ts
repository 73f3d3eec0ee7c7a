import { describe, expect, it } from "vitest";
import type { DraftInput } from "../../../lib/reply/pieces";
import { composeDraft } from "../../../lib/reply/draft";
import { assessAnswers } from "../../../lib/enquiry/assess-answers";
import type { RugAnswers } from "../../../lib/trade/questions";
import { DEFAULT_SETTINGS } from "../../../lib/workshop/settings-schema";
import { action, inputOf, range } from "./make";
import { letterOf } from "./must-say/letter-of";

/** A letter of more than 350 words if it asks for all that would help. */
const LONG: RugAnswers = { changes: ["bare", "dirty"], since: "hour", labelText: "60% bamboo viscose 40% wool", boughtWhere: "specialist", shine: "satin", touch: "plastic", back: "felt", room: "busy", price: 6000, matters: ["cost"] };
const asksIn = (text: string) => text.match(/^– .*$/gmu) ?? [];

describe("composeDraft, of what it asks for in a long letter", () => {
  it("still asks for the first of it where it says that it needs to hear from the client", () => {
    const { text, leftOut } = letterOf({ answers: LONG, enquiry: { wetNow: "no" }, photos: [] }).draft;
    expect(text).toMatch(/or answer this letter|Or answer this letter|To tell us more/);
    expect(asksIn(text)).toHaveLength(1);
    expect(leftOut.filter((p) => p.place === "asks")).toEqual([]);
  });
  it("says of no rug of several that we need to know more, and asks nothing of it", () => {
    const rugs: RugAnswers[] = [LONG, { ...LONG, changes: ["bare", "flat", "rough"], room: "busy", matters: ["claim"] }];
    const { draft } = assessAnswers({
      channel: "web", asOf: "2026-11-28T09:00:00.000Z", enquiry: { wetNow: "no" }, workshop: DEFAULT_SETTINGS, client: { name: "Ana Example", isTrade: false },
      rugs: rugs.map((answers) => ({ answers, colours: [], photos: [] })),
    });
    const open = [...draft.text.matchAll(/Of rug (\d) we need to know more first/gu)].map(([, rug]) => Number(rug));
    expect(open.length).toBeGreaterThan(0);
    for (const rug of open) expect(draft.paragraphs.some((p) => p.place === "asks" && p.rug === rug - 1)).toBe(true);
  });
  const open = (nextQuestions: DraftInput["assessments"][number]["assessment"]["nextQuestions"]) => {
    const one = inputOf({ sketch: { fibres: { wool: 0.8 }, evidence: [{ what: "touch", value: "dry", strength: "told" }], words: "likely", rest: { advice: action("ask-for-more"), improvement: range(20, 30, 50), nextQuestions } } });
    return composeDraft({ ...one, assessments: [...one.assessments, ...one.assessments] }).text;
  };
  it("does not say that it needs to know more of a rug of which nothing is left to ask", () => {
    const MORE = /we need to know more first|Once we have heard from you/u;
    expect(open([{ id: "room", kind: "question", ask: "How much is it walked on?", why: "" }])).toMatch(MORE);
    expect(open([])).not.toMatch(MORE);
  });
});
