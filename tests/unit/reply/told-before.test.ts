import { describe, expect, it } from "vitest";
import { changesBetween } from "../../../lib/reply/changes";
import { composeDraft, type ComposedDraft } from "../../../lib/reply/draft";
import { composeFollowing, composeWholeAgain } from "../../../lib/reply/following";
import { SHIPPED } from "../../../lib/reply/library";
import { piecesOf, type DraftInput, type SaidParagraph } from "../../../lib/reply/pieces";
import { withToldBefore } from "../../../lib/reply/told-before";
import type { RugAnswers } from "../../../lib/trade/questions";
import type { Assessment, MechanismId } from "../../../lib/triage/assessment";
import { action, FIRST_AID_SAID, inputOf, range, worthless } from "./make";

const ANSWERS = { message: false, answers: true, photos: 0, tested: false };
const toldBy = ({ text, paragraphs, leftOut }: ComposedDraft) => ({ text, paragraphs: [...paragraphs, ...leftOut] });
type Compose = typeof composeFollowing;
/** The last of several letters, each of which follows the one before. `how`: how those after the first are written. */
const lastOf = ([first, ...more]: readonly [DraftInput, ...DraftInput[]], how: Compose = composeFollowing): ComposedDraft =>
  more.reduce((before, input) => how(input, { told: toldBy(before), came: ANSWERS }), composeDraft(first));
const last = (...inputs: readonly [DraftInput, ...DraftInput[]]): string => lastOf(inputs).text.replaceAll("\u00a0", " ");

const rug = (mechanisms: Partial<Record<MechanismId, number>>, answers: RugAnswers = {}, rest: Partial<Assessment> = {}) =>
  inputOf({ sketch: { fibres: { wool: 0.9 }, evidence: [{ what: "label", value: { text: "100% wool", says: null, pile: "wool" }, strength: "told" }], mechanisms: { "soil-only": 0.9, ...mechanisms }, rest }, answers });
const AID: Partial<Assessment> = { firstAid: FIRST_AID_SAID, advice: action("first-aid"), urgency: { level: "hours", why: "" } };
const wetByWords = (input: DraftInput): DraftInput => ({ ...input, assessments: input.assessments.map((r) => ({ ...r, wetByWords: "whole" as const })) });

describe("a caution that stood over a letter which was silent on it", () => {
  const [spotted, none, aid] = [rug({ mould: 0.82 }, { changes: ["spots"] }), rug({}, { changes: ["smell"] }), rug({}, { changes: ["smell"] }, AID)];
  const TAKEN_BACK = /What we wrote before about [^.]*mould in it[^.]* no longer holds\./;

  it("is taken back by the letter after, where they wrote of water", () => {
    const silent = wetByWords(none);
    expect(last(spotted, silent)).not.toMatch(TAKEN_BACK);
    expect(last(spotted, silent, silent)).not.toMatch(TAKEN_BACK);
    expect(last(spotted, silent, none)).toMatch(TAKEN_BACK);
    expect(last(spotted, silent, silent, none)).toMatch(TAKEN_BACK);
  });
  it("is taken back once, and not where it was never told or is feared still", () => {
    expect(last(spotted, aid, none, none)).not.toMatch(TAKEN_BACK);
    expect(last(none, aid, none)).not.toMatch(TAKEN_BACK);
    expect(last(spotted, wetByWords(none), spotted)).not.toMatch(TAKEN_BACK);
  });
  it("is taken back after a whole letter that said nothing of it, which itself takes nothing back", () => {
    const whole = lastOf([spotted, none], composeWholeAgain);
    expect(whole.text).not.toMatch(/no longer holds|mould/);
    expect(composeFollowing(none, { told: toldBy(whole), came: ANSWERS }).text).toMatch(TAKEN_BACK);
  });
});

describe("how soon it was to be seen to", () => {
  const due = (level: Assessment["urgency"]["level"], rest: Partial<Assessment> = {}) => rug({ "food-fresh": 0.8 }, {}, { improvement: range(40, 60, 80), urgency: { level, why: "" }, ...rest });

  it("is taken back once first aid is over and it can wait", () => {
    expect(last(due("a-week"), due("can-wait", AID))).not.toMatch(/no longer holds/);
    expect(last(due("a-week"), due("can-wait", AID), due("can-wait"))).toMatch(/What we wrote before about having it seen to soon no longer holds\./);
  });
});

describe("a figure that stood over a letter which was silent on it", () => {
  const soiled = (low: number, high: number) => rug({}, { changes: ["dirty"] }, { improvement: range(low, (low + high) / 2, high), advice: action("routine-clean") });
  const [told, other] = [soiled(28, 97), soiled(66, 98)];

  it("is replaced by another in the letter after, and told again where it is the same", () => {
    expect(last(told, wetByWords(told), other)).toMatch(/replaces what we wrote before about how far it may come back\.[^]*66–98 %/);
    expect(last(told, wetByWords(told), told)).toMatch(/28–97 %/);
    expect(last(told, wetByWords(told), told)).not.toMatch(/replaces|no longer holds/);
  });
  it("is put into no draft that was begun with another, once nothing is told of it today", () => {
    const from = (input: DraftInput) => composeFollowing(input, { told: toldBy(composeDraft(told)), came: ANSWERS });
    const today = wetByWords(told);
    const changes = changesBetween(toldBy(from(other)), from(today), piecesOf(today, ANSWERS).readsToday);
    expect(changes.flatMap(({ was }) => was ?? []).join()).toContain("66–98");
    expect(changes.flatMap(({ now }) => now ?? []).join()).not.toContain("28–97");
  });
  it("is said once to wait, not in each letter until it is told", () => {
    expect(last(told, wetByWords(told))).toMatch(/how far it may come back[^.]* was about a dry rug/);
    expect(last(told, wetByWords(told), wetByWords(told))).not.toMatch(/was about a dry rug/);
  });
});

describe("a figure that a letter in between would have told", () => {
  const CLEAN = "what cleaning costs", WORTH = "whether it is worth its cost";
  const LONG = { ...SHIPPED[0]!, from: "workshop" as const, id: "own-long", place: "notes" as const, when: {}, text: "We wash no rug here that we have not seen. ".repeat(50).trim(), tones: {} };
  const priced = (median: number) => rug({}, { changes: ["dirty"] }, { improvement: range(40, 60, 80), advice: action("routine-clean"), money: { currency: "GBP", clean: range(median - 50, median, median + 50), cutDown: null, replace: null, valueToday: null } });
  /** The third letter, after a whole one that left `between` out for length. */
  const afterLong = (first: DraftInput, between: DraftInput, third: DraftInput): string => {
    const whole = composeWholeAgain({ ...between, library: [LONG, ...SHIPPED] }, { told: toldBy(composeDraft(first)), came: ANSWERS });
    expect(whole.text).not.toContain("£");
    return composeFollowing(third, { told: toldBy(whole), came: ANSWERS }).text.replaceAll("\u00a0", " ");
  };

  it("is not what the next one replaces, where length left it out: that is what was read before it", () => {
    expect(composeDraft(priced(150)).text).toContain("£100 to £200");
    expect(afterLong(priced(150), priced(250), priced(350))).toMatch(/This replaces what we wrote before about what cleaning costs\.[^]*£300 to £400/);
    expect(afterLong(priced(150), priced(250), priced(150))).not.toMatch(/replaces|no longer holds/);
    expect(afterLong(rug({}, { changes: ["dirty"] }), priced(250), priced(350))).not.toContain(`replaces what we wrote before about ${CLEAN}`);
  });
  it("is not what the next one replaces, where the judgement stood in the words of the first, which told no figure", () => {
    const worth = (low: number, high: number) => worthless({ money: { currency: "GBP", clean: range(150, 200, 250), cutDown: null, replace: range(300, 400, 500), valueToday: range(low, (low + high) / 2, high) }, lifeYears: range(0.5, 1, 2), improvement: range(40, 60, 80) });
    const [silent, telling, otherwise] = [worth(200, 400), worth(80, 220), worth(40, 140)];
    expect(last(silent)).toContain("not worth the money, set against how long it may still serve");
    expect(last(silent, telling)).not.toContain("£80");
    expect(last(telling, otherwise)).toContain(`replaces what we wrote before about ${WORTH}`);
    expect(last(silent, telling, otherwise)).not.toMatch(/replaces|no longer holds/);
  });
});

describe("withToldBefore", () => {
  const care = (rug: number, said: string): SaidParagraph => ({ language: "en", id: said, version: 1, from: "shipped", text: said, place: "care", rug, said, stands: false });
  const [ones, others] = ["Nearly dry.", "Only nearly dry."] as const;
  const keptOf = (rug: number) => withToldBefore({ paragraphs: [], leftOut: [care(rug, ones)] }, { text: `${ones}\n\n${others}`, paragraphs: [care(0, ones), care(1, others)] }, () => false)
    .leftOut.filter((p) => p.rug === rug).map(({ said }) => said);

  it("keeps the words in which a rug was told of, not others that were written of another rug", () => {
    expect(keptOf(0)).toEqual([ones]);
    expect(keptOf(1)).toEqual([others]);
  });
});
