import { randomUUID } from "node:crypto";
import { Readable } from "node:stream";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { addPhoto } from "../../../lib/enquiry/add-photo";
import type { Caller } from "../../../lib/enquiry/caller";
import type { Marks, PlanMarks, SpotMarks } from "../../../lib/enquiry/mark-schema";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readIntake } from "../../../lib/enquiry/read-intake";
import { readPhotoDesk } from "../../../lib/enquiry/read-photo-desk";
import { recordMeasurement } from "../../../lib/enquiry/record-measurement";
import { submitEnquiry } from "../../../lib/enquiry/submit-enquiry";
import { withdrawMeasurement } from "../../../lib/enquiry/withdraw-measurement";
import { cutDownPrice } from "../../../lib/reply/cut-down-price";
import { database } from "../../../lib/store/database";
import { differenceOf, labOf } from "../../../lib/photo/colour";
import { ANA, clientOf, CURIOUS, good, intake, later, NOW, PHOTO, staff } from "./workshop";

const CREAM = [220, 210, 190] as const, BROWN = [170, 135, 95] as const;
/** The left half cream, the right half brown. */
async function stained(): Promise<Readable> {
  const data = Buffer.alloc(400 * 300 * 3);
  for (let i = 0; i < 400 * 300; i++) data.set(i % 400 < 200 ? CREAM : BROWN, 3 * i);
  return Readable.from([await sharp(data, { raw: { width: 400, height: 300, channels: 3 } }).jpeg({ quality: 95 }).toBuffer()]);
}
const SPOTS: SpotMarks = { untouched: { shape: "circle", x: 0.2, y: 0.5, radius: 0.05 }, affected: { shape: "rectangle", x: 0.7, y: 0.4, width: 0.1, height: 0.2 } };
const PLAN: PlanMarks = {
  corners: [{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 1, y: 1 }, { x: 0, y: 1 }], widthCm: 200, lengthCm: 300,
  damaged: [[{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 1, y: 0.1 }, { x: 0, y: 0.1 }]], borderCm: 0, isSymmetric: false, chosen: null,
};
const spots = (marks: SpotMarks = SPOTS): Marks => ({ kind: "spots", marks });
const plan = (marks: Partial<PlanMarks> = {}): Marks => ({ kind: "plan", marks: { ...PLAN, ...marks } });

async function filled() {
  const caller = await intake(CURIOUS);
  const photo = good(await addPhoto(caller, { kind: "trouble" }, await stained(), PHOTO, NOW));
  return { caller, photoId: photo.id };
}
async function sent() {
  const { caller, photoId } = await filled();
  const enquiry = good(await submitEnquiry(caller, ANA, NOW));
  return { intake: caller, photoId, enquiryId: enquiry.enquiryId, client: await clientOf(enquiry) };
}
const mark = (caller: Caller, photoId: string, marked: unknown, more: { id?: string; replaces?: string | null; at?: Date } = {}) =>
  recordMeasurement(caller, { id: more.id ?? randomUUID(), photoId, marked, replaces: more.replaces ?? null }, more.at ?? later(1));
const findings = async (enquiryId: string, what: string) => database().finding.findMany({ where: { what, rug: { enquiryId } } });
const ivo = () => staff("reviewer", "Ivo Castellane");

export function measuring(): void {
  describe("recordMeasurement, before the enquiry is sent", () => {
    it("keeps what a client touched with the questionnaire, the latest only, and sends it along as what the client says", async () => {
      const { caller, photoId } = await filled();
      good(await mark(caller, photoId, spots({ ...SPOTS, affected: { shape: "circle", x: 0.3, y: 0.5, radius: 0.05 } })));
      const { id } = good(await mark(caller, photoId, spots()));
      expect(good(await readIntake(caller)).spots).toEqual({ [photoId]: { id, marks: SPOTS } });
      const { enquiryId } = good(await submitEnquiry(caller, ANA, later(2)));
      const [change, ...more] = await findings(enquiryId, "colour-change");
      expect(more).toEqual([]);
      expect(change).toMatchObject({ strength: "told", from: `photo:${photoId}`, value: { direction: "yellower-darker" } });
      // Against the colours that were drawn; the rest is the photo's own compression.
      const drawn = differenceOf(labOf(...CREAM), labOf(...BROWN)).deltaE;
      expect(Math.abs((change!.value as { deltaE: number }).deltaE - drawn)).toBeLessThan(0.5);
    });
    it("takes it back, and is closed to the questionnaire once that was sent", async () => {
      const { caller, photoId } = await filled();
      const { id } = good(await mark(caller, photoId, spots()));
      good(await withdrawMeasurement(caller, id, later(1)));
      expect(good(await readIntake(caller)).spots).toEqual({});
      const { enquiryId } = good(await submitEnquiry(caller, ANA, later(2)));
      expect(await findings(enquiryId, "colour-change")).toEqual([]);
      expect(await mark(caller, photoId, spots())).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect(await withdrawMeasurement(caller, id, later(3))).toMatchObject({ ok: false, code: "changed-meanwhile" });
    });
  });

  describe("recordMeasurement, at the desk", () => {
    it("judges the rug anew from what was measured, and says who and when", async () => {
      const { enquiryId, photoId } = await sent();
      const { id } = good(await mark(await ivo(), photoId, spots()));
      const rug = good(await readEnquiry(await ivo(), enquiryId, later(2))).rugs[0]!;
      expect(rug.assessment!.findings.find((f) => f.what === "colour-change")?.staff).toMatch(/the affected spot is browner than the untouched one \(ΔE00 \d+\.\d, standard uncertainty \d\.\d\)/);
      expect(rug.measured).toMatchObject([{ id, photoId, kind: "spots", by: "Ivo Castellane", withdrawn: null }]);
      const history = good(await readEnquiry(await ivo(), enquiryId, later(2))).history;
      expect(history.at(-1)).toMatchObject({ who: "Ivo Castellane", what: "measured a photo" });
    });
    it("outranks what the client touched, whichever came last", async () => {
      const { enquiryId, photoId, client } = await sent();
      good(await mark(await ivo(), photoId, spots(), { at: later(1) }));
      good(await mark(client, photoId, spots(), { at: later(2) }));
      expect((await findings(enquiryId, "colour-change")).map((f) => f.strength).sort()).toEqual(["photo", "told"]);
      expect(good(await readClientPage(client, later(3))).rugs[0]!.spots[photoId]?.marks).toEqual(SPOTS);
    });
    it("puts a moved mark in place of the old one, which stays to be seen", async () => {
      const { enquiryId, photoId } = await sent();
      const first = good(await mark(await ivo(), photoId, spots())).id;
      const near: SpotMarks = { ...SPOTS, untouched: { shape: "circle", x: 0.4, y: 0.5, radius: 0.05 } };
      const second = good(await mark(await ivo(), photoId, spots(near), { replaces: first, at: later(2) })).id;
      expect(good(await readPhotoDesk(await ivo(), { enquiryId, photoId })).measurements).toMatchObject([
        { id: first, withdrawn: { by: "Ivo Castellane", isMoved: true } }, { id: second, withdrawn: null },
      ]);
      expect(await mark(await ivo(), photoId, spots(), { replaces: first, at: later(3) })).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect(await findings(enquiryId, "colour-change")).toHaveLength(1);
    });
    it("lets one of two people who move the same mark at the same moment win", async () => {
      const { photoId } = await sent();
      const first = good(await mark(await ivo(), photoId, spots())).id;
      const both = await Promise.all([mark(await ivo(), photoId, spots(), { replaces: first }), mark(await staff("trainee", "Pia Wetherby"), photoId, spots(), { replaces: first })]);
      expect(both.filter((r) => r.ok)).toHaveLength(1);
      expect(await database().measurement.count({ where: { photoId, withdrawnAt: null } })).toBe(1);
    });
    it("keeps the same form once, even when sent twice together", async () => {
      const { photoId } = await sent();
      const id = randomUUID();
      const both = await Promise.all([mark(await ivo(), photoId, spots(), { id }), mark(await ivo(), photoId, spots(), { id })]);
      expect(both.map(good)).toEqual([{ id }, { id }]);
      expect(await database().measurement.count({ where: { photoId } })).toBe(1);
    });
    it("says of a plan its size, its damage and the way that was chosen, and takes them back", async () => {
      const { enquiryId, photoId } = await sent();
      const { id } = good(await mark(await ivo(), photoId, plan({ chosen: "edge-off" })));
      expect((await findings(enquiryId, "cut-down")).map((f) => f.value)).toEqual([{ kind: "edge-off", bindingM: 2.02, shareKept: 0.9, allRoundM: expect.closeTo(9.48, 6) }]);
      expect((await findings(enquiryId, "size")).map((f) => f.value)).toEqual([{ widthCm: 200, lengthCm: 300, m2: 6 }]);
      const [area] = await findings(enquiryId, "damaged-area");
      expect(area!.value).toMatchObject({ share: expect.closeTo(0.1, 6) });
      const { money } = good(await readEnquiry(await ivo(), enquiryId, later(2))).rugs[0]!.assessment!;
      // 2.02 m at the 35 a metre of the settings.
      expect(money?.cutDown?.median).toBeCloseTo(2.02 * 35, 6);
      // All round the 200 × 270 cm that remain, each of four edges with 2 cm of turn: what the letter says beside the edges drawn.
      const { assessment } = good(await readEnquiry(await ivo(), enquiryId, later(2))).rugs[0]!;
      expect(assessment && cutDownPrice(assessment)?.high).toBeCloseTo((2 * 200 + 2 * 270 + 8) / 100 * 35, 6);
      good(await withdrawMeasurement(await ivo(), id, later(3)));
      expect(await findings(enquiryId, "cut-down")).toEqual([]);
      expect(await withdrawMeasurement(await ivo(), id, later(4))).toMatchObject({ ok: false, code: "changed-meanwhile" });
    });
    it("keeps one plan of a photo at a time", async () => {
      const { photoId } = await sent();
      good(await mark(await ivo(), photoId, plan()));
      expect(await mark(await ivo(), photoId, plan())).toMatchObject({ ok: false, code: "changed-meanwhile" });
    });
  });

  describe("recordMeasurement refuses", () => {
    it.each<[string, unknown, RegExp]>([
      ["marks it cannot read", { kind: "spots", marks: { untouched: { shape: "circle", x: 2, y: 0, radius: 0.1 } } }, /./],
      ["a spot of too few pixels", spots({ ...SPOTS, affected: { shape: "rectangle", x: 0.5, y: 0.5, width: 0.005, height: 0.005 } }), /too small to measure/],
      ["corners in a line", plan({ corners: [{ x: 0, y: 0 }, { x: 0.5, y: 0 }, { x: 1, y: 0 }, { x: 0, y: 1 }] }), /do not go round a rug/],
      ["a size no rug has", plan({ widthCm: 5 }), /at least 20 cm/],
      ["an outline that crosses itself", plan({ damaged: [[{ x: 0, y: 0 }, { x: 1, y: 1 }, { x: 1, y: 0 }, { x: 0, y: 1 }]] }), /crosses itself/],
      ["a way that does not remain", plan({ chosen: "split-in-two" }), /Choose again/],
    ])("%s, in words, and keeps nothing", async (_what, marked, says) => {
      const { photoId } = await sent();
      const refused = await mark(await ivo(), photoId, marked);
      expect(refused).toMatchObject({ ok: false, code: "invalid", say: expect.stringMatching(says) });
      expect(await database().measurement.count({ where: { photoId } })).toBe(0);
    });
    it("everybody it does not concern, in the same words as what is not there", async () => {
      const { photoId, client } = await sent();
      const other = await sent();
      const kept = good(await mark(await ivo(), photoId, spots())).id;
      for (const caller of [other.client, other.intake]) {
        expect(await mark(caller, photoId, spots())).toMatchObject({ ok: false, code: "not-found" });
        expect(await withdrawMeasurement(caller, kept, NOW)).toMatchObject({ ok: false, code: "not-found" });
      }
      expect(await withdrawMeasurement(client, kept, NOW)).toMatchObject({ ok: false, code: "not-found" });
      expect(await mark(client, photoId, plan())).toMatchObject({ ok: false });
      expect(await mark({ kind: "public", addressHash: null }, photoId, spots())).toMatchObject({ ok: false, code: "not-signed-in" });
      expect(await readPhotoDesk(client, { enquiryId: other.enquiryId, photoId })).toMatchObject({ ok: false });
      expect(await readPhotoDesk(await ivo(), { enquiryId: other.enquiryId, photoId })).toMatchObject({ ok: false, code: "not-found" });
      expect(await mark(await ivo(), randomUUID(), spots())).toMatchObject({ ok: false, code: "not-found" });
    });
  });
}
