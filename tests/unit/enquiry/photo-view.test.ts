import { describe, expect, it } from "vitest";
import { colourPhoto, facePhoto, rugColours } from "../../../lib/enquiry/photo-view";

const photo = (kind: string, hex: string) => ({ kind, measured: { colours: [{ hex, share: 1 }], quality: { remark: null } } });

describe("rugColours", () => {
  it("come from the whole rug, else the trouble, else the pile, whatever the order", () => {
    const [pile, trouble, whole] = [photo("pile", "#111111"), photo("trouble", "#222222"), photo("whole", "#333333")];
    expect(rugColours([pile, trouble, whole])).toEqual([{ hex: "#333333", share: 1 }]);
    expect(rugColours([pile, trouble])).toEqual([{ hex: "#222222", share: 1 }]);
    expect(rugColours([photo("label", "#eeeeee"), pile])).toEqual([{ hex: "#111111", share: 1 }]);
  });
  it("are never those of a label or a back", () => {
    expect(rugColours([photo("label", "#eeeeee"), photo("back", "#999999")])).toEqual([]);
    expect(rugColours([])).toEqual([]);
    expect(colourPhoto([{ kind: "label" }])).toBeUndefined();
  });
});

describe("facePhoto", () => {
  it("is the first there is where neither the whole nor the trouble was photographed", () => {
    expect(facePhoto([{ kind: "label" }, { kind: "back" }])).toEqual({ kind: "label" });
    expect(facePhoto([])).toBeUndefined();
  });
});
