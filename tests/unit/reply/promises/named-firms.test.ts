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
  ])("is blamed: %s", (sentence) => expect(broken(sentence)).toContain("blame"));

  it.each([
    "Mira looked at it.",
    "Mira will look at it on Thursday.",
    "Mira used very little water on the test spot.",
    "Ferrant cleaned it in May, you wrote.",
    "You told us that Ferrant used too much water.",
    "Whether Ferrant used too much water we cannot say.",
    "Ferrant may have used too much water.",
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
