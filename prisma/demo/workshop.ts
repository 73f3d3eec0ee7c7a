import { EMERGENCY_NUMBERS } from "../../lib/trade/emergency-numbers";

/** The invented workshop of the demo. Parsed by lib/workshop like any other settings. */
export const DEMO_WORKSHOP = {
  name: "Lantern Yard Rug Workshop",
  town: "Hallowmere",
  address: "3 Lantern Yard, Hallowmere",
  email: "desk@lantern-yard.example",
  telephone: "01632 960 200",
  hours: "Monday to Friday, 8 to 17",
  emergencyNumber: EMERGENCY_NUMBERS.UK.number,
  currency: "GBP",
  jurisdiction: "UK",
  locale: "en-GB",
  timeZone: "Europe/London",
  areaUnit: "m2",
  prices: { cleanPerM2: 42, cleanMinimum: 95, bindingPerM: 38 },
  losses: null,
  priors: null,
  holdMinutes: 2,
  retentionMonths: 24,
  signature: "Nell Harrow\nLantern Yard Rug Workshop",
  collecting: "We collect within 15 miles of Hallowmere; from further away you bring it, or a carrier does.",
  workWeeks: { low: 3, high: 6 },
} as const;

/** Who signs in to the demo; passwords are drawn at each first start. */
export const DEMO_STAFF = [
  { name: "Nell Harrow", email: "nell@lantern-yard.example", role: "owner" },
  { name: "Ivo Castellane", email: "ivo@lantern-yard.example", role: "reviewer" },
  { name: "Pia Wetherby", email: "pia@lantern-yard.example", role: "trainee" },
] as const;
