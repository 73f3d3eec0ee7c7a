import { COLUMNS_OF } from "../trade/columns";
import { CHANGES, CHANGE_IDS, DAMAGE_IDS, FAMILIES, MEASURED_CHANGE, MECHANISMS, type ChangeId, type DamageId, type MechanismId } from "../trade/damage";
import { FIBRE_IDS, type FibreId } from "../trade/fibres";
import { FRESH, NEVER_FRESH, STILL_DAMP, TRIGGERS, type FreshKind } from "../trade/triggers";
import { KINDS, spread } from "./kinds";
import { growSets, setsWorthKeeping, weighSets, type Report, type Sets, type Weighable } from "./mechanism-sets";
import { ofFibres } from "./of-fibres";
import { knowsNothingOfIncident, type Told } from "./told";

/**
 * A mechanism is weighed where its chance passes the first on some pile, or the second and it explains a change that is
 * seen. Elicited: numerical cut-offs, held to brute force over every set in its test.
 */
const LEAST_PRIOR = 0.02;
const LEAST_PRIOR_IF_SEEN = 0.002;
const EXPLAINS_FROM = 0.1;

/** Chance that a trouble of this kind still counts as fresh, 0–1. */
export function freshChance(kind: FreshKind, told: Told): number {
  if (kind === "food" && NEVER_FRESH.liquids.includes(told.one("liquid") ?? "")) return 0;
  const since = told.one("since") ?? (told.has("reason:just-happened") ? "two-days" : "unknown");
  const by = FRESH[kind].by;
  const chance = by[since as keyof typeof by] ?? by.unknown;
  return kind === "dye" && (told.has("wetNow:wet") || told.has("wetNow:damp")) ? Math.max(chance, STILL_DAMP.chance) : chance;
}

/** How readily a mechanism marks a class: the highest of its components. */
const HITS = ofFibres((f) => Object.fromEntries(DAMAGE_IDS.map((m) => [m, Math.max(...COLUMNS_OF[f].map((c) => MECHANISMS[m].hits[c]))])) as Record<DamageId, number>);

/**
 * Chance of each mechanism before the changes are looked at, on a pile that takes it fully. Leaky noisy-or: one event
 * counts once by its strongest telling, different events are independent causes. For a family of fresh and old the
 * chance stands under the old one and is split later.
 */
export function triggerChances(told: Told): Record<DamageId, number> {
  const blind = knowsNothingOfIncident(told);
  const events = new Map<string, number>();
  for (const t of TRIGGERS) {
    if (!told.has(t.when) || t.unless?.some((u) => told.has(u))) continue;
    const key = `${t.mechanism} ${t.event}`;
    events.set(key, Math.max(events.get(key) ?? 0, t.chance));
  }
  const spared = Object.fromEntries(DAMAGE_IDS.map((m) => [m, 1 - (blind ? MECHANISMS[m].unasked : MECHANISMS[m].leak)])) as Record<DamageId, number>;
  for (const [key, chance] of events) spared[key.split(" ")[0] as DamageId] *= 1 - chance;
  return Object.fromEntries(DAMAGE_IDS.map((m) => [m, 1 - spared[m]])) as Record<DamageId, number>;
}

/** Whose chance a mechanism shares, and how much of it: a family's is split by freshness, every other has its own. */
function splits(told: Told): (id: DamageId) => { of: DamageId; share: number } {
  return (id) => {
    const family = FAMILIES.find((f) => f.includes(id));
    if (!family) return { of: id, share: 1 };
    const fresh = freshChance(family[0] === "urine-fresh" ? "urine" : "food", told);
    return { of: family[1], share: id === family[0] ? fresh : 1 - fresh };
  };
}

/** Chances on one fibre, families split by freshness; their members exclude each other. */
export function mechanismPriors(told: Told, fibre: FibreId): Record<DamageId, number> {
  const chances = triggerChances(told);
  const shareOf = splits(told);
  return Object.fromEntries(DAMAGE_IDS.map((m) => { const { of, share } = shareOf(m); return [m, chances[of] * HITS[fibre][of] * share]; })) as Record<DamageId, number>;
}

/** What is reported or measured, and what a person who answered did not name. */
function reportOf(told: Told): Report {
  const seen = new Set(CHANGE_IDS.filter((c) => told.has(`changes:${c}`)));
  const silent = told.answered("changes") ? CHANGE_IDS.filter((c) => !seen.has(c)) : [];
  const measured = told.value("colour-change");
  if (measured && typeof measured === "object" && !Array.isArray(measured)) {
    const { deltaE, direction } = measured as Record<string, unknown>;
    const shows = MEASURED_CHANGE.shows[String(direction)];
    if (shows && typeof deltaE === "number" && deltaE >= MEASURED_CHANGE.leastDeltaE) seen.add(shows);
  }
  return { seen: [...seen], silent: silent.filter((c) => !seen.has(c)) };
}

/** What can have happened: the sets, and for every fibre the chance of each set given all that was told. */
export interface WhatHappened {
  readonly sets: readonly (readonly DamageId[])[];
  /** The same sets as bits in the order of DAMAGE_IDS. */
  readonly masks: Int32Array;
  /** `given[fibre][i]`: P(set i | fibre, told); sums to 1. */
  readonly given: Readonly<Record<FibreId, Float64Array>>;
}

const BIT_OF = Object.fromEntries(DAMAGE_IDS.map((m, i) => [m, 1 << i])) as Record<DamageId, number>;

/** Sets with less than this share on every fibre are let go; the rest is scaled up to 1. Elicited, as above. */
const LEAST_SHARE = 3e-4;

/** The mechanisms worth weighing, with their odds on each kind of pile. */
function plausible(told: Told, seen: readonly ChangeId[]): Weighable[] {
  const chances = triggerChances(told);
  const shareOf = splits(told);
  const explains = (m: DamageId) => seen.some((c) => (CHANGES[c].by[m] ?? 0) >= EXPLAINS_FROM);
  return DAMAGE_IDS.flatMap((id) => {
    const { of, share } = shareOf(id);
    const either = KINDS.map((f) => chances[of] * HITS[f][of]);
    const most = Math.max(...either) * share;
    if (most < LEAST_PRIOR_IF_SEEN || (most < LEAST_PRIOR && !explains(id))) return [];
    return [{ id, odds: either.map((p) => (p * share) / (1 - p)) }];
  });
}

/** Every set weighed for what was told, with its prior odds and the chances of what is seen: what the posterior is made from. */
export function tableOfSets(told: Told): Sets {
  const report = reportOf(told);
  return growSets(plausible(told, report.seen), report);
}

/**
 * Joint posterior over sets of mechanisms for each fibre. The fibre itself is not moved here: belief has read the
 * changes already, and nothing is counted twice.
 */
export function whatHappened(told: Told): WhatHappened {
  const table = tableOfSets(told);
  const { mechanisms, bits, rows, width } = table;
  const kept = setsWorthKeeping(table, weighSets(table), LEAST_SHARE);
  const given = KINDS.map((_, f) => {
    const own = new Float64Array(kept.length);
    let total = 0;
    for (let i = 0; i < kept.length; i += 1) total += own[i] = rows[(kept[i] as number) * width + f] as number;
    return own.map((w) => w / total);
  });
  const sets = kept.map((i) => mechanisms.filter((_, m) => (bits[i] as number) & (1 << m)).map((m) => m.id));
  return { sets, masks: Int32Array.from(sets, (set) => set.reduce((mask, m) => mask | BIT_OF[m], 0)), given: spread(given) };
}

/** Marginal chance of each mechanism over fibres, `soil-only` for the empty set; those over 1 %, most probable first. */
export function marginals(happened: WhatHappened, fibres: Readonly<Record<FibreId, number>>): { mechanism: MechanismId; probability: number }[] {
  const sums = new Map<MechanismId, number>();
  happened.sets.forEach((set, i) => {
    const chance = FIBRE_IDS.reduce((sum, f) => sum + fibres[f] * (happened.given[f][i] as number), 0);
    for (const m of set.length > 0 ? set : (["soil-only"] as const)) sums.set(m, (sums.get(m) ?? 0) + chance);
  });
  return [...sums].map(([mechanism, probability]) => ({ mechanism, probability: Math.min(1, probability) }))
    .filter((m) => m.probability > 0.01).sort((a, b) => b.probability - a.probability);
}
