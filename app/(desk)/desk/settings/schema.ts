import * as z from "zod/mini";
import { parseAmount, typedNumber } from "@/lib/enquiry/amounts";
import type { FormValues } from "@/lib/enquiry/step-schemas";
import { emergencyNumberSchema, workshopSettingsSchema, type WorkshopSettings } from "@/lib/workshop/settings-schema";

const { name, town, address, email, telephone, hours, currency, jurisdiction, locale, timeZone, areaUnit, prices, holdMinutes, retentionMonths, signature } = workshopSettingsSchema.shape;

/** A number as people type it, checked by the setting's own rule; any below zero is one, so that the rule says how much it must be. */
const typed = <T extends z.ZodMiniType<number, number>>(rule: T) => z.pipe(z._default(z.string(), ""), z.pipe(z.transform((text: string) => typedNumber(text, parseAmount)), rule));

const fields = z.object({
  name, town, address, email, telephone, hours, emergencyNumber: emergencyNumberSchema, currency, jurisdiction, locale, timeZone, areaUnit, signature,
  cleanPerM2: typed(prices.shape.cleanPerM2), cleanMinimum: typed(prices.shape.cleanMinimum), bindingPerM: typed(prices.shape.bindingPerM),
  holdMinutes: typed(holdMinutes), retentionMonths: typed(retentionMonths),
});
export type SettingsFields = z.infer<typeof fields>;
export const settingsFormSchema = fields as unknown as z.ZodMiniType<SettingsFields, FormValues>;

/** The settings with what the form holds put in their place; what it does not show stays as it was. */
export function withFields(settings: WorkshopSettings, { cleanPerM2, cleanMinimum, bindingPerM, ...rest }: SettingsFields): WorkshopSettings {
  return { ...settings, ...rest, prices: { cleanPerM2, cleanMinimum, bindingPerM } };
}

/** What stands in the fields when the page opens. */
export function valuesOf(settings: WorkshopSettings): FormValues {
  const shown = Object.entries({ ...settings, ...settings.prices }).filter(([, value]) => typeof value !== "object");
  return Object.fromEntries(shown.map(([key, value]) => [key, String(value)]));
}
