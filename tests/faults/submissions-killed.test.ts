import { spawn } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { createInterface } from "node:readline";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openStore, type Store } from "../../lib/store/open-store";
import { photoFileName, photoOfFile, PHOTO_SIZES } from "../../lib/store/photo-layout";
import { hashToken } from "../../lib/staff/one-time-token";
import { DATABASES, type Scratch } from "../scratch";
import { migrated } from "../store/databases";
import { answersOf, contactOf, PHOTO_KINDS_SENT } from "./submission";

interface Acknowledged { acknowledged: number; intakeId: string; enquiryId: string; reference: string; clientToken: string; photos: string[] }
interface Begun { begun: number; intakeId: string }

const SUBMISSIONS = 20;
/** Kills while a submission is under way; each falls somewhere else in it. */
const KILLS = 10;
const SEED = 20_261_125;

/** Numbers in [0, 1) that are the same in every run. */
function drawn(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

describe.each(DATABASES)("kill -9 while enquiries are sent, on $name", (kind) => {
  let scratch: Scratch;
  let dataDir: string;
  let store: Store;
  const acknowledged: Acknowledged[] = [];
  const begun: Begun[] = [];
  let kills = 0;

  /**
   * One child, killed a moment after it began its `victim`-th enquiry: `share` of the time that one of its enquiries
   * took. Where the enquiry was quicker than that, the kill falls into the next.
   */
  async function runAndKill(first: number, victim: number, share: number): Promise<void> {
    const child = spawn(process.execPath, ["--conditions=react-server", "--import", "tsx", "tests/faults/submit-child.ts", String(first)],
      { env: { ...process.env, DATABASE_URL: scratch.url, DATA_DIR: dataDir }, stdio: ["ignore", "pipe", "inherit"] });
    let startedAt = 0;
    let tookMs = 400;
    let here = 0;
    for await (const line of createInterface({ input: child.stdout })) {
      const event = JSON.parse(line) as Begun | Acknowledged;
      if ("acknowledged" in event) {
        acknowledged.push(event);
        tookMs = performance.now() - startedAt;
        continue;
      }
      begun.push(event);
      startedAt = performance.now();
      here += 1;
      if (here === victim) setTimeout(() => child.kill("SIGKILL"), tookMs * share);
    }
    expect(child.signalCode ?? "SIGKILL").toBe("SIGKILL");
    kills += 1;
  }

  beforeAll(async () => {
    scratch = await migrated(kind);
    dataDir = mkdtempSync(path.join(os.tmpdir(), "plainpile-killed-"));
    const next = drawn(SEED);
    while (kills < KILLS || begun.length < SUBMISSIONS) await runAndKill(begun.length + 1, 2 + Math.floor(next() * 2), (kills % KILLS) / KILLS + next() / KILLS);
    store = openStore(scratch.url);
  }, 600_000);
  afterAll(async () => {
    await store.close();
    await scratch.drop();
    rmSync(dataDir, { recursive: true, force: true });
  });

  const wholeEnquiries = () => store.client.enquiry.findMany({
    include: {
      client: true, links: true, letters: true, audit: true, draft: { include: { revisions: true } }, intake: true,
      rugs: { include: { answers: true, photos: true, findings: true, assessments: true } },
    },
  });
  type Whole = Awaited<ReturnType<typeof wholeEnquiries>>[number];

  async function expectWhole(e: Whole): Promise<void> {
    const { begun: n } = begun.find((b) => b.intakeId === e.intakeId) ?? { begun: -1 };
    expect(e.client).toMatchObject(contactOf(n));
    expect(e.rugs).toHaveLength(1);
    const [rug] = e.rugs;
    const answers = Object.fromEntries(rug?.answers.map((a) => [a.question, a.value]) ?? []);
    expect(answers).toEqual(answersOf(n).rug);
    expect(e.answers).toMatchObject({ wetNow: "wet", reason: "just-happened" });
    expect(rug?.photos.map((p) => p.kind).sort()).toEqual([...PHOTO_KINDS_SENT].sort());
    for (const { id, width } of rug?.photos ?? []) {
      for (const size of PHOTO_SIZES) {
        const { info } = await sharp(path.join(dataDir, "photos", photoFileName(id, size))).raw().toBuffer({ resolveWithObject: true });
        if (size === "full") expect(info.width).toBe(width);
      }
    }
    expect(rug?.findings.length).toBeGreaterThan(3);
    expect(rug?.assessments).toHaveLength(1);
    expect(rug?.assessments[0]?.modelVersion).toMatch(/\S/);
    expect(e.draft?.revisions).toHaveLength(1);
    expect(e.draft?.revisions[0]?.text).toContain(`Dear ${contactOf(n).name},`);
    expect(e.letters).toMatchObject([{ kind: "acknowledgement", automatic: true, toAddress: contactOf(n).email, subject: expect.stringContaining(e.reference) as string }]);
    expect(e.links).toHaveLength(1);
    expect(e.audit.map((a) => a.action)).toEqual(["submitted"]);
  }

  it(`kills at least ${KILLS} times in at least ${SUBMISSIONS} submissions, some of which are acknowledged and some are not`, () => {
    expect(kills).toBeGreaterThanOrEqual(KILLS);
    expect(begun.length).toBeGreaterThanOrEqual(SUBMISSIONS);
    expect(acknowledged.length).toBeGreaterThan(0);
    expect(acknowledged.length).toBeLessThan(begun.length);
  });

  it("keeps every enquiry that was acknowledged, whole, and its link works", async () => {
    const there = new Map((await wholeEnquiries()).map((e) => [e.id, e]));
    for (const a of acknowledged) {
      const e = there.get(a.enquiryId);
      expect(e, `enquiry ${a.acknowledged}`).toBeDefined();
      if (!e) continue;
      expect(e.reference).toBe(a.reference);
      expect(e.links[0]?.tokenHash).toBe(hashToken(a.clientToken));
      expect(e.rugs[0]?.photos.map((p) => p.id).sort()).toEqual([...a.photos].sort());
      await expectWhole(e);
    }
  });

  it("has of every other either nothing or, where the kill came after the commit and before the word, the whole", async () => {
    const acknowledgedIds = new Set(acknowledged.map((a) => a.enquiryId));
    const others = (await wholeEnquiries()).filter((e) => !acknowledgedIds.has(e.id));
    expect(others.length).toBeLessThanOrEqual(kills);
    for (const e of others) await expectWhole(e);
    const enquiries = acknowledged.length + others.length;
    const { client } = store;
    const counts = await Promise.all([client.client.count(), client.rug.count(), client.draft.count(), client.revision.count(), client.letter.count(), client.clientLink.count(), client.assessment.count(), client.audit.count({ where: { action: "submitted" } })]);
    expect(counts).toEqual(counts.map(() => enquiries));
    expect(await client.photo.count({ where: { rugId: { not: null } } })).toBe(enquiries * PHOTO_KINDS_SENT.length);
  });

  it("has no photo row without its files, and nothing among the files that the sweeper would not know", async () => {
    const names = readdirSync(path.join(dataDir, "photos"));
    const present = new Set(names);
    for (const { id } of await store.client.photo.findMany()) {
      for (const size of PHOTO_SIZES) expect(present.has(photoFileName(id, size)), `${id} ${size}`).toBe(true);
    }
    expect(names.filter((name) => photoOfFile(name) === null)).toEqual([]);
  });

  if (kind.name === "sqlite") it("leaves a database that is sound", async () => {
    expect(await store.client.$queryRawUnsafe("PRAGMA integrity_check")).toEqual([{ integrity_check: "ok" }]);
    expect(await store.client.$queryRawUnsafe("PRAGMA foreign_key_check")).toEqual([]);
  });
});
