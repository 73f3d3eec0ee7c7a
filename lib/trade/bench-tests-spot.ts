import type { BenchTestRow, ChoiceReading } from "./bench-test-row";

const PLACE: ChoiceReading = { kind: "choice", ask: "Where?", answers: { affected: { label: "In the trouble" }, untouched: { label: "Where nothing has happened" } } };
const bleeds = (ask: string): ChoiceReading => ({
  kind: "choice", ask, answers: { none: { label: "No colour on the white cloth" }, slight: { label: "A trace" }, strong: { label: "Clearly" } },
});
const RULES = "By your own written instruction, as your local rules allow.";

/** Tests that speak of a colour or a place of the rug, not of its fibre. */
export const SPOT_TESTS = {
  "dye-bleed": {
    name: "Dye test", reagent: null, readingReagents: { acid: "dye-test-acid", alkali: "dye-test-alkali" }, speaksFor: "spot",
    tells: "Whether a colour moves in water, in a mild acid and in a mild alkali.",
    readings: {
      colour: { kind: "name", ask: "Which colour?" },
      water: bleeds("With water"), acid: bleeds("With a mild acid"), alkali: bleeds("With a mild alkali"),
    },
    cautions: [
      "A few drops on a hidden corner, pressed with a white cloth, and dried at once. On what may be viscose use a thread that was taken instead.",
      "Test every colour. A colour that held once can still move when it stays wet longer.",
      "Gloves and eye protection with acid and alkali. Never together, never near bleach.",
      RULES,
    ],
    takes: { fibres: "none: a hidden corner is dampened", minutes: 15 },
    how: "common practice", source: "A dye test of each colour before every method: common practice, no published source; minutes elicited",
  },
  "spot-ph": {
    name: "pH of a spot", reagent: null, speaksFor: "spot",
    tells: "Whether something acid or alkaline was left in the pile.",
    readings: { place: PLACE, ph: { kind: "number", ask: "pH", hint: "Meter or paper, pressed on the dampened place", unit: "", least: 0, most: 14 } },
    cautions: ["Gloves and eye protection: what was put on the rug is not known.",
      "As little water as wets the paper. On what may be viscose, a hidden place first.", RULES],
    takes: { fibres: "none: the place is dampened", minutes: 5 },
    how: "common practice", source: "A pH reading of a spot beside an untouched one: common practice, no published source; minutes elicited",
  },
  moisture: {
    name: "Moisture", reagent: null, speaksFor: "spot",
    tells: "Whether pile or back is still wet where it looks dry.",
    readings: { place: PLACE, percent: { kind: "number", ask: "Reading of the meter",
      hint: "Its own scale, set for textile or wood: compare only the places of one rug", unit: "%", least: 0, most: 100 } },
    cautions: ["Near a wet rug keep off sockets, cables and heated floors; a qualified electrician decides when they are safe.",
      "Pins go between the tufts, never through a silk or antique ground."],
    takes: { fibres: "none", minutes: 3 },
    how: "common practice", source: "A moisture meter on pile and back, affected beside untouched: common practice, no published source; minutes elicited",
  },
  ultraviolet: {
    name: "Ultraviolet lamp", reagent: null, speaksFor: "spot",
    tells: "Where something was spilled or treated that daylight does not show.",
    readings: {
      place: PLACE,
      glow: {
        kind: "choice", ask: "In the dark, the place glows",
        answers: { none: { label: "Not at all" }, "blue-white": { label: "Blue-white" }, "yellow-green": { label: "Yellow-green" },
          "dull-orange": { label: "Dull orange" } },
      },
    },
    cautions: ["Ultraviolet harms eyes and skin: goggles made for it, covered hands, nobody looks into the lamp.", "Keep it short: it fades dye and tenders silk."],
    takes: { fibres: "none", minutes: 5 },
    how: "common practice", source: "A lamp to find old spills, urine and brightener: common practice, no published source; minutes elicited",
  },
} as const satisfies Readonly<Record<string, BenchTestRow>>;
