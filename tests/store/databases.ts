import path from "node:path";
import { applyMigrations } from "../../lib/store/migrate";
import { POSTGRES_SERVER, type Kind, type Scratch } from "../scratch";

export { DATABASES, type Scratch } from "../scratch";

export const MIGRATIONS = path.resolve("prisma/migrations");

if (!POSTGRES_SERVER) console.log("PLAINPILE_TEST_POSTGRES names no server: the store is tested on SQLite only.");

export async function migrated(kind: Kind): Promise<Scratch> {
  const scratch = await kind.empty();
  await applyMigrations(scratch.url, MIGRATIONS);
  return scratch;
}
