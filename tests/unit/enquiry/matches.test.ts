import { describe, expect, it } from "vitest";
import { matches } from "../../../lib/enquiry/matches";

const enquiry = { reference: "K7-204", title: "Grey 170 × 240, dog", client: { name: "Zoë Brontë-Nakamura", email: "zoe@example.org", telephone: "0123 555 019" } };

describe("matches", () => {
  it.each(["k7-204", "GREY", "zoe", "Zoë", "brontë nakamura", "  dog   170 ", "example.org", "555", ""])("finds “%s”", (text) => {
    expect(matches(text, enquiry)).toBe(true);
  });
  it.each(["K7-205", "grey cat", "zoo"])("does not find “%s”: every word must stand somewhere", (text) => {
    expect(matches(text, enquiry)).toBe(false);
  });
  it("finds a client without an address by name", () => {
    expect(matches("nakamura", { ...enquiry, client: { ...enquiry.client, email: null, telephone: null } })).toBe(true);
  });
});
