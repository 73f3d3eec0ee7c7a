import { BURN_APPROACH, BURN_ASH, BURN_FLAME, BURN_REMOVAL, BURN_SMELL } from "./bench-responses-burn";
import { MICROSCOPY_KINDS, MICROSCOPY_SECTION, MICROSCOPY_SURFACE } from "./bench-responses-microscopy";
import { responseTable, type ResponseTable, type ResponseVotes } from "./bench-responses-rule";
import { ACETONE, FORMIC_ACID, FORMIC_ACID_ZINC_CHLORIDE, HYPOCHLORITE, SULPHURIC_ACID_75 } from "./bench-responses-solubility";
import { WET_STRENGTH } from "./bench-responses-wet";
import type { TestId } from "./bench-tests";

/** The statements the tables are worked out from, one entry a reading. */
export const RESPONSE_VOTES: readonly ResponseVotes[] = [
  BURN_APPROACH, BURN_FLAME, BURN_REMOVAL, BURN_SMELL, BURN_ASH, HYPOCHLORITE, ACETONE, FORMIC_ACID, FORMIC_ACID_ZINC_CHLORIDE, SULPHURIC_ACID_75,
  MICROSCOPY_SURFACE, MICROSCOPY_SECTION, MICROSCOPY_KINDS, WET_STRENGTH,
];

/** P(reading | what the sample is) for every reading that speaks of the fibre. */
export const BENCH_RESPONSES: readonly ResponseTable[] = RESPONSE_VOTES.map(responseTable);

/**
 * The power on each reading of one test when 1, 2, 3 … of its readings are given: one flame seen by one pair of eyes
 * gives five readings that go wrong together. Elicited.
 */
export const READING_POWERS: readonly number[] = [1, 0.8, 0.7, 0.62, 0.55];

/** The reading of a test that tells most by itself; what a test proposed is expected to tell. Elicited. */
export const LEADING_READING: Readonly<Partial<Record<TestId, string>>> = {
  burn: "smell", microscopy: "surface", "wet-strength": "wet",
  hypochlorite: "outcome", acetone: "outcome", "formic-acid": "outcome", "formic-acid-zinc-chloride": "outcome", "sulphuric-acid-75": "outcome",
};
