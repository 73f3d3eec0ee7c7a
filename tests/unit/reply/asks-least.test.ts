import { describe, expect, it } from "vitest";
import type { DraftInput } from "../../../lib/reply/pieces";
import { composeDraft } from "../../../lib/reply/draft";
import { composeFollowing } from "../../../lib/reply/following";
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

describe("composeFollowing, of what it asks for", () => {
  const ROOM = [{ id: "room", kind: "question", ask: "How much is it walked on?", why: "" }] as const;
  type Told = "quote-with-limits" | "ask-for-more" | "nothing";
  /** Two rugs; of the first, of which there is something to ask, a letter says this now, or said it before. */
  const about = (told: Told): DraftInput => {
    const rug = (first: Told, asks: typeof ROOM | []) => inputOf({ sketch: { fibres: { wool: 0.5 }, words: "about as likely as not", evidence: first === "nothing" ? [] : [{ what: "touch", value: "dry", strength: "told" }], rest: { advice: action(first === "nothing" ? "inspect-and-test" : first), nextQuestions: [...asks] } } });
    return { ...rug(told, ROOM), assessments: [...rug(told, ROOM).assessments, ...rug("quote-with-limits", []).assessments] };
  };
  const following = (before: Told, now: Told) => {
    const { text, paragraphs, leftOut } = composeDraft(about(before));
    return composeFollowing(about(now), { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: false, answers: true, photos: 0, tested: false } }).text;
  };
  it.each<Told>(["ask-for-more", "nothing"])("asks it again, told before or not, of a rug of which it says that we need to know more: %s", (now) => {
    const text = following("quote-with-limits", now);
    expect(text).toContain("Of rug 1 we need to know more first.");
    expect(asksIn(text)).toEqual(["– How much is it walked on?"]);
  });
  it.each<[Told, Told]>([["quote-with-limits", "quote-with-limits"], ["ask-for-more", "ask-for-more"], ["ask-for-more", "quote-with-limits"]])("does not where it says nothing of the kind: %s, then %s", (before, now) => {
    const text = following(before, now);
    expect(text).not.toContain("we need to know more");
    expect(asksIn(text)).toEqual([]);
  });
});

describe("whether it is wet", () => {
  it("is asked first of who writes of water, though they had answered that it is dry, and of nobody else who had", () => {
    const told = inputOf({ sketch: { fibres: { wool: 0.8 }, mechanisms: { "food-old": 0.8 }, rest: { nextQuestions: [{ id: "since", kind: "question", ask: "When did it happen?", why: "" }] } }, enquiry: { wetNow: "no" } });
    const asked = (wetByWords: "whole" | null) => asksIn(composeDraft({ ...told, assessments: told.assessments.map((rug) => ({ ...rug, wetByWords })) }).text).filter((line) => line.endsWith("?"));
    expect(asked("whole")[0]).toBe("– Is any part of the rug wet right now?");
    expect(asked(null)).toHaveLength(1);
    expect(asked(null)[0]).not.toMatch(/wet/);
  });
});
