import type { Rule } from "./rule";
import { CLAIMS } from "./rules-claims";
import { CONDUCT } from "./rules-conduct";

/** All rules, in the order in which they are told. */
export const RULES: readonly Rule[] = [...CLAIMS, ...CONDUCT];
