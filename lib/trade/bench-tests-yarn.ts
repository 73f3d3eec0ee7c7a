import type { BenchTestRow, ChoiceReading } from "./bench-test-row";

const SURFACE: ChoiceReading = {
  kind: "choice", ask: "What does the fibre look like along its length?",
  answers: {
    scales: { label: "Overlapping scales" },
    convolutions: { label: "A flat, twisted ribbon" },
    nodes: { label: "Cross-marks or nodes, as on a cane", hint: "Single fibres" },
    bundles: { label: "Cells in stiff bundles, some cross-marks" },
    striations: { label: "Lines along its length" },
    smooth: { label: "A smooth rod without marks", hint: "Specks of delustrant do not count" },
  },
};
const SECTION: ChoiceReading = {
  kind: "choice", ask: "What shape is it cut across?",
  answers: {
    triangular: { label: "A triangle with rounded corners" },
    round: { label: "Round or oval" },
    kidney: { label: "A bean or kidney, often with a line inside" },
    serrated: { label: "Jagged or finely toothed all round" },
    lobed: { label: "A few smooth lobes" },
    "dog-bone": { label: "A dog bone or dumb-bell" },
    polygon: { label: "Many-sided, with a hollow" },
  },
};

/** Tests that need no reagent but the flame, and speak for the yarn they were taken from. */
export const YARN_TESTS = {
  microscopy: {
    name: "Microscope", reagent: null, speaksFor: "yarn",
    tells: "Which fibre it looks like: the surest test that needs no chemical.",
    readings: {
      surface: SURFACE, section: SECTION,
      kinds: { kind: "choice", ask: "Is it all one kind of fibre?", answers: { one: { label: "One kind" }, several: { label: "Two kinds or more, mixed in the sample" } } },
    },
    cautions: [
      "Blades and cover glasses are sharp: cut away from the hand and bin them in the sharps box.",
      "An old rug may carry pesticide: wear gloves.",
      "Fibres of one kind vary: look at twenty or more before answering.",
    ],
    takes: { fibres: "a few pile fibres", minutes: 15 },
    how: "read", source: "AATCC TM20, section 2: microscopy, solubility and other tests are used together to identify a fibre; minutes elicited",
  },
  burn: {
    name: "Burn test", reagent: "flame", speaksFor: "yarn",
    tells: "Whether it is animal, plant or synthetic. It cannot tell silk from wool, or viscose from cotton.",
    readings: {
      approach: {
        kind: "choice", ask: "As the flame comes near",
        answers: { scorches: { label: "It scorches and lights, without drawing back" }, curls: { label: "It smoulders and curls away" },
          melts: { label: "It melts and shrinks away" } },
      },
      flame: {
        kind: "choice", ask: "In the flame",
        answers: { quick: { label: "It burns quickly and steadily, a yellow flame" }, slow: { label: "It burns slowly, sputters, is hard to light" },
          melting: { label: "It burns and melts, or drips" } },
      },
      removal: {
        kind: "choice", ask: "When the flame is taken away",
        answers: {
          "goes-out": { label: "It goes out by itself" }, "burns-on": { label: "It burns on, without a glow afterwards" },
          glows: { label: "It burns on, and an ember glows after the flame" },
        },
      },
      smell: {
        kind: "choice", ask: "What is left in the air smells of", hint: "Waft a little towards you. Never breathe in over the flame.",
        answers: {
          hair: { label: "Burning hair or feathers" }, paper: { label: "Burning paper, leaves or wood" }, vinegar: { label: "Vinegar" }, wax: { label: "Candle wax" },
          celery: { label: "Celery" }, sweet: { label: "Something sweet or fruity" }, sharp: { label: "Something acrid or chemical" },
        },
      },
      ash: {
        kind: "choice", ask: "What is left", hint: "Let it cool before you touch it.",
        answers: {
          feathery: { label: "Light, soft, grey ash" }, "hardly-any": { label: "Hardly any ash" }, crushable: { label: "A dark bead that crumbles to powder" },
          skeleton: { label: "A dark skeleton of the thread", hint: "As weighted silk leaves it" },
          "hard-black": { label: "A hard black bead" }, "hard-pale": { label: "A hard grey or tan bead" },
        },
      },
    },
    cautions: [
      "Fire: never on or near the rug, or near solvents. A bare, fireproof place, water at hand, hair and sleeves tied back.",
      "Hold the sample in metal tweezers over a metal or glass dish. Melting fibres drip and burn the skin.",
      "Eye protection. Good ventilation: the smoke of fibres, dyes and finishes is harmful.",
      "Trained staff only, by your own written instruction, and as the local fire rules allow.",
    ],
    takes: { fibres: "a tuft, under half a centimetre of yarn", minutes: 5 },
    how: "read", source: "CCI Notes 13/18, The Identification of Natural Fibres: tells plant from animal fibre, a sample of at most 0.4 cm, never the only test; minutes elicited",
  },
  "wet-strength": {
    name: "Thread pulled wet", reagent: null, speaksFor: "yarn",
    tells: "Whether a thread is much weaker wet than dry, as viscose is.",
    readings: {
      wet: {
        kind: "choice", ask: "Pulled apart wet, against the same yarn dry",
        answers: {
          "much-weaker": { label: "Much weaker", hint: "It parts at less than about two thirds of the pull" },
          "little-weaker": { label: "A little weaker" },
          "as-strong": { label: "As strong, or stronger" },
        },
      },
    },
    cautions: ["Wet the thread that was taken, never the rug.", "Wind the ends round two rods, not round a finger: thread cuts."],
    takes: { fibres: "two loose threads", minutes: 10 },
    how: "read", source: "Wet and dry strengths as published (see its table); that viscose loses most: mytextilenotes.blogspot.com, Learning about Viscose, Modal and Tencel (2012); minutes elicited",
  },
} as const satisfies Readonly<Record<string, BenchTestRow>>;
