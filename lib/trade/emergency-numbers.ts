import type { Source } from "./fibres";
import type { Jurisdiction } from "./rights";

/** What people call where somebody is hurt, by the place of the workshop; to stand after "call". A workshop may set another. */
export interface EmergencyNumber extends Source { readonly number: string }

export const EMERGENCY_NUMBERS: Readonly<Record<Jurisdiction, EmergencyNumber>> = {
  EU: { number: "112", how: "memory", source: "Directive (EU) 2018/1972, Article 109: the single European emergency number" },
  UK: { number: "999 or 112", how: "memory", source: "Ofcom, General Conditions of Entitlement: access to emergency organisations by both numbers" },
  IE: { number: "112 or 999", how: "memory", source: "Emergency Call Answering Service of Ireland: both numbers, free of charge" },
  US: { number: "911", how: "memory", source: "47 U.S.C. § 251(e)(3): the universal emergency telephone number" },
  other: { number: "your emergency number", how: "elicited", source: "No number where none is known: our own words" },
};

/** A number that can be called: two digits at least (common practice), fifteen at most (ITU-T E.164, from memory). */
const CALLED = /^\+?\d(?:[ -]?\d){1,14}$/;
/** Whether people who are hurt can be told to call this: one number or several, "999 or 112", or words that stand for one in the table. */
export const isEmergencyNumber = (text: string): boolean =>
  Object.values(EMERGENCY_NUMBERS).some(({ number }) => number === text) || text.split(/\s*(?:[,/]|\bor\b|\band\b)\s*/).every((number) => CALLED.test(number));
