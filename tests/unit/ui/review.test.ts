import { describe, expect, it } from "vitest";
import type { IntakeAnswers } from "../../../lib/enquiry/questionnaire";
import { wordsIn } from "../../../lib/words/words";
import type { LabelReadingView } from "../../../lib/enquiry/label-view";
import { labelsRead, reviewOf } from "../../../lib/ui/review";

const told = (answers: IntakeAnswers, photos = 0) => Object.fromEntries(reviewOf(answers, photos, { words: wordsIn("en-GB"), areaUnit: "m2" }).map((line) => [line.step, line.told]));

describe("reviewOf", () => {
  it("always shows photos and contact, so that nobody sends without seeing that they are missing", () => {
    expect(told({})).toEqual({ photos: "None yet", contact: "Nothing yet" });
  });
  it("counts photos in words", () => {
    expect(told({}, 1)).toMatchObject({ photos: "One photo" });
    expect(told({}, 5)).toMatchObject({ photos: "Five photos" });
  });
  it("tells answers in the words they were chosen in", () => {
    expect(told({ wetNow: "no", rug: { incidents: ["spill", "sun"], shine: "unsure" } })).toMatchObject({
      "wet-now": "No, it is dry", happened: "Food or drink was spilled; It lies in the sun", shine: "I’m not sure",
    });
  });
  it("tells when it happened with the day it was told on, once one is given, since the last hour does not stay the last", () => {
    const since = (sinceToldOn?: string | null) => reviewOf({ rug: { incidents: ["spill"], since: "hour" } }, 0, { words: wordsIn("en-GB"), areaUnit: "m2", ...(sinceToldOn === undefined ? {} : { sinceToldOn }) }).find((line) => line.step === "since")?.told;
    expect([since(), since(null), since("27 November 2026")]).toEqual(["Within the last hour", "Within the last hour", "Within the last hour, as told on 27 November 2026"]);
  });
  it("tells numbers with their units", () => {
    expect(told({ rug: { widthCm: 170, lengthCm: 240, price: 4200, currency: "GBP", boughtYear: 2019 } })).toMatchObject({ size: "170 × 240 cm (5 ft 7 in × 7 ft 10 in)", price: "2019, £4,200" });
    expect(told({ rug: { lengthCm: 240 } })).toMatchObject({ size: "240 cm long (7 ft 10 in long)" });
  });
  it("tells a label that was read in a photo, once it was agreed on, as the answer, whatever was told before", () => {
    const frame = { x: 0, y: 0, width: 1, height: 1 };
    const photo = (more: Partial<LabelReadingView>) => ({ label: { photoId: "p", state: "read", by: null, text: "80% WOOL\n20% SILK", lines: [], crop: frame, quarters: 0, isSilkInDoubt: false, told: null, typed: null, agreed: null, photo: { width: 9, height: 9 }, ...more } satisfies LabelReadingView });
    const label = (photos: Parameters<typeof labelsRead>[0], answers: IntakeAnswers = {}) =>
      reviewOf(answers, photos.length, { words: wordsIn("en-GB"), areaUnit: "m2", labels: labelsRead(photos, wordsIn("en-GB")) }).find((line) => line.step === "label")?.told;
    expect(label([photo({})])).toBeUndefined();
    expect(label([photo({ state: "confirmed", by: "client" })])).toBe("“80% WOOL 20% SILK”, read from your photo, agreed by you");
    expect(label([photo({ state: "corrected", by: "staff" })], { rug: { labelFound: "none" } })).toBe("“80% WOOL 20% SILK”, read from your photo, agreed by the workshop");
    // A newer frame that nobody has agreed to changes nothing.
    expect(label([photo({ text: "HAND MADE", by: "client", agreed: { state: "confirmed", by: "client", text: "100% SILK", lines: [], crop: frame, quarters: 0 } })])).toBe("“100% SILK”, read from your photo, agreed by you");
    expect(label([photo({ state: "refused", by: "staff" })], { rug: { labelFound: "typed", labelText: "100% wool" } })).toBe("100% wool");
  });
  it("puts no second marks around words that came with their own", () => expect(told({ rug: { sellerSaid: "silk", sellerWords: "\"genuine silk\"" } })).toMatchObject({ seller: "Silk, “‘genuine silk’”" }));
  it("puts the seller's own words in quotation marks", () => expect(told({ rug: { sellerSaid: "silk", sellerWords: "finest" } })).toMatchObject({ seller: "Silk, “finest”" }));
  it("leaves out what no longer applies", () => expect(told({ reason: "routine", rug: { incidents: ["sun"], liquid: "wine" } })).not.toHaveProperty("liquid"));
});
