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
