import { describe, expect, it } from "vitest";
import { storyTells } from "../../../lib/triage/story-tells";

describe("storyTells", () => {
  it.each([
    ["My dog was sick on the rug and there is a yellow mark.", ["incidents", "changes"]],
    ["A glass of red wine went over last night.", ["incidents"]],
    ["It has two brown patches near the door.", ["changes"]],
    ["Moths have eaten a hole into it.", ["incidents", "changes"]],
    ["THE CLEANER’S MACHINE: the colours ran", ["changes"]],
  ])("reads what was told of: %s", (story, tells) => expect(storyTells(story)).toEqual(tells));
  it.each(["What is it made of?", "Hello, how much do you charge for two by three metres?", "Mark bought it in Istanbul.", "Can you clean a steady old rug?", "", "Was kostet die Reinigung?"])(
    "finds nothing told: %s", (story) => expect(storyTells(story)).toEqual([]));
});
