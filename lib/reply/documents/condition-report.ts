import type { Assessment, Range } from "../../triage/assessment";
import { CHANCE_WORDS, type ChanceWord } from "../../trade/words-for-chance";
import { capital } from "../../words/capital";
import { chanceInWhy, cutKey, methodWhyIn } from "../../words/judged";
import type { Figures } from "../../words/measures";
import { quotedInside } from "../../words/quoted";
import { wordsIn, type Words } from "../../words/words";
import { actionOf } from "../kept-whole";
import { mechanismIn } from "../mechanism-name";
import { cappedWord, chanceWord, likelihood } from "../phrases";
import { askedBy, type Asker } from "../who-asks";
import { heading, paragraph, small, type Block, type PrintedDocument } from "./blocks";
import { inHundred, rangeInHundred } from "./chances";
import { cautionBlocks } from "./report-cautions";
import type { CutDecision } from "./cut-down-plan";
import { changeBlocks } from "./report-change";
import { moneyBlocks } from "./report-money";
import { prospectBlocks } from "./report-prospects";
import { fieldsOf, seenBlocks, type Inspection, type MoistureRead, type ReportPhoto } from "./report-seen";
import { pileBlocks, toldBlocks, type Told } from "./report-told";

/** A laboratory's report as it is told; `part`: what its sample was taken from. */
export interface Reported { readonly by: string; readonly on: string; readonly reference: string | null; readonly part: "pile" | "ground" | "fringe"; readonly found: string }
export interface ConditionReport {
  readonly reference: string;
  /** Which of the rugs of its enquiry this one is, from 1: each has a report of its own. */
  readonly place: { readonly n: number; readonly of: number };
  /** The insurer's own reference, quoted; null where none was given. */
  readonly theirReference: string | null;
  readonly asker: Asker;
  readonly rug: string;
  readonly told: Told;
  readonly assessment: Assessment;
  readonly photos: readonly ReportPhoto[];
  /** What was typed of the label is what a photo shows. */
  readonly isLabelShown: boolean;
  /** Those that count, oldest first. */
  readonly reports: readonly Reported[];
  /** Tests of fibres, and readings of the moisture meter, that count, oldest first. */
  readonly tests: readonly Pick<Reported, "on" | "part" | "found">[];
  readonly moisture: readonly MoistureRead[];
  readonly inspection: Inspection | null;
  /** One that flood water was told of only after: what it found stands with its day, and its verdict counts no more. Absent: none. */
  readonly overtaken?: Inspection | null;
  /** What new edges would cost; null where cutting it down is not considered. */
  readonly cutDown: Range | null;
  /** What was decided of cutting it down; null where that was not considered. */
  readonly cutting: CutDecision | null;
  /** Who of the workshop makes it out. */
  readonly madeBy: string;
  readonly workshop: { readonly name: string; readonly lines: readonly string[] };
  readonly today: string;
  /** The day that ages were counted to, written out. */
  readonly judgedOn: string;
  /** How sums are written. */
  readonly figures: Figures;
}

/** From and to how many in 100 a word of the published scale holds. */
const band = (words: string): Pick<ChanceWord, "from" | "to"> => CHANCE_WORDS.find((row) => row.words === words) ?? { from: 0, to: 0 };
const SCALE = { very: band("very likely").from, likely: band("likely").from, even: band("about as likely as not").from, least: band("very unlikely").to };

/** A fibre or a cause is named from this chance on. *elicited* */
const NAMED_FROM = 0.05;

/**
 * What was seen and judged of a rug, for whoever needs it on paper. Causes as probabilities; beyond economic repair only by
 * a named person's inspection; not a word on cover, fault or what an insurer decides; our own interest disclosed.
 */
export function conditionReport(r: ConditionReport): PrintedDocument {
  const words = wordsIn(r.figures.locale);
  const { say } = words;
  return {
    title: say("report.title", { reference: r.reference, n: r.place.n, rugs: r.place.of, of: r.place.of > 1 ? "several" : "one" }), language: r.figures.locale, head: r.workshop,
    blocks: [
      paragraph([say("report.of", { rug: r.rug, asked: askedBy(r.asker, words), day: r.today }), ...(r.theirReference ? [say("report.their-reference", { reference: r.theirReference })] : [])].join(" ")),
      paragraph(r.inspection ? say("report.inspected", { by: r.inspection.by, day: r.inspection.on }) : provisional(r, words)),
      ...cautionBlocks(r.assessment, words),
      heading(say("report.told")),
      ...toldBlocks({ ...r, ofRugs: r.place.of }, words),
      heading(say("report.seen")),
      ...seenBlocks(r, words),
      heading(say("report.fibres")),
      ...labelBlocks(r, words),
      ...r.reports.map(({ by, on, reference, part, found }) => paragraph(say("report.laboratory", { by, day: on, referenced: reference ? "yes" : "no", reference: reference ?? "", part, found }))),
      ...r.tests.map(({ on, part, found }) => paragraph(say("report.tested", { part, workshop: r.workshop.name, day: on, found }))),
      ...pileBlocks(r, words),
      paragraph(say("report.chances")),
      fibreTable(r, words),
      small([say("report.fibre-words", SCALE), say("report.fibre-range", { least: Math.round(NAMED_FROM * 100) })].join(" ")),
      heading(say("report.causes")),
      ...changeBlocks(r.assessment, words),
      ...causeBlocks(r.assessment, words),
      heading(say("report.considered")),
      ...methodBlocks(r, words),
      heading(say("report.prospects")),
      ...prospectBlocks(r, words),
      heading(say("report.money")),
      ...moneyBlocks(r, words),
      heading(say("report.limits")),
      paragraph(say("report.no-cover")),
      paragraph(say("report.interest", { workshop: r.workshop.name })),
      small(say("report.model", { version: r.assessment.modelVersion, day: r.judgedOn })),
      ...(r.inspection ? [] : [paragraph(say("report.made-out", { by: r.madeBy, workshop: r.workshop.name, inspected: r.overtaken ? "before" : "no" }))]),
      { kind: "signature", lines: r.inspection ? ["", r.inspection.by] : ["", r.madeBy, r.workshop.name] },
    ],
  };
}

/** What a report goes by that counts no inspection, and of one that was overtaken, when it was. */
function provisional(r: ConditionReport, { say }: Words): string {
  const { overtaken: before } = r;
  const goesBy = say("report.provisional", { inspected: before ? "before" : "no", evidence: evidenceOf(r), shown: r.photos.length > 0 ? "yes" : "no" });
  return before ? `${goesBy} ${say("report.overtaken", { by: before.by, day: before.on })}` : goesBy;
}

/** The name of the way that was chosen; empty where none was. */
function cutWay(cutting: CutDecision, words: Words): string {
  const key = cutKey(cutting);
  return key === null ? "" : words.table(key);
}

/** Every method with its why, and what the chance in it is of; and what was decided of cutting the rug down. */
function methodBlocks({ assessment, told: { wet }, cutting, inspection }: ConditionReport, words: Words): Block[] {
  const { say } = words;
  const { methods } = assessment;
  const isTogether = methods.some((m) => chanceInWhy(m.why) !== null);
  return [
    {
      kind: "table", caption: say("report.methods-caption"), head: [say("report.method"), say("report.judgement")],
      rows: [
        ...methods.map((m) => [capital(words.table(`treatment.${m.method}`)), methodWhyIn(words, m.method, m.why, (chance) => inHundred(chance / 100, words))]),
        ...(cutting === null ? [] : [[say("report.cutting"), say("report.cutting-decided", { decision: cutting, inspected: inspection ? "yes" : "no", way: cutWay(cutting, words), proposed: actionOf(assessment) === "advise-cut-down" ? "yes" : "no" })]]),
      ],
    },
    ...(wet?.answer === "wet" || wet?.answer === "damp" ? [paragraph(say("report.when-dry"))] : []),
    ...(isTogether ? [small(say("report.together"))] : []),
  ];
}

/** What a label names, and by whose reading; triage keeps its words with what they say. */
function labelBlocks({ assessment: { findings }, isLabelShown }: ConditionReport, { say }: Words): Block[] {
  const label = findings.find((f) => f.what === "label" && typeof fieldsOf(f)["text"] === "string" && fieldsOf(f)["text"] !== "");
  if (!label) return [];
  return [paragraph(say("report.label", { source: label.strength === "label-photo" ? "photo" : isLabelShown ? "shown" : "typed", words: quotedInside(String(fieldsOf(label)["text"]).replace(/\s+/gu, " ")) }))];
}

type Evidence = "laboratory" | "bench" | "told";
/** The best evidence of fibres there is, of all its parts or of the pile: what was read of moisture or in a dye test says nothing of them. */
const evidenceOf = ({ reports, tests }: Pick<ConditionReport, "reports" | "tests">): Evidence => (reports.length > 0 ? "laboratory" : tests.length > 0 ? "bench" : "told");
const evidenceOfPile = ({ reports, tests }: ConditionReport): Evidence => evidenceOf({ reports: reports.filter(isOfPile), tests: tests.filter(isOfPile) });
const isOfPile = ({ part }: Pick<Reported, "part">): boolean => part === "pile";

/**
 * Each chance is the word of the letters and its range alone: a limit of what words and photos can show puts the figure itself at the
 * end of it, where it would read as the surer one.
 */
function fibreTable(report: ConditionReport, words: Words): Block {
  const { assessment, photos } = report;
  const { say } = words;
  return {
    kind: "table", caption: say("report.fibre-caption", { evidence: evidenceOfPile(report), shown: photos.length > 0 ? "yes" : "no" }), head: [say("report.fibre"), say("report.in-words"), say("report.chance")],
    rows: assessment.fibres.filter((f) => f.probability >= NAMED_FROM).map((f) => [capital(words.table(`fibre.${f.fibre}.name`)), capital(chanceWord(cappedWord(f.words), words)), capital(rangeInHundred(f, words))]),
  };
}

function causeBlocks(assessment: Assessment, words: Words): Block[] {
  const { say } = words;
  const named = assessment.mechanisms.filter((m) => m.probability >= NAMED_FROM);
  if (named.length === 0) return [paragraph(say("report.no-cause"))];
  return [{
    kind: "table", caption: say("report.causes-caption"), head: [say("report.cause"), say("report.in-words"), say("report.chance")],
    rows: named.map((m) => [capital(mechanismIn(assessment, m.mechanism, words)), capital(likelihood(m.probability, words)), capital(say("report.about-chance", { chance: inHundred(m.probability, words) }))]),
  }];
}
