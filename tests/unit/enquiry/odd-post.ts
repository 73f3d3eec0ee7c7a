import { randomUUID } from "node:crypto";
import { Readable } from "node:stream";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { bringPost } from "../../../lib/enquiry/bring-post";
import { namePhoto } from "../../../lib/enquiry/name-photo";
import { openPost } from "../../../lib/enquiry/open-post";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readPostItem } from "../../../lib/enquiry/read-post";
import { readQueue } from "../../../lib/enquiry/read-queue";
import { database } from "../../../lib/store/database";
import { letter, photos, report } from "./mail-files";
import { ANA, CURIOUS, good, later, staff, submitted } from "./workshop";
import { IN_OTHER_LANGUAGES } from "../triage/letters-in-languages";

const pia = () => staff("trainee", "Pia");
const address = () => `${randomUUID().slice(0, 8)}@example.org`;
/** A file that somebody drops on the desk: what became of it, and how it is read there. */
async function dropped(bytes: Buffer) {
  const brought = good(await bringPost(await pia(), Readable.from([bytes]), later(60)));
  return { ...brought, post: good(await readPostItem(await pia(), brought.postId)).post };
}
async function answered() {
  const email = address();
  const { enquiryId } = await submitted(CURIOUS, { ...ANA, contact: { name: "Ana Example", email } });
  const { letterId } = good(await approveReply(await staff("reviewer", "Ivo Castellane"), { enquiryId, number: 1 }, later(1)));
  return { enquiryId, email, ours: await database().letter.update({ where: { id: letterId }, data: { state: "sent", sentAt: later(6) } }) };
}
/** A weave, since a plain picture counts as blurred and is asked for again. */
const woven = () => sharp({ create: { width: 160, height: 120, channels: 3, background: "#8a8f98", noise: { type: "gaussian", mean: 140, sigma: 25 } } }).jpeg().toBuffer();
const stateOf = async (enquiryId: string) => (await database().enquiry.findUniqueOrThrow({ where: { id: enquiryId } })).state;

/** Messages that are not as they should be. */
export function oddPost(): void {
  describe("a message that names no sender", () => {
    const anonymous = (given: Parameters<typeof letter>[0]) => Buffer.from(letter(given).toString().replace(/^From: .*\r\n/u, ""));
    it("waits for a person with its words to be read", async () => {
      const { says, post } = await dropped(anonymous({ subject: "The hall runner", text: "The colour has run into the fringe." }));
      expect(says).toBe("It waits for you. It names no sender.");
      expect(post).toMatchObject({ kind: "letter", from: null, subject: "The hall runner", text: "The colour has run into the fringe." });
    });
    it("opens an enquiry once somebody has written down who sent it, with an address or a number, and keeps what it was", async () => {
      const [mailed, rung] = [await dropped(anonymous({ text: "The colour has run.", photos: await photos("#102030") })), await dropped(anonymous({ text: "It smells." }))];
      const email = address();
      const opens = async (postId: string, sender: { name: string; email: string | null; telephone: string | null } | null) => openPost(await pia(), { postId, sender }, later(61));
      expect(await opens(mailed.postId, null)).toMatchObject({ ok: false, say: expect.stringContaining("write down who sent it") as string });
      expect(await opens(mailed.postId, { name: " ", email, telephone: null })).toMatchObject({ ok: false, fields: { name: "Write the client’s name." } });
      expect(await opens(mailed.postId, { name: "Ana Example", email: null, telephone: null })).toMatchObject({ ok: false, fields: { email: expect.stringContaining("or a telephone number") as string } });
      expect(await opens(mailed.postId, { name: "Ana Example", email: "ana@", telephone: null })).toMatchObject({ ok: false, code: "invalid" });
      expect(good(await readPostItem(await pia(), mailed.postId)).post.state).toBe("waiting");
      const { enquiryId } = good(await opens(mailed.postId, { name: "Ana Example", email, telephone: null }));
      expect(good(await readEnquiry(await pia(), enquiryId, later(62)))).toMatchObject({ channel: "email", client: { name: "Ana Example", email, telephone: null }, letters: [{ kind: "acknowledgement", to: email }], post: [{ from: null }] });
      expect(await database().photo.count({ where: { rug: { enquiryId } } })).toBe(1);
      const byPhone = good(await opens(rung.postId, { name: "Odd Rung", email: null, telephone: "01632 960 112" }));
      expect(good(await readEnquiry(await pia(), byPhone.enquiryId, later(62)))).toMatchObject({ client: { name: "Odd Rung", email: null, telephone: "01632 960 112" }, letters: [] });
    });
    it("takes no other sender for one that is named", async () => {
      const { postId } = await dropped(letter({ from: address(), text: "The colour has run." }));
      expect(await openPost(await pia(), { postId, sender: { name: "Somebody Else", email: address(), telephone: null } }, later(61))).toMatchObject({ ok: false, code: "invalid" });
    });
    it("goes to the enquiry whose letter it answers, and says so", async () => {
      const { enquiryId, ours } = await answered();
      expect((await dropped(anonymous({ text: "Yes, please.", answers: ours.messageId }))).post).toMatchObject({ kind: "reply", enquiry: { id: enquiryId }, says: "It answers our letter, and names no sender." });
    });
    it("is not read first for want of a head: bytes without one stay what cannot be read", async () => {
      const { post, postId } = await dropped(Buffer.from(`no head ${randomUUID()}`));
      expect(post).toMatchObject({ kind: "unreadable", state: "waiting" });
      expect(good(await readPostItem(await pia(), postId)).raw, "what came is shown").toEqual({ kilobytes: 1, words: expect.stringMatching(/^no head /) as string });
    });
  });

  describe("a letter in another language", () => {
    it("stands with what is read today, in the Post and in the queue, and not where nothing is lost by waiting", async () => {
      const why = "Not in a language whose words we look for: read it today.";
      const { post } = await dropped(letter({ from: address(), subject: "Teppich", text: IN_OTHER_LANGUAGES.German }));
      expect(post.readFirst).toEqual({ urgency: "two_days", why });
      const { enquiry } = await dropped(letter({ from: address(), subject: "Teppich", text: IN_OTHER_LANGUAGES.German, photos: await photos("#334455") }));
      const slip = good(await readQueue(await pia(), later(61))).waiting.find((s) => s.enquiryId === enquiry?.id);
      expect(slip).toMatchObject({ urgency: "two_days", urgencyWhy: why });
    });
    it("is acknowledged with what harms no rug, people first and nothing pressed on waste water, and its page does not say that it is wet", async () => {
      const { enquiry } = await dropped(letter({ from: address(), subject: "Teppich", text: IN_OTHER_LANGUAGES.German, photos: await photos("#334455") }));
      const enquiryId = enquiry?.id ?? "";
      const { text } = await database().letter.findFirstOrThrow({ where: { enquiryId, automatic: true } });
      expect(text).toContain("Nobody here has read your letter yet. If the rug is wet");
      expect(text).not.toContain("While it is wet");
      const said = ["call 112 now", "sewage, flood water, chemicals or mould: keep off, and touch nothing", "Only on clean water or a drink: press", "Your enquiry has reached us"].map((part) => text.indexOf(part));
      expect(said.every((at) => at >= 0)).toBe(true);
      expect(said).toEqual([...said].sort((a, b) => a - b));
      expect(good(await readClientPage({ kind: "client", enquiryId, linkId: "l" }, later(60))).firstAid).toEqual({ isNow: false, handsOff: false, isGas: false });
      const draft = good(await readEnquiry(await pia(), enquiryId, later(61))).draft;
      expect(draft?.text, "whoever writes the reply has read the letter").not.toContain("Nobody here has read");
    });
    it("has the whole set instead where a word that is looked for stands in it", async () => {
      const { enquiry } = await dropped(letter({ from: address(), subject: "Teppich", text: `${IN_OTHER_LANGUAGES.German} Everything is soaked!`, photos: await photos("#334466") }));
      const { text } = await database().letter.findFirstOrThrow({ where: { enquiryId: enquiry?.id ?? "", automatic: true } });
      expect(text).toContain("While it is wet");
      expect(text).not.toContain("Nobody here has read");
    });
  });

  describe("a picture that cannot be opened", () => {
    const [broken, text] = [Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), Buffer.alloc(200, 7)]), Buffer.from("not a picture at all")];
    it("is no photo: the letter waits, says so, and keeps the file", async () => {
      const { says, post } = await dropped(letter({ from: address(), photos: [broken] }));
      expect(says).toContain("Its photo could not be opened");
      expect(post).toMatchObject({ state: "waiting", pictures: 0, leftOut: [expect.stringMatching(/^photo-1\.jpg: .*damaged or cut short/) as string] });
      const two = await dropped(letter({ from: address(), photos: [broken, text] }));
      expect(two.says).toContain("None of its 2 photos could be opened");
      expect(two.post.leftOut).toHaveLength(2);
    });
    it("beside a good one keeps no letter from its enquiry, and is told there", async () => {
      const [good1] = await photos("#556677");
      const { post, enquiry } = await dropped(letter({ from: address(), photos: [broken, good1 as Buffer] }));
      expect(post).toMatchObject({ pictures: 1, leftOut: [expect.stringMatching(/^photo-1\.jpg: /) as string] });
      expect(await database().photo.count({ where: { rug: { enquiryId: enquiry?.id ?? "" } } })).toBe(1);
    });
  });

  describe("a photo that came by mail", () => {
    const mailed = async () => {
      const { enquiry } = await dropped(letter({ from: address(), text: "The hall runner has faded.", photos: [await woven()] }));
      const enquiryId = enquiry?.id ?? "";
      return { enquiryId, photo: await database().photo.findFirstOrThrow({ where: { rug: { enquiryId } } }) };
    };
    const rugOf = async (enquiryId: string) => good(await readEnquiry(await pia(), enquiryId, later(62))).rugs[0];
    const asksFor = async (enquiryId: string, id: string) => (await rugOf(enquiryId))?.assessment?.nextQuestions.some((q) => q.kind === "photo" && q.id === id);
    it("shows nothing that was asked for until somebody says what, and is named for what it shows from then on", async () => {
      const { enquiryId, photo } = await mailed();
      expect(photo.kind).toBe("unsaid");
      expect((await rugOf(enquiryId))?.assessment?.findings.find((f) => f.what === "photo")?.value).toEqual(["unsaid"]);
      expect(await asksFor(enquiryId, "trouble")).toBe(true);
      good(await namePhoto(await pia(), { photoId: photo.id, from: "unsaid", to: "trouble" }, later(63)));
      expect((await rugOf(enquiryId))?.photos.map((p) => p.kind)).toEqual(["trouble"]);
      expect(await asksFor(enquiryId, "trouble")).toBe(false);
      expect(good(await readEnquiry(await pia(), enquiryId, later(64))).history.map((h) => h.what)).toContain("said what a photo shows");
    });
    it("is named once of two people at once, by staff alone, and never back to nothing", async () => {
      const { photo } = await mailed();
      const name = { photoId: photo.id, from: "unsaid", to: "label" } as const;
      expect((await Promise.all([namePhoto(await pia(), name, later(63)), namePhoto(await pia(), name, later(63))])).map((r) => r.ok).sort()).toEqual([false, true]);
      expect(await namePhoto(await pia(), { ...name, from: "label", to: "unsaid" }, later(64))).toMatchObject({ ok: false, code: "invalid" });
      expect(await namePhoto({ kind: "public", addressHash: null }, { ...name, from: "label", to: "back" }, later(64))).toMatchObject({ ok: false, code: "not-signed-in" });
      expect(await namePhoto(await pia(), { ...name, photoId: "nowhere" }, later(64))).toMatchObject({ ok: false, code: "not-found" });
    });
  });

  describe("a report that somebody drops by hand", () => {
    it("says what it was and what was done with it", async () => {
      const { enquiryId, email, ours } = await answered();
      const { says } = await dropped(report({ about: ours.messageId, to: email }));
      expect(says).toBe("Our letter came back: 550 5.1.1 no such mailbox. That letter counts as not delivered, nothing more is sent to its address until somebody says why, and it is your turn again. It lies with its enquiry.");
      expect(await stateOf(enquiryId)).toBe("our_turn");
    });
    it("of a full mailbox says nothing against the address, and of a delay that nothing needs doing", async () => {
      const [full, late] = [await answered(), await answered()];
      expect((await dropped(report({ about: full.ours.messageId, to: full.email, status: "5.2.2", says: "552 5.2.2 mailbox full" }))).says)
        .toBe("Our letter came back: 552 5.2.2 mailbox full. That letter counts as not delivered and it is your turn again. It lies with its enquiry.");
      expect((await dropped(report({ about: late.ours.messageId, to: late.email, action: "delayed", status: "4.4.1", says: "no answer" }))).says).toMatch(/late and still being tried.*Nothing needs doing\. It lies with its enquiry\.$/);
      expect(await stateOf(late.enquiryId)).toBe("their_turn");
    });
    it("that a machine wrote in answer says so", async () => {
      const { email, ours } = await answered();
      expect((await dropped(letter({ from: email, text: "Back on Monday.", answers: ours.messageId, head: ["Auto-Submitted: auto-replied"] }))).says)
        .toBe("A machine wrote it, so nobody answers it. Its head says that a machine sent it. It lies with its enquiry.");
    });
  });
}
