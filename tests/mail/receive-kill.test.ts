import { spawn } from "node:child_process";
import { once } from "node:events";
import { readdirSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { config } from "../../lib/config/config";
import { sortReceived } from "../../lib/enquiry/sort-post";
import { database } from "../../lib/store/database";
import { photoFolder, sweepOrphans } from "../../lib/store/photo-files";
import { postFileName, postFolder, sweepPost } from "../../lib/store/post-files";
import { letter, photos } from "../unit/enquiry/mail-files";
import { openWorkshop } from "../unit/enquiry/open-workshop";
import { startDovecot, whyNoDovecot, type Dovecot } from "./dovecot";

const missing = whyNoDovecot();
const LETTERS = 14;
/**
 * A letter gives names to ten files: its own, and three sizes of each of its three photos. The kills fall on its own file before
 * its row, between photos, on the last of them, and between two letters.
 */
const KILLS = [1, 2, 12, 20, 19, 15, 25, 13];
/** Longer than a claim on the mailbox and on a message. */
const AHEAD_MS = 11 * 60_000;

describe.skipIf(missing)("a reader of mail that is killed midway", () => {
  let dovecot: Dovecot;
  beforeAll(async () => {
    await openWorkshop();
    dovecot = await startDovecot();
  });
  afterAll(() => dovecot.stop());

  /** Runs the child, which ends itself at the `dieAt`th file, or comes to its end. */
  async function round(n: number, dieAt: number | null): Promise<void> {
    const about = { box: dovecot.box, aheadMs: n * AHEAD_MS, dieAt, isAfter: n % 2 === 1 };
    const child = spawn(process.execPath, ["--conditions=react-server", "--import", "tsx", "tests/mail/receive-child.ts", JSON.stringify(about)], {
      stdio: ["ignore", "ignore", "pipe"], env: { ...process.env, DATA_DIR: config.dataDir },
    });
    const parts: Buffer[] = [];
    child.stderr.on("data", (part: Buffer) => parts.push(part));
    const [code, signal] = (await once(child, "exit")) as [number | null, string | null];
    expect(dieAt === null ? code : signal, Buffer.concat(parts).toString()).toBe(dieAt === null ? 0 : "SIGKILL");
  }

  it("loses none and doubles none: one enquiry, three photos and one acknowledgement a letter", async () => {
    for (let n = 0; n < LETTERS; n++) {
      dovecot.deliver(letter({ from: `killed-${n}@example.org`, photos: await photos(`#10${20 + n}30`, `#30${20 + n}10`, `#${20 + n}1030`), date: new Date() }));
    }
    for (const [n, dieAt] of KILLS.entries()) await round(n, dieAt);
    const filed = await database().post.count({ where: { state: "filed" } });
    expect(filed).toBeGreaterThan(2);
    expect(filed).toBeLessThan(LETTERS);
    await round(KILLS.length, null);
    const end = new Date(Date.now() + (KILLS.length + 1) * AHEAD_MS);
    await sortReceived(end);
    const enquiries = await database().enquiry.findMany({ include: { client: true, letters: true, rugs: { include: { photos: true } } } });
    expect(enquiries.map((e) => e.client.email).sort()).toEqual(Array.from({ length: LETTERS }, (_, n) => `killed-${n}@example.org`).sort());
    expect(enquiries.map((e) => [e.rugs[0]?.photos.length, e.letters.length])).toEqual(Array.from({ length: LETTERS }, () => [3, 1]));
    const posts = await database().post.findMany();
    expect(posts.map((p) => p.state)).toEqual(Array.from({ length: LETTERS }, () => "filed"));
    // What the killed ones left on the disk is swept, and what has a row stays.
    const swept = new Date(end.getTime() + 2 * 3_600_000);
    await sweepPost(swept);
    await sweepOrphans(swept);
    expect(readdirSync(postFolder()).sort()).toEqual(posts.map((p) => postFileName(p.id)).sort());
    const kept = enquiries.flatMap((e) => e.rugs.flatMap((r) => r.photos.map((p) => p.id)));
    expect(new Set(readdirSync(photoFolder()).map((name) => name.slice(0, 36)))).toEqual(new Set(kept));
  }, 180_000);
});
