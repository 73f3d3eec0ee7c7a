import type { AnswerOf } from "../trade/questions";
import type { Assessment, MechanismId } from "../triage/assessment";
import type { Words } from "../words/words";
import { answersTo } from "./damage-told";

type Liquid = AnswerOf<"liquid">;
/** What a stain is named by; water, urine, a cleaner and something else have other names, or none. */
const STAINS: readonly Liquid[] = ["wine", "coffee-tea", "juice", "milk", "grease", "ink", "vomit"];
const AGES: Partial<Record<MechanismId, "fresh" | "old">> = { "food-fresh": "fresh", "food-old": "old" };

/** What is told to have been spilled; null where nothing is, or more than one thing. */
function spilled(a: Pick<Assessment, "findings">): Liquid | null {
  const told = STAINS.filter((id) => answersTo(a, "liquid").includes(id) || (id === "vomit" && answersTo(a, "incidents").includes(id)));
  return told.length === 1 ? (told[0] ?? null) : null;
}

const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);

/** A mechanism of one rug as it is called at the desk and on paper: a stain by what was told to have made it. */
export function mechanismIn(a: Pick<Assessment, "findings">, mechanism: MechanismId, words: Words): string {
  const [age, what] = [AGES[mechanism], spilled(a)];
  return age && what ? words.say("report.stain-of", { age, what: lower(words.table(`question.liquid.answer.${what}`)) }) : words.table(`mechanism.${mechanism}`);
}
