import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { database, migrateDatabase } from "../../../lib/store/database";
import { isPostFile, keepPostFile, postFileName, postFolder, sweepPost } from "../../../lib/store/post-files";

const NOW = new Date("2026-11-28T09:00:00Z");
const chunks = async function* (...parts: string[]) { for (const part of parts) yield await Promise.resolve(Buffer.from(part)); };
const names = () => readdirSync(postFolder()).sort();
beforeAll(() => migrateDatabase());
beforeEach(() => mkdirSync(postFolder(), { recursive: true }));

describe("keepPostFile", () => {
  it("keeps the bytes with their number and hash, for its owner alone, and nothing unfinished", async () => {
    const before = names();
    const kept = await keepPostFile(chunks("From: a", "\r\n\r\nb"), 12);
    expect(kept).toMatchObject({ bytes: 12, sha256: createHash("sha256").update("From: a\r\n\r\nb").digest("hex") });
    const name = postFileName(kept?.id ?? "");
    expect(names().filter((n) => !before.includes(n))).toEqual([name]);
    expect(readFileSync(path.join(postFolder(), name), "utf8")).toBe("From: a\r\n\r\nb");
  });
  it("leaves nothing of what is a byte too large, or breaks off", async () => {
    const before = names();
    expect(await keepPostFile(chunks("From: a", "\r\n\r\nb"), 11)).toBeNull();
    await expect(keepPostFile((async function* () { yield "From"; await Promise.reject(new Error("broken off")); })(), 100)).rejects.toThrow("broken off");
    expect(names()).toEqual(before);
  });
});

describe("postFileName and isPostFile", () => {
  it("reach nothing outside the folder", () => {
    expect(() => postFileName("../secret")).toThrow(TypeError);
    expect(["0f0f0f0f-0000-4000-8000-00000000000b.eml", "../secret.eml", "note.eml", ".part-0f0f0f0f-0000-4000-8000-00000000000b-post"].map(isPostFile)).toEqual([true, false, false, false]);
  });
});

describe("sweepPost", () => {
  it("removes after an hour what no row speaks for, and leaves the rest and strangers' files", async () => {
    const kept = await keepPostFile(chunks("kept"), 100);
    const orphan = await keepPostFile(chunks("orphan"), 100);
    const fresh = await keepPostFile(chunks("fresh"), 100);
    if (!kept || !orphan || !fresh) throw new Error("Expected three files");
    await database().post.create({ data: { ...kept, state: "received", arrivedAt: NOW } });
    const part = ".part-0f0f0f0f-0000-4000-8000-00000000000e-post";
    writeFileSync(path.join(postFolder(), part), "half");
    writeFileSync(path.join(postFolder(), "note.txt"), "a person's");
    const age = (name: string, minutes: number) => { const at = new Date(NOW.getTime() - minutes * 60_000); utimesSync(path.join(postFolder(), name), at, at); };
    for (const name of [postFileName(kept.id), postFileName(orphan.id), part, "note.txt"]) age(name, 61);
    age(postFileName(fresh.id), 60);
    await sweepPost(NOW);
    expect(names()).toEqual(expect.arrayContaining([postFileName(kept.id), postFileName(fresh.id), "note.txt"]));
    expect(names()).not.toContain(postFileName(orphan.id));
    expect(names()).not.toContain(part);
  });
});
