import { expect, it } from "vitest";
import { wentWith } from "../../../app/(desk)/desk/[id]/went-with";

it("says of a document that it went with letters that left, and goes with those that are held", () => {
  expect(wentWith({ letters: 0, heldLetters: 0 })).toBe("");
  expect(wentWith({ letters: 1, heldLetters: 1 })).toBe(", goes with a letter that is held");
  expect(wentWith({ letters: 2, heldLetters: 2 })).toBe(", goes with 2 letters that are held");
  expect(wentWith({ letters: 1, heldLetters: 0 })).toBe(", went with a letter");
  expect(wentWith({ letters: 3, heldLetters: 1 })).toBe(", went with 2 letters, goes with a letter that is held");
});
