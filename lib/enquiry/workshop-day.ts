import type { Locale } from "../words/locales";
import { longDate } from "../words/measures";

/** The hour at which the workshop's day ends, on its own clock. Elicited. */
const EVENING_HOUR = 18;
const DAY_MS = 86_400_000;

/** The clock of a time zone at an instant, in milliseconds as if that clock showed UTC. */
function localMs(at: number, timeZone: string): number {
  const parts = new Intl.DateTimeFormat("en-GB", {
    timeZone,
    hourCycle: "h23",
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
    second: "2-digit",
  }).formatToParts(at);
  const part = (type: string) => Number(parts.find((p) => p.type === type)?.value);
  return Date.UTC(part("year"), part("month") - 1, part("day"), part("hour"), part("minute"), part("second")) + (((at % 1000) + 1000) % 1000);
}

/** The instant at which the clock of the time zone shows `local`; where the clock jumps over it, the instant after the jump. */
function instantOf(local: number, timeZone: string): number {
  const first = local - (localMs(local, timeZone) - local);
  return local - (localMs(first, timeZone) - first);
}

/** The newest six o'clock in the evening on the workshop's clock, at or before `now`. */
export function lastEvening(now: Date, timeZone: string): Date {
  const local = localMs(now.getTime(), timeZone);
  const today = Math.floor(local / DAY_MS) * DAY_MS + EVENING_HOUR * 3_600_000;
  return new Date(instantOf(local >= today ? today : today - DAY_MS, timeZone));
}

/**
 * The instant that a date and an hour ("2026-11-29", "08:00") mean on the workshop's clock; null where that clock jumps over
 * them, or they are none. Of an hour that comes twice, one of the two.
 */
export function instantAt(day: string, hour: string, timeZone: string): Date | null {
  const local = Date.parse(`${day}T${hour}:00Z`);
  // A parser is lenient: what is read must be what was written.
  if (Number.isNaN(local) || new Date(local).toISOString().slice(0, 16) !== `${day}T${hour}`) return null;
  const at = instantOf(local, timeZone);
  return localMs(at, timeZone) === local ? new Date(at) : null;
}

/** The day and the hour that the workshop's clock shows: "2026-11-29", "08:00". */
export function dayAndHour(at: Date, timeZone: string): { day: string; hour: string } {
  const shown = new Date(localMs(at.getTime(), timeZone)).toISOString();
  return { day: shown.slice(0, 10), hour: shown.slice(11, 16) };
}

/** What "tomorrow at eight" is on the workshop's clock. */
export const tomorrowAtEight = (now: Date, timeZone: string): { day: string; hour: string } =>
  ({ day: dayAndHour(new Date(instantOf(Math.floor(localMs(now.getTime(), timeZone) / DAY_MS) * DAY_MS + 1.5 * DAY_MS, timeZone)), timeZone).day, hour: "08:00" });

/** A day as it stands in a document: "28 November 2026". `day` is YYYY-MM-DD. */
export const longDay = (day: string, locale: Locale): string => longDate(new Date(`${day}T00:00:00Z`), { locale, timeZone: "UTC" });
