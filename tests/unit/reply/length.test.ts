import { describe, expect, it } from "vitest";
import { mostWords, overlong, shortened } from "../../../lib/reply/length";

interface Spared { text: string; spare: number | null; least?: Spared }
const piece = (text: string, spare: number | null): Spared => ({ text, spare });
const ALL = [piece("one two three.", null), piece("four five.", 2), piece("six seven.", 1), piece("eight nine ten.", 2)];
const texts = (most: number) => shortened(ALL, most).map((p) => p.text);

describe("shortened", () => {
  it("leaves a letter alone that is just long enough", () => expect(texts(10)).toEqual(ALL.map((p) => p.text)));
  it("leaves out the least needed first", () => expect(texts(9)).toEqual(["one two three.", "four five.", "eight nine ten."]));
  it("leaves out the last of equals first, and no more than it must", () => expect(texts(5)).toEqual(["one two three.", "four five."]));
  it("puts the least of a piece in its stead once its turn has come, and keeps that", () => {
    const most = (words: number) => shortened([{ ...piece("one two three.", 1), least: piece("one.", null) }, piece("four five.", 2)], words).map((p) => p.text);
    expect([most(5), most(4), most(0)]).toEqual([["one two three.", "four five."], ["one.", "four five."], ["one."]]);
  });
  it("keeps what cannot wait however long it is", () => expect(texts(0)).toEqual(["one two three."]));
});

describe("overlong", () => {
  const of = (words: number) => Array.from({ length: words }, () => "word").join(" ");
  it.each([[350, 1, null], [351, 1, { words: 351, most: 350 }], [351, 2, null], [526, 2, { words: 526, most: 525 }], [0, 1, null], [351, 0, { words: 351, most: 350 }]])("says of %i words about %i rugs: %j", (words, rugs, said) => expect(overlong(of(words), rugs)).toEqual(said));
});

describe("mostWords", () => {
  it("gives a letter 350 words for one rug and 175 for each further one", () => expect([1, 2, 3].map(mostWords)).toEqual([350, 525, 700]));
});
