import { IMPLIED } from "./implied";
import { MANNER } from "./manner";
import { REPUTE } from "./repute";
import type { Pattern, RuleId } from "./rule";

/** What a sentence means without saying it outright, for a rule: by what it implies, by its manner, and by whose name it leans on or judges. */
export const meant = (id: RuleId): readonly Pattern[] => [IMPLIED, MANNER, REPUTE].flatMap((said) => said[id] ?? []);
