import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import type { Came } from "../../../lib/reply/facts";
import { composeFollowing } from "../../../lib/reply/following";
import type { DraftInput } from "../../../lib/reply/pieces";
import { offersCleaning } from "../../../lib/reply/promises/must-say";
import type { Assessment } from "../../../lib/triage/assessment";
import { action, range, worthless } from "./make";

const MESSAGE: Came = { message: true, answers: false, photos: 0, tested: false };
const toldBy = (input: DraftInput) => { const { text, paragraphs, leftOut } = composeDraft(input); return { text, paragraphs: [...paragraphs, ...leftOut] }; };
const following = (before: DraftInput, after: DraftInput, came: Partial<Came> = {}) => composeFollowing(after, { told: toldBy(before), came: { ...MESSAGE, ...came } }).text.replaceAll("\u00a0", " ");

describe("a following letter, where what was answered is asked again", () => {
  const doubtful = (beyondRepair: number) => worthless({ beyondRepair, advice: action("inspect-and-test") }, "bleaching");
  const asking = (input: DraftInput, words: string) => following(input, input, { words: [words] });

  it.each([["likely not", 0.8, "It is likely that cleaning it is not worth the money: at about £150 to £250"], ["open", 0.5, "Cleaning it may not be worth the money: at about £150 to £250"]] as const)("says again whether it is worth cleaning (%s), and neither as a change nor with the rest of the letter", (_, beyondRepair, says) => {
    const text = asking(doubtful(beyondRepair), "Thank you. Is it worth cleaning?");
    expect(text).toContain(says);
    expect(text).not.toMatch(/has changed|can say more|replaces|Going by|hidden corner/);
  });
  it("says again what it costs to whoever asks that, and nothing of it to whoever asks or says something else", () => {
    expect(asking(doubtful(0.8), "And what would it cost?")).toMatch(/If an inspection finds it worth cleaning, we estimate £150 to £250/);
    for (const words of ["It was worth every penny to us.", "Are you open on Saturday?"]) expect(asking(doubtful(0.8), words)).not.toMatch(/£150|worth the money/);
  });
  it("says that we cannot tell whether it is worth it, and not that we can say more", () => {
    const input = worthless({ beyondRepair: 0.2, money: null, improvement: range(10, 30, 50), advice: action("inspect-and-test") }, "bleaching");
    const writing = (more: object) => ({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, answers: { ...rug.answers, ...more }, messages: ["Is it worth cleaning?"] })) });
    const asked = (more: object) => following({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, answers: { ...rug.answers, ...more } })) }, writing(more), { words: ["Is it worth cleaning?"] });
    expect(asked({})).toContain("You ask whether it is worth it: from here we cannot tell, and only an inspection could.");
    expect(asked({})).not.toMatch(/can say more|has changed/);
    expect(asked({ age: "antique" })).not.toContain("only an inspection could");
  });
  describe("that costs something nobody has told yet", () => {
    const cost = "What would it cost?";
    const priced = (clean: Assessment["money"], rest: Partial<Assessment> = {}) => worthless({ beyondRepair: 0.2, money: clean, improvement: range(40, 60, 80), advice: action("routine-clean"), ...rest }, "food-old");
    const [open, estimated] = [priced(null), priced({ currency: "GBP", clean: range(100, 150, 200), cutDown: null, replace: null, valueToday: null })];
    const writing = (input: DraftInput, ...messages: string[]) => ({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, messages })) });
    const asksIt = (before: DraftInput, after: DraftInput, ...words: string[]) => following(before, writing(after, ...words), { words });
    const MORE = /Since our last letter we can say more\./;

    it("says of what it hangs, and neither that we can say more nor later that the price replaces it", () => {
      const text = asksIt(open, open, cost);
      expect(text).toMatch(/Thank you for your message\.\n\n[^\n]*\n\nYou ask what it costs: that goes by its size/);
      expect(text).not.toMatch(MORE);
      expect(following(writing(open, cost), writing(estimated, cost), { words: [] })).toMatch(/can say more\.[^]*Cleaning would cost about £100 to £200/);
      expect(following(writing(open, cost), writing(estimated, cost), { words: [] })).not.toMatch(/replaces|no longer holds/);
    });
    it("says that we can say more where there is a price by now, asked for or not", () => {
      for (const words of [[cost], []]) expect(asksIt(open, estimated, ...words)).toMatch(/can say more\.[^]*£100 to £200/);
    });
    it("only answers with a price that we could have told before, and says more beside it where something else is new", () => {
      const cut = (rest: Partial<Assessment> = {}) => priced({ currency: "GBP", clean: range(100, 150, 200), cutDown: null, replace: null, valueToday: null }, { advice: action("leave-alone"), ...rest });
      expect(composeDraft(cut()).text).not.toContain("£");
      expect(asksIt(cut(), cut(), cost)).toMatch(/You ask what it costs[^]*£100 to £200/);
      expect(asksIt(cut(), cut(), cost)).not.toMatch(MORE);
      expect(asksIt(cut(), cut({ lifeYears: range(4, 8, 16) }), cost)).toMatch(/can say more\.[^]*£100 to £200/);
    });
  });
  it.each(["cleaning would bring back too little to be worth its cost.", "cleaning may still cost more than the rug is worth today.", "cleaning would be about £170 to £270.", "cleaning would be about a$150 to a$250, and as it looks we advise against spending that.", "cleaning would be about 150 to 250 €."])("takes for no offer to clean what speaks against it: %s", (sentence) => expect(offersCleaning(sentence)).toBe(false));
  it.each(["cleaning may bring back a third of it.", "cleaning would be best done in spring.", "cleaning should be about £90, so drop it off and it goes in the bath.", "cleaning would be about £150, and we start on monday."])("takes for one what promises work: %s", (sentence) => expect(offersCleaning(sentence)).toBe(true));
  it("says nothing again that was asked before that letter alone", () => {
    const asked = doubtful(0.8);
    const input = { ...asked, assessments: asked.assessments.map((rug) => ({ ...rug, messages: ["Is it worth cleaning?"] })) };
    expect(following(input, input)).not.toMatch(/worth the money/);
  });
});

describe("what leans on another sentence, where it alone was changed", () => {
  const onlyNearlyDry = (input: DraftInput): DraftInput => ({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, assessment: { ...rug.assessment, methods: rug.assessment.methods.map((m) => (m.method === "solvent-dry" ? { ...m, verdict: "ruled-out" as const } : m)) } })) });
  const changed = (rest: Partial<Assessment>) => { const before = worthless({ advice: action("inspect-and-test"), ...rest }, "bleaching"); return following(before, onlyNearlyDry(before)); };

  it.each([["its worth is in doubt", { beyondRepair: 0.8 }], ["little comes back", { beyondRepair: 0.2, improvement: range(0, 5, 10) }]])("leans on nothing in a letter to who writes of water, where %s and is not told yet", (_, rest) => {
    const input = worthless({ advice: action("inspect-and-test"), ...rest }, "bleaching");
    const { text } = composeDraft({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, wetByWords: "whole" })) });
    expect(text).toContain("If it is cleaned at all, then");
    expect(text).not.toMatch(/worth the money|little to change|all the same/);
  });
  it("stands beside the doubt of its worth, or beside the little that comes back", () => {
    expect(changed({ beyondRepair: 0.8 })).toMatch(/It is likely that cleaning it is not worth the money[^]*If it is cleaned all the same, then nearly dry, and/);
    expect(changed({ beyondRepair: 0.2, improvement: range(0, 5, 10) })).toMatch(/we expect little to change by cleaning[^]*If it is cleaned all the same, then nearly dry, and/);
  });
  it("brings nothing with it where it leans on nothing", () => {
    const text = changed({ beyondRepair: 0.2 });
    expect(text).toMatch(/We would clean it nearly dry, and/);
    expect(text).not.toMatch(/worth|comes? back|of the change/);
  });
});
