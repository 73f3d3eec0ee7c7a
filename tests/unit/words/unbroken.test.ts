import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { asTyped, tied, unbroken } from "../../../lib/words/unbroken";

const N = "\u00a0";
const W = "\u2060";

describe("tied", () => {
  it.each([
    ["about 20–35 % of it", `about 20–35${N}% of it`], ["in 3–6 years", `in 3–6${N}years`], ["2½–4 Jahre", `2½–4${N}Jahre`], ["170 × 240 cm, grey", `170${N}×${N}240${N}cm, grey`], ["17.1 ± 2.1 (x)", `17.1${N}±${N}2.1 (x)`],
    ["5 ft 7 in × 7 ft 10 in", `5${N}ft${N}7${N}in × 7${N}ft${N}10${N}in`], ["104.9 sq ft", `104.9${N}sq${N}ft`], ["about 70 in 100.", `about 70${N}in${N}100.`], ["2.0 m of binding", `2.0${N}m of binding`],
    ["on 29 November 2026.", `on 29${N}November 2026.`], ["on November 29, 2026", `on November${N}29, 2026`], ["le 3 Août 2026", `le 3${N}Août 2026`],
  ])("keeps figures by their units: %s", (text, kept) => expect(tied(text)).toBe(kept));
  it.each(["01632 960 200", "+44 1632 960200", "+44 (0) 1632 960 200", "(555) 010-0199", "020 7946 0123"])("keeps a telephone number whole: %s", (number) =>
    expect(tied(`Please ring us on ${number}, and ask.`)).toBe(`Please ring us on ${number.replaceAll(" ", N)}, and ask.`));
  it.each(["£90–£140 in all", "£90–140 in all", "bought in 2024 in May", "12 months", "7 minutes", "page 3 – 4 of it", "well-known", "100 percent", "2024 Model 2026", "0 200 of 300", "in 2024 12 rugs"])("leaves alone what has no unit after it: %s", (text) => expect(tied(text)).toBe(text));
});

describe("unbroken", () => {
  it.each([["20–35 %", `20–${W}35${N}%`], ["£90–£140", `£90–${W}£140`], ["2024–25", `2024–${W}25`], ["the end – 4 of it", "the end – 4 of it"], ["– a list", "– a list"]])("joins the two ends of a range: %s", (text, kept) => expect(unbroken(text)).toBe(kept));
  it("changes nothing that is read, and nothing more the second time", () => {
    fc.assert(fc.property(fc.array(fc.constantFrom("20", "3", "½", "–", " ", "%", "ft", "in", "cm", "m", "sq", "100", "£", "years", ".", "a")).map((parts) => parts.join("")), (text) => {
      expect(asTyped(unbroken(text))).toBe(text);
      expect(unbroken(unbroken(text))).toBe(unbroken(text));
    }), { numRuns: 2_000 });
  });
});
