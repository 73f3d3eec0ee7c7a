import { describe, expect, it } from "vitest";
import { letterInShort } from "../../../app/(desk)/desk/[id]/letter-in-short";
import type { EnquiryView, LetterView } from "../../../lib/enquiry/views";

const letter = (says: string, { kind = "reply", state = "sent", createdAt = "2026-11-28T09:00:00Z" }: Partial<LetterView> = {}) => ({ says, kind, state, createdAt }) as LetterView;
const NOTHING = { draft: null, waitsForSecond: null, undelivered: null, letters: [] as LetterView[] };
const today = { subject: null, changes: [{ place: "The fibre", was: "It is likely wool.", now: "It is likely viscose." }] };
const DRAFT = { subject: "Your rug", text: "Dear Ana,\n\nIt is likely wool.", today: null } as unknown as EnquiryView["draft"];
const moved = (text: string) => ({ ...DRAFT, text, today }) as unknown as EnquiryView["draft"];

describe("letterInShort", () => {
  it("says that nothing is being written, whatever was acknowledged or taken back", () => {
    expect(letterInShort(NOTHING)).toBe("No letter is being written.");
    expect(letterInShort({ ...NOTHING, letters: [letter("Sent.", { kind: "acknowledgement" }), letter("Taken back.", { state: "taken_back" })] })).toBe("No letter is being written.");
  });
  it("says what became of the newest letter of ours", () =>
    expect(letterInShort({ ...NOTHING, letters: [letter("Held."), letter("Sent.", { createdAt: "2026-11-27T09:00:00Z" })] })).toBe("Held."));
  it("says of a draft that something else is known by now only while it still says the old", () => {
    expect(letterInShort({ ...NOTHING, draft: moved("Dear Ana,\n\nIt is likely wool.") })).toBe("Drafted; what is known has changed since.");
    expect(letterInShort({ ...NOTHING, draft: moved("Dear Ana,\n\nIt is likely viscose.") })).toBe("Drafted, not sent.");
  });
  it("puts a draft before what was sent, and what is wrong before the draft", () => {
    const letters = [letter("Sent.")];
    expect(letterInShort({ ...NOTHING, letters, draft: DRAFT })).toBe("Drafted, not sent.");
    expect(letterInShort({ ...NOTHING, letters, draft: DRAFT, waitsForSecond: { by: "Pia", sendAt: null, asItIs: [] } })).toBe("Waits for a second person.");
    expect(letterInShort({ ...NOTHING, letters, draft: DRAFT, undelivered: {} as EnquiryView["undelivered"] })).toBe("A letter did not arrive.");
  });
});
