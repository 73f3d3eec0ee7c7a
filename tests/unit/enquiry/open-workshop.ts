import { mkdirSync } from "node:fs";
import { vi } from "vitest";
import { migrateDatabase } from "../../../lib/store/database";
import { photoFolder } from "../../../lib/store/photo-files";
import { settle } from "./workshop";

/** An empty database and folder made ready, with the invented workshop's settings; warnings are expected and kept quiet. */
export async function openWorkshop(): Promise<void> {
  vi.spyOn(console, "warn").mockReturnValue(undefined);
  await migrateDatabase();
  mkdirSync(photoFolder(), { recursive: true });
  await settle();
}
