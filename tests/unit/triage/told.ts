import type { Finding } from "../../../lib/triage/finding";
import { readTold, type Told } from "../../../lib/triage/told";
import { FIBRE_IDS, type FibreId } from "../../../lib/trade/fibres";

/** Answers as findings told by a client. */
export const findings = (answers: Record<string, Finding["value"]>): Finding[] =>
  Object.entries(answers).map(([what, value]) => ({ what, value, strength: "told", from: "client" }));
export const told = (answers: Record<string, Finding["value"]>): Told => readTold(findings(answers));

/** A belief written down: what is not named has nothing. */
export const belief = (shares: Partial<Record<FibreId, number>>): Record<FibreId, number> =>
  Object.fromEntries(FIBRE_IDS.map((f) => [f, shares[f] ?? 0])) as Record<FibreId, number>;
