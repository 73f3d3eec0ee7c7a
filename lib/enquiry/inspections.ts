import "server-only";
import type { Inspected } from "../reply/inspected";
import type { Inspection, Prisma } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import type { Locale } from "../words/locales";
import { rugAnswersOf } from "./stored";
import { longDay } from "./workshop-day";

/** The inspections of a rug that count, the newest first. */
export const STANDING_INSPECTIONS = { where: { withdrawnAt: null }, orderBy: NEWEST_FIRST.at } as const satisfies Prisma.Rug$inspectionsArgs;

type Told = Parameters<typeof rugAnswersOf>[0];
/** Until when what was told can have been known to whoever inspected it: until it was recorded, or where that came later until the end of its day (of UTC). */
const knownUntil = ({ day, at }: Pick<Inspection, "day" | "at">): number => Math.min(at.getTime(), Date.parse(`${day}T23:59:59.999Z`));
const isFlooded = (told: Told): boolean => rugAnswersOf(told).incidents?.includes("flood") === true;
/** Whether flood or waste water was told of only after it: of a rug that it got into since, nobody goes by what was found before. Where nothing had been told by then, the enquiry was written down later than the rug was seen. */
export function isOvertaken(inspection: Pick<Inspection, "day" | "at">, told: Told): boolean {
  const before = told.filter(({ at }) => at.getTime() <= knownUntil(inspection));
  return before.length > 0 && isFlooded(told) && !isFlooded(before);
}

type Seen = Pick<Inspection, "by" | "day" | "at" | "isBeyondRepair">;
/** What letters and the desk tell of the newest inspection of a rug; null where none stands, or what was told since has overtaken it. */
export const inspectedIn = ({ inspections: [newest], answers }: { readonly inspections: readonly Seen[]; readonly answers: Told }, locale: Locale): Inspected | null =>
  (newest && !isOvertaken(newest, answers) ? { by: newest.by, on: longDay(newest.day, locale), isBeyondRepair: newest.isBeyondRepair } : null);
