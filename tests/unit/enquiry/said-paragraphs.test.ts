import { describe, expect, it } from "vitest";
import { saidOf, storedSaid } from "../../../lib/enquiry/said-paragraphs";
import { composeDraft } from "../../../lib/reply/draft";
import type { SaidParagraph } from "../../../lib/reply/pieces";
import { worthless } from "../reply/make";

describe("what a draft was put together from", () => {
  it("is read back as it was kept, with what was left out and what only a letter before said", () => {
    const draft = composeDraft(worthless());
    const [first, ...more] = draft.paragraphs;
    const marks: readonly Partial<SaidParagraph>[] = [{}, { here: null }, { here: "A part of it." }, { stands: false }, { stands: false, unsaid: true }, { stands: false, earlier: true }];
    const paragraphs = marks.map((mark) => ({ ...first!, ...mark }));
    expect(saidOf(JSON.parse(JSON.stringify(storedSaid({ ...draft, paragraphs, leftOut: more }))))).toEqual([...paragraphs, ...more]);
  });
  it("is empty where nothing was kept", () => expect(saidOf(null)).toEqual([]));
});
