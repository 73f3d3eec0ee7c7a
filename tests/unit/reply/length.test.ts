import { describe, expect, it } from "vitest";
import { mostWords, shortened } from "../../../lib/reply/length";

const piece = (text: string, spare: number | null) => ({ text, spare });
const ALL = [piece("one two three.", null), piece("four five.", 2), piece("six seven.", 1), piece("eight nine ten.", 2)];
const texts = (most: number) => shortened(ALL, most).map((p) => p.text);

describe("shortened", () => {
  it("leaves a letter alone that is just long enough", () => expect(texts(10)).toEqual(ALL.map((p) => p.text)));
  it("leaves out the least needed first", () => expect(texts(9)).toEqual(["one two three.", "four five.", "eight nine ten."]));
  it("leaves out the last of equals first, and no more than it must", () => expect(texts(5)).toEqual(["one two three.", "four five."]));
  it("keeps what cannot wait however long it is", () => expect(texts(0)).toEqual(["one two three."]));
});

describe("mostWords", () => {
  it("gives a letter 350 words for one rug and 175 for each further one", () => expect([1, 2, 3].map(mostWords)).toEqual([350, 525, 700]));
});
