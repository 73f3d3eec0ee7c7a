import "server-only";
import { database, type Db, type Tx } from "../store/database";
import { isLocale } from "../words/locales";
import { DEFAULT_SETTINGS, workshopSettingsSchema, type WorkshopSettings } from "./settings-schema";

export type { WorkshopSettings } from "./settings-schema";

const ROW = "workshop";

/** The workshop's settings; a key that the stored row lacks has its default, and so has a locale of an earlier release that is offered no more. Inside a transaction pass its `tx`. */
export async function readSettings(db: Db | Tx = database()): Promise<WorkshopSettings> {
  const row = await db.workshop.findUnique({ where: { id: ROW } });
  if (!row) return DEFAULT_SETTINGS;
  const values = { ...DEFAULT_SETTINGS, ...(row.values as object) };
  return workshopSettingsSchema.parse({ ...values, locale: isLocale(values.locale) ? values.locale : DEFAULT_SETTINGS.locale });
}

/** Stores settings that were parsed. Who may is decided by lib/enquiry/save-settings. */
export async function writeSettings(tx: Tx, values: WorkshopSettings): Promise<void> {
  await tx.workshop.upsert({
    where: { id: ROW },
    create: { id: ROW, values },
    update: { values, version: { increment: 1 } },
  });
}
