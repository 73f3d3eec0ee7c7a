import { describe, expect, it } from "vitest";
import { colourPhoto, facePhoto, photoViews, rugColours, sentKinds } from "../../../lib/enquiry/photo-view";

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

describe("photoViews", () => {
  const taken = (id: string, mean: number) => ({ id, kind: "whole", width: 4, height: 3, takenAt: null, measured: { colours: [], quality: { mean, sharpness: 0.8, likeness: "6cc6815bce6438b3" } } });
  const remarks = (...means: number[]) => photoViews(means.map((mean, k) => taken(String(k), mean)) as unknown as Parameters<typeof photoViews>[0]).map((p) => p.remark);
  it("tell of two that are the same the later one", () => expect(remarks(0.5, 0.5)).toEqual([null, expect.stringContaining("already")]));
  it("find no fault with one taken again because the first was dark", () => expect(remarks(0.1, 0.5)).toEqual([expect.stringContaining("dark"), null]));
});

describe("sentKinds", () => {
  const quality = { sharpness: 0.8, mean: 0.5, clippedDark: 0, clippedLight: 0, flat: 0, cast: 0, castToward: null, subject: 1, likeness: null, longSide: 1024 };
  it("asks again for a kind of which every photo came out dark or blurred, and not where one will do", () => {
    const dark = { ...quality, mean: 0.1 }, blurred = { ...quality, sharpness: 0.1 };
    expect(sentKinds([{ kind: "whole", quality: dark }, { kind: "pile", quality: blurred }, { kind: "pile", quality }])).toEqual({ photos: ["pile"], spoilt: ["whole"] });
  });
  it("has no fault to find with a yellow light or a rug that is small in the picture", () => {
    expect(sentKinds([{ kind: "whole", quality: { ...quality, cast: 40, castToward: "yellow", subject: 0.03 } }])).toEqual({ photos: ["whole"], spoilt: [] });
  });
  it("lets a label be as white as it is", () => {
    expect(sentKinds([{ kind: "label", quality: { ...quality, mean: 0.9 } }, { kind: "back", quality: { ...quality, mean: 0.9 } }])).toEqual({ photos: ["label"], spoilt: ["back"] });
  });
});
