import "server-only";
import { link, mkdir, mkdtemp, open, copyFile, readdir, rename, rm } from "node:fs/promises";
import path from "node:path";
import { ArchiveError, pack, unpack, type Manifest } from "./archive";
import { dumpTables, loadTables, rowsIn } from "./dump";
import { migrationNames } from "./migrate";
import { openStore } from "./open-store";
import { photoOfFile, PHOTO_SIZES, photoFileName } from "./photo-layout";
import { isPostFile } from "./post-files";
import { putAsideName } from "./put-aside";
import { KEPT_TABLES, PASSING_TABLES } from "./tables";

/** What is backed up, and what is restored into. */
export interface Place { databaseUrl: string; dataDir: string; migrations: string }

const LONG_MS = 60 * 60_000;
const photosOf = (place: Place) => path.join(place.dataDir, "photos");
/** The folders whose files are backed up beside the tables, and which of their files are finished ones of ours. */
const FOLDERS = { photos: (name: string) => photoOfFile(name)?.unfinished === false, post: isPostFile } as const;
type FolderName = keyof typeof FOLDERS;
const FOLDER_NAMES = Object.keys(FOLDERS) as FolderName[];

/** A folder that is there while `work` runs, beside the photos, so that a file can be linked or renamed and need not be copied. */
async function withFolder<T>(place: Place, what: string, work: (folder: string) => Promise<T>): Promise<T> {
  await mkdir(place.dataDir, { recursive: true, mode: 0o700 });
  const folder = await mkdtemp(path.join(place.dataDir, `.${what}-`));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Photos and messages are written once and never changed, so a second name for each file is as good as a copy. */
async function gather(folder: FolderName, from: string, to: string): Promise<string[]> {
  await mkdir(to, { mode: 0o700 });
  const names = (await readdir(from).catch(() => [])).filter(FOLDERS[folder]);
  for (const name of names) {
    await link(path.join(from, name), path.join(to, name)).catch(async (error: NodeJS.ErrnoException) => {
      if (error.code === "ENOENT") return;
      await copyFile(path.join(from, name), path.join(to, name));
    });
  }
  return readdir(to);
}

/**
 * Writes database, photos and messages of one moment into `file`, while the server runs. Only its owner may read the file.
 * @throws ArchiveError where the file exists already or its folder does not
 */
export async function backUp(place: Place, file: string): Promise<Manifest> {
  await readdir(path.dirname(file)).catch(() => { throw new ArchiveError(`There is no folder ${path.dirname(file)}.`); });
  return withFolder(place, "backup", async (folder) => {
    const rows = await dumpTables(place.databaseUrl, path.join(folder, "tables"));
    const files = new Set(await gather("photos", photosOf(place), path.join(folder, "photos")));
    await gather("post", path.join(place.dataDir, "post"), path.join(folder, "post"));
    const ids = await photoIds(path.join(folder, "tables/photo.jsonl"));
    const photosMissing = ids.filter((id) => PHOTO_SIZES.some((size) => !files.has(photoFileName(id, size))));
    return pack(folder, file, { madeAt: new Date().toISOString(), schema: await migrationNames(place.databaseUrl, place.migrations), rows, photosMissing });
  });
}

async function photoIds(file: string): Promise<string[]> {
  const handle = await open(file);
  const ids: string[] = [];
  for await (const line of handle.readLines()) ids.push((JSON.parse(line) as { id: string }).id);
  return ids;
}

export interface Restored { manifest: Manifest; /** Where what was there before was put; null where there was nothing. */ before: string | null }

/**
 * Puts a backup in the place of what is there. The tables change in one transaction, and files are added before it and
 * removed after it, so that at any moment, whatever happens, each row has its files.
 * @throws ArchiveError where the backup cannot be used, or there are data already and `replace` is not set
 */
export async function restore(place: Place, file: string, replace: boolean): Promise<Restored> {
  return withFolder(place, "restore", async (folder) => {
    const manifest = await unpack(file, folder);
    const known = new Set(await migrationNames(place.databaseUrl, place.migrations));
    const newer = manifest.schema.find((name) => !known.has(name));
    if (newer !== undefined) throw new ArchiveError(`${file} was made by a newer version (${newer}); update Plainpile first.`);
    const store = openStore(place.databaseUrl, { transactionMs: LONG_MS });
    try {
      const rows = await store.transact(rowsIn);
      if (rows > 0 && !replace) throw new ArchiveError("There are data here already. To put the backup in their place, add --replace (they are backed up first).");
      const before = rows > 0 ? await putAside(place, manifest) : null;
      for (const name of FOLDER_NAMES) await addFiles(path.join(folder, name), path.join(place.dataDir, name));
      await store.transact(async (tx) => {
        if (store.provider === "postgresql") {
          const names = [...KEPT_TABLES, ...PASSING_TABLES].map((key) => `"${key.charAt(0).toUpperCase()}${key.slice(1)}"`);
          await tx.$executeRawUnsafe(`LOCK TABLE ${names.join(", ")} IN ACCESS EXCLUSIVE MODE`);
        }
        const loaded = await loadTables(tx, path.join(folder, "tables"), (key) => manifest.rows[key] !== undefined);
        for (const key of KEPT_TABLES) {
          if (loaded[key] !== (manifest.rows[key] ?? 0)) throw new ArchiveError(`${file} is damaged: ${key} has ${loaded[key]} rows instead of ${manifest.rows[key]}.`);
        }
      });
      for (const name of FOLDER_NAMES) await removeOthers(name, path.join(place.dataDir, name), manifest);
      return { manifest, before };
    } finally {
      await store.close();
    }
  });
}

async function putAside(place: Place, { madeAt }: Manifest): Promise<string> {
  const file = path.join(place.dataDir, putAsideName(new Date()));
  try {
    await backUp(place, file);
  } catch (error) {
    throw new ArchiveError(`What is here now could not be backed up (${(error as Error).message}), so the backup of ${madeAt} was not put in its place. Move the data away and restore into an empty folder.`);
  }
  return file;
}

async function addFiles(from: string, to: string): Promise<void> {
  await mkdir(to, { recursive: true, mode: 0o700 });
  for (const name of await readdir(from).catch(() => [])) await rename(path.join(from, name), path.join(to, name));
  const handle = await open(to);
  try { await handle.sync(); } finally { await handle.close(); }
}

async function removeOthers(name: FolderName, folder: string, { members }: Manifest): Promise<void> {
  const kept = new Set(members.filter((m) => m.name.startsWith(`${name}/`)).map((m) => path.basename(m.name)));
  for (const file of await readdir(folder)) {
    if (FOLDERS[name](file) && !kept.has(file)) await rm(path.join(folder, file), { force: true });
  }
}

