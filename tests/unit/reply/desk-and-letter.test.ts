import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { prospectBlocks } from "../../../lib/reply/documents/report-prospects";
import { composeDraft } from "../../../lib/reply/draft";
import type { RugForDraft } from "../../../lib/reply/facts";
import { headlineOf } from "../../../lib/reply/headline";
import { cutDownPrice } from "../../../lib/reply/cut-down-price";
import type { DraftInput } from "../../../lib/reply/pieces";
import { toldByLetter } from "../../../lib/reply/told-by-letter";
import { isTradeAsking } from "../../../lib/reply/who-asks";
import { REFERRALS } from "../../../lib/trade/losses";
import { PHOTO_KINDS, type PhotoKind, type RugAnswers } from "../../../lib/trade/questions";
import type { Assessment, MechanismId } from "../../../lib/triage/assessment";
import { wordsIn } from "../../../lib/words/words";
import { anyInput, anyWorth } from "./any-input";
import { action, assessmentOf, inputOf, range, worthless, type Sketch } from "./make";
import { answersOf, DEMO_CLIENTS, lettersTo, reasonOf } from "./must-say/demo-letters";

const WORDS = wordsIn("en-GB");
const plain = (text: string) => text.replaceAll("\u00a0", " ");

interface Told {
  readonly desk: string; readonly why: string; readonly slip: string; readonly letter: string; readonly level: Assessment["urgency"]["level"];
  readonly a: Assessment; readonly isTrade: boolean; readonly answers: RugAnswers;
  readonly comesBackOpen: string | null; readonly lifeOpen: string | null; readonly lifeOnce: string | null; readonly firstAsk: string | null;
}
const HURRIES = /sooner is better|longer it stays|seen to within|hours count|today, if you can|today if you can/;
const CALM = /calls for cleaning now|soil and nothing worse/;
/** How soon, in the letter's words. */
const SOON = { hours: /hours count|today,? if you can/, "two-days": /within a day or two/, "a-week": /within a week/ } as const;
/** The desk, of a letter that hurries nobody although the slip does. */
const SETS_NO_TIME = /The letter sets no time/;
/** The letter's own verdict, and its own doubt. */
const NOT_WORTH = /that (?:(?:in money alone saving|saving|cleaning) it is not worth|cleaning would bring back too little to be worth)[^\n]*an inspection could change it/;
const OPEN = /may not be worth the money|as likely as not that saving it is not worth the cost/;
const FEW_YEARS = /set against how long it may still serve/;
const COST_OR_WORTH = /cost more than the rug is worth|set against what it may be worth today|what the rug is worth today/;
/** What the letter says speaks against the work, and what of the desk's reason says the same: at the desk a price stands beside a worth only for the sake of it. */
const AGAINST: readonly (readonly [string, RegExp, RegExp])[] = [
  ["the cost", /cost more than the rug is worth|set against what it may be worth today/, /Cleaning costs about [^.]*\./],
  ["the worth, not known", /hangs on (?:how much comes back and on )?what the rug is worth today/, /Cleaning costs about [^.]*\.|It hangs on what the rug is worth/],
  ["few years", FEW_YEARS, /It may serve [^.]* more\./],
];
/** The desk gives a reason against the work, and not only what it is or who should see it. */
const GIVES_REASON = /Advise against|Propose cutting|not worth its cost/;
/** How likely it is not worth its cost, by the desk and by the letter. */
const LIKELY_NOT = /it is ((?:very )?likely) not worth/;
const LIKELY_NOT_SAID = /It is ((?:very )?likely) that (?:in money alone saving it is not worth|saving it is not worth|cleaning it is not worth|cleaning would bring back too little)/;
const GOES_AHEAD = /^(?:Clean it as usual|Quote, with limits|Invite it for inspection and testing|Ask for more|Answer with first aid)$/;
const IS_AGAINST = /^Advise against cleaning: |likely not worth its cost/;
/** Where a letter tells how far it comes back, and how long it serves. */
const COMES_BACK = /\(\d+(?:–\d+)? %\)/;
const YEARS = /serve [^.]* more|open guess: /;
const YEARS_ONCE = /Only once [^.]* serve |open guess: [^.]* in ordinary use, once /;
/** What a list of a letter begins with, after what it asks for. */
const ASKED = /(?:help us most|know or see this|tell us more)[^:]*:\n– ([^\n]*)/;

/** The letter hurries nobody where haste gains nothing, but always where it harms people or spreads. */
function tellsHowSoon({ a, answers, isTrade }: Told): boolean {
  const grave = (["mould", "insects"] as const).some((m) => a.mechanisms.some(({ mechanism, probability }) => mechanism === m && probability >= 0.33));
  if (isTrade) return false;
  return grave || answers.incidents?.includes("flood") === true || answers.changes?.includes("spots") === true || ((a.beyondRepair ?? 0) < 0.66 && !(a.improvement && a.improvement.high < 25));
}

/** What two people who read the desk and the letter would hold against each other: written from the sentences, not from the tables. */
const contradictions = (told: Told): string[] => {
  const { desk, why, slip, letter, level, a, comesBackOpen, lifeOpen, lifeOnce, firstAsk } = told;
  const isUrgent = level !== "can-wait";
  const asked = ASKED.exec(letter)?.[1];
  return [
    ...(!isUrgent && HURRIES.test(letter) ? [`the slip can wait (“${slip}”), the letter hurries`] : []),
    ...(isUrgent && CALM.test(letter) ? [`the slip cannot wait (“${slip}”), the letter sees nothing to do`] : []),
    ...(level !== "can-wait" && level !== "hours" && tellsHowSoon(told) && !SOON[level].test(letter) ? [`the slip says ${level}, the letter no time`] : []),
    ...((level === "two-days" || level === "a-week") && !a.firstAid && !told.isTrade && SOON[level].test(letter) === SETS_NO_TIME.test(why) && !/Ask first whether it is wet/.test(desk) ? [`the slip says ${level}, the letter ${SOON[level].test(letter) ? "too" : "no time"}, the desk “${why}”`] : []),
    ...(SETS_NO_TIME.test(why) && HURRIES.test(letter) ? ["the desk says that the letter sets no time, the letter hurries"] : []),
    ...(level === "hours" && a.firstAid && !SOON.hours.test(letter) ? ["the slip says hours, the letter gives first aid at leisure"] : []),
    ...((letter.match(/hours count|seen to within|today,? if you can/g)?.length ?? 0) > 1 ? ["the letter says twice how soon"] : []),
    ...(a.improvement && COMES_BACK.test(letter) !== (comesBackOpen === null) ? [`the slip says “${comesBackOpen ?? "a range"}”, the letter otherwise`] : []),
    ...(a.lifeYears && YEARS.test(letter) && lifeOpen !== null ? [`the desk says “${lifeOpen}”, the letter gives years`] : []),
    ...(a.lifeYears && YEARS.test(letter) && (lifeOnce !== null) !== YEARS_ONCE.test(letter) ? [`the desk gives years ${lifeOnce === null ? "as they are" : `once ${lifeOnce}`}, the letter otherwise`] : []),
    ...(comesBackOpen !== null && /\d %/.test(why) ? [`the headline gives a range (“${why}”), the letter none`] : []),
    ...(asked !== undefined && firstAsk !== null && !asked.toLowerCase().includes(firstAsk.toLowerCase()) ? [`the desk asks first for “${firstAsk}”, the letter for “${asked}”`] : []),
    ...AGAINST.flatMap(([by, inLetter, atDesk]) => (GIVES_REASON.test(desk) && inLetter.test(letter) && !atDesk.test(why) ? [`the letter gives ${by} as its reason, the desk “${why}”`] : [])),
    ...(GIVES_REASON.test(desk) && /costs about/.test(why) && !COST_OR_WORTH.test(letter) ? [`the desk sets the cost against the worth (“${why}”), the letter does not`] : []),
    ...(GIVES_REASON.test(desk) && /It may serve/.test(why) && !FEW_YEARS.test(letter) ? [`the desk gives few years as its reason (“${why}”), the letter does not`] : []),
    ...(LIKELY_NOT.exec(desk)?.[1] && LIKELY_NOT.exec(desk)?.[1] !== LIKELY_NOT_SAID.exec(letter)?.[1] ? [`the desk says “${desk}”, the letter “${LIKELY_NOT_SAID.exec(letter)?.[0]}”`] : []),
    ...(NOT_WORTH.test(letter) && GOES_AHEAD.test(desk) ? [`the desk says “${desk}”, the letter that it is not worth it`] : []),
    ...(!NOT_WORTH.test(letter) && IS_AGAINST.test(desk) ? [`the desk says “${desk}”, the letter does not`] : []),
    ...(/How it could be cleaned stays open until a test/.test(letter) && /^Clean it as usual/.test(desk) ? [`the desk says “${desk}”, the letter that how it could be cleaned is open`] : []),
    ...(OPEN.test(letter) && /^Clean it as usual$/.test(desk) ? [`the desk says “${desk}”, the letter that it may not be worth it`] : []),
  ];
};

interface Read { readonly rug: RugForDraft; readonly input: Pick<DraftInput, "client" | "enquiry">; readonly letter: string }
function told({ rug, input: { client, enquiry }, letter }: Read): Told {
  const isTrade = isTradeAsking(client, enquiry);
  const by = toldByLetter(rug, { enquiry, isTrade });
  const { says, why } = headlineOf(rug.assessment, { letter: by, words: WORDS });
  // Whether it is wet is asked in a sentence of its own, of everybody.
  const first = by.asks.filter((q) => q.kind === "photo" && q.id in PHOTO_KINDS && q.id !== "wetNow")[0];
  return {
    desk: says, why: plain(why), slip: rug.assessment.urgency.why, letter: plain(letter), level: rug.assessment.urgency.level, a: rug.assessment, isTrade, answers: rug.answers,
    comesBackOpen: by.comesBackOpen, lifeOpen: by.lifeOpen, lifeOnce: by.lifeOnce, firstAsk: first ? PHOTO_KINDS[first.id as PhotoKind].ask : null,
  };
}

describe("the desk and the letter of one assessment", () => {
  it.each([["any", anyInput, 0], ["evenly drawn", anyWorth, 20]] as const)("say the same of haste, worth, what comes back, the years and what is asked first, over %s made-up assessments of one rug", (_, any, least) => {
    const seen = { hurried: 0, notWorth: 0, open: 0, withheld: 0, flooded: 0, asked: 0, soon: 0, cost: 0, years: 0 };
    fc.assert(fc.property(any, (input) => {
      const [rug] = input.assessments;
      // The years of an old piece are never worked out, and flood water that calls for first aid is a matter of hours.
      if (!rug || (rug.answers.age === "antique" && rug.assessment.lifeYears) || (rug.assessment.firstAid && rug.answers.incidents?.includes("flood") && rug.assessment.urgency.level !== "hours")) return;
      const { text } = composeDraft({ ...input, assessments: [rug] });
      const read = told({ rug, input, letter: text });
      seen.hurried += Number(HURRIES.test(read.letter));
      seen.soon += Number(/seen to within/.test(read.letter));
      seen.notWorth += Number(NOT_WORTH.test(read.letter));
      seen.open += Number(OPEN.test(read.letter));
      seen.withheld += Number(read.comesBackOpen !== null);
      seen.flooded += Number(read.answers.incidents?.includes("flood") ?? false);
      seen.asked += Number(ASKED.test(read.letter));
      seen.cost += Number(GIVES_REASON.test(read.desk) && COST_OR_WORTH.test(read.letter));
      seen.years += Number(GIVES_REASON.test(read.desk) && FEW_YEARS.test(read.letter));
      expect(contradictions(read)).toEqual([]);
    }), { numRuns: 3000 });
    for (const count of Object.values(seen)) expect(count).toBeGreaterThanOrEqual(least);
  }, 120_000);

  it.each(DEMO_CLIENTS)("say the same to %s", (client) => {
    for (const { letter: { draft, rugs } } of lettersTo(client)) {
      if (rugs.length !== 1) continue;
      const input = { client: { name: client, isTrade: false }, enquiry: reasonOf(client) };
      expect(contradictions(told({ rug: { title: rugs[0]!.title, assessment: rugs[0]!.assessment, answers: answersOf(client)[0]! }, input, letter: draft.text }))).toEqual([]);
    }
  });
});

const WOOL: Sketch = { fibres: { wool: 0.9 }, evidence: [{ what: "label", value: "wool", strength: "label-typed" }] };
const rugOf = (rest: Partial<Assessment>, answers: RugAnswers = {}, mechanisms: Sketch["mechanisms"] = {}): RugForDraft => ({ title: "Grey", answers, assessment: assessmentOf({ ...WOOL, mechanisms, rest }) });
const toldOf = (rug: RugForDraft) => toldByLetter(rug, { enquiry: {}, isTrade: false });

describe("toldByLetter", () => {
  it("leaves open how far it comes back from eighty points on, as letters do", () => {
    const open = (low: number, high: number) => toldOf(rugOf({ improvement: range(low, 50, high) })).comesBackOpen;
    expect([open(10, 89.9), open(10, 90)]).toEqual([null, "how much comes back cannot be told from here"]);
  });
  it("says why a letter sets no time: how little comes back, else what the work is worth where that is told; and nothing once it was inspected", () => {
    const soon = { urgency: { level: "two-days", why: "" } } as const;
    const why = (beyondRepair: number, high: number, answers: RugAnswers = {}) => toldOf(rugOf({ ...soon, beyondRepair, improvement: range(2, 10, high) }, answers, { "dye-bleed": 0.9 })).setsNoTime;
    expect([why(0.65, 25), why(0.66, 25), why(0.65, 24.9), why(0.66, 24.9)]).toEqual([null, "worth", "little", "little"]);
    expect(why(0.66, 25, { age: "antique" })).toBe("untold");
    for (const isBeyondRepair of [true, false]) expect(toldOf({ ...rugOf({ ...soon, improvement: range(2, 10, 24) }), inspection: { by: "Ivo Castellane", on: "24 November 2026", isBeyondRepair } }).setsNoTime).toBeNull();
    const says = (beyondRepair: number, high: number) => headlineOf(rugOf({ ...soon, beyondRepair, improvement: range(2, 10, high) }).assessment, { letter: toldOf(rugOf({ ...soon, beyondRepair, improvement: range(2, 10, high) })), words: WORDS }).why;
    expect(says(0.8, 60)).toMatch(/The letter sets no time: the work is likely not worth its cost\.$/);
    expect(says(0.8, 20)).toMatch(/The letter sets no time: haste would gain too little\.$/);
  });
  it("leaves all of it open after a flood, and while words of water are not asked about", () => {
    const judged = { improvement: range(20, 30, 40), lifeYears: range(2, 4, 6) };
    expect(toldOf(rugOf(judged))).toMatchObject({ comesBackOpen: null, lifeOpen: null, isHeldBack: null });
    expect(toldOf(rugOf(judged, { incidents: ["flood"] }))).toMatchObject({ comesBackOpen: "open until the flood firm has seen it", lifeOpen: "open until the flood firm has seen it", isHeldBack: "flood", isWorthTold: false });
    expect(toldOf({ ...rugOf(judged, { incidents: ["flood"] }), inspection: { by: "Ivo Castellane", on: "24 November 2026", isBeyondRepair: true } })).toMatchObject({ comesBackOpen: "open after flood or waste water", lifeOpen: "open after flood or waste water", isHeldBack: "flood" });
    expect(toldOf({ ...rugOf(judged), wetByWords: "whole" })).toMatchObject({ comesBackOpen: "open until we know whether it is wet", isHeldBack: "wet" });
  });
  it("tells the years beside mould and insects, once the rug is rid of them, since the letter does, and none where the range is wide", () => {
    const once = (mechanisms: Sketch["mechanisms"], lifeYears = range(2, 4, 6)) => { const { lifeOpen, lifeOnce } = toldOf(rugOf({ lifeYears }, {}, mechanisms)); return [lifeOpen, lifeOnce]; };
    expect(once({ mould: 0.33 })).toEqual([null, "the mould is treated and the rug is dry"]);
    expect(once({ insects: 0.33 })).toEqual([null, "no insects live in it"]);
    expect(once({ mould: 0.9, insects: 0.9 })).toEqual([null, "the mould is treated, the rug is dry and no insects live in it"]);
    expect(once({ mould: 0.32, insects: 0.32 })).toEqual([null, null]);
    expect(once({ insects: 0.9 }, range(1, 5, 30))).toEqual(["few years or many: cannot be told from here", null]);
    expect(toldOf(rugOf({ lifeYears: range(1, 5, 30) })).lifeOpen).toMatch(/^few years or many: cannot be told/);
    const unknown = { ...rugOf({ lifeYears: range(1, 5, 30) }), assessment: assessmentOf({ fibres: {}, rest: { lifeYears: range(1, 5, 30) } }) };
    expect(toldOf(unknown).lifeOpen).toBe("open until we know the fibre");
  });
  it("asks first what the letter asks first, and for no photo of a trouble that is none", () => {
    const next = (id: PhotoKind) => ({ id, kind: "photo" as const, ask: "", why: "" });
    const asks = (mechanism: MechanismId) => toldOf(rugOf({ nextQuestions: [next("trouble"), { id: "microscopy", kind: "bench-test", ask: "", why: "" }, next("whole")] }, {}, { [mechanism]: 0.9 })).asks.map((q) => q.id);
    expect(asks("soil-only")).toEqual(["whole", "microscopy"]);
    expect(asks("food-old")).toEqual(["trouble", "whole", "microscopy"]);
  });
});

describe("whether it is worth its cost", () => {
  const OF_WORTH = /worth (?:the money|its cost|the cost|today|cleaning)|take your money/;
  const finding = ([what, value]: readonly [string, string | string[]]) => ({ what, value, strength: "told", from: "client", decibans: 0, staff: "", client: "" }) as const;
  /** What letter, desk and report tell of it, of ordinary soil: each whether it speaks of worth. */
  function speaks(beyondRepair: number, told: Readonly<Record<string, string | string[]>>) {
    const input = worthless({ beyondRepair, advice: action("inspect-and-test") }, "soil-only");
    const [rug] = input.assessments;
    if (!rug) throw new Error("Expected a rug.");
    const assessment = { ...rug.assessment, findings: [...rug.assessment.findings.filter((f) => !(f.what in told)), ...Object.entries(told).map(finding)] };
    const letter = toldOf({ ...rug, assessment });
    const report = JSON.stringify(prospectBlocks({ assessment, inspection: null }, WORDS));
    return {
      letter: OF_WORTH.test(plain(composeDraft({ ...input, assessments: [{ ...rug, assessment }] }).text)), headline: OF_WORTH.test(JSON.stringify(headlineOf(assessment, { letter, words: WORDS }))),
      desk: letter.isWorthTold, report: report.includes("the chance is about"),
    };
  }
  const ALL = { letter: true, headline: true, desk: true, report: true };
  const NONE = { letter: false, headline: false, desk: false, report: false };
  const UNTOLD = { incidents: ["nothing"], changes: ["shaded"] };

  it.each(["what-is-it", "mis-sold"])("is told by none of letter, desk and report where no damage was told and they write for %s alone", (reason) => {
    for (const beyond of [0.38, 0.7, 0.95]) for (const told of [UNTOLD, { incidents: ["unknown"], changes: ["none"] }, {}]) expect(speaks(beyond, { ...told, reason })).toEqual(NONE);
  });
  it.each(["what-is-it", "mis-sold"])("is told by all of them where damage was told, or measured, beside %s", (reason) => {
    for (const told of [{ changes: ["ring"] }, { incidents: ["spill"], changes: ["none"] }, { ...UNTOLD, "colour-change": "darker" }]) expect(speaks(0.7, { ...told, reason })).toEqual(ALL);
  });
  it("is told by all of them where they ask for work, or have not said why they write", () => {
    for (const told of [{ ...UNTOLD, reason: "routine" }, { ...UNTOLD, reason: "older-trouble" }, UNTOLD]) expect(speaks(0.7, told)).toEqual(ALL);
  });
  it("is left out for Philippa Gaunt, who asks about silk, and told to a client whose rug is wet and has not changed", () => {
    const told = (client: string) => lettersTo(client).map(({ letter: { draft, rugs } }) => [OF_WORTH.test(plain(draft.text)), (rugs[0]?.assessment.beyondRepair ?? 0) >= 0.33]);
    for (const read of told("Philippa Gaunt")) expect(read).toEqual([false, true]);
    for (const read of told("Marguerite Okonjo-Lindqvist of Upper Hallowmere Old Schoolhouse")) expect(read).toEqual([true, true]);
  });
});

describe("headlineOf", () => {
  const headline = (rug: RugForDraft) => headlineOf(rug.assessment, { letter: toldOf(rug), words: WORDS });
  const of = (id: Assessment["advice"]["action"], beyondRepair: number | null, answers: RugAnswers = {}) => headline(rugOf({ advice: action(id), beyondRepair }, answers));
  const money = (clean: number, valueToday: number) => ({ currency: "GBP", clean: range(clean, clean, clean), cutDown: null, replace: null, valueToday: range(valueToday, valueToday, valueToday) });

  it("advises outright against cleaning only from likely on (.66), as the letter does", () => {
    expect(of("advise-claim-or-replacement", 0.66).says).toMatch(/^Advise against cleaning: keep/);
    for (const beyond of [0.65, 0.33, 0, null]) expect(of("advise-claim-or-replacement", beyond).says).toMatch(/^Advise against cleaning until it has been seen$/);
  });
  it("speaks of a claim only where the letter does", () => {
    expect(of("advise-claim-or-replacement", 0.66).says).toBe("Advise against cleaning: keep it or replace it");
    expect(of("advise-claim-or-replacement", 0.66, { matters: ["claim"] }).says).toBe("Advise against cleaning: keep it, replace it or claim");
  });
  it("asks nobody in before saying that it is likely not worth its cost", () => {
    for (const id of ["inspect-and-test", "quote-with-limits", "routine-clean"] as const) {
      expect(of(id, 0.66).says).toMatch(/likely not worth its cost; inspect it if they wish/);
      expect(of(id, 0.32).says).not.toMatch(/worth/);
    }
  });
  it("says how likely in the word of the letter, from .9 on “very likely”", () => {
    for (const id of ["inspect-and-test", "first-aid", "ask-for-more"] as const)
      expect([0.66, 0.89, 0.9, 0.99].map((beyond) => LIKELY_NOT.exec(of(id, beyond).says)?.[1])).toEqual(["likely", "likely", "very likely", "very likely"]);
  });
  it("says nothing of the worth of an antique, or of a flooded rug", () => {
    for (const answers of [{ age: "antique" }, { incidents: ["flood"] }] as const) for (const id of ["inspect-and-test", "first-aid"] as const)
      expect(JSON.stringify(of(id, 0.9, answers as RugAnswers))).not.toMatch(/worth/);
  });
  it("proposes no cutting down where somebody decided on its plan against it, gives no price for it, and says so", () => {
    const losses = [{ action: "advise-cut-down", loss: 1 }, { action: "advise-claim-or-replacement", loss: 2 }] as const;
    const advice = { ...action("advise-cut-down"), losses: [...losses] };
    const rug = rugOf({ advice, beyondRepair: 0.9, money: { currency: "GBP", clean: null, cutDown: range(60, 80, 200), replace: null, valueToday: null } });
    expect(headline(rug).says).toMatch(/^Propose cutting it down/);
    const decided = { ...rug, assessment: { ...rug.assessment, findings: [...rug.assessment.findings, { what: "kept-whole", value: true, strength: "photo", from: "photo:1", decibans: 0, staff: "", client: "" } as const] } };
    expect(headline(decided).says).toBe("Advise against cleaning: keep it or replace it");
    expect(headline(decided).why).toMatch(/By its judgement alone we would propose cutting it down; somebody here decided otherwise on its plan\.$/);
    expect(cutDownPrice(rug.assessment)).not.toBeNull();
    expect(cutDownPrice(decided.assessment)).toBeNull();
  });
  it("gives as its reason what decided this enquiry: the trouble and how much of it comes back, or the cost against the worth", () => {
    const why = (rest: Partial<Assessment>, mechanisms: Sketch["mechanisms"] = {}) => plain(headline(rugOf(rest, {}, mechanisms)).why);
    const against = { advice: action("advise-claim-or-replacement"), beyondRepair: 0.9 };
    expect(why({ ...against, improvement: range(0, 1, 3) }, { bleaching: 0.98 })).toBe("Bleaching is very likely. By cleaning 0–3 % of the change may go.");
    expect(why({ ...against, improvement: range(40, 60, 80), money: money(300, 40) }, { "food-old": 0.98 })).toBe("Cleaning costs about £300, and the rug may be worth £40 today.");
    expect(why({ advice: action("quote-with-limits"), improvement: range(20, 40, 60) }, { "food-old": 0.98 })).toBe("An old stain of something spilled is very likely. By cleaning 20–60 % of the mark may go.");
    const dyeRun = (median: number) => why({ ...against, improvement: range(4, median, 53), money: money(109, 578) }, { "dye-bleed": 0.98 });
    expect(dyeRun(39.9)).toMatch(/By cleaning 4–53 % of the mark may go\.$/);
    expect(dyeRun(40)).toMatch(/By cleaning 4–53 % of the mark may go\. Cleaning costs about £110, and the rug may be worth £/);
    expect(why({ advice: { ...action("refer"), referTo: REFERRALS.find(({ when }) => when === "mould")?.to ?? null } }, { mould: 0.98 })).toBe("Mould is very likely.");
  });
  it.each([
    ["urine-fresh", "Fresh urine is very likely. By cleaning 20–60 % of the mark may go."],
    ["matting", "Matting from traffic or furniture is very likely. By cleaning 20–60 % of what its surface has lost may come back."],
    ["fading", "Fading is very likely. By cleaning 20–60 % of the change may go."],
    ["insects", "Insect damage is very likely. By cleaning 20–60 % of what is no matter for repair may come out."],
    ["soil-only", "Ordinary soil is very likely. By cleaning 20–60 % of the soil may come out."],
  ] as const)("says of what a share may go after %s, so that nobody reads that the trouble returns", (mechanism, expected) => {
    const rug = rugOf({ advice: action("quote-with-limits"), improvement: range(20, 40, 60) }, {}, { [mechanism]: 0.98 });
    expect(plain(headlineOf(rug.assessment, { letter: { ...toldOf(rug), comesBackOpen: null }, words: WORDS }).why)).toBe(expected);
  });
  it("calls a rug of which nothing but a smell was told no soiled one, as the letter does not", () => {
    const told = (value: readonly string[]): Sketch => ({ ...WOOL, evidence: [{ what: "changes", value, strength: "told" }], mechanisms: { "soil-only": 0.98 }, rest: { advice: action("inspect-and-test"), improvement: range(20, 40, 60) } });
    const why = (value: readonly string[]) => plain(headline({ title: "Grey", answers: {}, assessment: assessmentOf(told(value)) }).why);
    expect(why(["smell"])).toBe("Nothing but a smell was told. How far the smell goes cannot be told from here.");
    expect(why(["smell", "dirty"])).toBe("Ordinary soil is very likely. By cleaning 20–60 % of the soil may come out.");
  });
  it.each(["inspect-and-test", "quote-with-limits", "routine-clean"] as const)("asks nobody to bring in a rug that mould may grow in before a firm has seen it, nor does the letter, of %s", (id) => {
    const rug = (mould: number, beyondRepair: number) => rugOf({ advice: action(id), beyondRepair, money: money(120, 900) }, {}, { mould, "food-old": 0.9 });
    const letter = (mould: number) => composeDraft({ ...inputOf({ sketch: WOOL }), assessments: [rug(mould, 0.2)] }).text;
    expect(headline(rug(0.33, 0.2)).says).toBe("Have a firm that treats mould see it first; then inspect and test it");
    expect(headline(rug(0.33, 0.7)).says).toBe("Say that it is likely not worth its cost; if they wish to keep it, a firm that treats mould sees it first");
    expect(headline(rug(0.32, 0.2)).says).not.toMatch(/mould/);
    expect(letter(0.33)).toMatch(/We would inspect and test it only once a firm that treats mould has seen it: then ring us/);
    expect(letter(0.33)).not.toMatch(/To arrange one|Cleaning would cost|We collect|roll it/);
    expect(letter(0.32)).toMatch(/Cleaning would cost[^]*To arrange one/);
  });
  it.each([["mould", "a firm equipped to treat mould in textiles"], ["insects", "a pest control firm or a workshop that treats rugs for insects"]] as const)("names whom the letter names for %s, whatever is advised", (mechanism, firm) => {
    const rug = (chance: number, id: Assessment["advice"]["action"]) => rugOf({ advice: action(id), urgency: { level: chance < 0.33 ? "can-wait" : "a-week", why: "" } }, {}, { [mechanism]: chance });
    for (const id of ["ask-for-more", "inspect-and-test", "advise-claim-or-replacement"] as const) {
      expect(headline(rug(0.33, id)).why).toContain(`The letter says that this is for ${firm}.`);
      expect(composeDraft({ ...inputOf({ sketch: WOOL }), assessments: [rug(0.33, id)] }).text).toContain(`This is for ${firm}.`);
      expect(headline(rug(0.32, id)).why).not.toContain("The letter says");
    }
    const referred = (to: string | undefined) => { const sent = rug(0.98, "refer"); return headline({ ...sent, assessment: { ...sent.assessment, advice: { ...action("refer"), referTo: to ?? null } } }).why; };
    expect(referred(REFERRALS.find(({ when }) => when === mechanism)?.to)).not.toContain("The letter says");
    expect(referred(REFERRALS.find(({ when }) => when === "antique")?.to)).toContain(`The letter says that this is for ${firm}.`);
  });
  it("names the first ask of the letter where more is asked for", () => {
    const rug = rugOf({ advice: action("ask-for-more"), nextQuestions: [{ id: "microscopy", kind: "bench-test", ask: "Bench test: fibre", why: "" }, { id: "label", kind: "photo", ask: "Photo: the label", why: "" }] });
    expect(headline(rug).why).toBe("Nobody has said what happened to it. Ask first: “Photo: the label”.");
  });
  it("speaks of soil only where its letter does, and else of what comes next", () => {
    const rug = (mechanisms: Partial<Record<MechanismId, number>>, changes: RugAnswers["changes"], improvement: Assessment["improvement"] = null) => rugOf({ advice: action("inspect-and-test"), improvement }, { incidents: ["wear"], changes }, mechanisms);
    const both = (of: RugForDraft) => ({ desk: headline(of).why, letter: composeDraft({ ...inputOf({ sketch: WOOL }), assessments: [of] }).text });
    const worn = both(rug({ "soil-only": 0.6, matting: 0.37 }, ["dirty"], range(5, 50, 95)));
    expect(worn.letter).toMatch(/feet or furniture/u);
    expect(worn.letter).not.toMatch(/\bsoil\b/u);
    expect(worn.desk).toMatch(/^Matting from traffic or furniture is about as likely as not/u);
    expect(worn.desk).not.toMatch(/soil/iu);
    const soiled = both(rug({ "soil-only": 0.6, matting: 0.32 }, ["dirty"], range(20, 50, 80)));
    expect(soiled.letter).toMatch(/\bsoil\b/u);
    expect(soiled.desk).toMatch(/^Ordinary soil is about as likely as not/u);
  });
  it("asks for nothing where its letter asks for nothing: what a letter asks for care's sake only is no ask, and an inspection decides, after the firm where mould may grow", () => {
    const PETS = { id: "household", kind: "question", ask: "Does any of this apply?", why: "" } as const;
    const rug = (mould: number, beyondRepair: number, nextQuestions: Assessment["nextQuestions"]) => rugOf({ advice: action("ask-for-more"), nextQuestions, beyondRepair, money: money(120, 900) }, { incidents: ["damp"] }, { mould, "food-old": 0.9 });
    expect(headline(rug(0.33, 0.2, [PETS])).says).toBe("Have a firm that treats mould see it first; then inspect and test it");
    expect(headline(rug(0.33, 0.7, [PETS])).says).toBe("Say that it is likely not worth its cost; if they wish to keep it, a firm that treats mould sees it first");
    expect(headline(rug(0.32, 0.2, [PETS])).says).toBe("Invite it for inspection and testing");
    expect(headline(rug(0.32, 0.2, [PETS])).why).not.toMatch(/ask first/iu);
    expect(headline(rug(0.32, 0.2, [PETS, { id: "label", kind: "photo", ask: "Photo: the label", why: "" }]))).toMatchObject({ says: "Ask for more", why: expect.stringContaining("Ask first: “Photo: the label”") });
  });
  it("asks first whether it is wet where words of water were not asked about", () => expect(headline({ ...rugOf({ advice: action("routine-clean") }), wetByWords: "whole" }).says).toBe("Ask first whether it is wet"));
  it("falls back on what holds of every such advice only where nothing stands out", () => expect(headline(rugOf({ advice: { ...action("routine-clean"), why: "As weighed." } })).why).toBe("As weighed."));
});
