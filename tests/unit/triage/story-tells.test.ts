import { describe, expect, it } from "vitest";
import { storyDetails, storyHasTrouble, storyTells } from "../../../lib/triage/story-tells";

describe("storyTells", () => {
  it.each([
    ["My dog was sick on the rug and there is a yellow mark.", ["incidents", "changes"]],
    ["A glass of red wine went over last night.", ["incidents"]],
    ["It has two brown patches near the door.", ["changes"]],
    ["Moths have eaten a hole into it.", ["incidents", "changes"]],
    ["We washed it and it soaked for a day.", ["incidents"]],
    ["THE CLEANER’S MACHINE: the colours ran", ["changes"]],
  ])("reads what was told of: %s", (story, tells) => expect(storyTells(story)).toEqual(tells));
  it.each(["What is it made of?", "Hello, how much do you charge for two by three metres?", "Mark bought it in Istanbul.", "Can you clean a steady old rug?", "", "Was kostet die Reinigung?"])(
    "finds nothing told: %s", (story) => expect(storyTells(story)).toEqual([]));
});

describe("storyDetails", () => {
  it.each([
    ["I washed it at home last month and now it is stiff and brown.", ["washed-home", "brown", "stiff"]], ["We’ve cleaned it ourselves. It dried hard.", ["washed-home", "stiff"]],
    ["The edge turned brown after the leak.", ["brown"]], ["There is a brown ring under the pot.", ["brown"]],
  ])("takes up what was told: %s", (story, details) => expect(storyDetails(story)).toEqual(details));
  it.each(["It is a brown rug from Kayseri, cream and brown.", "I never washed it at home.", "Can you wash it? I would like it washed.", "The cleaner washed it.", "It has not gone hard.", ""])(
    "takes up nothing: %s", (story) => expect(storyDetails(story)).toEqual([]));
});

describe("storyHasTrouble", () => {
  it.each(["A glass of wine went over.", "I washed it.", "There are stains at one end.", "It smells."])("finds trouble: %s", (story) => expect(storyHasTrouble(story)).toBe(true));
  it.each(["I would like it cleaned.", "There are no stains and it was never flooded.", "What is it made of?", ""])("finds none in a wish, in what is denied, or in a question: %s", (story) => expect(storyHasTrouble(story)).toBe(false));
});
