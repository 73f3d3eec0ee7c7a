import type { ActionId, Assessment } from "../triage/assessment";
import { KEPT_WHOLE } from "../triage/finding";

/** Whether somebody of the workshop decided on the rug's plan that it is not cut down (finding `kept-whole`), whatever its judgement would propose. */
export const isKeptWhole = ({ findings }: Pick<Assessment, "findings">): boolean => findings.some((f) => f.what === KEPT_WHOLE);

/** What is advised: the judgement's own action, or the next in its ranking where that is to cut the rug down and a person decided otherwise. */
export function actionOf(a: Pick<Assessment, "findings" | "advice">): ActionId {
  const { action, losses } = a.advice;
  if (action !== "advise-cut-down" || !isKeptWhole(a)) return action;
  return losses.find((l) => l.action !== action)?.action ?? action;
}
