import "server-only";
import type { Inspected } from "../reply/inspected";
import type { Inspection, Prisma } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import type { Locale } from "../words/locales";
import { longDay } from "./workshop-day";

/** The inspections of a rug that count, the newest first. */
export const STANDING_INSPECTIONS = { where: { withdrawnAt: null }, orderBy: NEWEST_FIRST.at } as const satisfies Prisma.Rug$inspectionsArgs;

/** What letters and the desk tell of the newest of them; null where none stands. */
export const inspectedIn = ([newest]: readonly Pick<Inspection, "by" | "day" | "isBeyondRepair">[], locale: Locale): Inspected | null =>
  (newest ? { by: newest.by, on: longDay(newest.day, locale), isBeyondRepair: newest.isBeyondRepair } : null);
