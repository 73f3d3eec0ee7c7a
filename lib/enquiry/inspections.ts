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
/**
 * What can have been told to whoever inspected it: what was told until it was recorded or, where that was on a later day, before its own
 * day began (of UTC), since its hour is not kept. Where nothing had been told by then, the enquiry was written down later than the rug was seen, and what it said at first counts.
 */
function knownTo({ day, at }: Pick<Inspection, "day" | "at">, told: Told): Told {
  const isRecordedThen = at.toISOString().slice(0, 10) <= day;
  const before = told.filter((row) => (isRecordedThen ? row.at <= at : row.at < new Date(day)));
  const first = Math.min(...told.map((row) => row.at.getTime()));
  return before.length > 0 ? before : told.filter((row) => row.at.getTime() === first);
}
const isFlooded = (told: Told): boolean => rugAnswersOf(told).incidents?.includes("flood") === true;
/** Whether flood or waste water was told of only after it: of a rug that it got into since, nobody goes by what was found before. */
export const isOvertaken = (inspection: Pick<Inspection, "day" | "at">, told: Told): boolean => isFlooded(told) && !isFlooded(knownTo(inspection, told));

interface Looked<Of> { readonly inspections: readonly Of[]; readonly answers: Told }
/** The newest inspection of a rug, by whether its verdict counts: what was told since may have overtaken it. Both null where nobody inspected it. */
export function newestOf<Of extends Pick<Inspection, "day" | "at">>({ inspections: [newest], answers }: Looked<Of>): { counts: Of | null; overtaken: Of | null } {
  if (!newest) return { counts: null, overtaken: null };
  return isOvertaken(newest, answers) ? { counts: null, overtaken: newest } : { counts: newest, overtaken: null };
}

/** What letters and the desk tell of the newest inspection of a rug; null where none counts. */
export function inspectedIn(rug: Looked<Pick<Inspection, "by" | "day" | "at" | "isBeyondRepair">>, locale: Locale): Inspected | null {
  const { counts } = newestOf(rug);
  return counts && { by: counts.by, on: longDay(counts.day, locale), isBeyondRepair: counts.isBeyondRepair };
}
