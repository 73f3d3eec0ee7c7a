import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LETTER_SIGNS } from "../../../lib/trade/letter-signs";
import { QUESTIONS } from "../../../lib/trade/questions";
import { letterUrgency } from "../../../lib/triage/letter-signs";

const nobodyAsked = () => false;
const level = (text: string, answered: readonly string[] = []) => letterUrgency(text, (q) => answered.includes(q))?.level ?? null;

// Written as people write, before the table of words was tried on them.
const NOW = [
  "A pipe burst above the dining room last night.", "Our rug is soaking wet", "The rug got soaked when the washing machine leaked", "There was a flood and the carpet stood in it.",
  "It is still damp underneath.", "My carpet is sodden, please help!", "There's been a leak from the radiator onto my silk rug", "Water is dripping from the ceiling on it", "The cellar flooded and the rugs are under water.",
  "It’s wet", "IT IS WET", "We bought it last year and yesterday the dishwasher leaked over it.", "It was dry on Monday but it is wet again", "It is not just wet, it is soaked through",
  "The flood was last week and it is still wet", "Sewage came up through the floor", "it isn't dry yet", "The rug has not dried, it's not dry at all.", "It is dry on top but underneath it's wet", "No idea what to do: the rug is wet",
  "it was raining in and\nthe rug is drenched", "The rug is wet-through.", "What do I do with a wet rug? I cannot rescue the flooded one alone.", "We don’t know how wet it is", "I can’t get it dry", "Not a small spill: the whole rug is soaked", "It was dry on Sunday and now\nit is wet.",
];
const TODAY = [
  "My son spilled red wine on it this morning", "I knocked over a cup of coffee just now.", "The cat peed on our rug today", "Spilt a glass of milk an hour ago!", "Today something happened. A bottle of ink tipped over.", "The dog was sick on it tonight",
  "My little girl has been sick on it just now.", "Put vinegar on it last night, and now there is a second pale patch", "The nosebleed was yesterday, there is blood on it",
  "I have bleached it in the bath now. Please do not tell my wife.", "He used bleach", "We hosed it down on the drive", "she put it in the washing machine",
];
const SOON = ["It smells since we had it cleaned", "There is a musty odour", "I found larvae under the sofa", "Small maggots are crawling in the pile", "There are live moths", "Moths are flying up when I walk over it", "Something is eating the rug", "the stench is unbearable"];
const THIS_WEEK = ["We found moths. What would it cost?", "there is a moth in the wardrobe, and a bare patch on the rug", "Carpet beetles?"];
const CALM = [
  "The sun has bleached the colours", "Ten years ago somebody used bleach on it.", "Last night I read your page.", "Nobody has put it in the bath", "It stood in a bathroom",
 
  "What is my rug made of?", "It is dry now, but there is a brown ring. It got wet at Easter.", "A pipe burst in March. It has dried since.", "The rug was soaked two years ago.", "In 2019 a flood left a mark on it.", "It was wet cleaned by a firm", "Do you offer wet cleaning?",
  "It has never been wet.", "There is no smell.", "It doesn't smell", "I am writing to you today about a silk rug.", "It is not wet", "The rug never got wet", "It isn't damp any more", "Last year our cellar flooded.", "We used to have a leak there",
  "The rug is completely dry again after the leak was mended, I hope… It leaked in March. It is all dry.", "Nothing leaked", "Today I found your page; what would cleaning cost?", "I bought it today in an auction", "a burst of colour in the middle",
  "No moths, no larvae", "It is a wool rug with a red border", "The rug is for our living room, in front of the wood burner", "Without any damp or smell", "The flood of light in that room has faded it", "Coffee stain, from a long time back",
  "It is dry\nnow. It was soaked when we\nfound it.", "I have not noticed any smell", "The rug got wet last winter and left a ring.",
];

describe("letterUrgency", () => {
  it.each(NOW)("has it read now: %s", (text) => expect(level(text)).toBe("hours"));
  it.each([...TODAY, ...SOON])("has it read today: %s", (text) => expect(level(text)).toBe("two-days"));
  it.each(THIS_WEEK)("has it read this week: %s", (text) => expect(level(text)).toBe("a-week"));
  it.each(CALM)("leaves it in its turn: %s", (text) => expect(level(text)).toBeNull());

  it("says why with the letter's own sentence, the most urgent one", () => {
    expect(letterUrgency("Hello,\n\nit smells too.\nThe pipe burst   over my “red” rug! Please ring.", nobodyAsked)).toEqual({ level: "hours", why: "They write “The pipe burst over my “red” rug!”: read it now.", firstAid: "whole" });
    expect(letterUrgency("It smells odd.", nobodyAsked)?.why).toBe("They write “It smells odd”: read it today.");
  });
  it("has first aid go out for water, and keeps hands off what waste water has soaked", () => {
    const aid = (text: string) => letterUrgency(text, nobodyAsked)?.firstAid;
    expect([aid("It is wet."), aid("The cellar flooded, it is wet."), aid("Sewage!"), aid("It smells."), aid("It is dry.")]).toEqual(["whole", "hands-off", "hands-off", null, undefined]);
  });
  it("cuts a long sentence at a word, and leaves out what turns the direction of a line", () => {
    const why = letterUrgency(`The rug is wet \u202eand ${"very ".repeat(60)}heavy`, nobodyAsked)?.why ?? "";
    expect(why).toMatch(/^They write “The rug is wet and (?:very )+…”: read it now\.$/u);
    expect(why.length).toBeLessThan(130);
  });
  it("finds what was spilled in the sentence beside the time, and not two further on", () => {
    expect(level("It was this morning. Wine, a whole glass.")).toBe("two-days");
    expect(level("It was this morning. I am Ana. We have a rug. Wine is what we sell.")).toBeNull();
  });
  it("says nothing more once the question is answered", () => {
    expect([level("It is wet", ["wetNow"]), level("It is wet", ["since"]), level("Wine was spilled today", ["since"]), level("It smells", ["changes"]), level("Larvae", ["incidents"])]).toEqual([null, "hours", null, null, null]);
    expect(level("It is wet and it smells", ["wetNow"])).toBe("two-days");
  });
  it("reads on in time whatever is written, and has a reason that quotes it, or says that nobody could look", () => {
    fc.assert(fc.property(fc.string({ unit: "grapheme", maxLength: 400 }), fc.constantFrom("", "wet", "it is dry now", "no leak", "today", "wine"), (any, word) => {
      const text = `${any} ${word} ${any}`;
      const found = letterUrgency(text, nobodyAsked);
      expect(found === null || /^(?:They write “[\s\S]+”: read it (?:now|today|this week)|Not in a language whose words we look for: read it today)\.$/u.test(found.why)).toBe(true);
      expect(letterUrgency(text, () => true)).toBeNull();
    }), { numRuns: 300 });
    // A pattern that goes back and forth would not end before the runner gives up.
    expect(letterUrgency("not wet no wet never ".repeat(5_000), nobodyAsked)).toBeNull();
  });
  it("asks about questions that there are, from the most urgent sign down", () => {
    expect(LETTER_SIGNS.flatMap((s) => s.unless).filter((q) => !Object.hasOwn(QUESTIONS, q))).toEqual([]);
    const order = ["hours", "two-days", "a-week"];
    expect(LETTER_SIGNS.map((s) => order.indexOf(s.level))).toEqual([...LETTER_SIGNS].map((s) => order.indexOf(s.level)).sort());
  });
});
