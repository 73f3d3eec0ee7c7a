import "server-only";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import type { Caller } from "../../lib/enquiry/caller";
import { approveReply } from "../../lib/enquiry/approve-reply";
import { enterEnquiry } from "../../lib/enquiry/enter-enquiry";
import { readEnquiry } from "../../lib/enquiry/read-enquiry";
import { saveSettings } from "../../lib/enquiry/save-settings";
import { createStaff } from "../../lib/staff/new-person";
import { DEFAULT_SETTINGS } from "../../lib/workshop/settings-schema";
import { drawRug } from "./draw-rug";
import { bringLetters } from "./letters";
import { EVERYDAY } from "./enquiries-everyday";
import { FIBRE } from "./enquiries-fibre";
import { measureDemo } from "./measure";
import { URGENT } from "./enquiries-urgent";
import type { DemoEnquiry } from "./types";
import { DEMO_STAFF, DEMO_WORKSHOP } from "./workshop";

export interface DemoPerson { name: string; email: string; role: string; password: string }

const SYSTEM: Caller = { kind: "system", what: "demo" };
/** Clients whose reply was approved before the demo begins, so that both ends of the way can be seen. */
const ANSWERED = ["Ishbel Crane", "Leopold Sandiford"];

function value<T>(result: { ok: true; value: T } | { ok: false; say: string }): T {
  if (!result.ok) throw new Error(`The demo could not be written: ${result.say}`);
  return result.value;
}

/** Draws the photos of one enquiry and takes it in as it would be by mail or telephone; answers its id. */
async function enter(demo: DemoEnquiry, { at, seed, folder }: { at: Date; seed: number; folder: string }): Promise<string> {
  const rugs = await Promise.all(demo.file.rugs.map(async (rug, r) => ({
    ...rug,
    photos: await Promise.all((demo.photos[r] ?? []).map(async (photo, n) => {
      const name = `${seed}-${r}-${n}.jpg`;
      const size = { ...(rug.lengthCm && { lengthCm: rug.lengthCm }), ...(rug.widthCm && { widthCm: rug.widthCm }) };
      await writeFile(path.join(folder, name), await drawRug({ ...size, ...photo, seed: seed * 10 + r }));
      return { path: name, kind: photo.kind === "bad" ? "whole" as const : photo.kind };
    })),
  })));
  return value(await enterEnquiry(SYSTEM, { ...demo.file, rugs, writtenAt: at.toISOString() }, at, { folder })).enquiryId;
}

async function answer(enquiryId: string, by: Caller, now: Date): Promise<void> {
  const view = value(await readEnquiry(by, enquiryId, now));
  value(await approveReply(by, { enquiryId, number: view.draft?.number ?? 1 }, now));
}

/** Fills an empty, migrated database with the invented workshop, its people and its enquiries. Answers who may sign in. */
export async function seedDemo({ password, now, log }: { password: () => string; now: Date; log: (line: string) => void }): Promise<DemoPerson[]> {
  value(await saveSettings(SYSTEM, { ...DEFAULT_SETTINGS, ...DEMO_WORKSHOP, prices: { ...DEMO_WORKSHOP.prices } }, now));
  const people = DEMO_STAFF.map((p) => ({ ...p, password: password() }));
  const ids = [];
  for (const person of people) ids.push(value(await createStaff(SYSTEM, person)).staffId);
  const owner: Caller = { kind: "staff", staffId: ids[0] ?? "", name: people[0]?.name ?? "", role: "owner" };
  const reviewer: Caller = { kind: "staff", staffId: ids[1] ?? "", name: people[1]?.name ?? "", role: "reviewer" };

  const folder = await mkdtemp(path.join(os.tmpdir(), "plainpile-demo-"));
  try {
    const all = [...URGENT, ...FIBRE, ...EVERYDAY].sort((a, b) => b.minutesAgo - a.minutesAgo);
    for (const [n, demo] of all.entries()) {
      const name = demo.file.client?.name ?? "";
      log(`Drawing the rugs of ${name} (${n + 1} of ${all.length})`);
      const at = new Date(now.getTime() - demo.minutesAgo * 60_000);
      const enquiryId = await enter(demo, { at, seed: n + 1, folder });
      await measureDemo(demo, { enquiryId, seed: n + 1, by: reviewer, client: { kind: "client", enquiryId, linkId: "demo" } }, at);
      if (ANSWERED.includes(name)) await answer(enquiryId, owner, new Date(now.getTime() - 30 * 60_000));
    }
    log("Bringing the letters that came by mail");
    await bringLetters(SYSTEM, now);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
  return people;
}
