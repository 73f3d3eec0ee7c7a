import type { ResponseVotes, Vote } from "./bench-responses-rule";
import type { Source } from "./fibres";
import type { SingleFibre } from "./single-fibres";

const NOTES: Source = { how: "read", source: "mytextilenotes.blogspot.com, Fiber Identification: Burning Test, Man-made Fibers (2009)" };
const THREAD: Source = { how: "read", source: "24threadbox, Burning Characteristics of Fibers (2024)" };
const GSOURCE: Source = { how: "read", source: "gsource.blogspot.com, Fabric identification by burning (2011)" };
const TAILORED: Source = { how: "read", source: "Tailored Jeans blog, Fibers detection by burning test" };
const GLOSSARY: Source = { how: "read", source: "Design and Make glossary, burn test" };
const EXTENSION: Source = { how: "read", source: "ecosleepsolutions.com, citing the USDA Cooperative Extension Service, Iowa State University" };
const HANDBOOK: Source = { how: "read", source: "Preservation Handbook Online, textiles" };
const TRADE: Source = { how: "common practice", source: "the trade’s own burn table" };
const TEXTBOOK: Source = { how: "memory", source: "standard textbook burn table, in the manner of the annex of AATCC TM20" };

const vote = (source: Source, fibres: readonly SingleFibre[], ...says: string[]): Vote => ({ ...source, fibres, says });

const ANIMAL: readonly SingleFibre[] = ["wool", "silk"];
const PLANT: readonly SingleFibre[] = ["cotton", "bast"];
const VEGETABLE: readonly SingleFibre[] = ["cotton", "bast", "hard-fibre"];
const MELTING: readonly SingleFibre[] = ["polyamide", "polypropylene", "polyester"];

/** Lyocell burns as viscose, mercerised cotton as cotton, jute and sisal as other plant fibre. Elicited. */
const KIN = { lyocell: "viscose", "mercerised-cotton": "cotton", "hard-fibre": "bast" } as const;

/**
 * How often a trained person reads a burn wrongly. Trained people tell animal, plant and synthetic apart in roughly 85 to
 * 95 of 100 (from memory, no published panel found); how it falls on single readings is elicited.
 */
const ERROR_SOURCE: Source = { how: "elicited",
  source: "Misreadings of a burn: from memory 5 to 15 in 100 between groups, no published panel found; spread evenly, a judgement of this project" };

/**
 * A flame “cannot tell which animal or which vegetable fibre” (SCA burn-test handout,
 * read). So the differences the sources have within these two groups count for little: the share is elicited.
 */
const ALIKE: ResponseVotes["alike"] = { groups: [["silk", "wool"], ["viscose", "lyocell", "cotton", "mercerised-cotton", "bast", "hard-fibre"]], share: 0.7 };
const table = (reading: string, answers: readonly string[], votes: readonly Vote[]): ResponseVotes => ({
  test: "burn", reading, answers, votes, kin: KIN, alike: ALIKE, mixed: "either", error: 0.1, strays: answers.map(() => 1 / answers.length), source: ERROR_SOURCE,
});

export const BURN_APPROACH = table("approach", ["scorches", "curls", "melts"], [
  vote(NOTES, ["viscose"], "scorches"), vote(NOTES, ["acetate", "polyamide", "polyester", "acrylic"], "melts"),
  vote(THREAD, PLANT, "scorches"), vote(THREAD, ["polyester", "polyamide", "acrylic"], "melts"), vote(THREAD, ANIMAL, "curls"),
  vote(TAILORED, PLANT, "scorches"), vote(TAILORED, ["viscose"], "scorches"), vote(TAILORED, ["acetate"], "melts"),
  vote(TRADE, ["polypropylene", "acrylic"], "melts"), vote(TRADE, PLANT, "scorches"),
  vote(EXTENSION, PLANT, "scorches"), vote(EXTENSION, ["viscose", "lyocell"], "scorches", "curls"), vote(EXTENSION, MELTING, "melts"),
  vote(HANDBOOK, ANIMAL, "curls"),
  vote(TEXTBOOK, ["cotton", "viscose"], "scorches"), vote(TEXTBOOK, ANIMAL, "curls"), vote(TEXTBOOK, ["polypropylene"], "melts"),
]);

/** A blogger’s nylon that burns “without melting” is kept: every other source has it melt. */
export const BURN_FLAME = table("flame", ["quick", "slow", "melting"], [
  vote(NOTES, ["viscose"], "quick"), vote(NOTES, ["acetate", "polyester", "acrylic"], "melting"), vote(NOTES, ["polyamide"], "slow"),
  vote(THREAD, PLANT, "quick"), vote(THREAD, ["polyester", "polyamide", "acrylic"], "melting"), vote(THREAD, ANIMAL, "slow"),
  vote(GSOURCE, ANIMAL, "slow"), vote(GSOURCE, PLANT, "quick"), vote(GSOURCE, ["viscose"], "quick"),
  vote(GSOURCE, ["polyester"], "slow", "melting"), vote(GSOURCE, ["acetate", "polyamide", "acrylic"], "melting"),
  vote(TAILORED, PLANT, "quick"), vote(TAILORED, ["viscose"], "quick"), vote(TAILORED, ["acetate"], "quick", "melting"),
  vote(GLOSSARY, ["silk"], "quick"), vote(GLOSSARY, ["wool"], "slow"), vote(GLOSSARY, ["viscose"], "quick"), vote(GLOSSARY, ["acetate"], "melting"),
  vote(TRADE, ["polypropylene"], "melting"), vote(TRADE, PLANT, "quick"), vote(TRADE, ["acrylic"], "quick", "melting"),
  vote(EXTENSION, PLANT, "quick"), vote(EXTENSION, ["viscose", "lyocell"], "quick"), vote(EXTENSION, ANIMAL, "slow"), vote(EXTENSION, MELTING, "melting"),
  vote(HANDBOOK, ANIMAL, "slow"), vote(HANDBOOK, VEGETABLE, "quick"),
  vote(TEXTBOOK, ["cotton", "viscose"], "quick"), vote(TEXTBOOK, ANIMAL, "slow"), vote(TEXTBOOK, ["polypropylene"], "melting"),
]);

/** Sources contradict each other over viscose (glow or none), silk (goes out or burns on) and acrylic. All are kept. */
export const BURN_REMOVAL = table("removal", ["goes-out", "burns-on", "glows"], [
  vote(NOTES, ["viscose"], "burns-on"), vote(NOTES, ["acetate", "acrylic"], "burns-on"), vote(NOTES, ["polyamide", "polyester"], "goes-out"),
  vote(THREAD, PLANT, "glows"), vote(THREAD, ["polyester", "polyamide", "acrylic"], "goes-out"), vote(THREAD, ANIMAL, "goes-out"),
  vote(GSOURCE, ANIMAL, "goes-out"), vote(GSOURCE, ["cotton"], "glows"), vote(GSOURCE, ["viscose"], "glows"),
  vote(GSOURCE, ["acetate", "acrylic"], "burns-on"), vote(GSOURCE, ["polyamide"], "goes-out"),
  vote(TAILORED, PLANT, "burns-on", "glows"), vote(TAILORED, ["viscose"], "burns-on"),
  vote(GLOSSARY, ["silk"], "burns-on"), vote(GLOSSARY, ["wool"], "goes-out"), vote(GLOSSARY, ["acetate"], "burns-on"),
  vote(TRADE, ["polypropylene", "acrylic"], "burns-on"), vote(TRADE, PLANT, "glows"),
  vote(EXTENSION, PLANT, "glows"), vote(EXTENSION, ANIMAL, "goes-out", "burns-on"), vote(EXTENSION, MELTING, "goes-out", "burns-on"),
  vote(TEXTBOOK, ["cotton"], "glows"), vote(TEXTBOOK, ["viscose"], "burns-on", "glows"), vote(TEXTBOOK, ANIMAL, "goes-out"), vote(TEXTBOOK, ["polypropylene"], "burns-on"),
]);

export const BURN_SMELL = table("smell", ["hair", "paper", "vinegar", "wax", "celery", "sweet", "sharp"], [
  vote(NOTES, ["viscose"], "paper"), vote(NOTES, ["acetate"], "vinegar"), vote(NOTES, ["polyamide"], "sharp"), vote(NOTES, ["polyester"], "sweet"), vote(NOTES,
    ["acrylic"], "sharp", "sweet"),
  vote(THREAD, PLANT, "paper"), vote(THREAD, ["polyester", "acrylic"], "sharp"), vote(THREAD, ["polyamide"], "celery"), vote(THREAD, ANIMAL, "hair"),
  vote(GSOURCE, ANIMAL, "hair"), vote(GSOURCE, [...PLANT, "viscose"], "paper"), vote(GSOURCE, ["polyester"], "sweet"), vote(GSOURCE, ["acetate"], "vinegar"),
  vote(GSOURCE, ["polyamide"], "celery"), vote(GSOURCE, ["acrylic"], "sharp"),
  vote(TAILORED, ["acetate"], "vinegar"),
  vote(GLOSSARY, ANIMAL, "hair"), vote(GLOSSARY, ["viscose"], "paper"), vote(GLOSSARY, ["acetate"], "paper"),
  vote(TRADE, ["polypropylene"], "wax"), vote(TRADE, PLANT, "paper"), vote(TRADE, ["acrylic"], "sharp"),
  vote(HANDBOOK, ANIMAL, "hair"),
  vote(TEXTBOOK, ["cotton", "viscose"], "paper"), vote(TEXTBOOK, ANIMAL, "hair"), vote(TEXTBOOK, ["polypropylene"], "wax"),
]);

export const BURN_ASH = table("ash", ["feathery", "hardly-any", "crushable", "skeleton", "hard-black", "hard-pale"], [
  vote(NOTES, ["viscose"], "feathery"), vote(NOTES, ["acetate", "polyester", "acrylic"], "hard-black"), vote(NOTES, ["polyamide"], "hard-pale"),
  vote(THREAD, PLANT, "feathery"), vote(THREAD, ["polyester", "polyamide"], "hard-pale"), vote(THREAD, ["acrylic"], "hard-black"), vote(THREAD, ANIMAL, "crushable"),
  vote(GSOURCE, ANIMAL, "crushable"), vote(GSOURCE, PLANT, "feathery"), vote(GSOURCE, ["viscose"], "hardly-any"),
  vote(GSOURCE, ["polyester", "acetate", "acrylic"], "hard-black"), vote(GSOURCE, ["polyamide"], "hard-pale"),
  vote(TAILORED, PLANT, "feathery"), vote(TAILORED, ["viscose"], "feathery"), vote(TAILORED, ["acetate"], "hard-black"),
  vote(GLOSSARY, ["viscose"], "hardly-any"), vote(GLOSSARY, ["acetate"], "hard-black"),
  vote(TRADE, ["polypropylene"], "hard-pale"), vote(TRADE, PLANT, "feathery"), vote(TRADE, ["acrylic"], "hard-black"),
  vote(HANDBOOK, ANIMAL, "crushable"), vote(HANDBOOK, VEGETABLE, "feathery"),
  vote(TEXTBOOK, ["cotton"], "feathery"), vote(TEXTBOOK, ["viscose"], "hardly-any"), vote(TEXTBOOK, ["silk"], "crushable", "skeleton"), vote(TEXTBOOK, ["wool"],
    "crushable"), vote(TEXTBOOK, ["polypropylene"], "hard-pale"),
]);
