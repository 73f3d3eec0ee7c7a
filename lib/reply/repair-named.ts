import type { RugAnswers } from "../trade/questions";
import type { Assessment } from "../triage/assessment";
import type { Words } from "../words/words";
import { likelyMechanisms } from "./facts";

/** The repair that the most probable trouble calls for, by what is damaged: "repair of its back"; null where it calls for none. */
export function repairNamed(a: Assessment, { changes = [] }: Pick<RugAnswers, "changes">, { say }: Words): string | null {
  const [top] = likelyMechanisms(a);
  if (top === "insects") return say(changes.includes("bare") ? "repair.bare" : "repair.insects");
  return top === "backing-failure" || top === "shrinkage" ? say(`repair.${top}`) : null;
}
