import { describe, expect, it } from "vitest";
import { assessAnswers, draftInput } from "../../../lib/enquiry/assess-answers";
import { composeDraft } from "../../../lib/reply/draft";
import { composeFollowing } from "../../../lib/reply/following";
import { SAYS_MORE } from "../../../lib/reply/moved";
import { PARAGRAPHS } from "../../../lib/reply/paragraphs";
import { checkLetter, knownOf } from "../../../lib/reply/promises/check";
import type { DraftInput } from "../../../lib/reply/pieces";
import type { RugAnswers } from "../../../lib/trade/questions";
import { DEFAULT_SETTINGS } from "../../../lib/workshop/settings-schema";
import type { ActionId, Assessment, MechanismId, Range } from "../../../lib/triage/assessment";
import { CASES } from "./cases";
import { action, FIRST_AID_SAID, inputOf, range, worthless, type OneRug } from "./make";

const WINE = CASES["wool with an old coffee stain"]!;
const wine = (rest: Partial<Assessment>, mechanisms = WINE.sketch.mechanisms) => inputOf({ ...WINE, sketch: { ...WINE.sketch, ...(mechanisms ? { mechanisms } : {}), rest: { ...WINE.sketch.rest, ...rest } } });
/** The letter to somebody who had the first one and has answered a question since; it passes the check as it is. */
function letter(before: DraftInput, after: DraftInput): string {
  const { text, paragraphs, leftOut } = composeDraft(before);
  const next = composeFollowing(after, { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: false, answers: true, photos: 0, tested: false } }).text;
  expect(checkLetter(next, knownOf(after.assessments), [text])).toEqual([]);
  return next.replaceAll("\u00a0", " ");
}
const REPLACES = (topic: string) => new RegExp(`replaces what we wrote before about [^.]*${topic}`);
const HOLDS_NO_MORE = (topic: string) => new RegExp(`What we wrote before about [^.]*${topic}[^.]* no longer holds`);
const CHANGES = /replaces|no longer holds|has changed/;
const [WORTH, OUTLOOK, CAUSE, CARE, INSTEAD] = ["whether it is worth its cost", "how far it may come back", "what has happened to it", "how it may be cleaned", "what could be done instead of cleaning"] as const;

describe("what a following letter says of what the rug may be worth today", () => {
  const worth = (valueToday: Range, rest: Partial<Assessment> = {}) =>
    worthless({ money: { currency: "GBP", clean: range(150, 200, 250), cutDown: null, replace: range(300, 400, 500), valueToday }, ...rest });
  const told = worth(range(80, 150, 220));

  it("is the new amount where it told another one and the chance is the same, in place of the old one", () => {
    const text = letter(told, worth(range(40, 90, 140)));
    expect(text).toMatch(REPLACES(WORTH));
    expect(text).toMatch(/It is likely that saving it is not worth the cost[^.]*very roughly £40 to £140\./);
  });
  it("is nothing where that reads the same, though it was worked out otherwise", () => {
    expect(letter(told, worth(range(80, 160, 220)))).not.toMatch(/replaces|holds|worth|£/);
  });
  it("is nothing where it told no amount, whatever the rug may be worth", () => {
    const years = (valueToday: Range) => worth(valueToday, { lifeYears: range(0.5, 1, 2), improvement: range(40, 60, 80) });
    expect(composeDraft(years(range(200, 300, 400))).text).toMatch(/not worth the money, set against how long it may still serve/);
    expect(letter(years(range(200, 300, 400)), years(range(80, 150, 220)))).not.toMatch(REPLACES(WORTH));
  });
  it("is what else speaks against the work, where an amount was told that is another one now and that no longer does", () => {
    const text = letter(told, worth(range(300, 450, 600), { improvement: range(10, 30, 60) }));
    expect(text).toMatch(REPLACES(WORTH));
    expect(text).toMatch(/cleaning may bring back too little/);
  });
  it("is that it no longer holds, where nothing is told of its worth any more and that is another", () => {
    const antique = (input: DraftInput): DraftInput => ({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, answers: { age: "antique" as const } })) });
    expect(letter(told, antique(worth(range(40, 90, 140))))).toMatch(HOLDS_NO_MORE(WORTH));
  });
  it("takes back no price that it told beside that amount and that is the same, only one that is another", () => {
    const silent = (clean: Range) => { const input = worth(range(40, 90, 140)); return { ...input, assessments: input.assessments.map((rug) => ({ ...rug, answers: { age: "antique" as const }, assessment: { ...rug.assessment, money: rug.assessment.money && { ...rug.assessment.money, clean } } })) }; };
    expect(composeDraft(told).text).toMatch(/£150[^.]*£80/);
    expect(letter(told, silent(range(150, 200, 250)))).not.toMatch(/what cleaning costs/);
    expect(letter(told, silent(range(250, 300, 350)))).toMatch(/what cleaning costs/);
  });
});

describe("what a following letter does not call another thing", () => {
  it("is how far it comes back, in whichever words, while the figures are the same", () => {
    const text = letter(wine({}), wine({ beyondRepair: 0.8 }));
    expect(composeDraft(wine({ beyondRepair: 0.8 })).text).toMatch(/Were it cleaned, that might/);
    expect(text).not.toMatch(REPLACES(OUTLOOK));
    expect(text).not.toMatch(/15–75 %/);
    expect(letter(wine({}), wine({ beyondRepair: 0.8, improvement: range(15, 45, 74) }))).toMatch(REPLACES(OUTLOOK));
  });

  describe("is what has happened, while it is as likely and haste alone came or went", () => {
    const urine = (haste: boolean, chance = 0.95, mechanism: MechanismId = "urine-fresh") =>
      wine({ improvement: range(40, 60, 80), urgency: { level: haste ? "two-days" : "can-wait", why: "" } }, { [mechanism]: chance });
    it("is not where haste went, and is said again where it came", () => {
      expect(composeDraft(urine(false)).text).not.toMatch(/sooner is better/);
      expect(letter(urine(true), urine(false))).not.toMatch(/replaces|fresh enough|what has happened/);
      const hurried = letter(urine(false), urine(true));
      expect(hurried).toMatch(/It sets within days, so sooner is better\./);
      expect(hurried).not.toMatch(CHANGES);
    });
    it("is another thing where it is less likely, or something else", () => {
      expect(letter(urine(true), urine(false, 0.7))).toMatch(REPLACES(CAUSE));
      expect(letter(urine(true), urine(false, 0.95, "food-old"))).toMatch(REPLACES(CAUSE));
    });
  });

  describe("is a back of latex, while it is looked at first", () => {
    const latex = (text: string) => inputOf({ ...WINE, sketch: { ...WINE.sketch, evidence: [{ what: "label", value: { text, says: "wool", pile: null }, strength: "label-typed", decibans: 3 }, { what: "back", value: "cloth", strength: "told" }] } });
    const [named, unnamed] = [latex("Wool, latex back"), latex("Wool")];
    it("is said no more where the label alone no longer names it, and said as more where it does now", () => {
      expect(composeDraft(named).text).toMatch(/By its label latex holds its back/);
      expect(composeDraft(unnamed).text).toMatch(/Latex seems to hold its back/);
      expect(letter(named, unnamed)).not.toMatch(/replaces|holds|seems/);
      const more = letter(unnamed, named);
      expect(more).toMatch(/can say more[^]*By its label latex holds its back/);
      expect(more).not.toMatch(CHANGES);
    });
  });

  it("is how it may be cleaned, where a chance of harm only comes to it", () => {
    const text = letter(wine({}), wine({ worse: 0.2 }));
    expect(text).toMatch(/can say more[^]*There is a real chance/);
    expect(text).not.toMatch(CHANGES);
    expect(letter(wine({ worse: 0.2 }), wine({ worse: 0.4 }))).toMatch(REPLACES(CARE));
  });
  it.each(Object.entries(SAYS_MORE))("is %s beside others of the same place", (id, others) => {
    const placeOf = (of: string) => PARAGRAPHS.find((p) => p.id === of)?.place;
    expect(placeOf(id)).toBeDefined();
    expect(others.map(placeOf)).toEqual(others.map(() => placeOf(id)));
  });
});

describe("what a following letter takes back of what could be done instead of cleaning", () => {
  const rug = (id: ActionId, rest: Partial<Assessment> = {}, more: Partial<OneRug> = {}, mechanism: MechanismId = "matting") => inputOf({
    sketch: { fibres: { viscose: 0.9 }, evidence: [{ what: "touch", value: "cool-slippery", strength: "told" }], mechanisms: { [mechanism]: 0.9 },
      rest: { beyondRepair: 0.8, improvement: range(0, 9, 23), lifeYears: range(2, 6, 11), advice: action(id), money: { currency: "GBP", clean: range(150, 200, 250), cutDown: range(60, 120, 300), replace: range(300, 400, 500), valueToday: range(300, 400, 500) }, ...rest } },
    ...more,
  });
  const KEEP = rug("advise-claim-or-replacement"), CUT = rug("advise-cut-down");
  const aid = { firstAid: FIRST_AID_SAID, advice: action("first-aid") };
  const wet = (answers: RugAnswers = { incidents: ["water"] }): Partial<OneRug> => ({ answers, enquiry: { wetNow: "wet" } });

  it("is nothing of keeping it or a new one where the advice alone is another, first aid comes first, or a proposal comes to it", () => {
    expect(composeDraft(KEEP).text).toMatch(/keep it as it is and spend nothing\. If that will not do, a new rug like it costs very roughly £300 to £500/);
    for (const after of [rug("quote-with-limits", { beyondRepair: 0.2 }), rug("first-aid", aid, wet())]) expect(letter(KEEP, after)).not.toMatch(new RegExp(INSTEAD));
    const cut = letter(KEEP, CUT);
    expect(cut).toMatch(/can say more[^]*We would propose cutting it down/);
    expect(cut).not.toMatch(CHANGES);
  });
  it("is not what we would rather not clean, said beside the same price of a new one", () => {
    const gone = rug("advise-claim-or-replacement", { improvement: range(0, 10, 40), money: { currency: "GBP", clean: range(350, 450, 550), cutDown: null, replace: range(300, 400, 500), valueToday: range(300, 400, 500) } }, {}, "urine-old");
    expect(composeDraft(gone).text).toMatch(/We would rather not take your money for cleaning it\. Should you think of replacing it[^.]*£300 to £500/);
    expect(letter(KEEP, gone)).not.toMatch(new RegExp(INSTEAD));
  });
  it("is what a new one costs where that is another, or not known any more", () => {
    const priced = (replace: Range | null) => rug("advise-claim-or-replacement", { money: { currency: "GBP", clean: range(150, 200, 250), cutDown: null, replace, valueToday: range(300, 400, 500) } });
    expect(letter(KEEP, priced(range(100, 150, 200)))).toMatch(/replaces what we wrote before about what could be done instead of cleaning\.[^]*£100 to £200/);
    expect(letter(KEEP, priced(null))).toMatch(REPLACES(INSTEAD));
    expect(letter(priced(null), KEEP)).not.toMatch(CHANGES);
  });
  it("is that it may be used as it is, once something in it has to be treated or seen to first", () => {
    for (const after of [rug("refer", {}, {}, "mould"), rug("refer", {}, {}, "insects"), rug("refer", {}, { answers: { incidents: ["flood"] } })]) expect(letter(KEEP, after)).toMatch(HOLDS_NO_MORE(INSTEAD));
  });
  it("is not that no money be spent before somebody has seen it, which is said as no more to say either", () => {
    const doubtful = rug("advise-claim-or-replacement", { beyondRepair: 0.2 }, {}, "urine-old");
    expect(composeDraft(doubtful).text).toMatch(/do not spend money on cleaning before someone has seen it/);
    expect(letter(doubtful, rug("refer", { beyondRepair: 0.2 }, {}, "mould"))).not.toMatch(new RegExp(INSTEAD));
    const before = rug("inspect-and-test", { beyondRepair: 0.2 }, {}, "urine-old");
    const text = letter(before, doubtful);
    expect(text).toMatch(/do not spend money/);
    expect(text).not.toMatch(/can say more/);
  });
  it("is nothing of cutting it down while first aid comes first, and all of it where something else is proposed or nothing is", () => {
    expect(letter(CUT, rug("first-aid", aid, wet()))).not.toMatch(new RegExp(INSTEAD));
    expect(letter(CUT, rug("quote-with-limits"))).toMatch(HOLDS_NO_MORE(INSTEAD));
    expect(letter(CUT, KEEP)).toMatch(REPLACES(INSTEAD));
  });
  it("is nothing of its being worth its cost while first aid comes first, and is once that is in doubt", () => {
    const good = (rest: Partial<Assessment> = {}, more: Partial<OneRug> = {}) => rug("quote-with-limits", { beyondRepair: 0.1, improvement: range(50, 70, 90), ...rest }, more, "food-old");
    expect(composeDraft(good()).text).toMatch(/likely that cleaning it is worth its cost/);
    expect(letter(good(), good(aid, wet()))).not.toMatch(new RegExp(WORTH));
    expect(letter(good(), good({ ...aid, beyondRepair: 0.5 }, wet()))).toMatch(REPLACES(WORTH));
  });
});

describe("what a following letter says of two rugs", () => {
  const two = (first: DraftInput, second: DraftInput): DraftInput => ({ ...first, assessments: [...first.assessments, ...second.assessments] });
  const years = (low: number, high: number) => wine({ lifeYears: range(low, (low + high) / 2, high) });
  it("names the rug of which something no longer holds, where the same is replaced of the other or stands, and not where it holds of neither", () => {
    expect(letter(two(years(4, 16), years(4, 16)), two(years(2, 6), wine({ lifeYears: null })))).toMatch(/replaces what we wrote before about how long rug 1 may serve\.[^]*What we wrote before about how long rug 2 may serve no longer holds\./);
    expect(letter(two(years(4, 16), years(4, 16)), two(years(4, 16), wine({ lifeYears: null })))).toMatch(/What we wrote before about how long rug 2 may serve no longer holds\./);
    expect(letter(two(years(4, 16), years(4, 16)), two(wine({ lifeYears: null }), wine({ lifeYears: null })))).toMatch(/What we wrote before about how long it may serve no longer holds\./);
  });
});

describe("that a rug is no work for us", () => {
  const NOT_OURS = /This is not work that we take on/;
  const advised = (id: ActionId, rest: Partial<Assessment> = {}) => wine({ advice: action(id), ...rest });
  const [ours, notOurs] = [advised("inspect-and-test"), advised("not-our-work")];

  it("is told in a letter that passes the check: beside what limits all that we judge", () => {
    const text = letter(ours, notOurs);
    expect(text).toMatch(NOT_OURS);
    expect(text).toMatch(/Labels can be wrong|can mislead/);
  });
  it("no longer holds once we would inspect it, and is replaced by what else is said of its worth", () => {
    expect(letter(notOurs, ours)).toMatch(HOLDS_NO_MORE(WORTH));
    expect(letter(advised("not-our-work"), worthless())).toMatch(REPLACES(WORTH));
  });
  it("stands where it still is none", () => {
    expect(letter(notOurs, advised("not-our-work", { worse: 0.2 }))).not.toMatch(WORTH);
    expect(letter(notOurs, notOurs)).not.toMatch(NOT_OURS);
  });
});

describe("a following letter that has nothing else to say", () => {
  const STANDS = "What we wrote to you before still stands.";
  type Came = Parameters<typeof composeFollowing>[1]["came"];
  const next = (came: Partial<Came>, after = wine({}), before = wine({})): string => {
    const { text, paragraphs, leftOut } = composeDraft(before);
    const letter = composeFollowing(after, { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: false, answers: false, photos: 0, tested: false, ...came } }).text;
    expect(checkLetter(letter, knownOf(after.assessments), [text])).toEqual([]);
    return letter;
  };

  it("says that what we wrote still stands, where photos or answers came, and nothing of a change", () => {
    for (const came of [{ photos: 2 }, { answers: true }]) expect(next(came)).toMatch(new RegExp(`Thank you for [^.]*\\.\\n\\n${STANDS}\\n\\nWith kind regards`));
    for (const came of [{ photos: 2 }, { answers: true }]) expect(next(came)).not.toMatch(CHANGES);
  });
  it("leaves that to whoever answers what they wrote, and says it of nothing that came", () => {
    for (const came of [{ message: true }, { message: true, photos: 1 }, { byOthers: true }, {}]) expect(next(came)).not.toContain(STANDS);
  });
  it("does not say it beside a change, or more to say", () => {
    for (const after of [wine({ lifeYears: range(1, 2, 3) }), wine({ worse: 0.4 })]) expect(next({ answers: true }, after)).not.toContain(STANDS);
    expect(next({ answers: true }, wine({}), wine({ lifeYears: null }))).toMatch(/can say more/);
    expect(next({ answers: true }, wine({}), wine({ lifeYears: null }))).not.toContain(STANDS);
  });
  it("says it beside first aid that still holds, not where that is told anew", () => {
    const wet = (answers: RugAnswers) => inputOf({ sketch: { fibres: { wool: 0.93 }, rest: { firstAid: FIRST_AID_SAID, advice: action("first-aid") } }, answers, enquiry: { wetNow: "wet" } });
    const [spill, spots]: RugAnswers[] = [{ liquid: "wine", since: "hour" }, { liquid: "wine", since: "hour", changes: ["spots"] }];
    expect(next({ answers: true }, wet(spill!), wet(spill!))).toMatch(new RegExp(`our first aid still holds[^]*${STANDS}`));
    expect(next({ answers: true }, wet(spots!), wet(spill!))).not.toContain(STANDS);
    const dry = inputOf({ sketch: { fibres: { wool: 0.93 } }, answers: spill!, enquiry: { wetNow: "no" } });
    expect(next({ answers: true }, dry, wet(spill!)), "what that letter told was first aid").not.toContain(STANDS);
  });
  it.each([
    ["100% wool", "80% wool 20% nylon"], ["100% viscose", "70% viscose 30% polyester"], ["60% wool 40% polypropylene", "55% polypropylene 45% polyester"], ["80% wool 20% viscose", "50% wool 50% viscose"],
  ])("says what the label “%s” says now that it is known to read “%s”, and not that all stands", (before, after) => {
    const labelled = (labelText: string): DraftInput => {
      const answers: RugAnswers = { labelText, changes: ["dirty"], incidents: ["wear"] };
      const client = { name: "Ana Example", isTrade: false, email: "ana@mail.example" };
      const { rugs } = assessAnswers({ channel: "web", asOf: "2026-11-28T09:00:00.000Z", enquiry: { wetNow: "no" }, workshop: DEFAULT_SETTINGS, client, rugs: [{ answers, colours: [], photos: [] }] });
      return draftInput({ client, workshop: DEFAULT_SETTINGS, enquiry: { wetNow: "no" }, rugs: [{ answers, photos: [], messages: [], inspection: null }], wetByWords: null, saidOfWater: null }, rugs);
    };
    const said = next({ answers: true }, labelled(after), labelled(before));
    expect(said.replaceAll("\u00a0", " ")).toContain(`“${after}”`);
    expect(said).not.toContain(STANDS);
    for (const same of [before, before.toUpperCase()]) expect(next({ answers: true }, labelled(same), labelled(before)), same).toContain(STANDS);
  });
});
