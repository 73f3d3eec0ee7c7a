import type { RuleId } from "./rule";

/** What a sentence claims beyond an assessment; `suggestion` names what the assessment carries. */
export interface Beyond { readonly rule: RuleId; readonly why: string; readonly suggestion: string }
