import { hasCome } from "./day-schema";

/** A purchase further back is taken for a slip of the pen. *elicited* */
const MOST_BACK_YEARS = 100;
const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/** What is wrong with a day as people write it ("3 May 2024", "5/3/2024", "May 2024", "2024"), in a sentence; null where nothing is. Of two readings of a day the one that can be true counts. */
export function wrongWithDay(text: string): string | null {
  const years = text.match(/(?<!\p{N})\p{N}{4}(?!\p{N})/gu) ?? [];
  const year = Number(years[0]);
  if (years.length !== 1 || !Number.isInteger(year)) return "Write the day, the month or the year of it, the year in four figures: “3 May 2024”, “May 2024” or “2024”.";
  if (year < new Date().getUTCFullYear() - MOST_BACK_YEARS) return `That is more than ${MOST_BACK_YEARS} years ago: please look at the year.`;
  const days = readingsOf(text.replace(years[0] as string, " "), year);
  if (days.length === 0) return "There is no such day: please look at it once more.";
  return days.some(hasCome) ? null : "That day has not come yet: please look at it once more.";
}

/** The first days (YYYY-MM-DD) that the rest of it may mean; none where it is no day of the calendar. */
function readingsOf(rest: string, year: number): string[] {
  const month = MONTHS.findIndex((name) => new RegExp(`(?<!\\p{L})${name}`, "iu").test(rest));
  const numbers = (rest.match(/\p{N}+/gu) ?? []).map(Number);
  const [first, second, ...more] = numbers;
  if (more.length > 0) return [];
  const pairs: readonly (readonly [month: number, day: number])[] =
    month >= 0 ? (second === undefined ? [[month + 1, first ?? 1]] : []) : second !== undefined ? [[second, first as number], [first as number, second]] : [[first ?? 1, 1]];
  return pairs.flatMap(([m, d]) => { const day = `${year}-${String(m).padStart(2, "0")}-${String(d).padStart(2, "0")}`; return isOfCalendar(day) ? [day] : []; });
}

function isOfCalendar(day: string): boolean {
  const at = new Date(`${day}T00:00:00Z`);
  return !Number.isNaN(at.getTime()) && at.toISOString().startsWith(day);
}
