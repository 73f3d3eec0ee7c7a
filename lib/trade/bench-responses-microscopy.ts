import type { ResponseVotes, Vote } from "./bench-responses-rule";
import type { Source } from "./fibres";
import { SINGLE_FIBRES, type SingleFibre } from "./single-fibres";

const SCHOOL: Source = { how: "read", source: "textileschool.com, Microscopic Appearance of Fibres" };
const COACH: Source = { how: "read", source: "textilecoach.net, Gross and fine structure of textile fibers" };
const METHOD: Source = { how: "read", source: "baiketextile.com, Textile testing method 2 (2019)" };
const TRICK: Source = { how: "read", source: "textiletrick.com, Microscopic test of textile fibre (2021)" };
const FILTER: Source = { how: "read", source: "best-filter.com, Identification of filter cloth fibre, microscope method" };
const TEXTBOOK: Source = { how: "memory", source: "standard textbook views along and across the fibre, in the manner of AATCC TM20" };

const vote = (source: Source, fibres: readonly SingleFibre[], ...says: string[]): Vote => ({ ...source, fibres, says });
const MELT_SPUN: readonly SingleFibre[] = ["polyester", "polyamide", "polypropylene"];

const ERROR_SOURCE: Source = { how: "elicited", source: "Misreadings under a simple microscope: a judgement of this project" };
/**
 * Answers that are not read into a fibre that lacks them. Every table of views read here gives scales to wool and hair alone;
 * ISO 17751 tells animal fibres apart by them and AATCC TM20 names them for wool (both from memory). Misreadings go elsewhere.
 */
const UNMISTAKABLE: readonly string[] = ["scales"];
const straysOf = (answers: readonly string[]): readonly number[] => {
  const open = answers.filter((a) => !UNMISTAKABLE.includes(a));
  return answers.map((a) => (open.includes(a) ? 1 / open.length : 0));
};
const table = (reading: string, answers: readonly string[], votes: readonly Vote[]): ResponseVotes => ({
  test: "microscopy", reading, answers, votes, kin: {}, mixed: "either", error: 0.06, strays: straysOf(answers), source: ERROR_SOURCE,
});

/**
 * What two sources give for polynosic stands for lyocell’s class, modal being its kin. Wild silk has fine lines along it,
 * mulberry silk none; one source gives mulberry silk lines as well.
 */
export const MICROSCOPY_SURFACE = table("surface", ["scales", "convolutions", "nodes", "bundles", "striations", "smooth"], [
  vote(SCHOOL, ["cotton"], "convolutions"), vote(SCHOOL, ["mercerised-cotton"], "smooth", "convolutions"), vote(SCHOOL, ["bast"], "nodes"), vote(SCHOOL,
    ["wool"], "scales"), vote(SCHOOL, ["silk"], "smooth"),
  vote(COACH, ["cotton"], "convolutions"), vote(COACH, ["mercerised-cotton"], "smooth"), vote(COACH, ["bast"], "nodes"), vote(COACH, ["silk"], "smooth"),
  vote(METHOD, ["cotton"], "convolutions"), vote(METHOD, ["bast", "hard-fibre"], "nodes", "striations"), vote(METHOD, ["wool"], "scales"),
  vote(METHOD, ["silk"], "smooth", "striations"), vote(METHOD, ["viscose"], "striations"), vote(METHOD, ["lyocell"], "smooth"),
  vote(TRICK, ["cotton"], "convolutions"), vote(TRICK, ["mercerised-cotton"], "smooth"), vote(TRICK, ["bast"], "nodes"), vote(TRICK, ["silk"], "smooth"),
    vote(TRICK, ["hard-fibre"], "bundles"),
  vote(FILTER, ["cotton"], "convolutions"), vote(FILTER, ["wool"], "scales"), vote(FILTER, ["silk"], "smooth"), vote(FILTER, ["bast"], "nodes", "striations"),
  vote(FILTER, MELT_SPUN, "smooth"), vote(FILTER, ["acrylic"], "smooth", "striations"), vote(FILTER, ["acetate", "viscose"], "striations"), vote(FILTER,
    ["lyocell"], "smooth"),
  vote(TEXTBOOK, ["hard-fibre"], "bundles", "nodes"), vote(TEXTBOOK, ["lyocell"], "smooth"),
]);

/** Carpet fibres are often spun with three lobes, which the published tables of round fibres leave out: kept, from memory. */
export const MICROSCOPY_SECTION = table("section", ["triangular", "round", "kidney", "serrated", "lobed", "dog-bone", "polygon"], [
  vote(SCHOOL, ["cotton"], "kidney"), vote(SCHOOL, ["mercerised-cotton"], "round"), vote(SCHOOL, ["bast"], "polygon"), vote(SCHOOL, ["wool"], "round"),
    vote(SCHOOL, ["silk"], "triangular"),
  vote(COACH, ["silk"], "triangular"), vote(COACH, ["mercerised-cotton"], "round"), vote(COACH, ["viscose"], "serrated"), vote(COACH, ["acetate"], "lobed", "serrated"),
  vote(METHOD, ["cotton"], "kidney"), vote(METHOD, ["bast", "hard-fibre"], "kidney", "polygon"), vote(METHOD, ["wool"], "round"), vote(METHOD, ["silk"], "triangular"),
  vote(METHOD, ["viscose"], "serrated"), vote(METHOD, ["lyocell"], "round", "serrated"),
  vote(TRICK, ["cotton"], "kidney", "round"), vote(TRICK, ["mercerised-cotton"], "round"), vote(TRICK, ["bast", "hard-fibre"], "polygon"), vote(TRICK, ["silk"],
    "triangular"),
  vote(FILTER, ["cotton"], "kidney"), vote(FILTER, ["wool"], "round"), vote(FILTER, ["silk"], "triangular"), vote(FILTER, ["bast"], "polygon", "kidney"),
  vote(FILTER, MELT_SPUN, "round"), vote(FILTER, ["acrylic"], "round", "dog-bone"), vote(FILTER, ["acetate"], "lobed", "serrated"), vote(FILTER, ["viscose"],
    "serrated"), vote(FILTER, ["lyocell"], "serrated", "round"),
  vote(TEXTBOOK, MELT_SPUN, "round", "lobed", "triangular"), vote(TEXTBOOK, ["acrylic"], "kidney", "dog-bone", "round"), vote(TEXTBOOK, ["acetate"], "lobed"),
    vote(TEXTBOOK, ["lyocell"], "round"),
]);

/** A sample of one fibre seldom seems two (a stray fibre, dead cotton, kemp); a mixture is seldom missed. */
export const MICROSCOPY_KINDS: ResponseVotes = {
  test: "microscopy", reading: "kinds", answers: ["one", "several"], kin: {}, error: 0.08, strays: [0, 1], mixed: [0.12, 0.88],
  votes: [{ how: "elicited", source: "a yarn of one fibre shows one kind; judged for this project", fibres: SINGLE_FIBRES, says: ["one"] }], source: ERROR_SOURCE,
};
