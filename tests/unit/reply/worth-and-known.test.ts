import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import type { DraftInput } from "../../../lib/reply/pieces";
import type { RugAnswers } from "../../../lib/trade/questions";
import type { Assessment, MechanismId } from "../../../lib/triage/assessment";
import { action, assessmentOf, inputOf, range, worthless, type Sketch } from "./make";

describe("composeDraft, worth", () => {
  const says = (...of: Parameters<typeof worthless>) => composeDraft(worthless(...of)).text;
  const money = (value: number | null) => ({ money: { currency: "GBP", clean: range(150, 200, 250), cutDown: null, replace: range(300, 400, 500), valueToday: value === null ? null : range(value / 2, value, value * 2) } });
  const OFFERS = ["inspect-and-test", "quote-with-limits", "routine-clean", "first-aid"] as const;
  describe("that it likely is worth its cost", () => {
    const YES = "It is likely that cleaning it is worth its cost; that is provisional: nobody here has inspected it.";
    const good = (rest: Partial<Assessment> = {}, mechanism: MechanismId = "food-old") =>
      worthless({ ...money(2000), beyondRepair: 0.2, improvement: range(30, 60, 80), lifeYears: range(4, 9, 16), advice: action("quote-with-limits"), ...rest }, mechanism);
    const plainly = (input: DraftInput) => composeDraft(input).text;
    it.each(OFFERS)("is said once, after how far it comes back, where cleaning is what we offer (%s)", (id) => {
      const text = plainly(good({ advice: action(id) }));
      expect(text).toMatch(/\(30–80\u00a0%\) of the mark\. It is likely that cleaning it is worth its cost; that is provisional: nobody here has inspected it\./);
      expect(text.match(/worth/g)).toHaveLength(1);
    });
    it("is said below .33 and not from there on", () => {
      expect(plainly(good({ beyondRepair: 0.329 }))).toContain(YES);
      expect(plainly(good({ beyondRepair: 0.33 }))).not.toContain(YES);
      expect(plainly(good({ beyondRepair: null }))).not.toContain(YES);
    });
    it("is said where only a new one has a price, and not where nothing is known to set the cost against, or no cost", () => {
      const amounts = (clean: boolean, replace: boolean) => ({ money: { currency: "GBP", clean: clean ? range(150, 200, 250) : null, cutDown: null, replace: replace ? range(900, 1200, 1500) : null, valueToday: null } });
      expect(plainly(good(amounts(true, true)))).toContain(YES);
      for (const [clean, replace] of [[true, false], [false, true], [false, false]] as const) expect(plainly(good(amounts(clean, replace)))).not.toContain(YES);
      expect(plainly(good({ money: null }))).not.toContain(YES);
    });
    it.each<[string, DraftInput]>([
      ["little comes back", good({ improvement: range(2, 9, 22) })],
      ["how much comes back cannot be told", good({ improvement: range(10, 60, 90) })],
      ["few years are left", good({ lifeYears: range(0.5, 1, 2) })],
      ["cleaning costs as much as the rug is worth", good(money(200))],
      ["the main trouble is a matter for repair", good({}, "shrinkage")],
      ["mould has to be seen to first", good({}, "mould")],
      ["it is old", { ...good(), assessments: good().assessments.map((rug) => ({ ...rug, answers: { age: "antique" } })) }],
      ["it is wet", { ...good(), enquiry: { wetNow: "damp" } }],
      ["they write of water", { ...good(), assessments: good().assessments.map((rug) => ({ ...rug, wetByWords: "whole" })) }],
      ["they ask what it is", { ...good(), enquiry: { reason: "what-is-it" } }],
      ["they ask whether it was sold as what it is", { ...good(), enquiry: { reason: "mis-sold" } }],
      ["another cleaner asks", { ...good(), client: { name: "Ana Example", isTrade: true } }],
      ...(["leave-alone", "ask-for-more", "advise-cut-down", "advise-claim-or-replacement", "refer", "not-our-work"] as const).map((id): [string, DraftInput] => [`we would ${id}`, good({ advice: action(id) })]),
    ])("is not said where %s", (_, input) => expect(plainly(input)).not.toMatch(/likely that cleaning it is worth/));
  });
  it("sets the cost against what the rug may be worth where there is harm and the cost reaches the worth, not a pound before", () => {
    expect(says(money(200))).toMatch(/likely that saving it is not worth the cost, for cleaning alone about £150 to £250, set against what it may be worth today, very roughly £100 to £400\./);
    expect(says(money(201))).not.toMatch(/worth the cost|worth today/);
  });
  it.each(["soil-only", "matting", "fading", "food-fresh"] as const)("does not set it against the worth for %s alone, however dear the cleaning", (mechanism) => {
    expect(says({}, mechanism)).not.toMatch(/worth the cost/);
    expect(says({}, mechanism)).toMatch(/cleaning it is not worth the money: at about £150 to £250 it may well cost more than the rug is worth today, very roughly £80 to £220\. That is provisional/);
  });
  it.each([
    ["where it is likely not worth it", 0.8, "at about £150 to £250 it"], ["where that is open", 0.5, "at about £150 to £250 it"], ["where it is not in doubt but for the cost", 0.1, "At about £150 to £250, cleaning"],
  ] as const)("says that it would cost more only where the least of the cost is over the most of the worth, not where they meet, %s", (_, beyondRepair, begins) => {
    const until = (most: number) => says({ beyondRepair, advice: action("quote-with-limits"), money: { currency: "GBP", clean: range(150, 200, 250), cutDown: null, replace: range(300, 400, 500), valueToday: range(40, 90, most) } }, "food-fresh");
    expect(until(149)).toContain(`${begins} would by our estimates cost more than the rug is worth today, very roughly £40 to £`);
    expect(until(149)).not.toMatch(/may well cost/);
    expect(until(150)).toContain(`${begins} may well cost more than the rug is worth today, very roughly £40 to £150.`);
  });
  it.each(["advise-claim-or-replacement", "advise-cut-down", "refer", "leave-alone", ...OFFERS] as const)("says in the second sentence that it is likely not worth it, and what could change that, from .66 on (%s)", (id) => {
    const second = (beyondRepair: number) => /Going by [^.]*\.( It is likely that (?:in money alone saving it is not worth its cost: cleaning may bring back too little|cleaning it is not worth the money: it may not gain enough)\. That is provisional: nobody here has inspected it, and an inspection could change it\.)?/.exec(says({ ...money(5000), beyondRepair, advice: action(id) }))?.[1];
    expect(second(0.67)).toBeDefined();
    expect(second(0.65)).toBeUndefined();
  });
  describe("where the client asked whether it is worth it", () => {
    /** The first two sentences of the answer. */
    const firstTwo = (text: string) => /Going by .*?[.](?= |$).*?[.](?= |$)/m.exec(text)?.[0] ?? "";
    const asking = (rest: Partial<Assessment>, story?: string, answers: RugAnswers = {}) => {
      const { assessments: [rug], ...input } = worthless({ ...money(300), advice: action("quote-with-limits"), ...rest }, "food-old");
      return composeDraft({ ...input, assessments: [{ ...rug!, answers: { ...answers, ...(story ? { story } : {}) } }] }).text;
    };
    const ASKED = "Is it worth having it cleaned?";
    it.each([0.1, 0.33, 0.5, 0.65, 0.66, 0.9])("the answer stands in the first two sentences, whatever it is (chance of .%d that it is not)", (beyondRepair) => {
      for (const rest of [{}, money(5000), money(150), { lifeYears: range(5, 9, 16), improvement: range(30, 60, 80), ...money(5000) }]) {
        const asked = asking({ beyondRepair, ...rest }, ASKED);
        if (/\bworth\b/.test(asked)) expect(firstTwo(asked)).toMatch(/\bworth (?:the|its|today)/);
        expect(asked.split(/(?<=\.)\s+/).sort()).toEqual(asking({ beyondRepair, ...rest }).split(/(?<=\.)\s+/).sort());
      }
      expect(asking({ beyondRepair }, ASKED)).toMatch(/\bworth\b/);
    });
    it("it stands after how far it comes back where they asked something else", () =>
      expect(firstTwo(asking({ beyondRepair: 0.5 }, "Can you clean it?"))).toMatch(/of the mark\.$/));
    it("nor does a pile of which two fibres fit put it off", () =>
      expect(firstTwo(asking({ beyondRepair: 0.5, fibres: assessmentOf({ fibres: { viscose: 0.5, polyester: 0.3 }, words: "about as likely as not" }).fibres }, ASKED, { sellerSaid: "silk" }))).toMatch(/both fit better\. Cleaning it may not be worth/));
  });
  it("speaks of money alone where saving it is likely not worth it, so that nobody reads that the rug is worth nothing to them", () => {
    expect(says({ ...money(5000) })).toMatch(/It is likely that in money alone saving it is not worth its cost: cleaning may bring back too little\./);
    expect(says({ ...money(5000) })).not.toMatch(/saving it is not worth the money/);
  });
  it("says at even odds that it may not be, from .33 to .66, and nothing of it below", () => {
    const perhaps = /Cleaning it may not be worth the money: that hangs on how much comes back, and only an inspection could tell\./;
    for (const beyondRepair of [0.33, 0.65]) expect(says({ ...money(5000), beyondRepair })).toMatch(perhaps);
    for (const beyondRepair of [0.32, 0.66]) expect(says({ ...money(5000), beyondRepair })).not.toMatch(perhaps);
    expect(says({ ...money(5000), beyondRepair: 0.32 })).not.toMatch(/worth/);
  });
  describe("what speaks against the work", () => {
    const reason = (rest: Partial<Assessment>, mechanism: MechanismId = "food-old") => /It is likely that (.*)\. That is provisional: nobody here has inspected it, and an inspection could change it\./.exec(says({ ...money(300), lifeYears: range(4, 9, 16), ...rest }, mechanism))?.[1];
    const wide = (median: number) => ({ improvement: range(10, median, 80) });
    it("is how little comes back where probably less does than counts as brought back (under 40 per cent), whatever the rug is worth", () => {
      for (const worth of [money(300), money(5000), money(null), { money: null }]) {
        expect(reason({ ...worth, ...wide(39.9) })).toBe("cleaning it is not worth the money: it may not gain enough");
        expect(reason({ ...worth, ...wide(39.9) }, "dye-bleed")).toBe("in money alone saving it is not worth its cost: cleaning may bring back too little");
      }
    });
    it("is the years left where enough comes back and they may be few", () => {
      const few = { ...wide(40), lifeYears: range(0.9, 3, 7) };
      expect(reason(few)).toBe("cleaning it is not worth the money, set against how long it may still serve");
      expect(reason({ ...few, lifeYears: range(1, 3, 7) })).not.toMatch(/serve/);
    });
    it("is else what the rug is worth, which nobody here knows well, and that is said", () => {
      expect(reason(wide(40))).toBe("cleaning it is not worth the money, but that hangs on what the rug is worth today, which we cannot tell well from here");
    });
    it.each([250, 40])("is at even odds also what the rug is worth where the cost may reach it (cost up to 250, worth from %d on)", (from) => {
      const text = says({ beyondRepair: 0.5, ...wide(50), money: { currency: "GBP", clean: range(150, 200, 250), cutDown: null, replace: range(900, 1000, 1200), valueToday: range(from, 600, 900) } });
      expect(text).toMatch(/may not be worth the money: that hangs on how much comes back and on what the rug is worth today\./);
    });
    it("is at even odds not what the rug is worth where that lies above all that the cost may be", () => {
      expect(says({ beyondRepair: 0.5, ...wide(50), money: { currency: "GBP", clean: range(150, 200, 250), cutDown: null, replace: range(900, 1000, 1200), valueToday: range(251, 600, 900) } })).not.toMatch(/worth today/);
    });
  });
  it.each(OFFERS)("joins it to the price of a cleaning that we offer (%s): an inspection first, no pitch, and what that costs is asked before it", (id) => {
    const text = says({ advice: action(id) }, "urine-old");
    expect(text).toMatch(/not worth the cost[^]*If it is cleaned all the same[^]*If an inspection finds it worth cleaning, we estimate £150 to £250;[^]*Only an inspection and tests could change our answer\. If you would like one, ask first what it costs/);
    expect(text).not.toMatch(/We would clean it|Cleaning would cost|rather not take your money/);
  });
  it.each(OFFERS)("says beside the plain price at even odds that it may be more than the worth (%s)", (id) => {
    expect(says({ advice: action(id), beyondRepair: 0.5 }, "food-fresh")).toMatch(/may not be worth the money: at about £150 to £250 it may well cost more than the rug is worth today, very roughly £80 to £220\.[^]*Cleaning would cost about £150 to £250\./);
  });
  it("puts that we would rather not take the money beside a small range, and after a good one beside what to do instead", () => {
    expect(says({ improvement: range(0, 10, 21) }, "urine-old")).toMatch(/\(0–21\u00a0%\) of the mark\. We would rather not take your money for cleaning it\./);
    for (const mechanism of ["food-fresh", "backing-failure", "dye-bleed"] as const) {
      const text = says({ improvement: range(26, 80, 98) }, mechanism);
      expect(text).not.toMatch(/%\)[^\n]*rather not take your money/);
      expect(text).toMatch(/\n\nWe would rather not take your money for cleaning it\. Should you think of replacing it, a new rug like it costs very roughly £300 to £500\./);
    }
  });
  it("says that cleaning gains too little where little comes back of a mark, whatever the rug is worth", () => {
    expect(says({ ...money(5000), improvement: range(0, 1, 3) })).toMatch(/likely that cleaning would bring back too little to be worth its cost/);
    expect(says({ ...money(5000), improvement: range(0, 1, 3) }, "soil-only")).not.toMatch(/too little/);
  });
  it("names cost and worth wherever it says that the one may be more than the other, if both are known, and neither where one is not", () => {
    const dear = /cost more than the rug is worth today|not worth the cost,/;
    const both = /£150 to £250[^.]*worth today, very roughly £80 to £220/;
    const unknown = { money: { currency: "GBP", clean: range(150, 200, 250), cutDown: null, replace: range(100, 150, 200), valueToday: null } };
    for (const mechanism of ["dye-bleed", "soil-only"] as const) for (const beyondRepair of [0.1, 0.5, 0.8]) for (const id of [...OFFERS, "refer", "advise-claim-or-replacement"] as const) {
      const named = says({ beyondRepair, advice: action(id) }, mechanism);
      expect([id, beyondRepair, both.test(named)]).toEqual([id, beyondRepair, dear.test(named)]);
      expect(says({ ...unknown, beyondRepair, advice: action(id) }, mechanism)).not.toMatch(/very roughly £[^.]* today|worth today, very roughly/);
    }
    expect(says()).toMatch(dear);
  });
  it("tells another cleaner neither", () => {
    const trade = composeDraft({ ...worthless(), client: { name: "Ana Example", isTrade: true } }).text;
    expect(trade).toMatch(/saving it is not worth the cost, set against what it may be worth today;/);
    expect(trade).not.toMatch(/£150|very roughly £80/);
  });
  it.each([[0.8, /is likely that cleaning it is not worth the money: it may well cost more than the rug is worth today\./], [0.5, /Cleaning it may not be worth the money: it may well cost more than the rug is worth today\./]] as const)("tells another cleaner that the cost speaks against it, though not by how much, where there is no harm to save it from (%s)", (beyondRepair, said) => {
    const { text } = composeDraft({ ...worthless({ beyondRepair, advice: action("quote-with-limits") }, "soil-only"), client: { name: "Ana Example", isTrade: true } });
    expect(text).toMatch(said);
    expect(text).not.toMatch(/cannot tell well|hangs on|£150|very roughly £80/);
  });
  it.each<[MechanismId, RugAnswers, string]>([
    ["backing-failure", {}, "repair of its back"], ["shrinkage", {}, "repair that eases it back into shape"],
    ["insects", {}, "repair where insects may have eaten it"], ["insects", { changes: ["bare"] }, "repair of the eaten or bare patches"],
  ])("names the repair by the damage (%s)", (mechanism, answers, repair) => {
    for (const [rest, said] of [[{}, "The main trouble"], [{ improvement: null }, "What has happened"]] as const) {
      const { assessments: [rug], ...input } = worthless(rest, mechanism);
      expect(composeDraft({ ...input, assessments: [{ ...rug!, answers }] }).text).toContain(`${said} is a matter for ${repair}, not for cleaning`);
    }
  });
  it("leaves what an old piece is worth to a valuer", () => {
    const { assessments: [rug], ...input } = worthless();
    expect(composeDraft({ ...input, assessments: [{ ...rug!, answers: { age: "antique" } }] }).text).not.toMatch(/not worth|cost more/);
  });
  it("measures the cost by a new rug where no worth today is known", () => {
    expect(says(money(null))).not.toMatch(/worth the cost|worth today/);
  });
});

describe("composeDraft, what is known already", () => {
  const sold = (price: number, sellerSaid: "silk" | "viscose" = "silk") => composeDraft(inputOf({
    sketch: { fibres: { viscose: 0.6, polyester: 0.2 }, words: "likely", evidence: [{ what: "price-per-m2", value: { amount: price, priceTotal: price, currency: "GBP", year: 2024, place: null }, strength: "told" }] }, answers: { sellerSaid },
  })).text;
  it("tells the owner that a price far below silk's speaks against silk, and not that one like silk's does", () => {
    expect(sold(25)).toMatch(/What was paid for it speaks against silk:/);
    expect(sold(1800)).not.toMatch(/What was paid/);
    expect(sold(25, "viscose")).not.toMatch(/What was paid/);
  });
  const asked = (evidence: Sketch["evidence"], nextQuestions: Assessment["nextQuestions"]) =>
    composeDraft(inputOf({ sketch: { fibres: { viscose: 0.5, wool: 0.3 }, words: "about as likely as not", evidence: [{ what: "touch", value: "cool-slippery", strength: "told" }, ...evidence ?? []], rest: { nextQuestions, advice: action("ask-for-more") } } })).text;
  const photo = (id: "whole" | "back" | "pile" | "label") => ({ id, kind: "photo" as const, ask: "", why: "" });
  const question = (id: "household" | "wetNow" | "age") => ({ id, kind: "question" as const, ask: "", why: "" });
  it("does not ask once more what they were asked and are not sure of, and asks what comes next instead", () => {
    const questions = (["sellerSaid", "incidents", "touch", "back"] as const).map((id) => ({ id, kind: "question" as const, ask: id, why: "" }));
    const told = (answers: RugAnswers) => composeDraft(inputOf({ answers, sketch: { fibres: { viscose: 0.5, wool: 0.3 }, words: "about as likely as not", evidence: [{ what: "shine", value: "satin", strength: "told" }], rest: { nextQuestions: [...questions, photo("label")], advice: action("ask-for-more") } } })).text;
    const [seller, happened, touch] = [/What did the seller call it/, /What happened to it/i, /How does the pile feel/];
    expect([seller, happened, touch].map((q) => q.test(told({})))).toEqual([true, true, false]);
    expect([seller, happened, touch].map((q) => q.test(told({ sellerSaid: "unsure" })))).toEqual([false, true, true]);
    expect([seller, happened, touch].map((q) => q.test(told({ sellerSaid: "unsure", incidents: ["unsure"] })))).toEqual([false, false, true]);
    expect(told({ labelFound: "unsure" })).toMatch(/A photo of the label/);
  });
  it("says that it goes by the photos where some came that can be judged by", () => {
    expect(asked([{ what: "photo", value: ["whole"], strength: "told", decibans: 0 }], [])).toMatch(/^Going by what you told us and your photos,/m);
    expect(asked([{ what: "photo-spoilt", value: ["whole"], strength: "told", decibans: 0 }], [])).toMatch(/^Going by what you told us,/m);
  });
  it("asks first for a spoilt photo once more, and says why", () => {
    const text = asked([{ what: "photo-spoilt", value: ["pile"], strength: "told", decibans: 0 }], [photo("whole"), photo("label"), photo("pile")]);
    expect(text).toMatch(/– Once more, a photo of the pile[^\n]*too dark, too light or blurred[^]*– A photo of the whole rug[^]*– A photo of the label/);
  });
  it("asks for no photo of what was told in words, but for one of the label", () => {
    const text = asked([{ what: "back", value: "loomed", strength: "told" }, { what: "label", value: "x", strength: "label-typed" }], [photo("back"), photo("label")]);
    expect(text).not.toMatch(/folded corner/);
    expect(text).toMatch(/photo of the label/);
  });
  it("asks in few words where one thing is left to ask", () => {
    expect(asked([], [photo("whole")])).toMatch(/This would help us most:\n– A photo of the whole rug/);
    expect(asked([], [photo("whole"), photo("back")])).toMatch(/It would help us most to know or see this[^]*whole rug[^]*folded corner/);
  });
  it("does not list pets, floor, age and water among what would help most, and asks whether it is wet in a sentence of its own", () => {
    const text = asked([], [question("household"), question("wetNow"), question("age"), photo("back")]);
    expect(text).not.toMatch(/pets|How old|wet right now/);
    expect(text).toMatch(/If any part of it is wet now, please tell us first of all/);
  });
  it("tells another cleaner that viscose grows weak in water only where viscose leads or may be there", () => {
    const trade = (fibres: Sketch["fibres"]) => composeDraft(inputOf({ sketch: { fibres }, client: { name: "Ana Example", isTrade: true }, enquiry: { reason: "trade" } })).text;
    expect(trade({ viscose: 0.9 })).toMatch(/in water viscose grows weak/);
    expect(trade({ acetate: 0.9 })).toMatch(/this fibre grows weak in water/);
    expect(trade({ polyamide: 0.7, viscose: 0.25 })).toMatch(/As long as it may hold viscose/);
    for (const fibres of [{ acetate: 0.9 }, { polyamide: 0.7, viscose: 0.25 }]) expect(trade(fibres)).not.toMatch(/viscose grows weak/);
  });
});
