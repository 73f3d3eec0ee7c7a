import { describe, expect, it } from "vitest";
import { rulesBroken } from "../../../../lib/reply/promises/check";

const broken = (sentence: string) => rulesBroken(sentence).map((r) => r.id);

describe("a firm that is named", () => {
  it.each([
    "Ferrant used far too much water.",
    "Halloway Carpets soaked your rug.",
    "Brightmoor ruined it with hot water.",
    "Ferrant should have tested the dyes.",
    "Brightmoor did not rinse it.",
    "Clearly Ferrant left it wet.",
    "Ferrant has put the wrong product on it.",
    "Halloway must pay for this.",
    "Ferrant made a poor job of the edge.",
    "Brightmoor never asked what it is made of.",
    "The back was soaked by Ferrant.",
    "It was soaked by Ferrant in May.",
    "In the end the pile was ruined by Brightmoor.",
    "The border was scorched by Brightmoor’s people.",
    "It was scrubbed too hard by Ferrant.",
    "Ferrant scrubbed too hard.",
    "Brightmoor brushed it far too hard.",
    "Halloway cut it too small.",
    "It was not rinsed long enough by Brightmoor.",
    "It was dried too slowly by the cleaners at Halloway Carpets.",
    "The pile was not thoroughly rinsed by Ferrant.",
    "It was not properly dried by your cleaner.",
    "It was badly stored by Ferrant.",
  ])("is blamed: %s", (sentence) => expect(broken(sentence)).toContain("blame"));

  it.each([
    "Mira looked at it.",
    "Mira will look at it on Thursday.",
    "Mira used very little water on the test spot.",
    "Ferrant cleaned it in May, you wrote.",
    "You told us that Ferrant used too much water.",
    "Whether Ferrant used too much water we cannot say.",
    "Ferrant may have used too much water.",
    "The back may have been soaked by Ferrant.",
    "You wrote that it was soaked by Ferrant.",
    "Whether it was soaked by Ferrant we cannot say.",
    "It was inspected by Mira Quill on Monday.",
    "The back was soaked by rain.",
    "It was not rinsed long enough by us.",
    "It may not have been rinsed long enough by Ferrant.",
    "You told us that it was dried too slowly by Ferrant.",
    "It was dried too slowly by half.",
    "It was dried too fast by sunlight.",
    "It was not rinsed long enough.",
    "Whether it was dried too slowly by the cleaners we cannot say.",
    "It was soaked by accident.",
    "The dye was bleached by daylight.",
    "The edge was burnt by embers.",
    "The back was damaged by old glue.",
    "It was flooded by a burst pipe.",
    "The pile was felted by washing.",
    "The back was ruined by Friday.",
    "Wool scrubbed too hard felts.",
    "Anything rubbed too hard goes rough.",
    "Please do not let anybody rub it too hard.",
    "We scrubbed the test spot too hard ourselves.",
    "Water soaked the back.",
    "Moths ruined the border with their grazing.",
    "Bleach used too strong takes the colour out.",
    "Viscose should never have much water.",
    "We should have told you sooner.",
    "Mira forgot to put the photo in, and did not ask you for the size.",
    "Rugs should never have hot water on them.",
    "Colours should have been tested before.",
    "Clients should pay on collection.",
    "Dogs ruined the border with their claws.",
    "Everyone should have a rug pad.",
    "We did not test the dyes.",
    "A weaving fault runs across the lower third.",
    "The fault lies in the weave.",
    "A previous cleaning may have shrunk the foundation.",
  ])("is not, nor is anything else: %s", (sentence) => expect(broken(sentence)).not.toContain("blame"));
});

describe("somebody of a trade", () => {
  it.each([
    "The fitters cut it too short.", "Your fitter cut the rug too short.", "The restorer trimmed the fringe too close.", "Your cleaner scrubbed too hard.", "They rubbed the pile too roughly.", "Somebody scrubbed it too hard.", "Whoever treated it scrubbed too hard.", "It was scrubbed too hard by the cleaner.",
  ])("is blamed for what was done too hard or too short: %s", (sentence) => expect(broken(sentence)).toContain("blame"));
  it.each([
    "The fitters may have cut it too short.", "You told us that the fitters cut it too short.", "Did the fitters cut it too short?", "The fringe was cut too short before we saw it.", "Fringes cut too short cannot be knotted again.", "Whether the cleaner scrubbed too hard we cannot say.",
  ])("is not: %s", (sentence) => expect(broken(sentence)).not.toContain("blame"));
});

describe("mould", () => {
  it.each([
    "You may blot the spots of mould with a dry cloth.", "Please brush off the mould.", "Just wipe any black mould away.",
  ])("is not to be touched: %s", (sentence) => expect(broken(sentence)).toContain("harm"));
  it.each([
    "Please do not touch the mould.", "We lift the mould with a filtered vacuum.", "A firm equipped to treat mould has to see it first.", "It may be mould, which can harm your health.", "Please blot the wine with a dry white cloth.",
  ])("is what else may be said of: %s", (sentence) => expect(broken(sentence)).not.toContain("harm"));
});
