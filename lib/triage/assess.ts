import { CAPS } from "../trade/evidence-caps";
import { ONLY_INSPECTION } from "../trade/inspection";
import type { FibreId } from "../trade/fibres";
import { NOT_STATED } from "../trade/not-stated";
import { advise, referTo, weighActions, type Decision } from "./advice";
import type { Assessment, TriageSettings } from "./assessment";
import { believe, type Belief } from "./belief";
import { judgeComponents } from "./components";
import { circumstancesOf, specialistChances } from "./circumstances";
import type { Finding } from "./finding";
import { lifeLeft } from "./life";
import { judgeMethods } from "./methods";
import { judgeMoney } from "./money";
import { nextQuestions } from "./next-question";
import { judgeOdour } from "./odour";
import { chanceOfFailing, chanceOfRepairOnly, improvementRange, rulingRows, type RulingRows } from "./prospects";
import { judgeTexture } from "./texture";
import { readTold, saysNothingIsWrong, type Told } from "./told";
import { judgeFirstAid, judgeUrgency, needsFirstAid } from "./urgency";
import { marginals, whatHappened, type WhatHappened } from "./what-happened";
import { bestMethod, meanOf, worseOnceTested } from "./worse";

/** Stored with every assessment: the same findings, settings, instant and version give the same assessment. */
export const MODEL_VERSION = "2026.11-18";

/** Prices in pounds and everything else where a workshop has set nothing. Elicited. */
const DEFAULTS: TriageSettings = {
  currency: "GBP", priors: null, channel: "web", reason: null, wetNow: null,
  prices: { cleanPerM2: 35, cleanMinimum: 60, bindingPerM: 28 }, losses: null, seed: 1,
};
export const defaultSettings = (partial: Partial<TriageSettings> = {}): TriageSettings => ({ ...DEFAULTS, ...partial });

/** The reason for writing and whether it is wet may come with the settings alone; told findings go first. */
function withSettings(findings: readonly Finding[], settings: TriageSettings): readonly Finding[] {
  const extra = (["reason", "wetNow"] as const).flatMap((what): Finding[] => {
    const value = settings[what];
    return value !== null && !findings.some((f) => f.what === what) ? [{ what, value, strength: "told", from: "client" }] : [];
  });
  return [...findings, ...extra];
}

/** From this chance that only repairs are needed on, an improvement by cleaning is not stated. Elicited. */
const REPAIR_ONLY_FROM = 0.5;

/** The most that "beyond economic repair" is stated before a person has inspected the rug: as words and photos of a fibre. Elicited. */
const BEYOND_REPAIR_MOST = CAPS.told;

/** Why an improvement cannot be stated, or null where it can. */
function whyNoImprovement(told: Told, happened: WhatHappened, fibres: Record<FibreId, number>): string | null {
  if (saysNothingIsWrong(told)) return NOT_STATED["no-damage"];
  if (chanceOfRepairOnly(happened, fibres) >= REPAIR_ONLY_FROM) return NOT_STATED.repair;
  return null;
}

function inspectionSentences(told: Told, chance: (mechanism: string) => number): string[] {
  const holds = (w: { answer?: string; mechanism?: string; from?: number } | undefined) =>
    !w || (w.answer ? told.has(w.answer) : chance(w.mechanism ?? "") >= (w.from ?? 0));
  return [...new Set(ONLY_INSPECTION.filter((r) => holds(r.when)).map((r) => r.say))];
}

/** Belief and prospects alone, without interval's use, words or advice: the arithmetic the bench measures. */
export interface Prospects { readonly told: Told; readonly happened: WhatHappened; readonly rows: RulingRows }
export function prospectsOf(findings: readonly Finding[]): Prospects {
  const told = readTold(findings);
  const happened = whatHappened(told);
  return { told, happened, rows: rulingRows(happened, told) };
}

/** What the parts of one assessment share. */
interface Case extends Prospects {
  readonly belief: Belief;
  readonly fibres: Record<FibreId, number>;
  readonly chance: (mechanism: string) => number;
  readonly needsAid: boolean;
  readonly settings: TriageSettings;
  readonly year: number;
}

/** Money, life, prospects and what follows for the decision. */
function outlookOf(c: Case) {
  const { told, fibres, rows } = c;
  const lifeYears = lifeLeft(told, fibres, c.year);
  const money = judgeMoney(told, fibres, { settings: c.settings, year: c.year });
  const cheap = money.notWorthIt;
  const noImprovement = whyNoImprovement(told, c.happened, fibres);
  const methods = judgeMethods(told, fibres, c.chance);
  const { worse } = bestMethod(methods, { told, fibres, yearNow: c.year });
  const decision: Decision = { fibres, rows, worse: worseOnceTested(worse, told), circumstances: circumstancesOf(told, { chance: c.chance, cheap, needsAid: c.needsAid }), losses: c.settings.losses };
  const stated = noImprovement === null;
  return {
    lifeYears, money, methods, noImprovement, decision,
    improvement: stated ? improvementRange(fibres, rows) : null,
    worse: stated ? meanOf(worse, fibres) : null,
    beyondRepair: stated ? Math.min(BEYOND_REPAIR_MOST, 1 - (1 - chanceOfFailing(fibres, rows)) * (1 - cheap)) : null,
  };
}

/** A sentence for everything that is null. */
function whysOf(o: ReturnType<typeof outlookOf>, firstAid: string[] | null): Assessment["why"] {
  return {
    ...(o.noImprovement ? { improvement: o.noImprovement, worse: o.noImprovement, beyondRepair: o.noImprovement } : {}),
    ...(o.lifeYears ? {} : { lifeYears: NOT_STATED["antique-life"] }),
    ...(firstAid ? {} : { firstAid: NOT_STATED["first-aid"] }),
    ...(o.money.why ? { money: o.money.why } : {}),
  };
}

function caseOf(known: readonly Finding[], settings: TriageSettings, asOf: string): { c: Case; mechanisms: Assessment["mechanisms"] } {
  const belief = believe(known, settings, asOf);
  const prospects = prospectsOf(known);
  const fibres = belief.probabilities;
  const mechanisms = marginals(prospects.happened, fibres);
  const chance = (mechanism: string) => mechanisms.find((m) => m.mechanism === mechanism)?.probability ?? 0;
  return { c: { ...prospects, belief, fibres, chance, needsAid: needsFirstAid(prospects.told, settings.isWetToldLater, settings.isWetToldDayLater), settings, year: Number(asOf.slice(0, 4)) }, mechanisms };
}

/** What the decision hangs on, as the assessment weighs it: for those who explain or measure it. */
export function decisionOf(findings: readonly Finding[], settings: TriageSettings, asOf: string): { told: Told; decision: Decision } {
  const { c } = caseOf(withSettings(findings, settings), settings, asOf);
  return { told: c.told, decision: outlookOf(c).decision };
}

/**
 * The one door of triage: findings in, assessment out. Pure. `asOf` is an ISO 8601 instant from which ages count.
 * Order and doubles of the findings change nothing in the numbers.
 */
export function assess(findings: readonly Finding[], settings: TriageSettings, asOf: string): Assessment {
  const known = withSettings(findings, settings);
  const { c, mechanisms } = caseOf(known, settings, asOf);
  const { belief, fibres, chance } = c;
  const o = outlookOf(c);
  const firstAid = judgeFirstAid(c.told, { chance, emergencyNumber: settings.emergencyNumber, needsAid: c.needsAid });
  const specialist = specialistChances(c.told, chance);
  return {
    modelVersion: MODEL_VERSION, asOf,
    fibres: belief.fibres, balance: belief.balance, findings: belief.findings, conflicts: belief.conflicts,
    components: judgeComponents({ findings: known, classPosterior: fibres }),
    mechanisms, improvement: o.improvement, texture: judgeTexture(c.happened, fibres), odour: judgeOdour(c.told, chance), worse: o.worse, beyondRepair: o.beyondRepair, lifeYears: o.lifeYears,
    methods: o.methods,
    advice: advise(weighActions(o.decision), referTo((when) => specialist[when])),
    urgency: judgeUrgency(c.told, chance, c.needsAid),
    firstAid,
    nextQuestions: nextQuestions(c.told, o.decision, { ...belief, benchTests: settings.benchTests }),
    onlyInspection: inspectionSentences(c.told, chance),
    money: o.money.money,
    why: whysOf(o, firstAid),
  };
}
