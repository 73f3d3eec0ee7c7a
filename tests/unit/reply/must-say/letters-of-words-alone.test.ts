import { describe, expect, it } from "vitest";
import { mostWords } from "../../../../lib/reply/length";
import { checkLetter, knownOf } from "../../../../lib/reply/promises/check";
import { readingOf } from "../../../../lib/reply/reading";
import type { EnquiryAnswers, RugAnswers } from "../../../../lib/trade/questions";
import { TONE_IDS, type Tone } from "../../../../lib/trade/tones";
import { letterOf, missing, plainly, said, says } from "./letter-of";

/** Letters to people who told their trouble in words and answered nothing of it. Lists written from the trade (cellulosic browning is common knowledge) and from the words alone. */
const WASHED = "I washed it at home last month and now it is stiff and brown.";
const letter = (answers: RugAnswers, enquiry: EnquiryAnswers = {}, tone: Tone = "plain") => letterOf({ answers, enquiry, tone, channel: "email" });
const text = (answers: RugAnswers, enquiry: EnquiryAnswers = {}) => plainly(letter(answers, enquiry).draft.text);

const SOIL = says("soil", /\bsoil\b/);
const CALM = says("that nothing calls for cleaning", /calls for cleaning now/);
const BROWN = says("what the brown may be, as no more than that", /brown you write of may have come as the rug dried[^.]*plant fibres/);
const STIFF = says("what makes it stiff, perhaps", /stiff may come of/);
const AGAIN = says("not to clean it at home again", /not clean it (?:at home again|again at home)/);

describe.each(TONE_IDS)("to somebody who writes that they washed it and that it is stiff and brown, %s", (tone) => {
  it.each<[string, RugAnswers]>([
    ["of an unknown rug", {}], ["of viscose", { labelText: "100% viscose" }], ["of wool", { labelText: "100% wool" }], ["sold as silk", { sellerSaid: "silk", shine: "two-tone", touch: "cool-slippery" }],
  ])("%s: takes the brown up with what it may be, and asks them not to clean it again", (_, answers) => {
    const { draft, rugs } = letter({ story: WASHED, ...answers }, {}, tone);
    const it_ = plainly(draft.text);
    expect(missing(it_, [BROWN, STIFF, AGAIN])).toEqual([]);
    expect(said(it_, [SOIL, CALM])).toEqual([]);
    expect(readingOf(it_).words).toBeLessThanOrEqual(mostWords(1));
    expect(readingOf(it_).grade).toBeLessThanOrEqual(8);
    expect(checkLetter(draft.text, knownOf(rugs))).toEqual([]);
  });
});

describe("to somebody whose trouble is in their own words alone", () => {
  it("speaks of the trouble and not of soil, whatever it is", () => {
    for (const story of ["A glass of red wine went over.", "There are stains all along one side.", "The dog weed on it."])
      for (const labelText of ["100% wool", "100% viscose"]) expect(said(text({ story, labelText }), [SOIL, CALM])).toEqual([]);
  });
  it("does so too where only the reason of their writing tells of trouble", () => {
    for (const reason of ["just-happened", "after-cleaning", "older-trouble"] as const) expect(said(text({ labelText: "100% viscose" }, { reason }), [SOIL])).toEqual([]);
  });
  it("says of brown after no wash that it may be soil", () => {
    expect(missing(text({ story: "It has brown patches near the door.", labelText: "100% wool" }), [says("both", /brown you write of may be soil, or brown matter/)])).toEqual([]);
  });
  it("goes by the answer once there is one", () => {
    const answered = text({ story: WASHED, labelText: "100% wool", incidents: ["washed-home"], since: "month", changes: ["browner", "stiff"] }, { wetNow: "no", reason: "after-cleaning" });
    expect(said(answered, [says("the words once more", /you write of/)])).toEqual([]);
    expect(missing(answered, [says("the brown with its chance", /likely that the brown comes with drying/), AGAIN])).toEqual([]);
  });
  it("still speaks of soil to somebody who only wants a clean", () => {
    expect(text({ story: "I would like it cleaned before Christmas.", labelText: "100% wool" }, { reason: "routine", wetNow: "no" })).toMatch(/\bsoil\b/);
  });
  it("says “again” to whoever used a product on it, and not to who blotted it, or had it cleaned", () => {
    const about = (answers: RugAnswers) => text({ labelText: "100% viscose", incidents: ["spill"], liquid: "wine", since: "month", ...answers }, { wetNow: "no" });
    expect(missing(about({ treatments: ["household-cleaner"], treatedBy: "owner" }), [AGAIN])).toEqual([]);
    expect(missing(about({ incidents: ["spill", "spotted"] }), [AGAIN])).toEqual([]);
    for (const answers of [{ treatments: ["blotted"], treatedBy: "owner" }, { treatments: ["machine"], treatedBy: "cleaner" }, {}] satisfies RugAnswers[]) expect(said(about(answers), [AGAIN])).toEqual([]);
  });
});

describe("to somebody whose own words say that it is damp and that a dye comes off", () => {
  const PUPPY = "Our puppy has been weeing on the rug last night, and it is still a bit clammy this morning. I poured vinegar over it, and now the red is coming off on my cloth. Can I hose it down in the yard?";
  it("begins with first aid, offers no cleaning while nothing of it was judged, and has nobody roll it up", () => {
    const it_ = text({ story: PUPPY, labelText: "100% wool", incidents: ["unsure"], changes: ["unsure"] }, { wetNow: "unsure", reason: "just-happened" });
    expect(it_).toMatch(/please do this first[^]*Put nothing on it, and no more water[^]*likely wool/);
    expect(it_).not.toMatch(/We would clean it|full wash|by hand with little water|rolled/);
    expect(it_).toMatch(/How it could be cleaned stays open until we know more[^]*Please do not clean it at home: a machine, a hose or a spray/);
  });
});

describe("to somebody who asks in their own words whether it is silk", () => {
  const WHAT_IT_IS = says("what viscose is, that art silk is mostly that, and that the eye cannot tell", /viscose, often sold as “art silk”, is made from wood pulp[^]*weak when wet, and by eye the two are easily taken for each other/i);
  const ASKS = ["Is it silk or not?", "It was a gift. Please tell me whether it is silk", "Could it be artificial silk?"];
  it("says what viscose is where it likely holds some, or may", () => {
    for (const story of ASKS) for (const answers of [{ labelText: "100% viscose" }, { shine: "two-tone", touch: "cool-slippery", footprints: "stay" }] satisfies RugAnswers[])
      expect(missing(text({ story, ...answers }, { wetNow: "no" }), [WHAT_IT_IS])).toEqual([]);
  });
  it("does not where it is likely something else, nor to whoever asks nothing", () => {
    for (const story of ASKS) expect(said(text({ story, labelText: "100% wool" }, { wetNow: "no" }), [WHAT_IT_IS])).toEqual([]);
    expect(said(text({ story: "I think it is silk.", labelText: "100% viscose" }, { wetNow: "no" }), [WHAT_IT_IS])).toEqual([]);
  });
});

describe("to somebody who tells of plant pots on the rug", () => {
  const LIFTED = says("to lift the pot off, and to put none back", /plant pot still stands on it, please lift it off and put none back/);
  it("asks them to lift the pots off, whatever happened under them", () => {
    for (const story of ["There is a ring under the plant pot.", "Two large plant pots stand on it and the pile is brown round them.", "We keep flowerpots on the rug.", "There is a ring under the jardinière.", "A big planter stands on it."])
      for (const labelText of ["100% wool", "100% viscose"]) expect(missing(text({ story, labelText }, { wetNow: "no" }), [LIFTED])).toEqual([]);
  });
  it("does not where none stands there, nor where nobody may touch it", () => {
    for (const story of ["I moved a plant pot and found a ring.", "The plant pot fell over.", "There is no plant pot on it.", "I took the planter off it."]) expect(said(text({ story, labelText: "100% wool" }, { wetNow: "no" }), [LIFTED])).toEqual([]);
    expect(said(text({ story: "There is a ring under the plant pot.", labelText: "100% wool", changes: ["spots"] }), [LIFTED])).toEqual([]);
  });
  it("asks it too of whoever ticked that pots stand there, or damp while they were not asked of pots", () => {
    for (const answers of [{ household: ["pots"] }, { household: ["pets", "pots"] }, { incidents: ["damp"] }, { incidents: ["damp"], household: ["unsure"] }] satisfies RugAnswers[])
      expect(missing(text({ labelText: "100% wool", ...answers }, { wetNow: "no" }), [LIFTED])).toEqual([]);
  });
  it("does not where the ticked damp is no pot's, nor where nobody may touch it or a cleaner asks", () => {
    for (const answers of [{ incidents: ["damp"], household: ["pets"] }, { incidents: ["damp"], household: ["none"] }, { incidents: ["wear"] }, { household: ["pots"], incidents: ["flood"] }, { household: ["pots"], changes: ["spots"] }] satisfies RugAnswers[])
      expect(said(text({ labelText: "100% wool", ...answers }, { wetNow: "no" }), [LIFTED])).toEqual([]);
    expect(said(text({ labelText: "100% wool", household: ["pots"] }, { wetNow: "no", reason: "trade" }), [LIFTED])).toEqual([]);
  });
});

describe("to somebody whose own words say how it looks, since when and that it is dry", () => {
  const RING = "I moved a plant pot and found a pale ring on the rug underneath. It has been dry for a week or so. Is there anything to be done, or do we live with it?";
  const ASKED = [says("what happened", /What happened to it\?/), says("when", /When did it happen\?/), says("how it changed", /How has the rug changed\?/), says("whether it is wet, as if they had not said so", /If any part of it is wet now/)];
  it("asks none of that again, says that they wrote it is dry, and asks of a letter that tells nothing", () => {
    const it_ = text({ story: RING });
    expect(said(it_, ASKED)).toEqual([]);
    expect(it_).toMatch(/You write that it is dry\. Should any of it get wet, please tell us first of all/);
    expect(checkLetter(letter({ story: RING }).draft.text, knownOf(letter({ story: RING }).rugs))).toEqual([]);
    expect(missing(text({ story: "Can you help me with a rug?" }), ASKED)).toEqual(["when"]);
  });
  it("still asks where they only fear it, or hope that it is dry", () => {
    expect(missing(text({ story: "Will a plant pot leave a pale ring? I hope it is dry by now." }), ASKED)).toEqual(["when"]);
  });
});
