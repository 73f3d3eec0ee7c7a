import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { documentsOffered } from "../../../lib/reply/documents/offered";
import { SHIPPED, shippedParagraph, type LibraryRow } from "../../../lib/reply/library";
import { says } from "../../../lib/reply/parts";
import type { DraftInput } from "../../../lib/reply/pieces";
import { cleaning } from "../../../lib/reply/facts";
import { isGasTold } from "../../../lib/reply/happened";
import { wordsIn } from "../../../lib/words/words";
import { harmFigures, improvementPhrase, lifePhrase, moneyPhrase, roughMoneyPhrase, yearsEnd, yearsPhrase } from "../../../lib/reply/phrases";
import { readingOf } from "../../../lib/reply/reading";
import { CUT_NAMES } from "../../../lib/photo/cut-names";
import type { EnquiryAnswers, RugAnswers } from "../../../lib/trade/questions";
import type { WeighedFinding } from "../../../lib/triage/assessment";
import { anyInput } from "./any-input";
import { CASES } from "./cases";
import { FIRST_AID } from "../../../lib/trade/first-aid";
import type { Tone } from "../../../lib/trade/tones";
import { action, assessmentOf, FIRST_AID_SAID, inputOf, range, WOOL_METHODS, WORKSHOP, worthless, type Sketch } from "./make";

const FIRST_AID_SHORT = [FIRST_AID.emergency(WORKSHOP.emergencyNumber), ...FIRST_AID.inShort.map((line) => line.text)];
const ALWAYS_DONE = FIRST_AID.inShort.filter((line) => line.fits === "always").map((line) => line.text);
/** Where bleach may give off gas, nobody goes back in to give it air: the first line says so instead. */
const DONE_WHERE_ONE_MAY_STAY = FIRST_AID.inShort.filter((line) => line.fits === "may-stay").map((line) => line.text);
const GAS = FIRST_AID.gas.line(WORKSHOP.emergencyNumber);
/** Spaces that do not break, read as spaces. */
const eased = (text: string) => text.replaceAll("\u00a0", " ");

/** What nobody can know from a message and photos. */
const GUARANTEES = /guarantee|certain|definitely|always|never|without (a )?doubt|100 % (clean|back)|\bwill come (out|back)|good as new|completely|fully (restored|recover)|no risk|surely|promise/i;
const withoutFirstAid = (text: string) => text.split("\n").filter((l) => !l.startsWith("– ")).join("\n");
const blocksOf = (text: string) => text.split("\n\n");

describe("composeDraft, kind by kind", () => {
  for (const [name, kind] of Object.entries(CASES)) {
    const { subject, text: sent } = composeDraft(inputOf(kind));
    const text = eased(sent);
    it(`${name}: says what must be said and nothing that must not`, () => {
      for (const must of kind.says) expect(text).toMatch(typeof must === "string" ? new RegExp(must.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")) : must);
      for (const mustNot of kind.never) expect(text).not.toMatch(typeof mustNot === "string" ? new RegExp(mustNot.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")) : mustNot);
      expect(subject).toMatch(/^Your (customer’s )?(grey )?rug(, 170 × 240)?$/);
    });
    it(`${name}: can be read at grade 8 or lower, in 350 words or fewer`, () => {
      expect(readingOf(text).grade).toBeLessThanOrEqual(8);
      expect(readingOf(text).words).toBeLessThanOrEqual(350);
    });
  }

  it("asks whoever washed it at home not to do so again, without telling them how harm is done", () => {
    const about = (incidents: RugAnswers["incidents"], isTrade = false) => composeDraft(inputOf({
      sketch: { fibres: { wool: 0.8 }, words: "likely", methods: WOOL_METHODS, rest: { improvement: range(5, 25, 50) } }, answers: { incidents }, client: { name: "Ana Example", isTrade },
    })).text;
    expect(about(["washed-home"])).toMatch(/do not clean it again at home/);
    expect(about(["washed-home"])).not.toMatch(/a machine, a hose or a spray/);
    expect(about(["spill"])).toMatch(/do not clean it at home: a machine, a hose or a spray/);
    expect(about(["washed-home"], true)).not.toMatch(/at home/);
  });
  it("covers at least a dozen kinds", () => expect(Object.keys(CASES).length).toBeGreaterThanOrEqual(12));
});

describe("composeDraft, for any assessment", () => {
  const anyDraft = (check: (draft: ReturnType<typeof composeDraft>, input: DraftInput) => void) =>
    fc.assert(fc.property(anyInput, (input) => check(composeDraft(input), input)), { numRuns: 100 });

  it("leaves no slot open and says nothing empty", () => anyDraft(({ subject, text }) => {
    expect(subject + text).not.toMatch(/[{}]|undefined|\bnull\b|NaN|Infinity/);
    expect(text).not.toMatch(/ {2}|\n{3}|^\s|\s$/);
  }));
  it("promises nothing", () => anyDraft(({ text }, { assessments }) => {
    const ours = assessments.reduce((left, { title }) => left.replaceAll(title, ""), text);
    expect(FIRST_AID_SHORT.reduce((left, sentence) => left.replace(sentence, ""), ours)).not.toMatch(GUARANTEES);
  }));
  it("says no sentence twice about one rug", () => anyDraft(({ text }, { assessments }) => {
    if (assessments.length > 1) return;
    const sentences = text.split(/(?<=[.!?:])\s+/).filter((s) => /[.!?]$/.test(s));
    expect(new Set(sentences).size).toBe(sentences.length);
  }));
  it("states what it rests on, once a rug", () => anyDraft(({ text, paragraphs }, { assessments }) => {
    const STATED = /Going by |Your message is all we have so far/g;
    const statedOf = assessments.map((_, rug) => paragraphs.filter((p) => p.rug === rug).flatMap((p) => p.said?.match(STATED) ?? []));
    expect(statedOf.map((said) => said.length)).toEqual(assessments.map(() => 1));
    expect(new Set(text.match(STATED))).toEqual(new Set(statedOf.flat()));
  }));
  it("states the improvement as the assessment's range wherever that is narrow enough to tell anything", () => anyDraft(({ text }, { assessments }) => {
    for (const { assessment: { improvement }, answers } of assessments) if (improvement && improvement.high - improvement.low < 80 && !answers.incidents?.includes("flood")) expect(text).toContain(improvementPhrase(improvement));
  }));
  it("states no years but as the assessment's range, and none where that tells nothing or hangs on a fibre that is open; none of an antique", () => anyDraft(({ text, paragraphs }, { assessments }) => {
    const isLeftOut = !paragraphs.some((p) => p.id.startsWith("life"));
    for (const { assessment, answers } of assessments) {
      if (!assessment.lifeYears || answers.age === "antique" || answers.incidents?.includes("flood") || assessments.length > 1) continue;
      if (isLeftOut) {
        expect(readingOf(text).words).toBeGreaterThan(300);
        continue;
      }
      const isGiven = text.includes(lifePhrase(assessment.lifeYears));
      const { low, high } = assessment.lifeYears;
      if (high < 6 * low || high < 1) expect(isGiven).toBe(true);
      else expect(isGiven).toBe((low >= 2 || high <= 10) && !text.includes("depends on the fibre"));
      if (!isGiven) expect(text).toMatch(/could be few or many|depends on the fibre/);
    }
    if (assessments.every((r) => r.answers.age === "antique")) expect(text).not.toMatch(/In ordinary use|in ordinary use/);
  }));
  it("has a test in a hidden corner for every rug that may be cleaned", () => anyDraft(({ text, paragraphs }, { assessments }) => {
    assessments.forEach((r, rug) => {
      if (!cleaning(r.assessment).some((m) => m.verdict !== "ruled-out")) return;
      expect(paragraphs.some(({ rug: of, said }) => of === rug && said !== null && /test in a hidden corner/.test(said) && says(text, said))).toBe(true);
    });
  }));
  it("calls beyond repair provisional", () => anyDraft(({ text }) => {
    if (/not worth the cost/.test(text)) expect(text).toMatch(/provisional: nobody here has inspected it/);
  }));
  it("begins with the greeting, then first aid wherever an assessment has it, and ends with the signature", () => anyDraft(({ text }, { assessments, workshop }) => {
    const blocks = blocksOf(text);
    expect(blocks[0]).toMatch(/^(Dear .+|Good day),$/);
    const isFlood = assessments.some((r) => r.answers.incidents?.includes("flood"));
    const isGas = assessments.some((r) => r.assessment.firstAid && isGasTold(r.answers));
    const call = isGas ? [GAS] : isFlood ? FIRST_AID_SHORT.slice(0, 1) : [];
    const done = isFlood ? [] : isGas ? ALWAYS_DONE : [...ALWAYS_DONE, ...DONE_WHERE_ONE_MAY_STAY];
    if (assessments.some((r) => r.assessment.firstAid)) for (const s of [...call, ...done]) expect(blocks[1]).toContain(s);
    if (isFlood && assessments.some((r) => r.assessment.firstAid)) expect(blocks[1]).toMatch(/nobody touch the rug, not even to blot it[^]*children[^]*wet plug[^]*No more water/);
    expect(text.endsWith(workshop.signature || workshop.name)).toBe(true);
  }));
  it("has a line of heading for each of several rugs and none for one", () => anyDraft(({ text, paragraphs }, { assessments }) => {
    const headings = blocksOf(text).filter((b) => /^Rug \d+: [^\n]+$/.test(b));
    const isNamed = (rug: number) => paragraphs.some((p) => p.rug === rug && !["heading", "in-short"].includes(p.place) && p.here !== null);
    expect(headings).toHaveLength(assessments.length > 1 ? assessments.filter((_, rug) => isNamed(rug)).length : 0);
  }));
  it("has no number that is not in the assessment, the answers or the settings", () => anyDraft(({ text }, input) => {
    const known = `${JSON.stringify(input.assessments.map((r) => [r.title, r.answers, r.assessment.firstAid, r.assessment.nextQuestions]))} ${JSON.stringify(input.workshop)} ${input.client.name}`;
    const said = input.assessments.flatMap(({ assessment: a }, at) => [
      String(at + 1), a.improvement && improvementPhrase(a.improvement), a.lifeYears && [lifePhrase(a.lifeYears), yearsPhrase(a.lifeYears), yearsEnd(a.lifeYears.low), yearsEnd(a.lifeYears.high)].join(" "), a.worse === null ? "" : `${harmFigures(a.worse)} in 100`,
      ...[a.money?.clean, a.money?.cutDown].map((m) => (m ? moneyPhrase(m, a.money!.currency, wordsIn("en-GB")) : "")),
      a.money?.replace && roughMoneyPhrase(a.money.replace, a.money.currency, wordsIn("en-GB")),
    ]).join(" ");
    const numbers = new Set(`${known} ${said}`.match(/\d+/g) ?? []);
    for (const number of text.match(/\d+/g) ?? []) expect(numbers).toContain(number);
  }));
  it("says the same for the same assessment, and names every paragraph with its version", () => anyDraft((draft, input) => {
    expect(composeDraft(structuredClone(input))).toEqual(draft);
    for (const p of draft.paragraphs) expect(p.version).toBeGreaterThanOrEqual(1);
    expect(draft.paragraphs.length).toBeGreaterThanOrEqual(4 + input.assessments.length);
  }));
  it("gives the trade a telephone call and no product", () => anyDraft(({ text }, { client, workshop }) => {
    if (!client.isTrade) return;
    expect(text).toMatch(workshop.telephone ? /Please ring us on/ : /send us your telephone number/);
    const ours = withoutFirstAid(text).replace(/“[^”]*”/gu, "");
    expect(ours).not.toMatch(/\bpH\b|acid|ammonia|peroxide|bleach|\d+ ?(ml|g|l)\b|reducing/i);
  }));
});

describe("composeDraft, edges", () => {
  it("warns of mould wherever furry or black spots were told, and says no more than that they may be it", () => {
    const text = composeDraft(inputOf({ sketch: { fibres: { polypropylene: 0.8 }, words: "likely", evidence: [] }, answers: { changes: ["spots"] } })).text;
    expect(text).toMatch(/spots may be mould/);
    expect(text).toMatch(/do not touch, brush or vacuum/);
  });
  it("goes by no label that could not be read", () => {
    const label = (pile: string | null) => ({ what: "label", value: { says: null, text: "ალუბალი 100%", pile, ground: null, fringe: null, doubts: null, suggests: null }, strength: "label-typed" as const });
    const draft = (pile: string | null) => composeDraft(inputOf({ sketch: { fibres: { wool: 0.3 }, words: "unlikely", evidence: [label(pile)] } })).text;
    expect(draft(null)).not.toMatch(/label/);
    expect(draft("60 % wool, 40 % polyamide")).toMatch(/Going by the label as you typed it/);
  });
  it("says that a label was read to us where it was read on the telephone", () => {
    const input = inputOf({ sketch: { fibres: { wool: 0.9 }, evidence: [{ what: "label", value: "wool", strength: "label-typed" }] } });
    const heard = (labelHeard: boolean) => composeDraft({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, labelHeard })) }).text;
    expect(heard(true)).toMatch(/Going by the label as you read it to us/);
    expect(heard(true)).not.toMatch(/typed/);
    expect(heard(false)).toMatch(/Going by the label as you typed it/);
  });
  it("says that their photo shows the label as they typed it, once, where one was read and says the same", () => {
    const seen = [{ what: "label", value: "wool", strength: "label-typed" as const }, { what: "photo", value: ["label"], strength: "told" as const, decibans: 0 }];
    const input = inputOf({ sketch: { fibres: { wool: 0.9 }, evidence: seen } });
    const shown = (labelShown: boolean, labelHeard = false) => composeDraft({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, labelShown, labelHeard })) }).text;
    expect(shown(true)).toMatch(/Going by the label as you typed it and as your photo shows it, your grey rug/);
    expect(shown(false)).toMatch(/Going by the label as you typed it and your photos, your grey rug/);
    expect(shown(true, true)).toMatch(/Going by the label as you read it to us and your photos, your grey rug/);
  });
  describe("where they told us of urine this week", () => {
    const LIKELIER = { bleaching: 0.9, "pile-distortion": 0.8 } as const;
    const draft = (urine: Sketch["mechanisms"], answers: RugAnswers, rest: Sketch["rest"] = {}) =>
      composeDraft(inputOf({ sketch: { fibres: { viscose: 0.9 }, evidence: [{ what: "touch", value: "cool-slippery", strength: "told" }], mechanisms: { ...LIKELIER, ...urine }, rest }, answers })).text;
    const told = (since: RugAnswers["since"]): RugAnswers => ({ incidents: ["pet-urine"], since });
    const ranged: Sketch["rest"] = { improvement: range(20, 40, 60), urgency: { level: "two-days", why: "" } };
    it.each(["hour", "day", "two-days", "week"] as const)("says so beside two likelier causes (%s)", (since) => {
      const text = draft({ "urine-fresh": 0.7 }, told(since), ranged);
      expect(text).toMatch(/took the colour out/);
      expect(text).toMatch(/pile burst or matted/);
      expect(text).toMatch(/It is likely that the urine is still fresh enough to work on\. It sets within days, so sooner is better\./);
    });
    it.each<[string, Sketch["mechanisms"], Sketch["rest"], RegExp]>([
      ["beside its smell where little comes back", { "urine-fresh": 0.7 }, { improvement: range(0, 5, 15) }, /Urine counts too: its smell may come back/],
      ["and that it changes the dye where that is likelier than fresh", { "urine-fresh": 0.2, "urine-old": 0.6 }, ranged, /about as likely as not that urine has changed the dye/],
      ["and what it does where its chance is small", { "urine-fresh": 0.2, "urine-old": 0.1 }, ranged, /The urine you told us of counts too: as it dries it sets/],
    ])("says so %s", (_, urine, rest, says) => {
      const text = draft(urine, told("day"), rest);
      expect(text).toMatch(says);
      expect(text).toMatch(/took the colour out/);
    });
    it("does not call sooner better where little comes back, also where it smells already", () => {
      const text = draft({ "urine-fresh": 0.7 }, { ...told("day"), changes: ["smell"] }, { improvement: range(0, 5, 15) });
      expect(text).toMatch(/The urine you told us of counts too: as it dries it sets/);
      expect(text).not.toMatch(/sooner/);
    });
    it("says that it has changed the rug only where somebody saw a change, and beside a smell alone that it may", () => {
      const smelling = (...changes: NonNullable<RugAnswers["changes"]>) => draft({ "urine-old": 0.8 }, { ...told("week"), changes }, ranged);
      expect(smelling("smell")).toMatch(/It is likely that the urine has set\. It can change the dye or the fibre itself, and that may show only later\./);
      expect(smelling("smell", "browner")).toMatch(/urine has changed the dye or the fibre itself/);
      expect(smelling("smell")).not.toMatch(/has changed/);
      const alone = (changes: RugAnswers["changes"]) => composeDraft(inputOf({ sketch: { fibres: { wool: 0.9 }, mechanisms: { "urine-old": 0.8 }, rest: ranged }, answers: { ...told("week"), ...(changes ? { changes } : {}) } })).text.match(/urine has set|urine has changed/g);
      expect([alone(["smell"]), alone(["browner"]), alone(undefined)]).toEqual([["urine has set"], ["urine has changed"], ["urine has changed"]]);
    });
    it("says it once, and of older or other trouble nothing", () => {
      expect(draft({ "urine-fresh": 0.7, "urine-old": 0.4 }, told("day"), ranged).match(/urine (?:is still|has changed|you told)/g)).toHaveLength(1);
      for (const answers of [told("longer"), told("month"), { incidents: ["spill"], liquid: "wine", since: "hour" } satisfies RugAnswers]) expect(draft({}, answers, ranged)).not.toMatch(/urine/);
    });
    it("says of each thing that was told what it may be, where there is room", () => {
      const text = composeDraft(inputOf({ sketch: { fibres: { wool: 0.9 }, mechanisms: { "dye-bleed": 0.9, "browning-cleaning": 0.8, shrinkage: 0.7, "pile-distortion": 0.6, matting: 0.5 }, rest: { improvement: range(20, 40, 60) } }, answers: { incidents: ["washed-home"], changes: ["ran", "browner", "wavy", "stiff"] } })).text;
      for (const cause of [/a dye has run/, /the brown comes with drying/, /drawn in or gone out of shape/, /pushed out of shape where it was wet/]) expect(text).toMatch(cause);
      expect(text).not.toMatch(/feet or furniture/);
    });
    it("keeps it in a letter that is too long for its other causes", () => {
      const wordy = { ...ranged, lifeYears: range(2, 4, 6), worse: 0.3, beyondRepair: 0.5, money: { currency: "GBP", clean: range(100, 150, 200), cutDown: range(300, 400, 500), replace: range(500, 700, 900), valueToday: range(80, 150, 220) }, firstAid: FIRST_AID_SAID };
      const input = inputOf({ sketch: { fibres: { viscose: 0.9 }, evidence: [{ what: "label", value: "viscose", strength: "label-typed" }], mechanisms: { ...LIKELIER, "urine-fresh": 0.7 }, rest: wordy }, answers: { ...told("hour"), matters: ["claim"], sellerSaid: "silk" }, enquiry: { wetNow: "wet" } });
      const long: LibraryRow = { ...(shippedParagraph("greeting") as LibraryRow), id: "own-long", place: "notes", when: {}, text: "A word. ".repeat(400).trim(), from: "workshop" };
      const { text, leftOut } = composeDraft({ ...input, library: [...SHIPPED, long] });
      expect(leftOut.some((p) => p.place === "cause")).toBe(true);
      expect(text.match(/urine is still fresh enough/g)).toHaveLength(1);
    });
  });
  describe("the claim of somebody who thinks that it was sold as something else", () => {
    const draft = (evidence: NonNullable<Sketch["evidence"]>) => composeDraft(inputOf({ sketch: { fibres: { viscose: 0.9 }, evidence }, enquiry: { reason: "mis-sold" } })).text;
    const offers = (evidence: NonNullable<Sketch["evidence"]>) => documentsOffered({ assessment: assessmentOf({ fibres: { viscose: 0.9 }, evidence }), hasPlan: false, isTrade: false }).includes("letter-to-seller");
    const said = (value: string) => [{ what: "sellerSaid", value, strength: "told" as const }];
    const label = (says: string) => [{ what: "label", value: { says, text: says, pile: says }, strength: "label-typed" as const }];
    it.each([
      ["silk", said("silk"), true], ["wool and silk", said("wool-and-silk"), true], ["art silk", said("art-silk"), true], ["a label of silk and viscose", label("silk-viscose"), true],
      ["silk look", said("silk-look"), false], ["wool", said("wool"), false], ["a label of wool", label("wool"), false], ["nothing", [], false],
    ])("asks the seller in writing exactly where that letter can be made: %s", (_, evidence, asks) => {
      expect(offers(evidence)).toBe(asks);
      expect(/ask the seller in writing/.test(draft(evidence))).toBe(asks);
      expect(draft(evidence)).toMatch(/your local law decides, and this is not legal advice/);
    });
  });
  it.each<[string, EnquiryAnswers, RugAnswers, boolean]>([["a claim is what matters to them", {}, { matters: ["claim"] }, true], ["they only think it was sold as something else", { reason: "mis-sold" }, {}, false]])("holds the paragraph on a claim against a letter that is too long, where %s", (_, enquiry, answers, stays) => {
    const long: LibraryRow = { ...(shippedParagraph("greeting") as LibraryRow), id: "own-long", place: "notes", when: {}, text: "A word. ".repeat(400).trim(), from: "workshop" };
    const input = inputOf({ sketch: { fibres: { viscose: 0.9 }, rest: { lifeYears: range(2, 4, 6) } }, answers, enquiry });
    const draft = composeDraft({ ...input, library: [...SHIPPED, long] });
    expect(draft.leftOut.map((p) => p.place)).toContain("life");
    expect([/your local law decides/.test(draft.text), draft.leftOut.some((p) => p.place === "claim")]).toEqual([stays, !stays]);
  });
  const plainRug = { sketch: { fibres: { wool: 0.9 } as const } };

  it("writes to a client without a readable name", () => {
    expect(composeDraft({ ...inputOf(plainRug), client: { name: "\u0000\u202e", isTrade: false } }).text).toMatch(/^Good day,\n/);
  });
  it("takes names and titles as they are, in one line and without slots of their own", () => {
    const { text, subject } = composeDraft({ ...inputOf({ ...plainRug, title: "Grey {rug}\r\nBcc: a@example.org" }), client: { name: "Ünal {telephone} 🧵\nBcc: Ana", isTrade: false } });
    expect(text.split("\n")[0]).toBe("Dear Ünal telephone 🧵,");
    expect(subject).toBe("Your grey rug");
  });
  it("greets nobody by an address, of mail or of a house", () => {
    expect(composeDraft({ ...inputOf(plainRug), client: { name: "ana.example@example.org", isTrade: false } }).text).toMatch(/^Good day,\n/);
    expect(composeDraft({ ...inputOf(plainRug), client: { name: "Ana Example, 12 Mill Lane, Hallow", isTrade: false } }).text).toMatch(/^Dear Ana Example,\n/);
  });
  it("quotes a short label and leaves out a long or odd one", () => {
    const label = (labelText: string) => composeDraft(inputOf({ sketch: { fibres: { viscose: 0.95 }, evidence: [{ what: "label", value: "viscose", strength: "label-typed" }] }, answers: { labelText } })).text;
    expect(label("100 % viscose")).toContain("(“100 % viscose”)");
    expect(label("x".repeat(41))).not.toContain("xxx");
    expect(label("viscose; see www.example.org?x=1")).not.toContain("www");
  });
  it("asks for nothing that means handling a wet or mouldy rug, and for no photo of a trouble that is none or that nobody may go near", () => {
    const nextQuestions = [{ id: "touch", kind: "question" as const, ask: "Feel?", why: "" }, ...(["pile", "back", "trouble", "label"] as const).map((id) => ({ id, kind: "photo" as const, ask: id, why: "" }))];
    const asked = (rest: object, mechanisms = {}) => composeDraft(inputOf({ sketch: { fibres: { wool: 0.3 }, mechanisms, rest: { nextQuestions, ...rest } } })).text;
    expect(asked({})).toMatch(/pile, parted/);
    expect(asked({})).not.toMatch(/photo of the trouble/);
    const [wet, mouldy] = [asked({ firstAid: FIRST_AID_SAID }, { "food-fresh": 0.9 }), asked({}, { mould: 0.9 })];
    expect(wet).toMatch(/photo of the trouble/);
    expect(mouldy).not.toMatch(/photo of the/);
    for (const text of [wet, mouldy]) expect(text).not.toMatch(/pile, parted|folded corner|palm|the label/);
  });
  it("asks a workshop without a telephone for none", () => {
    expect(composeDraft({ ...inputOf(plainRug), workshop: { ...WORKSHOP, telephone: "" } }).text).not.toMatch(/ring us/);
  });
  it("signs with the workshop's name where there is no signature", () => {
    expect(composeDraft({ ...inputOf(plainRug), workshop: { ...WORKSHOP, signature: " " } }).text).toMatch(/Lantern Yard Rug Workshop$/);
  });
  it("says when the label and everything else do not agree", () => {
    const assessment = assessmentOf({ fibres: { viscose: 0.9 }, rest: {} });
    assessment.findings = [{ what: "label", value: { says: "silk", text: "silk" }, strength: "label-photo", from: "photo:1", decibans: -4, staff: "", client: "" }];
    expect(composeDraft({ ...inputOf(plainRug), assessments: [{ title: "", assessment, answers: {} }] }).text).toContain("although the label says silk");
  });
  it("speaks of no mechanism below about as likely as not (.33)", () => {
    const at = (probability: number) => composeDraft(inputOf({ sketch: { fibres: { wool: 0.9 }, mechanisms: { mould: probability } } })).text;
    expect(at(0.32)).not.toMatch(/mould/i);
    expect(at(0.33)).toMatch(/about as likely as not that mould grows in it/);
  });
  it("speaks of the spots and of the ring only where they were told", () => {
    const text = (changes: RugAnswers["changes"]) => composeDraft(inputOf({ sketch: { fibres: { wool: 0.9 }, mechanisms: { mould: 0.6, "water-mark": 0.6 } }, answers: { changes } })).text;
    expect(text(["smell"])).not.toMatch(/the spots|the ring/);
    expect(text(["spots", "ring"])).toMatch(/the spots are mould[^]*the ring is a water mark/);
  });
  it("warns of beyond repair and of harm from their thresholds on (.33 and .10)", () => {
    const at = (beyondRepair: number, worse: number) => composeDraft(worthless({ beyondRepair, worse })).text;
    expect(at(0.32, 0.09)).not.toMatch(/provisional|real chance/);
    expect(at(0.33, 0.1)).toMatch(/provisional/);
    expect(at(0.33, 0.1)).toMatch(/real chance, between 7 and 15 in 100, that cleaning makes it worse/);
  });
  it("advises once what to do instead of cleaning, with a price or without, however probable it is that it is not worth saving", () => {
    const money = { currency: "GBP", clean: range(100, 120, 150), cutDown: range(200, 250, 300), replace: range(300, 400, 500), valueToday: null };
    const instead = (action: "advise-cut-down" | "advise-claim-or-replacement", beyondRepair: number | null) => {
      const { text } = composeDraft(inputOf({ sketch: { fibres: { wool: 0.9 }, mechanisms: { "dye-bleed": 0.9 }, rest: { beyondRepair, money, advice: { action, why: "", referTo: null, losses: [] } } } }));
      return (text.match(/cut away|rather not take your money|before someone has seen it/g) ?? []).length;
    };
    for (const beyond of [null, 0.32, 0.65, 0.66, 1]) expect([instead("advise-cut-down", beyond), instead("advise-claim-or-replacement", beyond)]).toEqual([1, 1]);
  });
  it.each([["likely not", 0.8, / an inspection could change it\. $/], ["perhaps not", 0.5, /likely wool\. $/], ["not judged", null, /likely wool\. $/]] as const)("proposes to cut it down in the opening answer, right after what is said of its worth there (%s), and names it nowhere else", (_, beyondRepair, before) => {
    const { text } = composeDraft(inputOf({ sketch: { fibres: { wool: 0.9 }, evidence: [{ what: "touch", value: "springy", strength: "told" }], mechanisms: { "dye-bleed": 0.9 }, rest: { beyondRepair, improvement: range(10, 20, 40), advice: action("advise-cut-down") } } }));
    const [opening, ...rest] = text.split("\n\n").slice(1);
    const [answer, proposal] = opening!.split(/(?=We would propose cutting it down: if an inspection finds the damage at one side or end, beside sound ground,)/);
    expect(answer).toMatch(before);
    expect(proposal).toMatch(/it could be cut away and bound again\. Were it cleaned|it could be cut away and bound again\. We would expect careful cleaning/);
    expect(rest.join(" ")).not.toMatch(/propose|cut away|cutting it down|bound again/);
  });
  it("names the way that was chosen on a plan, with its edges as drawn as about and up to new ones all round, and otherwise a range", () => {
    const cut = (findings: readonly WeighedFinding[], cutDown: ReturnType<typeof range>) => {
      const input = inputOf({ sketch: { fibres: { wool: 0.9 }, mechanisms: { "dye-bleed": 0.9 }, rest: { beyondRepair: 0.5, money: { currency: "GBP", clean: null, cutDown, replace: null, valueToday: null }, advice: { action: "advise-cut-down", why: "", referTo: null, losses: [] } } } });
      const [rug] = input.assessments;
      return composeDraft({ ...input, assessments: rug ? [{ ...rug, assessment: { ...rug.assessment, findings: [...rug.assessment.findings, ...findings] } }] : [] }).text;
    };
    const planned = (kind: string): WeighedFinding => ({ what: "cut-down", value: { kind, bindingM: 3.4, shareKept: 0.8 }, strength: "photo", from: "photo:1", decibans: 0, staff: "", client: "" });
    const letter = cut([planned("split-in-two")], range(130, 130, 130));
    expect(letter).toMatch(/We would propose cutting it down, on a plan drawn from the photo: “Two rugs out of one”, which keeps about 80\u00a0% of the rug, if an inspection finds sound ground[^.]*\. It would cost about £130, confirmed when we have seen it\./);
    expect(letter).not.toContain("one side or end");
    const round = cut([{ ...planned("split-in-two"), value: { kind: "split-in-two", bindingM: 3.4, shareKept: 0.8, allRoundM: 10.2 } }], range(130, 130, 130));
    expect(round).toContain("It would cost about £130, or up to £390 if all its edges have to be new, confirmed when we have seen it.");
    for (const [kind, name] of Object.entries(CUT_NAMES)) expect(cut([planned(kind)], range(130, 130, 130))).toContain(`“${name}”`);
    for (const findings of [[], [planned("in-three")]]) expect(cut(findings, range(60, 130, 300))).toMatch(/at one side or end[^.]*, for about £60 to £300\./);
  });
  it("proposes no cutting down where somebody decided on its plan against it, and goes on with what the judgement ranks next", () => {
    const losses = [{ action: "advise-cut-down", loss: 1 }, { action: "advise-claim-or-replacement", loss: 2 }] as const;
    const money = { currency: "GBP", clean: range(100, 120, 150), cutDown: range(200, 250, 300), replace: range(300, 400, 500), valueToday: null };
    const keptWhole: WeighedFinding = { what: "kept-whole", value: true, strength: "photo", from: "photo:1", decibans: 0, staff: "", client: "" };
    const letter = (action: (typeof losses)[number]["action"], findings: readonly WeighedFinding[]) => {
      const input = inputOf({ sketch: { fibres: { wool: 0.9 }, mechanisms: { "dye-bleed": 0.9 }, rest: { beyondRepair: 0.9, money, advice: { action, why: "", referTo: null, losses: [...losses] } } } });
      return composeDraft({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, assessment: { ...rug.assessment, findings: [...rug.assessment.findings, ...findings] } })) }).text;
    };
    expect(letter("advise-cut-down", [])).toMatch(/cut away/);
    expect(letter("advise-cut-down", [keptWhole])).not.toMatch(/cut (?:away|down)|cutting/);
    expect(letter("advise-cut-down", [keptWhole])).toBe(letter("advise-claim-or-replacement", [keptWhole]));
  });
  it("would rather not take the money only from likely on (.66)", () => {
    const at = (beyondRepair: number) => composeDraft(worthless({ beyondRepair })).text;
    expect(at(0.65)).not.toMatch(/rather not take your money/);
    expect(at(0.66)).toMatch(/rather not take your money/);
  });
  it("names the dye test beside a cleaning with water where a dye may have run, whoever sees to it first, and nowhere else", () => {
    const about = (mechanism: "dye-bleed" | "food-old", methods: typeof WOOL_METHODS, answers: RugAnswers = {}) =>
      composeDraft(inputOf({ sketch: { fibres: { wool: 0.9 }, methods, mechanisms: { [mechanism]: 0.9 } }, answers })).text;
    const dryOnly = { ...WOOL_METHODS, "immersion-wash": "ruled-out", "wet-hand-clean": "ruled-out" } as const;
    for (const answers of [{}, { incidents: ["flood"] }, { age: "antique" }] satisfies RugAnswers[])
      expect(about("dye-bleed", WOOL_METHODS, answers)).toMatch(/test in a hidden corner\. Where a dye has run, that is a dye test of each colour:[^.]*no water/);
    for (const text of [about("dye-bleed", dryOnly), about("food-old", WOOL_METHODS)]) expect(text).not.toMatch(/dye test/);
  });
  describe("whatever is told of the years", () => {
    const life = (mechanisms: Partial<Record<"mould" | "insects", number>>, { low, high, words }: { low: number; high: number; words: string }) => {
      const evidence = [{ what: "touch", value: "springy", strength: "told" as const }];
      const { text } = composeDraft(inputOf({ sketch: { fibres: { wool: 0.5, cotton: 0.3 }, words, evidence, mechanisms, rest: { lifeYears: range(low, high / 2, high) } } }));
      return text.split("\n\n").find((block) => /\byears\b/.test(block)) ?? "";
    };
    const YEARS = [[2.5, 12, "likely"], [3, 30, "likely"], [0.5, 8, "likely"], [2.5, 12, "about as likely as not"]].map(([low, high, words]) => ({ low, high, words }) as { low: number; high: number; words: string });
    it.each([
      [{ mould: 0.9 }, /\bonce the mould is treated and the rug is dry\b(?! and)/i], [{ insects: 0.9 }, /\bonce no insects live in it\b/i],
      [{ mould: 0.9, insects: 0.9 }, /\bonce the mould is treated, the rug is dry and no insects live in it\b/i],
    ] as const)("gives a life to a rug with %o only for when it is rid of that", (mechanisms, once) => {
      for (const years of YEARS) {
        expect(life(mechanisms, years)).toMatch(once);
        expect(life(mechanisms, years)).toMatch(/\d½?\u00a0years/);
      }
    });
    it("makes it wait for nothing that is not likely enough to speak of (.33)", () => {
      for (const years of YEARS) {
        expect(life({ mould: 0.32, insects: 0.32 }, years)).not.toMatch(/mould|insects|only once/i);
        expect(life({ insects: 0.33 }, years)).toMatch(/once no insects live in it/);
      }
    });
  });
  it("leaves out no paragraph for the sake of a tone", () => {
    fc.assert(fc.property(anyInput, fc.constantFrom("warm" as const, "brief" as const), (input, tone) => {
      const left = (spoken: Tone) => composeDraft({ ...input, workshop: { ...input.workshop, tone: spoken } }).leftOut.length;
      expect(left(tone)).toBeLessThanOrEqual(left("plain"));
    }));
  });
  it("asks nobody without an e-mail address to answer the letter", () => {
    const { client, ...rest } = inputOf(CASES["wool with an old coffee stain"]!);
    const to = (email: string | null) => composeDraft({ ...rest, client: { ...client, email } }).text;
    expect(to("ana@mail.example")).toMatch(/ring us on 01632 960001 or answer this letter/);
    expect(to(null)).toContain("ring us on 01632 960001");
    expect(to(null)).not.toContain("answer this letter");
  });
  it("names a label once where it was read in a photo and typed too", () => {
    const label = (strength: "label-photo" | "label-typed") => ({ what: "label", value: { says: "viscose", text: "100% VISCOSE", pile: "viscose" }, strength });
    expect(composeDraft(inputOf({ sketch: { fibres: { viscose: 0.9 }, evidence: [label("label-photo"), label("label-typed"), { what: "touch", value: "cool", strength: "told" }] } })).text).toMatch(/Going by the label in your photo \(“100% VISCOSE”\) and what you told us/);
  });
  it("explains art silk where the label has it or the seller said it, whichever regenerated fibre leads, and not of a rug that is likely silk", () => {
    const label = (says: string): NonNullable<Sketch["evidence"]> => [{ what: "label", value: { says, text: "ART SILK PILE", pile: "" }, strength: "label-photo" }];
    const letter = (fibres: Sketch["fibres"], says: string, soldAs: string) => composeDraft(inputOf({ sketch: { fibres, evidence: label(says) }, answers: { sellerSaid: soldAs } as RugAnswers })).text;
    expect(letter({ viscose: 0.9 }, "art-silk", "silk")).toMatch(/“ART SILK PILE”[^]*Words like “art silk” on a label name no fibre\. Mostly they stand for viscose/);
    expect(letter({ lyocell: 0.9 }, "lyocell", "art-silk")).toMatch(/“Art silk”, like bamboo or banana silk, is a trade name for fibres made from wood or plant pulp/);
    expect(letter({ silk: 0.9 }, "art-silk", "silk")).not.toMatch(/name no fibre/);
    expect(letter({ viscose: 0.9 }, "viscose", "silk")).not.toMatch(/name no fibre/);
  });
  it("sets what it was sold as against what it may be, also where two fibres are open", () => {
    const about = (fibres: Sketch["fibres"], sellerSaid: RugAnswers["sellerSaid"]) =>
      composeDraft(inputOf({ sketch: { fibres, words: "about as likely as not", evidence: [{ what: "touch", value: "cool-slippery", strength: "told" }] }, answers: { sellerSaid } })).text;
    expect(about({ viscose: 0.5, polyester: 0.4 }, "silk")).toMatch(/cannot tell yet what your grey rug is made of: it was sold as silk, but viscose and polyester both fit better\./);
    for (const fibres of [{ viscose: 0.5, silk: 0.4 }, { silk: 0.5, viscose: 0.4 }]) expect(about(fibres, "silk")).toMatch(/cannot tell yet whether your grey rug is silk, as it was sold: \w+ and \w+ both fit\./);
    expect(about({ viscose: 0.5, polyester: 0.4 }, "viscose")).not.toMatch(/sold/);
  });
  it("tells nobody who was given or left a rug that it was sold to them", () => {
    const about = (fibres: Sketch["fibres"], words: string, boughtWhere: RugAnswers["boughtWhere"], isTrade = false) =>
      composeDraft(inputOf({ sketch: { fibres, words, evidence: [{ what: "touch", value: "cool-slippery", strength: "told" }] }, answers: { sellerSaid: "wool-and-silk", boughtWhere }, client: { name: "Ana Example", isTrade } })).text;
    expect(about({ wool: 0.7 }, "likely", "online")).toContain("is likely wool, although it was sold to you as wool and silk.");
    for (const isTrade of [false, true]) expect(about({ wool: 0.7 }, "likely", "gift", isTrade)).toContain("is likely wool, although it was described as wool and silk.");
    for (const fibres of [{ viscose: 0.5, polyester: 0.4 }, { viscose: 0.5, silk: 0.4 }]) {
      const text = about(fibres, "about as likely as not", "gift");
      expect(text).toMatch(/it was described as wool and silk, but|is wool and silk, as it was described:/);
      expect(text).not.toMatch(/\bsold\b/);
    }
  });
  it("says whom to call first where something told can hurt by itself, last where there is water or nobody knows what happened, and nobody where nothing told can", () => {
    const aid = (answers: RugAnswers, wetByWords: "whole" | null = null) => {
      const input = inputOf({ sketch: { fibres: { wool: 0.9 }, rest: { firstAid: wetByWords ? null : FIRST_AID_SAID } }, answers });
      return composeDraft({ ...input, assessments: [{ ...input.assessments[0]!, wetByWords }] }).text.split("\n").filter((line) => line.startsWith("– "));
    };
    const leads = (lines: string[]) => lines.findIndex((line) => line.includes("call 112 now"));
    for (const answers of [{ liquid: "cleaner" }, { liquid: "ink" }, { treatments: ["blotted", "bleach"] }, { treatments: ["household-cleaner"] }] satisfies RugAnswers[]) expect(leads(aid(answers))).toBe(0);
    for (const answers of [{ incidents: ["water"], liquid: "water" }, { incidents: ["washed-professional"] }, {}] satisfies RugAnswers[]) {
      const lines = aid(answers);
      expect(leads(lines)).toBe(lines.length - 1);
      expect(lines[0]).toMatch(/^– A wet plug, socket or heated floor/);
    }
    for (const answers of [{ liquid: "wine", treatments: ["blotted"] }, { incidents: ["pet-urine"] }] satisfies RugAnswers[]) expect(leads(aid(answers))).toBe(-1);
    expect(leads(aid({}, "whole"))).toBe(0);
  });
  it("has nobody press a cloth on what may be mould and everybody else where it may be touched", () => {
    const aid = (answers: RugAnswers) => composeDraft(inputOf({ sketch: { fibres: { wool: 0.9 }, rest: { firstAid: FIRST_AID_SAID } }, answers })).text;
    expect(aid({ incidents: ["water"], changes: ["spots"] })).toMatch(/mould: do not touch it/);
    expect(aid({ incidents: ["water"], changes: ["spots"] })).not.toMatch(/white cloth straight down/);
    for (const answers of [{ incidents: ["water"] }, { liquid: "wine" }, {}] satisfies RugAnswers[]) expect(aid(answers)).toMatch(/white cloth straight down, and do not rub/);
  });
  it("has everybody leave the room, before all else, where bleach and what it can give off gas with were told together, and nobody press a cloth", () => {
    const draft = (answers: RugAnswers, more: readonly RugAnswers[] = []) => {
      const input = inputOf({ sketch: { fibres: { wool: 0.9 }, rest: { firstAid: FIRST_AID_SAID } }, answers, enquiry: { wetNow: "damp" } });
      return composeDraft({ ...input, assessments: [...input.assessments, ...more.map((told) => ({ ...input.assessments[0]!, answers: told }))] }).text;
    };
    const vinegar: RugAnswers = { liquid: "wine", since: "day", treatments: ["bleach", "vinegar-soda"] };
    for (const answers of [vinegar, { incidents: ["pet-urine"], since: "week", treatments: ["bleach"] }, { ...vinegar, changes: ["spots"] }] satisfies RugAnswers[]) {
      const text = draft(answers);
      const lines = text.split("\n").filter((line) => line.startsWith("– "));
      expect(lines[0]).toBe(`– ${GAS}`);
      expect(lines.filter((line) => line.includes("call 112 now"))).toHaveLength(1);
      expect(text).not.toMatch(/white cloth|Give it air/);
      expect(text.split(/\s+/).length).toBeLessThanOrEqual(350);
    }
    expect(draft({ ...vinegar, incidents: ["flood"] })).toContain(`– ${GAS}`);
    expect(draft({ liquid: "wine" }, [vinegar])).toContain(`– ${GAS}`);
    for (const answers of [{ liquid: "wine", since: "longer", treatments: ["bleach"] }, { liquid: "wine", since: "day", treatments: ["vinegar-soda"] }] satisfies RugAnswers[]) {
      expect(draft(answers)).not.toContain("harmful gas");
      expect(draft(answers)).toMatch(/white cloth straight down.*\n.*Give it air/);
    }
  });
  it("throws where there is no rug", () => {
    expect(() => composeDraft({ ...inputOf(plainRug), assessments: [] })).toThrow(/at least one assessment/);
  });
});
