import type { Locale } from "../words/locales";

/** How instants are told to people. Instants come in as ISO 8601 strings, `now` among them: nothing here reads a clock. */
export interface Place {
  locale: Locale;
  /** IANA name, e.g. "Europe/London". */
  timeZone: string;
}

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

const some = (n: number, one: string): string => `${n} ${one}${n === 1 ? "" : "s"}`;

/**
 * How long something has waited: `short` for the eye ("2 h 10"), `spoken` for the ear ("2 hours 10 minutes").
 * Minutes under an hour, hours and minutes under ten hours, hours under a day, days under two weeks, then whole weeks.
 * Always rounded down; an instant that lies ahead (a clock that was put back) counts as just now. Throws on an unreadable instant.
 */
export function waitingInWords(from: string, now: string): { short: string; spoken: string } {
  const ms = Date.parse(now) - Date.parse(from);
  if (Number.isNaN(ms)) throw new Error(`Expected two ISO 8601 instants but received ${from} and ${now}`);
  if (ms < MINUTE) return { short: "just now", spoken: "just now" };
  if (ms < HOUR) {
    const m = Math.floor(ms / MINUTE);
    return { short: `${m} min`, spoken: some(m, "minute") };
  }
  const hours = Math.floor(ms / HOUR);
  const minutes = Math.floor((ms % HOUR) / MINUTE);
  if (ms < 10 * HOUR && minutes > 0) {
    return { short: `${hours} h ${String(minutes).padStart(2, "0")}`, spoken: `${some(hours, "hour")} ${some(minutes, "minute")}` };
  }
  if (ms < DAY) return { short: `${hours} h`, spoken: some(hours, "hour") };
  const days = Math.floor(ms / DAY);
  const words = days < 14 ? some(days, "day") : some(Math.floor(days / 7), "week");
  return { short: words, spoken: words };
}

/** The hour of the day in the workshop, e.g. "17:40". */
export const clock = (iso: string, { locale, timeZone }: Place): string =>
  new Intl.DateTimeFormat(locale, { timeZone, timeStyle: "short" }).format(new Date(iso));

/** Whole days since 1970 of the calendar day an instant falls on in the workshop. */
function calendarDay(iso: string, timeZone: string): number {
  const parts = new Intl.DateTimeFormat("en-GB", { timeZone, year: "numeric", month: "numeric", day: "numeric" }).formatToParts(new Date(iso));
  const of = (type: string): number => Number(parts.find((p) => p.type === type)?.value);
  return Date.UTC(of("year"), of("month") - 1, of("day")) / DAY;
}

/**
 * Day and hour as a person in the workshop would say it: "today 17:40", "yesterday 17:40", "Monday 17:40" within the
 * last six days, else the date. The calendar is the workshop's, not the server's.
 */
export function dayAndClock(iso: string, now: string, place: Place): string {
  const { locale, timeZone } = place;
  const ago = calendarDay(now, timeZone) - calendarDay(iso, timeZone);
  const hour = clock(iso, place);
  if (ago === 0) return `today ${hour}`;
  if (ago === 1) return `yesterday ${hour}`;
  if (ago === -1) return `tomorrow ${hour}`;
  const date = new Date(iso);
  if (ago > 1 && ago < 7) return `${new Intl.DateTimeFormat(locale, { timeZone, weekday: "long" }).format(date)} ${hour}`;
  return `${new Intl.DateTimeFormat(locale, { timeZone, day: "numeric", month: "long", year: "numeric" }).format(date)}, ${hour}`;
}

/** That our letter is still held, and until when: "our letter is held until 17:40", with its day where that is another. null where it is not. */
export function heldInWords(until: string | null, now: string, place: Place): string | null {
  if (until === null || Date.parse(until) <= Date.parse(now)) return null;
  const isToday = calendarDay(until, place.timeZone) === calendarDay(now, place.timeZone);
  return `our letter is held until ${isToday ? clock(until, place) : dayAndClock(until, now, place)}`;
}
