import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changesBetween, isOpen, openIn, takenIn, wasIn, type Told } from "../../../lib/reply/changes";
import { composeDraft, type ComposedDraft } from "../../../lib/reply/draft";
import type { Came, RugForDraft } from "../../../lib/reply/facts";
import { composeFollowing, composeWholeAgain } from "../../../lib/reply/following";
import { SHIPPED, shippedParagraph, type LibraryRow } from "../../../lib/reply/library";
import { ANSWER_HERE, openPlaces, openPlacesSay } from "../../../lib/reply/open-places";
import { partsOf, withoutDash } from "../../../lib/reply/parts";
import { piecesOf } from "../../../lib/reply/pieces";
import { TOPICS } from "../../../lib/reply/moved";
import { FOLLOWING } from "../../../lib/reply/paragraphs/following";
import { checkLetter, checkSentences, knownOf, WORDS_AND_PHOTOS } from "../../../lib/reply/promises/check";
import { anyInput } from "./any-input";
import { CASES } from "./cases";
import type { RugAnswers } from "../../../lib/trade/questions";
import type { Assessment, Range } from "../../../lib/triage/assessment";
import { findingsFromAnswers } from "../../../lib/triage/findings-from-answers";
import { readTold } from "../../../lib/triage/told";
import { needsFirstAid } from "../../../lib/triage/urgency";
import { wordsIn } from "../../../lib/words/words";
import { action, FIRST_AID_SAID, inputOf, range, worthless, type Sketch } from "./make";

const MESSAGE: Came = { message: true, answers: false, photos: 0, tested: false };
const toldBy = ({ text, paragraphs, leftOut }: ComposedDraft): Told => ({ text, paragraphs: [...paragraphs, ...leftOut] });
const WINE = CASES["wool with an old coffee stain"]!;
const first = inputOf(WINE);
const priced = (low: number, high: number) => inputOf({ ...WINE, sketch: { ...WINE.sketch, rest: { ...WINE.sketch.rest, money: { currency: "GBP", clean: range(low, (low + high) / 2, high), cutDown: null, replace: null, valueToday: null } } } });
const SHORT = `Dear Ana Example,\n\nThank you for your message.\n\n${ANSWER_HERE}\n\nWith kind regards,\nMira Quill\nLantern Yard Rug Workshop`;

describe("composeFollowing", () => {
  it("greets, thanks, leaves the answer open and closes where nothing changed", () => {
    expect(composeFollowing(first, { told: toldBy(composeDraft(first)), came: MESSAGE }).text).toBe(SHORT);
  });

  it("names what came, in one sentence, and thanks for nothing where nothing came", () => {
    const thanks = (came: Partial<Came>) => composeFollowing(first, { told: toldBy(composeDraft(first)), came: { ...MESSAGE, message: false, ...came } }).text.split("\n\n")[1];
    expect(thanks({ photos: 1 })).toBe("Thank you for the new photo.");
    expect(thanks({ message: true, times: 3 })).toBe("Thank you for your messages.");
    expect(thanks({ message: true, answers: true, photos: 2 })).toBe("Thank you for your message, your answers and the new photos.");
    expect(thanks({})).toMatch(/^With kind regards,/);
  });

  it("leaves an answer open where they wrote, in whichever way it is known, and not for answers, photos or nothing at all; the whole letter does for whatever they sent", () => {
    const since = (came: Partial<Came>) => ({ told: toldBy(composeDraft(first)), came: { ...MESSAGE, message: false, ...came } });
    const open = (came: Partial<Came>) => [composeFollowing, composeWholeAgain].map((compose) => openPlaces(compose(first, since(came)).text).length);
    expect([open({ message: true }), open({ words: ["Do you collect?"] })]).toEqual([[1, 1], [1, 1]]);
    expect([open({ answers: true }), open({ photos: 1 })]).toEqual([[0, 1], [0, 1]]);
    expect([open({}), open({ words: [], tested: true })]).toEqual([[0, 0], [0, 0]]);
  });

  it("says a price that moved as a change, and nothing else again", () => {
    const { text, paragraphs } = composeFollowing(priced(65, 80), { told: toldBy(composeDraft(first)), came: MESSAGE });
    expect(text.split("\n\n").slice(1, -1)).toEqual([
      "Thank you for your message.",
      ANSWER_HERE,
      "With what you have sent us since, our answer has changed. This replaces what we wrote before about what cleaning costs.",
      "Cleaning would cost about £65 to £80. The price is an estimate; we agree price and limits with you before we begin.",
    ]);
    expect(paragraphs.map((p) => p.id)).toEqual(["greeting", "thanks", "since-came", "since-changed", "price-clean", "signature"]);
  });

  it("says a changed sentence of the answer again with its limits, and nothing else word for word that stood in the letter before", () => {
    const after = inputOf({ ...WINE, sketch: { ...WINE.sketch, words: "likely" } });
    const { text } = composeFollowing(after, { told: toldBy(composeDraft(first)), came: { ...MESSAGE, tested: true } });
    expect(text).toContain("Since our last letter there is a test to go by, and our answer has changed. This replaces what we wrote before about what it is made of.\n\nGoing by the label as you typed it (“Wool”) and what you told us, your grey rug is likely wool.");
    expect(text).toMatch(/likely wool\. [^]*only a test of the fibre would settle it/);
    expect(text).not.toMatch(/15–75|hidden corner|£150/);
  });

  it("takes a paragraph that was only worded anew, with the same facts, for no news", () => {
    const { text, paragraphs, leftOut } = composeDraft(first);
    const elsewise = (p: (typeof paragraphs)[number]) => ({ ...p, version: 1, text: `Earlier: ${p.text}`, said: `Earlier: ${p.said}` });
    const told = { text: text.toUpperCase(), paragraphs: [...paragraphs, ...leftOut].map(elsewise) };
    expect(composeFollowing(first, { told, came: MESSAGE }).text).toBe(SHORT);
  });

  it("knows by its words what a letter said of which no more was kept", () => {
    const { text, paragraphs } = composeDraft(first);
    const told = { text, paragraphs: paragraphs.map((p) => ({ ...p, said: null })) };
    expect(composeFollowing(first, { told, came: MESSAGE }).text).toBe(SHORT);
  });

  describe("after a letter that left something out for length", () => {
    const LONG: LibraryRow = { ...(shippedParagraph("greeting") as LibraryRow), id: "own-long", place: "notes", when: {}, text: "A word. ".repeat(400).trim(), from: "workshop" };
    const long = composeDraft({ ...first, library: [...SHIPPED, LONG] });
    const unpriced = inputOf({ ...WINE, sketch: { ...WINE.sketch, rest: { ...WINE.sketch.rest, lifeYears: null, money: null } } });
    const chain = (...inputs: (typeof first)[]) => inputs.reduce<ComposedDraft>((last, input) => composeFollowing(input, { told: toldBy(last), came: MESSAGE }), long).text;
    const LIFE = /serve between 4 and 16 years more/, PRICE = /£150 to £240/;

    it("takes back nothing of it, and does not say that it replaces any of it", () => {
      expect([LIFE, PRICE].some((what) => what.test(long.text))).toBe(false);
      for (const after of [unpriced, priced(65, 80)]) expect(chain(after)).not.toMatch(/no longer holds|replaces|has changed/);
    });
    it("says it as something not said yet, and once: neither as a change nor as news", () => {
      const text = chain(first).replaceAll("\u00a0", " ");
      expect([LIFE, PRICE].every((what) => what.test(text))).toBe(true);
      expect(text).not.toMatch(/no longer holds|replaces|has changed|can say more|Going by/);
      expect(chain(first, first)).toBe(SHORT);
    });
    it("takes it back once a letter has said it, and never what stood in the first one and in none since", () => {
      expect(chain(first, unpriced)).toMatch(/What we wrote before about how long it may serve and what cleaning costs no longer holds\./);
      expect(chain(first, first, unpriced)).toMatch(/What we wrote before about how long it may serve and what cleaning costs no longer holds\./);
      expect(chain(first, first, first)).toBe(SHORT);
    });
    it("still leaves it out where there is no room again, and says it in the one after", () => {
      const cramped = { ...first, library: [...SHIPPED, { ...LONG, id: "own-longer", text: "Another word. ".repeat(400).trim() }] };
      expect(LIFE.test(chain(cramped).replaceAll("\u00a0", " "))).toBe(false);
      expect(LIFE.test(chain(cramped, first).replaceAll("\u00a0", " "))).toBe(true);
    });
    it("knows it as said in the whole letter once more too, where that had no room", () => {
      const again = composeWholeAgain({ ...first, library: [...SHIPPED, LONG] }, { told: toldBy(composeDraft(first)), came: MESSAGE });
      expect(LIFE.test(again.text.replaceAll("\u00a0", " "))).toBe(false);
      expect(composeFollowing(first, { told: toldBy(again), came: MESSAGE }).text).toBe(SHORT);
    });
  });

  describe("once it was answered that what was wet is dry", () => {
    const spilt = (wetNow: "damp" | "no", since: "hour" | "day" = "day", more: Partial<RugForDraft> = {}, answers: RugAnswers = {}, isLater = true) => {
      const told = (what: string, value: string) => ({ what, value, strength: "told" as const, decibans: 0 });
      const evidence = [...WINE.sketch.evidence ?? [], told("wetNow", wetNow), told("since", since), told("liquid", "water"), ...(answers.incidents ?? []).map((value) => ({ ...told("incidents", value), value: [value] }))];
      const given = { liquid: "water", since, ...answers } satisfies RugAnswers;
      const firstAid = needsFirstAid(readTold(findingsFromAnswers(given, { wetNow })), isLater) ? FIRST_AID_SAID : null;
      const input = inputOf({ ...WINE, sketch: { ...WINE.sketch, evidence, rest: { ...WINE.sketch.rest, firstAid } }, answers: given, enquiry: { wetNow } });
      return { ...input, assessments: input.assessments.map((rug) => ({ ...rug, ...more })) };
    };
    const after = (input: typeof first, before = spilt("damp", input.assessments[0]?.answers.since === "hour" ? "hour" : "day")) => composeFollowing(input, { told: toldBy(composeDraft(before)), came: MESSAGE });
    const AID = /still wet|do this first|put nothing on it/i;

    it("has no first aid for what is wet, says what holds where they wrote so, and passes as it is", () => {
      for (const since of ["hour", "day"] as const) {
        expect(after(spilt("damp", since)).text).toMatch(AID);
        const before = composeDraft(spilt("damp", since)).text;
        const [answered, written] = [after(spilt("no", since)), after(spilt("no", since, { saidOfWater: "dry" }))];
        for (const { text } of [answered, written]) {
          expect(text).not.toMatch(AID);
          expect(checkLetter(text, knownOf(spilt("no", since).assessments), [before])).toEqual([]);
        }
        expect([/You write that it is dry\./.test(answered.text), /You write that it is dry\./.test(written.text)]).toEqual([false, true]);
      }
    });
    it("says before it that they write so, once, while their words alone say that it is dry", () => {
      const written = after(spilt("damp", "day", { saidOfWater: "dry" })).text;
      expect(written.match(/You write that it is dry\./g)).toHaveLength(1);
      expect(written).toMatch(/You write that it is dry\. If any of it is still wet, underneath too, hours count/);
      expect(after(spilt("damp", "day")).text).not.toMatch(/You write/);
      expect(checkLetter(written, knownOf(spilt("damp").assessments), [composeDraft(spilt("damp")).text])).toEqual([]);
    });
    it("has it again where their newest words are of water", () => expect(after(spilt("no", "day", { saidOfWater: "wet" })).text).toMatch(/do this first/));
    it("still lets nobody touch what flood water was in, and still warns of what may give off gas", () => {
      const flood = { incidents: ["flood"] } satisfies RugAnswers;
      expect(after(spilt("no", "day", {}, flood), spilt("damp", "day", {}, flood)).text).toMatch(/nobody touch/);
      const gas = { treatments: ["bleach", "vinegar-soda"] } satisfies RugAnswers;
      expect(after(spilt("no", "day", {}, gas)).text).toMatch(/give off a harmful gas/);
    });
    it("holds in a first letter too, but for something of the last hour where both were told at once, which may be wet all the same", () => {
      const atOnce = spilt("no", "hour", {}, {}, false);
      expect(composeDraft(spilt("no")).text).not.toMatch(AID);
      expect(composeDraft(atOnce).text).toMatch(AID);
      expect(checkLetter(composeDraft(spilt("no")).text, knownOf(spilt("no").assessments))).toEqual([]);
      expect(checkLetter(composeDraft(spilt("no")).text, knownOf(atOnce.assessments))).toMatchObject([{ rule: "left-out" }]);
    });
  });

  describe("where the judgement moved", () => {
    const wine = (rest: Partial<Assessment>, sketch: Partial<Sketch> = {}) => inputOf({ ...WINE, sketch: { ...WINE.sketch, ...sketch, rest: { ...WINE.sketch.rest, ...rest } } });
    const letter = (before: typeof first, after: typeof first) => composeFollowing(after, { told: toldBy(composeDraft(before)), came: MESSAGE }).text.replaceAll("\u00a0", " ");
    /** Everything before the first sentence that judges. */
    const head = (text: string) => text.split(/Going by|We would expect careful cleaning|With kind regards/)[0] ?? "";

    it("says in its first lines that it replaces what we wrote of the fibre, and what follows from that", () => {
      const text = letter(first, wine({}, { fibres: { viscose: 0.9 } }));
      expect(head(text)).toMatch(/our answer has changed\. This replaces what we wrote before about what it is made of/);
      expect(text).toMatch(/very likely viscose/);
    });
    describe("where they write of water that nobody has asked about yet", () => {
      const wetAgain = (input: typeof first) => ({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, wetByWords: "whole" as const })) });
      it("says that what was said of a dry rug waits, and neither that the answer changed nor that it no longer holds", () => {
        const { text } = composeFollowing(wetAgain(first), { told: toldBy(composeDraft(first)), came: MESSAGE });
        expect(text).toContain("What we wrote before about how far it may come back and how long it may serve was about a dry rug; should it be wet again, we judge it anew once we know.");
        expect(text).not.toMatch(/answer has changed|no longer holds|replaces what|Going by/);
      });
      it("says in a first letter nothing of it, and again nothing where nothing was judged before", () => {
        const asked = composeDraft(wetAgain(first));
        expect(asked.text).not.toContain("about a dry rug");
        expect(composeFollowing(wetAgain(first), { told: toldBy(asked), came: MESSAGE }).text).not.toContain("about a dry rug");
      });
      it("claims no more to say where it says that we cannot tell, or asks, advises and limits alone", () => {
        const evidence = [{ what: "photo", value: ["whole"], strength: "told" as const, decibans: 0 }];
        const unknown = (more: Partial<Sketch> = {}, changes: RugAnswers["changes"] = []) => inputOf({ sketch: { fibres: { wool: 0.26, viscose: 0.2 }, words: "unlikely", ...more }, answers: { changes } });
        const told = toldBy(composeDraft(unknown()));
        const asking = composeFollowing(wetAgain(unknown()), { told, came: MESSAGE });
        expect(asking.text).toMatch(/made of, and what can be done for it, we cannot tell yet/);
        const smelling = composeFollowing(unknown({ evidence }, ["smell"]), { told, came: MESSAGE });
        expect(smelling.paragraphs.map((p) => p.place)).toContain("special");
        for (const { text } of [asking, smelling]) expect(text).not.toMatch(/can say more|has changed/);
      });
      it("still says that the answer changed where the fibre moved too", () => {
        const after = wetAgain(inputOf({ ...WINE, sketch: { ...WINE.sketch, fibres: { viscose: 0.9 } } }));
        const { text } = composeFollowing(after, { told: toldBy(composeDraft(first)), came: MESSAGE });
        expect(text).toMatch(/our answer has changed\. This replaces what we wrote before about what it is made of[^]*was about a dry rug/);
      });
    });
    it("lists each paragraph once, as standing or as left out", () => {
      const { paragraphs, leftOut } = composeFollowing(wine({ lifeYears: range(2, 4, 8) }), { told: toldBy(composeDraft(first)), came: MESSAGE });
      const ids = [...paragraphs, ...leftOut].map((p) => p.id);
      expect(ids).toHaveLength(new Set(ids).size);
    });
    it("says so of the range, the years and the price that moved, and of nothing else", () => {
      expect(head(letter(first, wine({ improvement: range(40, 60, 80) })))).toMatch(/This replaces what we wrote before about how far it may come back\./);
      expect(head(letter(first, wine({ lifeYears: range(2, 4, 8) })))).toMatch(/This replaces what we wrote before about how long it may serve\./);
      expect(head(letter(first, wine({ improvement: range(40, 60, 80), lifeYears: range(2, 4, 8) })))).toMatch(/about how far it may come back and how long it may serve\./);
    });
    it("takes back what no longer holds and has nothing in its place, and says nothing again", () => {
      const text = letter(first, wine({ lifeYears: null }));
      expect(head(text)).toMatch(/What we wrote before about how long it may serve no longer holds\./);
      expect(head(text)).not.toMatch(/This replaces/);
      expect(text).not.toMatch(/Going by/);
    });
    it("takes back that it is not worth its cost, or says it as something new", () => {
      const bad = wine({ beyondRepair: 0.8 });
      expect(head(letter(bad, first))).toMatch(/What we wrote before about whether it is worth its cost no longer holds\.|This replaces what we wrote before about [^.]*whether it is worth its cost/);
      expect(head(letter(first, bad))).not.toMatch(/about [^.]*whether it is worth/);
    });
    it("takes the same judgement on more evidence for no change of it", () => {
      const seen = [...WINE.sketch.evidence ?? [], { what: "photo", value: ["whole"], strength: "told" as const, decibans: 0 }];
      expect(letter(first, wine({}, { evidence: seen }))).toBe(SHORT);
      const tested = letter(first, wine({}, { evidence: [...seen, { what: "bench", value: "wool", strength: "bench" }] }));
      expect(tested).toMatch(/Since our last letter we can say more\.[^]*Going by the test in our workshop/);
      expect(tested).not.toMatch(/replaces|no longer holds|has changed/);
    });
    it("takes back nothing of a letter that said it could not tell", () => {
      const knewNothing = inputOf({ sketch: { fibres: { wool: 0.26, viscose: 0.2 }, words: "unlikely", methods: WINE.sketch.methods ?? {}, rest: { improvement: range(3, 40, 94), lifeYears: range(1, 5, 28), advice: { action: "ask-for-more", why: "", referTo: null, losses: [] } } } });
      const text = letter(knewNothing, first);
      expect(head(text)).not.toMatch(/what it is made of|how far it may come back|how long it may serve/);
      expect(text).toMatch(/very likely wool[^]*15–75 %[^]*between 4 and 16 years/);
    });
    it("names the three first subjects of many, and what follows from them", () => {
      const text = letter(first, wine({ improvement: range(0, 5, 12), beyondRepair: 0.8, lifeYears: range(1, 2, 3) }, { fibres: { viscose: 0.9 }, mechanisms: { "pile-distortion": 0.9 } }));
      expect(head(text)).toMatch(/This replaces what we wrote before about what it is made of, how far it may come back, how long it may serve and what follows from that\./);
    });
    it("keeps in one paragraph what belongs in one, where something between was told already", () => {
      const even = (rest: Partial<Assessment>) => wine({ beyondRepair: 0.5, ...rest });
      const text = letter(even({}), even({ improvement: range(40, 60, 79) }));
      expect(text).not.toMatch(/may not be worth/);
      expect(text).toMatch(/\(40–79 %\) of the mark\. Labels can be wrong/);
    });
    it.each(TOPICS.map(({ id }) => wordsIn("en-GB").say(`topic.${id}`, { n: 1, which: "some", they: "rug 2", them: "rug 2" })))("promises nothing by naming %s", (topic) => {
      for (const { text: sentence } of FOLLOWING) expect(checkSentences(sentence.replace(/\{(?:changed|gone)\}/, topic), WORDS_AND_PHOTOS)).toEqual([]);
    });
    it("says what could be done instead as a matter of its own", () => {
      const cut = (low: number) => wine({ advice: { action: "advise-cut-down", why: "", referTo: null, losses: [] }, money: { currency: "GBP", clean: null, cutDown: range(low, 250, 300), replace: null, valueToday: null } });
      expect(head(letter(cut(200), cut(240)))).toMatch(/This replaces what we wrote before about what could be done instead of cleaning\./);
    });
    it("takes a proposal that a letter made further down before for no change", () => {
      const cut = wine({ advice: { action: "advise-cut-down", why: "", referTo: null, losses: [] } });
      const { text, paragraphs } = toldBy(composeDraft(cut));
      const told = { text, paragraphs: paragraphs.map((p) => (p.place === "cut-down" ? { ...p, place: "repair" as const } : p)) };
      expect(composeFollowing(cut, { told, came: MESSAGE }).text).toBe(SHORT);
    });
    it("says that there is more to say, and takes nothing back, where something only came to it", () => {
      const text = letter(wine({ lifeYears: null }), first);
      expect(head(text)).toMatch(/Since our last letter we can say more\./);
      expect(text).not.toMatch(/replaces|no longer holds|has changed/);
      expect(text).toMatch(/serve between 4 and 16 years more/);
    });
    it("says again all of what it replaces, over 500 pairs, before anything it judges", () => {
      fc.assert(fc.property(anyInput, anyInput, (a, b) => {
        const before = composeDraft({ ...b, assessments: a.assessments.slice(0, b.assessments.length) });
        const { text, paragraphs } = composeFollowing(b, { told: toldBy(before), came: MESSAGE });
        const replaced = /This replaces what we wrote before about ([^.]*)\./.exec(text);
        const judges = paragraphs.filter((p) => p.rug !== null && p.place !== "heading" && p.place !== "asks" && p.place !== "own-aid").flatMap((p) => partsOf(p.here ?? p.said ?? "")).filter((p) => !paragraphs.some((aid) => aid.place === "first-aid" && aid.said?.includes(p.text))).map((p) => text.lastIndexOf(withoutDash(p.text)));
        if (replaced) expect(replaced.index).toBeLessThan(Math.min(...judges));
        const stands = (topic: string, places: readonly string[]) => { if (replaced?.[1]?.includes(topic)) expect(paragraphs.some((p) => places.includes(p.place))).toBe(true); };
        stands("what it is made of", ["fibre"]);
        stands("how far it may come back", ["outlook"]);
        stands("how long it may serve", ["life"]);
        if (replaced?.[1]?.includes("what cleaning costs")) expect(paragraphs.some((p) => p.text.includes("{clean}"))).toBe(true);
        const tellsNothing = (id: string) => /^fibre-(?:said-wet|unknown)/.test(id);
        const hasMoved = (n: (typeof paragraphs)[number]) => before.paragraphs.some((was) => was.place === "fibre" && was.rug === n.rug && was.said !== n.said && !(tellsNothing(was.id) && tellsNothing(n.id)));
        if (paragraphs.some((p) => p.place === "fibre" && hasMoved(p)))
          expect(text).toMatch(/our answer has changed|can say more/);
      }), { numRuns: 500 });
    }, 240_000);
  });

  it("writes, over 500 pairs of assessments, one open place, the same letter again, and never a judgement without its limits", () => {
    fc.assert(fc.property(anyInput, anyInput, (a, b) => {
      const before = composeDraft({ ...b, assessments: a.assessments.slice(0, b.assessments.length) });
      const since = { told: toldBy(before), came: MESSAGE };
      const letter = composeFollowing(b, since);
      expect(openPlaces(letter.text)).toEqual([ANSWER_HERE]);
      expect(composeFollowing(b, since)).toEqual(letter);
      expect(checkLetter(letter.text, knownOf(b.assessments), [before.text])).toEqual([]);
      for (const { text } of [composeFollowing(b, { told: toldBy(composeDraft(b)), came: MESSAGE })]) expect(text).not.toMatch(/our answer has changed|can say more|replaces|no longer holds|Going by/);
    }), { numRuns: 500 });
  }, 240_000);
});

describe("what a following letter takes back of a price", () => {
  const rug = (id: "quote-with-limits" | "advise-claim-or-replacement", rest: Partial<Assessment> = {}) => worthless({ advice: action(id), beyondRepair: 0.5, ...rest }, "food-old");
  const costing = (clean: Range | null) => ({ money: { currency: "GBP" as const, clean, cutDown: null, replace: null, valueToday: range(80, 150, 220) } });
  const next = (before: typeof first, after: typeof first) => composeFollowing(after, { told: toldBy(composeDraft(before)), came: { ...MESSAGE, answers: true } }).text;
  const COSTS = /(?:no longer holds|replaces)/;
  const since = (text: string) => text.split("\n\n").filter((block) => COSTS.test(block) && block.includes("what cleaning costs"));

  it("is nothing where it is the same and its paragraph alone left", () => {
    expect(composeDraft(rug("quote-with-limits")).text).toContain("£150 to £250");
    expect(composeDraft(rug("advise-claim-or-replacement")).paragraphs.map((p) => p.place)).not.toContain("price");
    expect(since(next(rug("quote-with-limits"), rug("advise-claim-or-replacement")))).toEqual([]);
    const beyond = { by: "Ivo Castellane", on: "24 November 2026", isBeyondRepair: true };
    expect(since(next(rug("quote-with-limits"), { ...rug("quote-with-limits"), assessments: rug("quote-with-limits").assessments.map((r) => ({ ...r, inspection: beyond })) }))).toEqual([]);
  });
  it("is replaced where another sentence tells another one, though no more of its worth has changed", () => {
    const text = next(rug("quote-with-limits"), rug("advise-claim-or-replacement", costing(range(300, 400, 500))));
    expect(since(text)).toEqual([expect.stringMatching(/replaces what we wrote before about [^.]*what cleaning costs/)]);
    expect(text).toContain("£300 to £500");
  });
  it("is all of it where it is not known any more, or a flood comes first", () => {
    expect(since(next(rug("quote-with-limits"), rug("advise-claim-or-replacement", costing(null))))).toEqual([expect.stringMatching(/what cleaning costs no longer holds/)]);
    const flooded = { ...rug("quote-with-limits"), assessments: rug("quote-with-limits").assessments.map((r) => ({ ...r, answers: { incidents: ["flood" as const] } })) };
    expect(since(next(rug("quote-with-limits"), flooded))).toEqual([expect.stringMatching(/what cleaning costs no longer holds/)]);
  });
});

describe("what leans on the fibre in a following letter", () => {
  const open = (rest: Partial<Assessment>, more: Sketch["evidence"] = []) => inputOf({
    sketch: { fibres: { viscose: 0.5, wool: 0.4 }, words: "about as likely as not", evidence: [{ what: "touch", value: "cool-slippery", strength: "told" }, ...more], mechanisms: { "food-old": 0.8 }, rest: { improvement: range(20, 40, 60), ...rest } },
    answers: { sellerSaid: "silk" },
  });
  const next = (after: typeof first, told: Told) => composeFollowing(after, { told, came: MESSAGE });

  it("stands beside it: “until we know which” where only how much comes back moved", () => {
    const { text, paragraphs } = next(open({ improvement: range(5, 20, 40) }), toldBy(composeDraft(open({}))));
    expect(paragraphs.map((p) => p.place)).toEqual(expect.arrayContaining(["fibre", "evidence"]));
    expect(text).toMatch(/what your grey rug is made of[^\n]* Until we know which,|whether your grey rug is silk[^\n]* Until we know which,/);
  });
  it("stands beside it: what was paid, where nothing else is new", () => {
    const price = { what: "price-per-m2", value: { amount: 25, priceTotal: 25, currency: "GBP", year: 2024, place: null }, strength: "told" as const };
    const rug = open({}, [price]);
    const before = toldBy(composeDraft(rug));
    expect(before.paragraphs.map((p) => p.place)).toContain("paid");
    const { paragraphs } = next(rug, { text: "", paragraphs: before.paragraphs.filter((p) => p.place !== "paid") });
    expect(paragraphs.map((p) => p.place)).toEqual(["greeting", "thanks", "since", "fibre", "evidence", "paid", "signature"]);
  });
});

describe("what a following letter says once, or not at all", () => {
  const seen = (input: typeof first, isBeyondRepair: boolean) => ({ ...input, assessments: input.assessments.map((r) => ({ ...r, inspection: { by: "Ivo Castellane", on: "24 November 2026", isBeyondRepair } })) });
  const next = (before: typeof first, after: typeof first) => composeFollowing(after, { told: toldBy(composeDraft(before)), came: { ...MESSAGE, message: false } });

  it("is what cleaning costs: beside a sentence on the worth that tells it, the price keeps its limits", () => {
    const { text, paragraphs } = next(worthless(), seen(worthless(), false));
    expect(text.match(/£150 to £250/g)).toHaveLength(1);
    expect(text).toMatch(/At about £150 to £250, cleaning may still cost more[^]*\sThe price is an estimate; we agree price and limits with you before we begin\./);
    expect(paragraphs.filter((p) => p.place === "price")).toEqual([expect.objectContaining({ said: expect.stringContaining("£150") as string, here: "The price is an estimate; we agree price and limits with you before we begin." })]);
    const dear = { money: { currency: "GBP" as const, clean: range(150, 200, 250), cutDown: null, replace: null, valueToday: range(800, 900, 1000) } };
    expect(next(worthless(dear), seen(worthless(dear), false)).text).toMatch(/Cleaning would cost about £150 to £250\. The price/);
  });
  it("is that no number of years can be given: in place of one that was, and of nothing else nor beyond repair", () => {
    const years = (lifeYears: Range | null) => worthless({ lifeYears, beyondRepair: 0.1, advice: action("quote-with-limits"), money: null });
    const [none, some, wide] = [years(null), years(range(4, 8, 16)), years(range(0.5, 6, 40))];
    const UNTOLD = /How many years it has left we cannot tell/;
    expect(next(none, wide).text).not.toMatch(UNTOLD);
    expect(next(some, wide).text).toMatch(/replaces what we wrote before about how long it may serve[^]*How many years it has left we cannot tell/);
    const beyond = next(some, seen(wide, true)).text;
    expect(beyond).not.toMatch(UNTOLD);
    expect(beyond).toMatch(/how long it may serve[^.]* no longer holds/);
  });
});

describe("openPlaces", () => {
  it("are whatever stands in braces on one line", () => {
    expect(openPlaces("Dear Ana,\n{Your answer} and {telephone}.")).toEqual(["{Your answer}", "{telephone}"]);
    expect(openPlaces("Dear Ana,\n{ not\nclosed } {}")).toEqual([]);
    expect(openPlacesSay("Yes, on Thursday.")).toBeNull();
    expect(openPlacesSay("{a}")).toContain("an open place: {a}.");
    expect(openPlacesSay("{a} {b}")).toContain("2 open places: {a}.");
  });
});

describe("changesBetween", () => {
  const changes = (before: typeof first, after: typeof first) => changesBetween(toldBy(composeDraft(before)), composeDraft(after), piecesOf(after).readsToday);

  it("names what would read otherwise, with its words then and now, and nothing where the assessment is the same", () => {
    expect(changes(first, first)).toEqual([]);
    expect(changes(first, priced(65, 80))).toMatchObject([{
      place: "Price",
      was: "Cleaning would cost about £150 to £240. The price is an estimate; we agree price and limits with you before we begin.",
      now: "Cleaning would cost about £65 to £80. The price is an estimate; we agree price and limits with you before we begin.",
    }]);
  });

  it("says that nothing stood where only a letter before the draft had it, unless the draft was begun from the whole letter", () => {
    const asked = composeFollowing(first, { told: toldBy(composeDraft(first)), came: MESSAGE });
    const now = composeFollowing(priced(65, 80), { told: toldBy(composeDraft(first)), came: MESSAGE });
    const [since, price, ...none] = changesBetween(toldBy(asked), now, piecesOf(priced(65, 80), MESSAGE).readsToday);
    expect(none).toEqual([]);
    expect(since).toMatchObject({ place: "What changed, in a letter that follows", was: null, now: "With what you have sent us since, our answer has changed. This replaces what we wrote before about what cleaning costs." });
    expect(price).toMatchObject({ place: "Price", was: expect.stringContaining("£150") as string, wasOut: true });
    expect(price && wasIn(price, asked.text)).toBeNull();
    expect(price && wasIn(price, composeDraft(first).text)).toContain("£150");
  });
  it("renews what a letter says of the change with what moved, and not for what came alone", () => {
    const told = toldBy(composeDraft(first));
    const began = composeFollowing(priced(65, 80), { told, came: MESSAGE });
    const came = { ...MESSAGE, photos: 1, tested: true };
    expect(changesBetween(toldBy(began), composeFollowing(priced(65, 80), { told, came }), piecesOf(priced(65, 80), came).readsToday)).toEqual([]);
    const back = changesBetween(toldBy(began), composeFollowing(first, { told, came: MESSAGE }), piecesOf(first, MESSAGE).readsToday);
    expect(back[0]).toMatchObject({ was: expect.stringContaining("replaces what we wrote") as string, now: null });
  });
  it("names what would no longer stand, and what would be new", () => {
    const without = inputOf({ ...WINE, sketch: { ...WINE.sketch, rest: { ...WINE.sketch.rest, money: null } } });
    expect(changes(first, without)).toMatchObject([{ place: "Price", now: null }]);
    expect(changes(without, first)).toMatchObject([{ place: "Price", was: null }]);
  });

  it("names a paragraph that the workshop worded anew, put back, or has in another tone; a shipped one of another version is no news", () => {
    const told = (from: "shipped" | "workshop", { version, text }: { version?: number; text?: string }) => {
      const before = toldBy(composeDraft(first));
      const paragraphs = before.paragraphs.map((p) => (p.place === "price" ? { ...p, from, version: version ?? p.version, text: text ?? p.text, said: `Earlier: ${p.said}` } : p));
      return changesBetween({ text: "", paragraphs }, composeDraft(first), piecesOf(first).readsToday).filter((c) => c.place === "Price");
    };
    expect(told("workshop", { version: 1, text: "Earlier: about {clean}." })).toMatchObject([{ was: expect.stringContaining("Earlier: Cleaning") as string, now: expect.stringMatching(/^Cleaning/) as string }]);
    expect(told("shipped", { text: "Earlier: {clean}." })).toHaveLength(1);
    const price = composeDraft(first).paragraphs.find((p) => p.place === "price");
    expect(told("shipped", { version: 0, text: `Earlier: ${price?.text}` })).toEqual([]);
  });

  it("is the same letter as today once every change is taken in, over 500 pairs", () => {
    fc.assert(fc.property(anyInput, anyInput, (a, b) => {
      const n = b.assessments.length;
      if (a.assessments.length < n) return;
      const before = { ...b, assessments: a.assessments.slice(0, n) };
      const all = changes(before, b);
      const text = all.reduce((letter, change) => takenIn(change, letter), composeDraft(before).text);
      expect(all.filter((c) => c.now !== null && !text.includes(c.now))).toEqual([]);
      expect(openIn(all, text)).toEqual([]);
    }), { numRuns: 500 });
  }, 120_000);
});

describe("takenIn", () => {
  const change = { place: "Price", was: "It costs £65 to £310.", now: "It costs £65." };
  it("puts the new words in place of the old ones, and leaves the rest", () => {
    expect(takenIn(change, "Dear Ana,\n\nYes. It costs £65 to £310. Bring it.\n\nMira")).toBe("Dear Ana,\n\nYes. It costs £65. Bring it.\n\nMira");
  });
  it("gives them a block of their own before the last one where the old ones were written otherwise", () => {
    expect(takenIn(change, "Dear Ana,\n\nAbout £300.\n\nMira")).toBe("Dear Ana,\n\nAbout £300.\n\nIt costs £65.\n\nMira");
  });
  it("gives them the place before what stands after them: a block of their own where one begins there, else in the midst of it", () => {
    const placed = { ...change, was: null, before: ["Nothing of the kind.", "Bring it.", "Mira"] };
    expect(takenIn(placed, "Dear Ana,\n\nYes, on Thursday.\n\nBring it. Soon.\n\nMira")).toBe("Dear Ana,\n\nYes, on Thursday.\n\nIt costs £65.\n\nBring it. Soon.\n\nMira");
    expect(takenIn(placed, "Dear Ana,\n\nYes. Bring it.\n\nMira")).toBe("Dear Ana,\n\nYes. It costs £65. Bring it.\n\nMira");
    expect(takenIn({ ...placed, now: "We ask for:\n– a photo" }, "Yes. Bring it.\n\nMira")).toBe("Yes.\n\nWe ask for:\n– a photo\n\nBring it.\n\nMira");
  });
  it("takes old words out where they stand by themselves, not out of new ones that hold them too", () => {
    const [aid, caution] = [{ place: "First aid", was: null, now: "Do not touch it. Leave it." }, { place: "Cautions", was: "Do not touch it.", now: null }];
    const text = "Dear Ana,\n\nDo not touch it. Leave it.\n\nDo not touch it.\n\nMira";
    expect(openIn([aid, caution], text)).toEqual([caution]);
    expect(takenIn(caution, text)).toBe("Dear Ana,\n\nDo not touch it. Leave it.\n\nMira");
    expect(openIn([aid, caution], takenIn(caution, text))).toEqual([]);
  });
  it("takes out what no longer holds, without a gap", () => {
    expect(takenIn({ ...change, now: null }, "Dear Ana,\n\nIt costs £65 to £310.\n\nMira")).toBe("Dear Ana,\n\nMira");
    expect(takenIn({ ...change, now: null }, "Yes. It costs £65 to £310. Bring it.")).toBe("Yes. Bring it.");
  });
  it("settles a change, which is open while the old words stand or the new ones do not", () => {
    expect(isOpen(change, "It costs £65 to £310.")).toBe(true);
    expect(isOpen(change, "About £300.")).toBe(true);
    expect(isOpen(change, "It costs £65.")).toBe(false);
    expect(isOpen({ ...change, now: null }, "About £300.")).toBe(false);
  });
});
