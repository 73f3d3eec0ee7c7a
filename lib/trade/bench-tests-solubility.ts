import type { BenchTestRow, ChoiceReading } from "./bench-test-row";

const ANNEX = "Regulation (EU) No 1007/2011, Annex VIII, ch. 2";

const OUTCOME: ChoiceReading = {
  kind: "choice", ask: "What became of the fibres?",
  answers: {
    dissolves: { label: "They dissolved" },
    partly: { label: "Some dissolved, some stayed", hint: "As a mixed yarn does" },
    stays: { label: "They stayed as they were" },
  },
};
const LABORATORY_CAUTIONS = [
  "Trained staff only, by your own written instruction, in a fume cupboard or as your local rules ask. A laboratory can do it instead.",
  "Chemical goggles and the gloves its safety sheet names. Know where the eye wash is.",
  "On loose fibres in glass only, never on the rug.",
];
const TAKES = { fibres: "a few pile fibres", minutes: 20 };

/** Which fibres a reagent dissolves. What and how much is used is in the published method and the workshop's own instruction, not here. */
export const SOLUBILITY_TESTS = {
  hypochlorite: {
    name: "Alkaline hypochlorite", reagent: "hypochlorite", speaksFor: "yarn",
    tells: "Whether it is animal fibre (silk, wool), which dissolves, or not.",
    readings: { outcome: OUTCOME },
    cautions: [...LABORATORY_CAUTIONS, "Never near an acid or ammonia, its waste included: poisonous gas. Keep its glass and waste apart from every other test’s.", "It is caustic and bleaches whatever it touches."],
    takes: TAKES, how: "read", source: `${ANNEX}, method 2; minutes elicited`,
  },
  acetone: {
    name: "Acetone", reagent: "acetone", speaksFor: "yarn",
    tells: "Whether it is acetate, which alone dissolves.",
    readings: { outcome: OUTCOME },
    cautions: [...LABORATORY_CAUTIONS, "Very flammable: no flame, spark or hot surface in the room, the burn test included."],
    takes: TAKES, how: "read", source: `${ANNEX}, method 1; minutes elicited`,
  },
  "formic-acid": {
    name: "Formic acid, 80 %", told: "Formic acid", reagent: "formic-acid", speaksFor: "yarn",
    tells: "Whether it is polyamide (nylon), which dissolves.",
    readings: { outcome: OUTCOME },
    cautions: [...LABORATORY_CAUTIONS, "It burns skin, eyes and lungs. Never near hypochlorite or its waste."],
    takes: TAKES, how: "read", source: `${ANNEX}, method 4; minutes elicited`,
  },
  "formic-acid-zinc-chloride": {
    name: "Formic acid and zinc chloride", reagent: "formic-acid-zinc-chloride", speaksFor: "yarn",
    tells: "Whether a plant fibre is viscose, which dissolves, or cotton, which stays.",
    readings: { outcome: OUTCOME },
    cautions: [...LABORATORY_CAUTIONS, "It is used warm and burns skin, eyes and lungs. Never near hypochlorite or its waste."],
    takes: { ...TAKES, minutes: 160 }, how: "read", source: `${ANNEX}, method 3; minutes from its time in the bath`,
  },
  "sulphuric-acid-75": {
    name: "Sulphuric acid, 75 %, at room temperature", told: "Sulphuric acid", reagent: "sulphuric-acid-75", speaksFor: "yarn",
    tells: "Whether an animal fibre is silk, which dissolves, or wool, which stays. Plant fibres dissolve as well.",
    readings: { outcome: OUTCOME },
    cautions: [...LABORATORY_CAUTIONS, "It burns through skin and cloth and grows very hot with water. Never near hypochlorite or its waste."],
    takes: { ...TAKES, minutes: 60 }, how: "read", source: `${ANNEX}, method 11; minutes from its time in the bath`,
  },
} as const satisfies Readonly<Record<string, BenchTestRow>>;
