import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { contentDisposition } from "../../../app/_server/content-disposition";

describe("contentDisposition", () => {
  it("writes a name in the letters of RFC 8187, and a plain one beside it", () => {
    // The example of RFC 8187, section 3.2.2, of its letters.
    expect(contentDisposition("attachment", "£ and € rates", "enclosure")).toBe("attachment; filename=\"enclosure\"; filename*=UTF-8''%C2%A3%20and%20%E2%82%AC%20rates");
  });
  it("lets no name end its value: nothing but attr-char and per cent stands in it, and it reads back as the name", () => {
    fc.assert(fc.property(fc.string({ unit: "grapheme" }), (name) => {
      const value = contentDisposition("attachment", name, "enclosure").split("filename*=UTF-8''")[1] ?? "";
      expect(value).toMatch(/^[A-Za-z0-9!#$&+\-.^_`|~%]*$/u);
      expect(decodeURIComponent(value)).toBe(name);
    }));
  });
});
