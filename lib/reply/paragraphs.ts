import type { Condition } from "./condition";
import { CARE } from "./paragraphs/care";
import { CAUSES } from "./paragraphs/causes";
import { ENDS } from "./paragraphs/ends";
import { FOLLOWING } from "./paragraphs/following";
import { HASTE } from "./paragraphs/haste";
import { IN_SHORT } from "./paragraphs/in-short";
import { OPENINGS } from "./paragraphs/openings";
import { OUTLOOKS } from "./paragraphs/outlooks";
import type { ParagraphRow, Place, PlaceId } from "./paragraphs/row";
import { WORTH } from "./paragraphs/worth";

/** They write of water that nobody has asked them about yet. */
export const SAID_WET: Condition = { is: { has: ["said-wet"] } };
/** Somebody with water in the house is told what to do and asked how it stands; what may come of it is for the letter after. */
const WATER_FIRST: Condition = { not: { has: ["said-wet"] } };
/** Nobody may touch it after flood or waste water: what comes back, what it costs and how long it serves are for later. */
const ALLOWED_TO_TOUCH: Condition = { not: { has: ["said-wet"], incidents: ["flood"] } };

/** What a named person judged of it is told after a flood too; what no inspection has judged waits as the rest does. */
const WORTH_TELLABLE: Condition = { not: { has: ["said-wet", "flood-unseen"] } };
/** Beside what a person judged of it after a flood no figure stands; before that, nobody can say what may be done for it. */
const GAIN_TELLABLE: Condition = { not: { has: ["said-wet", "flood-seen"] } };

/** They asked whether it is worth it: that is answered in the first two sentences. From likely not worth it on, the place before it has done so. */
const WORTH_ASKED: Condition = { is: { has: ["asked-worth"] }, not: { has: ["hardly-worth"] } };

/** A letter says that we need to hear from them, or to know more: then it says of what, whatever its length; but first aid comes before that. */
const NEEDS_MORE: Condition = { is: { has: ["needs-more"] }, not: { has: ["first-aid"] } };

/** The places of a letter, in order. */
export const PLACES: readonly Place[] = [
  { id: "greeting", name: "Greeting", of: "letter", take: 1, joins: false },
  { id: "first-aid", name: "First aid", of: "letter", take: 1, joins: false },
  { id: "own-aid", name: "First aid of one of several rugs, where another may not be touched", of: "rug", take: 1, joins: false, ahead: true, when: { is: { rugs: ["several"] } } },
  { id: "first-aid-list", name: "Where the whole first aid stands", of: "letter", take: 1, joins: false, spare: { rank: 1, from: 0 } },
  { id: "thanks", name: "Thanks, in a letter that follows", of: "letter", take: 1, joins: false, follows: true },
  { id: "trade-call", name: "To another cleaner", of: "letter", take: 1, joins: false },
  { id: "since", name: "What changed, in a letter that follows", of: "letter", take: 4, joins: false, follows: true },
  { id: "in-short", name: "The answer of each of several rugs, in short", of: "rug", take: 1, joins: true, ahead: true, when: { is: { rugs: ["several"] } } },
  { id: "shared-first", name: "Heading of what several rugs have in common, before each of them", of: "letter", take: 1, joins: false, leads: true },
  { id: "heading", name: "Heading of one of several rugs", of: "rug", take: 1, joins: false },
  { id: "fibre", name: "What it is, and how sure", of: "rug", take: 1, joins: false },
  { id: "worth", name: "Whether saving it is worth it", of: "rug", take: 1, joins: true, when: WORTH_TELLABLE },
  { id: "cut-down", name: "Cutting it down", of: "rug", take: 1, joins: true, when: ALLOWED_TO_TOUCH },
  { id: "outlook", name: "How far it may come back", of: "rug", take: 1, joins: true, when: GAIN_TELLABLE },
  { id: "soil", name: "Soil beside other trouble", of: "rug", take: 1, joins: true, when: ALLOWED_TO_TOUCH },
  { id: "beyond", name: "What it costs against its worth", of: "rug", take: 1, joins: true, when: ALLOWED_TO_TOUCH, sooner: { before: "cut-down", when: WORTH_ASKED } },
  { id: "evidence", name: "What the evidence is worth", of: "rug", take: 1, joins: true },
  { id: "paid", name: "What the price says", of: "rug", take: 1, joins: true, spare: { rank: 2, from: 0 } },
  { id: "sold-as", name: "What it was sold as", of: "rug", take: 1, joins: false, spare: { rank: 5, from: 0 } },
  { id: "safety", name: "Cautions for people", of: "rug", take: 3, joins: false },
  { id: "refer", name: "Who else should see it", of: "rug", take: 1, joins: false },
  { id: "cause", name: "What happened", of: "rug", take: 2, joins: false, likeliestFirst: true, spare: { rank: 7, from: 1 } },
  { id: "haste", name: "How soon", of: "rug", take: 1, joins: true, joinsOnly: ["safety", "refer", "cause"], when: WATER_FIRST },
  { id: "back-first", name: "A back of latex, before any cleaning is offered", of: "rug", take: 1, joins: false },
  { id: "care", name: "What can be done", of: "rug", take: 1, joins: false },
  { id: "dye-test", name: "The dye test", of: "rug", take: 1, joins: true },
  { id: "refuse", name: "What we will not do", of: "rug", take: 1, joins: true },
  { id: "worse", name: "The chance of harm", of: "rug", take: 1, joins: true, when: ALLOWED_TO_TOUCH },
  { id: "repair", name: "Keeping, replacing", of: "rug", take: 1, joins: false, when: ALLOWED_TO_TOUCH },
  { id: "living", name: "Living with it", of: "rug", take: 1, joins: false, spare: { rank: 1, from: 0 } },
  { id: "life", name: "Life left", of: "rug", take: 1, joins: false, spare: { rank: 3, from: 0 }, when: ALLOWED_TO_TOUCH },
  { id: "special", name: "What they ask to do, smell, age and other matters", of: "rug", take: 2, joins: false },
  { id: "price", name: "Price", of: "rug", take: 1, joins: true, spare: { rank: 4, from: 0 } },
  { id: "asks", name: "What we ask for", of: "rug", take: 1, joins: false, spare: { rank: 6, from: 0, least: NEEDS_MORE } },
  { id: "shared", name: "Heading of what several rugs have in common", of: "letter", take: 1, joins: false, leads: true },
  { id: "wet-unknown", name: "Whether it is wet", of: "letter", take: 1, joins: false, when: WATER_FIRST },
  { id: "claim", name: "Insurance and claims", of: "letter", take: 1, joins: false, spare: { rank: 8, from: 0 } },
  { id: "customer", name: "What another cleaner can tell their customer", of: "letter", take: 1, joins: false },
  { id: "notes", name: "Notes of your own", of: "letter", take: 3, joins: false },
  { id: "takes", name: "How long the work takes", of: "letter", take: 1, joins: false },
  { id: "next-step", name: "The next step", of: "letter", take: 1, joins: false },
  { id: "visit", name: "Bringing it, or having it collected", of: "letter", take: 1, joins: true, spare: { rank: 1, from: 0 } },
  { id: "closing", name: "Closing", of: "letter", take: 1, joins: false, spare: { rank: 5, from: 0 } },
  { id: "signature", name: "Signature", of: "letter", take: 1, joins: false },
];

/** Where what several rugs have in common stands, under a lead that names them. */
export const LEADS: readonly PlaceId[] = PLACES.filter((p) => p.leads).map((p) => p.id);

/** Every paragraph there is; within a place in the order in which they are tried. */
export const PARAGRAPHS: readonly ParagraphRow[] = [...OPENINGS, ...FOLLOWING, ...IN_SHORT, ...WORTH, ...OUTLOOKS, ...CAUSES, ...HASTE, ...CARE, ...ENDS];
