import * as z from "zod/mini";
import { FIBRE_IDS, type FibreId } from "../trade/fibres";
import { EMERGENCY_NUMBERS } from "../trade/emergency-numbers";
import { REAGENTS, type ReagentId } from "../trade/reagents";
import { CURRENCIES } from "../trade/questions";
import { TONE_IDS } from "../trade/tones";
import { LOCALES } from "../words/locales";
import { AREA_UNITS } from "../words/measures";

/** Limits of the settings, shared by the form and the server. Times in minutes, weeks and months. Elicited. */
export const SETTING_LIMITS = { textChars: 200, signatureChars: 1_000, maxHoldMinutes: 1_440, maxRetentionMonths: 240, maxPrice: 100_000, maxLoss: 1_000, minTelephoneDigits: 6, minSentenceWords: 3, minWeeks: 1, maxWeeks: 52 } as const;

/** What each setting that is typed is called, above its field and where something is wrong with it. */
export const SETTING_NAMES = {
  name: "Name", town: "Town", address: "Address", telephone: "Telephone", hours: "Hours", emergencyNumber: "Emergency number", signature: "Signature",
  collecting: "How a rug comes to you", weeksLow: "Weeks your work usually takes, from", weeksHigh: "Weeks your work usually takes, to",
  cleanPerM2: "Cleaning, per square metre", cleanMinimum: "Cleaning, at least", bindingPerM: "Binding, per metre", cleanPerSqft: "Cleaning, per square foot", bindingPerFt: "Binding, per foot",
  holdMinutes: "Minutes an approved letter is held", retentionMonths: "Months an enquiry is kept after it ends",
} as const;
type Named = keyof typeof SETTING_NAMES;

const line = (of: Named, max: number = SETTING_LIMITS.textChars) => z.string().check(z.trim(), z.maxLength(max, `${SETTING_NAMES[of]}: at most ${max} characters.`));
const needed = (of: Named, what: string) => line(of).check(z.minLength(1, `Write ${what}.`));
/** A price from 0 to `max`; what is said of a higher one. */
export const priceUpTo = (of: Named, max: number, tooHigh: string) => z.number(`${SETTING_NAMES[of]}: write a number.`).check(z.minimum(0, `${SETTING_NAMES[of]}: not below zero.`), z.maximum(max, tooHigh));
const price = (of: Named) => priceUpTo(of, SETTING_LIMITS.maxPrice, `${SETTING_NAMES[of]}: at most ${SETTING_LIMITS.maxPrice.toLocaleString("en")}.`);
const whole = (of: Named, low: number, high: number) =>
  z.int(`${SETTING_NAMES[of]}: write a whole number.`).check(z.minimum(low, `${SETTING_NAMES[of]}: at least ${low}.`), z.maximum(high, `${SETTING_NAMES[of]}: at most ${high.toLocaleString("en")}.`));
export const weeksOf = (of: Named) => whole(of, SETTING_LIMITS.minWeeks, SETTING_LIMITS.maxWeeks);
/** Sentences that are read inside a paragraph: in one line, and ended. In braces stands what is still to be written, and such a letter never leaves. */
const sentence = (of: Named) =>
  line(of).check(z.refine((text) => !/[{}]/u.test(text), `${SETTING_NAMES[of]}: write it without braces.`), z.overwrite((text) => text.replace(/\s+/gu, " ").replace(/(?<=[^.!?…"”’)])$/u, ".")));
/** Every name asked for that is one, by its spelling: settings are read for each page, and a clock takes long to make. */
const TIME_ZONES = new Map<string, string>();
/** “Europe/London” of “europe/london”; null where it is no time zone. */
function timeZoneOf(name: string): string | null {
  try {
    const known = TIME_ZONES.get(name) ?? new Intl.DateTimeFormat("en", { timeZone: name }).resolvedOptions().timeZone;
    TIME_ZONES.set(name, known);
    return known;
  } catch {
    return null;
  }
}

const REAGENT_IDS = Object.keys(REAGENTS) as [ReagentId, ...ReagentId[]];
export const isReagentId = (text: string): text is ReagentId => Object.hasOwn(REAGENTS, text);

export const WEEKS_TURNED = "The second number of weeks must not be smaller than the first.";
/** How many whole weeks work usually takes. */
const workWeeks = z.strictObject({ low: weeksOf("weeksLow"), high: weeksOf("weeksHigh") }).check(z.refine((w) => w.low <= w.high, { error: WEEKS_TURNED, path: ["high"] }));

/** The workshop's own settings. Prices in `currency` per square metre, per rug, per metre of edge, whatever the area unit shown. */
export const workshopSettingsSchema = z
  .strictObject({
    name: needed("name", "the workshop's name"),
    town: line("town"),
    address: line("address"),
    /** Letters go out in this name and answers come back to it; empty until it is set. */
    email: z.union([z.literal(""), z.email("Write an e-mail address like name@example.org.")]),
    telephone: line("telephone", 40),
    /** For people, e.g. "Monday to Friday, 9 to 17". */
    hours: line("hours"),
    emergencyNumber: needed("emergencyNumber", "the emergency number"),
    currency: z.enum(CURRENCIES),
    /** Whose general rules the law texts describe; local law decides. */
    jurisdiction: z.enum(["EU", "UK", "IE", "US", "other"]),
    /** The language of clients' pages and letters, and how dates, numbers and amounts are written. */
    locale: z.enum(LOCALES, "Choose one of the languages."),
    timeZone: z.string().check(z.trim(), z.refine((name) => timeZoneOf(name) !== null, "Write a time zone such as Europe/Dublin."), z.overwrite((name) => timeZoneOf(name) ?? name)),
    areaUnit: z.enum(AREA_UNITS),
    prices: z.strictObject({ cleanPerM2: price("cleanPerM2"), cleanMinimum: price("cleanMinimum"), bindingPerM: price("bindingPerM") }),
    /** Losses of a wrong answer that differ from the table's, by its row; null: the table's. */
    losses: z.nullable(z.record(z.string(), z.number().check(z.minimum(0), z.maximum(SETTING_LIMITS.maxLoss)))),
    /** The workshop's own prior over fibres, summing to 1; null: the table's. */
    priors: z.nullable(z.partialRecord(z.enum(FIBRE_IDS as readonly [FibreId, ...FibreId[]]), z.number().check(z.minimum(0), z.maximum(1)))),
    /** Reagents the owner has switched on after an assessment of the workshop's own: who did it and when. Absent: off. */
    reagents: z._default(z.partialRecord(z.enum(REAGENT_IDS), z.strictObject({ byId: z.string(), at: z.iso.datetime() })), {}),
    /** How long an approved letter can be taken back. */
    holdMinutes: whole("holdMinutes", 0, SETTING_LIMITS.maxHoldMinutes),
    /** How long an enquiry is kept after it ends. */
    retentionMonths: whole("retentionMonths", 1, SETTING_LIMITS.maxRetentionMonths),
    signature: line("signature", SETTING_LIMITS.signatureChars),
    /** Whether and how rugs are collected, as clients read it, in whole sentences; empty until it is said. */
    collecting: z._default(sentence("collecting"), ""),
    /** From the day a rug reaches the workshop, as a rule; null until it is said. */
    workWeeks: z._default(z.nullable(workWeeks), null),
    /** How letters sound, where a paragraph has a variant. */
    tone: z._default(z.enum(TONE_IDS), "plain"),
  })
  .check(
    z.refine((s) => !s.priors || Math.abs(Object.values(s.priors).reduce((a, b) => a + b, 0) - 1) < 1e-6, {
      error: "The chances must add up to 1.",
      path: ["priors"],
    }),
  );
export type WorkshopSettings = z.infer<typeof workshopSettingsSchema>;

/** Before anybody has set anything. Prices, hold and retention: elicited. */
export const DEFAULT_SETTINGS: WorkshopSettings = {
  name: "Our rug workshop",
  town: "",
  address: "",
  email: "",
  telephone: "",
  hours: "",
  emergencyNumber: EMERGENCY_NUMBERS.EU.number,
  currency: "EUR",
  jurisdiction: "EU",
  locale: "en-GB",
  timeZone: "Europe/Dublin",
  areaUnit: "m2",
  prices: { cleanPerM2: 45, cleanMinimum: 90, bindingPerM: 35 },
  losses: null,
  priors: null,
  reagents: {},
  holdMinutes: 5,
  retentionMonths: 24,
  signature: "",
  collecting: "",
  workWeeks: null,
  tone: "plain",
};
