import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { EnclosedFiles, LeftOut } from "../../../lib/ui/enclosed-files";
import { FoldedPerhaps } from "../../../lib/ui/folded-perhaps";
import { OwnWords } from "../../../lib/ui/own-words";
import { Photos } from "../../../lib/ui/photos";

const wordsOf = (html: string) => html.replace(/<[^>]*>/gu, " ").replace(/\s+/gu, " ").trim();

describe("what came by mail", () => {
  it("shows what they answer apart from their own words, and above it", () => {
    const html = renderToStaticMarkup(<OwnWords text={"> Is it wet?\n\nNo.\nIt is dry."} />);
    expect(wordsOf(html)).toBe("They repeat: Is it wet? No. It is dry.");
    expect(html.indexOf("Is it wet?")).toBeLessThan(html.indexOf("No."));
    expect(html).not.toContain("&gt;");
  });
  it("names each file with its size and the way to it, and nothing where none came", () => {
    const html = renderToStaticMarkup(<EnclosedFiles post={{ id: "p", files: [{ at: 0, name: "valuation.pdf", kilobytes: 5 }, { at: 1, name: "film.mov", kilobytes: 2051 }] }} />);
    expect(wordsOf(html)).toMatch(/^Enclosed files Save valuation\.pdf 5 kB Save film\.mov 2\.0 MB They are kept/);
    expect(html).toContain('href="/desk/post/p/enclosed/1"');
    expect(renderToStaticMarkup(<EnclosedFiles post={{ id: "p", files: [] }} />)).toBe("");
  });
  it("says that words of theirs may be folded, with the way to them", () => {
    const html = renderToStaticMarkup(<FoldedPerhaps postId="p" of="My rug" />);
    expect(wordsOf(html)).toBe("It repeats a letter below, and words of theirs may stand in that: open it : My rug .");
    expect(html).toContain('href="/desk/post/p#repeats"');
  });
  it("tells what is not shown, with the message to save", () => {
    const html = renderToStaticMarkup(<LeftOut post={{ id: "p", leftOut: ["a.heic: damaged."] }} of="My rug" />);
    expect(wordsOf(html)).toBe("With it, and not shown here: a.heic: damaged. Save the message with it : My rug");
    expect(html).toContain('href="/desk/post/p/eml"');
    expect(renderToStaticMarkup(<LeftOut post={{ id: "p", leftOut: [] }} of={null} />)).toBe("");
  });
});

describe("Photos", () => {
  const shown = (unopened: { postId: string; name: string }[]) => renderToStaticMarkup(<Photos photos={[]} unopened={unopened} rug="A rug" measured={[]} measureAt="/m" blur={null} />);
  it("says that none was sent only where none came", () => {
    expect(wordsOf(shown([]))).toBe("No photo was sent.");
    const html = shown([{ postId: "p", name: "IMG_0012.HEIC" }]);
    expect(wordsOf(html)).toBe("A photo came by mail and could not be opened: IMG_0012.HEIC Save the message with it : IMG_0012.HEIC Their own page asks for it again as a JPEG.");
    expect(html).toContain('href="/desk/post/p/eml"');
  });
  it("names each of several", () => expect(wordsOf(shown([{ postId: "p", name: "a.heic" }, { postId: "q", name: "b.heic" }]))).toMatch(/^Photos came .* a\.heic .* b\.heic .* asks for them again as JPEGs\.$/));
});
