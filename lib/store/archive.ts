import "server-only";
import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { link, mkdir, open, readdir, readFile, rm, stat, writeFile } from "node:fs/promises";
import path from "node:path";
import { pipeline } from "node:stream/promises";
import { create, extract } from "tar";
import * as z from "zod";

/** A backup that cannot be made or used; the message is for the person. */
export class ArchiveError extends Error {
  override name = "ArchiveError";
}

const FORMAT = 1;
const MANIFEST = "manifest.json";
const MEMBER = /^(tables\/[A-Za-z]+\.jsonl|photos\/[a-z0-9-]+\.jpg|post\/[a-z0-9-]+\.eml)$/;

const manifestSchema = z.strictObject({
  format: z.literal(FORMAT),
  madeAt: z.iso.datetime(),
  /** Names of the migrations behind the tables, oldest first. */
  schema: z.array(z.string()).min(1),
  rows: z.record(z.string(), z.int()),
  /** Photos that have a row and lacked a file when the backup was made. */
  photosMissing: z.array(z.string()),
  members: z.array(z.strictObject({ name: z.string().regex(MEMBER), bytes: z.int(), sha256: z.string().regex(/^[0-9a-f]{64}$/) })),
});
export type Manifest = z.infer<typeof manifestSchema>;

async function sha256Of(file: string): Promise<string> {
  const hash = createHash("sha256");
  await pipeline(createReadStream(file), hash);
  return hash.digest("hex");
}

async function membersIn(folder: string): Promise<Manifest["members"]> {
  const members: Manifest["members"] = [];
  for (const part of ["tables", "photos", "post"]) {
    for (const entry of (await readdir(path.join(folder, part)).catch(() => [])).sort()) {
      const file = path.join(folder, part, entry);
      members.push({ name: `${part}/${entry}`, bytes: (await stat(file)).size, sha256: await sha256Of(file) });
    }
  }
  return members;
}

/**
 * Packs `folder` (tables/, photos/ and post/) into one .tar.gz with the SHA-256 of each member. It carries the name only once it is
 * whole, flushed to the disk and read back.
 * @throws ArchiveError where the file exists already
 */
export async function pack(folder: string, file: string, about: Omit<Manifest, "format" | "members">): Promise<Manifest> {
  const manifest: Manifest = { format: FORMAT, ...about, members: await membersIn(folder) };
  await writeFile(path.join(folder, MANIFEST), JSON.stringify(manifest, null, 1), { mode: 0o600 });
  const part = `${file}.part`;
  try {
    await create({ file: part, gzip: true, portable: true, cwd: folder, mode: 0o600, noDirRecurse: true }, [...manifest.members.map((m) => m.name), MANIFEST]);
    const handle = await open(part, "r+");
    try { await handle.sync(); } finally { await handle.close(); }
    const check = path.join(folder, "check");
    await unpack(part, check);
    await rm(check, { recursive: true });
    await link(part, file);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") throw new ArchiveError(`${file} exists already; a backup never overwrites one.`);
    throw error;
  } finally {
    await rm(part, { force: true });
  }
  return manifest;
}

/**
 * Unpacks a backup into an empty `folder` and compares every member with the manifest.
 * @throws ArchiveError where anything is missing, changed, too much, or not ours
 */
export async function unpack(file: string, folder: string): Promise<Manifest> {
  await stat(file).catch(() => { throw new ArchiveError(`There is no file ${file}.`); });
  const strange: string[] = [];
  try {
    await mkdir(folder, { recursive: true, mode: 0o700 });
    await extract({
      file, cwd: folder, strict: true,
      filter: (name, entry) => {
        const ours = "type" in entry && entry.type === "File" && (name === MANIFEST || MEMBER.test(name));
        if (!ours) strange.push(name);
        return ours;
      },
    });
  } catch (error) {
    throw new ArchiveError(`${file} is damaged or is not a backup: ${(error as Error).message}.`);
  }
  const manifest = manifestSchema.safeParse(await readFile(path.join(folder, MANIFEST), "utf8").then((t) => JSON.parse(t) as unknown, () => null));
  if (!manifest.success || strange.length > 0) throw new ArchiveError(`${file} is not a backup of Plainpile.`);
  const found = new Map((await membersIn(folder)).map((m) => [m.name, m]));
  for (const { name, bytes, sha256 } of manifest.data.members) {
    const member = found.get(name);
    if (member?.bytes !== bytes || member.sha256 !== sha256) throw new ArchiveError(`${file} is damaged: ${name} is ${member ? "not what was backed up" : "missing"}.`);
    found.delete(name);
  }
  if (found.size > 0) throw new ArchiveError(`${file} is damaged: ${[...found.keys()][0]} is not in its list.`);
  return manifest.data;
}
