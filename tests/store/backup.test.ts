import { execFile } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { promisify } from "node:util";
import { create } from "tar";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { unpack } from "../../lib/store/archive";
import { backUp, restore, type Place } from "../../lib/store/backup";
import { openStore } from "../../lib/store/open-store";
import { KEPT_TABLES, NEEDED_JSON, PASSING_TABLES } from "../../lib/store/tables";
import { DATABASES, sqlite, type Kind, type Scratch } from "../scratch";
import { migrated, MIGRATIONS } from "./databases";
import { model, MODELS, ROWS, writeOneOfEach } from "./every-model";
import { tablesOf } from "./models-file";

const PHOTO = "0f0f0f0f-0000-4000-8000-00000000000a";
const FILES = [`${PHOTO}.jpg`, `${PHOTO}-1600.jpg`, `${PHOTO}-320.jpg`];
const MESSAGE = "0f0f0f0f-0000-4000-8000-00000000000b.eml";
let folder: string;
let archive: string;
const scratches: Scratch[] = [];
beforeEach(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), "plainpile-backup-"));
  archive = path.join(folder, "backup.tar.gz");
});
afterEach(async () => {
  for (const scratch of scratches.splice(0)) await scratch.drop();
  rmSync(folder, { recursive: true, force: true });
});

async function place(kind: Kind, name: string): Promise<Place> {
  const scratch = await migrated(kind);
  scratches.push(scratch);
  return { databaseUrl: scratch.url, dataDir: path.join(folder, name), migrations: MIGRATIONS };
}

async function withStore<T>(at: Place, work: (store: ReturnType<typeof openStore>) => Promise<T>): Promise<T> {
  const store = openStore(at.databaseUrl);
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

/** A workshop with one row of everything, a photo in three sizes, and an upload that is not finished. */
async function full(kind: Kind): Promise<Place> {
  const at = await place(kind, "full");
  await withStore(at, (store) => store.transact(async (tx) => {
    await writeOneOfEach(tx);
    await tx.photo.update({ where: { id: "p1" }, data: { id: PHOTO } });
    await tx.enquiry.create({ data: { ...ROWS.enquiry, id: "e0", reference: "A1-100", intakeId: null, joinedToId: "e1", state: "new", channel: "web", urgency: "hours" } });
    await tx.answer.create({ data: { ...ROWS.answer, id: "a2", value: "line one\nline “two”\u2028 \\n" } });
  }));
  const photos = path.join(at.dataDir, "photos");
  mkdirSync(photos, { recursive: true });
  for (const name of FILES) writeFileSync(path.join(photos, name), `picture ${name}`);
  writeFileSync(path.join(photos, `.part-${PHOTO}-full`), "half a picture");
  mkdirSync(path.join(at.dataDir, "post"));
  writeFileSync(path.join(at.dataDir, "post", MESSAGE), "Subject: My rug\r\n\r\n\u00fc");
  writeFileSync(path.join(at.dataDir, "post", ".part-0f0f0f0f-0000-4000-8000-00000000000c-post"), "half a message");
  return at;
}

const everything = (at: Place) => withStore(at, async (store) => {
  const rows: Record<string, unknown> = {};
  for (const key of MODELS) rows[key] = await model(store.client, key).findMany({ orderBy: { id: "asc" } });
  return rows;
});
const postIn = (at: Place) => readdirSync(path.join(at.dataDir, "post")).sort();
const photosIn = (at: Place) => readdirSync(path.join(at.dataDir, "photos")).sort();

/** Every pair of databases that can be reached: a backup of one restores into the other. */
const PAIRS = DATABASES.flatMap((from) => DATABASES.map((to) => ({ from, to, name: `${from.name} into ${to.name}` })));

describe.each(PAIRS)("backUp and restore, $name", ({ from, to }) => {
  it("bring back every row and every photo into an empty place, without what must not come back", async () => {
    const source = await full(from);
    const made = await backUp(source, archive);
    expect(made.photosMissing).toEqual([]);
    expect(statSync(archive).mode & 0o777).toBe(0o600);

    const target = await place(to, "target");
    const { manifest, before } = await restore(target, archive, false);
    expect(before).toBeNull();
    expect(manifest.rows).toMatchObject({ enquiry: 2, answer: 2, letter: 1 });
    const [was, is] = [await everything(source), await everything(target)];
    expect(is).toEqual({ ...was, ...Object.fromEntries(PASSING_TABLES.map((key) => [key, []])) });
    expect(photosIn(target)).toEqual([...FILES].sort());
    for (const name of FILES) expect(readFileSync(path.join(target.dataDir, "photos", name), "utf8")).toBe(`picture ${name}`);
    expect(postIn(target)).toEqual([MESSAGE]);
    expect(readFileSync(path.join(target.dataDir, "post", MESSAGE), "utf8")).toBe("Subject: My rug\r\n\r\n\u00fc");
    for (const at of [source, target]) expect(readdirSync(at.dataDir).filter((name) => name.startsWith("."))).toEqual([]);
  });
});

describe.each(DATABASES)("restore on $name", (kind) => {
  it("touches nothing where there are data already, unless told to replace them; then keeps a backup of those", async () => {
    const at = await full(kind);
    await backUp(at, archive);
    await withStore(at, async (store) => {
      await store.client.client.create({ data: { id: "later", name: "Came later" } });
    });
    const laterMessage = "0f0f0f0f-0000-4000-8000-00000000000d.eml";
    const later = "11111111-0000-4000-8000-00000000000b.jpg";
    writeFileSync(path.join(at.dataDir, "photos", later), "later");
    writeFileSync(path.join(at.dataDir, "post", laterMessage), "later");
    const was = await everything(at);
    await expect(restore(at, archive, false)).rejects.toThrow("--replace");
    expect(await everything(at)).toEqual(was);

    const { before } = await restore(at, archive, true);
    expect(await withStore(at, (store) => store.client.client.findMany())).toHaveLength(1);
    expect(photosIn(at)).not.toContain(later);
    expect(postIn(at)).not.toContain(laterMessage);
    await restore(at, before ?? "", true);
    expect((await withStore(at, (store) => store.client.client.findMany())).map((c) => c.id).sort()).toEqual(["c1", "later"]);
    expect(photosIn(at)).toContain(later);
    expect(postIn(at)).toContain(laterMessage);
  });

  it("leaves everything as it was where a row of the backup does not fit", async () => {
    const at = await full(kind);
    const bad = path.join(folder, "bad");
    await backUp(at, archive);
    await unpack(archive, bad);
    const was = await everything(at);
    const rugs = path.join(bad, "tables/rug.jsonl");
    writeFileSync(rugs, readFileSync(rugs, "utf8").replace('"enquiryId":"e1"', '"enquiryId":"nowhere"'));
    const { pack } = await import("../../lib/store/archive");
    const { schema, rows } = JSON.parse(readFileSync(path.join(bad, "manifest.json"), "utf8")) as { schema: string[]; rows: Record<string, number> };
    const repacked = path.join(folder, "repacked.tar.gz");
    await pack(bad, repacked, { madeAt: new Date(0).toISOString(), schema, rows, photosMissing: [] });
    await expect(restore(at, repacked, true)).rejects.toThrow();
    expect(await everything(at)).toEqual(was);
  });

  it("backs up one moment while others write", async () => {
    const at = await full(kind);
    await withStore(at, async (store) => {
      let on = true;
      const writing = (async () => {
        for (let n = 0; on; n++) {
          await store.transact(async (tx) => {
            await tx.client.create({ data: { id: `pair-${n}`, name: "one" } });
            await tx.audit.create({ data: { id: `pair-${n}`, actorKind: "system", action: "pair", detail: {} } });
          });
          // SQLite answers at once, so this loop would never let the backup's files have their turn.
          await new Promise((resume) => setImmediate(resume));
        }
      })();
      const { rows } = await backUp(at, archive);
      on = false;
      await writing;
      expect((rows.client ?? 0) - 1).toBe((rows.audit ?? 0) - 1);
    });
  });
});

describe("backUp", () => {

  it("says which photos have no file any more", async () => {
    const at = await full(sqlite);
    rmSync(path.join(at.dataDir, "photos", `${PHOTO}-320.jpg`));
    expect((await backUp(at, archive)).photosMissing).toEqual([PHOTO]);
  });

  it("never overwrites a file and never leaves half of one", async () => {
    const at = await full(sqlite);
    await backUp(at, archive);
    await expect(backUp(at, archive)).rejects.toThrow("never overwrites");
    await expect(backUp(at, path.join(folder, "nowhere/backup.tar.gz"))).rejects.toThrow("There is no folder");
    expect(readdirSync(folder).sort()).toEqual(["backup.tar.gz", "full"]);
  });

  it("keeps or leaves out every model, and knows every Json field that must have a value", () => {
    expect([...KEPT_TABLES, ...PASSING_TABLES].sort()).toEqual([...MODELS].sort());
    const { tables } = tablesOf("prisma/schema/models.prisma");
    const needed = Object.entries(tables).map(([name, t]) => [`${name.charAt(0).toLowerCase()}${name.slice(1)}`, t.columns.filter((c) => c.type === "Json" && !c.optional).map((c) => c.name)] as const);
    expect(NEEDED_JSON).toEqual(Object.fromEntries(needed.filter(([, fields]) => fields.length > 0)));
  });
});

describe("unpack", () => {
  const into = () => path.join(folder, `out-${readdirSync(folder).length}`);

  it("finds a backup that was cut short, anywhere", async () => {
    await backUp(await full(sqlite), archive);
    const whole = readFileSync(archive);
    for (const share of [0, 0.1, 0.5, 0.9, 0.999]) {
      const cut = path.join(folder, "cut.tar.gz");
      writeFileSync(cut, whole.subarray(0, Math.floor(whole.length * share)));
      await expect(unpack(cut, into()), `${share}`).rejects.toMatchObject({ name: "ArchiveError" });
    }
  });

  it("finds a member that was changed, is missing, or was never in the list", async () => {
    await backUp(await full(sqlite), archive);
    const out = into();
    await unpack(archive, out);
    const again = async (names: string[]) => {
      const file = path.join(folder, `again-${readdirSync(folder).length}.tar.gz`);
      await create({ file, gzip: true, cwd: out }, names);
      return file;
    };
    const members = ["tables", "photos", "post", "manifest.json"].flatMap((n) => (n.endsWith(".json") ? [n] : readdirSync(path.join(out, n)).map((f) => `${n}/${f}`)));
    await unpack(await again(members), into());
    await expect(unpack(await again(members.filter((m) => m !== "tables/letter.jsonl")), into())).rejects.toThrow("tables/letter.jsonl is missing");
    await expect(unpack(await again(members.filter((m) => m !== "manifest.json")), into())).rejects.toThrow("not a backup");
    writeFileSync(path.join(out, "photos/stranger-00000000000000.jpg"), "x");
    await expect(unpack(await again([...members, "photos/stranger-00000000000000.jpg"]), into())).rejects.toThrow("not in its list");
    writeFileSync(path.join(out, "evil.sh"), "x");
    await expect(unpack(await again([...members, "evil.sh"]), into())).rejects.toThrow("not a backup");
    writeFileSync(path.join(out, "photos", FILES[0] ?? ""), "another picture");
    await expect(unpack(await again(members), into())).rejects.toThrow("not what was backed up");
  });

  it("is restored where it was made before some tables existed; those stay empty", async () => {
    await backUp(await full(sqlite), archive);
    const out = into();
    await unpack(archive, out);
    const unknown = ["inspection", "document", "enclosure"] as const;
    const manifest = JSON.parse(readFileSync(path.join(out, "manifest.json"), "utf8")) as { rows: Record<string, number>; members: { name: string }[]; schema: string[] };
    const isLater = (name: string) => unknown.some((key) => name === `tables/${key}.jsonl`);
    const older = { ...manifest, rows: Object.fromEntries(Object.entries(manifest.rows).filter(([key]) => !unknown.some((u) => u === key))), members: manifest.members.filter((m) => !isLater(m.name)), schema: manifest.schema.slice(0, 1) };
    writeFileSync(path.join(out, "manifest.json"), JSON.stringify(older));
    const file = path.join(folder, "older.tar.gz");
    await create({ file, gzip: true, cwd: out }, ["manifest.json", ...older.members.map((m) => m.name)]);
    const at = await place(sqlite, "newer");
    await restore(at, file, false);
    await withStore(at, async ({ client }) => {
      expect(await client.letter.count()).toBe(manifest.rows["letter"]);
      for (const key of unknown) expect(await model(client, key).count(), key).toBe(0);
    });
  });

  it("refuses a backup of a newer version, and a file that is none", async () => {
    const at = await full(sqlite);
    await backUp(at, archive);
    const older: Place = { ...(await place(sqlite, "older")), migrations: path.join(folder, "migrations") };
    mkdirSync(path.join(older.migrations, "sqlite"), { recursive: true });
    await expect(restore(older, archive, false)).rejects.toThrow("newer version");
    writeFileSync(path.join(folder, "note.txt"), "no archive");
    await expect(unpack(path.join(folder, "note.txt"), into())).rejects.toMatchObject({ name: "ArchiveError" });
    await expect(unpack(path.join(folder, "nothing.tar.gz"), into())).rejects.toThrow("There is no file");
  });
});

describe("npm run backup and npm run restore", () => {
  const run = async (command: string, at: Place, ...words: string[]) => {
    const args = ["--conditions=react-server", "--import", "tsx", `lib/commands/${command}.ts`, ...words];
    const env = { ...process.env, DATABASE_URL: at.databaseUrl, DATA_DIR: at.dataDir };
    return promisify(execFile)(process.execPath, args, { env }).then((r) => ({ code: 0, ...r }), (e: { code: number; stdout: string; stderr: string }) => e);
  };

  it("go round, and refuse in one line with exit code 2", async () => {
    const at = await full(sqlite);
    const made = await run("backup", at, archive);
    expect(made).toMatchObject({ code: 0, stderr: "" });
    expect(made.stdout).toContain("2 enquiries, 1 letters, 3 photo files");
    for (const [command, ...words] of [["backup"], ["backup", archive], ["restore", archive]] as const) {
      const refused = await run(command, at, ...words);
      expect(refused.code, command).toBe(2);
      expect(refused.stderr.trim().split("\n")).toHaveLength(1);
    }
    expect((await run("restore", at, archive, "--replace")).stdout).toContain("Restored 2 enquiries");
  }, 120_000);

  it("bring back nothing that was erased since, and go on knowing of it", async () => {
    const at = await full(sqlite);
    await run("backup", at, archive);
    await withStore(at, (store) => store.transact((tx) => tx.audit.create({ data: { ...ROWS.audit, id: "gone", action: "erased", enquiryId: null, detail: { erasedId: "e0", reference: "A1-100" } } })));
    for (const once of ["the first time", "and again"]) {
      const restored = await run("restore", at, archive, "--replace");
      expect(restored.stdout, once).toContain("1 of them had been erased since, and were erased again.");
      expect(await withStore(at, (store) => store.client.enquiry.findMany({ select: { id: true } })), once).toEqual([{ id: "e1" }]);
    }
  }, 120_000);
});
