import type { PlanView } from "../enquiry/views";
import type { CutKind } from "../photo/cut-down";
import { CUT_NAMES } from "../reply/documents/cut-down-plan";
import { percent } from "./figures";

/** A way of cutting a rug down, by its name. */
export const cutName = (kind: CutKind): string => CUT_NAMES[kind];

/** What a plan found and chose, in a sentence. */
export function planInWords({ marks, result: { damagedCm2, share, chosen } }: Pick<PlanView, "marks" | "result">): string {
  const damage = damagedCm2 > 0 ? `about ${Math.round(damagedCm2).toLocaleString("en-GB")} cm² damaged, ${percent(share)} of the rug` : "no damage outlined";
  return `Plan of ${marks.widthCm} × ${marks.lengthCm} cm: ${damage}${chosen ? `. ${cutName(chosen.kind)}: ${percent(chosen.shareKept)} kept, ${chosen.bindingM.toFixed(1)} m of binding` : ""}.`;
}
