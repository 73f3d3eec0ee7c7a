import { isFibreId, type FibreId } from "../trade/fibres";
import { isSameFibre } from "../trade/label-fibres";
import type { Assessment } from "../triage/assessment";

/** The two most probable fibres that have a name; "other" says nothing in a letter. */
export const namedFibres = (a: Assessment): FibreId[] => a.fibres.map((f) => f.fibre).filter((f) => f !== "other").slice(0, 2);

/** The fibre class that a label names, where one was read. */
export function labelFibre(a: Assessment): FibreId | null {
  const value = a.findings.find((f) => f.what === "label")?.value;
  const says = typeof value === "object" && "says" in value ? value["says"] : null;
  return typeof says === "string" && isFibreId(says) ? says : null;
}

/** What a label says of the most probable fibre: the same, something else, a trade word that names none, or nothing that could be read. */
export function labelStands(a: Assessment): "art-silk" | "none" | "agrees" | "differs" {
  const says = labelFibre(a);
  if (a.findings.some(({ what, value }) => what === "label" && typeof value === "object" && "says" in value && value.says === "art-silk")) return "art-silk";
  const [leading] = namedFibres(a);
  return says === null ? "none" : leading !== undefined && isSameFibre(says, leading) ? "agrees" : "differs";
}
