import "server-only";
import { randomUUID } from "node:crypto";
import { open, rename, rm } from "node:fs/promises";
import path from "node:path";

/**
 * How photos lie in their folder: `<id>.jpg` in full size, `<id>-1600.jpg` and `<id>-320.jpg`, named by us alone.
 * Whatever is still being made carries the prefix of `partName` and is never served.
 */
export const PHOTO_SIZES = ["full", "1600", "320"] as const;
export type PhotoSize = (typeof PHOTO_SIZES)[number];

const ID = /^[a-z0-9-]{20,64}$/;
export const PART = ".part-";

export const newPhotoId = (): string => randomUUID();
export const isPhotoId = (text: string): boolean => ID.test(text);

/** Throws where `id` was not made by us, so that no caller can reach outside the folder. */
export function photoFileName(id: string, size: PhotoSize): string {
  if (!isPhotoId(id)) throw new TypeError(`Expected a photo id of small letters, digits and hyphens but received ${JSON.stringify(id)}`);
  return size === "full" ? `${id}.jpg` : `${id}-${size}.jpg`;
}

/** The name of an unfinished file. It lies in the same folder because a rename is whole only within one file system. */
export const partName = (id: string, what: string): string => `${PART}${id}-${what}`;

/** Which photo a file belongs to; null for a file that is not ours. */
export function photoOfFile(name: string): { id: string; unfinished: boolean } | null {
  const unfinished = name.startsWith(PART);
  const id = unfinished ? name.slice(PART.length).slice(0, 36) : /^([a-z0-9-]{36})(-1600|-320)?\.jpg$/.exec(name)?.[1];
  return id !== undefined && isPhotoId(id) ? { id, unfinished } : null;
}

/**
 * Gives finished temporary files their names, so that after a power cut each is whole or absent: every file is flushed,
 * then renamed, then the folder is flushed. When any step fails, none of them is left under either name.
 */
export async function keepFiles(folder: string, files: readonly { part: string; name: string }[]): Promise<void> {
  try {
    await Promise.all(files.map(({ part }) => flush(path.join(folder, part), "r+")));
    for (const { part, name } of files) await rename(path.join(folder, part), path.join(folder, name));
    await flush(folder, "r");
  } catch (error) {
    await removeFiles(folder, files.flatMap(({ part, name }) => [part, name]));
    throw error;
  }
}

/** Puts a finished temporary file in place of another, whole: after a power cut either of them is there. When it fails, the old one stays. */
export async function replaceFile(folder: string, { part, name }: { part: string; name: string }): Promise<void> {
  try {
    await flush(path.join(folder, part), "r+");
    await rename(path.join(folder, part), path.join(folder, name));
    await flush(folder, "r");
  } catch (error) {
    await removeFiles(folder, [part]);
    throw error;
  }
}

/** Removes files; those already gone are no failure. */
export async function removeFiles(folder: string, names: readonly string[]): Promise<void> {
  await Promise.all(names.map((name) => rm(path.join(folder, name), { force: true })));
}

async function flush(target: string, mode: "r" | "r+"): Promise<void> {
  const handle = await open(target, mode);
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}
