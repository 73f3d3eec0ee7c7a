import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { letterHtml } from "../../../lib/mail/letter-html";

const HEAD = { name: "Sample Rugs", town: "Sampleton", address: "", email: "", telephone: "" };
const htmlOf = (text: string) => letterHtml({ subject: "A rug", text, head: HEAD, link: null });

describe("a letter as HTML", () => {
  it("keeps a range and its unit on one line, in a paragraph and in a list", () => {
    const kept = htmlOf("Nothing to speak of (0–3\u00a0%) may go.\n\n– between £90–£140 in all");
    expect(kept).toContain('<span style="white-space:nowrap">0–3\u00a0%)</span>');
    expect(kept).toContain('<span style="white-space:nowrap">90–£140</span>');
  });
  it("leaves other dashes and what a person wrote in angle brackets alone", () => {
    const kept = htmlOf("It is flat – and <b>2</b> tufts are out.");
    expect(kept).not.toContain("nowrap");
    expect(kept).toContain("&lt;b&gt;2&lt;/b&gt;");
  });
  it("keeps every line in its order, also the ones between and after the points of a list", () => {
    const lines = ["Please bring:", "– the rug, rolled", "– the receipt", "Do not walk on it until Tuesday.", "– and the label", "Ring the bell twice."];
    const words = htmlOf(lines.join("\n")).replace(/[\s\S]*<\/header>/, "").replace(/<footer>[\s\S]*/, "").replace(/<[^>]+>/g, "\n");
    expect(words.split("\n").map((w) => w.trim()).filter(Boolean)).toEqual(lines.map((line) => line.replace("– ", "")));
  });
  it("loses no word of any text", () => {
    fc.assert(fc.property(fc.array(fc.stringMatching(/^(– )?[a-z]{1,5}( [a-z]{1,5}){0,2}$/), { maxLength: 8 }).map((l) => l.join("\n")), (text) => {
      const kept = htmlOf(text).replace(/[\s\S]*<\/header>/, "").replace(/<footer>[\s\S]*/, "").replace(/<[^>]+>/g, " ").split(/\s+/).filter(Boolean);
      expect(kept).toEqual(text.split(/\s+/).filter((w) => w !== "" && w !== "–"));
    }));
  });
});
