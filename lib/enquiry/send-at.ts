import type { WorkshopSettings } from "../workshop/settings-schema";
import { longDate } from "../words/measures";
import { ok, refuse, type Result } from "./caller";
import { dayAndHour, instantAt } from "./workshop-day";

/** A day and an hour on the workshop's clock: "2026-11-29", "08:00". */
export interface ChosenTime { day: string; hour: string }

/** How far ahead a letter may be put: by then what it says may no longer hold. *elicited* */
export const SEND_AHEAD_DAYS = 30;
const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;
type Clock = Pick<WorkshopSettings, "timeZone" | "holdMinutes" | "locale">;

/** When a letter leaves that is approved now: once it was held for as long as the workshop lets itself take letters back. */
export const afterHolding = ({ holdMinutes }: Clock, now: Date): Date => new Date(now.getTime() + holdMinutes * MINUTE_MS);

/** The instant of a chosen time, or in words why no letter leaves then; null where none was chosen. */
export function chosenInstant(chosen: ChosenTime | null, { timeZone, locale }: Clock, now: Date): Result<Date | null> {
  if (!chosen) return ok(null);
  const at = instantAt(chosen.day, chosen.hour, timeZone);
  const no = (say: string) => refuse("invalid", say, { sendAt: say });
  if (!chosen.day) return no("Choose the day.");
  if (!chosen.hour) return no("Choose the hour.");
  if (!at) return no("There is no such time at the workshop: write a day and an hour. Where the clocks go forward, one hour is left out.");
  if (at <= now) return no(`That is past: at the workshop it is ${dayAndHour(now, timeZone).hour} on ${longDate(now, { locale, timeZone })}.`);
  if (at.getTime() - now.getTime() > SEND_AHEAD_DAYS * DAY_MS) return no(`Choose a time within the next ${SEND_AHEAD_DAYS} days.`);
  return ok(at);
}

/** Whether a chosen instant comes before the end of the holding, so that the letter leaves later than was chosen. */
export const isBeforeHoldingEnds = (chosen: Date | null, clock: Clock, now: Date): boolean => chosen !== null && chosen < afterHolding(clock, now);

/** The later of the chosen instant and the end of the holding. */
export function leavesAt(chosen: Date | null, clock: Clock, now: Date): Date {
  const held = afterHolding(clock, now);
  return chosen && chosen > held ? chosen : held;
}
