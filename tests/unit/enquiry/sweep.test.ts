import { mkdirSync } from "node:fs";
import { rm } from "node:fs/promises";
import { beforeAll, describe, expect, it } from "vitest";
import { INTAKE_DAYS } from "../../../lib/enquiry/open-intake";
import { submitEnquiry } from "../../../lib/enquiry/submit-enquiry";
import { sweep } from "../../../lib/enquiry/sweep";
import { ALLOWANCES, takeOne } from "../../../lib/staff/rate-limit";
import { database, migrateDatabase } from "../../../lib/store/database";
import { photoFolder, photoPath, photosWithoutFiles } from "../../../lib/store/photo-files";
import { ANA, givePhoto, good, intake, later, NOW, settle } from "./workshop";

const END = later(INTAKE_DAYS * 24 * 60);

beforeAll(async () => {
  await migrateDatabase();
  mkdirSync(photoFolder(), { recursive: true });
  await settle();
});

describe("sweep", () => {
  it("leaves a questionnaire and its photos until its last moment, and removes both from then on", async () => {
    const caller = await intake();
    const photo = good(await givePhoto(caller));
    expect(await sweep(new Date(END.getTime() - 1))).toEqual({ enquiries: 0, intakes: 0, photos: 0, missing: [] });
    expect(await sweep(END)).toEqual({ enquiries: 0, intakes: 1, photos: 1, missing: [] });
    expect(await database().intake.count()).toBe(0);
    expect(await database().photo.count()).toBe(0);
    expect(await photosWithoutFiles([photo.id])).toEqual([photo.id]);
  });
  it("keeps what was sent: the enquiry has its photos and answers for itself", async () => {
    const caller = await intake();
    const photo = good(await givePhoto(caller));
    const { enquiryId } = good(await submitEnquiry(caller, ANA, NOW));
    expect(await sweep(END)).toEqual({ enquiries: 0, intakes: 1, photos: 0, missing: [] });
    expect(await database().enquiry.findUniqueOrThrow({ where: { id: enquiryId } })).toMatchObject({ intakeId: null });
    expect(await database().photo.findUniqueOrThrow({ where: { id: photo.id } })).toMatchObject({ intakeId: null });
    expect(await photosWithoutFiles([photo.id])).toEqual([]);
  });
  it("reports a photo whose file is gone", async () => {
    const { id } = await database().photo.findFirstOrThrow();
    await rm(photoPath(id, "1600"));
    expect((await sweep(END)).missing).toEqual([id]);
  });
  it("forgets counters after two days and not before", async () => {
    await takeOne("anybody", ALLOWANCES.clientMessage, NOW);
    await sweep(later(2 * 24 * 60));
    expect(await database().rateLimit.count({ where: { key: "anybody" } })).toBe(1);
    await sweep(later(2 * 24 * 60 + 1));
    expect(await database().rateLimit.count({ where: { key: "anybody" } })).toBe(0);
  });
});

describe("takeOne", () => {
  const three = { max: 3, windowMs: 60_000 };
  it("gives three of three, refuses the fourth until just before the minute is over, and gives again from then on", async () => {
    const at = (ms: number) => takeOne("k", three, new Date(NOW.getTime() + ms));
    expect([await at(0), await at(10), await at(20), await at(30), await at(59_999), await at(60_000)]).toEqual([
      true,
      true,
      true,
      false,
      false,
      true,
    ]);
  });
  it("never gives more than its allowance to any number that come at once, nor to a new minute's", async () => {
    for (const minute of [10, 11, 12]) {
      const all = await Promise.all(Array.from({ length: 40 }, () => takeOne("crowd", three, later(minute))));
      expect(all.filter(Boolean)).toHaveLength(3);
    }
  });
});
