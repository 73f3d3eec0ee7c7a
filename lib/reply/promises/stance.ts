import type { RuleId } from "./rule";

/** What a whole sentence does with the claim in it, so that the claim is not ours: which rules it lifts, and what takes that back. Data, elicited. */
export interface Stance { readonly lifts: readonly RuleId[]; readonly shows: () => RegExp; readonly unless: () => RegExp }
