import { viscoseCareCard } from "../../../../lib/reply/documents/care-card";
import { conditionReport, type ConditionReport } from "../../../../lib/reply/documents/condition-report";
import { cutDownPlan, type CutDownPlan } from "../../../../lib/reply/documents/cut-down-plan";
import { letterToSeller, type SellerLetter } from "../../../../lib/reply/documents/letter-to-seller";
import { textsOfBlock, type PrintedDocument } from "../../../../lib/reply/documents/blocks";
import { rugWordsOf } from "../../../../lib/reply/describe";
import { likelihood } from "../../../../lib/reply/phrases";
import { judgeMethods } from "../../../../lib/triage/methods";
import { readTold } from "../../../../lib/triage/told";
import { FIBRE_IDS, type FibreId } from "../../../../lib/trade/fibres";
import type { Assessment } from "../../../../lib/triage/assessment";
import { longDate, type Figures } from "../../../../lib/words/measures";
import { wordsIn } from "../../../../lib/words/words";
import type { Asker } from "../../../../lib/reply/who-asks";
import { assessmentOf, range } from "../make";

export const wordsOf = textsOfBlock;
export const allWordsOf = (d: PrintedDocument): string[] => [d.title, ...d.blocks.flatMap(wordsOf)];

/** What is not ours to translate: the client's and the workshop's own words and names. */
export const OWN = {
  reference: "K7-204", theirs: "CL/118", client: "Ana Example", account: "The vase fell over.", inspector: "Ivo Castellane", found: "A hand’s breadth is distorted.",
  workshop: "Lantern Yard", seller: "Kestrel Floors", street: "1 Mill Lane", said: "pure silk", label: "100 % viscose", laboratory: "Fenwick Fibre", labReference: "FF-118", maker: "Nell Harrow", model: "9.9", customer: "Ines Varga",
} as const;
export const OWNER: Asker = { name: OWN.client, as: "owner", customer: null };
export const CLEANER: Asker = { name: OWN.client, as: "trade", customer: OWN.customer };
/** Every question of an event and of a pile, answered. */
export const TOLD: ConditionReport["told"] = {
  wet: { answer: "damp", toldOn: "27 November 2026", before: [] },
  answers: {
    incidents: ["spill", "spotted"], liquid: "wine", since: "day", treatments: ["rubbed", "soap"], treatedBy: "owner", changes: ["browner", "stiff"],
    sellerSaid: "silk", boughtWhere: "online", shine: "two-tone", footprints: "stay", touch: "unsure", back: "cloth", fringe: "sewn-on", fringeKind: "shiny", age: "under-2",
  },
  seen: ["shine"], sinceToldOn: "27 November 2026", account: { text: OWN.account, isQuoted: true },
};
const WORKSHOP = { name: OWN.workshop, lines: [OWN.street] };

const spread = (of: Partial<Record<FibreId, number>>) => Object.fromEntries(FIBRE_IDS.map((id) => [id, of[id] ?? 0])) as Record<FibreId, number>;
/** What methods come to for such a rug, in the words of triage: ruled out, tested first, suitable, and left as it is. */
const methods = (of: Partial<Record<FibreId, number>>, mould = 0): Assessment["methods"] => judgeMethods(readTold([]), spread(of), (mechanism) => (mechanism === "mould" ? mould : 0));

const JUDGED = {
  improvement: range(5, 20, 45), worse: 0.2, beyondRepair: 0.6, lifeYears: range(1, 2, 4),
  money: { currency: "EUR", clean: range(90, 110, 150), cutDown: range(60, 110, 300), replace: range(500, 900, 1600), valueToday: range(50, 200, 500) },
} satisfies Partial<Assessment>;
const change = (direction: string): Assessment["findings"][number] =>
  ({ what: "colour-change", value: { direction, deltaE: 6.5, uncertainty: 1.4 }, strength: "photo", from: "m1", decibans: 0, staff: "Not for paper.", client: "Not for paper." }) as unknown as Assessment["findings"][number];
const DRAWN = { ...change("none"), what: "damaged-area", value: { cm2: 1200, uncertainty: 60, share: 0.03 } } as Assessment["findings"][number];

const corner = { x: 0.2, y: 0.2 };
const MARKS: ConditionReport["photos"][number]["marks"] = (["untouched", "affected", "edges", "damaged"] as const).map((what) => ({ what, outline: [corner, { x: 0.4, y: 0.2 }, { x: 0.3, y: 0.5 }] }));

const toldOf = (what: string, value: string[]) => ({ what, value, strength: "told", from: "client", decibans: 0, staff: "Not for paper.", client: "Not for paper." }) as unknown as Assessment["findings"][number];

export interface Judged { readonly name: string; readonly assessment: Assessment; readonly isInspected: boolean }
const judged = (name: string, rest: Partial<Assessment>, isInspected: boolean): Judged =>
  ({ name, isInspected, assessment: { ...assessmentOf({ fibres: { viscose: 0.8, silk: 0.06 }, mechanisms: { "water-mark": 0.7, mould: 0.2 }, rest: { ...JUDGED, ...rest } }), modelVersion: OWN.model, asOf: "2026-11-27T09:00:00Z" } as Assessment });

/** Rugs whose reports say everything that a report can say. `why` sentences are triage's own. */
export const JUDGED_RUGS: readonly Judged[] = [
  judged("a damp viscose rug", { methods: methods({ viscose: 0.8, silk: 0.1, other: 0.1 }, 0.5), findings: [toldOf("changes", ["shaded", "ring"])] }, true),
  judged("a sound wool rug, measured", { methods: methods({ wool: 1 }), findings: [...["none", "yellower-darker", "something-new"].map(change), DRAWN] }, false),
  judged("an antique of which little can be said", {
    methods: methods({ "hard-fibre": 1 }), improvement: null, worse: null, beyondRepair: null, lifeYears: null, money: null, mechanisms: [],
    why: {
      improvement: "No mark or damage was described, so there is nothing to bring back.", money: "An antique is valued by a valuer, never from photos.",
      lifeYears: "An antique gets no figure: how long it lasts hangs on how it is kept. A conservator can say more.",
    },
  }, false),
  judged("a rug with a patch seen from one side", { findings: [toldOf("changes", ["shaded"])] }, false),
  judged("a rug that nothing was told of", { findings: [] }, false),
];

/** All four documents as a workshop in this locale makes them, each under a name. */
export function documentsIn(figures: Figures): { name: string; document: PrintedDocument }[] {
  const { locale } = figures;
  const words = wordsIn(locale);
  const day = (text: string) => longDate(new Date(`${text}T00:00:00Z`), { locale, timeZone: "UTC" });
  const rug = rugWordsOf({ answers: { widthCm: 170, lengthCm: 240 }, colours: [{ hex: "#8a8f98", share: 1 }] } as Parameters<typeof rugWordsOf>[0], figures);
  const report = ({ assessment, isInspected }: Judged): ConditionReport => ({
    figures, reference: OWN.reference, place: { n: 2, of: isInspected ? 3 : 2 }, theirReference: OWN.theirs, asker: isInspected ? OWNER : CLEANER, rug, assessment,
    told: isInspected ? { ...TOLD, wet: { answer: "damp", toldOn: day("2026-11-27"), before: [{ answer: "wet", toldOn: day("2026-11-26") }] }, sinceToldOn: day("2026-11-27") } : { wet: null, answers: { ...TOLD.answers, treatedBy: "me-trade" }, seen: ["changes"], sinceToldOn: null, account: { text: OWN.account, isQuoted: false } }, workshop: WORKSHOP,
    photos: [{ id: "p1", shows: words.table("photo.whole.ask"), takenOn: day("2026-11-27"), shape: { width: 800, height: 600 }, marks: MARKS }, { id: "p2", shows: words.table("photo.label.ask"), takenOn: null, marks: [] }], isLabelShown: false,
    tests: isInspected ? [{ on: day("2026-11-20"), part: "fringe", found: words.table("test.wet-strength") }] : [], moisture: isInspected ? [{ on: day("2026-11-20"), percent: 30, place: "affected" }] : [],
    reports: isInspected ? [] : [{ by: OWN.laboratory, on: day("2026-11-20"), reference: OWN.labReference, part: "pile", found: words.table("fibre.viscose.name") }], madeBy: OWN.maker,
    cutDown: isInspected ? assessment.money?.cutDown ?? null : null, cutting: isInspected ? "equal-ends" : "open", inspection: isInspected ? { by: OWN.inspector, on: day("2026-11-26"), found: OWN.found, isBeyondRepair: true } : null, today: day("2026-11-28"), judgedOn: day("2026-11-27"),
  });
  const seller: SellerLetter = {
    locale, client: { name: OWN.client, address: OWN.street }, seller: { name: OWN.seller, address: OWN.street }, rug, bought: { on: "2024", price: null, invoice: "77" },
    saidWords: OWN.said, sellerSaid: "silk-look", labelWords: OWN.label, isUnlabelled: true, tests: [], jurisdiction: "EU", today: day("2026-11-28"),
  };
  const tests: SellerLetter["tests"] = [
    { by: OWN.laboratory, on: day("2026-11-20"), found: words.table("fibre.viscose.name"), kind: "laboratory" }, { by: OWN.workshop, on: day("2026-11-20"), found: words.table("test.wet-strength"), kind: "bench" },
  ];
  const way: CutDownPlan["ways"][number] = { kind: "edge-off", pieces: [{ left: 0, top: 30, right: 200, bottom: 300 }], shareKept: 0.9, bindingM: 2.02, cost: { range: range(60, 70, 90), currency: "EUR" } };
  const plan: CutDownPlan = {
    reference: OWN.reference, asker: CLEANER,
    rug, size: { widthCm: 200, lengthCm: 300 }, photoTop: "left", damaged: [], isTufted: true, inspected: "no", isProposed: true, workshop: WORKSHOP, figures,
    ways: [way, { ...way, kind: "split-in-two", pieces: [{ left: 0, top: 0, right: 200, bottom: 120 }, { left: 0, top: 160, right: 200, bottom: 300 }], cost: null }],
  };
  return [
    ...JUDGED_RUGS.map((r) => ({ name: `condition report on ${r.name}`, document: conditionReport(report(r)) })),
    { name: "letter to the seller", document: letterToSeller(seller) },
    { name: "letter to the seller after tests", document: letterToSeller({ ...seller, tests, bought: { on: null, price: null, invoice: null }, saidWords: null, labelWords: null, jurisdiction: "other" }) },
    { name: "cut-down plan", document: cutDownPlan(plan) },
    { name: "care card", document: viscoseCareCard({ asker: OWNER, reference: OWN.reference, locale, rug, likely: likelihood(0.95, words), telephone: "01632 960001", workshop: WORKSHOP }) },
    { name: "care card of a cleaner’s customer", document: viscoseCareCard({ asker: CLEANER, reference: OWN.reference, locale, rug, likely: likelihood(0.95, words), telephone: "01632 960001", workshop: WORKSHOP }) },
  ];
}
