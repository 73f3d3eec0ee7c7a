import { FIBRES, type BlendId, type FibreId } from "../trade/fibres";
import type { Assessment } from "../triage/assessment";
import { labelShares } from "../triage/label-class";
import { readComposition } from "../triage/laboratory-evidence";
import { readLabel } from "../triage/read-label";
import type { Words } from "../words/words";
import { labelTextOf } from "./facts";

/** How much of the pile each fibre is, in one unit. */
type Shares = ReadonlyMap<string, number>;
const byLabel = (a: Assessment): Shares => labelShares(readLabel(labelTextOf(a) ?? ""));
const byLaboratory = ({ findings }: Assessment): Shares[] => findings.filter((f) => f.what === "laboratory").flatMap((f) => readComposition(f.value) ?? []);

const isBlend = (id: FibreId): id is BlendId => FIBRES.some((f) => f.id === id && "turned" in f);
const fibresOf = (id: BlendId) => id.split("-") as [first: string, second: string];
/** Whether the second fibre of a blend is more of the pile than the first, by the first of these shares that know both. */
function isTurned(id: BlendId, told: readonly Shares[]): boolean {
  const [first, second] = fibresOf(id);
  const shares = told.find((s) => s.has(first) && s.has(second));
  return shares !== undefined && (shares.get(second) as number) > (shares.get(first) as number);
}

/**
 * How a letter calls a fibre: of a blend the greater part first, where a laboratory or else a label tells their shares; in the order of its class where
 * nobody does. `by`: "label" where it is the label that is quoted.
 */
export function fibreInLetter(id: FibreId, a: Assessment, { words, by = "all" }: { words: Words; by?: "all" | "label" }): string {
  return words.table(isBlend(id) && isTurned(id, [...(by === "all" ? byLaboratory(a) : []), byLabel(a)]) ? `fibre.${id}.turned` : `fibre.${id}.short`);
}
