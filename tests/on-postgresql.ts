import { afterAll, expect, it } from "vitest";
import { POSTGRES_SERVER, postgresql } from "./scratch";

/** Runs checks on an empty PostgreSQL database of their own. The configuration is read on first import, so the database is named before anything of ours is loaded: `load` imports the checks. */
export async function onPostgresql(load: () => Promise<() => void>): Promise<void> {
  if (!POSTGRES_SERVER) {
    it("runs where PLAINPILE_TEST_POSTGRES names a server, and only there", () => expect(POSTGRES_SERVER).toBeFalsy());
    return;
  }
  const scratch = await postgresql(POSTGRES_SERVER).empty();
  process.env.DATABASE_URL = scratch.url;
  const { closeDatabase } = await import("../lib/store/database");
  const checks = await load();
  afterAll(async () => {
    await closeDatabase();
    await scratch.drop();
  });
  checks();
}
