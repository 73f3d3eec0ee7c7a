import * as z from "zod/mini";
import { EMERGENCY_NUMBERS, isEmergencyNumber } from "../trade/emergency-numbers";
import { MOST_PRICE, PRICE_FIELDS, priceTooHigh } from "./price-fields";
import { SETTING_LIMITS, workshopSettingsSchema, type WorkshopSettings } from "./settings-schema";

/** What can be rung: figures with what people put between them, and an extension. */
const RUNG = /^[+\d\s().\-/]+(?:(?:ext\.?|extension|x)\s*\d+)?$/iu;
const isTelephone = (text: string): boolean => RUNG.test(text) && text.replace(/(?:e|x).*$/iu, "").replace(/\D/gu, "").length >= SETTING_LIMITS.minTelephoneDigits;

const { emergencyNumber, telephone, signature } = workshopSettingsSchema.shape;

/** What a setting has to be as it is newly set; what an earlier release kept stays readable. */
export const NEWLY_SET = {
  /** A number that people who are hurt are told to call. */
  emergencyNumber: emergencyNumber.check(
    z.refine((text) => text === "" || isEmergencyNumber(text), `Write the emergency number in figures, such as ${EMERGENCY_NUMBERS.EU.number}, or several, such as ${EMERGENCY_NUMBERS.UK.number}.`)),
  /** Empty, or one that clients can ring: letters tell them to. */
  telephone: telephone.check(
    z.refine((text) => text === "" || isTelephone(text), `Write the telephone number in figures, at least ${SETTING_LIMITS.minTelephoneDigits}, such as +44 1632 960 200 ext. 4, or leave it empty.`)),
  signature: signature.check(z.minLength(1, "Write the signature: it stands under every letter.")),
} as const;

/** What is wrong with settings that were changed, by their names; empty where nothing is. */
export function newlySetFaults(before: WorkshopSettings, after: WorkshopSettings): Record<string, string> {
  const faults: Record<string, string> = {};
  for (const [name, schema] of Object.entries(NEWLY_SET) as [keyof typeof NEWLY_SET, (typeof NEWLY_SET)[keyof typeof NEWLY_SET]][]) {
    const issue = after[name] === before[name] ? undefined : schema.safeParse(after[name]).error?.issues[0];
    if (issue) faults[name] = issue.message;
  }
  for (const f of PRICE_FIELDS[after.areaUnit])
    if (after.prices[f.of] !== before.prices[f.of] && after.prices[f.of] > MOST_PRICE[f.of]) faults[f.field] = priceTooHigh(f);
  return faults;
}
