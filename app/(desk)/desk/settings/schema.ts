import * as z from "zod/mini";
import { parseAmount, typedNumber } from "@/lib/enquiry/amounts";
import type { FormValues } from "@/lib/enquiry/step-schemas";
import { NEWLY_SET } from "@/lib/workshop/newly-set";
import { ALL_PRICE_FIELDS, keptPrice, mostIn, PRICE_FIELDS, priceTooHigh, shownPrice, type PriceField } from "@/lib/workshop/price-fields";
import { priceUpTo, WEEKS_TURNED, weeksOf, workshopSettingsSchema, type WorkshopSettings } from "@/lib/workshop/settings-schema";

const { name, town, address, email, hours, currency, jurisdiction, locale, timeZone, areaUnit, holdMinutes, retentionMonths } = workshopSettingsSchema.shape;

/** A number as people type it, checked by the setting's own rule; any below zero is one, so that the rule says how much it must be. */
const typed = <T extends z.ZodMiniType<number, number>>(rule: T) => z.pipe(z._default(z.string(), ""), z.pipe(z.transform((text: string) => typedNumber(text, parseAmount)), rule));
/** The same, or null where nothing was typed. */
const typedOrNone = <T extends z.ZodMiniType<number, number>>(rule: T) =>
  z.pipe(z._default(z.string(), ""), z.pipe(z.transform((text: string) => (text.trim() === "" ? null : typedNumber(text, parseAmount))), z.nullable(rule)));

const BOTH_WEEKS = "Write both numbers of weeks, or leave both empty.";

/** Only those of the unit that the form shows are sent. */
const prices = Object.fromEntries(ALL_PRICE_FIELDS.map((f) => [f.field, z.optional(typed(priceUpTo(f.field, mostIn(f), priceTooHigh(f))))])) as unknown as Record<PriceField["field"], z.ZodMiniOptional<z.ZodMiniType<number, string>>>;

/** The weeks are set against each other whatever is wrong elsewhere, so that all of it is told at once; not where one of them is wrong by itself. */
const areWeeksRead = ({ issues }: { issues: readonly { path?: PropertyKey[] | undefined }[] }): boolean => issues.every(({ path = [] }) => path.length > 0 && !["weeksLow", "weeksHigh"].includes(String(path[0])));
const ofWeeks = (path: "weeksLow" | "weeksHigh", error: string) => ({ error, path: [path], when: areWeeksRead });

const fields = z.object({
  name, town, address, email, hours, ...NEWLY_SET, currency, jurisdiction, locale, timeZone, areaUnit,
  weeksLow: typedOrNone(weeksOf("weeksLow")), weeksHigh: typedOrNone(weeksOf("weeksHigh")),
  ...prices, holdMinutes: typed(holdMinutes), retentionMonths: typed(retentionMonths),
}).check(
  z.refine((f) => f.weeksLow !== null || f.weeksHigh === null, ofWeeks("weeksLow", BOTH_WEEKS)),
  z.refine((f) => f.weeksLow === null || f.weeksHigh !== null, ofWeeks("weeksHigh", BOTH_WEEKS)),
  z.refine((f) => (f.weeksLow ?? 0) <= (f.weeksHigh ?? Infinity), ofWeeks("weeksHigh", WEEKS_TURNED)),
);
export type SettingsFields = z.infer<typeof fields>;
export const settingsFormSchema = fields as unknown as z.ZodMiniType<SettingsFields, FormValues>;

/** The settings with what the form holds put in their place; what it does not show stays as it was, and so does a price that was left as it stood. */
export function withFields(settings: WorkshopSettings, { weeksLow, weeksHigh, cleanPerM2, cleanMinimum, bindingPerM, cleanPerSqft, bindingPerFt, ...rest }: SettingsFields): WorkshopSettings {
  const amounts = { cleanPerM2, cleanMinimum, bindingPerM, cleanPerSqft, bindingPerFt };
  const kept = ALL_PRICE_FIELDS.flatMap((f) => {
    const amount = amounts[f.field];
    return amount === undefined ? [] : [[f.of, keptPrice(amount, settings.prices[f.of], f)] as const];
  });
  const hasWeeks = weeksLow !== null && weeksHigh !== null;
  // Without a signature the name stands under letters, and follows it.
  const signature = settings.signature === "" && rest.signature === settings.name ? "" : rest.signature;
  return { ...settings, ...rest, signature, workWeeks: hasWeeks ? { low: weeksLow, high: weeksHigh } : null, prices: { ...settings.prices, ...Object.fromEntries(kept) } };
}

/** What stands in the fields when the page opens. */
export function valuesOf(settings: WorkshopSettings): FormValues {
  const { workWeeks, areaUnit: unit } = settings;
  const shown = Object.entries(settings).filter(([, value]) => typeof value !== "object");
  const amounts = PRICE_FIELDS[unit].map((f) => [f.field, shownPrice(settings.prices[f.of], f)] as const);
  const weeks = [["weeksLow", workWeeks?.low ?? ""], ["weeksHigh", workWeeks?.high ?? ""]] as const;
  return Object.fromEntries([...shown, ["signature", settings.signature || settings.name] as const, ...amounts, ...weeks].map(([key, value]) => [key, String(value)]));
}
