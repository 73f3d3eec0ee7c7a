import type { MethodId } from "./care";
import type { FibreId, Source } from "./fibres";

/** Fibres that ask for the same care. */
const LIKE_SILK: readonly FibreId[] = ["silk", "wool-silk", "silk-viscose"];
const LIKE_VISCOSE: readonly FibreId[] = ["viscose", "wool-viscose", "silk-viscose", "cotton-viscose", "lyocell", "acetate"];

/** What a method's row says of it (`fine` or `test`) where certain fibres may be in the pile. `of`: each of these groups has to be possible. */
export interface CareWords extends Source { readonly method: MethodId; readonly verdict: "suitable" | "needs-testing-first"; readonly of: readonly (readonly FibreId[])[]; readonly say: string }

const practice: Source = { how: "common practice", source: "Common practice, no published source" };
/** A care that only some fibres ask for is said where they may be in the pile, and nowhere else. The first row that holds is said in place of the method's own words. */
export const CARE_WORDS: readonly CareWords[] = [
  { method: "dusting", verdict: "suitable", of: [LIKE_SILK, LIKE_VISCOSE], say: "it takes out dry soil and wets nothing; gently on silk, and without a beater on viscose and fibres like it", ...practice },
  { method: "dusting", verdict: "suitable", of: [LIKE_SILK], say: "it takes out dry soil and wets nothing; gently on silk", ...practice },
  { method: "dusting", verdict: "suitable", of: [LIKE_VISCOSE], say: "it takes out dry soil and wets nothing; without a beater on viscose and fibres like it", ...practice },
  { method: "solvent-dry", verdict: "needs-testing-first", of: [["acetate"]], say: "a solvent can move some dyes and soften latex, where the back has any, and acetate never meets acetone", ...practice },
];

/** Fibres may be in the pile from this chance of all of them together on. */
export const MAY_BE_FROM = { chance: 0.05, how: "elicited", source: "Elicited for this project: from there on a fibre is named on paper" } as const satisfies Source & { chance: number };
