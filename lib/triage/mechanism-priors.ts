import { BROWNS_FROM_BELOW, BY_MAKE, DAMAGE_IDS, FAMILIES, mechanismRow, WICKING_BY_GROUND, type DamageId } from "../trade/damage";
import { COLUMNS_OF } from "../trade/columns";
import { CONSTRUCTIONS } from "../trade/care";
import type { FibreId } from "../trade/fibres";
import { FRESH, NEVER_FRESH, STILL_DAMP, TAKES_TIME, TRIGGERS, WHO, WHO_BEARS_ON, type FreshKind } from "../trade/triggers";
import { constructionShares } from "./construction";
import { KIND_OF, KINDS } from "./kinds";
import { knowsNothingOfIncident, type Told } from "./told";

const placeOf = (id: DamageId) => DAMAGE_IDS.indexOf(id);
const K = KINDS.length;

/** Chance that a trouble of this kind still counts as fresh, 0–1. */
export function freshChance(kind: FreshKind, told: Told): number {
  if (kind === "food" && NEVER_FRESH.liquids.includes(told.one("liquid") ?? "")) return 0;
  const since = told.one("since") ?? (told.has("reason:just-happened") ? "two-days" : "unknown");
  const by = FRESH[kind].by;
  const chance = by[since as keyof typeof by] ?? by.unknown;
  const damp = told.has("wetNow:wet") || told.has("wetNow:damp") || told.has("sign:still-wet");
  return kind === "dye" && damp ? Math.max(chance, STILL_DAMP.chance) : chance;
}

/** A trigger with the place of its event among EVENTS. */
interface Ready { readonly when: string; readonly unless: readonly string[]; readonly chance: number; readonly event: number }
const EVENTS = [...new Set(TRIGGERS.map((t) => `${t.mechanism} ${t.event}`))].map((key) => {
  const [mechanism = "", name = ""] = key.split(" ");
  const bears = WHO_BEARS_ON.events.some((e) => e === name) && WHO_BEARS_ON.mechanisms.some((m) => m === mechanism);
  return { key, mechanism: placeOf(mechanism as DamageId), whoBears: bears, takesTime: TAKES_TIME.find((t) => t.mechanism === mechanism && t.event === name)?.by };
});
const READY: readonly Ready[] = TRIGGERS.map((t) => ({ when: t.when, unless: t.unless ?? [], chance: t.chance, event: EVENTS.findIndex((e) => e.key === `${t.mechanism} ${t.event}`) }));

/** The strongest telling of each event, 0–1, in the order of EVENTS. */
function eventChances(told: Told): Float64Array {
  const out = new Float64Array(EVENTS.length);
  for (const t of READY) {
    if (t.chance > (out[t.event] as number) && told.has(t.when) && !t.unless.some((u) => told.has(u))) out[t.event] = t.chance;
  }
  return out;
}

/**
 * Chance of each mechanism before the changes are looked at, on a pile that takes it fully, in the order of DAMAGE_IDS.
 * Leaky noisy-or: one event counts once by its strongest telling, different events are independent causes; who did it and
 * how long ago bear on the chance of an event. For a family of fresh and old the chance stands under the old one.
 */
function triggered(told: Told): Float64Array {
  const blind = knowsNothingOfIncident(told);
  const spared = Float64Array.from(DAMAGE_IDS, (m) => 1 - mechanismRow(m)[blind ? "unasked" : "leak"]);
  const strength = WHO.find((w) => told.has(w.when))?.strength ?? 1;
  const since = told.one("since") ?? "";
  const chances = eventChances(told);
  EVENTS.forEach((e, i) => {
    const chance = chances[i] as number;
    if (chance === 0) return;
    const spares = e.whoBears ? (1 - chance) ** strength : 1 - chance * (e.takesTime?.[since] ?? 1);
    spared[e.mechanism] = (spared[e.mechanism] as number) * spares;
  });
  return spared.map((x) => 1 - x);
}
export const triggerChances = (told: Told): Record<DamageId, number> => {
  const chances = triggered(told);
  return Object.fromEntries(DAMAGE_IDS.map((m, i) => [m, chances[i]])) as Record<DamageId, number>;
};

/** How readily a mechanism marks a kind, the highest of its columns: `HITS[m·K + k]`. */
const HITS = Float64Array.from(DAMAGE_IDS.flatMap((m) => KINDS.map((f) => Math.max(...COLUMNS_OF[f].map((c) => mechanismRow(m).hits[c])))));
/** The kinds that brown only from below. */
const FROM_BELOW = KINDS.map((f) => COLUMNS_OF[f].every((c) => BROWNS_FROM_BELOW.includes(c)));
const BROWNINGS: readonly DamageId[] = ["browning-cleaning", "browning-use"];

/** The make's factor on a mechanism, weighted by the shares of the makes. */
function byMake(told: Told, row: keyof typeof BY_MAKE): number {
  const shares = constructionShares(told);
  return CONSTRUCTIONS.reduce((sum, c) => sum + shares[c] * BY_MAKE[row][c], 0);
}

/** How much of browning wicks up: by the ground a label names, else by the make. */
function wicking(told: Told): number {
  const label = told.value("label");
  const ground = label && typeof label === "object" && !Array.isArray(label) ? (label as Record<string, unknown>)["ground"] : null;
  const named = typeof ground === "string" ? WICKING_BY_GROUND.find((w) => w.named.test(ground)) : undefined;
  return named?.times ?? byMake(told, "wicking");
}

/** The share of its family's chance that a mechanism has, and where that chance stands. */
const FAMILY_OF = DAMAGE_IDS.map((m, i) => {
  const family = FAMILIES.find((f) => f.includes(m));
  return family ? { of: placeOf(family[1]), fresh: m === family[0], kind: (family[0] === "urine-fresh" ? "urine" : "food") as FreshKind } : { of: i, fresh: null, kind: null };
});

/** Prior chance of each mechanism on each kind, `[m·K + k]`, families split by freshness. */
export function priorsOf(told: Told): Float64Array {
  const chances = triggered(told);
  const fresh = { urine: freshChance("urine", told), food: freshChance("food", told) };
  const wicks = wicking(told);
  const out = new Float64Array(DAMAGE_IDS.length * K);
  DAMAGE_IDS.forEach((id, m) => {
    const { of, fresh: isFresh, kind } = FAMILY_OF[m] as (typeof FAMILY_OF)[number];
    const share = kind === null ? 1 : isFresh ? fresh[kind as "urine" | "food"] : 1 - fresh[kind as "urine" | "food"];
    const made = id === "backing-failure" || id === "shrinkage" ? byMake(told, id) : 1;
    const wicked = BROWNINGS.includes(id);
    for (let k = 0; k < K; k += 1) {
      const hit = HITS[of * K + k] as number;
      out[m * K + k] = (chances[of] as number) * share * made * (wicked && FROM_BELOW[k] ? hit * wicks : hit);
    }
  });
  return out;
}

/** Chances on one fibre before the changes are looked at; the members of a family exclude each other. */
export function mechanismPriors(told: Told, fibre: FibreId): Record<DamageId, number> {
  const priors = priorsOf(told);
  return Object.fromEntries(DAMAGE_IDS.map((m, i) => [m, priors[i * K + KIND_OF[fibre]]])) as Record<DamageId, number>;
}

/** Odds against absence; of a family's members against the absence of both. */
export function oddsOf(priors: Float64Array): Float64Array {
  const out = new Float64Array(priors.length);
  FAMILY_OF.forEach(({ kind }, m) => {
    for (let k = 0; k < K; k += 1) {
      const all = kind === null ? (priors[m * K + k] as number) : FAMILY_OF.reduce((sum, f, i) => (f.kind === kind ? sum + (priors[i * K + k] as number) : sum), 0);
      out[m * K + k] = (priors[m * K + k] as number) / (1 - all);
    }
  });
  return out;
}
