import { dayAndHour, instantAt } from "./workshop-day";

/**
 * A workshop writes its hours as it would say them ("Monday to Friday, 8 to 17"). Here they are read as far as every word of
 * them is understood: days, and from when to when. Anything else among them ("by appointment") and nothing is told.
 */

interface Open { days: ReadonlySet<number>; fromMinute: number; toMinute: number }

const DAYS = ["sun", "mon", "tue", "wed", "thu", "fri", "sat"];
const DAY = "(?:(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?s?|daily|every day|weekdays?)\\.?";
const TO = "(?:to|until|till|through|-|–|—)";
const TIME = "(\\d{1,2})(?:[:.](\\d{2}))?\\s*(am|pm|a\\.m\\.|p\\.m\\.|h|o’clock)?";
const GROUP = new RegExp(`^[\\s,;.]*(?:and\\s+)?(${DAY}(?:\\s*(?:${TO}|,|and|&|/)\\s*${DAY})*)[\\s,:]*(?:from\\s+)?${TIME}\\s*${TO}\\s*${TIME}`, "iu");
const [WEEK, MINUTES_OF_HOUR, NOON] = [7, 60, 12];

const dayOf = (word: string): number => DAYS.indexOf(word.slice(0, 3).toLowerCase());

/** "Monday to Thursday and Saturday" as days, Sunday 0. */
function daysIn(text: string): Set<number> {
  if (/^(?:daily|every day)/iu.test(text)) return new Set(DAYS.keys());
  if (/^weekday/iu.test(text)) return new Set([1, 2, 3, 4, 5]);
  const days = new Set<number>();
  for (const part of text.split(/\s*(?:,|\band\b|&|\/)\s*/iu)) {
    const [from = "", to = from] = part.split(new RegExp(`\\s*(?:\\b(?:to|until|till|through)\\b|[-–—])\\s*`, "iu"));
    for (let day = dayOf(from); ; day = (day + 1) % WEEK) {
      days.add(day);
      if (day === dayOf(to)) break;
    }
  }
  return days;
}

function minuteOf(hour = "", minute = "0", half = ""): number {
  const isPm = /^p/iu.test(half) && Number(hour) < NOON;
  const isMidnight = /^a/iu.test(half) && Number(hour) === NOON;
  return (Number(hour) + (isPm ? NOON : isMidnight ? -NOON : 0)) * MINUTES_OF_HOUR + Number(minute);
}

/** When it is open, or null where any word of it is not understood. */
export function openingHours(hours: string): Open[] | null {
  const found: Open[] = [];
  let rest = hours.trim();
  while (rest !== "" && !/^[\s,;.]+$/u.test(rest)) {
    const group = GROUP.exec(rest);
    if (!group) return null;
    const [whole, days = "", ...times] = group;
    if (days.split(/\W+/u).some((w) => /^(?:daily|weekdays?|every)$/iu.test(w)) && !/^(?:daily|every day|weekdays?)\.?$/iu.test(days)) return null;
    const from = minuteOf(times[0], times[1], times[2]);
    const until = minuteOf(times[3], times[4], times[5]);
    // "9 to 5" is said of the afternoon.
    const to = until <= from ? until + NOON * MINUTES_OF_HOUR : until;
    if (from >= to || to > 2 * NOON * MINUTES_OF_HOUR) return null;
    found.push({ days: daysIn(days), fromMinute: from, toMinute: to });
    rest = rest.slice(whole.length);
  }
  return found.length > 0 ? found : null;
}

const pad = (n: number): string => String(n).padStart(2, "0");

/** When the workshop opens next, by its own clock; null where it is open now, or nobody can tell from what it wrote of its hours. */
export function nextOpening(hours: string, now: Date, timeZone: string): Date | null {
  const open = openingHours(hours);
  if (!open) return null;
  const { day, hour } = dayAndHour(now, timeZone);
  const minute = Number(hour.slice(0, 2)) * MINUTES_OF_HOUR + Number(hour.slice(3));
  const today = new Date(`${day}T00:00:00Z`);
  for (let ahead = 0; ahead <= WEEK; ahead += 1) {
    const at = new Date(today.getTime() + ahead * 24 * 3_600_000);
    const times = open.filter((o) => o.days.has(at.getUTCDay()));
    if (ahead === 0 && times.some((o) => o.fromMinute <= minute && minute < o.toMinute)) return null;
    const [first] = times.map((o) => o.fromMinute).filter((from) => ahead > 0 || from > minute).sort((a, b) => a - b);
    if (first !== undefined) return instantAt(at.toISOString().slice(0, 10), `${pad(Math.floor(first / MINUTES_OF_HOUR))}:${pad(first % MINUTES_OF_HOUR)}`, timeZone);
  }
  return null;
}

/** How the day of an opening is called from now, by the workshop's own clock: of a week ahead its name alone would be taken for today. */
export function openingDay(at: Date, now: Date, timeZone: string): "today" | "week" | "other" {
  const dayOf = (when: Date) => Date.parse(dayAndHour(when, timeZone).day) / (24 * 3_600_000);
  const ahead = dayOf(at) - dayOf(now);
  return ahead === 0 ? "today" : ahead === WEEK ? "week" : "other";
}
