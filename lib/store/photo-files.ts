import "server-only";
import { mkdir, readdir, stat } from "node:fs/promises";
import path from "node:path";
import { config } from "../config/config";
import { database } from "./database";
import { photoFileName, photoOfFile, PHOTO_SIZES, removeFiles, type PhotoSize } from "./photo-layout";

/** A file may stand without its row while an upload is being finished; after this it is nobody's. Milliseconds. *elicited* */
const GRACE_MS = 60 * 60 * 1000;
/** Ids asked about at once. */
const BATCH = 500;

export const photoFolder = (): string => path.join(/* turbopackIgnore: true */ config.dataDir, "photos");

/** Where one size of a photo lies. Throws for an id that we did not make. */
export const photoPath = (id: string, size: PhotoSize): string => path.join(/* turbopackIgnore: true */ photoFolder(), photoFileName(id, size));

/** Removes all sizes of a photo; none there is no failure. The row goes first, so that no row points at nothing. */
export const removePhotoFiles = (id: string): Promise<void> => removeFiles(photoFolder(), PHOTO_SIZES.map((size) => photoFileName(id, size)));

/** No folder yet is an empty one. */
async function namesIn(folder: string): Promise<string[]> {
  await mkdir(folder, { recursive: true });
  return readdir(folder);
}

const idsWithRow = async (ids: string[]): Promise<string[]> =>
  (await database().photo.findMany({ where: { id: { in: ids } }, select: { id: true } })).map((row) => row.id);

/**
 * Removes files that no row speaks for and that are older than an hour, unfinished ones included; files that are not
 * ours stay. Returns the ids removed. `known` says which of the ids have a row.
 */
export async function sweepOrphans(now: Date, { folder = photoFolder(), known = idsWithRow } = {}): Promise<string[]> {
  const old: { name: string; id: string; unfinished: boolean }[] = [];
  for (const name of await namesIn(folder)) {
    const photo = photoOfFile(name);
    if (photo && now.getTime() - (await modifiedAt(path.join(/* turbopackIgnore: true */ folder, name), now)) > GRACE_MS) old.push({ name, ...photo });
  }
  const finished = [...new Set(old.filter((file) => !file.unfinished).map((file) => file.id))];
  const rows = new Set<string>();
  for (let at = 0; at < finished.length; at += BATCH) for (const id of await known(finished.slice(at, at + BATCH))) rows.add(id);
  const orphans = old.filter((file) => file.unfinished || !rows.has(file.id));
  await removeFiles(folder, orphans.map((file) => file.name));
  return [...new Set(orphans.map((file) => file.id))];
}

/** Of these photos, those that have a row and lack a file in any size: to be reported, nothing can bring them back. */
export async function photosWithoutFiles(ids: readonly string[], folder = photoFolder()): Promise<string[]> {
  const present = new Set(await namesIn(folder));
  return ids.filter((id) => PHOTO_SIZES.some((size) => !present.has(photoFileName(id, size))));
}

/** A file that went away meanwhile counts as new: there is nothing left to sweep. */
const modifiedAt = (file: string, now: Date): Promise<number> => stat(file).then((s) => s.mtimeMs, () => now.getTime());
