import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { sendFromClient } from "../../../lib/enquiry/answer-client";
import { correctAnswer } from "../../../lib/enquiry/correct-answer";
import { QUESTIONS } from "../../../lib/trade/questions";
import type { FormValues } from "../../../lib/enquiry/step-schemas";
import { fromPost } from "../../../lib/enquiry/messages";
import { headlineOf } from "../../../lib/reply/headline";
import type { ToldByLetter } from "../../../lib/reply/told-by-letter";
import { wordsIn } from "../../../lib/words/words";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { MESSAGE } from "../../../lib/enquiry/stored";
import { database } from "../../../lib/store/database";
import { clientOf, CURIOUS, givePhoto, good, intake, later, NOW, staff, submitted, SYSTEM, WET_VISCOSE } from "./workshop";

const change = (rugId: string, step: string, values: FormValues, seen = false) => ({ rugId, step, values, seen });
async function aRug() {
  const caller = await staff("trainee", "Pia Lorne");
  const enquiry = await submitted(CURIOUS);
  const view = async () => good(await readEnquiry(caller, enquiry.enquiryId, later(60)));
  const rugId = (await view()).rugs[0]?.id ?? "";
  const answersOf = (question: string) => database().answer.count({ where: { rugId, question } });
  return { caller, enquiry, rugId, view, answersOf };
}

/** Staff correcting and adding answers. */
export function correcting(): void {
  describe("correctAnswer", () => {
    it("the newest answer holds, the earlier one is kept, and the rug is judged anew with a new draft", async () => {
      const { caller, rugId, view, answersOf } = await aRug();
      const before = await view();
      good(await correctAnswer(caller, change(rugId, "label", { answer: "typed", labelText: "100% viscose" }), later(1)));
      good(await correctAnswer(caller, change(rugId, "shine", { answer: "none" }), later(2)));
      const after = await view();
      expect(after.rugs[0]?.answers).toMatchObject({ labelText: "100% viscose", shine: "none", sellerSaid: "silk" });
      expect(await answersOf("shine")).toBe(2);
      expect(after.rugs[0]?.assessment?.fibres[0]?.fibre).toBe("viscose");
      expect(after.draft?.text).not.toBe(before.draft?.text);
      expect(after.history.map((h) => `${h.who} ${h.what}`)).toEqual(expect.arrayContaining(["Pia Lorne corrected an answer: Is there a label, and what does it say?", `Pia Lorne corrected an answer: ${QUESTIONS.shine.ask}`]));
    });
    it("empties a field that was emptied", async () => {
      const { caller, rugId, view } = await aRug();
      good(await correctAnswer(caller, change(rugId, "price", { price: "900", currency: "GBP", boughtYear: "2019" }), later(1)));
      good(await correctAnswer(caller, change(rugId, "price", { price: "", currency: "GBP", boughtYear: "2019" }), later(2)));
      expect((await view()).rugs[0]?.answers).toMatchObject({ boughtYear: 2019 });
      expect((await view()).rugs[0]?.answers.price).toBeUndefined();
    });
    it("what was seen in a photo counts as seen until an answer that was not", async () => {
      const { caller, rugId, view } = await aRug();
      const strength = async () => (await view()).rugs[0]?.assessment?.findings.find((f) => f.what === "back")?.strength;
      good(await correctAnswer(caller, change(rugId, "back", { answer: "knots" }, true), later(1)));
      expect([await strength(), (await view()).rugs[0]?.seen]).toEqual(["photo", ["back"]]);
      good(await correctAnswer(caller, change(rugId, "back", { answer: "cloth" }), later(2)));
      expect([await strength(), (await view()).rugs[0]?.seen]).toEqual(["told", []]);
    });
    it("what cannot be seen in a photo is never taken as seen", async () => {
      const { caller, rugId, view } = await aRug();
      good(await correctAnswer(caller, change(rugId, "seller", { answer: "viscose" }, true), later(1)));
      expect((await view()).rugs[0]?.seen).toEqual([]);
    });
    it("wet now is told of the whole enquiry, and makes it urgent", async () => {
      const { caller, rugId, view } = await aRug();
      good(await correctAnswer(caller, change(rugId, "wet-now", { answer: "wet" }), later(1)));
      const after = await view();
      expect([after.answers.wetNow, after.answers.reason, after.urgency]).toEqual(["wet", "what-is-it", "hours"]);
    });
    it("an answer that it is dry now ends the first aid of the last hour for desk, queue and draft alike; told at once with the hour, for none of them", async () => {
      const spilt = async (wetNow: "wet" | "no") => submitted({ wetNow, reason: "just-happened", rug: { labelFound: "typed", labelText: "100% wool", incidents: ["spill"], liquid: "wine", since: "hour" } });
      const { caller } = await aRug();
      const seen = async (enquiryId: string) => {
        const { rugs: [rug], urgency, urgencyWhy, draft } = good(await readEnquiry(caller, enquiryId, later(60)));
        const aid = rug?.assessment ? headlineOf(rug.assessment, { letter: rug.letter as ToldByLetter, words: wordsIn("en-GB") }).says : "";
        return { rugId: rug?.id ?? "", urgency, aid: [/first aid/.test(aid), /\bwet\b/.test(urgencyWhy), /do this first/.test(draft?.text ?? ""), rug?.assessment?.firstAid !== null] };
      };
      const [wet, atOnce] = [await spilt("wet"), await spilt("no")];
      for (const { enquiryId } of [wet, atOnce]) expect(await seen(enquiryId)).toMatchObject({ urgency: "hours", aid: [true, true, true, true] });
      good(await correctAnswer(caller, change((await seen(wet.enquiryId)).rugId, "wet-now", { answer: "no" }), later(20)));
      expect(await seen(wet.enquiryId)).toMatchObject({ urgency: "two_days", aid: [false, false, false, false] });
    });
    it("an answer that it is dry ends the first aid for what may be gas more than a day after that was told, and not sooner, nor of what was put on it since", async () => {
      const bleached = () => submitted({ wetNow: "no", reason: "just-happened", rug: { labelFound: "typed", labelText: "100% wool", incidents: ["spotted"], treatments: ["bleach", "vinegar-soda"], since: "hour" } });
      const { caller } = await aRug();
      const [{ enquiryId }, treatedSince] = [await bleached(), await bleached()];
      const seen = async (id: string) => good(await readEnquiry(caller, id, later(60)));
      const dryAt = async (id: string, minutes: number) => {
        good(await correctAnswer(caller, change((await seen(id)).rugs[0]?.id ?? "", "wet-now", { answer: "no" }), later(minutes)));
        const { rugs: [rug], urgency } = await seen(id);
        return [rug?.assessment?.firstAid !== null, urgency];
      };
      expect([await dryAt(enquiryId, 20), await dryAt(enquiryId, 24 * 60), await dryAt(enquiryId, 24 * 60 + 1)]).toEqual([[true, "hours"], [true, "hours"], [false, "can_wait"]]);
      await database().answer.create({ data: { id: randomUUID(), rugId: (await seen(treatedSince.enquiryId)).rugs[0]?.id ?? "", question: "treatments", value: ["bleach", "vinegar-soda"], from: "client", at: later(24 * 60) } });
      expect(await dryAt(treatedSince.enquiryId, 24 * 60 + 1)).toEqual([true, "hours"]);
    });
    it("an answer that is none is refused beside its field, and nothing is written", async () => {
      const { caller, rugId, view } = await aRug();
      const before = await database().answer.count({ where: { rugId } });
      expect(await correctAnswer(caller, change(rugId, "size", { unit: "cm", widthCm: "-3", lengthCm: "200" }), later(1))).toMatchObject({ ok: false, code: "invalid", fields: { widthCm: expect.any(String) as string } });
      expect(await correctAnswer(caller, change(rugId, "shine", { answer: "golden" }), later(1))).toMatchObject({ ok: false, code: "invalid" });
      expect([await database().answer.count({ where: { rugId } }), (await view()).history.length]).toEqual([before, 1]);
    });
    it("the client's own story and name are not there to be corrected, nor a rug that is not", async () => {
      const { caller, rugId } = await aRug();
      for (const step of ["story", "contact", "photos", "no-such-step"]) expect(await correctAnswer(caller, change(rugId, step, {}), NOW)).toMatchObject({ ok: false, code: "not-found" });
      expect(await correctAnswer(caller, change(randomUUID(), "shine", { answer: "none" }), NOW)).toMatchObject({ ok: false, code: "not-found" });
    });
    it("is pointed to by a client's words that seem to correct an answer, until staff have corrected it; nothing is judged by the words", async () => {
      const caller = await staff("trainee", "Pia Lorne");
      const enquiry = await submitted({ ...WET_VISCOSE, rug: { ...WET_VISCOSE.rug, price: 4000, currency: "GBP" } });
      const client = await clientOf(enquiry);
      const rug = async () => { const [first] = good(await readEnquiry(caller, enquiry.enquiryId, later(60))).rugs; if (!first) throw new Error("Expected a rug but found none"); return first; };
      const before = await rug();
      expect(before.corrections).toEqual([]);
      good(await sendFromClient(client, { message: "It was red wine, not coffee. And I paid 400, not 4000!" }, later(2)));
      good(await sendFromClient(client, { message: "Thank you, the coffee is not wet any more." }, later(3)));
      const at = later(2).toISOString();
      expect((await rug()).corrections).toEqual([{ at, of: "liquid", step: "liquid" }, { at, of: "price", step: "price" }]);
      expect((await rug()).answers).toEqual(before.answers);
      expect((await rug()).assessment?.fibres).toEqual(before.assessment?.fibres);
      good(await correctAnswer(caller, change(before.id, "liquid", { answer: "wine" }), later(4)));
      expect((await rug()).corrections.map((c) => c.of)).toEqual(["price"]);
      // Looked at, and kept as it stands: that settles it too.
      good(await correctAnswer(caller, change(before.id, "price", { price: "4000", currency: "GBP", boughtYear: "" }), later(5)));
      expect((await rug()).corrections).toEqual([]);
      good(await sendFromClient(client, { message: "Sorry, my mistake: it was £450." }, later(6)));
      expect((await rug()).corrections).toEqual([{ at: later(6).toISOString(), of: "price", step: "price" }]);
    });
    it("is not pointed to by words from an address that nobody has called the client's", async () => {
      const { caller, enquiry, rugId } = await aRug();
      await database().answer.create({ data: { id: randomUUID(), rugId, question: MESSAGE, value: "It was sold as wool, not as silk.", from: fromPost("a-post"), at: later(1) } });
      const of = async () => good(await readEnquiry(caller, enquiry.enquiryId, later(60))).rugs[0]?.corrections.map((c) => c.of);
      expect(await of()).toEqual([]);
      await database().answer.updateMany({ where: { rugId, question: MESSAGE }, data: { from: "client" } });
      expect(await of()).toEqual(["sellerSaid"]);
    });
    it("is for staff alone", async () => {
      const { enquiry, rugId } = await aRug();
      for (const caller of [await clientOf(enquiry), await intake(CURIOUS), SYSTEM, { kind: "public", addressHash: null } as const]) {
        expect((await correctAnswer(caller, change(rugId, "shine", { answer: "none" }), NOW)).ok).toBe(false);
      }
    });
    it("a photo that comes later judges it with the answer as corrected", async () => {
      const { caller, enquiry, rugId, view } = await aRug();
      good(await correctAnswer(caller, change(rugId, "label", { answer: "typed", labelText: "100% wool" }), later(1)));
      good(await givePhoto(await clientOf(enquiry), "back", later(3)));
      expect((await view()).rugs[0]?.assessment?.fibres[0]?.fibre).toBe("wool");
    });
  });
}
