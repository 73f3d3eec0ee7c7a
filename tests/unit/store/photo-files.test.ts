import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { photosWithoutFiles, photoFolder, photoPath, sweepOrphans } from "../../../lib/store/photo-files";
import { isPhotoId, keepFiles, newPhotoId, partName, photoFileName, photoOfFile, PHOTO_SIZES } from "../../../lib/store/photo-layout";

let folder = "";
beforeEach(() => { folder = mkdtempSync(path.join(tmpdir(), "photo-files-")); });
afterEach(() => rmSync(folder, { recursive: true, force: true }));
const put = (name: string, text = name) => writeFileSync(path.join(folder, name), text);

describe("names", () => {
  it("are ours alone: 36 small letters, digits and hyphens, never the same", () => {
    const ids = Array.from({ length: 1000 }, newPhotoId);
    expect(new Set(ids).size).toBe(1000);
    for (const id of ids) expect(id).toMatch(/^[a-z0-9-]{36}$/);
  });
  it.each(["../../etc/passwd", "a".repeat(19), "a".repeat(65), "A".repeat(30), "", `${"a".repeat(30)}/x`, `${"a".repeat(30)}\0`, `${"a".repeat(30)}\n`])("refuses %j as an id", (id) => {
    expect(isPhotoId(id)).toBe(false);
    expect(() => photoPath(id, "full")).toThrow(TypeError);
  });
  it.each(PHOTO_SIZES)("of size %s lie in the photo folder and are recognised again", (size) => {
    const id = newPhotoId();
    expect(path.dirname(photoPath(id, size))).toBe(photoFolder());
    expect(photoOfFile(photoFileName(id, size))).toEqual({ id, unfinished: false });
    expect(photoOfFile(partName(id, size))).toEqual({ id, unfinished: true });
  });
  it.each(["README.md", "plainpile.db", ".part-", "x.jpg", `${newPhotoId()}.png`, `${newPhotoId()}-640.jpg`])("does not take %s for one of its own", (name) => {
    expect(photoOfFile(name)).toBeNull();
  });
});

describe("keepFiles", () => {
  it("gives every file its name and leaves no unfinished one", async () => {
    put("p1"); put("p2");
    await keepFiles(folder, [{ part: "p1", name: "one.jpg" }, { part: "p2", name: "two.jpg" }]);
    expect(readdirSync(folder).sort()).toEqual(["one.jpg", "two.jpg"]);
    expect(readFileSync(path.join(folder, "two.jpg"), "utf8")).toBe("p2");
  });
  it("leaves nothing at all when one of them cannot be flushed or renamed", async () => {
    put("p1");
    await expect(keepFiles(folder, [{ part: "p1", name: "one.jpg" }, { part: "gone", name: "two.jpg" }])).rejects.toThrow("ENOENT");
    expect(readdirSync(folder)).toEqual([]);
    put("p1"); put("p2");
    await expect(keepFiles(folder, [{ part: "p1", name: "one.jpg" }, { part: "p2", name: "nowhere/two.jpg" }])).rejects.toThrow("ENOENT");
    expect(readdirSync(folder)).toEqual([]);
  });
});

describe("sweepOrphans", () => {
  const NOW = new Date("2026-05-01T12:00:00Z");
  const age = (name: string, minutes: number) => utimesSync(path.join(folder, name), NOW, new Date(NOW.getTime() - minutes * 60_000));
  const photo = (minutes: number) => {
    const id = newPhotoId();
    for (const size of PHOTO_SIZES) { put(photoFileName(id, size)); age(photoFileName(id, size), minutes); }
    return id;
  };
  it("removes what has no row and is older than an hour; at the hour and below it stays", async () => {
    const [kept, old, atLimit, young] = [photo(600), photo(60.1), photo(60), photo(59)];
    expect(await sweepOrphans(NOW, { folder, known: async () => [kept] })).toEqual([old]);
    expect(await photosWithoutFiles([kept, old, atLimit, young], folder)).toEqual([old]);
  });
  it("removes old unfinished files, even of a photo that has its row", async () => {
    const id = photo(600);
    put(partName(id, "received")); age(partName(id, "received"), 61);
    const young = partName(newPhotoId(), "received");
    put(young); age(young, 1);
    expect(await sweepOrphans(NOW, { folder, known: async () => [id] })).toEqual([id]);
    expect(readdirSync(folder).sort()).toEqual([young, ...PHOTO_SIZES.map((size) => photoFileName(id, size))].sort());
  });
  it("touches no file that is not a photo of ours, and asks about at most 500 at once", async () => {
    put("README.md"); age("README.md", 9999);
    symlinkSync(path.join(folder, "README.md"), path.join(folder, "link.jpg"));
    for (let i = 0; i < 501; i++) { const name = photoFileName(newPhotoId(), "full"); put(name); age(name, 100); }
    const asked: number[] = [];
    expect(await sweepOrphans(NOW, { folder, known: async (ids) => { asked.push(ids.length); return []; } })).toHaveLength(501);
    expect(asked).toEqual([500, 1]);
    expect(readdirSync(folder).sort()).toEqual(["README.md", "link.jpg"]);
  });
  it("makes the folder where there is none yet", async () => {
    const fresh = path.join(folder, "photos");
    expect(await sweepOrphans(NOW, { folder: fresh, known: async () => [] })).toEqual([]);
    expect(existsSync(fresh)).toBe(true);
  });
});

describe("photosWithoutFiles", () => {
  it.each(PHOTO_SIZES)("reports a photo that lacks its size %s", async (missing) => {
    const id = newPhotoId();
    for (const size of PHOTO_SIZES) if (size !== missing) put(photoFileName(id, size));
    expect(await photosWithoutFiles([id], folder)).toEqual([id]);
  });
});
