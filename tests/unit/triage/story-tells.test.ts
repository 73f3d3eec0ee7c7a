import { describe, expect, it } from "vitest";
import { saidOfWater } from "../../../lib/triage/letter-signs";
import { storyDetails, storyHasTrouble, storyTells } from "../../../lib/triage/story-tells";

describe("storyTells", () => {
  it.each([
    ["My dog was sick on the rug and there is a yellow mark.", ["incidents", "changes"]],
    ["A glass of red wine went over last night.", ["incidents", "since"]],
    ["It has two brown patches near the door.", ["changes"]],
    ["Moths have eaten a hole into it.", ["incidents", "changes"]],
    ["We washed it and it soaked for a day.", ["incidents"]],
    ["THE CLEANER’S MACHINE: the colours ran", ["changes"]],
  ])("reads what was told of: %s", (story, tells) => expect(storyTells(story)).toEqual(tells));
  it.each(["What is it made of?", "Hello, how much do you charge for two by three metres?", "Mark bought it in Istanbul.", "Can you clean a steady old rug?", "", "Was kostet die Reinigung?"])(
    "finds nothing told: %s", (story) => expect(storyTells(story)).toEqual([]));
});

// Written as people write, before the table of words was tried on them. What is told as a fact is not asked again…
const LOOKS_TOLD = [
  "I found a pale ring on the rug underneath.", "There is a brown ring where the pot stood.", "It has left a dark patch by the door", "now there are two lighter patches, and I don’t know why", "The pile is stiff.", "One corner is all matted",
  "It dried hard and the fringe has gone brown.", "There’s a whitish mark about the size of a saucer. Can it be saved?", "We moved the sofa and saw a yellow stain, is there anything to be done?", "The border has yellowed.", "It is not wet but it has a pale ring.", "A water mark runs along one side",
];
const SINCE_TOLD = [
  "My daughter spilled cocoa on it last night.", "There was a leak three weeks ago.", "The dog weed on it on Saturday", "The wine went over. It was last Saturday.", "The ring has been there for years.", "It got stained in March", "There has been a brown patch since Easter.", "A vase leaked on it and it has been dry for a week or so.", "I knocked over a cup of tea just now!", "Two days ago the cat was sick on it.",
];
const DRY_TOLD = ["It has been dry for a week or so.", "The rug is completely dry now.", "It’s dry, can I walk on it?", "It was soaked at Easter. It has dried since."];
// …and of a denial, a question, a fear, another rug or the pattern nothing is read.
const LOOKS_NOT_TOLD = [
  "There is no pale ring.", "It is not stiff.", "I can’t see a brown ring.", "Would water leave a brown ring?", "Will it go stiff?", "If there is a dark patch, what would you do?", "How do you get a pale ring out?", "I am afraid it will leave a brown ring.", "I hope it won’t be matted.", "My neighbour’s rug has a pale ring.", "Our other rug got stiff.",
  "I wonder whether the pile is matted", "I read that viscose goes stiff in water.", "Maybe there is a dark patch.", "A brown rug with a cream border.", "It has pale rings in the pattern.", "Please use a stiff brush.", "Does a dark patch mean mould?", "Please ring me.", "A pale ring?",
];
const SINCE_NOT_TOLD = ["We bought it last year.", "We have had it for years and now there is a pale ring.", "Can you clean it this week?", "When did the ring come?", "Could I have it back by Christmas?", "I rang you yesterday about the stain.", "If it was spilled last week, is it too late?"];
const DRY_NOT_TOLD = ["Is it dry?", "Once it is dry I will send photos.", "I hope it is dry by Monday.", "If it is dry, may I hoover it?", "It is not dry.", "I do not think it is dry.", "I don’t know whether it is dry underneath.", "When it is dry we shall see."];

describe("what is told plainly", () => {
  it.each(LOOKS_TOLD)("is how it looks: %s", (story) => expect(storyTells(story)).toContain("changes"));
  it.each(SINCE_TOLD)("is since when: %s", (story) => expect(storyTells(story)).toContain("since"));
  it.each(DRY_TOLD)("is that it is dry: %s", (story) => expect(saidOfWater(story)).toBe("dry"));
  it.each(LOOKS_NOT_TOLD)("is not how it looks: %s", (story) => expect(storyTells(story)).not.toContain("changes"));
  it.each(SINCE_NOT_TOLD)("is not since when: %s", (story) => expect(storyTells(story)).not.toContain("since"));
  it.each(DRY_NOT_TOLD)("is not that it is dry: %s", (story) => expect(saidOfWater(story)).not.toBe("dry"));
  it("is read of a long letter in time, whatever is written", () => {
    expect(storyTells(`${"if a pale ring and it is not, ".repeat(3_000)} It is stiff.`)).toEqual([]);
    expect(storyTells("It has a pale ring, and it has no dark patch, ".repeat(200))).toEqual(["changes"]);
    expect(storyTells(`${"Hello. ".repeat(1_000)}It is stiff.`)).toEqual(["changes"]);
  });
});

describe("storyDetails", () => {
  it.each([
    ["I washed it at home last month and now it is stiff and brown.", ["washed-home", "brown", "stiff"]], ["We’ve cleaned it ourselves. It dried hard.", ["washed-home", "stiff"]],
    ["The edge turned brown after the leak.", ["brown"]], ["There is a brown ring under the pot.", ["brown"]], ["A ring under the plant pot. It never leaked.", ["pot"]], ["Three plant pots stand on it.", ["pot"]], ["We keep flowerpots on the rug.", ["pot"]],
    ["A pot plant stands on it.", ["pot"]], ["There is a stiff place under the planter.", ["pot", "stiff"]], ["The JARDINIÈRE is on it.", ["pot"]], ["A pale patch beneath two potted plants.", ["pot"]],
  ])("takes up what was told: %s", (story, details) => expect(storyDetails(story)).toEqual(details));
  it.each(["It is a brown rug from Kayseri, cream and brown.", "I never washed it at home.", "Can you wash it? I would like it washed.", "The cleaner washed it.", "It has not gone hard.", "I moved a plant pot and found a ring.", "The plant pot went over.", "There is no plant pot on it.", "The planter stood beside it.", ""])(
    "takes up nothing: %s", (story) => expect(storyDetails(story)).toEqual([]));
});

describe("storyHasTrouble", () => {
  it.each(["A glass of wine went over.", "I washed it.", "There are stains at one end.", "It smells."])("finds trouble: %s", (story) => expect(storyHasTrouble(story)).toBe(true));
  it.each(["I would like it cleaned.", "There are no stains and it was never flooded.", "What is it made of?", ""])("finds none in a wish, in what is denied, or in a question: %s", (story) => expect(storyHasTrouble(story)).toBe(false));
});
