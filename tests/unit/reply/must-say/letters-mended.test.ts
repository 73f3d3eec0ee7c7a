import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../../lib/reply/draft";
import type { RugAnswers } from "../../../../lib/trade/questions";
import { TONE_IDS } from "../../../../lib/trade/tones";
import { action, FIRST_AID_SAID, inputOf, range, worthless, type OneRug } from "../make";
import { letterOf, missing, plainly, said, says, type Told } from "./letter-of";
import { lettersTo } from "./demo-letters";

/** What a letter owes beside its answer. Lists written from the trade and from what was told alone. */
const text = (told: Told) => plainly(letterOf(told).draft.text);
const drawn = (rug: OneRug) => plainly(composeDraft(inputOf(rug)).text);
const WET_WOOL: Told = { answers: { labelText: "wool", incidents: ["spill"], liquid: "wine", since: "hour" }, enquiry: { wetNow: "wet", reason: "just-happened" } };
const ASKS: OneRug = { sketch: { fibres: { wool: 0.5, viscose: 0.4 }, words: "about as likely as not", rest: { advice: action("ask-for-more"), nextQuestions: [{ kind: "photo", id: "label", ask: "", why: "" }] } } };

describe.each(lettersTo("Tobias Ferrant"))("to a cleaner whose customer's rug is damp, $tone", ({ letter }) => {
  const it_ = plainly(letter.draft.text);
  it("names no way to clean it before it is dry and tested", () => {
    expect(said(it_, [says("a method", /nearly dry|dry solvent|little water/i)])).toEqual([]);
    expect(missing(it_, [says("dry and tested first", /\bdry\b[^.]*\btest\w*[^.]*hidden corner/i)])).toEqual([]);
  });
  it("takes back no range that it has given", () => {
    expect(missing(it_, [says("a range", /\d+–\d+ %/)])).toEqual([]);
    expect(said(it_, [says("that there is none", /nobody can say[^.]*how much|how much[^.]*(?:nobody|we) can(?:not)? (?:say|tell)/i)])).toEqual([]);
  });
  it("says what their customer can be told, with its limits", () => {
    expect(missing(it_, [says("what to tell the customer", /tell your customer[^.]*/i), says("that nobody can promise", /(?:nobody|cannot)[^.]*(?:how much|how far)[^.]*(?:comes? back|promise)/i)])).toEqual([]);
  });
});

describe("to a cleaner whose customer's rug may not be washed", () => {
  it.each(["hard-fibre", "bast", "cotton", "viscose"] as const)("speaks of no cleaning at home, of %s", (fibre) => {
    const letter = drawn({ sketch: { fibres: { [fibre]: 0.9 } }, enquiry: { reason: "trade" } });
    expect(missing(letter, [says("not to wet it again", /not wet it again/)])).toEqual([]);
    expect(said(letter, [says("home", /at home/)])).toEqual([]);
  });
});

describe("where latex seems to hold the back", () => {
  const LATEX = [says("that the back is looked at first", /latex[^.]*\.[^.]*weakens[^.]*look at the back before/i)];
  const OWNED: Told["answers"] = { sellerSaid: "wool", incidents: ["spill"], liquid: "coffee-tea", since: "longer" };
  it.each<[string, Told["answers"]]>([["by the label", { ...OWNED, labelText: "Pile 100% wool, backing cotton and latex" }], ["by its look", { ...OWNED, labelText: "wool", back: "cloth" }]])("says so beside the wash, %s", (_, answers) => {
    expect(missing(text({ answers }), LATEX)).toEqual([]);
  });
  it("says nothing of latex where the back is knotted", () => {
    expect(text({ answers: { ...OWNED, labelText: "wool", back: "knots" } })).not.toMatch(/latex/i);
  });
});

describe("where it is likely not worth the money", () => {
  it("speaks of the years of the rug as it is now, and not of the one that is cleaned", () => {
    const letter = plainly(composeDraft(worthless({ lifeYears: range(4.5, 12, 40) })).text);
    expect(missing(letter, [says("the years as it is", /(?:as it is|left alone)[^.]*4½ (?:and|to|years)/i)])).toEqual([]);
    expect(plainly(composeDraft(worthless({ lifeYears: range(4, 8, 16), beyondRepair: 0.1 })).text)).not.toMatch(/as it is now/i);
  });
  it.each(["urine-fresh", "food-fresh", "browning-cleaning"] as const)("does not hurry the owner, with %s", (mechanism) => {
    const hurry = [says("haste", /sooner is better|longer it stays/i)];
    expect(said(plainly(composeDraft(worthless({}, mechanism)).text), hurry)).toEqual([]);
    expect(missing(plainly(composeDraft(worthless({ beyondRepair: 0.1, urgency: { level: "two-days", why: "" } }, mechanism)).text), hurry)).toEqual([]);
  });
  it("offers the inspection that the desk is advised to offer, and still says to ask its price first", () => {
    const letter = plainly(composeDraft(worthless({ advice: action("inspect-and-test") })).text);
    expect(missing(letter, [says("an inspection and tests", /inspection and tests/i), says("its price first", /ask first what/i)])).toEqual([]);
  });
});

describe.each(TONE_IDS)("the client's own page, %s", (tone) => {
  it("is named with the place of its link", () => {
    for (const letter of [text({ ...WET_WOOL, tone }), drawn(ASKS)]) expect(missing(letter, [says("where the link is", /own page[^.]*link[^.]*first letter|link[^.]*first letter[^.]*own page/i)])).toEqual([]);
  });
  it("is not named to a client who has none", () => {
    for (const rug of [ASKS, { sketch: { fibres: { wool: 0.8 }, rest: { firstAid: FIRST_AID_SAID } }, enquiry: { wetNow: "wet" } } satisfies OneRug]) {
      const letter = drawn({ ...rug, client: { name: "Ana Example", isTrade: false, email: null } });
      expect(said(letter, [says("a page or a link", /own page|\blink\b/i)])).toEqual([]);
      expect(missing(letter, [says("how to reach us", /ring us on/i)])).toEqual([]);
    }
  });
});

describe("what was told, and no more", () => {
  it("names no pets beside a plant pot", () => {
    for (const { letter } of lettersTo("Seraphine Wolcott")) expect(letter.draft.text).not.toMatch(/\bpets\b/i);
  });
  it("speaks of one photo as one", () => {
    const story = { story: "How much do you charge for a rug?" };
    expect(text({ answers: story, channel: "email", photos: ["unsaid"] })).toMatch(/your photo\b(?!s)/);
    expect(text({ answers: story, channel: "email", photos: ["unsaid", "unsaid"] })).toMatch(/your photos\b/);
  });
  it("says up to so many months without “anything”", () => {
    const letter = drawn({ sketch: { fibres: { wool: 0.8 }, rest: { lifeYears: range(0.01, 0.4, 0.8) } } });
    expect(letter).toMatch(/up to 9 months/);
    expect(letter).not.toMatch(/anything up to/);
  });
  it("lets the firm see a flooded rug first, also among several", () => {
    const one = inputOf({ sketch: { fibres: { wool: 0.8 } }, answers: { incidents: ["flood"] } });
    const letter = plainly(composeDraft({ ...one, assessments: [...one.assessments, ...inputOf({ sketch: { fibres: { wool: 0.8 } } }).assessments] }).text);
    expect(missing(letter, [says("the firm before the next step", /once the (?:flood-damage )?firm has been/i)])).toEqual([]);
  });
  it("supposes no other rug where the flood got into each", () => {
    const one = inputOf({ sketch: { fibres: { wool: 0.8 } }, answers: { incidents: ["flood"] } });
    expect(composeDraft({ ...one, assessments: [...one.assessments, ...one.assessments] }).text).not.toMatch(/the flooded rug|the others/);
  });
  it("sends nobody for a photo into a room that everybody is kept out of, and asks what can be told from outside it", () => {
    const nextQuestions = [...(["trouble", "whole", "label"] as const).map((id) => ({ id, kind: "photo" as const, ask: `Photo: ${id}`, why: "" })), { id: "boughtWhere", kind: "question" as const, ask: "Where was it bought?", why: "" }];
    const asking = (answers: RugAnswers) => drawn({ sketch: { fibres: { wool: 0.8 }, mechanisms: { "dye-bleed": 0.9 }, rest: { nextQuestions } }, answers });
    expect(asking({})).toMatch(/photo of the trouble/i);
    expect(asking({ incidents: ["flood"] })).not.toMatch(/photo of|in the picture/i);
    expect(asking({ incidents: ["flood"] })).toMatch(/bought/i);
  });
});

describe("where it is wet, and by what was told no worse than dirty", () => {
  const told = (answers: Told["answers"], wetNow: "wet" | "damp" | "no" = "wet") => text({ answers: { labelText: "100% wool", ...answers }, enquiry: { wetNow, reason: "routine" } });
  /** What stands beside the range, up to the next sentence. */
  const beside = (letter: string) => letter.split(/(?<=\.)\s/).filter((sentence) => /\d+–\d+ %/.test(sentence)).join(" ");
  it.each(["wet", "damp"] as const)("gives the range as that of the soil, and leaves open until it is dry whether a mark is left, of one that is %s", (wetNow) => {
    for (const labelText of ["100% wool", "100% viscose"])
      expect(beside(told({ labelText, changes: ["dirty"] }, wetNow))).toMatch(/Of the soil in it, cleaning might take out [^;]*\(\d+–\d+ %\); whether the wet leaves a mark shows only when it is dry\.$/);
  });
  it("names no soil where nobody told of any, and promises nothing of a mark either", () => {
    const letter = told({ incidents: ["water"], liquid: "water", since: "hour" });
    expect(letter).toMatch(/It may dry and leave no mark\. Of whatever is to be seen once it is dry, cleaning might take out [^.]*\(\d+–\d+ %\)\./);
    expect(letter).not.toMatch(/of the soil/i);
    expect(beside(letter)).not.toMatch(/\bmark\b/);
  });
  it("says nothing of the wet where it is dry", () => expect(told({ changes: ["dirty"] }, "no")).not.toMatch(/leaves? (?:a|no) mark/));
});

describe("a stain that may have set or not", () => {
  const stain = (mechanisms: OneRug["sketch"]["mechanisms"] & object, level: "a-week" | "can-wait" = "a-week") =>
    drawn({ sketch: { fibres: { wool: 0.9 }, mechanisms, rest: { improvement: range(20, 50, 70), urgency: { level, why: "" } } } });
  it("is said once, with what it means for haste, from a tenth of it fresh on", () => {
    for (const mechanisms of [{ "food-fresh": 0.52, "food-old": 0.46 }, { "food-fresh": 0.1, "food-old": 0.8 }]) {
      const letter = stain(mechanisms);
      expect(missing(letter, [says("that it may have set", /likely[^.]*that the stain has set, which makes it slow to move\. If it has not, sooner is better\./)])).toEqual([]);
      expect(said(letter, [says("the same twice", /has not set yet/)])).toEqual([]);
    }
    expect(stain({ "food-fresh": 0.09, "food-old": 0.8 })).not.toMatch(/sooner/);
  });
  it("hurries nobody where nothing is lost by waiting, and says one thing of it", () => {
    expect(said(stain({ "food-fresh": 0.52, "food-old": 0.46 }, "can-wait"), [says("haste", /sooner/), says("the same twice", /has not set yet/)])).toEqual([]);
  });
});

describe("to somebody who read the label out to us on the telephone", () => {
  const label = (says_: string | null, text: string) => ({ what: "label", value: { says: says_, text, pile: says_ }, strength: "label-typed" as const });
  const asked = (says_: string | null, read: string, heard = true) => {
    const input = inputOf({ sketch: { fibres: { viscose: 0.5, wool: 0.4 }, words: "about as likely as not", evidence: [label(says_, read)], rest: { advice: action("ask-for-more"), nextQuestions: [{ kind: "photo", id: "label", ask: "", why: "" }, { kind: "photo", id: "whole", ask: "", why: "" }] } } });
    return plainly(composeDraft({ ...input, assessments: [{ ...input.assessments[0]!, labelHeard: heard }] }).text);
  };
  const PHOTO = says("a photo of the label", /photo of the label/);
  const WHY = says("what a photo still helps to", /photo of the label, so that we can read it ourselves/);
  it("asks for no photo of a label that leaves nothing open", () => expect(said(asked("viscose", "100% viscose"), [PHOTO])).toEqual([]));
  it("asks for one where it does, and says what for", () => {
    for (const [says_, read] of [["art-silk", "art silk"], ["wool", "wool"], [null, "wash cold"]] as const) expect(missing(asked(says_, read), [WHY])).toEqual([]);
  });
  it("asks whoever typed it for a photo, with the same reason", () => expect(missing(asked("viscose", "100% viscose", false), [WHY])).toEqual([]));
});

describe("the closing of a letter", () => {
  const closing = (beyondRepair: number) => plainly(composeDraft(worthless({ beyondRepair })).text);
  it("speaks of bad news only from very likely on (.90), and of open news as open", () => {
    expect(closing(0.9)).toMatch(/hoped for better news/);
    for (const open of [0.66, 0.89]) {
      expect(closing(open)).toMatch(/could be surer from here/);
      // Its letter tells all there is to tell: nothing sounds as if it were held back.
      expect(closing(open)).not.toMatch(/better news|told you more/);
    }
    expect(closing(0.65)).not.toMatch(/better news|told you more|be surer/);
  });
});
