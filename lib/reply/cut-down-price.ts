import type { Assessment, Range } from "../triage/assessment";
import { estimate } from "../words/measures";
import type { Words } from "../words/words";
import { isKeptWhole } from "./kept-whole";
import { moneyPhrase } from "./phrases";

/** How many times longer new edges all round what is kept are than those drawn on the plan (finding `cut-down` { bindingM, allRoundM }); null where none was drawn. */
function reachOf(findings: Assessment["findings"]): number | null {
  const plan = findings.find((f) => f.what === "cut-down")?.value;
  if (!plan || typeof plan !== "object" || !("bindingM" in plan) || !("allRoundM" in plan)) return null;
  const [drawn, allRound] = [Number(plan.bindingM), Number(plan.allRoundM)];
  return drawn > 0 && allRound > drawn ? allRound / drawn : null;
}

/**
 * What cutting down would cost before the rug is seen: where a way was chosen on a plan, from its edges as drawn to new ones all round
 * each piece that is kept, as on paper; otherwise the range of the judgement. Null where that gives none, or it was decided not to cut the rug down.
 */
export function cutDownPrice({ money, findings }: Pick<Assessment, "money" | "findings">): Range | null {
  const judged = isKeptWhole({ findings }) ? null : money?.cutDown ?? null;
  return judged && { ...judged, high: judged.high * (reachOf(findings) ?? 1) };
}

/** The same in words, to stand behind "about" or a name: "£210 to £340", or of a plan "£96, or up to £340 if all its edges have to be new". */
export function cutDownPhrase(assessment: Pick<Assessment, "money" | "findings">, currency: string, words: Words): string | null {
  const range = cutDownPrice(assessment);
  if (!range || reachOf(assessment.findings) === null) return range && moneyPhrase(range, currency, words);
  const [low, high] = [range.low, range.high].map((amount) => estimate(amount, currency, words.locale)) as [string, string];
  return low === high ? low : words.say("money.edges", { low, high });
}
