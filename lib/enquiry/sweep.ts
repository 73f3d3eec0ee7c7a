import "server-only";
import { database, transact } from "../store/database";
import { photosWithoutFiles, removePhotoFiles, sweepOrphans } from "../store/photo-files";
import { sweepPost } from "../store/post-files";
import { eraseOutlived } from "./retention";

const DAY_MS = 86_400_000;
/** Longer than the longest window of lib/staff/rate-limit. */
const COUNTERS_KEPT_MS = 2 * DAY_MS;

export interface Swept {
  /** Enquiries that rested for as long as the settings keep them. */
  enquiries: number;
  /** Questionnaires past their time, sent or not; what was sent lives on as an enquiry. */
  intakes: number;
  /** Photos removed with questionnaires that were never sent, and files without a row. */
  photos: number;
  /** Photos that have a row and no file: to be reported, nothing brings them back. */
  missing: string[];
}

/** Removes what has had its time: enquiries at rest, questionnaires and their photos, counters, one-time links, sessions, files of photos and messages that nobody owns. */
export async function sweep(now: Date): Promise<Swept> {
  const { intakes, photoIds } = await transact(async (tx) => {
    const old = await tx.intake.findMany({ where: { expiresAt: { lte: now } }, select: { id: true }, take: 500 });
    const ids = old.map((i) => i.id);
    const photos = await tx.photo.findMany({ where: { intakeId: { in: ids }, rugId: null }, select: { id: true } });
    await tx.photo.deleteMany({ where: { id: { in: photos.map((p) => p.id) } } });
    await tx.intake.deleteMany({ where: { id: { in: ids } } });
    await tx.rateLimit.deleteMany({ where: { lastRequest: { lt: BigInt(now.getTime() - COUNTERS_KEPT_MS) } } });
    await tx.invitation.deleteMany({ where: { expiresAt: { lt: new Date(now.getTime() - DAY_MS) } } });
    await tx.staffSession.deleteMany({ where: { expiresAt: { lte: now } } });
    return { intakes: ids.length, photoIds: photos.map((p) => p.id) };
  });
  await Promise.all(photoIds.map(removePhotoFiles));
  const enquiries = await eraseOutlived(now);
  const orphans = await sweepOrphans(now);
  await sweepPost(now);
  const rows = await database().photo.findMany({ select: { id: true } });
  return { enquiries, intakes, photos: photoIds.length + orphans.length, missing: await photosWithoutFiles(rows.map((r) => r.id)) };
}

const EVERY_MS = 60 * 60_000;
const kept = globalThis as { plainpileSweeper?: NodeJS.Timeout };

/** Sweeps now and once an hour while the server runs; a second call changes nothing. */
export function startSweeping(): void {
  const once = () =>
    sweep(new Date()).then(
      ({ missing }) => {
        if (missing.length > 0) console.error(JSON.stringify({ level: "error", event: "photos without their files", photos: missing }));
      },
      (error: Error) => console.error(JSON.stringify({ level: "error", event: "sweeping failed", message: error.message })),
    );
  if (kept.plainpileSweeper) return;
  kept.plainpileSweeper = setInterval(() => void once(), EVERY_MS);
  kept.plainpileSweeper.unref();
  void once();
}
