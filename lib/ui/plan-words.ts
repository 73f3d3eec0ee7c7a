import type { PlanView } from "../enquiry/measured-views";
import type { CutKind } from "../photo/cut-down";
import { CUT_NAMES } from "../photo/cut-names";
import { KEPT_WHOLE } from "../triage/finding";
import { run, size, smallArea, type Figures } from "../words/measures";
import { percent } from "./figures";

/** A way of cutting a rug down, by its name. */
export const cutName = (kind: CutKind): string => CUT_NAMES[kind];

/** What a plan found and chose, in a sentence. */
export function planInWords({ marks, result: { damagedCm2, share, chosen } }: Pick<PlanView, "marks" | "result">, figures: Figures): string {
  const damage = damagedCm2 > 0 ? `about ${smallArea(damagedCm2, figures)} damaged, ${percent(share)} of the rug` : "no damage outlined";
  const way = chosen ? `. ${cutName(chosen.kind)}: ${percent(chosen.shareKept)} kept, ${run(chosen.bindingM, figures)} of binding` : marks.chosen === KEPT_WHOLE ? ". Not to be cut down" : "";
  return `Plan of ${size(marks.widthCm, marks.lengthCm, figures)}: ${damage}${way}.`;
}
