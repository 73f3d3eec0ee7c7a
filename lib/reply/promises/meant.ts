import { IMPLIED } from "./implied";
import { MANNER } from "./manner";
import type { Pattern, RuleId } from "./rule";

/** What a sentence means without saying it outright, for a rule: by what it implies, and by its manner. */
export const meant = (id: RuleId): readonly Pattern[] => [...(IMPLIED[id] ?? []), ...(MANNER[id] ?? [])];
