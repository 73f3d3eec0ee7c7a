import { afterAll, beforeAll, expect, it } from "vitest";
import { POSTGRES_SERVER, postgresql } from "../../scratch";

// The configuration is read on first import, so the database is named before anything of ours is loaded.
const scratch = POSTGRES_SERVER ? await postgresql(POSTGRES_SERVER).empty() : null;
if (scratch) {
  process.env.DATABASE_URL = scratch.url;
  const { closeDatabase } = await import("../../../lib/store/database");
  const { allOperations } = await import("./all-operations");
  const { openWorkshop } = await import("./open-workshop");
  beforeAll(openWorkshop);
  afterAll(async () => {
    await closeDatabase();
    await scratch.drop();
  });
  allOperations();
} else {
  it("runs where PLAINPILE_TEST_POSTGRES names a server, and only there", () => expect(POSTGRES_SERVER).toBeFalsy());
}
