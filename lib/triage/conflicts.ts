import { CONFLICT_RATIO } from "../trade/evidence-caps";
import type { NamedFibre } from "../trade/likelihood-table";
import { SELLER_CLAIMS } from "../trade/seller-words";
import type { Assessment } from "./assessment";
import { NAMED } from "./classes";
import type { EvidenceItem } from "./evidence";
import type { Finding } from "./finding";
import { tellFinding, type Told } from "./say-finding";

/** The fibre a finding claims outright: the label's class, or the seller's word. Null for looks, price and the rest. */
function claimOf(finding: Finding): NamedFibre | null {
  if (finding.what === "sellerSaid") return SELLER_CLAIMS[String(finding.value)] ?? null;
  if (finding.what !== "label") return null;
  const says = (finding.value as Record<string, unknown>)["says"];
  return NAMED.find((f) => f === says) ?? null;
}

const contradicts = (item: EvidenceItem, claim: NamedFibre) =>
  Math.max(...item.likelihood) > CONFLICT_RATIO * (item.likelihood[NAMED.indexOf(claim)] as number);

/**
 * Pairs of findings that cannot well both be right: a claim by label or seller, and a finding far rarer with the claimed
 * fibre than with another. A conflict is itself a finding, and often the answer. The label comes first in its pairs.
 * `isGift`: of a rug that its owner did not buy.
 */
export function findConflicts(items: readonly EvidenceItem[], isGift = false): Assessment["conflicts"] {
  const claims = items.flatMap((item) => item.findings.flatMap((finding) => ({ what: item.what, finding, fibre: claimOf(finding) })))
    .filter((c): c is typeof c & { fibre: NamedFibre } => c.fibre !== null);
  const pairs = new Map<string, Assessment["conflicts"][number]>();
  for (const { what, finding, fibre } of claims) {
    for (const item of items.filter((i) => i.what !== what && contradicts(i, fibre))) {
      const key = [what, item.what].sort().join(" ");
      if (pairs.has(key)) continue;
      const sides = [{ what, finding }, { what: item.what, finding: item.findings[0] as Finding }];
      if (item.what === "label") sides.reverse();
      const [a, b] = sides.map((s) => tellFinding(s.finding, undefined, isGift)) as [Told, Told];
      pairs.set(key, {
        between: sides.map((s) => s.what) as [string, string],
        staff: `These do not agree: ${a.staff}; ${b.staff}.`,
        client: `Two things do not fit together: ${a.client}, but ${b.client}.`,
      });
    }
  }
  return [...pairs.values()];
}
