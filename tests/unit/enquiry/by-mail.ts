import { randomUUID } from "node:crypto";
import { readdirSync } from "node:fs";
import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { assessRug } from "../../../lib/enquiry/assess-rug";
import type { Caller } from "../../../lib/enquiry/caller";
import { correctAnswer } from "../../../lib/enquiry/correct-answer";
import { keepPost } from "../../../lib/enquiry/keep-post";
import { liftSuppression } from "../../../lib/enquiry/lift-suppression";
import { linkPost } from "../../../lib/enquiry/link-post";
import { openPost } from "../../../lib/enquiry/open-post";
import { postFile } from "../../../lib/enquiry/post-file";
import { putPostAside } from "../../../lib/enquiry/put-post-aside";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readPost, readPostItem } from "../../../lib/enquiry/read-post";
import { readQueue } from "../../../lib/enquiry/read-queue";
import { setWordsAside } from "../../../lib/enquiry/set-words-aside";
import { sortPost, sortReceived } from "../../../lib/enquiry/sort-post";
import { suppressedWhy } from "../../../lib/mail/suppression";
import { database, type Post } from "../../../lib/store/database";
import { OLDEST_FIRST } from "../../../lib/store/row-order";
import { photoFolder } from "../../../lib/store/photo-files";
import { postFileName, postFolder, readPostFile } from "../../../lib/store/post-files";
import { letter, photos, report } from "./mail-files";
import { answerOnce, ANA, clientOf, CURIOUS, good, later, leaves, NOW, staff, submitted, SYSTEM } from "./workshop";

const DAY_MIN = 24 * 60;
const address = () => `${randomUUID().slice(0, 8)}@example.org`;
const keep = async (bytes: Buffer, now = NOW, caller: Caller = SYSTEM) => good(await keepPost(caller, Readable.from([bytes]), now));
/** A message that came, sorted. */
async function came(bytes: Buffer, now = NOW): Promise<Post> {
  const { postId } = await keep(bytes, now);
  await sortPost(postId, now);
  return database().post.findUniqueOrThrow({ where: { id: postId } });
}
const lettersOf = (enquiryId: string) => database().letter.findMany({ where: { enquiryId }, orderBy: OLDEST_FIRST.createdAt });
const photosOf = (enquiryId: string) => database().photo.findMany({ where: { rug: { enquiryId } }, orderBy: { position: "asc" } });
const viewOf = async (enquiryId: string, now = NOW) => good(await readEnquiry(await staff("reviewer", "Ivo Castellane"), enquiryId, now));

/** An enquiry whose reply counts as sent. */
async function answered(email = address()) {
  const enquiry = await submitted(CURIOUS, { ...ANA, contact: { name: "Ana Example", email } });
  const { letterId } = good(await approveReply(await staff("reviewer", "Ivo Castellane"), { enquiryId: enquiry.enquiryId, number: 1 }, later(1)));
  return { ...enquiry, email, letter: await leaves(letterId, later(6)) };
}

/** What comes by mail. */
export function byMail(): void {
  describe("keepPost", () => {
    it("keeps the bytes as they came, once, however often and however many at a time they come", async () => {
      const bytes = letter({ from: address() });
      const all = await Promise.all(Array.from({ length: 6 }, () => keep(bytes)));
      expect(all.filter((k) => k.isNew)).toHaveLength(1);
      expect(new Set(all.map((k) => k.postId)).size).toBe(1);
      const id = all[0]?.postId ?? "";
      expect((await readPostFile(id)).equals(bytes)).toBe(true);
      const rows = await database().post.findMany({ select: { id: true } });
      expect(readdirSync(postFolder()).sort()).toEqual(rows.map((r) => postFileName(r.id)).sort());
      expect(await postFile({ kind: "public", addressHash: null }, id)).toMatchObject({ ok: false, code: "not-signed-in" });
      expect(good(await postFile(await staff("trainee", "Pia"), id)).bytes.equals(bytes)).toBe(true);
    });
    it("takes nothing from strangers, and nothing that is empty", async () => {
      expect(await keepPost({ kind: "public", addressHash: null }, Readable.from(["x"]), NOW)).toMatchObject({ ok: false, code: "not-signed-in" });
      expect(await keepPost(SYSTEM, Readable.from([Buffer.alloc(0)]), NOW)).toMatchObject({ ok: false, code: "unreadable" });
    });
  });

  describe("sortPost", () => {
    it("makes an enquiry of a new letter with three photos, and tells its sender once that it came", async () => {
      const from = address();
      const post = await came(letter({ from: `Ana Example <${from}>`, subject: "Rug and coffee", text: "It went over the edge.", id: "<first@example.org>", photos: await photos("#8a8f98", "#7d2e38", "#d8c7b0") }));
      expect(post).toMatchObject({ state: "filed", kind: "letter", fromAddress: from, pictures: 3, leftOut: null });
      const view = await viewOf(post.enquiryId ?? "");
      expect(view).toMatchObject({ channel: "email", state: "new", client: { name: "Ana Example", email: from }, post: [{ subject: "Rug and coffee" }] });
      expect(view.rugs[0]?.answers.story).toBe("Rug and coffee\n\nIt went over the edge.");
      expect(view.rugs[0]?.photos).toHaveLength(3);
      const letters = await lettersOf(view.id);
      expect(letters.map((l) => [l.kind, l.automatic, l.toAddress, l.inReplyTo])).toEqual([["acknowledgement", true, from, "<first@example.org>"]]);
    });
    it("does it once, whoever sorts it at the same moment, and leaves no file of a photo behind", async () => {
      const from = address();
      const { postId } = await keep(letter({ from, photos: await photos("#123456", "#654321") }));
      await Promise.all(Array.from({ length: 5 }, () => sortPost(postId, NOW)));
      expect(await database().enquiry.count({ where: { client: { email: from } } })).toBe(1);
      const kept = new Set((await database().photo.findMany({ select: { id: true } })).map((p) => p.id));
      expect(readdirSync(photoFolder()).map((name) => name.slice(0, 36)).filter((id) => !kept.has(id))).toEqual([]);
    });
    it("goes on with what a process left half done, after ten minutes and not before", async () => {
      const from = address();
      const { postId } = await keep(letter({ from, photos: await photos("#1a2b3c") }));
      await database().post.update({ where: { id: postId }, data: { attempts: 1, begunAt: NOW } });
      await sortReceived(later(10));
      expect(await database().enquiry.count({ where: { client: { email: from } } })).toBe(0);
      await sortReceived(later(11));
      expect(await database().enquiry.count({ where: { client: { email: from } } })).toBe(1);
    });
    it("leaves a message to people that ended the program three times, its file kept", async () => {
      const { postId } = await keep(letter({ from: address(), photos: await photos("#abcdef") }));
      await database().post.update({ where: { id: postId }, data: { attempts: 3, begunAt: NOW } });
      await sortPost(postId, later(11));
      expect(await database().post.findUniqueOrThrow({ where: { id: postId } })).toMatchObject({ state: "waiting", kind: "unreadable", says: expect.stringContaining("three times") as string });
    });
    it.each([
      ["without a photo", {}, /carries no photo/],
      ["written eight days ago", { date: later(-8 * DAY_MIN), photo: true }, /more than a week ago/],
    ])("lets a letter %s wait for a person", async (_, { photo, ...about }: { date?: Date; photo?: boolean }, why) => {
      const from = address();
      const post = await came(letter({ from, ...about, photos: photo ? await photos("#445566") : [] }));
      expect(post).toMatchObject({ state: "waiting", kind: "letter", enquiryId: null, says: expect.stringMatching(why) as string });
      expect(await database().client.count({ where: { email: from } })).toBe(0);
    });
    it("lets the sixth letter of one address in a day wait", async () => {
      const from = address();
      const posts: Post[] = [];
      for (let n = 0; n < 6; n++) {
        posts.push(await came(letter({ from, photos: await photos(`#77889${n}`) }), later(n)));
        await database().enquiry.updateMany({ where: { client: { email: from } }, data: { state: "finished" } });
      }
      expect(posts.map((p) => p.state)).toEqual(["filed", "filed", "filed", "filed", "filed", "waiting"]);
    });
    it("adds an answer to its enquiry by the number of our letter: words, photos, our turn; what it repeats stays apart", async () => {
      const { enquiryId, email, letter: ours } = await answered();
      const quoted = "On Wed, 25 Nov 2026 at 9:00, Lantern Yard wrote:\r\n> Dear Ana Example,\r\n> it is likely viscose.";
      const [one, two] = await photos("#aa0000", "#00aa00");
      const post = await came(letter({ from: email, text: `The fringe too.\r\n\r\n${quoted}`, answers: ours.messageId, id: "<answer@example.org>", photos: [one, two, one] as Buffer[] }), later(60));
      expect(post).toMatchObject({ state: "filed", kind: "reply", enquiryId, says: null, text: "The fringe too.", leftOut: "photo-3.jpg: we have this photo already." });
      expect(post.quoted).toContain("it is likely viscose");
      const view = await viewOf(enquiryId, later(61));
      expect(view.state).toBe("our_turn");
      expect(view.rugs[0]?.messages).toMatchObject([{ text: expect.stringContaining("The fringe too.") as string, other: null }]);
      expect(view.rugs[0]?.messages[0]?.text).not.toContain("likely viscose");
      expect(await photosOf(enquiryId)).toHaveLength(2);
      // The next letter of ours follows theirs (RFC 5322, section 3.6.4).
      await answerOnce(enquiryId, later(62));
      const last = (await lettersOf(enquiryId)).at(-1);
      expect(last?.inReplyTo).toBe("<answer@example.org>");
      expect(last?.references?.split(" ").slice(-2)).toEqual([ours.messageId, "<answer@example.org>"]);
    });
    it("keeps above each answer the question it answers, and reads that as nobody's account of the rug", async () => {
      const { enquiryId, email, letter: ours } = await answered();
      const text = ["On Wed, Lantern Yard wrote:", "> Is it wet, or did the red run today?", "No, it is dry.", "> Kind regards"].join("\r\n");
      await came(letter({ from: email, text, answers: ours.messageId }), later(60));
      const view = await viewOf(enquiryId, later(61));
      expect(view.since?.messages.map((m) => m.text)).toEqual(["> Is it wet, or did the red run today?\n\nNo, it is dry."]);
      expect(view.urgencyWhy).not.toMatch(/red run|wet/);
      expect(view.asked?.questions ?? []).toEqual([]);
    });
    it("reads what a client wrote between the lines of our letter, below a head and unmarked: what is wet is urgent", async () => {
      const { enquiryId, email, letter: ours } = await answered();
      const before = await viewOf(enquiryId, later(59));
      const late = "Too late, I washed it in the bath this morning and it is still wet.";
      const [greeting = "", first = "", ...rest] = ours.text.split("\n\n");
      const head = ["-----Original Message-----", "From: Lantern Yard", "Sent: Wednesday", "To: Ana Example", "Subject: Your rug"].join("\n");
      await came(letter({ from: email, text: ["See below.", head, greeting, first, late, ...rest].join("\n\n").replaceAll("\n", "\r\n"), answers: ours.messageId }), later(60));
      const view = await viewOf(enquiryId, later(61));
      const [message] = view.since?.messages ?? [];
      expect(message?.hidesPerhaps).toBeNull();
      expect(message?.text.split("\n").filter((line) => !line.startsWith(">")).join("\n").replaceAll(/\n+/gu, "\n").trim()).toBe(`See below.\n${late}`);
      expect(before.urgency).toBe("can_wait");
      expect(view.urgency).toBe("hours");
      expect(view.urgencyWhy).toContain("still wet");
    });
    const CLEAR = "Thanks, that is all clear to me.";
    const OUR_WORDS = "The smell is another matter: after cleaning it may still come back in damp weather.\n\nIf it is wet, lift it off the floor now and let it dry today.";
    /** An enquiry answered in words that would be urgent if its client had written them. */
    async function answeredUrgently() {
      const { enquiryId, email, letter: ours } = await answered();
      const text = ours.text.replace("\n\n", `\n\n${OUR_WORDS}\n\n`);
      await database().letter.update({ where: { id: ours.id }, data: { text } });
      return { enquiryId, email, ours: { ...ours, text } };
    }
    it("reads nothing in our own letter that stands below a client's words without a mark or a head, nor between their answers", async () => {
      const { enquiryId, email, ours } = await answeredUrgently();
      const before = await viewOf(enquiryId, later(59));
      await came(letter({ from: email, text: `${CLEAR}\n\n${ours.text}`.replaceAll("\n", "\r\n"), answers: ours.messageId }), later(60));
      const view = await viewOf(enquiryId, later(61));
      expect(view.since?.messages.map((m) => m.text)).toEqual([CLEAR]);
      expect([view.urgency, view.urgencyWhy]).toEqual([before.urgency, before.urgencyWhy]);
      expect(view.draft?.text).not.toContain("lift it");
      const blocks = ours.text.split("\n\n");
      await came(letter({ from: email, text: [blocks[0], CLEAR, ...blocks.slice(1, 3), "My sister has the receipt.", ...blocks.slice(3)].join("\n\n").replaceAll("\n", "\r\n"), answers: ours.messageId }), later(62));
      const after = await viewOf(enquiryId, later(63));
      const own = after.since?.messages[1]?.text.split("\n").filter((line) => !line.startsWith(">")).join(" ") ?? "";
      expect(own).toContain(CLEAR);
      expect(own).toContain("My sister has the receipt.");
      expect(own).not.toMatch(/smell|wet|regards/u);
      expect([after.urgency, after.urgencyWhy]).toEqual([before.urgency, before.urgencyWhy]);
    });
    it("reads nothing in our own letter either where somebody here puts a new letter that repeats it to its enquiry", async () => {
      const { enquiryId, email, ours } = await answeredUrgently();
      const { id, state } = await came(letter({ from: email, text: `${CLEAR}\n\n${ours.text}`.replaceAll("\n", "\r\n") }), later(60));
      expect(state).toBe("waiting");
      const { reference } = await database().enquiry.findUniqueOrThrow({ where: { id: enquiryId } });
      good(await linkPost(await staff("trainee", "Pia"), { postId: id, reference }, later(61)));
      expect((await viewOf(enquiryId, later(62))).since?.messages.map((m) => m.text)).toEqual([CLEAR]);
    });
    it("says beside a letter that repeats what is none of ours that words of theirs may stand in that, and not beside one that repeats ours alone", async () => {
      const { enquiryId, email, letter: ours } = await answered();
      const head = "Thank you.\r\n\r\nFrom: Lantern Yard\r\nSent: Wednesday\r\nTo: Ana\r\nSubject: Rug\r\n\r\n";
      const other = await came(letter({ from: email, text: `${head}Dear Bo, the runner is wool.\r\nIt is wet.`, answers: ours.messageId }), later(60));
      const alone = await came(letter({ from: email, text: `${head}${ours.text.replaceAll("\n", "\r\n")}`, answers: ours.messageId }), later(62));
      const view = await viewOf(enquiryId, later(63));
      expect(view.since?.messages.map((m) => [m.text, m.hidesPerhaps])).toEqual([["Thank you.", other.id], ["Thank you.", null]]);
      const told = await readPostItem(await staff("trainee", "Pia"), other.id);
      expect(good(told).post.hidesPerhaps).toBe(true);
      expect(good(await readPostItem(await staff("trainee", "Pia"), alone.id)).post.hidesPerhaps).toBe(false);
    });
    it("names beside a later letter's words what came with it, also where it has none", async () => {
      const { enquiryId, email, letter: ours } = await answered();
      const files = [{ name: "valuation.pdf", type: "application/pdf", bytes: Buffer.from("%PDF-1.7\n".padEnd(5_000, "v")) }];
      const first = await came(letter({ from: email, text: "Here it is.", answers: ours.messageId, files }), later(60));
      const second = await came(letter({ from: email, text: "", answers: ours.messageId, files: [{ ...files[0]!, name: "receipt.pdf" }] }), later(62));
      const plain = await came(letter({ from: email, text: "That is all.", answers: ours.messageId }), later(64));
      const named = (name: string, id: string) => ({ id, files: [{ at: 0, name, kilobytes: 5 }], leftOut: [] });
      const view = await viewOf(enquiryId, later(65));
      for (const messages of [view.since?.messages, view.rugs[0]?.messages]) expect(messages?.map((m) => [m.text, m.enclosed])).toEqual([["Here it is.", named("valuation.pdf", first.id)], ["", named("receipt.pdf", second.id)], ["That is all.", null]]);
      expect(plain.leftOut).toBeNull();
    });
    it("tells the desk and the client's own page of a photo that could not be opened, until another has come", async () => {
      const { email, letter: ours, ...enquiry } = await answered();
      const { enquiryId } = enquiry;
      const heic = (name: string) => ({ name, type: "image/heic", bytes: Buffer.alloc(4_000, "half a photo") });
      const answer = async (minutes: number, colours: string[], files: ReturnType<typeof heic>[], from = email) =>
        came(letter({ from, text: "See.", answers: ours.messageId, photos: await photos(...colours), files }), later(minutes));
      const told = async (minutes: number) => ({
        desk: (await viewOf(enquiryId, later(minutes))).rugs[0]?.unopened, own: good(await readClientPage(await clientOf(enquiry), later(minutes))).unopened,
      });
      expect(await told(20)).toEqual({ desk: [], own: [] });
      const lost = await answer(60, [], [heic("IMG_0012.HEIC")]);
      expect(lost.leftOut).toMatch(/^IMG_0012\.HEIC: We do not recognise this as a photo/);
      expect(await told(61)).toEqual({ desk: [{ postId: lost.id, name: "IMG_0012.HEIC" }], own: ["IMG_0012.HEIC"] });
      // What somebody else sends is not asked of the client.
      await answer(62, [], [heic("theirs.heic")], address());
      expect((await told(63)).own).toEqual(["IMG_0012.HEIC"]);
      // Of one letter one opens, and one does not.
      const again = await answer(70, ["#aa1122"], [heic("IMG_0013.HEIC")]);
      expect(await told(71)).toEqual({ desk: [{ postId: again.id, name: "IMG_0013.HEIC" }], own: ["IMG_0013.HEIC"] });
      await answer(80, ["#22aa11"], []);
      expect(await told(81)).toEqual({ desk: [], own: [] });
    });
    it("takes the same answer once, also where another program saved it with other bytes", async () => {
      const { enquiryId, email, letter: ours } = await answered();
      const answer = { from: email, text: "Only once.", answers: ours.messageId, id: `<${randomUUID()}@example.org>` };
      await came(letter(answer));
      expect(await came(letter({ ...answer, head: ["X-Saved-By: another program"] }))).toMatchObject({ state: "aside", says: expect.stringContaining("came before") as string });
      expect((await viewOf(enquiryId)).rugs[0]?.messages.map((m) => m.text)).toEqual(["Only once."]);
    });
    it("never threads by the address alone: a person decides", async () => {
      const { email, reference } = await answered();
      const post = await came(letter({ from: email.toUpperCase(), subject: `Re: ${reference}`, photos: await photos("#99aabb") }));
      expect(post).toMatchObject({ state: "waiting", enquiryId: null, says: expect.stringContaining("open enquiry") as string });
      expect(good(await readPostItem(await staff("trainee", "Pia"), post.id)).suggested.map((s) => s.reference)).toEqual([reference]);
    });
    it("takes what no machine may be answered in, and answers nothing", async () => {
      const { enquiryId, email, letter: ours } = await answered();
      const before = await database().letter.count();
      expect(await came(letter({ from: email, text: "Back on Monday.", answers: ours.messageId, head: ["Auto-Submitted: auto-replied"] }))).toMatchObject({ state: "filed", kind: "automatic", enquiryId });
      expect(await came(letter({ from: address(), head: ["List-Id: <offers.example.net>"], photos: await photos("#101010") }))).toMatchObject({ state: "aside", kind: "automatic", enquiryId: null });
      expect(await came(letter({ from: "desk@lantern-yard.example", photos: await photos("#202020") }))).toMatchObject({ state: "aside" });
      expect(await database().letter.count()).toBe(before);
      expect((await viewOf(enquiryId)).state).toBe("their_turn");
    });
    it("keeps and shows what cannot be read", async () => {
      const post = await came(Buffer.from([0x00, 0xff, 0xfe, 0x80, 0x0a, 0x0d, 0x41]));
      expect(post).toMatchObject({ state: "waiting", kind: "unreadable" });
      expect(good(await readPost(await staff("trainee", "Pia"))).open.map((p) => p.id)).toContain(post.id);
      expect(await openPost(await staff("trainee", "Pia"), { postId: post.id }, NOW)).toMatchObject({ ok: false, code: "unreadable" });
    });
  });

  describe("words that cannot wait", () => {
    const FLOOD = "The washing machine leaked over it last night, it is soaking wet.";
    const opened = async (text: string, now = NOW) => {
      const { enquiryId } = await came(letter({ from: address(), text, photos: await photos(`#${randomUUID().slice(0, 6)}`) }), now);
      return enquiryId ?? "";
    };
    const row = (id: string) => database().enquiry.findUniqueOrThrow({ where: { id }, select: { urgency: true, urgencyWhy: true } });

    it("put a letter first in the queue, with its own sentence as the reason, before what is less urgent and came earlier", async () => {
      const calm = await opened("What is it made of?");
      const smells = await opened("It smells since it was cleaned.", later(1));
      const flood = await opened(FLOOD, later(2));
      const { waiting } = good(await readQueue(await staff("trainee", "Pia"), later(3)));
      const ids = waiting.map((s) => s.enquiryId);
      expect([flood, smells, calm].map((id) => ids.indexOf(id))).toEqual([flood, smells, calm].map((id) => ids.indexOf(id)).sort((a, b) => a - b));
      expect(waiting.find((s) => s.enquiryId === flood)).toMatchObject({ urgency: "hours", urgencyWhy: `They write “${FLOOD.slice(0, -1)}”: read it now.` });
      expect((await row(calm)).urgency).toBe("can_wait");
      const acknowledged = async (id: string) => (await lettersOf(id))[0]?.text ?? "";
      expect(await acknowledged(flood)).toMatch(/While it is wet, please do this first[\s\S]*press straight down/);
      expect(await acknowledged(await opened("Sewage came up and the rug is wet.", later(3)))).toMatch(/While it is wet, please do this first[\s\S]*Do not blot it/);
      expect(await acknowledged(smells)).not.toContain("do this first");
      // The judgement of the rug itself goes by answers: nobody has answered anything.
      expect((await viewOf(flood)).rugs[0]?.assessment?.urgency.level).toBe("can-wait");
    });
    it("begin the draft with first aid and what we need to know, until an answer says more or a letter of ours has left", async () => {
      const id = await opened(FLOOD);
      const draft = async (minutes: number) => (await viewOf(id, later(minutes))).draft?.text ?? "";
      expect(await draft(1)).toMatch(/If any of it is still wet, hours count, so please do this first[\s\S]*we need to know/);
      const { rugs, draft: shown } = await viewOf(id, later(1));
      good(await assessRug(await staff("trainee", "Pia"), rugs[0]?.id ?? "", later(2)));
      expect(await draft(2)).toBe(shown?.text);
      good(await correctAnswer(await staff("trainee", "Pia"), { rugId: rugs[0]?.id ?? "", step: "wet-now", values: { answer: "no" }, seen: false }, later(3)));
      expect(await draft(3)).not.toContain("do this first");
    });
    it("are set aside once by whoever read them, and not while they say something new", async () => {
      const id = await opened(FLOOD);
      const { urgencyWhy: why } = await row(id);
      const pia = await staff("trainee", "Pia Wetherby");
      expect(await setWordsAside({ kind: "public", addressHash: null }, { enquiryId: id, why }, NOW)).toMatchObject({ ok: false, code: "not-signed-in" });
      expect(await setWordsAside(pia, { enquiryId: id, why: "They write “another thing”: read it now." }, NOW)).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect((await viewOf(id)).may.setAside).toBe(true);
      const all = await Promise.all(Array.from({ length: 5 }, () => setWordsAside(pia, { enquiryId: id, why }, later(1))));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      expect(await row(id)).toEqual({ urgency: "can_wait", urgencyWhy: "Nobody has said whether it is wet; nothing else in it is lost by waiting." });
      const view = await viewOf(id);
      expect([view.draft?.number, view.draft?.text.includes("do this first")]).toEqual([2, false]);
      expect([view.may.setAside, view.history.filter((h) => h.what.startsWith("read what the client wrote")).length]).toEqual([false, 1]);
      good(await assessRug(pia, view.rugs[0]?.id ?? "", later(2)));
      expect((await row(id)).urgency).toBe("can_wait");
      expect(await setWordsAside(pia, { enquiryId: "none", why }, NOW)).toMatchObject({ ok: false, code: "not-found" });
    });
    it("give way to an answer, whatever it is", async () => {
      const id = await opened(FLOOD);
      const rugId = (await viewOf(id)).rugs[0]?.id ?? "";
      const answer = async (wetNow: string, minutes: number) => {
        good(await correctAnswer(await staff("trainee", "Pia"), { rugId, step: "wet-now", values: { answer: wetNow }, seen: false }, later(minutes)));
        return row(id);
      };
      expect(await answer("no", 1)).toMatchObject({ urgency: "can_wait" });
      expect(await answer("wet", 2)).toEqual({ urgency: "hours", urgencyWhy: "It is wet now. Rings and browning form while it dries, within hours." });
      expect((await viewOf(id)).may.setAside).toBe(false);
    });
    it("count anew in a later answer of the client, and no more once we have answered", async () => {
      const { enquiryId, email, letter: ours } = await answered();
      await came(letter({ from: email, text: "The pipe has burst again!", answers: ours.messageId }), later(60));
      expect(await row(enquiryId)).toEqual({ urgency: "hours", urgencyWhy: "They write “The pipe has burst again!”: read it now." });
      const reply = await answerOnce(enquiryId, later(62));
      await database().letter.update({ where: { id: reply.letterId }, data: { state: "sent" } });
      const sent = await database().letter.findUniqueOrThrow({ where: { id: reply.letterId } });
      await came(letter({ from: email, text: "Thank you, that helps.", answers: sent.messageId }), later(120));
      expect((await row(enquiryId)).urgency).not.toBe("hours");
    });
    it("have a letter without a photo read first in the Post, and said at the head of the queue", async () => {
      const calm = await came(letter({ from: address(), text: "What would cleaning cost?" }), later(5));
      const flood = await came(letter({ from: address(), text: FLOOD }), later(4));
      const machine = await came(letter({ from: address(), text: FLOOD, head: ["Precedence: bulk"] }), later(6));
      const pia = await staff("trainee", "Pia");
      const { open, settled } = good(await readPost(pia));
      const ids = open.map((p) => p.id);
      expect(ids.indexOf(flood.id)).toBeLessThan(ids.indexOf(calm.id));
      expect(open.find((p) => p.id === flood.id)?.readFirst).toEqual({ urgency: "hours", why: `They write “${FLOOD.slice(0, -1)}”: read it now.` });
      expect([open.find((p) => p.id === calm.id)?.readFirst, settled.find((p) => p.id === machine.id)?.readFirst]).toEqual([null, null]);
      expect(good(await readQueue(pia, later(7))).readFirst).toContain("soaking wet");
      good(await putPostAside(pia, { postId: flood.id }, later(8)));
      expect(good(await readQueue(pia, later(9))).readFirst ?? "").not.toContain("soaking wet");
    });
  });

  describe("a letter that came back", () => {
    it("is marked, its address takes no more, it is our turn, and only a reason of somebody who may lifts it", async () => {
      const { enquiryId, email, letter: ours } = await answered();
      const other = await submitted(CURIOUS, { ...ANA, contact: { name: "Ana Example", email } });
      const post = await came(report({ about: ours.messageId, to: email }));
      expect(post).toMatchObject({ state: "filed", kind: "bounce", enquiryId });
      expect(await database().letter.findUniqueOrThrow({ where: { id: ours.id } })).toMatchObject({ state: "failed", lastResponse: expect.stringContaining("no such mailbox") as string });
      const view = await viewOf(enquiryId);
      expect(view).toMatchObject({ state: "our_turn", may: { approve: true } });
      expect(view.client.suppressedWhy).toContain("5.1.1");
      expect((await viewOf(other.enquiryId)).client.suppressedWhy).toContain("5.1.1");
      const ivo = await staff("reviewer", "Ivo Castellane");
      expect(good(await readPost(ivo)).suppressed.filter((s) => s.address === email)).toHaveLength(1);
      expect(await liftSuppression(await staff("trainee", "Pia"), { address: email, reason: "She rang." }, NOW)).toMatchObject({ ok: false, code: "not-allowed" });
      expect(await liftSuppression(ivo, { address: email, reason: " " }, NOW)).toMatchObject({ ok: false, code: "invalid" });
      good(await liftSuppression(ivo, { address: email, reason: "She rang: the box is there again." }, later(30)));
      expect(await suppressedWhy(database(), email)).toBeNull();
      expect((await viewOf(enquiryId)).history.at(-1)?.what).toContain("She rang: the box is there again.");
      expect(await liftSuppression(ivo, { address: email, reason: "Again." }, NOW)).toMatchObject({ ok: false, code: "not-found" });
    });
    // RFC 3463: 5.1.x the address, 5.2.1 a mailbox that is disabled; 5.2.2 a full one and 5.7.1 a policy say nothing against the address.
    it.each([["5.1.1", true], ["5.1.10", true], ["5.2.1", true], ["5.2.2", false], ["5.7.1", false], ["5.3.4", false]])("with status %s, suppresses the address: %s", async (status, isDead) => {
      const { email, letter: ours } = await answered();
      await came(report({ about: ours.messageId, to: email, status, says: `550 ${status} not taken` }));
      expect((await suppressedWhy(database(), email)) !== null).toBe(isDead);
      expect((await database().letter.findUniqueOrThrow({ where: { id: ours.id } })).state).toBe("failed");
    });
    it("is only late while it is still being tried", async () => {
      const { enquiryId, email, letter: ours } = await answered();
      await came(report({ about: ours.messageId, to: email, action: "delayed", status: "4.4.1", says: "no route" }));
      expect(await database().letter.findUniqueOrThrow({ where: { id: ours.id } })).toMatchObject({ state: "sent", lastResponse: expect.stringContaining("late") as string });
      expect((await viewOf(enquiryId)).state).toBe("their_turn");
      expect(await suppressedWhy(database(), email)).toBeNull();
    });
    it("waits for a person where it names no letter of ours, and touches nothing", async () => {
      const { email } = await answered();
      expect(await came(report({ about: "<forged@example.net>", to: email }))).toMatchObject({ state: "waiting", kind: "bounce", enquiryId: null });
      expect(await suppressedWhy(database(), email)).toBeNull();
    });
  });

  describe("what waits in the Post", () => {
    it("becomes an enquiry by one of any number of people at once", async () => {
      const from = address();
      const post = await came(letter({ from }));
      const pia = await staff("trainee", "Pia Wetherby");
      expect(await openPost({ kind: "public", addressHash: null }, { postId: post.id }, NOW)).toMatchObject({ ok: false, code: "not-signed-in" });
      const all = await Promise.all(Array.from({ length: 5 }, () => openPost(pia, { postId: post.id }, NOW)));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      expect(all.filter((r) => !r.ok).map((r) => (r as { code: string }).code)).toEqual(Array(4).fill("changed-meanwhile"));
      expect(await database().enquiry.count({ where: { client: { email: from } } })).toBe(1);
      const opened = await database().enquiry.findFirstOrThrow({ where: { client: { email: from } } });
      expect((await lettersOf(opened.id)).map((l) => l.kind)).toEqual(["acknowledgement"]);
    });
    it("opens an enquiry from what a machine wrote without answering the machine", async () => {
      const from = address();
      const post = await came(letter({ from, head: ["Precedence: bulk"] }));
      const { enquiryId } = good(await openPost(await staff("owner", "Nell"), { postId: post.id }, NOW));
      expect(await lettersOf(enquiryId)).toEqual([]);
    });
    it("is put to an enquiry by its number, however it is typed", async () => {
      const { enquiryId, reference, email } = await answered();
      const post = await came(letter({ from: email, text: "I forgot: it is from 2019.", photos: await photos("#313131") }));
      const pia = await staff("trainee", "Pia Wetherby");
      expect(await linkPost(pia, { postId: post.id, reference: "nonsense" }, NOW)).toMatchObject({ ok: false, fields: { reference: expect.stringContaining("K7-204") as string } });
      expect(await linkPost(pia, { postId: post.id, reference: "A0-000" }, NOW)).toMatchObject({ ok: false, code: "invalid" });
      expect(good(await linkPost(pia, { postId: post.id, reference: ` ${reference.toLowerCase().replace("-", " ")}` }, later(5)))).toEqual({ enquiryId });
      const view = await viewOf(enquiryId, later(5));
      expect(view.rugs[0]?.messages[0]?.text).toContain("it is from 2019");
      // It came before somebody put it there, and is told by when it came.
      expect(view.rugs[0]?.messages[0]).toMatchObject({ at: later(5).toISOString(), cameAt: post.arrivedAt.toISOString() });
      expect(post.arrivedAt).not.toEqual(later(5));
      expect(view.state).toBe("our_turn");
      expect(await photosOf(enquiryId)).toHaveLength(1);
      expect(await linkPost(pia, { postId: post.id, reference }, NOW)).toMatchObject({ ok: false, code: "changed-meanwhile" });
    });
    it("is put aside and taken back out, and nothing of it is thrown away", async () => {
      const post = await came(letter({ from: address() }));
      const pia = await staff("trainee", "Pia Wetherby");
      good(await putPostAside(pia, { postId: post.id }, NOW));
      expect(await putPostAside(pia, { postId: post.id }, NOW)).toMatchObject({ ok: false, code: "changed-meanwhile" });
      good(await putPostAside(pia, { postId: post.id, isBack: true }, NOW));
      expect((await database().post.findUniqueOrThrow({ where: { id: post.id } })).state).toBe("waiting");
    });
  });
}
