import type { ResponseVotes, Vote } from "./bench-responses-rule";
import type { Source } from "./fibres";
import { SINGLE_FIBRES, type SingleFibre } from "./single-fibres";

const method = (number: number): Source => ({ how: "read", source: `Regulation (EU) No 1007/2011, Annex VIII, ch. 2, method ${number}` });
const TABLE_20: Source = { how: "memory", source: "AATCC TM20, table of solubilities" };
const JUDGED: Source = { how: "elicited", source: "no published answer found for it; judged for this project" };

const vote = (source: Source, fibres: readonly SingleFibre[], ...says: string[]): Vote => ({ ...source, fibres, says });
const others = (...dissolving: SingleFibre[]) => SINGLE_FIBRES.filter((f) => !dissolving.includes(f));

/** Other plant fibres as cotton; lyocell, of which the regulation’s methods name modal and cupro, as viscose. Elicited. */
const KIN = { "mercerised-cotton": "cotton", bast: "cotton", "hard-fibre": "cotton", lyocell: "viscose" } as const;

/** A clean sample, well watched, seldom misleads; when it does it seems to dissolve in part (finish, dye, a stray fibre). Elicited. */
const ERROR_SOURCE: Source = { how: "elicited", source: "Misreadings of a solubility test: four in a hundred, most of them towards “partly”; a judgement of this project" };
const table = (test: string, votes: readonly Vote[]): ResponseVotes => ({
  test, reading: "outcome", answers: ["dissolves", "partly", "stays"], votes, kin: KIN, mixed: "partly", error: 0.04, strays: [0.2, 0.6, 0.2], source: ERROR_SOURCE,
});

export const HYPOCHLORITE = table("hypochlorite", [
  vote(method(2), ["wool", "silk"], "dissolves"),
  vote(method(2), ["cotton", "lyocell", "viscose", "acrylic", "polyamide", "polyester", "polypropylene"], "stays"),
  vote(TABLE_20, ["wool", "silk"], "dissolves"), vote(TABLE_20, others("wool", "silk"), "stays"),
]);

export const ACETONE = table("acetone", [
  vote(method(1), ["acetate"], "dissolves"),
  vote(method(1), ["wool", "silk", "cotton", "bast", "hard-fibre", "lyocell", "viscose", "acrylic", "polyamide", "polyester"], "stays"),
  vote(TABLE_20, ["acetate"], "dissolves"), vote(TABLE_20, others("acetate"), "stays"),
]);

export const FORMIC_ACID = table("formic-acid", [
  vote(method(4), ["polyamide"], "dissolves"),
  vote(method(4), ["wool", "cotton", "lyocell", "viscose", "acrylic", "polyester", "polypropylene"], "stays"),
  vote(TABLE_20, ["polyamide", "acetate"], "dissolves"), vote(TABLE_20, ["silk", "wool", "viscose"], "stays"),
]);

/** The method speaks of viscose, cupro, some modal, and cotton only. What 80 % formic acid dissolves is taken to dissolve here. */
export const FORMIC_ACID_ZINC_CHLORIDE = table("formic-acid-zinc-chloride", [
  vote(method(3), ["viscose"], "dissolves"), vote(method(3), ["lyocell"], "dissolves", "stays"), vote(method(3), ["cotton"], "stays"),
  vote(JUDGED, ["polyamide", "acetate"], "dissolves"), vote(JUDGED, ["wool", "silk"], "partly", "stays"), vote(JUDGED, ["polyester", "polypropylene", "acrylic"], "stays"),
]);

/**
 * At room temperature. Method 11 has silk and wool. That plant fibres dissolve is published for 50 °C (method 7); weaker
 * and cooler acid leaves cotton and flax, as remembered: all kept, so cotton’s row is wide.
 */
export const SULPHURIC_ACID_75 = table("sulphuric-acid-75", [
  vote(method(11), ["silk"], "dissolves"), vote(method(11), ["wool"], "stays"),
  vote(method(7), ["viscose", "lyocell"], "dissolves"), vote(method(7), ["cotton", "bast"], "dissolves", "partly"), vote(method(7), ["polyester"], "stays"),
  vote(TABLE_20, ["viscose", "silk", "polyamide", "acetate"], "dissolves"), vote(TABLE_20, ["wool", "polyester"], "stays"),
  vote(TABLE_20, ["cotton", "bast"], "dissolves", "stays"), vote(JUDGED, ["polypropylene", "acrylic"], "stays"),
]);
