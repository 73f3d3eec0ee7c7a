import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { composeFollowing } from "../../../lib/reply/following";
import { headlineOf } from "../../../lib/reply/headline";
import type { Inspected } from "../../../lib/reply/inspected";
import type { DraftInput } from "../../../lib/reply/pieces";
import { checkLetter, knownOf } from "../../../lib/reply/promises/check";
import { toldByLetter } from "../../../lib/reply/told-by-letter";
import type { Assessment } from "../../../lib/triage/assessment";
import { wordsIn } from "../../../lib/words/words";
import { anyInput, anyWorth, seen } from "./any-input";
import type { RugAnswers } from "../../../lib/trade/questions";
import { action, range, worthless } from "./make";
import { letterOf } from "./must-say/letter-of";

const IVO: Inspected = { by: "Ivo Castellane", on: "24 November 2026", isBeyondRepair: false };
const inspected = (input: DraftInput, inspection: Inspected | null): DraftInput => ({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, inspection })) });
const [NOT_BEYOND, BEYOND] = [IVO, { ...IVO, isBeyondRepair: true }];
/** The verdict with both that the term can mean: they give no reason of their own. */
const JUDGED_BEYOND = "judges it beyond economic repair: putting it right would cost more than the rug is then worth, or bring back too little to be worth its cost.";
/** A rug that flood water got into, and that is dry. */
const flooded = (): DraftInput => { const input = worthless({ advice: action("refer"), improvement: range(5, 20, 40), lifeYears: range(1, 3, 6) }); return { ...input, assessments: input.assessments.map((rug) => ({ ...rug, answers: { ...rug.answers, incidents: ["flood"] } })) }; };
const ACTIONS = ["leave-alone", "routine-clean", "first-aid", "ask-for-more", "inspect-and-test", "quote-with-limits", "advise-cut-down", "advise-claim-or-replacement", "refer", "not-our-work"] as const;
/** That nobody has seen it, or an invitation to have it seen; not the firm that has to see to a flood. */
const DENIES = /\binspection\b|nobody here|would like one|inspected and tested|provisional|look at it,|we have seen it|someone has seen it|an inspection/i;

describe("a letter about a rug that somebody here has inspected", () => {
  it.each(ACTIONS)("says who looked at it, when, and what they judge, and neither denies it nor asks the rug in for another (%s)", (id) => {
    for (const [inspection, says] of [[NOT_BEYOND, "does not judge it beyond economic repair."], [BEYOND, JUDGED_BEYOND]] as const) {
      for (const beyondRepair of [0.1, 0.5, 0.8]) {
        const { text } = composeDraft(inspected(worthless({ beyondRepair, advice: action(id) }), inspection));
        expect(text).toContain(`Ivo Castellane, who inspected it on 24 November 2026, ${says}`);
        expect(text).not.toMatch(DENIES);
        expect(text.replace(says, "")).not.toMatch(/may not be worth|worth (?:the|its) (?:money|cost)|bring back too little/);
      }
    }
  });
  it.each([[NOT_BEYOND, "does not judge it beyond economic repair."], [BEYOND, JUDGED_BEYOND]] as const)("is told their verdict after a flood too, waits for no firm to say what comes of it, and keeps the caution and no figure (%#)", (inspection, says) => {
    const of = (seen: Inspected | null) => composeDraft(inspected(flooded(), seen)).text;
    const WAITS = /before a flood-damage firm has seen|the firm that sees to the flood has to say|Once the firm has been/;
    expect(of(null)).toMatch(WAITS);
    expect(of(null)).not.toContain("who inspected it");
    expect(of(inspection)).toContain(`Ivo Castellane, who inspected it on 24 November 2026, ${says}`);
    expect(of(inspection)).not.toMatch(WAITS);
    expect(of(inspection)).toContain("Flood and waste water can make you ill. Please let nobody touch the rug");
    expect(of(inspection)).toMatch(/only after a test in a hidden corner|until a test in a hidden corner/);
    expect(of(inspection)).not.toMatch(/\d\u00a0%|£\d|\d\u00a0(?:more )?(?:years?|months?)/);
  });
  it("has the one of two rugs that the flood got into and nobody inspected wait for the firm", () => {
    const [rug] = flooded().assessments;
    const two = (second: Inspected | null) => composeDraft({ ...flooded(), assessments: [{ ...rug!, inspection: null }, { ...rug!, title: "Red, 90 × 160", inspection: second }] }).text;
    expect(two(BEYOND).match(/before a flood-damage firm has seen/g)).toHaveLength(1);
    expect(two(BEYOND)).toContain("Rug 2 was judged beyond economic repair when it was inspected.");
    expect(two(NOT_BEYOND)).toContain("Rug 2 had flood or waste water: please let nobody touch it yet.");
  });
  it("says the program's chance and asks it in once that inspection is withdrawn", () => {
    const { text } = composeDraft(inspected(worthless({ advice: action("inspect-and-test") }), null));
    expect(text).toMatch(/It is likely that saving it is not worth the cost[^]*?nobody here has inspected it/);
    expect(text).toContain("Only an inspection and tests could change our answer.");
  });
  it("hurries nobody to have seen what was seen, and does not call a loss one of looks alone where they found it beyond repair", () => {
    const faded = (inspection: Parameters<typeof inspected>[1]) => composeDraft(inspected(worthless({ beyondRepair: 0.8, advice: action("advise-claim-or-replacement"), urgency: { level: "a-week", why: "" } }, "fading"), inspection)).text;
    expect(faded(null)).toMatch(/looks and not use/);
    expect(faded(BEYOND)).not.toMatch(/looks and not use|keep it as it is/);
    const eaten = (inspection: Parameters<typeof inspected>[1]) => composeDraft(inspected(worthless({ beyondRepair: 0.1, advice: action("quote-with-limits"), urgency: { level: "a-week", why: "" } }, "insects"), inspection)).text;
    expect(eaten(null)).toMatch(/seen to within a week/);
    for (const inspection of [NOT_BEYOND, BEYOND]) {
      expect(eaten(inspection)).not.toMatch(/seen to within/);
      expect(eaten(inspection)).toContain("Whatever you decide about it, what is in it can spread and has to be treated first. This is for a pest control firm or a workshop that treats rugs for insects.");
    }
    expect(eaten(null)).not.toMatch(/has to be treated first/);
    expect(faded(NOT_BEYOND)).not.toMatch(/can spread/);
  });
  it("advises no work on what was found beyond economic repair, and quotes for what was not", () => {
    const of = (id: (typeof ACTIONS)[number], inspection: Inspected) => composeDraft(inspected(worthless({ advice: action(id) }), inspection)).text;
    for (const id of ["routine-clean", "inspect-and-test", "quote-with-limits", "ask-for-more"] as const) expect(of(id, BEYOND)).not.toMatch(/We would clean it|would cost about £|we estimate/);
    for (const id of ["inspect-and-test", "advise-claim-or-replacement", "not-our-work", "ask-for-more"] as const) expect(of(id, NOT_BEYOND)).toMatch(/Cleaning would cost about £[^]*If you would like us to go on, ring us/);
  });
  it("speaks in a letter about several of the one that nobody has inspected alone", () => {
    const one = worthless({ advice: action("inspect-and-test") });
    const [rug] = one.assessments;
    const { text } = composeDraft({ ...one, assessments: [{ ...rug!, title: "Grey, 170 × 240", inspection: NOT_BEYOND }, { ...rug!, title: "Red, 90 × 160" }] });
    expect(text).toContain("For a rug that nobody here has inspected, an inspection and tests decide.");
    expect(text.match(/nobody here has inspected it/g)).toHaveLength(1);
    expect(text.indexOf("Ivo Castellane, who inspected it")).toBeLessThan(text.indexOf("nobody here has inspected it"));
  });
  it("takes back in a letter that follows what the one before said of its worth", () => {
    const asked = worthless({ advice: action("inspect-and-test") });
    const first = composeDraft(asked);
    const told = { text: first.text, paragraphs: [...first.paragraphs, ...first.leftOut] };
    const { text } = composeFollowing(inspected(asked, NOT_BEYOND), { told, came: { message: false, answers: false, photos: 0, tested: false } });
    expect(text).toMatch(/^Since Ivo Castellane’s inspection on 24 November 2026, our answer has changed\. This replaces what we wrote before about [^.]*whether[^.]*\.$/m);
    expect(text).toContain("Ivo Castellane, who inspected it on 24 November 2026, does not judge it beyond economic repair.");
  });
  it("names in a letter that follows the inspection of the one of several that was inspected, once, and as more to say where nothing was said of worth", () => {
    const follows = (before: DraftInput, after: DraftInput) => {
      const { text, paragraphs, leftOut } = composeDraft(before);
      return composeFollowing(after, { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: true, answers: false, photos: 0, tested: true } }).text;
    };
    const [rug] = worthless({ advice: action("inspect-and-test") }).assessments;
    const both = (second: Inspected | null): DraftInput => ({ ...worthless(), assessments: [{ ...rug!, title: "Grey, 170 × 240", inspection: IVO }, { ...rug!, title: "Red, 90 × 160", inspection: second }] });
    const ZOE: Inspected = { by: "Zoe Marrable", on: "26 November 2026", isBeyondRepair: true };
    expect(follows(both(null), both(ZOE))).toContain("Since Zoe Marrable’s inspection on 26 November 2026, our answer has changed.");
    expect(follows(both(ZOE), both(ZOE))).not.toMatch(/Since|has changed/);
    const plain = worthless({ beyondRepair: null, advice: action("quote-with-limits"), money: null });
    expect(follows(plain, inspected(plain, NOT_BEYOND))).toContain("Since Ivo Castellane’s inspection on 24 November 2026 we can say more.");
  });
  it("says that the cost still speaks against it where they do not judge it beyond repair, and not where it does not, or they do", () => {
    const of = (inspection: Inspected, valueToday = range(80, 150, 220)) => composeDraft(inspected(worthless({ money: { currency: "GBP", clean: range(150, 200, 250), cutDown: null, replace: range(300, 400, 500), valueToday } }), inspection)).text;
    expect(of(NOT_BEYOND)).toContain("At about £150 to £250, cleaning may still cost more than the rug is worth today, very roughly £80 to £220: whether it is worth that to you is for you to decide.");
    expect(of(NOT_BEYOND, range(80, 200, 220))).toMatch(/may still cost more/);
    expect(of(NOT_BEYOND, range(80, 201, 220))).not.toMatch(/may still cost more/);
    expect(of(BEYOND)).not.toMatch(/may still cost more/);
    expect(of(NOT_BEYOND, range(80, 120, 150))).toMatch(/may still cost more/);
    expect(of(NOT_BEYOND, range(80, 120, 149))).toContain("At about £150 to £250, cleaning costs more than the rug is worth today, very roughly £80 to £150: whether it is worth that to you is for you to decide.");
  });
  it.each(["mould", "insects"] as const)("says what comes back as of a cleaning that is not settled where others have to treat it first (%s)", (mechanism) => {
    const of = (probability: number) => { const input = inspected(worthless({ advice: action("quote-with-limits") }, "food-old"), NOT_BEYOND); return composeDraft({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, assessment: { ...rug.assessment, mechanisms: [...rug.assessment.mechanisms, { ...rug.assessment.mechanisms[0]!, mechanism, probability }] } })) }).text; };
    expect(of(0.33)).toMatch(/Were it cleaned, that might [^.]*\(10–60\u00a0%\)/);
    expect(of(0.32)).toMatch(/We would expect careful cleaning to [^.]*\(10–60\u00a0%\)/);
  });
  it.each([["a wide outlook", { improvement: range(5, 40, 95) }], ["a wide life", { lifeYears: range(0.5, 6, 40) }], ["a life of at least some years", { lifeYears: range(8, 20, 60) }]] as const)("tells nothing “from here” of it (%s)", (_, rest) => {
    const of = (inspection: Inspected | null) => composeDraft(inspected(worthless({ advice: action("quote-with-limits"), beyondRepair: 0.1, ...rest }), inspection)).text;
    expect(of(NOT_BEYOND)).not.toMatch(/from here/i);
    expect(of(BEYOND)).not.toMatch(/from here/i);
    expect(of(NOT_BEYOND)).toMatch(/we cannot tell|8\s+years and some decades more\./);
  });
  it("asks for no photo and for nothing that is seen or felt, and once it was found beyond repair for nothing at all", () => {
    const ask = (kind: "photo" | "question", id: string) => ({ kind, id, ask: id, why: "" });
    const input = (...nextQuestions: Assessment["nextQuestions"]) => { const open = worthless({ nextQuestions }); return { ...open, assessments: open.assessments.map((rug) => ({ ...rug, assessment: { ...rug.assessment, fibres: rug.assessment.fibres.map((f, at) => (at === 0 ? { ...f, words: "about as likely as not" } : f)) } })) }; };
    const asks = (of: DraftInput, inspection: Inspected | null) => composeDraft(inspected(of, inspection)).paragraphs.filter((p) => p.place === "asks").map((p) => p.said);
    const seenThen = input(ask("photo", "label"), ask("photo", "back"), ask("question", "shine"), ask("question", "touch"));
    expect(asks(seenThen, null)).toHaveLength(1);
    expect(asks(seenThen, NOT_BEYOND)).toEqual([]);
    const since = input(ask("photo", "label"), ask("question", "since"));
    expect(asks(since, NOT_BEYOND)).toEqual([expect.stringMatching(/when/i)]);
    expect(asks(since, BEYOND)).toEqual([]);
  });
  it.each([["any", anyInput], ["evenly drawn", anyWorth]] as const)("never denies it, and promises no more than is known, over %s made-up assessments", (_, any) => {
    fc.assert(fc.property(seen(any), (input) => {
      const { text } = composeDraft(input);
      expect(text).not.toMatch(DENIES);
      expect(text).not.toMatch(/[{}]|undefined|\bnull\b/);
      expect(checkLetter(text, knownOf(input.assessments.map(({ assessment, inspection }) => ({ assessment, inspection: inspection ?? null }))))).toEqual([]);
      expect(text).toMatch(/who inspected it on/);
    }), { numRuns: 300 });
  }, 120_000);
});

describe("the desk, of a rug that somebody here has inspected", () => {
  const desk = (rest: Partial<Assessment>, inspection: Inspected) => deskOf(worthless(rest), inspection);
  const deskOf = (input: DraftInput, inspection: Inspected | null) => {
    const [rug] = inspected(input, inspection).assessments;
    return headlineOf(rug!.assessment, { letter: toldByLetter(rug!, { enquiry: {}, isTrade: false }), words: wordsIn("en-GB") });
  };
  it.each(ACTIONS)("says what the letter says, by their name, and no longer that it is provisional (%s)", (id) => {
    for (const [inspection, says] of [[NOT_BEYOND, "Not beyond"], [BEYOND, "Beyond"]] as const) {
      const { says: headline, why } = desk({ advice: action(id) }, inspection);
      expect(why).toMatch(new RegExp(`^${says} economic repair, in the judgement of Ivo Castellane, who inspected it on 24 November 2026\\.`));
      expect(`${headline} ${why}`).not.toMatch(/provisional|inspection|has been seen|inspect it|unseen|likely not worth/i);
    }
  });
  it("gives no reason why the letter sets no time, which whoever inspected it has told them", () => {
    for (const inspection of [NOT_BEYOND, BEYOND]) expect(desk({ improvement: range(2, 8, 14), urgency: { level: "a-week", why: "" }, advice: action("quote-with-limits") }, inspection).why).not.toMatch(/sets no time/);
  });
  it("tells it after a flood too, and no longer that nobody touches it before the firm has seen it", () => {
    expect(deskOf(flooded(), null).why).toBe("Flood or waste water got into it: nobody touches it before the flood firm has seen it.");
    expect(deskOf(flooded(), BEYOND).why).toBe("Beyond economic repair, in the judgement of Ivo Castellane, who inspected it on 24 November 2026. Flood or waste water got into it, and that can make people ill.");
    expect(deskOf(flooded(), NOT_BEYOND).why).toMatch(/^Not beyond economic repair, in the judgement of Ivo Castellane/);
  });
  it("heads after a flood with what they found, and sends it to nobody who was to say that first; with mould in it, it still goes to who treats that", () => {
    expect(deskOf(flooded(), null).says).toBe("Refer to somebody else");
    expect(deskOf(flooded(), NOT_BEYOND).says).toBe("Test it before any cleaning is offered");
    expect(deskOf(flooded(), BEYOND).says).toBe("Tell them that it is beyond economic repair");
    const mouldy = flooded();
    const withMould = { ...mouldy, assessments: mouldy.assessments.map((rug) => ({ ...rug, assessment: { ...rug.assessment, mechanisms: [{ mechanism: "mould" as const, probability: 0.98 }] } })) };
    for (const inspection of [NOT_BEYOND, BEYOND]) expect(deskOf(withMould, inspection)).toMatchObject({ says: "Refer to somebody else", why: expect.stringMatching(/make people ill\. Mould is very likely\.$/) });
  });
  it("says in no reason of a method that anybody has yet to see it", () => {
    const methods = (told: RugAnswers) => letterOf({ answers: { incidents: ["flood"], ...told }, enquiry: { wetNow: "no" } }).rugs[0]!.assessment.methods.map(({ why }) => why);
    for (const labelText of ["100% wool", "100% polypropylene"]) for (const why of methods({ labelText })) expect(why).not.toMatch(/firm (?:has seen|sees)/);
    expect(methods({ labelText: "100% wool" })).toContain("Not suitable: flood or waste water can make people ill, and what it left in the rug does not go by itself.");
  });
  it("advises against the work where they found it beyond economic repair, and to quote where they did not", () => {
    expect(desk({ advice: action("inspect-and-test") }, BEYOND).says).toBe("Advise against cleaning: keep it or replace it");
    expect(desk({ advice: action("advise-claim-or-replacement") }, NOT_BEYOND).says).toBe("Quote, with limits");
  });
});
