import { describe, expect, it } from "vitest";
import { checkSentence, checkSentences, rulesBroken, WORDS_AND_PHOTOS } from "../../../../lib/reply/promises/check";
import type { RuleId, Telling } from "../../../../lib/reply/promises/rule";
import { RULES } from "../../../../lib/reply/promises/rules";
import { tooSure } from "../../../../lib/reply/promises/sureness";
import { COMFORT, ELECTRICS, FROZEN, GERMS, IN_USE, LABELLED, ON_TIME, PRICE_PAID } from "../../../../lib/reply/promises/tellings";

const found = (sentence: string) => checkSentence(sentence, WORDS_AND_PHOTOS);

describe("what is suggested instead of a sentence", () => {
  const TELLINGS: readonly (readonly [string, Telling])[] = [...RULES.map((rule) => [rule.id, rule] as const), ["sureness", tooSure({ words: [] })], ["use", IN_USE], ["comfort", COMFORT], ["label", LABELLED], ["price", PRICE_PAID], ["electrics", ELECTRICS], ["time", ON_TIME], ["germs", GERMS], ["freezing", FROZEN]];
  it.each(TELLINGS)("is one whole sentence without gaps that passes itself: %s", (_, { advise, instead }) => {
    expect(instead).toMatch(/^[A-Z][^…]*\.$/u);
    expect(checkSentences(instead, WORDS_AND_PHOTOS)).toEqual([]);
    expect(advise).toMatch(/[:,]$|only:$/u);
  });
  it("stands at the end of the suggestion, word for word, and mends a letter in the sentence's place", () => {
    const letter = "Thank you for the photos. The stain will come out. We are open until six.";
    const [first] = checkSentences(letter, WORDS_AND_PHOTOS);
    expect(first?.suggestion.endsWith(`“${first.instead}”`)).toBe(true);
    expect(checkSentences(letter.replace("The stain will come out.", first?.instead ?? ""), WORDS_AND_PHOTOS)).toEqual([]);
  });
  it("takes the sentence's place in a line of a list, whose mark stays", () => {
    const letter = "Until then:\n– The stain will come out.\n– We are open until six.";
    const [first] = checkSentences(letter, WORDS_AND_PHOTOS);
    expect(letter.replace(first?.sentence ?? "", first?.instead ?? "")).toBe(`Until then:\n– ${first?.instead}\n– We are open until six.`);
  });
});

describe("the rule that a sentence is told by", () => {
  it.each<readonly [RuleId, string]>([
    // An oath, whatever it swears to
    ["certainty", "Aye, yon fringe is cotton and the pile's wool, nae doubt about it."], ["certainty", "Pure Cheviot wool, and I'd stake the bothy on it."], ["certainty", "That shine is viscose, full stop."], ["certainty", "Sun did this, no two ways."],
    ["certainty", "The yellowing was caused by your underlay, full stop."], ["certainty", "Having handled ten thousand pieces, I need no glass to recognise mercerised cotton."], ["certainty", "From the look of the selvedge I would stake my trade on its being camel hair."],
    ["result", "I'd bet my lunch, my truck and my bass boat on those blues coming back."], ["result", "The smell is history once it has been through our ozone room."], ["result", "I've no doubt whatever that we shall bring your father's rug home looking its best."],
    ["safety", "I assure you that nothing in our wash touches the dye."], ["safety", "Mould's no biggie, you can keep it in the bedroom till we collect."], ["safety", "You can count on the reds staying where they are."],
    ["number", "It'll see your grandchildren's grandchildren out, this one."], ["number", "Fixed up, she'll bring you nine grand at auction any Saturday of the year."], ["number", "This weary carpet has a hundred more winters in it, and I would swear so upon my grandfather's loom."],
    ["cover", "The insurance has to pay, simple as that."], ["cover", "I never met an assessor yet that could wriggle out of a burst pipe."],
    ["blame", "You have been the victim of a dishonest trader, pure and simple."], ["blame", "Mr Pettigrew sold you a fairy tale and pocketed the moral."], ["blame", "The dealer must have known perfectly well what he was selling."],
    // A product: what somebody did with it, or what the client is to do
    ["blame", "The last cleaners used too much shampoo, that's why it's brown."], ["blame", "Someone at the hotel used bleach and kept quiet about it."], ["harm", "A lick of household bleach on the fringe and it'll be white as snow."], ["harm", "Vinegar and neat paraffin brushed along the skirting side of the rug will stop them dead."],
    // Words that another rule knows by
    ["certainty", "I shan't trouble you with talk of tests, for the handle of the cloth in your photograph is that of fine wool."], ["certainty", "The brown halo is the twin of the one Mrs Pritchard had, and hers was the plant pot, so you may stop wondering."],
  ])("is %s for: %s", (rule, say) => {
    expect(rulesBroken(say).map((r) => r.id)).toEqual([rule]);
  });

  it("says only that it is too sure where weights or an oath alone decide and nothing tells of what, with the words that weigh", () => {
    for (const say of ["Folks, this one's a slam dunk.", "We are entirely certain it all needs our full process."]) {
      const [only, ...more] = found(say);
      expect(more).toEqual([]);
      expect(only).toMatchObject({ rule: "sureness", why: expect.stringMatching(/^This sentence speaks more surely than is known\. What weighs most: “.+”\.$/u), instead: "Words and photos alone cannot make us sure." });
    }
  });
  it.each([["You may keep walking on it.", IN_USE], ["The children can go on playing there in the meantime.", IN_USE], ["You can stop worrying now.", COMFORT], ["Ignore the care label; the makers only protect themselves.", LABELLED], ["You paid far too much for it.", PRICE_PAID], ["You may suck the water up with your hoover.", ELECTRICS],
    ["Your rug will be back within six weeks, guaranteed.", ON_TIME], ["It will be ready in three weeks, guaranteed.", ON_TIME], ["You will have your rug back by Easter, I promise.", ON_TIME],
    ["It will be free of bacteria afterwards.", GERMS], ["Put the rug in the freezer for two days.", FROZEN], ["The rug may be frozen for two days.", FROZEN]])("tells in its own words: %s", (say, { why, instead }) => {
    expect(found(say)).toMatchObject([{ why, instead }]);
  });
  it("tells a breach in the words of its rule where the sentence does more than that", () => {
    expect(found("You can stop worrying now, because nothing can go wrong.")[0]?.instead).toBe(RULES.find(({ id }) => id === "safety")?.instead);
    for (const say of ["The colour will be back within a week, guaranteed.", "Your rug will be back as good as new within six weeks, guaranteed.", "The stain will be gone and it will be back by Friday."]) expect(found(say)[0]?.instead).toBe(RULES.find(({ id }) => id === "result")?.instead);
  });
});
