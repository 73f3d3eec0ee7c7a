import { DAMAGE_IDS, type DamageId, type MechanismId } from "../trade/damage";
import type { FibreId } from "../trade/fibres";
import { reportOf } from "./clues";
import { byKind } from "./kinds";
import { oddsOf, priorsOf } from "./mechanism-priors";
import { chanceOfNone, componentsOf, type Component } from "./mechanism-sets";
import type { Told } from "./told";

/**
 * What can have happened, exactly: the joint posterior over sets of mechanisms for each kind of pile, in independent
 * components. The fibre itself is not moved here: belief has read the changes already, and nothing is counted twice.
 */
export interface WhatHappened { readonly components: readonly Component[] }
export const whatHappened = (told: Told): WhatHappened => ({ components: componentsOf(oddsOf(priorsOf(told)), reportOf(told)) });

const ALL = 2 ** DAMAGE_IDS.length - 1;
type Fibres = Readonly<Record<FibreId, number>>;

/** P(none of these mechanisms holds), over the fibres. */
export function chanceWithout(happened: WhatHappened, fibres: Fibres, mechanisms: readonly DamageId[]): number {
  const none = chanceOfNone(happened.components, mechanisms.reduce((mask, m) => mask | (1 << DAMAGE_IDS.indexOf(m)), 0));
  return byKind(fibres).reduce((sum, share, k) => sum + share * (none[k] as number), 0);
}

/** From this chance a mechanism is reported. Elicited. */
const LEAST_REPORTED = 0.01;

/** Marginal chance of each mechanism over fibres, `soil-only` for the empty set; those over 1 %, most probable first. */
export function marginals(happened: WhatHappened, fibres: Fibres): { mechanism: MechanismId; probability: number }[] {
  const each = DAMAGE_IDS.map((m): { mechanism: MechanismId; probability: number } => ({ mechanism: m, probability: 1 - chanceWithout(happened, fibres, [m]) }));
  const none = chanceOfNone(happened.components, ALL);
  const soil = byKind(fibres).reduce((sum, share, k) => sum + share * (none[k] as number), 0);
  return [...each, { mechanism: "soil-only" as const, probability: soil }]
    .map((m) => ({ ...m, probability: Math.min(1, Math.max(0, m.probability)) }))
    .filter((m) => m.probability > LEAST_REPORTED).sort((a, b) => b.probability - a.probability);
}
