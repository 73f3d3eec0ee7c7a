import { isFibreId, type FibreId } from "../trade/fibres";
import { isSameFibre } from "../trade/label-fibres";
import type { Assessment } from "../triage/assessment";
import { labelShares } from "../triage/label-class";
import { readLabel } from "../triage/read-label";

/** The two most probable fibres that have a name; "other" says nothing in a letter. */
export const namedFibres = (a: Assessment): FibreId[] => a.fibres.map((f) => f.fibre).filter((f) => f !== "other").slice(0, 2);

const labelsRead = ({ findings }: Assessment) => findings.flatMap(({ what, value }) => (what === "label" && typeof value === "object" && "says" in value ? [value] : []));

/** Whether a label names several fibres that make no class together: wool with polyester. */
export const isMixtureOnLabel = (a: Assessment): boolean =>
  labelsRead(a).some(({ says, text }) => says === "other" && typeof text === "string" && labelShares(readLabel(text)).size > 1);

/** The fibre class that a label names, where one was read. */
export function labelFibre(a: Assessment): FibreId | null {
  const says = labelsRead(a)[0]?.says;
  return typeof says === "string" && isFibreId(says) ? says : null;
}

/** What a label says of the most probable fibre: the same, something else, a trade word that names none, or nothing that could be read. */
export function labelStands(a: Assessment): "art-silk" | "none" | "agrees" | "differs" {
  const says = labelFibre(a);
  if (labelsRead(a).some(({ says }) => says === "art-silk")) return "art-silk";
  const [leading] = namedFibres(a);
  return says === null ? "none" : leading !== undefined && isSameFibre(says, leading) ? "agrees" : "differs";
}
