import * as z from "zod/mini";
import { EMERGENCY_NUMBERS, isEmergencyNumber } from "../trade/emergency-numbers";
import { MOST_PRICE, NEVER_FREE, PRICE_FIELDS, priceOfNothing, priceTooHigh, type PriceField } from "./price-fields";
import { SETTING_LIMITS, SETTING_NAMES, workshopSettingsSchema, type WorkshopSettings } from "./settings-schema";

/** What can be rung: figures with what people put between them, and an extension. */
const RUNG = /^[+\d\s().\-/]+(?:(?:ext\.?|extension|x)\s*\d+)?$/iu;
const isTelephone = (text: string): boolean => RUNG.test(text) && text.replace(/(?:e|x).*$/iu, "").replace(/\D/gu, "").length >= SETTING_LIMITS.minTelephoneDigits;

const wordsIn = (text: string): number => text.match(/[\p{L}\p{N}][\p{L}\p{N}’'-]*/gu)?.length ?? 0;

const { emergencyNumber, telephone, signature, collecting } = workshopSettingsSchema.shape;

/** What a setting has to be as it is newly set; what an earlier release kept stays readable. */
export const NEWLY_SET = {
  /** A number that people who are hurt are told to call. */
  emergencyNumber: emergencyNumber.check(
    z.refine((text) => text === "" || isEmergencyNumber(text), `Write the emergency number in figures, such as ${EMERGENCY_NUMBERS.EU.number}, or several, such as ${EMERGENCY_NUMBERS.UK.number}.`)),
  /** Empty, or one that clients can ring: letters tell them to. */
  telephone: telephone.check(
    z.refine((text) => text === "" || isTelephone(text), `Write the telephone number in figures, at least ${SETTING_LIMITS.minTelephoneDigits}, such as +44 1632 960 200 ext. 4, or leave it empty.`)),
  signature: signature.check(z.minLength(1, "Write the signature: it stands under every letter.")),
  /** Empty, or a sentence: it stands in letters by itself. */
  collecting: collecting.check(
    z.refine((text) => text === "" || wordsIn(text) >= SETTING_LIMITS.minSentenceWords, `${SETTING_NAMES.collecting}: write a whole sentence, such as “We collect within 15 miles.”, or leave it empty.`)),
} as const;

/** What is wrong with settings that were changed, by their names; empty where nothing is. */
export function newlySetFaults(before: WorkshopSettings, after: WorkshopSettings): Record<string, string> {
  const faults: Record<string, string> = {};
  for (const [name, schema] of Object.entries(NEWLY_SET) as [keyof typeof NEWLY_SET, (typeof NEWLY_SET)[keyof typeof NEWLY_SET]][]) {
    const issue = after[name] === before[name] ? undefined : schema.safeParse(after[name]).error?.issues[0];
    if (issue) faults[name] = issue.message;
  }
  for (const f of PRICE_FIELDS[after.areaUnit])
    if (after.prices[f.of] !== before.prices[f.of]) Object.assign(faults, priceFault(f, after.prices[f.of]));
  return faults;
}

function priceFault(f: PriceField, price: number): Record<string, string> {
  if (price > MOST_PRICE[f.of]) return { [f.field]: priceTooHigh(f) };
  const tells = NEVER_FREE[f.of];
  return price === 0 && tells !== undefined ? { [f.field]: priceOfNothing(f, tells) } : {};
}
