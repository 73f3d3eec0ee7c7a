import { randomUUID } from "node:crypto";
import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { copyEnquiry } from "../../../lib/enquiry/copy-enquiry";
import { keepPost } from "../../../lib/enquiry/keep-post";
import { ownMessage } from "../../../lib/enquiry/own-message";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readQueue } from "../../../lib/enquiry/read-queue";
import { sortPost } from "../../../lib/enquiry/sort-post";
import { database } from "../../../lib/store/database";
import { letter, photos } from "./mail-files";
import { answerOnce, clientOf, CURIOUS, good, later, leaves, staff, submitted, SYSTEM } from "./workshop";

const ivo = () => staff("reviewer", "Ivo Castellane");
const OTHER = "gareth@example.net";
const WORDS = "I am her brother. Sell it to me.";
const viewOf = async (enquiryId: string, minutes = 20) => good(await readEnquiry(await ivo(), enquiryId, later(minutes)));
const pageOf = async (enquiry: Awaited<ReturnType<typeof submitted>>) => good(await readClientPage(await clientOf(enquiry), later(30)));
const photosOf = (enquiryId: string) => database().photo.count({ where: { rug: { enquiryId } } });

/** An enquiry whose reply went out, and an answer to it from somewhere. */
async function answeredFrom(from: string | null, { text = WORDS, pictures = 0 } = {}) {
  const email = `${randomUUID()}@example.org`;
  const enquiry = await submitted(CURIOUS, { contact: { name: "Gwendolen Mar", email }, consent: true });
  const { enquiryId } = enquiry;
  const ours = await leaves(good(await approveReply(await ivo(), { enquiryId, number: 1 }, later(1))).letterId, later(6));
  const bytes = letter({ from: from ?? email, text, answers: ours.messageId, photos: await photos(...["#8a8f98", "#99aabb"].slice(0, pictures)) });
  const { postId } = good(await keepPost(SYSTEM, Readable.from([bytes]), later(10)));
  await sortPost(postId, later(10));
  return { ...enquiry, email, postId };
}

/** Answers to letters of ours that come from an address which is not the client's. */
export function fromOtherAddresses(): void {
  describe("an answer to our letter from an address we do not know", () => {
    it("stands at the desk as that address's, is our turn, and is not the client's word on their own page or in their copy", async () => {
      const enquiry = await answeredFrom(OTHER, { pictures: 1 });
      const { enquiryId, postId, email } = enquiry;
      const view = await viewOf(enquiryId);
      const message = { at: later(10).toISOString(), text: WORDS, other: { postId, address: OTHER } };
      expect(view).toMatchObject({ state: "our_turn", since: { messages: [message] }, rugs: [{ messages: [message] }], client: { email } });
      expect(view.post[0]).toMatchObject({ says: `It answers our letter, from another address than the one we know: ${OTHER}.`, leftOut: ["one photo, until somebody says whose message it is"] });
      expect(view.draft?.text, "nobody is thanked for a stranger's words").not.toContain("Thank you for your message");
      expect(good(await readQueue(await ivo(), later(20))).waiting.find((s) => s.enquiryId === enquiryId)?.standing).toBe("somebody wrote from an address we do not know");
      expect((await pageOf(enquiry)).written).toEqual([]);
      expect(await photosOf(enquiryId)).toBe(0);
      const copied = good(await copyEnquiry(await clientOf(enquiry), enquiryId, later(21)));
      expect(copied.files.filter((f) => f.name.endsWith(".eml"))).toEqual([]);
      await answerOnce(enquiryId, later(22));
      expect((await database().letter.findMany({ where: { enquiryId }, select: { toAddress: true } })).map((l) => l.toAddress)).toEqual([email, email, email]);
    });
    it("is the client's own once a person says so: on their page, with its photos, and our letters still go where they went", async () => {
      const enquiry = await answeredFrom(OTHER, { pictures: 2 });
      const { enquiryId, postId, email } = enquiry;
      good(await ownMessage(await staff("trainee", "Pia"), postId, later(21)));
      expect((await viewOf(enquiryId)).since?.messages).toEqual([{ at: later(10).toISOString(), text: WORDS, other: null }]);
      expect((await pageOf(enquiry)).written).toEqual([{ at: later(10).toISOString(), text: WORDS }]);
      expect(await photosOf(enquiryId)).toBe(2);
      expect(await viewOf(enquiryId)).toMatchObject({ client: { email }, draft: { text: expect.stringContaining("Thank you for your message and the new photos.") as string } });
      expect((await viewOf(enquiryId)).history.at(-1)).toMatchObject({ who: "Pia", what: "said that a message from another address is the client’s own" });
    });
    it("is said to be theirs once, however many press at once, and by nobody outside", async () => {
      const enquiry = await answeredFrom(OTHER, { pictures: 1 });
      const { enquiryId, postId } = enquiry;
      expect(await ownMessage(await clientOf(enquiry), postId, later(21))).toMatchObject({ ok: false });
      const all = await Promise.all([1, 2, 3].map(async () => ownMessage(await ivo(), postId, later(21))));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      expect(await photosOf(enquiryId)).toBe(1);
      expect(await ownMessage(await ivo(), randomUUID(), later(22))).toMatchObject({ ok: false, code: "not-found" });
    });
    it("holds a place of its own where it brings photos alone, and leaves no empty words behind", async () => {
      const enquiry = await answeredFrom(OTHER, { text: "", pictures: 1 });
      expect((await viewOf(enquiry.enquiryId)).since?.messages).toMatchObject([{ text: "", other: { address: OTHER } }]);
      good(await ownMessage(await ivo(), enquiry.postId, later(21)));
      expect(await pageOf(enquiry)).toMatchObject({ written: [] });
      expect(await photosOf(enquiry.enquiryId)).toBe(1);
    });
    it("is told apart from the client's own address, in whatever letters it is written", async () => {
      const enquiry = await answeredFrom(null);
      expect((await viewOf(enquiry.enquiryId)).since?.messages).toEqual([{ at: later(10).toISOString(), text: WORDS, other: null }]);
      expect((await pageOf(enquiry)).written).toHaveLength(1);
    });
  });
}
