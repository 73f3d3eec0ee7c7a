import { FIBRE_IDS, type FibreId } from "../../../lib/trade/fibres";
import { firstAidSentences } from "../../../lib/trade/first-aid";
import type { EnquiryAnswers, RugAnswers } from "../../../lib/trade/questions";
import type { ActionId, Assessment, MechanismId, MethodId, Range, Verdict } from "../../../lib/triage/assessment";
import type { FindingValue, Strength } from "../../../lib/triage/finding";
import type { DraftInput } from "../../../lib/reply/pieces";

export const WORKSHOP = {
  name: "Lantern Yard Rug Workshop", telephone: "01632 960001", currency: "GBP",
  signature: "Mira Quill\nLantern Yard Rug Workshop", emergencyNumber: "112",
};

/** First aid as an assessment says it, with the emergency number of the settings. */
export const FIRST_AID_SAID = firstAidSentences("112");

export interface Sketch {
  fibres: Partial<Record<FibreId, number>>;
  words?: string;
  evidence?: { what: string; value: FindingValue; strength: Strength; decibans?: number }[];
  mechanisms?: Partial<Record<MechanismId, number>>;
  methods?: Partial<Record<MethodId, Verdict>>;
  rest?: Partial<Assessment>;
}

const VISCOSE_METHODS: Record<MethodId, Verdict> = {
  dusting: "suitable", "immersion-wash": "ruled-out", "wet-hand-clean": "ruled-out", "low-moisture": "needs-testing-first",
  "solvent-dry": "needs-testing-first", "at-home": "ruled-out", none: "suitable",
};
export const WOOL_METHODS: Record<MethodId, Verdict> = {
  dusting: "suitable", "immersion-wash": "needs-testing-first", "wet-hand-clean": "needs-testing-first", "low-moisture": "suitable",
  "solvent-dry": "needs-testing-first", "at-home": "ruled-out", none: "suitable",
};

const byChance = (a: { probability: number }, b: { probability: number }) => b.probability - a.probability;

/** An assessment drawn by hand: only what the case is about is named; the rest is plain. */
export function assessmentOf({ fibres, words = "very likely", evidence = [], mechanisms = {}, methods = VISCOSE_METHODS, rest = {} }: Sketch): Assessment {
  const believed = FIBRE_IDS.map((fibre) => ({ fibre, probability: fibres[fibre] ?? 0.002, low: 0, high: 1, words: "unlikely" })).sort(byChance);
  believed[0]!.words = words;
  return {
    modelVersion: "hand-made", asOf: "2026-11-25T09:00:00.000Z", fibres: believed,
    balance: { leading: believed[0]!.fibre, rival: believed[1]!.fibre, prior: 0, findings: 0, damping: 0, cap: 0, total: 0 },
    findings: evidence.map((e) => ({ from: "client", decibans: 3, staff: "", client: "", ...e })),
    components: [], conflicts: [],
    mechanisms: (Object.entries(mechanisms) as [MechanismId, number][]).map(([mechanism, probability]) => ({ mechanism, probability })).sort(byChance),
    improvement: null, texture: null, odour: null, worse: null, beyondRepair: null, lifeYears: null,
    methods: (Object.entries(methods) as [MethodId, Verdict][]).map(([method, verdict]) => ({ method, verdict, why: "" })),
    advice: { action: "inspect-and-test", why: "", referTo: null, losses: [] },
    urgency: { level: "can-wait", why: "" }, firstAid: null, nextQuestions: [], onlyInspection: [], money: null, why: {},
    ...rest,
  };
}

export const range = (low: number, median: number, high: number): Range => ({ low, median, high });

export interface OneRug { sketch: Sketch; answers?: RugAnswers; enquiry?: EnquiryAnswers; title?: string; client?: DraftInput["client"] }

/** The input of a draft about one rug of Ana Example's. */
export const inputOf = ({ sketch, answers = {}, enquiry = {}, title = "Grey, 170 × 240", client = { name: "Ana Example", isTrade: false } }: OneRug): DraftInput => ({
  assessments: [{ title, assessment: assessmentOf(sketch), answers }], client, workshop: WORKSHOP, enquiry,
});

export const action = (id: ActionId) => ({ action: id, why: "", referTo: null, losses: [] });
/** A rug with harm to it, whose cleaning costs more than it is worth; each of it can be drawn otherwise. */
export const worthless = (rest: Partial<Assessment> = {}, mechanism: MechanismId = "dye-bleed") => inputOf({ sketch: {
  fibres: { viscose: 0.9 }, evidence: [{ what: "touch", value: "cool-slippery", strength: "told" }], mechanisms: { [mechanism]: 0.9 },
  rest: { beyondRepair: 0.8, improvement: range(10, 30, 60), advice: action("advise-claim-or-replacement"), money: { currency: "GBP", clean: range(150, 200, 250), cutDown: null, replace: range(300, 400, 500), valueToday: range(80, 150, 220) }, ...rest },
} });
