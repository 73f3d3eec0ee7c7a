import { mkdirSync } from "node:fs";
import { afterAll, beforeAll, expect, it, vi } from "vitest";
import { POSTGRES_SERVER, postgresql } from "../../scratch";

// The configuration is read on first import, so the database is named before anything of ours is loaded.
const scratch = POSTGRES_SERVER ? await postgresql(POSTGRES_SERVER).empty() : null;
if (scratch) {
  process.env.DATABASE_URL = scratch.url;
  const { closeDatabase, migrateDatabase } = await import("../../../lib/store/database");
  const { photoFolder } = await import("../../../lib/store/photo-files");
  const { settle } = await import("./workshop");
  const { submitting } = await import("./submitting");
  const { answering } = await import("./answering");
  const { atTheDesk } = await import("./at-the-desk");
  const { correcting } = await import("./correcting");
  const { onLabels } = await import("./on-labels");
  const { measuring } = await import("./measuring");
  const { onTheBench } = await import("./on-the-bench");
  const { onPaper } = await import("./on-paper");
  const { onTheWire } = await import("./on-the-wire");
  const { ownParagraphs } = await import("./own-paragraphs");
  const { blurring } = await import("./blurring");
  const { byMail } = await import("./by-mail");
  beforeAll(async () => {
    vi.spyOn(console, "warn").mockReturnValue(undefined);
    await migrateDatabase();
    mkdirSync(photoFolder(), { recursive: true });
    await settle();
  });
  afterAll(async () => {
    await closeDatabase();
    await scratch.drop();
  });
  submitting();
  answering();
  atTheDesk();
  onTheBench();
  correcting();
  onPaper();
  onTheWire();
  ownParagraphs();
  blurring();
  byMail();
  measuring();
  onLabels();
} else {
  it("runs where PLAINPILE_TEST_POSTGRES names a server, and only there", () => expect(POSTGRES_SERVER).toBeFalsy());
}
