import { fibreName } from "../../trade/fibres";
import { mechanismName } from "../../trade/damage";
import { METHODS } from "../../trade/care";
import type { Assessment, Range } from "../../triage/assessment";
import type { Figures } from "../../words/measures";
import { wordsIn, type Words } from "../../words/words";
import { moneyPhrase, yearsPhrase } from "../phrases";
import { heading, list, paragraph, small, type Block, type PrintedDocument } from "./blocks";

/** A named person's own inspection; without one a report is provisional. */
export interface Inspection { readonly by: string; readonly on: string; readonly found: string; readonly isBeyondRepair: boolean }
export interface ReportPhoto { readonly id: string; readonly shows: string; readonly takenOn: string | null }
export interface ConditionReport {
  readonly reference: string;
  /** The insurer's own reference, quoted; null where none was given. */
  readonly theirReference: string | null;
  readonly client: string;
  readonly rug: string;
  /** The owner's account in their own words; null where they gave none. */
  readonly account: string | null;
  readonly assessment: Assessment;
  readonly photos: readonly ReportPhoto[];
  /** Measured changes of colour, each a sentence with its range. */
  readonly measured: readonly string[];
  readonly inspection: Inspection | null;
  readonly workshop: { readonly name: string; readonly lines: readonly string[] };
  readonly today: string;
  /** How sums are written. */
  readonly figures: Figures;
}

/** A cause is named from this chance on. *elicited* */
const NAMED_FROM = 0.05;

/**
 * What was seen and judged of a rug, for whoever needs it on paper. Causes as probabilities; beyond economic repair only by
 * a named person's inspection; not a word on cover, fault or what an insurer decides; our own interest disclosed.
 */
export function conditionReport(r: ConditionReport): PrintedDocument {
  return {
    title: `Condition report ${r.reference}`, language: r.figures.locale, head: r.workshop,
    blocks: [
      paragraph(`${r.rug}, owned by ${r.client}. Written on ${r.today}.${r.theirReference ? ` Your reference: ${r.theirReference}.` : ""}`),
      paragraph(r.inspection ? `Inspected by ${r.inspection.by} on ${r.inspection.on}.` : "Provisional, not inspected: this report goes by photos and by what we were told."),
      heading("What the owner told us"),
      paragraph(r.account ? `“${r.account}”` : "No account was given beyond the answers to our questions."),
      heading("What was seen"),
      ...(r.inspection ? [paragraph(r.inspection.found)] : []),
      ...(r.measured.length > 0 ? list(r.measured) : [paragraph("No change of colour was measured.")]),
      ...r.photos.map((p): Block => ({ kind: "photo", photoId: p.id, alternative: `Photo: ${p.shows}`, caption: `${p.shows}${p.takenOn ? `, taken ${p.takenOn}` : ""}.` })),
      heading("What it is probably made of"),
      fibreTable(r.assessment),
      heading("What has probably happened"),
      ...causeBlocks(r.assessment),
      heading("What was considered"),
      { kind: "table", caption: "Methods and why", head: ["Method", "Judgement"], rows: r.assessment.methods.map((m) => [sentence(METHODS[m.method].name), m.why]) },
      heading("Prospects"),
      ...prospectBlocks(r),
      heading("Cost and value"),
      ...moneyBlocks(r.assessment, wordsIn(r.figures.locale)),
      heading("What this report does not say"),
      paragraph("It says nothing about cover, fault or what anybody owes: those are for others to decide, by your local law. Probabilities are stated as they were worked out from the evidence named; an inspection and tests would change them."),
      paragraph(`${r.workshop.name} earns its living from cleaning and repairing rugs. Weigh this report with that in mind.`),
      small(`Model of judgement ${r.assessment.modelVersion}; ages counted from ${r.assessment.asOf.slice(0, 10)}.`),
      { kind: "signature", lines: ["", r.inspection?.by ?? r.workshop.name] },
    ],
  };
}

const percent = (p: number) => `${Math.round(p * 100)} in 100`;
const sentence = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

function fibreTable({ fibres, findings }: Assessment): Block {
  const strongest = findings.some((f) => f.strength === "laboratory") ? "a laboratory's report" : findings.some((f) => f.strength === "bench") ? "a bench test" : "words and photos";
  return {
    kind: "table", caption: `Fibre of the pile, by ${strongest}`, head: ["Fibre", "Chance", "Range"],
    rows: fibres.filter((f) => f.probability >= NAMED_FROM).map((f) => [sentence(fibreName(f.fibre)), percent(f.probability), `${percent(f.low)} to ${percent(f.high)}`]),
  };
}

function causeBlocks({ mechanisms }: Assessment): Block[] {
  const named = mechanisms.filter((m) => m.probability >= NAMED_FROM);
  if (named.length === 0) return [paragraph("Nothing that we were told or shown points to a cause.")];
  return [
    { kind: "table", caption: "Causes, each by itself; several can hold together", head: ["Cause", "Chance"], rows: named.map((m) => [sentence(mechanismName(m.mechanism)), percent(m.probability)]) },
  ];
}

const perCentRange = ({ low, high }: Range) => `between ${Math.round(low)} and ${Math.round(high)} per cent`;

function prospectBlocks({ assessment: a, inspection, figures }: ConditionReport): Block[] {
  return [
    ...list([
      a.improvement ? `With the best method still open, ${perCentRange(a.improvement)} of the colour change may come back.` : (a.why.improvement ?? "No improvement can be stated."),
      ...(a.worse === null ? [] : [`The chance that cleaning makes it worse is about ${percent(a.worse)}.`]),
      a.lifeYears ? `In ordinary use it has ${yearsPhrase(a.lifeYears, wordsIn(figures.locale))} left.` : (a.why.lifeYears ?? "No life can be stated."),
    ]),
    paragraph(beyondRepair(a, inspection)),
  ];
}

/** The verdict is a person's; the chance is the program's and stays provisional. */
function beyondRepair({ beyondRepair: chance }: Assessment, inspection: Inspection | null): string {
  if (inspection) return inspection.isBeyondRepair ? `Beyond economic repair, in the judgement of ${inspection.by}, who inspected it on ${inspection.on}.` : `Not beyond economic repair, in the judgement of ${inspection.by}, who inspected it on ${inspection.on}.`;
  return chance === null ? "Whether it is beyond economic repair was not judged: provisional, not inspected." : `Provisional, not inspected: the chance that it is beyond economic repair is about ${percent(chance)}.`;
}

/** How value today is worked out (lib/trade/depreciation.ts), for a reader who has a table of their own. */
const HOW_VALUED =
  "Value today is the price of a new one less the years of use, by a straight line over the useful lives that published tables give floor coverings of this kind. The tables contradict each other, so the range is wide.";

function moneyBlocks({ money, why }: Assessment, words: Words): Block[] {
  if (!money) return [paragraph(why.money ?? "No costs can be stated.")];
  const rows = ([["Cleaning", money.clean], ["Cutting down and new edges", money.cutDown], ["A new one like it", money.replace], ["Value today: new, less depreciation", money.valueToday]] as const)
    .flatMap(([what, r]) => (r ? [[what, moneyPhrase(r, money.currency, words)]] : []));
  return [
    { kind: "table", caption: "Ranges; confirmed only when the rug was seen", head: ["What", "Range"], rows },
    ...(money.valueToday && money.replace ? [small(`${HOW_VALUED} In the middle of it, ${percent(money.valueToday.median / money.replace.median)} of the price new are left.`)] : []), ...(why.money ? [paragraph(why.money)] : []),
  ];
}
