import "server-only";
import { createHash, randomUUID } from "node:crypto";
import { mkdir, open, readdir, readFile, stat, writeFile } from "node:fs/promises";
import path from "node:path";
import { config } from "../config/config";
import { database } from "./database";
import { isPhotoId, keepFiles, PART, partName, removeFiles, replaceFile } from "./photo-layout";

/** A file may stand without its row while a message is being taken in; after this it is nobody's. Milliseconds. *elicited* */
const GRACE_MS = 60 * 60 * 1000;
const ENDING = ".eml";

/** Messages that came in lie as `<id>.eml`, the bytes as they came. */
export const postFolder = (): string => path.join(/* turbopackIgnore: true */ config.dataDir, "post");

/** Throws where `id` was not made by us, so that no caller can reach outside the folder. */
export function postFileName(id: string): string {
  if (!isPhotoId(id)) throw new TypeError(`Expected the id of a message but received ${JSON.stringify(id)}`);
  return `${id}${ENDING}`;
}
export const isPostFile = (name: string): boolean => name.endsWith(ENDING) && isPhotoId(name.slice(0, -ENDING.length));

/** One message as a file on the disk, whole and flushed, with the hash of its bytes. */
export interface KeptFile { readonly id: string; readonly bytes: number; readonly sha256: string }

/**
 * Writes what arrives to a file that is whole or absent after a power cut; memory holds one chunk at a time. null: more than
 * `mostBytes`, and nothing is left of it.
 */
export async function keepPostFile(stream: AsyncIterable<Uint8Array | string>, mostBytes: number, folder = postFolder()): Promise<KeptFile | null> {
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const id = randomUUID();
  const part = partName(id, "post");
  try {
    const written = await write(stream, path.join(/* turbopackIgnore: true */ folder, part), mostBytes);
    if (written) await keepFiles(folder, [{ part, name: postFileName(id) }]);
    return written && { id, ...written };
  } finally {
    await removeFiles(folder, [part]);
  }
}

async function write(stream: AsyncIterable<Uint8Array | string>, file: string, mostBytes: number): Promise<{ bytes: number; sha256: string } | null> {
  const hash = createHash("sha256");
  const handle = await open(file, "wx", 0o600);
  let bytes = 0;
  try {
    for await (const chunk of stream) {
      const data = typeof chunk === "string" ? Buffer.from(chunk) : chunk;
      bytes += data.byteLength;
      if (bytes > mostBytes) return null;
      hash.update(data);
      await handle.writeFile(data);
    }
  } finally {
    await handle.close();
  }
  return { bytes, sha256: hash.digest("hex") };
}

export const readPostFile = (id: string): Promise<Buffer> => readFile(path.join(/* turbopackIgnore: true */ postFolder(), postFileName(id)));
/** The first bytes of a message, at most `most`, whatever its size. */
export async function readPostStart(id: string, most: number): Promise<Buffer> {
  const handle = await open(path.join(/* turbopackIgnore: true */ postFolder(), postFileName(id)), "r");
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(most), 0, most, 0);
    return buffer.subarray(0, bytesRead);
  } finally {
    await handle.close();
  }
}
/** Puts other bytes in place of a message, whole or not at all. Its row keeps the hash of what came, by which it is known when it comes again. */
export async function replacePostFile(id: string, bytes: Buffer): Promise<void> {
  const folder = postFolder();
  const part = partName(id, "post");
  await writeFile(path.join(/* turbopackIgnore: true */ folder, part), bytes, { mode: 0o600 });
  await replaceFile(folder, { part, name: postFileName(id) });
}
export const removePostFile = (id: string): Promise<void> => removeFiles(postFolder(), [postFileName(id)]);

/** Removes files that no row speaks for and that are older than an hour, unfinished ones included; files that are not ours stay. Returns how many. */
export async function sweepPost(now: Date): Promise<number> {
  const folder = postFolder();
  const names = (await readdir(folder).catch(() => [])).filter((name) => isPostFile(name) || name.startsWith(PART));
  const old: string[] = [];
  for (const name of names) {
    const changedAt = await stat(path.join(/* turbopackIgnore: true */ folder, name)).then((s) => s.mtimeMs, () => now.getTime());
    if (now.getTime() - changedAt > GRACE_MS) old.push(name);
  }
  const known = new Set<string>();
  for (const name of old.filter(isPostFile)) {
    const id = name.slice(0, -ENDING.length);
    if (await database().post.findUnique({ where: { id }, select: { id: true } })) known.add(name);
  }
  const orphans = old.filter((name) => !known.has(name));
  await removeFiles(folder, orphans);
  return orphans.length;
}
