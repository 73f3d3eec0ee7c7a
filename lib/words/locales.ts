/** The locales a workshop can choose: its clients' language, and how dates, numbers and amounts are written (BCP 47). */
export const OFFERED_LOCALES = ["en-GB", "en-IE", "en-US", "en-CA", "en-AU", "en-NZ"] as const;
/** English with every text of the catalogue between ⟦ and ⟧: what stands outside them cannot be translated. For tests; never offered. */
export const MARKED_LOCALE = "en-XA";
export const LOCALES = [...OFFERED_LOCALES, MARKED_LOCALE] as const;
export type Locale = (typeof LOCALES)[number];
export const isLocale = (tag: unknown): tag is Locale => (LOCALES as readonly unknown[]).includes(tag);

/** The languages there is a whole, reviewed catalogue of. */
export type Language = "en";
/** The language of a locale's words. */
export const languageOf = (locale: Locale): Language => locale.slice(0, 2) as Language;

/** What `Intl` is asked with: the marked locale has no data of its own there, and writes figures as Britain does. */
export const figuresOf = (locale: Locale): string => (locale === MARKED_LOCALE ? "en-GB" : locale);

/** Where letters are printed on US Letter, 8½ × 11 in. Unicode CLDR, supplemental data, `paperSize`; everywhere else in our list it is A4 (ISO 216). */
const ON_US_LETTER: readonly Locale[] = ["en-US", "en-CA"];
export type Paper = "A4" | "LETTER";
export const paperOf = (locale: Locale): Paper => (ON_US_LETTER.includes(locale) ? "LETTER" : "A4");
