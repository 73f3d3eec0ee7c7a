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
});
