import type { MethodId, Verdict } from "../trade/care";
import type { MechanismId } from "../trade/damage";
import type { FibreId } from "../trade/fibres";
import type { ActionId } from "../trade/losses";
import type { UrgencyLevel } from "../trade/urgency";
import type { SingleFibre } from "../trade/single-fibres";
import type { FindingValue, Sample, Strength } from "./finding";

/** A range of a quantity: 10th, 50th and 90th percentile. */
export interface Range { low: number; median: number; high: number }

export interface FibreBelief {
  fibre: FibreId;
  /** Probability 0–1; over all classes they sum to 1. */
  probability: number;
  /** The 80 % interval of that probability over draws of the tables. */
  low: number;
  high: number;
  /** The IPCC word for it, e.g. "very likely". */
  words: string;
}

export interface WeighedFinding {
  what: string;
  value: FindingValue;
  strength: Strength;
  from: string;
  /** Weight for the leading fibre against the rival, in decibans (10·log10 of the Bayes factor). 0: says nothing about the fibre. */
  decibans: number;
  /** One sentence for staff. */
  staff: string;
  /** One sentence a client can read. */
  client: string;
}

/**
 * How the weights add up: prior + findings + damping + cap = total, exactly. All in decibans, leading fibre against rival.
 * `damping`: words and photos can mislead as a whole; `cap`: evidence of this strength carries no further.
 */
export interface WeightBalance { leading: FibreId; rival: FibreId; prior: number; findings: number; damping: number; cap: number; total: number }

/** What one component or yarn is made of, where anything is known of it beside the pile as a whole. */
export interface ComponentBelief {
  part: Sample["part"];
  yarn: Sample["yarn"];
  /** Single fibres and `other`, most probable first; sums to 1. */
  fibres: { fibre: SingleFibre | "other"; probability: number }[];
  /** One sentence for staff: what it probably is and by what evidence. */
  says: string;
}

/** Chances, 0–1, of the grades of texture 0 (as it was made) to 4 (burst or matted through), now and after the best method still allowed; each sums to 1. */
export interface TextureOutlook { now: number[]; after: number[] }
/** Chance, 0–1, that it smells, and that the smell comes back in damp weather after the best method still allowed. */
export interface OdourOutlook { now: number; returns: number }

export type { MechanismId, MethodId, Verdict, ActionId, UrgencyLevel };

/** Where something is null, `why[field]` says so in a sentence. */
export interface Assessment {
  modelVersion: string;
  /** ISO 8601 instant the ages were counted from. */
  asOf: string;
  /** All classes, most probable first. */
  fibres: FibreBelief[];
  balance: WeightBalance;
  findings: WeighedFinding[];
  /** Ground, fringe and the yarns of the pile, where something speaks for them. */
  components: ComponentBelief[];
  /** Conflicts, such as a label that says viscose where the seller said silk. */
  conflicts: { between: [string, string]; staff: string; client: string }[];
  /** Marginal probability of each mechanism that has more than 1 %, most probable first. */
  mechanisms: { mechanism: MechanismId; probability: number }[];
  /** 1 − ΔE00 after / ΔE00 before of the affected spot, in per cent, by the best method still allowed. */
  improvement: Range | null;
  /** The texture of the pile, judged apart from its colour; null where nothing speaks of harm to it. */
  texture: TextureOutlook | null;
  /** The smell, judged apart from its colour; null where nothing speaks of one. */
  odour: OdourOutlook | null;
  /** Chance that the best method still allowed makes it worse, 0–1. */
  worse: number | null;
  /** Chance that it is beyond economic repair, 0–1. From photos always provisional. */
  beyondRepair: number | null;
  /** Years from asOf. */
  lifeYears: Range | null;
  methods: { method: MethodId; verdict: Verdict; why: string }[];
  /** The action with the least expected regret, the runners-up, and who it goes to where it is a referral. */
  advice: { action: ActionId; why: string; referTo: string | null; losses: { action: ActionId; loss: number }[] };
  urgency: { level: UrgencyLevel; why: string };
  /** The one set of first aid, where something is wet or fresh now; else null. */
  firstAid: string[] | null;
  nextQuestions: { ask: string; id: string; kind: "question" | "photo" | "bench-test"; why: string }[];
  /** What only an inspection can settle, in sentences. */
  onlyInspection: string[];
  money: { currency: string; clean: Range | null; cutDown: Range | null; replace: Range | null; valueToday: Range | null } | null;
  why: Partial<Record<"improvement" | "worse" | "beyondRepair" | "lifeYears" | "firstAid" | "money", string>>;
}

/** What the workshop can set and triage depends on. Stored with every assessment. */
export interface TriageSettings {
  /** ISO 4217. */
  currency: string;
  /** Prior over fibres by the workshop, or null for the table's. Sums to 1. */
  priors: Partial<Record<FibreId, number>> | null;
  channel: "web" | "email" | "telephone";
  reason: string | null;
  wetNow: "wet" | "damp" | "no" | "unsure" | null;
  /** Whether it is wet now was told later than the rest, so that “within the last hour” was before that. Absent: told at once. */
  isWetToldLater?: boolean;
  /** Whether it was told more than a day after when it happened and what was put on it, so that “today” was before that. Absent: it was not. */
  isWetToldDayLater?: boolean;
  prices: { cleanPerM2: number; cleanMinimum: number; bindingPerM: number };
  losses: Partial<Record<string, number>> | null;
  /** The workshop's emergency number, said with first aid; absent: "your emergency number". */
  emergencyNumber?: string;
  /** Bench tests that may be proposed: those that need no reagent, and those whose reagent the owner switched on. Absent: only those that need none. */
  benchTests?: readonly string[];
  /** Seed of the interval draws; the same seed gives the same interval. */
  seed: number;
}
