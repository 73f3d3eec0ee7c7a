import { CARE } from "./paragraphs/care";
import { CAUSES } from "./paragraphs/causes";
import { ENDS } from "./paragraphs/ends";
import { OPENINGS } from "./paragraphs/openings";
import { OUTLOOKS } from "./paragraphs/outlooks";
import type { ParagraphRow, Place } from "./paragraphs/row";

/** The places of a letter, in order. */
export const PLACES: readonly Place[] = [
  { id: "greeting", of: "letter", take: 1, joins: false },
  { id: "first-aid", of: "letter", take: 1, joins: false },
  { id: "trade-call", of: "letter", take: 1, joins: false },
  { id: "heading", of: "rug", take: 1, joins: false },
  { id: "fibre", of: "rug", take: 1, joins: false },
  { id: "outlook", of: "rug", take: 1, joins: true },
  { id: "evidence", of: "rug", take: 1, joins: true },
  { id: "sold-as", of: "rug", take: 1, joins: false },
  { id: "safety", of: "rug", take: 2, joins: false },
  { id: "cause", of: "rug", take: 2, joins: false, likeliestFirst: true },
  { id: "care", of: "rug", take: 1, joins: false },
  { id: "refuse", of: "rug", take: 1, joins: true },
  { id: "worse", of: "rug", take: 1, joins: true },
  { id: "beyond", of: "rug", take: 1, joins: false },
  { id: "repair", of: "rug", take: 1, joins: true },
  { id: "living", of: "rug", take: 1, joins: false },
  { id: "life", of: "rug", take: 1, joins: false },
  { id: "special", of: "rug", take: 2, joins: false },
  { id: "price", of: "rug", take: 1, joins: true },
  { id: "asks", of: "rug", take: 1, joins: false },
  { id: "claim", of: "letter", take: 1, joins: false },
  { id: "next-step", of: "letter", take: 1, joins: false },
  { id: "closing", of: "letter", take: 1, joins: false },
  { id: "signature", of: "letter", take: 1, joins: false },
];

/** Every paragraph there is; within a place in the order in which they are tried. */
export const PARAGRAPHS: readonly ParagraphRow[] = [...OPENINGS, ...OUTLOOKS, ...CAUSES, ...CARE, ...ENDS];
