import { describe, expect, it } from "vitest";
import { checkLetter, checkSentences, rulesBroken, WORDS_AND_PHOTOS } from "../../../../lib/reply/promises/check";
import { sentencesOf } from "../../../../lib/reply/promises/sentences";
import { liftedByStance } from "../../../../lib/reply/promises/stances";
import { CLASSES, CLASSES_APART } from "./classes";
import { FORTY_VOICES, HINTS, MANNERS, MANNERS_APART, type Voice } from "./forty-voices";
import { HONEST } from "./honest";
import { OVER_PROMISING } from "./over-promising";
import { OWN_VOICES } from "./own-voices";
import { LATER_VOICES } from "./own-voices-later";
import { STRANGERS } from "./strangers";
import { UNSEEN } from "./strangers-unseen";

const broken = (sentence: string) => rulesBroken(sentence).map((r) => r.id);

describe("the check of promises on its own sentences", () => {
  it("has 120 and more of each", () => {
    expect(OVER_PROMISING.length).toBeGreaterThanOrEqual(120);
    expect(HONEST.length).toBeGreaterThanOrEqual(120);
  });
  it("catches at least 98 in 100 of those that promise too much", () => {
    const missed = OVER_PROMISING.filter(([, say]) => broken(say).length === 0);
    expect(missed.length / OVER_PROMISING.length, missed.map(([r, s]) => `${r}: ${s}`).join("\n")).toBeLessThanOrEqual(0.02);
  });
  it("catches them for the right reason", () => {
    const wrong = OVER_PROMISING.filter(([rule, say]) => broken(say).length > 0 && !broken(say).includes(rule));
    expect(wrong.length / OVER_PROMISING.length, wrong.map(([r, s]) => `${r}, not ${broken(s).join()}: ${s}`).join("\n")).toBeLessThanOrEqual(0.02);
  });
  it("leaves at least 97 in 100 of the honest ones alone", () => {
    const alarmed = HONEST.filter((say) => broken(say).length > 0);
    expect(alarmed.length / HONEST.length, alarmed.map((s) => `${broken(s).join()}: ${s}`).join("\n")).toBeLessThanOrEqual(0.03);
  });
});

describe.each([...STRANGERS.map((set, n) => [`stranger ${n + 1}`, set] as const), ...[...OWN_VOICES, ...LATER_VOICES].map((set, n) => [`own voice ${n + 1}`, set] as const)])("the check of promises on the sentences of %s, which its rules have seen since", (_, { overPromising, honest }) => {
  const share = (of: readonly string[], of100: readonly string[]) => of.length / of100.length;
  it("catches at least 95 in 100 of those that promise too much", () => {
    const missed = overPromising.filter((say) => broken(say).length === 0);
    expect(share(missed, overPromising), missed.join("\n")).toBeLessThanOrEqual(0.05);
  });
  it("leaves at least 95 in 100 of the honest ones alone", () => {
    const alarmed = honest.filter((say) => broken(say).length > 0);
    expect(share(alarmed, honest), alarmed.join("\n")).toBeLessThanOrEqual(0.05);
  });
});

describe("the check of promises on the sentences of forty voices, which its weights are fitted to", () => {
  const share = (which: "overPromising" | "honest") => { const all = FORTY_VOICES.flatMap((v) => v[which]); return all.filter((say) => broken(say).length > 0).length / all.length; };
  it("catches nine in ten and more of those that promise too much", () => expect(share("overPromising")).toBeGreaterThanOrEqual(0.9));
  it("leaves nineteen in twenty of the honest ones alone", () => expect(share("honest")).toBeLessThanOrEqual(0.05));
});

describe("the check of promises on what is hinted, joked and put into sayings, which its weights are fitted to", () => {
  const share = (which: "overPromising" | "honest") => { const all = HINTS.flatMap((v) => v[which]); return all.filter((say) => broken(say).length > 0).length / all.length; };
  it("catches three in four of those that promise too much", () => expect(share("overPromising")).toBeGreaterThanOrEqual(0.75));
  it("leaves nine in ten of the honest ones alone", () => expect(share("honest")).toBeLessThanOrEqual(0.1));
});

describe("the check of promises on pairs by the manner of saying it, half of them honest and close to the other half in their words", () => {
  const share = (which: "overPromising" | "honest", sets: readonly Voice[]) => { const all = sets.flatMap((v) => v[which]); return all.filter((say) => broken(say).length > 0).length / all.length; };
  it("catches four in five of those that promise too much", () => expect(share("overPromising", MANNERS)).toBeGreaterThanOrEqual(0.8));
  it("leaves nineteen in twenty of the honest ones alone", () => expect(share("honest", MANNERS)).toBeLessThanOrEqual(0.05));
  it("of later pairs that no rule and no weight has seen catches every second, and leaves nine in ten alone", () => {
    expect(share("overPromising", MANNERS_APART)).toBeGreaterThanOrEqual(0.5);
    expect(share("honest", MANNERS_APART)).toBeLessThanOrEqual(0.1);
  });
});

describe.each([...CLASSES, ...CLASSES_APART])("the check of promises on $meaning", ({ rule, over, honest }) => {
  it("is held to ten and more of each", () => {
    expect(over.length).toBeGreaterThanOrEqual(10);
    expect(honest.length).toBeGreaterThanOrEqual(10);
  });
  it("catches all but one of those that promise too much", () => {
    const missed = over.filter((say) => (rule ? !broken(say).includes(rule) : broken(say).length === 0));
    expect(missed.length, missed.join("\n")).toBeLessThanOrEqual(1);
  });
  it("leaves all but one of the honest ones that share their words alone", () => {
    const alarmed = honest.filter((say) => broken(say).length > 0);
    expect(alarmed.length, alarmed.map((s) => `${broken(s).join()}: ${s}`).join("\n")).toBeLessThanOrEqual(1);
  });
});

describe("the check of promises on sentences that its rules were not written by", () => {
  const of = (which: "overPromising" | "honest") => UNSEEN.flatMap((set) => set[which]);
  const found = (which: "overPromising" | "honest") => of(which).filter((say) => broken(say).length > 0).length / of(which).length;
  it("catches 85 in 100 of those that promise too much", () => expect(found("overPromising")).toBeGreaterThanOrEqual(0.85));
  it("leaves nine in ten of the honest ones alone", () => expect(found("honest")).toBeLessThanOrEqual(0.1));
});

describe("the check of promises on every meaning it knows", () => {
  it.each([
    ["certainty", "I can see from the photo that it is wool."], ["certainty", "You can skip the dye test."], ["result", "The ink will be gone by Friday."], ["result", "It will look like new."], ["result", "Nobody will ever notice the repair."],
    ["safety", "The colours cannot possibly run."], ["safety", "The baby can crawl on it straight away."], ["number", "It has another thirty years in it."], ["number", "It is worth four thousand."],
    ["harm", "Dab it with vinegar."], ["harm", "Mix a little bleach with vinegar and dab it on."], ["harm", "Never mix it dry; rinse it with bleach and hot water."], ["harm", "Roll it up while it is still damp."], ["harm", "Vacuum it hard with the beater bar on."], ["harm", "Salt, then hot water from a height."], ["harm", "If you sponge it down, use only a little."], ["harm", "The two cleaners work better together than either alone."], ["harm", "If the plug is wet, switch it off quickly with a dry hand."], ["harm", "Lemon juice does wonders for yellow marks."], ["blame", "The plumber should answer for it."],
    ["blame", "Your landlord ruined it."], ["blame", "Other firms cut corners and ruin silk."], ["cover", "Your insurer is obliged to pay."], ["verdict", "This rug is a goner."],
  ])("%s: %s", (rule, say) => expect(broken(say)).toContain(rule));

  it.each([
    "I have seen far worse rugs come back well.", "You may keep walking on it.", "You can stop worrying now.", "Carry on using it as before.", "You need not keep off it.", "Has a wine stain ever beaten us?", "Never mind the warning on the label.", "No test is needed on this one.",
  ])("catches what comforts, compares and waves away: %s", (say) => expect(broken(say)).not.toEqual([]));
  it.each([
    "We have every hope that it will look better afterwards, but we promise nothing.", "Your cleaner did his best with what he knew.", "I have seen worse recover and better fail.", "Only a fool would promise that the ink will lift.", "There is no such thing as a wholly safe wash.",
    "Your loss adjuster will make their own decision.", "Please keep off it until it is dry.", "You may walk on it once it is dry and we have looked at it.", "Blot it with an old white tea towel.", "Has bleach ever been used on it?",
  ])("leaves alone what hopes, is fair and holds back: %s", (say) => expect(broken(say)).toEqual([]));
  it.each(["The stain will come out, but we promise nothing.", "Your cleaner did his best, but he ruined it.", "There is no such thing as a risk with us."])("and catches what only begins so: %s", (say) => expect(broken(say)).not.toEqual([]));

  it.each(["Your rug will be safe with us until you decide.", "It will be kept safe and dry in our store until you have decided.", "It will cost you nothing to have it inspected.", "Having it looked at costs nothing."])("lets the house promise what is its own to keep: %s", (say) => expect(broken(say)).toEqual([]));
  it.each(["Your rug will be safe with us, and the stain will be gone.", "The dyes will be safe with us.", "It will be safe in our bath.", "It will cost you nothing to have it inspected, because it always comes out.", "It will cost you nothing to have it cleaned."])("and no more than that: %s", (say) => expect(broken(say)).not.toEqual([]));

  it("takes a denial for a word of what will not be again, and no hedge", () => {
    expect([...liftedByStance("it will probably not be as good as new.")]).toContain("result");
    expect([...liftedByStance("it will probably be as good as new.")]).toEqual([]);
  });
  it("shows a sentence that breaks no rule and holds nothing back, with the words that weigh most", () => {
    const [found] = rulesBroken("We are entirely certain it all needs our full process.");
    expect(found?.why).toMatch(/“.+”/u);
  });
  it.each([
    "Will it come out?", "We wish we could say that it will come out.", "You told us to use vinegar on it.", "It may be wool.", "The rug is “as good as new”, they told you.", "We would be wrong to promise that.", "Never mix bleach with vinegar: the gas can hurt you.", "Please do not mix two cleaners on it.", "It will not be as good as new.", "Your rug will be with us for about two weeks.", "The rug will be tested before anything else is done.", "The seller's label says 100% silk, which is not what we see.", "If the plug is wet, keep off the rug until the power is off at the board.",
  ])("lets pass: %s", (say) => expect(broken(say)).toEqual([]));
});

describe("the limits that a letter with a judgement names", () => {
  const leavesOut = (more: string) => checkLetter(`It is likely wool, going by your photos. ${more}`, WORDS_AND_PHOTOS).some((o) => o.rule === "left-out");
  it.each(["We are open until six.", "Your inspection is booked for Monday.", "The blue cushion was a test of my patience.", "Guests often ask."])("are not met by a word that strays in: %s", (say) => expect(leavesOut(say)).toBe(true));
  it.each(["Words and photos can mislead; an inspection and a test decide.", "We cannot tell until it is tested.", "Only a test would tell.", "This is a careful guess.", "We would test it in a hidden corner first."])("are met by: %s", (say) => expect(leavesOut(say)).toBe(false));
});

describe("the sentences of a letter", () => {
  it("keep what they quote whole, full stops and all, where the quotation is closed", () => {
    expect(sentencesOf("Going by the label (“100% Viscose. Made in India”), it is likely viscose. A test would tell."))
      .toEqual(["Going by the label (“100% Viscose. Made in India”), it is likely viscose.", "A test would tell."]);
  });
  it.each(["– ", "- ", "• ", "  * ", "2) "])("stand in a list without its mark: %s", (mark) => {
    expect(sentencesOf(`First:\n${mark}Keep it dry. Call us.\n${mark}It ran.`)).toEqual(["First:", "Keep it dry.", "Call us.", "It ran."]);
  });
  it("keep a dash within them, and a figure below nought", () => {
    expect(sentencesOf("Wool – or silk – is likely.\n-5 °C is cold.")).toEqual(["Wool – or silk – is likely.", "-5 °C is cold."]);
  });
  it.each(["Wash the rug at once.", "Rub it down with a wet cloth.", "The stain will come out."])("are held to the same rules in a list as alone: %s", (say) => {
    expect(checkSentences(`– ${say}`, WORDS_AND_PHOTOS).map(({ rule, sentence }) => [rule, sentence])).toEqual(broken(say).map((rule) => [rule, say]));
    expect(broken(say)).not.toEqual([]);
  });
  it("end as ever where a quotation is never closed, so that nothing hides behind a stray mark", () => {
    expect(sentencesOf("You wrote “it ran. It is pure silk. It will come out.")).toEqual(["You wrote “it ran.", "It is pure silk.", "It will come out."]);
    expect(sentencesOf("“It ran.” It is silk. “So. It ran.”")).toEqual(["“It ran.”", "It is silk.", "“So. It ran.”"]);
  });
});
