import type { Rule } from "./rule";
import { CERTAINTY } from "./rules-certainty";
import { CONDUCT } from "./rules-conduct";
import { HARM } from "./rules-harm";
import { NUMBER } from "./rules-number";
import { RESULT } from "./rules-result";
import { SAFETY } from "./rules-safety";

/** All rules, in the order in which they are told. */
export const RULES: readonly Rule[] = [CERTAINTY, RESULT, SAFETY, NUMBER, HARM, ...CONDUCT];
