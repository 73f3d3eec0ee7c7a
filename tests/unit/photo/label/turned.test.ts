import { describe, expect, it } from "vitest";
import { waysToRead } from "../../../../lib/photo/label/agree";
import type { Grey } from "../../../../lib/photo/label/grey";
import { lieOf } from "../../../../lib/photo/label/lines";
import { textOf, type SeenWord } from "../../../../lib/photo/label/seen";
import { cutOut, normalDegrees, onItsSide, turnedBack, uprightAround } from "../../../../lib/photo/label/turned";

const picture = (width: number, height: number, level: (x: number, y: number) => number): Grey =>
  ({ width, height, data: Float32Array.from({ length: width * height }, (_, i) => level(i % width, Math.floor(i / width))) });

describe("cutOut", () => {
  const grey = picture(7, 5, (x, y) => 10 * y + x);
  const whole = { x: 3.5, y: 2.5, width: 7, height: 5, degrees: 0 };
  it("gives an upright rectangle back as it is", () => { expect(cutOut(grey, whole, 1)).toEqual(grey); });
  it("seen a quarter further is the picture turned back a quarter, twice is upside down", () => {
    const once = cutOut(grey, onItsSide(whole, 1), 1), back = turnedBack(grey);
    expect([once.width, once.height]).toEqual([5, 7]);
    once.data.forEach((v, i) => expect(v).toBeCloseTo(back.data[i]!, 3));
    cutOut(grey, onItsSide(whole, 2), 1).data.forEach((v, i) => expect(v).toBeCloseTo(grey.data.at(-1 - i)!, 3));
  });
  it("names turns from −180 to 180, and the upright rectangle around a turned one, cut at the photo's edge", () => {
    expect([-180, 190, 360, -450].map(normalDegrees)).toEqual([180, -170, 0, -90]);
    const around = uprightAround({ x: 50, y: 50, width: 40, height: 20, degrees: 90 }, { width: 100, height: 200 });
    for (const [key, value] of Object.entries({ x: 0.4, y: 0.15, width: 0.2, height: 0.2 })) expect(around[key as "x"]).toBeCloseTo(value, 9);
    expect(uprightAround({ x: 0, y: 0, width: 40, height: 20, degrees: 0 }, { width: 100, height: 100 })).toEqual({ x: 0, y: 0, width: 0.2, height: 0.1 });
  });
});

describe("lieOf", () => {
  it.each([-7, -2.5, 0, 3, 8])("finds lines that lie turned by %s degrees, to half a degree", (degrees) => {
    const slope = Math.tan((degrees * Math.PI) / 180);
    const lines = picture(300, 200, (x, y) => ((((y - slope * x) % 24) + 24) % 24 < 8 && Math.floor(x / 9) % 4 !== 3 ? 1 : 0));
    expect(Math.abs(lieOf(lines).degrees - degrees)).toBeLessThanOrEqual(0.5);
  });
});

describe("waysToRead", () => {
  const word = (text: string, top = 0): SeenWord => ({ text, confidence: 0.9, left: 0, right: 1, top, bottom: top + 0.2 });
  const texts = (...readings: string[]) => waysToRead(readings.map((r) => [r.split(" ").map((w) => word(w))])).map(textOf);
  it("puts first what most readings say, and marks where they differ", () => {
    const [first] = waysToRead([[[word("76%"), word("wool")]], [[word("70%"), word("wool")]], [[word("70%"), word("wool")]]]);
    expect(first?.[0]).toMatchObject([{ text: "70%", unsure: true }, { text: "wool", unsure: false }]);
  });
  it("offers every word that was seen, and noughts for figures that a stroke makes of them", () => {
    expect(texts("79% wol", "76% wol")).toEqual(expect.arrayContaining(["79% wol", "76% wol", "70% wol"]));
  });
  it("takes no line of another number of words, and none that stands elsewhere", () => {
    expect(texts("70% wool", "70% wool e")).toEqual(["70% wool"]);
    expect(waysToRead([[[word("jute")]], [[word("silk", 0.5)]]]).map(textOf)).toEqual(["jute"]);
  });
  it("gives nothing for nothing", () => { expect(waysToRead([])).toEqual([[]]); });
});
