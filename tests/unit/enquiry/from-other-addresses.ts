import { randomUUID } from "node:crypto";
import { readdirSync } from "node:fs";
import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { addPhoto } from "../../../lib/enquiry/add-photo";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { copyEnquiry } from "../../../lib/enquiry/copy-enquiry";
import { documentFile } from "../../../lib/enquiry/document-file";
import { keepPost } from "../../../lib/enquiry/keep-post";
import { ownMessage } from "../../../lib/enquiry/own-message";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readQueue } from "../../../lib/enquiry/read-queue";
import { sortPost } from "../../../lib/enquiry/sort-post";
import { disownMessage } from "../../../lib/enquiry/disown-message";
import { linkPost } from "../../../lib/enquiry/link-post";
import { makeDocument } from "../../../lib/enquiry/make-document";
import { openPost } from "../../../lib/enquiry/open-post";
import { putPostAside } from "../../../lib/enquiry/put-post-aside";
import { readPostItem } from "../../../lib/enquiry/read-post";
import { takePostOut } from "../../../lib/enquiry/take-post-out";
import { database } from "../../../lib/store/database";
import { photoFolder } from "../../../lib/store/photo-files";
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
      const message = { at: later(10).toISOString(), cameAt: later(10).toISOString(), text: WORDS, other: { postId, address: OTHER }, owned: null };
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
      expect((await viewOf(enquiryId)).since?.messages).toEqual([{ at: later(10).toISOString(), cameAt: later(10).toISOString(), text: WORDS, other: null, owned: { postId, address: OTHER }, enclosed: null, hidesPerhaps: null }]);
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
    it("is not the client's own any more once that was taken back: their page is as before, the photos and their files are gone, and it can be said anew", async () => {
      const enquiry = await answeredFrom(OTHER, { pictures: 2 });
      const { enquiryId, postId } = enquiry;
      const before = await viewOf(enquiryId);
      good(await ownMessage(await ivo(), postId, later(21)));
      const taken = await database().photo.findMany({ where: { rug: { enquiryId } }, select: { id: true } });
      good(await disownMessage(await staff("trainee", "Pia"), postId, later(22)));
      const view = await viewOf(enquiryId);
      expect(view.since).toEqual(before.since);
      expect(view.rugs[0]?.messages).toEqual(before.rugs[0]?.messages);
      expect(view.draft?.text).toBe(before.draft?.text);
      expect(view.post[0]?.leftOut).toEqual(["2 photos, until somebody says whose message it is"]);
      expect(view.history.at(-1)).toMatchObject({ who: "Pia", what: "said that a message from another address is not the client’s own after all" });
      expect(await pageOf(enquiry)).toMatchObject({ written: [], rugs: [{ photos: [] }] });
      expect(readdirSync(photoFolder()).filter((name) => taken.some((p) => name.startsWith(p.id)))).toEqual([]);
      good(await ownMessage(await ivo(), postId, later(23)));
      expect(await photosOf(enquiryId)).toBe(2);
      expect((await pageOf(enquiry)).written).toHaveLength(1);
    });
    it("takes no photo away that the client had sent themselves, nor one that somebody here added", async () => {
      const enquiry = await answeredFrom(OTHER, { pictures: 1 });
      const { enquiryId, postId } = enquiry;
      const [same = Buffer.alloc(0), ours = Buffer.alloc(0)] = await photos("#8a8f98", "#102030");
      const rug = await database().rug.findFirstOrThrow({ where: { enquiryId } });
      const own = await clientOf(enquiry);
      const theirs = good(await addPhoto(own, { kind: "whole" }, Readable.from([same]), { name: "a.jpg", type: "image/jpeg" }, later(12)));
      const staffs = good(await addPhoto(await ivo(), { kind: "back", rugId: rug.id }, Readable.from([ours]), { name: "b.jpg", type: "image/jpeg" }, later(13)));
      good(await ownMessage(await ivo(), postId, later(21)));
      good(await disownMessage(await ivo(), postId, later(22)));
      expect((await database().photo.findMany({ where: { rugId: rug.id }, select: { id: true } })).map((p) => p.id).sort()).toEqual([theirs.id, staffs.id].sort());
    });
    it("is taken out of documents that show its photos, and they say so", async () => {
      const { enquiryId, postId } = await answeredFrom(OTHER, { pictures: 1 });
      good(await ownMessage(await ivo(), postId, later(21)));
      const rug = await database().rug.findFirstOrThrow({ where: { enquiryId }, include: { photos: true } });
      const { documentId } = good(await makeDocument(await ivo(), { enquiryId, rugId: rug.id, kind: "condition-report", filled: {} }, later(22)));
      const photoId = rug.photos[0]?.id ?? "";
      expect(JSON.stringify((await database().document.findUniqueOrThrow({ where: { id: documentId } })).content)).toContain(photoId);
      good(await disownMessage(await ivo(), postId, later(23)));
      const after = await database().document.findUniqueOrThrow({ where: { id: documentId } });
      expect(JSON.stringify(after.content)).not.toContain(photoId);
      expect(after).toMatchObject({ alteredAt: later(23), alteredWhy: "A photo in it came from somebody else than the client, and was taken out." });
      expect(good(await documentFile(await ivo(), documentId, later(24))).bytes.subarray(0, 5).toString()).toBe("%PDF-");
    });
    it("is taken back once, by people here alone, and only where somebody had said that it is theirs", async () => {
      const enquiry = await answeredFrom(OTHER, { pictures: 1 });
      const { postId } = enquiry;
      expect(await disownMessage(await ivo(), postId, later(20))).toMatchObject({ ok: false, code: "not-found" });
      good(await ownMessage(await ivo(), postId, later(21)));
      for (const caller of [await clientOf(enquiry), { kind: "public", addressHash: null } as const]) expect(await disownMessage(caller, postId, later(22))).toMatchObject({ ok: false });
      const all = await Promise.all([1, 2, 3].map(async () => disownMessage(await ivo(), postId, later(22))));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      expect(all.find((r) => !r.ok)).toMatchObject({ code: "changed-meanwhile" });
      expect(await database().audit.count({ where: { enquiryId: enquiry.enquiryId, action: "message-disowned" } })).toBe(1);
      expect(await disownMessage(await ivo(), randomUUID(), later(23))).toMatchObject({ ok: false, code: "not-found" });
      const theirs = await answeredFrom(null);
      expect(await disownMessage(await ivo(), theirs.postId, later(22)), "their own address").toMatchObject({ ok: false, code: "not-found" });
    });
    it("is taken back too where somebody put a letter from elsewhere to the wrong enquiry", async () => {
      const { enquiryId } = await submitted(CURIOUS);
      const { reference } = await database().enquiry.findUniqueOrThrow({ where: { id: enquiryId } });
      const { postId } = good(await keepPost(SYSTEM, Readable.from([letter({ from: OTHER, text: WORDS })]), later(10)));
      await sortPost(postId, later(10));
      good(await linkPost(await ivo(), { postId, reference }, later(11)));
      expect((await viewOf(enquiryId)).rugs[0]?.messages).toMatchObject([{ text: WORDS, other: null, owned: { postId, address: OTHER } }]);
      good(await disownMessage(await ivo(), postId, later(12)));
      good(await takePostOut(await ivo(), postId, later(13)));
      expect(await viewOf(enquiryId)).toMatchObject({ rugs: [{ messages: [] }], post: [] });
    });
    it("that belongs elsewhere leaves the enquiry and waits in the Post, and becomes an enquiry of its own whose sender is told that it came", async () => {
      const from = `${randomUUID()}@example.net`;
      const { enquiryId, postId, reference } = await answeredFrom(from, { pictures: 2 });
      good(await takePostOut(await staff("trainee", "Pia"), postId, later(21)));
      const view = await viewOf(enquiryId);
      expect(view).toMatchObject({ rugs: [{ messages: [] }], post: [], state: "our_turn" });
      expect(view.since).toMatchObject({ messages: [] });
      expect(view.history.at(-1)).toMatchObject({ who: "Pia", what: "took a message from another address out: it belongs elsewhere" });
      expect(good(await readPostItem(await ivo(), postId)).post).toMatchObject({ state: "waiting", kind: "letter", enquiry: null, leftOut: [], says: `It was taken out of ${reference}, where it does not belong.` });
      const opened = good(await openPost(await ivo(), { postId }, later(22)));
      expect(await viewOf(opened.enquiryId)).toMatchObject({ client: { email: from }, rugs: [{ answers: { story: `My rug\n\n${WORDS}` } }] });
      expect(await photosOf(opened.enquiryId)).toBe(2);
      expect(await database().letter.findMany({ where: { enquiryId: opened.enquiryId }, select: { kind: true, toAddress: true } })).toEqual([{ kind: "acknowledgement", toAddress: from }]);
    });
    it("is taken out once, by people here alone, never while it counts as the client's own, and can be put aside then", async () => {
      const enquiry = await answeredFrom(OTHER);
      const { enquiryId, postId } = enquiry;
      for (const caller of [await clientOf(enquiry), { kind: "public", addressHash: null } as const]) expect(await takePostOut(caller, postId, later(20))).toMatchObject({ ok: false });
      good(await ownMessage(await ivo(), postId, later(21)));
      expect(await takePostOut(await ivo(), postId, later(22))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      good(await disownMessage(await ivo(), postId, later(23)));
      const all = await Promise.all([1, 2, 3].map(async () => takePostOut(await ivo(), postId, later(24))));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      expect(await database().audit.count({ where: { enquiryId, action: "mail-taken-out" } })).toBe(1);
      expect(await ownMessage(await ivo(), postId, later(25))).toMatchObject({ ok: false });
      good(await putPostAside(await ivo(), { postId }, later(26)));
      expect(await takePostOut(await ivo(), randomUUID(), later(27))).toMatchObject({ ok: false, code: "not-found" });
    });
    it("is told apart from the client's own address, in whatever letters it is written", async () => {
      const enquiry = await answeredFrom(null);
      expect((await viewOf(enquiry.enquiryId)).since?.messages).toEqual([{ at: later(10).toISOString(), cameAt: later(10).toISOString(), text: WORDS, other: null, owned: null, enclosed: null, hidesPerhaps: null }]);
      expect((await pageOf(enquiry)).written).toHaveLength(1);
    });
  });
}
