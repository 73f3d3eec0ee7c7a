import { describe, expect, it } from "vitest";
import { labelSize, sizeToOffer } from "../../../lib/enquiry/label-size";

const size = (widthCm: number, lengthCm: number) => ({ widthCm, lengthCm });
const label = (text: string, state: string) => ({ label: { text, state, by: "client", agreed: null, photoId: "p" } }) as unknown as Parameters<typeof sizeToOffer>[1][number];

describe("labelSize", () => {
  it.each([
    ["100 % VISKOSE\n200 X 300 CM", 200, 300], ["160x230cm", 160, 230], ["170 cm × 240 cm", 170, 240], ["Grösse: 2,00 x 3,00 m", 200, 300], ["1.6m x 2.3m", 160, 230], ["1600 x 2300 mm", 160, 230],
    ["200x300 80% wool", 200, 300], ["100% wool, 160 х 230 см", 160, 230],
    // 5 ft 6 in is 167.64 cm, 8 ft 243.84 cm, 9 ft 274.32 cm, 6 ft 182.88 cm; 63 in is 160.02 cm, 91 in 231.14 cm.
    ["5'6\" x 8'", 168, 244], ["6 ft x 9 ft", 183, 274], ["6' X 9'", 183, 274], ["6 x 9 ft", 183, 274], ["63 x 91 in", 160, 231],
    ["160 x 230 cm (5'3\" x 7'7\")", 160, 230],
  ])("reads the sides as they stand: %j", (words, w, l) => expect(labelSize(words)).toEqual(size(w, l)));
  it.each(["100% viscose", "2099 x cee", "80% x 20%", "120 x 180 cm, 160 x 230 cm", "2 x 3", "10 x 12 knots", "4512 x 20", "12 x 18 cm", "30 x 40 x 50", "2 years x 3", ""])("gives none where none is meant, or which of several: %j", (words) => expect(labelSize(words)).toBeNull());
});

describe("sizeToOffer", () => {
  it("offers what a label gives that somebody typed or agreed to", () => {
    expect(sizeToOffer({ labelText: "160 x 230 cm" }, [])).toEqual(size(160, 230));
    expect(sizeToOffer({}, [label("200 X 300 CM", "confirmed")])).toEqual(size(200, 300));
    expect(sizeToOffer({ labelText: "200x300 cm" }, [label("200 X 300 CM", "corrected")])).toEqual(size(200, 300));
  });
  it("offers none where nobody agreed, labels differ, or a side is known", () => {
    expect(sizeToOffer({}, [label("200 X 300 CM", "read")])).toBeNull();
    expect(sizeToOffer({ labelText: "160 x 230 cm" }, [label("200 X 300 CM", "confirmed")])).toBeNull();
    expect(sizeToOffer({ widthCm: 160, labelText: "160 x 230 cm" }, [])).toBeNull();
  });
});
