import type { Assessment } from "../../triage/assessment";
import type { FibreId } from "../../trade/fibres";
import { capital } from "../../words/capital";
import { methodWhyIn, notStatedIn } from "../../words/judged";
import type { Figures } from "../../words/measures";
import { quotedInside } from "../../words/quoted";
import { wordsIn, type Words } from "../../words/words";
import { moneyEstimate } from "../phrases";
import { heading, paragraph, small, type Block, type PrintedDocument } from "./blocks";
import { inHundred, rangeInHundred } from "./chances";
import { changeBlocks } from "./report-change";
import { prospectBlocks } from "./report-prospects";
import { fieldsOf, seenBlocks, type Inspection, type Measured, type ReportPhoto } from "./report-seen";

/** A laboratory's report as it is told; `part`: what its sample was taken from. */
export interface Reported { readonly by: string; readonly on: string; readonly reference: string | null; readonly part: "pile" | "ground" | "fringe"; readonly found: string }
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
  /** Those that count, oldest first. */
  readonly reports: readonly Reported[];
  readonly inspection: Inspection | null;
  /** Whether cutting it down is considered at all: then what new edges would cost is told. */
  readonly isCutDownConsidered: boolean;
  /** Who of the workshop makes it out. */
  readonly madeBy: string;
  readonly workshop: { readonly name: string; readonly lines: readonly string[] };
  readonly today: string;
  /** The day that ages were counted to, written out. */
  readonly judgedOn: string;
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
  const words = wordsIn(r.figures.locale);
  const { say } = words;
  return {
    title: say("report.title", { reference: r.reference }), language: r.figures.locale, head: r.workshop,
    blocks: [
      paragraph([say("report.of", { rug: r.rug, client: r.client, day: r.today }), ...(r.theirReference ? [say("report.their-reference", { reference: r.theirReference })] : [])].join(" ")),
      paragraph(r.inspection ? say("report.inspected", { by: r.inspection.by, day: r.inspection.on }) : say("report.provisional", { evidence: evidenceOf(r.assessment), shown: r.photos.length > 0 ? "yes" : "no" })),
      heading(say("report.told")),
      paragraph(r.account ? say("report.quoted", { account: quotedInside(r.account.replaceAll(/(?:\r?\n){3,}/gu, "\n\n")) }) : say("report.no-account")),
      heading(say("report.seen")),
      ...seenBlocks(r, words),
      heading(say("report.fibres")),
      ...labelBlocks(r.assessment, words),
      ...r.reports.map(({ by, on, reference, part, found }) => paragraph(say("report.laboratory", { by, day: on, referenced: reference ? "yes" : "no", reference: reference ?? "", part, found }))),
      fibreTable(r, words),
      small(say("report.fibre-range")),
      heading(say("report.causes")),
      ...changeBlocks(r.assessment, words),
      ...causeBlocks(r.assessment, words),
      heading(say("report.considered")),
      {
        kind: "table", caption: say("report.methods-caption"), head: [say("report.method"), say("report.judgement")],
        rows: r.assessment.methods.map((m) => [capital(words.table(`treatment.${m.method}`)), methodWhyIn(words, m.method, m.why)]),
      },
      heading(say("report.prospects")),
      ...prospectBlocks(r, words),
      heading(say("report.money")),
      ...moneyBlocks(r, words),
      heading(say("report.limits")),
      paragraph(say("report.no-cover")),
      paragraph(say("report.interest", { workshop: r.workshop.name })),
      small(say("report.model", { version: r.assessment.modelVersion, day: r.judgedOn })),
      ...(r.inspection ? [] : [paragraph(say("report.made-out", { by: r.madeBy, workshop: r.workshop.name }))]),
      { kind: "signature", lines: r.inspection ? ["", r.inspection.by] : ["", r.madeBy, r.workshop.name] },
    ],
  };
}

/** What a label names, and by whose reading; triage keeps its words with what they say. */
function labelBlocks({ findings }: Assessment, { say }: Words): Block[] {
  const label = findings.find((f) => f.what === "label" && typeof fieldsOf(f)["text"] === "string" && fieldsOf(f)["text"] !== "");
  if (!label) return [];
  return [paragraph(say("report.label", { source: label.strength === "label-photo" ? "photo" : "typed", words: quotedInside(String(fieldsOf(label)["text"]).replace(/\s+/gu, " ")) }))];
}

/** The best evidence of the fibre there is. */
const evidenceOf = ({ findings }: Assessment): "laboratory" | "bench" | "told" => (["laboratory", "bench"] as const).find((strength) => findings.some((f) => f.strength === strength)) ?? "told";

/** Each chance is its range alone: a limit of what words and photos can show puts the figure itself at the end of it, where it would read as the surer one. */
function fibreTable({ assessment, photos }: ConditionReport, words: Words): Block {
  const { say } = words;
  return {
    kind: "table", caption: say("report.fibre-caption", { evidence: evidenceOf(assessment), shown: photos.length > 0 ? "yes" : "no" }), head: [say("report.fibre"), say("report.chance")],
    rows: assessment.fibres.filter((f) => f.probability >= NAMED_FROM).map((f) => [capital(words.table(`fibre.${f.fibre}.name`)), rangeInHundred(f, words)]),
  };
}

function causeBlocks({ mechanisms }: Assessment, words: Words): Block[] {
  const { say } = words;
  const named = mechanisms.filter((m) => m.probability >= NAMED_FROM);
  if (named.length === 0) return [paragraph(say("report.no-cause"))];
  return [{
    kind: "table", caption: say("report.causes-caption"), head: [say("report.cause"), say("report.chance")],
    rows: named.map((m) => [capital(words.table(`mechanism.${m.mechanism}`)), inHundred(m.probability, words)]),
  }];
}

const SILKS: readonly FibreId[] = ["silk", "wool-silk"];
const isSoldAsSilk = (findings: readonly Measured[]): boolean => findings.some((f) => f.what === "sellerSaid" && (f.value === "silk" || f.value === "wool-and-silk"));

/** Ranges of money; how value today is worked out (lib/trade/depreciation.ts), for a reader who has a table of their own. */
function moneyBlocks({ assessment: { money, why, findings, fibres }, isCutDownConsidered }: ConditionReport, words: Words): Block[] {
  const { say } = words;
  if (!money) return [paragraph(why.money ? notStatedIn(words, why.money) : say("report.no-money"))];
  const rows = ([["report.clean", money.clean], ["report.cut-down", isCutDownConsidered ? money.cutDown : null], ["report.replace", money.replace], ["report.value-today", money.valueToday]] as const)
    .flatMap(([what, r]) => (r ? [[say(what), moneyEstimate(r, money.currency, words)]] : []));
  return [
    { kind: "table", caption: say("report.money-caption"), head: [say("report.what"), say("report.range")], rows },
    ...(money.replace ? [small(say("report.how-priced"))] : []),
    ...(money.replace && isSoldAsSilk(findings) && !SILKS.includes(fibres[0]?.fibre ?? "other") ? [small(say("report.sold-as-silk"))] : []),
    ...(money.valueToday && money.replace ? [small(say("report.how-valued", { share: inHundred(money.valueToday.median / money.replace.median, words) }))] : []),
    ...(why.money ? [paragraph(notStatedIn(words, why.money))] : []),
  ];
}
