import { describe, expect, it } from "vitest";
import { existsSync, readdirSync } from "node:fs";
import { Readable } from "node:stream";
import { drawRug } from "../../../prisma/demo/draw-rug";
import { photoFile } from "../../../lib/enquiry/photo-file";
import { LINK_DAYS, callerFromLink, openClientLink } from "../../../lib/enquiry/open-client-link";
import { callerFromIntake, INTAKE_DAYS, openIntake } from "../../../lib/enquiry/open-intake";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readIntake } from "../../../lib/enquiry/read-intake";
import { REFERENCE_PATTERN } from "../../../lib/enquiry/reference";
import { removePhoto } from "../../../lib/enquiry/remove-photo";
import { saveIntake } from "../../../lib/enquiry/save-intake";
import { submitEnquiry } from "../../../lib/enquiry/submit-enquiry";
import { sendFromClient } from "../../../lib/enquiry/answer-client";
import { addPhoto } from "../../../lib/enquiry/add-photo";
import { ALLOWANCES } from "../../../lib/staff/rate-limit";
import { database } from "../../../lib/store/database";
import { photoFolder, photoPath } from "../../../lib/store/photo-files";
import { ANA, clientOf, CURIOUS, givePhoto, good, intake, later, NOW, PHOTO, photoBody, staff, submitted, WET_VISCOSE } from "./workshop";

const DAY_MIN = 24 * 60;

export function submitting(): void {
  describe("submitEnquiry", () => {
    it("makes the whole of it: client, rug, answers, photos, findings, assessment, draft, letter, history", async () => {
      const caller = await intake();
      const photo = good(await givePhoto(caller));
      const { reference, enquiryId } = good(await submitEnquiry(caller, ANA, NOW));
      expect(reference).toMatch(REFERENCE_PATTERN);
      const row = await database().enquiry.findUniqueOrThrow({
        where: { id: enquiryId },
        include: {
          client: true,
          rugs: { include: { answers: true, photos: true, findings: true, assessments: true } },
          draft: { include: { revisions: true } },
          letters: true,
          audit: true,
          links: true,
        },
      });
      expect(row).toMatchObject({
        state: "new",
        urgency: "hours",
        channel: "web",
        client: { name: "Ana Example", email: "ana@example.org", isTrade: false },
      });
      expect(row.answers).toMatchObject({ wetNow: "wet", consent: { at: NOW.toISOString(), sentence: expect.stringMatching(/\w+ \w+/) as string } });
      const [rug] = row.rugs;
      expect(row.rugs).toHaveLength(1);
      expect(rug?.photos.map((p) => p.id)).toEqual([photo.id]);
      expect(rug?.answers.find((a) => a.question === "labelText")?.value).toBe("100% viscose");
      expect(rug?.findings.length).toBeGreaterThan(3);
      expect(rug?.assessments).toHaveLength(1);
      expect(row.draft?.revisions).toMatchObject([{ number: 1, authorId: null, assessmentId: rug?.assessments[0]?.id }]);
      expect(row.letters).toMatchObject([{ kind: "acknowledgement", automatic: true, toAddress: "ana@example.org", state: "waiting" }]);
      expect(row.audit.map((a) => a.action)).toEqual(["submitted"]);
      expect(row.links).toHaveLength(1);
    });
    it("acknowledges without a word of judgement", async () => {
      const { enquiryId, reference } = await submitted();
      const letter = await database().letter.findFirstOrThrow({ where: { enquiryId } });
      expect(letter.text).toContain(reference);
      expect(letter.text).not.toMatch(/viscose|silk|likely|per cent|years/i);
    });
    it("finds the same enquiry when it is sent again, ten times at once too, and gives fresh links", async () => {
      const caller = await intake();
      const sent = await Promise.all(Array.from({ length: 10 }, () => submitEnquiry(caller, ANA, NOW)));
      const all = sent.map(good);
      expect(new Set(all.map((s) => s.reference)).size).toBe(1);
      expect(new Set(all.map((s) => s.clientToken)).size).toBe(10);
      const enquiryId = all[0]?.enquiryId ?? "";
      expect(await database().enquiry.count({ where: { intakeId: caller.intakeId } })).toBe(1);
      expect(await database().letter.count({ where: { enquiryId } })).toBe(1);
      expect(await database().client.count({ where: { enquiries: { some: { id: enquiryId } } } })).toBe(1);
      for (const s of all) expect(await openClientLink(s.clientToken, NOW)).toMatchObject({ ok: true, value: { enquiryId } });
    });
    it("needs an e-mail address or a telephone number, and one of them is enough", async () => {
      const caller = await intake();
      expect(await submitEnquiry(caller, { contact: { name: "Ana" }, consent: true }, NOW)).toMatchObject({ ok: false, code: "invalid" });
      const { enquiryId } = good(await submitEnquiry(caller, { contact: { name: "Ana", telephone: "01632 960 111" }, consent: true }, NOW));
      expect(await database().letter.count({ where: { enquiryId } })).toBe(0);
    });
    it("needs consent, and ignores nothing it does not know: what is not asked for is refused whole", async () => {
      const caller = await intake();
      expect(await submitEnquiry(caller, { ...ANA, consent: false as never }, NOW)).toMatchObject({ ok: false, code: "invalid" });
      const forged = { ...ANA, id: "mine", state: "finished", role: "owner", price: 1 } as never;
      expect(await submitEnquiry(caller, forged, NOW)).toMatchObject({ ok: false, code: "invalid" });
      expect(await database().enquiry.count({ where: { intakeId: caller.intakeId } })).toBe(0);
      expect(await saveIntake(caller, { wetNow: "no", state: "finished", intakeId: "other" } as never)).toMatchObject({ ok: false, code: "invalid" });
      expect(await saveIntake(caller, { rug: { id: "x" } } as never)).toMatchObject({ ok: false, code: "invalid" });
    });
    it("closes the questionnaire: nothing in it changes afterwards", async () => {
      const caller = await intake();
      const photo = good(await givePhoto(caller));
      const { reference } = good(await submitEnquiry(caller, ANA, NOW));
      expect(await saveIntake(caller, { wetNow: "no" })).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect(await givePhoto(caller)).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect(await removePhoto(caller, photo.id)).toMatchObject({ ok: false, code: "not-found" });
      expect(good(await readIntake(caller))).toMatchObject({ submittedReference: reference, answers: { wetNow: "wet" } });
    });
  });

  describe("saveIntake", () => {
    it("merges the rug and the contact key by key and leaves what the patch lacks", async () => {
      const caller = await intake({ wetNow: "wet", rug: { labelText: "silk" } });
      good(await saveIntake(caller, { rug: { touch: "springy" }, contact: { name: "Ana" } }));
      good(await saveIntake(caller, { contact: { email: "ana@example.org" } }));
      expect(good(await readIntake(caller)).answers).toEqual({
        wetNow: "wet",
        rug: { labelText: "silk", touch: "springy" },
        contact: { name: "Ana", email: "ana@example.org" },
      });
    });
    it("loses none of twenty steps saved at once", async () => {
      const caller = await intake({});
      const keys = ["labelText", "sellerWords", "boughtPlace", "story"] as const;
      await Promise.all(keys.map((k) => saveIntake(caller, { rug: { [k]: `about ${k}` } })));
      expect(good(await readIntake(caller)).answers.rug).toEqual(Object.fromEntries(keys.map((k) => [k, `about ${k}`])));
    });
  });

  describe("addPhoto", () => {
    it("takes twelve of twenty that arrive together, and keeps no file of the rest", async () => {
      const caller = await intake();
      const before = readdirSync(photoFolder()).length;
      const all = await Promise.all(Array.from({ length: 20 }, () => givePhoto(caller)));
      expect(all.filter((r) => r.ok)).toHaveLength(12);
      expect(all.filter((r) => !r.ok && r.code === "too-many")).toHaveLength(8);
      expect(await database().photo.count({ where: { intakeId: caller.intakeId } })).toBe(12);
      expect(readdirSync(photoFolder())).toHaveLength(before + 12 * 3);
      const [first] = good(await readIntake(caller)).photos;
      good(await removePhoto(caller, first?.id ?? ""));
      expect(existsSync(photoPath(first?.id ?? "", "full"))).toBe(false);
      expect(await givePhoto(caller)).toMatchObject({ ok: true });
    });
    it("takes a photo once that is sent again under its key, at once or when no more would have room, and only in its own place", async () => {
      const [caller, other] = [await intake(), await intake()];
      const key = "4d6fd1b2-1d3c-4f0a-9a51-6f3e0a1b2c3d";
      const sending = (who: typeof caller) => photoBody().then((body) => addPhoto(who, { kind: "whole", key }, body, PHOTO, NOW)).then(good);
      const first = await Promise.all([sending(caller), sending(caller), sending(caller)]);
      expect(new Set(first.map((p) => p.id)).size).toBe(1);
      for (let n = 1; n < 12; n++) good(await givePhoto(caller));
      const files = readdirSync(photoFolder()).length;
      expect((await sending(caller)).id).toBe(first[0]?.id);
      expect(readdirSync(photoFolder())).toHaveLength(files);
      expect(good(await readIntake(caller)).photos).toHaveLength(12);
      expect((await sending(other)).id).not.toBe(first[0]?.id);
    });
    it("says of a photo that is there already that it is", async () => {
      const caller = await intake();
      const rough = await drawRug({ seed: 41, weave: "knotted", colours: ["#7d2e38", "#d8c7b0", "#2f3a4a"], kind: "whole" }, 1000, 750);
      const [first, second] = [await addPhoto(caller, { kind: "whole" }, Readable.from([rough]), PHOTO, NOW), await addPhoto(caller, { kind: "trouble" }, Readable.from([rough]), PHOTO, NOW)].map(good);
      expect([first?.remark, second?.remark]).toEqual([null, expect.stringContaining("already")]);
      expect(good(await readIntake(caller)).photos.map((p) => p.remark)).toEqual([first?.remark, second?.remark]);
      good(await removePhoto(caller, first?.id ?? ""));
      expect(good(await readIntake(caller)).photos.map((p) => p.remark)).toEqual([null]);
    });
    it("says why it does not take what is no photo, and keeps the rest", async () => {
      const caller = await intake();
      good(await givePhoto(caller));
      const refused = await addPhoto(
        caller,
        { kind: "label" },
        Readable.from([Buffer.from("<svg><script>alert(1)</script></svg>")]),
        { name: "x.jpg", type: "image/jpeg" },
        NOW,
      );
      expect(refused).toMatchObject({ ok: false, code: "unsupported" });
      expect(good(await readIntake(caller)).photos).toHaveLength(1);
      expect(await addPhoto(caller, { kind: "elephant" }, await photoBody(), PHOTO, NOW)).toMatchObject({ ok: false, code: "invalid" });
    });
  });

  describe("a client's link", () => {
    it("opens one enquiry: not another's page, photos or message box", async () => {
      const mine = await submitted();
      const otherIntake = await intake(CURIOUS);
      const photo = good(await givePhoto(otherIntake));
      const other = good(await submitEnquiry(otherIntake, { ...ANA, contact: { name: "Ben Other", email: "ben@example.com" } }, NOW));
      const me = await clientOf(mine);
      expect(good(await readClientPage(me, NOW)).reference).toBe(mine.reference);
      expect(JSON.stringify(good(await readClientPage(me, NOW)))).not.toContain("Ben");
      for (const size of ["320", "1600", "full"]) expect(await photoFile(me, photo.id, size)).toMatchObject({ ok: false, code: "not-found" });
      const rug = await database().rug.findFirstOrThrow({ where: { enquiryId: other.enquiryId } });
      expect(await addPhoto(me, { kind: "label", rugId: rug.id }, await photoBody(), PHOTO, NOW)).toMatchObject({ ok: false, code: "not-found" });
      expect(await photoFile(await clientOf(other), photo.id, "320")).toMatchObject({ ok: true, value: { type: "image/jpeg" } });
      expect(await photoFile(await intake(), photo.id, "320")).toMatchObject({ ok: false, code: "not-found" });
      expect(await photoFile({ kind: "public", addressHash: null }, photo.id, "320")).toMatchObject({ ok: false, code: "not-signed-in" });
      expect(await photoFile(await staff("trainee", "Pia Wetherby"), photo.id, "320")).toMatchObject({ ok: true });
    });
    it("lies nowhere in the database, not in the letter either, and has 256 bits", async () => {
      const { clientToken, enquiryId } = await submitted();
      expect(clientToken).toMatch(/^[\w-]{43}$/);
      const db = database();
      const everything = JSON.stringify([
        await db.clientLink.findMany(),
        await db.letter.findMany({ where: { enquiryId } }),
        await db.audit.findMany({ where: { enquiryId } }),
        await db.intake.findMany(),
      ]);
      expect(everything).not.toContain(clientToken);
      const { token } = good(await openIntake({ kind: "public", addressHash: null }, NOW));
      expect(JSON.stringify(await db.intake.findMany())).not.toContain(token);
    });
    it("opens until just before its last day is over, and not when it was revoked or never was", async () => {
      const { clientToken, enquiryId } = await submitted();
      expect(await openClientLink(clientToken, later(LINK_DAYS * DAY_MIN - 1))).toMatchObject({ ok: true });
      const late = await openClientLink(clientToken, later(LINK_DAYS * DAY_MIN));
      expect(late).toMatchObject({ ok: false, code: "expired" });
      expect(await openClientLink("no-such-token", NOW)).toEqual(late);
      await database().clientLink.updateMany({ where: { enquiryId }, data: { revokedAt: NOW } });
      expect(await openClientLink(clientToken, later(1))).toEqual(late);
      expect(await callerFromLink(clientToken, later(1))).toBeNull();
    });
  });

  describe("openIntake", () => {
    it("gives a cookie that is good until just before thirty days are over", async () => {
      const { token, intakeId } = good(await openIntake({ kind: "public", addressHash: null }, NOW));
      expect(await callerFromIntake(token, null, later(INTAKE_DAYS * DAY_MIN - 1))).toMatchObject({ intakeId });
      expect(await callerFromIntake(token, null, later(INTAKE_DAYS * DAY_MIN))).toBeNull();
      expect(await callerFromIntake("forged", null, NOW)).toBeNull();
    });
    it("lets one address begin so many and no more, until the time is over", async () => {
      const from = { kind: "public", addressHash: "an-address" } as const;
      const all = await Promise.all(Array.from({ length: ALLOWANCES.intakeAddress.max + 5 }, () => openIntake(from, NOW)));
      expect(all.filter((r) => r.ok)).toHaveLength(ALLOWANCES.intakeAddress.max);
      expect(all.filter((r) => !r.ok && r.code === "too-many")).toHaveLength(5);
      expect(await openIntake({ ...from, addressHash: "another" }, NOW)).toMatchObject({ ok: true });
      expect(await openIntake(from, later(10))).toMatchObject({ ok: true });
    });
  });

  describe("sendFromClient", () => {
    it("is refused to everybody but the client", async () => {
      await submitted();
      for (const caller of [await intake(), await staff("owner", "Nell"), { kind: "public", addressHash: null } as const]) {
        expect(await sendFromClient(caller, { message: "Hello" }, NOW)).toMatchObject({ ok: false, code: "not-allowed" });
      }
    });
    it("takes what anybody can type, and nothing longer", async () => {
      const me = await clientOf(await submitted(WET_VISCOSE));
      expect(await sendFromClient(me, { message: "  " }, NOW)).toMatchObject({ ok: false, code: "invalid" });
      expect(await sendFromClient(me, { message: "x".repeat(8_001) }, NOW)).toMatchObject({ ok: false, code: "invalid" });
      expect(await sendFromClient(me, { message: "x".repeat(8_000) }, NOW)).toMatchObject({ ok: true });
    });
  });
}
