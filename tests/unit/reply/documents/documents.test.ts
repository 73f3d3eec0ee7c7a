import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { PrintedDocument } from "../../../../lib/reply/documents/blocks";
import { viscoseCareCard } from "../../../../lib/reply/documents/care-card";
import { conditionReport, type ConditionReport } from "../../../../lib/reply/documents/condition-report";
import { cutDownPlan, type CutDownPlan } from "../../../../lib/reply/documents/cut-down-plan";
import { letterToSeller, type SellerLetter } from "../../../../lib/reply/documents/letter-to-seller";
import { chanceOfViscose, documentsOffered, viscoseWord } from "../../../../lib/reply/documents/offered";
import { composeDraft } from "../../../../lib/reply/draft";
import { checkSentences, WORDS_AND_PHOTOS } from "../../../../lib/reply/promises/check";
import { CARE_COLUMNS, METHODS } from "../../../../lib/trade/care";
import { FIBRE_IDS, type FibreId } from "../../../../lib/trade/fibres";
import { judgeMethods } from "../../../../lib/triage/methods";
import { readTold } from "../../../../lib/triage/told";
import { SPOILT_PHOTO } from "../../../../lib/triage/finding";
import { RIGHTS, type Jurisdiction } from "../../../../lib/trade/rights";
import { assessAnswers } from "../../../../lib/enquiry/assess-answers";
import type { RugAnswers } from "../../../../lib/trade/questions";
import { DEFAULT_SETTINGS } from "../../../../lib/workshop/settings-schema";
import type { Figures } from "../../../../lib/words/measures";
import { anyInput } from "../any-input";
import { wordsForChance } from "../../../../lib/triage/words";
import { action, assessmentOf, inputOf, range } from "../make";
import { allWordsOf, CLEANER, OWNER, TOLD, wordsOf } from "./made";

const textOf = (d: PrintedDocument) => allWordsOf(d).join("\n");
const METRIC = { locale: "en-GB", areaUnit: "m2" } as const;
const WORKSHOP = { name: "Lantern Yard Rug Workshop", lines: ["3 Lantern Yard, Harrowmere"] };

const SELLER: SellerLetter = {
  locale: "en-GB",
  client: { name: "Ana Example", address: "4 Quay Street\nHarrowmere" }, seller: { name: "Kestrel Floors", address: "1 Mill Lane" }, rug: "a grey rug, 170 × 240 cm",
  bought: { on: "3 May 2024", price: "€1,200", invoice: "K-77" }, saidWords: "pure silk", sellerSaid: "silk", labelWords: "100 % viscose", isUnlabelled: false, tests: [], jurisdiction: "EU", today: "28 November 2026",
};
const TEST = { by: "Lantern Yard Rug Workshop", on: "20 November 2026", found: "viscose", kind: "bench" } as const;

describe("figures by locale and unit", () => {
  const way = { kind: "edge-off", pieces: [{ left: 0, top: 30, right: 200, bottom: 300 }], shareKept: 0.9, bindingM: 2, cost: { range: range(120, 150, 180), currency: "USD" } } as const;
  const plan = (figures: Figures) => textOf(cutDownPlan({ asker: OWNER, reference: "K7-204", rug: "a grey rug", size: { widthCm: 200, lengthCm: 300 }, photoTop: "left", damaged: [], isTufted: false, inspected: "no", isProposed: true, workshop: WORKSHOP, ways: [way], figures }));
  it("tells a plan in feet where the workshop counts so, and the same price", () => {
    expect(plan(METRIC)).toMatch(/about 200 × 300 cm as it is drawn here\.[\s\S]*200 × 270 cm[\s\S]*2\.0 m of binding[\s\S]*US\$120 to US\$180/);
    const feet = plan({ locale: "en-US", areaUnit: "sqft" });
    // 200 cm is 78.74 in, 300 cm 118.11 in, 270 cm 106.30 in, 2 m 6.56 ft.
    expect(feet).toMatch(/about 6 ft 7 in × 9 ft 10 in as it is drawn here\.[\s\S]*6 ft 7 in × 8 ft 10 in[\s\S]*7 ft of binding[\s\S]*\$120 to \$180/);
    expect(feet).not.toMatch(/\bcm\b|\bm of\b/);
  });
  it("say their language to whoever reads them aloud", () => {
    expect([conditionReport({ ...REPORT, figures: { locale: "en-IE", areaUnit: "m2" } }).language, letterToSeller({ ...SELLER, locale: "en-US" }).language]).toEqual(["en-IE", "en-US"]);
  });
});

describe("what was measured, in a condition report", () => {
  const found = (what: string, value: object) => ({ what, value, strength: "photo", from: "m1", decibans: 0, staff: "", client: "" }) as unknown as ConditionReport["assessment"]["findings"][number];
  const reported = (figures: Figures, ...findings: ReturnType<typeof found>[]) =>
    textOf(conditionReport({ ...REPORT, figures, assessment: { ...REPORT.assessment, findings } as ConditionReport["assessment"] }));
  it("names the doubt for what it is", () =>
    expect(reported(METRIC, found("colour-change", { direction: "none", deltaE: 6.5, uncertainty: 1.4 }))).toContain("by a colour difference of 6.5, with a standard uncertainty of 1.4 (CIEDE2000)"));
  it("says in which photo and by whose marks, so that one photo measured twice does not read as two", () => {
    const photos = ["p1", "p2"].map((id) => ({ id, shows: "The spot, close", takenOn: null, marks: [] }));
    const change = (strength: "told" | "photo", from: string, deltaE: number) => ({ ...found("colour-change", { direction: "browned", deltaE, uncertainty: 0 }), strength, from });
    const findings = [change("told", "photo:p2", 9), change("photo", "photo:p2", 11), change("photo", "photo:gone", 4)] as ConditionReport["assessment"]["findings"];
    const text = textOf(conditionReport({ ...REPORT, photos, assessment: { ...REPORT.assessment, findings } }));
    expect(text).toMatch(/In photo 2, as the client marked it, the affected spot is .* by a colour difference of 9\.0/);
    expect(text).toMatch(/In photo 2, as the workshop marked it, the affected spot is .* by a colour difference of 11\.0/);
    expect(text).toMatch(/In a photo, as the workshop marked it, the affected spot is .* by a colour difference of 4\.0/);
    expect(text).toMatch(/Photo 1: The spot, close\.[\s\S]*Photo 2: The spot, close\./);
  });
  it("draws every mark under the number that its sentence and its caption give it", () => {
    const corner = { x: 0.1, y: 0.1 };
    const outline = [corner, { x: 0.2, y: 0.1 }, { x: 0.2, y: 0.2 }];
    const marks = [{ what: "edges", outline }, { what: "damaged", outline }, { what: "untouched", outline }, { what: "affected", outline, deltaE: 4 }, { what: "untouched", outline }, { what: "affected", outline, deltaE: 11 }, { what: "damaged", outline }] as const;
    const photos = [{ id: "p0", shows: "The back", takenOn: null, marks: [] }, { id: "p1", shows: "The spot, close", takenOn: null, shape: { width: 800, height: 600 }, marks }];
    const findings = [{ ...found("colour-change", { direction: "browned", deltaE: 11, uncertainty: 0 }), from: "photo:p1" }, { ...found("damaged-area", { cm2: 100, uncertainty: 5, share: 0.1 }), from: "photo:p1" }] as ConditionReport["assessment"]["findings"];
    const report = conditionReport({ ...REPORT, photos, assessment: { ...REPORT.assessment, findings } });
    expect(textOf(report)).toMatch(/In photo 2, as the workshop marked it, the affected spot \(6\) is .* the untouched one \(5\)/);
    expect(textOf(report)).toContain("the damage (2 and 7) takes about 100 cm²");
    const drawn = report.blocks.filter((b) => b.kind === "photo");
    expect(drawn[0]).toEqual({ kind: "photo", photoId: "p0", alternative: "Photo 1: The back", caption: "Photo 1: The back." });
    expect(drawn[1]).toMatchObject({ shape: { width: 800, height: 600 }, marks: [1, 2, 3, 4, 5, 6, 7].map((n) => ({ n, outline })) });
    for (const told of [drawn[1]?.caption, drawn[1]?.alternative])
      expect(told).toBe("Photo 2: The spot, close. Marked in it: the edges of the rug (1), a damaged place (2), an untouched spot (3), an affected spot (4), an untouched spot (5), an affected spot (6) and a damaged place (7).");
  });
  it("tells the damage that was drawn, in the workshop's unit, and still that no colour was compared", () => {
    const drawn = found("damaged-area", { cm2: 4849, uncertainty: 120, share: 0.1189 });
    expect(reported(METRIC, drawn)).toMatch(/No change of colour was measured;[\s\S]*takes about 4,850 cm², give or take 120 cm², or 12 per cent of the rug\./);
    // 4849 / 2.54² = 751.6, 120 / 2.54² = 18.6
    expect(reported({ locale: "en-US", areaUnit: "sqft" }, drawn)).toContain("takes about 752 sq in, give or take 19 sq in, or 12 per cent of the rug.");
  });
});

describe("the letter to a seller", () => {
  const offered = (answers: RugAnswers, isTrade = false) => {
    const [rug] = assessAnswers({ channel: "web", asOf: "2026-11-28T09:00:00Z", enquiry: {}, client: { name: "Ana Example", isTrade: false }, workshop: DEFAULT_SETTINGS, rugs: [{ answers, colours: [], photos: [], tests: [] }] }).rugs;
    return documentsOffered({ assessment: rug!.assessment, hasPlan: false, isTrade }).includes("letter-to-seller");
  };
  it.each<[string, RugAnswers]>([
    ["the seller said silk", { sellerSaid: "silk" }], ["the seller said wool and silk", { sellerSaid: "wool-and-silk" }],
    ["the seller said art silk, whatever the label says", { sellerSaid: "art-silk", labelText: "100% Lyocell" }], ["the seller’s own words were silk", { sellerSaid: "other", sellerWords: "hand-knotted silk" }],
    ["the label says silk", { sellerSaid: "nothing", labelText: "SOIE 100 %" }], ["the label says art silk", { labelText: "Pile: art silk" }],
  ])("is offered where %s", (_, answers) => expect(offered(answers)).toBe(true));
  it.each<[string, RugAnswers]>([
    ["it was to look like silk and no label says what it is", { sellerSaid: "silk-look" }], ["it was to look like silk and the label names its fibre", { sellerSaid: "silk-look", labelText: "100% polypropylene heat-set" }],
    ["only the label speaks of a look of silk", { sellerSaid: "nothing", labelText: "Silk look, 100% polypropylene" }],
    ["the seller said wool", { sellerSaid: "wool", labelText: "100% wool" }], ["the seller said viscose", { sellerSaid: "viscose" }], ["nothing was said", {}],
  ])("is not offered where %s", (_, answers) => expect(offered(answers)).toBe(false));
  it("is not offered for a cleaner’s enquiry, whose customer bought the rug, nor for a gift", () => {
    expect(offered({ sellerSaid: "silk", boughtWhere: "online" })).toBe(true);
    expect(offered({ sellerSaid: "silk", boughtWhere: "online" }, true)).toBe(false);
    expect(offered({ sellerSaid: "silk", boughtWhere: "gift" })).toBe(false);
  });
  it("quotes what was said and what the label says", () => {
    expect(textOf(letterToSeller(SELLER))).toMatch(/described to me as “pure silk”[\s\S]*label on it reads “100 % viscose”/);
  });
  it("without a test asks for composition and proof, and proposes nothing", () => {
    const text = textOf(letterToSeller(SELLER));
    expect(text).toMatch(/what the pile, the ground and the fringe are made of[\s\S]*how you know/);
    expect(text).not.toMatch(/what you propose|refund|return it|tested since/);
    expect(textOf(letterToSeller({ ...SELLER, tests: [TEST] }))).toMatch(/a test of a few fibres by Lantern Yard Rug Workshop, 20 November 2026: viscose\.[\s\S]*what you propose/);
  });
  it("alleges no intent and is signed by the client, with no workshop at its head", () => {
    const d = letterToSeller({ ...SELLER, tests: [TEST] });
    expect(d.head).toBeNull();
    expect(textOf(d)).toContain("I make no accusation");
    expect(checkSentences(textOf(d), WORDS_AND_PHOTOS).filter((o) => o.rule === "blame" || o.rule === "cover")).toEqual([]);
  });
  it.each(["EU", "UK", "IE", "US", "other"] as Jurisdiction[])("says the rights of %s with their source, in general terms", (jurisdiction) => {
    const text = textOf(letterToSeller({ ...SELLER, jurisdiction }));
    for (const r of RIGHTS[jurisdiction].filter((row) => row.about !== "service")) expect(text).toContain(r.source);
    expect(text).toMatch(/local law decides; this is not legal advice/);
  });
  it("has what is not part of the letter in a part by itself, after the signature, so that it can be left out", () => {
    const { blocks } = letterToSeller({ ...SELLER, tests: [TEST] });
    const part = blocks.findIndex((b) => b.kind === "part");
    const own = (from: number, to?: number) => blocks.slice(from, to).flatMap(wordsOf).join("\n");
    expect(blocks.slice(0, part).at(-1)).toEqual({ kind: "signature", lines: ["", "Ana Example"] });
    expect(own(0, part)).not.toMatch(/Directive|Regulation|right|laborator[^y]|law|advice/);
    expect(own(part)).toMatch(/not part of the letter[\s\S]*Directive \(EU\) 2019\/771[\s\S]*not legal advice/);
  });
  // Of the law of each place, by hand from the sources named in lib/trade/rights.ts and from nothing else.
  it.each([
    ["EU", /2019\/771/, /1007\/2011/], ["UK", /Consumer Rights Act 2015/, /SI 2012\/1102/], ["IE", /Consumer Rights Act 2022/, /1007\/2011/], ["US", /15 U\.S\.C\. 70/, /Uniform Commercial Code/], ["other", /consumer advice centre or a lawyer/, /not legal advice/],
  ] as const)("names for %s its own law and no other's", (jurisdiction, ...laws) => {
    const text = textOf(letterToSeller({ ...SELLER, jurisdiction }));
    for (const law of laws) expect(text).toMatch(law);
    const foreign: Record<Jurisdiction, RegExp> = {
      EU: /Consumer Rights Act|U\.S\.C|Uniform Commercial/, UK: /2019\/771|Act 2022|U\.S\.C|Uniform Commercial/, IE: /Act 2015|SI 2012|U\.S\.C|Uniform Commercial/, US: /2019\/771|Consumer Rights Act|SI 2012/,
      other: /2019\/771|Consumer Rights Act|SI 2012|U\.S\.C|Uniform Commercial/,
    };
    expect(text).not.toMatch(foreign[jurisdiction]);
  });
  it("quotes words with quotation marks of their own in single ones inside its own", () => {
    const text = textOf(letterToSeller({ ...SELLER, saidWords: "Hand-knotted “pure mulberry silk”, 100 % natural", labelWords: 'Pile: "art silk"' }));
    expect(text).toContain("described to me as “Hand-knotted ‘pure mulberry silk’, 100 % natural”.");
    expect(text).toContain("The label on it reads “Pile: ‘art silk’”.");
  });
  it.each([[[]], [[TEST]]])("alleges nothing and asks for no money back, whatever was tested", (tests) => {
    const text = textOf(letterToSeller({ ...SELLER, tests }));
    expect(text).not.toMatch(/fraud|deceiv|misled|lied?\b|cheat|knew|deliberate|intent|fake|refund|money back|compensat|claim|demand/i);
  });
  it.each([["2024", "in 2024"], ["May 2024", "in May 2024"], ["3 May 2024", "on 3 May 2024"], ["03/05/2024", "on 03/05/2024"]])("says when it was bought as people do: %s", (on, said) => {
    expect(textOf(letterToSeller({ ...SELLER, bought: { ...SELLER.bought, on } }))).toContain(`I bought a grey rug, 170 × 240 cm, from you ${said} for`);
  });
  it("says that there is no label only where the client looked for one and found none", () => {
    const unread = { ...SELLER, labelWords: null };
    expect(textOf(letterToSeller({ ...unread, isUnlabelled: true }))).toContain("I have found no label on it that names its fibres.");
    expect(textOf(letterToSeller(unread))).not.toMatch(/label/);
  });
  it("leaves out what is not known", () => {
    const text = textOf(letterToSeller({ ...SELLER, bought: { on: null, price: null, invoice: null }, saidWords: null, sellerSaid: undefined, labelWords: null }));
    expect(text).toContain("I bought a grey rug, 170 × 240 cm, from you.");
    expect(text).not.toMatch(/null|undefined|described to me|sold to me/);
  });
  it("says what the client answered that it was sold as, where nobody gave the seller's words", () => {
    const said = (sellerSaid: RugAnswers["sellerSaid"], saidWords: string | null = null) => textOf(letterToSeller({ ...SELLER, saidWords, sellerSaid }));
    expect(said("wool-and-silk")).toContain("It was sold to me as wool and silk.");
    expect(said("art-silk")).toContain("It was sold to me as art silk or by a name of that kind.");
    expect(said("wool-and-silk", "pure silk")).not.toContain("sold to me as");
    for (const nothing of ["other", "nothing", "unsure"] as const) expect(said(nothing), nothing).not.toContain("sold to me as");
  });
});

const REPORT: ConditionReport = {
  figures: METRIC,
  reference: "K7-204", place: { n: 1, of: 1 }, theirReference: "CL/118", asker: OWNER, rug: "A grey rug, 170 × 240 cm", told: TOLD,
  assessment: assessmentOf({ fibres: { viscose: 0.8, silk: 0.06 }, evidence: [{ what: "changes", value: ["ring"], strength: "told" }], mechanisms: { "water-mark": 0.7 }, rest: { improvement: range(5, 20, 45), worse: 0.2, beyondRepair: 0.6, lifeYears: range(1, 2, 4), money: { currency: "EUR", clean: range(90, 110, 150), cutDown: range(60, 110, 300), replace: range(500, 900, 1600), valueToday: range(50, 200, 500) } } }),
  photos: [{ id: "p1", shows: "the whole rug", takenOn: "27 November 2026", marks: [] }], isLabelShown: false, reports: [], tests: [], moisture: [], madeBy: "Nell Harrow", inspection: null, cutDown: null, cutting: null, workshop: WORKSHOP, today: "28 November 2026", judgedOn: "28 November 2026",
};
const INSPECTION = { by: "Ivo Castellane", on: "27 November 2026", found: "The pile is distorted over a hand's breadth.", isBeyondRepair: true };

describe("the condition report", () => {
  const told = (what: string, value: unknown, strength = "told") => ({ what, value, strength, from: "client", decibans: 0, staff: "", client: "" }) as unknown as ConditionReport["assessment"]["findings"][number];
  it("says who is who: the client as the owner, a cleaner as a cleaner, and nothing where nobody said whose it is", () => {
    const by = (asker: ConditionReport["asker"]) => textOf(conditionReport({ ...REPORT, asker }));
    expect(by(OWNER)).toContain("A grey rug, 170 × 240 cm. The client, Ana Example, asked about it as its owner. Written on");
    expect(by({ ...OWNER, as: "unsaid" })).toContain("The client, Ana Example, asked about it. Written on");
    const cleaner = by({ ...CLEANER, customer: null });
    expect(cleaner).toContain("The client, Ana Example, cleans rugs and asked about a customer’s rug; its owner was not named. Written on");
    expect(cleaner).not.toMatch(/owned by|the owner (?:told|marked|says|tells)|as its owner/i);
    expect(by(CLEANER)).toContain("its owner is Ines Varga.");
  });
  it("states what happened, when, what was done about it by whom and how it changed, each once, in the words that were chosen", () => {
    const blocks = conditionReport(REPORT).blocks;
    const table = blocks[blocks.findIndex((b) => b.kind === "heading" && b.text === "What the client told us") + 1];
    expect(table).toMatchObject({ kind: "table", rows: [
      ["Is any part of the rug wet right now?", "Damp, or wet underneath, as told on 27 November 2026"],
      ["What happened to it?", "Food or drink was spilled; A spot was treated at home"], ["What was it that got on it?", "Wine, red or white"], ["When was that?", "Today, as told on 27 November 2026"],
      ["What has been done about it so far?", "Rubbed or scrubbed; Soap, washing-up liquid or shampoo"], ["Who did that?", "I did, or someone at home"], ["How has the rug changed?", "Browner or yellower than it was; The pile is stiff or matted"],
    ] });
    expect(textOf(conditionReport(REPORT)).match(/stiff or matted/gu)).toHaveLength(1);
    expect(textOf(conditionReport(REPORT))).toContain("No change of colour was measured; how the rug has changed is told above.");
    expect(textOf(conditionReport({ ...REPORT, asker: CLEANER, told: { ...TOLD, answers: { ...TOLD.answers, treatedBy: "owner" } } }))).toContain("Who did that?\nMy customer did, at home");
  });
  it.each([[["none"] as const, "measured."], [["unsure"] as const, "measured."], [["flat"] as const, "measured; how the rug has changed is told above."]])("points to a change only where one was told: %s", (changes, said) =>
    expect(textOf(conditionReport({ ...REPORT, told: { ...TOLD, answers: { ...TOLD.answers, changes: [...changes] } } }))).toContain(`No change of colour was ${said}\n`));
  it("says of what the workshop saw in a photo that it was seen, and tells it nowhere else", () => {
    const text = textOf(conditionReport({ ...REPORT, told: { ...TOLD, seen: ["changes", "shine"] } }));
    expect(text).toMatch(/What was seen\nIn the photos the workshop saw how the rug has changed: Browner or yellower than it was; The pile is stiff or matted\.\nNo change of colour was measured\.\n/);
    expect(text).not.toContain("How has the rug changed?");
    expect(text).toContain("Light from one end, dark from the other (as the workshop saw it in a photo)");
  });
  it("quotes the client’s own words, or says that they are kept at the workshop, and says where nothing was answered", () => {
    expect(textOf(conditionReport(REPORT))).toContain("In the client’s own words: “The vase fell over.”");
    const kept = textOf(conditionReport({ ...REPORT, told: { ...TOLD, account: { text: "The vase fell over.", isQuoted: false } } }));
    expect(kept).toContain("The client’s own words are kept at the workshop.");
    expect(kept).not.toContain("vase");
    const nothing = textOf(conditionReport({ ...REPORT, told: { wet: null, answers: {}, seen: [], sinceToldOn: null, account: null } }));
    expect(nothing).toContain("What the client told us\nNone of our questions about what happened was answered.\nWhether any part of the rug is wet now was not told in answer to our questions.\nWhat was seen\nNo change of colour was measured.\n");
  });
  it("of one of several rugs says which, and that what is wet was asked of all of them", () => {
    const of = (n: number) => conditionReport({ ...REPORT, place: { n: 2, of: n }, told: { ...TOLD, wet: { answer: "wet", toldOn: "27 November 2026", before: [] } } });
    expect([of(2).title, of(3).title, conditionReport(REPORT).title]).toEqual(["Condition report K7-204, rug 2 of 2", "Condition report K7-204, rug 2 of 3", "Condition report K7-204"]);
    expect(textOf(of(2))).toContain("Yes, it is wet, as told on 27 November 2026 (asked once, of both rugs of this enquiry)");
    expect(textOf(of(3))).toContain("(asked once, of all 3 rugs of this enquiry)");
  });
  it("says on which day it was told whether the rug is wet, or that it was not told", () => {
    const wet = (told: Partial<ConditionReport["told"]>) => textOf(conditionReport({ ...REPORT, told: { ...TOLD, ...told } }));
    const one = { answer: "no", toldOn: "27 November 2026", before: [] } as const;
    expect(wet({ wet: one })).toContain("Is any part of the rug wet right now?\nNo, it is dry, as told on 27 November 2026\n");
    expect(wet({ wet: one })).not.toMatch(/asked once|was not told/);
    const before = [{ answer: "unsure", toldOn: "20 November 2026" }, { answer: "damp", toldOn: "24 November 2026" }] as const;
    expect(wet({ wet: { ...one, before } })).toMatch(/right now\?\nI’m not sure, as told on 20 November 2026; later: Damp, or wet underneath, as told on 24 November 2026; later: No, it is dry, as told on 27 November 2026\n/);
    expect(wet({ wet: null })).toMatch(/stiff or matted\nWhether any part of the rug is wet now was not told in answer to our questions\.\nIn the client’s own words/);
    // Where that alone was answered, both stand.
    expect(wet({ wet: one, answers: {} })).toMatch(/No, it is dry, as told on 27 November 2026\nNone of our questions about what happened was answered\./);
  });
  it("says a fibre’s chance in the word of the letters beside its range, never in a stronger one, and where the words are from", () => {
    const worded = (words: string) => textOf(conditionReport({ ...REPORT, assessment: { ...REPORT.assessment, fibres: REPORT.assessment.fibres.map((f) => ({ ...f, words })) } }));
    expect(worded("likely")).toMatch(/\nViscose\nLikely\n/);
    expect(worded("virtually certain")).toMatch(/\nViscose\nVery likely\n/);
    // IPCC guidance note 2010, table 1: very likely 90–100, likely 66–100, about as likely as not 33–66, very unlikely 0–10.
    expect(worded("likely")).toContain("“very likely” from 90 in 100, “likely” from 66, “about as likely as not” from 33, “unlikely” below, “very unlikely” up to 10.");
  });
  it("says what a chance means before the first one, and from which chance on a fibre or a cause is named", () => {
    const text = textOf(conditionReport(REPORT));
    expect(text).toMatch(/^[^%]*?\nA chance of 90 in 100 means that it holds for about 90 of 100 rugs/);
    expect(text.indexOf("A chance of 90 in 100 means")).toBe(text.search(/\d+ in 100/) - "A chance of ".length);
    expect(text).toContain("Fibres and causes below 5 in 100 are not named.");
    const named = (probability: number) => textOf(conditionReport({ ...REPORT, assessment: { ...REPORT.assessment, mechanisms: [{ mechanism: "mould", probability }] } })).includes("\nMould\n");
    expect([0.049, 0.05, 0.051].map(named)).toEqual([false, true, true]);
  });
  it("tells chances in 100 and shares in per cent, never one as the other", () => {
    const text = textOf(conditionReport(REPORT));
    expect(text.split("\nCost and value\n")[1]).not.toContain("in 100");
    expect(text).toContain("In the middle of it, about 22 per cent of the price of a new one is left.");
    expect(text).not.toMatch(/chance[^.\n]*per cent/iu);
  });
  it("tells of two methods ruled out for one reason one chance, and what it is of", () => {
    const chances = { viscose: 0.96, "wool-viscose": 0.01, wool: 0.03 };
    const methods = judgeMethods(readTold([]), { ...Object.fromEntries(FIBRE_IDS.map((id) => [id, 0])) as Record<FibreId, number>, ...chances }, () => 0);
    const text = textOf(conditionReport({ ...REPORT, assessment: { ...REPORT.assessment, methods } }));
    expect(text).toMatch(/Washing in a bath\n[^\n]*together 97 in 100\)\.\nWet cleaning by hand\n[^\n]*together 97 in 100\)\./);
    expect(text).toContain("“Together” is the chance that the pile is one of those a method is ruled out for.");
    const [bath, byHand] = [METHODS["immersion-wash"].cells, METHODS["wet-hand-clean"].cells];
    expect(CARE_COLUMNS.filter((c) => (bath[c] === "ruled-out") !== (byHand[c] === "ruled-out"))).toEqual([]);
    expect(textOf(conditionReport(REPORT))).not.toContain("“Together”");
  });
  it("says by what a new one is priced, and at the rates of which years it was exchanged", () => {
    const priced = (currency: string, value: object | null) => {
      const findings = value === null ? [] : [told("price-per-m2", { amount: 100, priceTotal: 1200, ...value })];
      return textOf(conditionReport({ ...REPORT, assessment: { ...REPORT.assessment, asOf: "2026-11-27T09:00:00Z", findings, money: { ...REPORT.assessment.money!, currency } } }));
    };
    const shop = { year: 2021, place: "specialist" };
    expect(priced("GBP", { ...shop, currency: "EUR" })).toContain("priced by what the client says was paid for this one: €1,200 in 2021. The range lies round that sum, put in prices of 2025 by UK consumer prices (World Bank; ONS), and exchanged at the yearly average of 2021 (US Federal Reserve, H.10). It is");
    expect(priced("USD", { ...shop, currency: "EUR" })).toContain("exchanged at the yearly averages of 2021 and 2025 (US");
    const own = priced("GBP", { ...shop, currency: "GBP" });
    expect(own).toContain("£1,200 in 2021. The range lies round that sum, put in prices of 2025 by UK consumer prices (World Bank; ONS). It is");
    expect(own).not.toContain("exchanged");
    // A year that was not told counts as this one, and one past the table as its last.
    expect(priced("GBP", { currency: "EUR", year: null, place: "online" })).toContain("was paid for this one: €1,200. The range lies round that sum, taken as one of 2025, for no year was told, and exchanged at the yearly average of 2025 (US");
    for (const bazaar of [{ ...shop, place: "bazaar", currency: "EUR" }, { ...shop, year: 2030, currency: "EUR" }, null]) expect(priced("GBP", bazaar)).toMatch(/priced by shop prices as workshops hear them, judged, for no published prices by fibre were found\. They stand in prices of 2025\.\n/);
    expect(priced("EUR", null)).toContain("They stand in prices of 2025, exchanged from pounds at the yearly average of 2025 (US Federal Reserve, H.10).");
  });
  const { improvement, worse, beyondRepair, lifeYears, money } = REPORT.assessment;
  const judged = (fibres: Parameters<typeof assessmentOf>[0]["fibres"], evidence: readonly ReturnType<typeof told>[], rest: Parameters<typeof assessmentOf>[0]["rest"], mechanisms: Record<string, number> = {}) =>
    textOf(conditionReport({ ...REPORT, told: { ...TOLD, wet: null }, assessment: { ...assessmentOf({ fibres, words: Math.max(...Object.values(fibres)) > 0.9 ? "very likely" : "about as likely as not", rest: { improvement, worse, beyondRepair, lifeYears, money, ...rest } }), findings: evidence, mechanisms: Object.entries(mechanisms).map(([mechanism, probability]) => ({ mechanism, probability })) } as ConditionReport["assessment"] }));
  it("tells the years as the letter of the same assessment does: while the fibre is open a narrow range alone, and as a guess", () => {
    const open = [{ ...told("shine", "two-tone"), decibans: 3 }];
    expect(judged({ viscose: 0.5, wool: 0.4 }, open, { lifeYears: range(2, 3, 4) })).toMatch(/Until its fibre is known, the years it has left are an open guess: between 2\sand\s4\syears in ordinary use\./u);
    expect(judged({ viscose: 0.5, wool: 0.4 }, open, { lifeYears: range(0.5, 2, 7) })).toContain("How many years it has left hangs on its fibre, which is open, so no number is told.");
    expect(judged({ wool: 0.95 }, open, { lifeYears: range(0.5, 2, 7) })).toMatch(/In ordinary use it has, by estimate, .*years left\./u);
    expect(judged({ wool: 0.95 }, open, { lifeYears: range(2, 3, 4) }, { mould: 0.33 })).toMatch(/Once the mould is treated and the rug is dry, it has in ordinary use, by estimate, between 2\sand\s4\syears left\./u);
    expect(judged({ wool: 0.95 }, open, { lifeYears: range(2, 3, 4) }, { insects: 0.33 })).toMatch(/Once no insects live in it, it has in ordinary use, by estimate, between/u);
    expect(judged({ wool: 0.95 }, open, { lifeYears: range(2, 3, 4) }, { insects: 0.9, mould: 0.9 })).toMatch(/Once the mould is treated, the rug is dry and no insects live in it, it has in ordinary use/u);
    expect(judged({ viscose: 0.5, wool: 0.4 }, open, { lifeYears: range(2, 3, 4) }, { insects: 0.9 })).toMatch(/are an open guess: between 2\sand\s4\syears in ordinary use, once no insects live in it\./u);
  });
  it("says first what can harm whoever handles it: mould and insects from the chance on that letters speak of them, spots that were told, flood water", () => {
    const cautions = (...args: Parameters<typeof judged>) => /Before anybody handles it\n([\s\S]*?)\nWhat the client told us\n/u.exec(judged(...args))?.[1] ?? "";
    expect(cautions({ wool: 1 }, [], {}, { mould: 0.32, insects: 0.32 })).toBe("");
    expect(cautions({ wool: 1 }, [], {}, { mould: 0.95 })).toMatch(/^It is very likely that mould grows in it\. Mould can harm health:.*a firm equipped to treat mould in textiles says first\.$/u);
    expect(cautions({ wool: 1 }, [told("changes", ["spots"])], {}, { mould: 0.1 })).toMatch(/^Furry or black spots were told of\. They may be mould/u);
    expect(cautions({ wool: 1 }, [], {}, { insects: 0.7 })).toMatch(/^It is likely that insects have fed on it\./u);
    expect(cautions({ wool: 1 }, [told("incidents", ["flood"])], {})).toMatch(/^It was told that flood or waste water reached the rug\..*nobody touches it before a firm/u);
  });
  it("of a rug that flood water reached says nothing of what comes back, of work or of years, as the letters", () => {
    const text = judged({ wool: 1 }, [told("incidents", ["flood"]), told("changes", ["ring"])], {});
    expect(text).toContain("What could be done for it, what that would cost and how many years it has left cannot be said before a firm that deals with flood damage has seen to it.");
    expect(text).toContain("Whether it is beyond economic repair was not judged: provisional, not inspected.");
    expect(text).toMatch(/\nA new one like it\n/u);
    expect(text).not.toMatch(/makes it worse|\nCleaning\n|New edges|years left\.|of the change that was told/u);
  });
  it("of a rug that flood water reached gives the verdict of who inspected it, with the caution, and nothing that waits for the firm", () => {
    const findings = [told("incidents", ["flood"]), told("changes", ["ring"])];
    const text = textOf(conditionReport({ ...REPORT, inspection: INSPECTION, assessment: { ...REPORT.assessment, findings } }));
    expect(text).toContain("Beyond economic repair, in the judgement of Ivo Castellane");
    expect(text).toContain("That can make people ill, once it is dry too");
    expect(text).toContain("are not stated, since flood or waste water reached it.");
    expect(text).not.toMatch(/cannot be said before|makes it worse|years left\.|of the change that was told/u);
  });
  it("says of a rug that was told to be wet that how it could be cleaned waits until it is dry", () => {
    const wet = (answer: "wet" | "damp" | "no" | "unsure") => textOf(conditionReport({ ...REPORT, told: { ...TOLD, wet: { answer, toldOn: "27 November 2026", before: [] } } })).includes("how it could be cleaned stays open until it is dry");
    expect((["wet", "damp", "no", "unsure"] as const).map(wet)).toEqual([true, true, false, false]);
  });
  it("tells no upper end of a life that is too wide to tell anything by, as the letters do", () => {
    const living = (low: number, high: number) => textOf(conditionReport({ ...REPORT, assessment: { ...REPORT.assessment, lifeYears: range(low, (low + high) / 2, high) } }));
    expect(living(2, 4)).toMatch(/by estimate, between 2\sand\s4\syears left\./u);
    expect(living(7, 101)).toMatch(/by estimate, between 7\syears and some decades left\./u);
    expect(living(0.5, 40)).toContain("cannot be told from this: the range is too wide.");
  });
  it("keeps what an inspection found before flood water was told of, with its day, and gives its verdict no more", () => {
    const flooded = { ...REPORT, assessment: { ...REPORT.assessment, findings: [told("incidents", ["flood"])] } };
    const text = textOf(conditionReport({ ...flooded, overtaken: INSPECTION }));
    expect(text).toContain("Provisional, not inspected since flood or waste water was told of: this report goes by photos");
    expect(text).toContain("Ivo Castellane inspected it on 27 November 2026, before that.");
    expect(text).toContain("On 27 November 2026, before flood or waste water was told of: The pile is distorted over a hand's breadth.");
    expect(text).toContain("Whether it is beyond economic repair was not judged: provisional, not inspected.");
    expect(text).toContain("Nobody has inspected the rug since flood or waste water was told of.");
    expect(text).not.toMatch(/in the judgement of|Inspected by/u);
    expect(conditionReport({ ...flooded, overtaken: INSPECTION }).blocks.at(-1)).toEqual(conditionReport(flooded).blocks.at(-1));
    expect(textOf(conditionReport(flooded))).not.toMatch(/since flood|before flood|before that/u);
  });
  it("is provisional without an inspection, and gives the verdict to a named person with one", () => {
    const without = textOf(conditionReport(REPORT));
    expect(without).toContain("Provisional, not inspected: this report goes by photos");
    expect(without).toMatch(/Provisional, not inspected: it is about as likely as not that it is beyond economic repair; the chance is about 60 in 100\./);
    expect(textOf(conditionReport({ ...REPORT, inspection: INSPECTION }))).toContain("Beyond economic repair, in the judgement of Ivo Castellane, who inspected it on 27 November 2026.");
    expect(textOf(conditionReport({ ...REPORT, inspection: { ...INSPECTION, isBeyondRepair: false } }))).toContain("Not beyond economic repair, in the judgement of Ivo Castellane");
  });
  it("goes by photos where there are any, and says of none where there are none", () => {
    const shown = textOf(conditionReport(REPORT));
    expect(shown).toContain("this report goes by photos and by what we were told.");
    expect(shown).toContain("Fibre of the pile, by words and photos");
    const unseen = textOf(conditionReport({ ...REPORT, photos: [] }));
    expect(unseen).toContain("Provisional, not inspected: this report goes by what we were told.");
    expect(unseen).toContain("Fibre of the pile, by what we were told");
    expect(unseen).not.toMatch(/by photos|and photos/);
    const tests = [{ on: "20 November 2026", part: "pile", found: "Thread pulled wet, much weaker" }] as const;
    const tested = textOf(conditionReport({ ...REPORT, photos: [], tests }));
    expect(tested).toContain("this report goes by what we were told and by tests of a few fibres.");
    expect(tested).toContain("Fibre of the pile, by a bench test");
    expect(textOf(conditionReport({ ...REPORT, photos: [], tests: [{ ...tests[0], part: "fringe" }] }))).toMatch(/by tests of a few fibres\.[\s\S]*Fibre of the pile, by what we were told/);
    expect(tested).toContain("A test of a few fibres of the pile by Lantern Yard Rug Workshop, 20 November 2026: Thread pulled wet, much weaker.");
  });
  it("tells what was read of moisture among what was seen, and takes it for no test of the fibre", () => {
    const moisture = [{ on: "20 November 2026", percent: 30, place: "affected" }, { on: "20 November 2026", percent: 12, place: "untouched" }] as const;
    const text = textOf(conditionReport({ ...REPORT, moisture, assessment: { ...REPORT.assessment, findings: [told("test:moisture", { place: "affected", percent: 30 }, "bench")] } }));
    expect(text).toMatch(/What was seen\n[\s\S]*On 20 November 2026 the workshop measured moisture: 30 in the trouble\.\nOn 20 November 2026 the workshop measured moisture: 12 where nothing has happened\.\nAn instrument for moisture has a scale of its own/);
    expect(text).not.toMatch(/tests of a few fibres|by a bench test/);
    expect(textOf(conditionReport(REPORT))).not.toContain("moisture:");
  });
  it("closes up the empty lines of an account, and leaves its paragraphs", () =>
    expect(textOf(conditionReport({ ...REPORT, told: { ...TOLD, account: { text: "It fell.\r\n\r\n\r\n\r\nThen I rubbed.\n\nSorry.", isQuoted: true } } }))).toContain("“It fell.\n\nThen I rubbed.\n\nSorry.”"));
  it("says what the label reads and by whom, and that a new one may cost less than what was paid for silk", () => {
    const finding = (what: string, value: object | string, strength = "label-photo") => ({ what, value, strength, from: "client", decibans: 0, staff: "", client: "" }) as unknown as ConditionReport["assessment"]["findings"][number];
    const read = (...findings: ReturnType<typeof finding>[]) => textOf(conditionReport({ ...REPORT, assessment: { ...REPORT.assessment, findings } }));
    expect(read(finding("label", { says: "viscose", text: "100% VISCOSE\nMADE IN INDIA" }))).toContain("The label, as read in a photo, says “100% VISCOSE MADE IN INDIA”.");
    expect(read(finding("label", { says: "viscose", text: "100% VISCOSE" }, "label-typed"))).toContain("The label, as it was written down for us, says “100% VISCOSE”.");
    const shown = { ...REPORT, isLabelShown: true };
    const typed = finding("label", { says: "viscose", text: "100% VISCOSE" }, "label-typed");
    expect(textOf(conditionReport({ ...shown, assessment: { ...shown.assessment, findings: [typed] } }))).toContain("The label, as it was written down for us and as a photo shows it, says “100% VISCOSE”.");
    expect(textOf(conditionReport({ ...shown, assessment: { ...shown.assessment, findings: [finding("label", { says: "viscose", text: "100% VISCOSE" })] } }))).toContain("The label, as read in a photo, says “100% VISCOSE”.");
    expect(read()).not.toContain("The label");
    expect(read()).toContain("A new one is priced by shop prices as workshops hear them, judged,");
    expect(read()).not.toContain("sold as silk");
    expect(read(finding("sellerSaid", "silk"))).toContain("As told above, it was sold as silk or with silk in it. A new one of the fibre that it probably is may cost much less than was paid.");
    expect(textOf(conditionReport({ ...REPORT, assessment: { ...assessmentOf({ fibres: { silk: 0.9 }, rest: { money: REPORT.assessment.money } }), findings: [finding("sellerSaid", "silk")] } }))).not.toContain("sold as silk");
  });
  const withFindings = (...findings: ReturnType<typeof told>[]) => textOf(conditionReport({ ...REPORT, assessment: { ...REPORT.assessment, findings } }));
  it("names the laboratory, the day and the reference of a report, and what its sample was taken from", () => {
    const report = { by: "Fenwick Fibre Laboratory", on: "20 November 2026", reference: "FF-118", part: "pile", found: "82 % viscose, 18 % cotton" } as const;
    const text = textOf(conditionReport({ ...REPORT, reports: [report, { ...report, reference: null, part: "ground" }], assessment: { ...REPORT.assessment, findings: [told("laboratory", {}, "laboratory")] } }));
    expect(text).toMatch(/What it is probably made of\nA laboratory’s report by Fenwick Fibre Laboratory, 20 November 2026 \(reference FF-118\), says of the pile: 82 % viscose, 18 % cotton\.\n/);
    expect(text).toContain("A laboratory’s report by Fenwick Fibre Laboratory, 20 November 2026, says of the ground: 82 % viscose, 18 % cotton.");
    expect(text).toContain("this report goes by photos, by what we were told and by a laboratory’s report.");
  });
  it("says of pile that lies another way that it is no damage, and states none where that is all that was told", () => {
    const alone = withFindings(told("changes", ["shaded"]));
    expect(alone).toMatch(/What has probably happened\nTold above is a patch .* \(shading, or pile reversal\).*: that is not damage, .* No other change was told of or measured\. What follows is what was weighed, not damage that was found\.\n/);
    expect(alone).toContain("No improvement is stated");
    expect(alone).not.toContain("may be undone");
    for (const beside of [withFindings(told("changes", ["shaded", "stiff"])), withFindings(told("changes", ["shaded"]), told("colour-change", { direction: "none", deltaE: 6, uncertainty: 0 }, "photo"))]) {
      expect(beside).toMatch(/that is not damage/);
      expect(beside).not.toContain("No other change was told of");
      expect(beside).toContain("per cent of the change that was told of or measured may be undone");
    }
    expect(withFindings(told("changes", ["stiff"]))).not.toContain("shading");
  });
  it.each([
    ["shaded only", [told("changes", ["shaded"]), told("incidents", ["nothing"]), told("reason", "mis-sold")], "no damage was told of or measured"],
    ["nothing at all", [told("changes", ["none"]), told("incidents", ["nothing"]), told("reason", "what-is-it")], "no damage was told of or measured"],
    ["what nobody knows", [told("incidents", ["unknown"]), told("reason", "what-is-it")], "what has changed was left open, and no damage was measured"],
    ["what was not answered", [told("reason", "what-is-it")], "what has changed was left open, and no damage was measured"],
  ])("of %s, where no work is asked for, states no share of a change and no chance of being beyond repair, and says why", (_, findings, why) => {
    const text = withFindings(...findings);
    expect(text).toContain(`Provisional, not inspected: whether it is beyond economic repair was not judged, for ${why}.`);
    expect(text).toContain("No improvement is stated: ");
    expect(text).toContain("What follows is what was weighed, not damage that was found.");
    expect(text).not.toMatch(/may be undone|that it is beyond economic repair;/);
    expect(textOf(conditionReport({ ...REPORT, inspection: INSPECTION, assessment: { ...REPORT.assessment, findings } }))).toContain("Beyond economic repair, in the judgement of Ivo Castellane");
  });
  it.each<[string, ConditionReport["assessment"]["findings"], string]>([
    ["a spill that has left nothing to see", [told("changes", ["none"]), told("incidents", ["water"]), told("reason", "just-happened")], "no damage was told of or measured"],
    ["soil alone", [told("changes", ["dirty"]), told("incidents", ["nothing"]), told("reason", "routine")], "nothing but soil was told of"],
    ["soil and pile that lies another way", [told("changes", ["dirty", "shaded"])], "nothing but soil was told of"],
    ["a clean that is asked for, and no word of a change", [told("reason", "routine")], "what has changed was left open, and no damage was measured"],
  ])("of %s speaks of the cost of the work, as the letters do, and calls nothing beyond economic repair", (_, findings, change) => {
    const text = withFindings(...findings);
    expect(text).toContain(`Provisional, not inspected: ${change}. It is about as likely as not that the work would cost more than the rug is worth, or bring back too little for its cost; the chance is about 60 in 100.`);
    expect(text).not.toMatch(/beyond economic repair/i);
  });
  it.each<[string, ConditionReport["assessment"]["findings"]]>([
    ["a change beside soil", [told("changes", ["dirty", "stiff"])]], ["a change that was measured", [told("changes", ["none"]), told("colour-change", { direction: "none", deltaE: 6, uncertainty: 0 }, "photo")]],
    ["something that happened, where nobody said what has changed", [told("incidents", ["pet-urine"])]],
  ])("of %s states the chance that it is beyond economic repair, and what that means", (_, findings) => {
    expect(withFindings(...findings)).toMatch(/it is about as likely as not that it is beyond economic repair; the chance is about 60 in 100\.\n“Beyond economic repair” means here that putting it right would cost more than the rug is then worth, or bring back too little to be worth its cost\./);
  });
  it("of a letter of which nothing was asked yet judges nothing, photos or none, and says why", () => {
    for (const findings of [[], [told("photo", ["whole"])], [told("photo", ["whole"]), told(SPOILT_PHOTO, ["pile"])]]) expect(withFindings(...findings)).toContain("whether it is beyond economic repair was not judged, for what has changed was left open, and no damage was measured.");
  });
  it("of a spill that has left nothing to see yet states no share of a change", () => {
    const text = withFindings(told("changes", ["none"]), told("incidents", ["water"]));
    expect(text).toContain("No improvement is stated: no change was told of or measured.");
    expect(text).not.toContain("may be undone");
  });
  it("tells what new edges cost where cutting it down is considered, and only there", () => {
    expect(textOf(conditionReport({ ...REPORT, cutDown: range(60, 110, 300) }))).toMatch(/New edges after cutting down\n€60 to €300/);
    expect(textOf(conditionReport(REPORT))).not.toMatch(/New edges|cutting down/);
  });
  it("is signed by whoever made it out, who says that nobody has inspected the rug; by the inspector once somebody has", () => {
    const signed = (report: ConditionReport) => conditionReport(report).blocks.filter((b) => b.kind === "signature");
    expect(textOf(conditionReport(REPORT))).toContain("Made out by Nell Harrow for Lantern Yard Rug Workshop. Nobody has inspected the rug.");
    expect(signed(REPORT)).toEqual([{ kind: "signature", lines: ["", "Nell Harrow", "Lantern Yard Rug Workshop"] }]);
    expect(textOf(conditionReport({ ...REPORT, inspection: INSPECTION }))).not.toContain("Nobody has inspected");
    expect(signed({ ...REPORT, inspection: INSPECTION })).toEqual([{ kind: "signature", lines: ["", "Ivo Castellane"] }]);
  });
  it("tells the chance of a fibre by its range alone, as far as its word in the letter reaches, and never by the end of it", () => {
    const fibres = assessmentOf({ fibres: { polypropylene: 0.95 }, words: "likely" }).fibres.map((f) => (f.fibre === "polypropylene" ? { ...f, low: 0.79, high: 0.95 } : f));
    const text = textOf(conditionReport({ ...REPORT, assessment: { ...REPORT.assessment, fibres } }));
    expect(text).toMatch(/Fibre\nIn words\nChance\nPolypropylene\nLikely\nBetween 79 and 95 in 100\n/);
    expect(text).not.toMatch(/(?<!and )95 in 100/);
    expect(text).toContain("it lies in the range told here about eight times in ten");
  });
  it("prints a range whose ends are one number as that number", () => {
    const text = textOf(conditionReport({ ...REPORT, assessment: { ...REPORT.assessment, fibres: REPORT.assessment.fibres.map((f) => ({ ...f, probability: 0.999, low: 0.998, high: 1 })) } }));
    expect(text).toContain("99 in 100");
    expect(text).not.toMatch(/99 (?:in 100 )?(?:to|and) 99/);
  });
  it("says of an inspected rug neither that it is still to be seen nor that an inspection is wanting", () => {
    const text = textOf(conditionReport({ ...REPORT, inspection: INSPECTION }));
    expect(text).not.toMatch(/when the rug was seen|an inspection and tests would/);
    expect(text).toContain("further inspection or tests may change them");
  });
  it("says about of a sum that is one figure", () => {
    const priced = { ...REPORT.assessment, money: { currency: "GBP", clean: range(90, 110, 150), cutDown: null, replace: null, valueToday: null } };
    const money = conditionReport({ ...REPORT, cutDown: range(130, 130, 130), assessment: priced }).blocks.find((b) => b.kind === "table" && b.caption.startsWith("Ranges"));
    expect(money).toMatchObject({ rows: [["Cleaning", "£90 to £150"], ["New edges after cutting down", "about £130"]] });
  });
  it("rounds what a new one costs and what the rug is worth as the letters do, outward", () => {
    const priced = { ...REPORT.assessment, money: { currency: "GBP", clean: range(93, 110, 182), cutDown: null, replace: range(93, 130, 182), valueToday: range(34, 100, 441) } };
    const money = conditionReport({ ...REPORT, assessment: priced }).blocks.find((b) => b.kind === "table" && b.caption.startsWith("Ranges"));
    expect(money).toMatchObject({ rows: [["Cleaning", "£93 to £180"], ["A new one like it", "£90 to £190"], ["Value today: new, less depreciation", "£30 to £450"]] });
  });
  it("has causes as chances, methods with their why, ranges of money, and our own interest", () => {
    const text = textOf(conditionReport(REPORT));
    expect(text).toMatch(/\nCause\nIn words\nChance\nA water mark\nLikely\nAbout 70 in 100\n/);
    expect(text).toMatch(/Cleaning\n€90 to €150/);
    expect(text).toContain("earns its living from cleaning and repairing rugs");
  });
  it("never speaks of cover, fault or what an insurer decides, whatever the assessment", () => {
    fc.assert(fc.property(anyInput, ({ assessments }) => {
      const text = textOf(conditionReport({ ...REPORT, assessment: assessments[0]!.assessment }));
      expect(checkSentences(text, WORDS_AND_PHOTOS).filter((o) => ["cover", "blame", "verdict", "result"].includes(o.rule))).toEqual([]);
      expect(text).not.toMatch(/NaN|undefined|null/);
    }), { numRuns: 300 });
  });
});

describe("what a report says of cutting down and of a smell", () => {
  const said = (more: Partial<ConditionReport>) => textOf(conditionReport({ ...REPORT, ...more }));
  it("names cutting down among the methods with what was decided, and not where it was not considered", () => {
    expect(said({})).not.toContain("Cutting it down");
    expect(said({ cutting: "against" })).toContain("Considered on a plan of the rug, and decided against by the workshop.");
    expect(said({ cutting: "open" })).toContain("Considered on a plan of the rug; no way of cutting it was chosen.");
    expect(said({ cutting: "unplanned", inspection: null })).toContain("Considered, if an inspection finds the rest of its ground sound; no plan of it was drawn.");
    expect(said({ cutting: "unplanned", inspection: { by: "Ivo Castellane", on: "24 November 2026", found: "Sound at both ends.", isBeyondRepair: false } })).toContain("Considered, where the rest of its ground is sound; no plan of it was drawn.");
    const advised = (id: Parameters<typeof action>[0]) => said({ cutting: "equal-ends", assessment: { ...REPORT.assessment, advice: action(id) } });
    expect(advised("advise-cut-down")).toContain("The same strip comes off both ends: proposed by the workshop on a plan of the rug. It cannot be undone");
    for (const other of ["advise-claim-or-replacement", "refer"] as const) {
      expect(advised(other)).toContain("The same strip comes off both ends: drawn on a plan of the rug as one way; the workshop’s letter does not propose it. It cannot be undone");
      expect(advised(other)).not.toContain("proposed by");
    }
  });
  it("judges a smell that was told apart from the change, and says nothing of one that was not", () => {
    const smelling = (value: string[]): Partial<ConditionReport> => ({ assessment: { ...assessmentOf({ fibres: { wool: 0.9 }, evidence: [{ what: "changes", value, strength: "told" }], mechanisms: { "urine-old": 0.8 } }), odour: { now: 1, returns: 0.47 } } });
    expect(said(smelling(["smell"]))).toContain("The smell that was told of is judged apart from that: the chance that it comes back in damp weather, after cleaning too, is about 47 in 100.");
    expect(said(smelling(["ring"]))).not.toMatch(/smell/iu);
  });
});

describe("the cut-down plan", () => {
  const plan = cutDownPlan({ asker: OWNER, reference: "K7-204", rug: "a grey rug", size: { widthCm: 200, lengthCm: 300 }, photoTop: "left", damaged: [[{ x: 0, y: 0 }, { x: 200, y: 0 }, { x: 200, y: 30 }]], isTufted: true, inspected: "no", isProposed: true, workshop: WORKSHOP, figures: METRIC,
    ways: [{ kind: "edge-off", pieces: [{ left: 0, top: 30, right: 200, bottom: 300 }], shareKept: 0.9, bindingM: 2.02, cost: { range: range(60, 70, 90), currency: "EUR" } }] });
  it("says what remains, what it costs and that cutting cannot be undone", () => {
    expect(textOf(plan)).toMatch(/Remains: 200 × 270 cm, about 90\u00a0% of the rug\.\nNew edges: about 2\.0 m of binding\.\nCost: €60 to €90, from these edges as drawn to new ones all round what remains; confirmed when we have seen it/);
    expect(textOf(plan)).toMatch(/latex[\s\S]*Cutting cannot be undone/);
  });
  it("says that it is provisional where nobody has inspected the rug, or only before flood water was told of, and only there", () => {
    expect(textOf(plan)).toContain("Provisional, not inspected: nobody here has seen the rug itself.");
    const drawn = (inspected: CutDownPlan["inspected"]) => textOf(cutDownPlan({ asker: OWNER, reference: "K7-204", rug: "a grey rug", size: { widthCm: 200, lengthCm: 300 }, photoTop: "left", damaged: [], isTufted: false, inspected, isProposed: true, workshop: WORKSHOP, figures: METRIC,
      ways: [{ kind: "edge-off", pieces: [{ left: 0, top: 30, right: 200, bottom: 300 }], shareKept: 0.9, bindingM: 2.02, cost: null }] }));
    expect(drawn("yes")).not.toContain("Provisional");
    expect(drawn("before")).toContain("Provisional, not inspected since flood or waste water was told of: nobody here has seen the rug itself since then.");
  });
  it("says and draws which edge lies towards the top of the photo", () => {
    expect(textOf(plan)).toContain("The small arrow shows which edge lies towards the top of the photo: here the left one.");
    expect(plan.blocks.find((b) => b.kind === "plan")).toMatchObject({ photoTop: { edge: "left", words: "top of the photo" } });
  });
  it("says of a cleaner’s enquiry who asked and who the owner is, and that the owner agrees to the line", () => {
    const way = { kind: "edge-off", pieces: [{ left: 0, top: 30, right: 200, bottom: 300 }], shareKept: 0.9, bindingM: 2.02, cost: null } as const;
    const text = textOf(cutDownPlan({ asker: CLEANER, reference: "K7-204", rug: "a grey rug", size: { widthCm: 200, lengthCm: 300 }, photoTop: "left", damaged: [], isTufted: false, inspected: "no", isProposed: true, workshop: WORKSHOP, figures: METRIC, ways: [way] }));
    expect(text).toContain("The client, Ana Example, cleans rugs and asked about a customer’s rug; its owner is Ines Varga.");
    expect(text).toContain("Nothing is cut before the rug’s owner has agreed to the line on the rug itself.");
    expect(textOf(plan)).toContain("before you have agreed");
  });
  it("proposes the way that was chosen only where the letter does, and says of another that it was chosen on the plan", () => {
    expect(textOf(plan)).toContain("The way we propose.");
    const ways = [{ kind: "edge-off", pieces: [{ left: 0, top: 30, right: 200, bottom: 300 }], shareKept: 0.9, bindingM: 2.02, cost: null }] as const;
    const text = textOf(cutDownPlan({ asker: OWNER, reference: "K7-204", rug: "a grey rug", size: { widthCm: 200, lengthCm: 300 }, photoTop: "left", damaged: [], isTufted: false, isProposed: false, inspected: "no", workshop: WORKSHOP, figures: METRIC, ways }));
    expect(text).toContain("The way that was chosen on the plan; our letter does not propose it.");
    expect(text).not.toContain("we propose");
  });
  it("tells the drawing in words", () => expect(plan.blocks.find((b) => b.kind === "plan")).toMatchObject({ alternative: expect.stringMatching(/200 × 270 cm remains of 200 × 300 cm/) as string }));
});

describe("the care card", () => {
  const CARD = { reference: "K7-204", locale: "en-GB", rug: "your viscose rug", likely: "very likely", telephone: "01632 960001", workshop: WORKSHOP } as const;
  it("of a cleaner’s customer is for the owner, and names the cleaner as whom to ask", () => {
    const card = textOf(viscoseCareCard({ ...CARD, asker: CLEANER }));
    expect(card).toContain("For the owner of the rug, Ines Varga, by way of Ana Example, who cleans rugs and asked us about it.");
    expect(card).toContain("Whom to call or ask: Ana Example, 01632 960001.");
    expect(textOf(viscoseCareCard({ ...CARD, telephone: "", asker: { ...CLEANER, customer: null } }))).toMatch(/For the owner of the rug by way of Ana Example, [\s\S]*Whom to call or ask: Ana Example\./);
    expect(textOf(viscoseCareCard({ ...CARD, asker: OWNER }))).toMatch(/^(?![\s\S]*For the owner)[\s\S]*Whom to call or ask: 01632 960001\./);
  });
  it("gives no product, dose or recipe, and nothing that our own check would stop", () => {
    const card = viscoseCareCard({ ...CARD, asker: OWNER });
    expect(checkSentences(card.blocks.flatMap(wordsOf).join("\n"), WORDS_AND_PHOTOS)).toEqual([]);
    expect(textOf(card)).toContain("it is very likely that there is viscose in its pile");
    expect(textOf(card)).not.toMatch(/\b\d+ ?(ml|g|%|spoon)/);
    expect(textOf(card)).not.toMatch(/none of this harms|harmless/);
  });
  it("says how likely viscose is in the word of the letter of the same assessment, and never in a stronger one", () => {
    const leading = (words: string) => assessmentOf({ fibres: { viscose: 0.95, "wool-viscose": 0.03 }, words });
    expect(["likely", "very likely", "virtually certain"].map((words) => viscoseWord(leading(words)))).toEqual(["likely", "very likely", "very likely"]);
    const letter = composeDraft(inputOf({ sketch: { fibres: { viscose: 0.95 }, words: "likely", evidence: [{ what: "shine", value: "two-tone", strength: "told" }] }, enquiry: { reason: "what-is-it" } })).text;
    expect(letter).toMatch(/is likely viscose/);
    expect(letter).not.toContain("very likely");
    // Where another fibre leads, all that hold viscose count together, by the lower end of their ranges.
    const together = assessmentOf({ fibres: { wool: 0.4, viscose: 0.3, "wool-viscose": 0.25 } });
    expect(viscoseWord(together)).toBe(wordsForChance({ probability: chanceOfViscose(together), low: 0 }));
  });
});
