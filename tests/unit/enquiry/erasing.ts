import { randomUUID } from "node:crypto";
import { existsSync, readdirSync, utimesSync, writeFileSync } from "node:fs";
import { readFile, rm } from "node:fs/promises";
import path from "node:path";
import { Readable } from "node:stream";
import { unzipSync, strFromU8 } from "fflate";
import { describe, expect, it, onTestFinished } from "vitest";
import { zipResponse } from "../../../app/_server/zip-response";
import { config } from "../../../lib/config/config";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import type { Caller } from "../../../lib/enquiry/caller";
import { copyEnquiry } from "../../../lib/enquiry/copy-enquiry";
import { eraseAgain, erasedIds } from "../../../lib/enquiry/erase-again";
import { eraseEnquiry } from "../../../lib/enquiry/erase-enquiry";
import { keepPost } from "../../../lib/enquiry/keep-post";
import { linkPost } from "../../../lib/enquiry/link-post";
import { makeDocument } from "../../../lib/enquiry/make-document";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { countOutlived, eraseOutlived, monthsBefore } from "../../../lib/enquiry/retention";
import { sortPost } from "../../../lib/enquiry/sort-post";
import { STATES } from "../../../lib/enquiry/states";
import { WORDS_READ } from "../../../lib/enquiry/unread-letters";
import { submitEnquiry } from "../../../lib/enquiry/submit-enquiry";
import type { EnquiryStateId } from "../../../lib/enquiry/views";
import { sqliteFile } from "../../../lib/store/connection";
import { closeDatabase, database } from "../../../lib/store/database";
import { photoFolder, photoPath } from "../../../lib/store/photo-files";
import { PHOTO_SIZES } from "../../../lib/store/photo-layout";
import { postFolder } from "../../../lib/store/post-files";
import { KEPT_TABLES, tableOf } from "../../../lib/store/tables";
import type { Tx } from "../../../lib/store/open-store";
import { saveSettings } from "../../../lib/enquiry/save-settings";
import { readSettings } from "../../../lib/workshop/settings";
import { DEFAULT_SETTINGS } from "../../../lib/workshop/settings-schema";
import { letter } from "./mail-files";
import { callerFromLink } from "../../../lib/enquiry/open-client-link";
import { sendFromClient } from "../../../lib/enquiry/answer-client";
import { answerOnce, clientOf, givePhoto, good, intake, later, NOW, settle, staff, submitted, SYSTEM, WET_VISCOSE } from "./workshop";

const ivo = () => staff("reviewer", "Ivo Castellane");
const MONTHS = DEFAULT_SETTINGS.retentionMonths;
const monthsLater = (months: number, ms = 0) => new Date(new Date(NOW).setUTCMonth(NOW.getUTCMonth() + months) + ms);

/** A word that nobody else uses, in everything a client can say: it must be nowhere afterwards. */
async function everythingOf(mark: string) {
  const email = `${mark}@example.org`;
  const from = await intake({ wetNow: "no", reason: "older-trouble", rug: { sellerSaid: "silk", labelText: "100% viscose", labelFound: "typed", incidents: ["spill"], liquid: "wine", story: `It was ${mark}.` } });
  good(await givePhoto(from));
  const enquiry = good(await submitEnquiry(from, { contact: { name: `Ana ${mark}`, email }, consent: true }, NOW));
  const { enquiryId } = enquiry;
  const { rugs, reference } = good(await readEnquiry(await ivo(), enquiryId, NOW));
  const rugId = rugs[0]?.id ?? "";
  good(await makeDocument(await ivo(), { enquiryId, rugId, kind: "condition-report", filled: { theirReference: mark } }, later(1)));
  good(await approveReply(await ivo(), { enquiryId, number: 1 }, later(1)));
  await database().letter.updateMany({ where: { enquiryId }, data: { state: "sent", sentAt: later(7) } });
  const post = async (text: string) => {
    const { postId } = good(await keepPost(SYSTEM, Readable.from([letter({ from: email, text })]), later(10)));
    await sortPost(postId, later(10));
    return postId;
  };
  const postId = await post(`Again ${mark}.`);
  good(await linkPost(await ivo(), { postId, reference }, later(11)));
  return { ...enquiry, email, reference, photoId: rugs[0]?.photos[0]?.id ?? "", postId, looseId: await post(`And once more ${mark}.`) };
}

/** Every row of every table that a backup holds, as text. */
const allRows = async () => JSON.stringify(await Promise.all(KEPT_TABLES.map((key) => tableOf(database() as unknown as Tx, key).findMany({ orderBy: { id: "asc" }, take: 100_000 }))));

async function unzipped(caller: Caller, enquiryId: string, now = later(30)) {
  const copy = good(await copyEnquiry(caller, enquiryId, now));
  const response = zipResponse(copy);
  expect(response.headers.get("content-disposition")).toBe(`attachment; filename="${copy.fileName}"`);
  const files = unzipSync(new Uint8Array(await response.arrayBuffer()));
  return { files, names: Object.keys(files), everything: strFromU8(files["everything.json"] ?? new Uint8Array()) };
}

/** Copies of what is kept, and erasing it. */
export function erasing(): void {
  describe("eraseEnquiry", () => {
    it("leaves no word of the client in any table and no file, and says that it was done", async () => {
      const mark = `vermilion${randomUUID().slice(0, 8)}`;
      const { enquiryId, reference, photoId, postId, looseId } = await everythingOf(mark);
      expect(await allRows()).toContain(mark);
      expect(readdirSync(postFolder())).toContain(`${postId}.eml`);
      good(await eraseEnquiry(await ivo(), { enquiryId, typed: ` ${reference.toLowerCase().replace("-", "")} ` }, later(60)));
      const rows = await allRows();
      expect(rows).not.toContain(mark);
      expect(PHOTO_SIZES.filter((size) => existsSync(photoPath(photoId, size)))).toEqual([]);
      expect(readdirSync(photoFolder()).filter((name) => name.includes(photoId))).toEqual([]);
      expect(readdirSync(postFolder()).filter((name) => name.includes(postId) || name.includes(looseId))).toEqual([]);
      expect(await database().audit.findMany({ where: { action: "erased", detail: { equals: { erasedId: enquiryId, reference } } } })).toHaveLength(1);
      expect(await readEnquiry(await ivo(), enquiryId, later(61))).toMatchObject({ ok: false, code: "not-found" });
    });
    it.runIf(config.provider === "sqlite")("leaves none of it in the bytes of the SQLite file either", async () => {
      const mark = `ultramarine${randomUUID().slice(0, 8)}`;
      const { enquiryId, reference } = await everythingOf(mark);
      const bytes = async () => {
        await closeDatabase();
        return Promise.all(["", "-wal"].map((end) => readFile(`${sqliteFile(config.databaseUrl)}${end}`).catch(() => Buffer.alloc(0)))).then((all) => Buffer.concat(all));
      };
      expect((await bytes()).includes(mark)).toBe(true);
      good(await eraseEnquiry(await ivo(), { enquiryId, typed: reference }, later(60)));
      expect((await bytes()).includes(mark)).toBe(false);
    });
    it("needs the reference of that very enquiry from staff", async () => {
      const [one, other] = [await submitted(), await submitted()];
      for (const typed of ["", "  ", other.reference, `${one.reference}x`]) {
        expect(await eraseEnquiry(await ivo(), { enquiryId: one.enquiryId, typed }, later(1)), typed).toMatchObject({ ok: false, code: "invalid", fields: { typed: expect.stringContaining(one.reference) as string } });
      }
      expect(await database().enquiry.count({ where: { id: one.enquiryId } })).toBe(1);
    });
    it("keeps the client who has another enquiry, and the link of the erased one opens nothing", async () => {
      const email = `${randomUUID()}@example.org`;
      const [one, two] = [await submitted(undefined, { contact: { name: "Ana Example", email }, consent: true }), await submitted(undefined, { contact: { name: "Ana Example", email }, consent: true })];
      const client = await clientOf(one);
      await database().enquiry.update({ where: { id: two.enquiryId }, data: { clientId: (await database().enquiry.findUniqueOrThrow({ where: { id: one.enquiryId } })).clientId } });
      good(await eraseEnquiry(client, { enquiryId: one.enquiryId, typed: "" }, later(1)));
      expect(await callerFromLink(one.clientToken, later(2))).toBeNull();
      expect(await database().client.count({ where: { email, enquiries: { some: { id: two.enquiryId } } } })).toBe(1);
    });
    it("lets a client erase their own as long as nothing was ordered, and nobody else's", async () => {
      for (const state of STATES) {
        const enquiry = await submitted();
        await database().enquiry.update({ where: { id: enquiry.enquiryId }, data: { state } });
        const erased = await eraseEnquiry(await clientOf(enquiry), { enquiryId: enquiry.enquiryId, typed: "" }, later(1));
        const ordered: EnquiryStateId[] = ["agreed", "coming_in", "in_workshop", "ready", "finished"];
        expect(erased.ok, state).toBe(!ordered.includes(state));
      }
      const [mine, theirs] = [await submitted(), await submitted()];
      expect(await eraseEnquiry(await clientOf(mine), { enquiryId: theirs.enquiryId, typed: theirs.reference }, later(1))).toMatchObject({ ok: false, code: "not-found" });
    });
    it("is refused to a trainee and a stranger, and while the rug is here or a letter is leaving", async () => {
      const { enquiryId, reference } = await submitted();
      const wish = { enquiryId, typed: reference };
      expect(await eraseEnquiry(await staff("trainee", "Pia Wetherby"), wish, later(1))).toMatchObject({ ok: false, code: "not-allowed" });
      expect(await eraseEnquiry({ kind: "public", addressHash: null }, wish, later(1))).toMatchObject({ ok: false, code: "not-signed-in" });
      for (const state of ["in_workshop", "ready"] as const) {
        await database().enquiry.update({ where: { id: enquiryId }, data: { state } });
        expect(await eraseEnquiry(await ivo(), wish, later(1)), state).toMatchObject({ ok: false, code: "not-allowed" });
      }
      await database().enquiry.update({ where: { id: enquiryId }, data: { state: "finished" } });
      await database().letter.updateMany({ where: { enquiryId }, data: { state: "sending", leaseOwner: "another", leaseUntil: later(5) } });
      expect(await eraseEnquiry(await ivo(), wish, later(4))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      good(await eraseEnquiry(await ivo(), wish, later(5)));
    });
    it("happens once, however many press at once", async () => {
      const { enquiryId, reference } = await submitted();
      const caller = await ivo();
      const all = await Promise.all(Array.from({ length: 10 }, () => eraseEnquiry(caller, { enquiryId, typed: reference }, later(1))));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      expect(all.filter((r) => !r.ok && r.code === "not-found")).toHaveLength(9);
    });
  });

  describe("eraseOutlived", () => {
    it("erases what has rested for the months of the settings, from that moment on, and never what is ours to do", async () => {
      await settle();
      const byState = new Map<EnquiryStateId, string>();
      for (const state of STATES) {
        const { enquiryId } = await submitted();
        await database().enquiry.update({ where: { id: enquiryId }, data: { state, stateSince: NOW } });
        byState.set(state, enquiryId);
      }
      const left = async () => (await Promise.all([...byState].map(async ([state, id]) => ((await database().enquiry.count({ where: { id } })) ? [state] : [])))).flat();
      await eraseOutlived(monthsLater(MONTHS, -1));
      expect(await left()).toEqual(STATES);
      expect(await eraseOutlived(monthsLater(MONTHS))).toBeGreaterThanOrEqual(7);
      expect(await left()).toEqual(["new", "our_turn", "agreed", "coming_in", "in_workshop", "ready"]);
    });
    it("waits where its client has written and nobody has read it", async () => {
      const email = `${randomUUID()}@example.org`;
      const { enquiryId } = await submitted(undefined, { contact: { name: "Ana Example", email }, consent: true });
      await database().enquiry.update({ where: { id: enquiryId }, data: { state: "their_turn", stateSince: NOW } });
      const { postId } = good(await keepPost(SYSTEM, Readable.from([letter({ from: email })]), monthsLater(MONTHS)));
      await database().post.update({ where: { id: postId }, data: { state: "waiting", fromAddress: email } });
      await eraseOutlived(monthsLater(MONTHS));
      expect(await database().enquiry.count({ where: { id: enquiryId } })).toBe(1);
      await database().post.update({ where: { id: postId }, data: { state: "aside" } });
      await eraseOutlived(monthsLater(MONTHS));
      expect(await database().enquiry.count({ where: { id: enquiryId } })).toBe(0);
    });
    it("is asked about before the settings take a shorter time: how many would go, and nothing is saved until somebody agreed to just that time", async () => {
      await settle();
      const before = await readSettings();
      onTestFinished(async () => void good(await saveSettings(SYSTEM, before)));
      const owner = await staff("owner", "Nell Harrow");
      const email = `${randomUUID()}@example.org`;
      const rest = async (state: EnquiryStateId, at: Date, contact = { name: "Ana Example", email: `${randomUUID()}@example.org` }) => {
        const { enquiryId } = await submitted(undefined, { contact, consent: true });
        await database().enquiry.update({ where: { id: enquiryId }, data: { state, stateSince: at } });
        return enquiryId;
      };
      const now = monthsLater(6);
      // Whatever other tests left at rest is counted too.
      const others = await countOutlived(6, now);
      const [gone, unread] = [await rest("finished", NOW), await rest("their_turn", NOW, { name: "Ana Example", email })];
      await rest("finished", new Date(NOW.getTime() + 1));
      await rest("our_turn", NOW);
      const { postId } = good(await keepPost(SYSTEM, Readable.from([letter({ from: email })]), now));
      await database().post.update({ where: { id: postId }, data: { state: "waiting", fromAddress: email } });
      expect(await countOutlived(6, now)).toBe(others + 1);
      const shorter = (retentionMonths: number, mayErase: number | null = null) => saveSettings(owner, { ...before, town: "Harrowmere", retentionMonths }, now, mayErase);
      const asked = await shorter(6);
      expect(asked).toMatchObject({ ok: false, fields: { "mayErase-6": expect.stringContaining("would be erased within the hour") as string } });
      expect(JSON.stringify(asked)).toContain(`In ${others === 0 ? "one enquiry" : `${others + 1} enquiries`} nothing has waited for you for 6 months or longer`);
      expect(await shorter(6, 5)).toMatchObject({ ok: false });
      expect(await readSettings()).toEqual(before);
      good(await shorter(6, 6));
      expect((await readSettings()).retentionMonths).toBe(6);
      await eraseOutlived(now);
      expect(await database().enquiry.findMany({ where: { id: { in: [gone, unread] } }, select: { id: true } })).toEqual([{ id: unread }]);
      expect(await countOutlived(6, now)).toBe(0);
      good(await saveSettings(owner, { ...before, retentionMonths: 5 }, monthsLater(5)));
      await database().post.update({ where: { id: postId }, data: { state: "aside" } });
    });
    it("erases messages of no enquiry that were put aside before that, and copies made before a restore", async () => {
      const { postId } = good(await keepPost(SYSTEM, Readable.from([letter({ from: `${randomUUID()}@example.org` })]), NOW));
      await database().post.update({ where: { id: postId }, data: { state: "aside" } });
      const aside = path.join(config.dataDir, "before-restore-2026-11-25T09-00-00-000Z.tar.gz");
      writeFileSync(aside, "a copy");
      utimesSync(aside, NOW, NOW);
      await eraseOutlived(monthsLater(MONTHS, -1));
      expect([await database().post.count({ where: { id: postId } }), existsSync(aside)]).toEqual([1, true]);
      await eraseOutlived(monthsLater(MONTHS));
      expect([await database().post.count({ where: { id: postId } }), existsSync(aside), readdirSync(postFolder()).includes(`${postId}.eml`)]).toEqual([0, false, false]);
    });
    it("counts calendar months, to the last day of a shorter one", () => {
      const before = (from: string, months: number) => monthsBefore(new Date(from), months).toISOString();
      expect(before("2027-03-31T10:00:00.000Z", 1)).toBe("2027-02-28T10:00:00.000Z");
      expect(before("2028-03-31T10:00:00.000Z", 1)).toBe("2028-02-29T10:00:00.000Z");
      expect(before("2027-01-15T10:00:00.000Z", 24)).toBe("2025-01-15T10:00:00.000Z");
      expect(before("2027-01-31T23:59:59.999Z", 2)).toBe("2026-11-30T23:59:59.999Z");
    });
  });

  describe("eraseAgain", () => {
    it("erases what came back with a backup, also where a letter was leaving then, and remembers what did not", async () => {
      const { enquiryId } = await submitted();
      await database().letter.updateMany({ where: { enquiryId }, data: { state: "sending", leaseUntil: later(500) } });
      const never = randomUUID();
      expect(await eraseAgain([enquiryId, never], later(1))).toBe(1);
      expect(await database().enquiry.count({ where: { id: enquiryId } })).toBe(0);
      expect(await eraseAgain([enquiryId, never], later(2))).toBe(0);
      expect((await erasedIds()).filter((id) => id === never || id === enquiryId).sort()).toEqual([never, enquiryId].sort());
    });
  });

  describe("copyEnquiry", () => {
    it("holds what was told, every photo as it is kept, letters, documents and messages", async () => {
      const mark = `cobalt${randomUUID().slice(0, 8)}`;
      const { enquiryId, photoId, postId, email } = await everythingOf(mark);
      const { files, names, everything } = await unzipped(await ivo(), enquiryId);
      const readMe = strFromU8(files["read me first.txt"] ?? new Uint8Array());
      for (const part of ["everything.json", "letters", "photos", "documents", "messages", "25 November 2026"]) expect(readMe).toContain(part);
      expect(names).toEqual(expect.arrayContaining(["everything.json", "letters/01.txt", `photos/${photoId}.jpg`, `messages/${postId}.eml`]));
      expect(names.filter((n) => n.startsWith("documents/") && n.endsWith(".pdf"))).toHaveLength(1);
      expect(Buffer.from(files[`photos/${photoId}.jpg`] ?? []).equals(await readFile(photoPath(photoId, "full")))).toBe(true);
      const told = JSON.parse(everything) as { whoIsWho: string; client: { email: string }; rugs: { answers: { question: string; value: unknown }[]; judged: unknown[] }[]; history: { what: string }[] };
      expect(told.client.email).toBe(email);
      expect(told.rugs[0]?.answers).toContainEqual(expect.objectContaining({ question: "story", value: `It was ${mark}.` }));
      expect(told.rugs[0]?.judged.length).toBeGreaterThan(0);
      // Sentences that the desk reads of findings and measurements are in no language but English, so the copy has their data alone.
      expect(told.whoIsWho).toMatch(/^The client, .+, asked about it/u);
      expect(everything).not.toMatch(/"(?:staff|client)": "|"says": "[^"]* /u);
      expect(told.history.map((h) => h.what)).toContain("took a copy of everything");
      expect(Object.entries(files).some(([name, bytes]) => name.endsWith(".txt") && strFromU8(bytes).includes("/e/"))).toBe(false);
    });
    it("gives a client no judgement and no document before a reply has left, and what was judged by then after it", async () => {
      const from = await intake();
      good(await givePhoto(from));
      const enquiry = good(await submitEnquiry(from, { contact: { name: "Ana Example", email: `${randomUUID()}@example.org` }, consent: true }, NOW));
      const copied = async (caller: Caller, minutes: number) => JSON.parse((await unzipped(caller, enquiry.enquiryId, later(minutes))).everything) as { enquiry: { urgency?: string; why?: string }; rugs: { judged: unknown[]; answers: { question: string }[] }[] };
      const judged = async (caller: Caller, minutes: number) => (await copied(caller, minutes)).rugs[0]?.judged.length;
      const client = await clientOf(enquiry);
      expect(await judged(client, 1)).toBe(0);
      expect(await judged(await ivo(), 1)).toBeGreaterThan(0);
      good(await approveReply(await ivo(), { enquiryId: enquiry.enquiryId, number: 1 }, later(2)));
      expect(await judged(client, 3)).toBe(0);
      expect((await copied(client, 3)).enquiry).not.toHaveProperty("why");
      expect(await judged(client, 8)).toBeGreaterThan(0);
      expect((await copied(client, 8)).enquiry).toMatchObject({ urgency: expect.any(String) as string, why: expect.any(String) as string });
    });
    it("gives a client the judgements that their letters were written from, without the program's workings; staff get those too", async () => {
      const enquiry = await submitted(WET_VISCOSE, { contact: { name: "Ana Example", email: `${randomUUID()}@example.org` }, consent: true });
      const client = await clientOf(enquiry);
      good(await sendFromClient(client, { message: "It is dry by now." }, later(1)));
      await answerOnce(enquiry.enquiryId, later(3));
      const judgedFor = async (caller: Caller) => {
        const { everything } = await unzipped(caller, enquiry.enquiryId, later(20));
        return (JSON.parse(everything) as { rugs: { judged: { result: Record<string, unknown> }[] }[] }).rugs[0]?.judged ?? [];
      };
      const [told, all] = [await judgedFor(client), await judgedFor(await ivo())];
      expect([told.length, all.length]).toEqual([1, 2]);
      for (const field of ["fibres", "mechanisms", "improvement", "lifeYears", "money", "methods", "advice", "urgency", "findings"]) expect(told[0]?.result).toHaveProperty(field);
      const workings = /"(?:balance|decibans|losses|nextQuestions)":/u;
      expect(JSON.stringify(all)).toMatch(workings);
      expect(JSON.stringify(told)).not.toMatch(workings);
    });
    it("tells of answers, not of notes that the desk keeps among them", async () => {
      const { enquiryId } = await submitted();
      const { id: rugId } = await database().rug.findFirstOrThrow({ where: { enquiryId } });
      await database().answer.create({ data: { id: randomUUID(), rugId, question: WORDS_READ, value: true, from: "staff", at: later(1) } });
      expect((await unzipped(await ivo(), enquiryId)).everything).not.toContain(WORDS_READ);
    });
    it("is for the client of that enquiry, the owner and reviewers alone", async () => {
      const [mine, theirs] = [await submitted(), await submitted()];
      expect(await copyEnquiry(await clientOf(mine), theirs.enquiryId, NOW)).toMatchObject({ ok: false, code: "not-found" });
      expect(await copyEnquiry({ kind: "public", addressHash: null }, mine.enquiryId, NOW)).toMatchObject({ ok: false, code: "not-signed-in" });
      expect(await copyEnquiry(await staff("trainee", "Pia Wetherby"), mine.enquiryId, NOW)).toMatchObject({ ok: false, code: "not-allowed" });
      expect(await copyEnquiry(await ivo(), randomUUID(), NOW)).toMatchObject({ ok: false, code: "not-found" });
    });
    it("says of a photo whose file is lost that there is none, and is whole otherwise", async () => {
      const from = await intake();
      const lost = good(await givePhoto(from)).id;
      const enquiry = good(await submitEnquiry(from, { contact: { name: "Ana Example", email: `${randomUUID()}@example.org` }, consent: true }, NOW));
      await rm(photoPath(lost, "full"));
      const { names, everything } = await unzipped(await clientOf(enquiry), enquiry.enquiryId);
      expect(names).toEqual(["read me first.txt", "everything.json", "letters/01.txt"]);
      expect((JSON.parse(everything) as { rugs: { photos: { file: string | null }[] }[] }).rugs[0]?.photos).toMatchObject([{ file: null }]);
    });
  });
}
