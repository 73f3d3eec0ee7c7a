import type { Assessment } from "../../triage/assessment";
import type { FibreId } from "../../trade/fibres";
import { comparedBy } from "../../trade/compared";
import { methodWhyIn, notStatedIn } from "../../words/judged";
import { decimal, DOUBT_FIGURES, smallArea, type Figures } from "../../words/measures";
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
  readonly inspection: Inspection | null;
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
      paragraph(r.inspection ? say("report.inspected", { by: r.inspection.by, day: r.inspection.on }) : say("report.provisional")),
      heading(say("report.told")),
      paragraph(r.account ? say("report.quoted", { account: r.account }) : say("report.no-account")),
      heading(say("report.seen")),
      ...seenBlocks(r, words),
      heading(say("report.fibres")),
      ...labelBlocks(r.assessment, words),
      fibreTable(r.assessment, words),
      heading(say("report.causes")),
      ...causeBlocks(r.assessment, words),
      heading(say("report.considered")),
      {
        kind: "table", caption: say("report.methods-caption"), head: [say("report.method"), say("report.judgement")],
        rows: r.assessment.methods.map((m) => [sentence(words.table(`treatment.${m.method}`)), methodWhyIn(words, m.method, m.why)]),
      },
      heading(say("report.prospects")),
      ...prospectBlocks(r, words),
      heading(say("report.money")),
      ...moneyBlocks(r.assessment, words),
      heading(say("report.limits")),
      paragraph(say("report.no-cover")),
      paragraph(say("report.interest", { workshop: r.workshop.name })),
      small(say("report.model", { version: r.assessment.modelVersion, day: r.judgedOn })),
      { kind: "signature", lines: ["", r.inspection?.by ?? r.workshop.name] },
    ],
  };
}

const sentence = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
/** A chance on paper is never rounded to certainty, nor to none. */
const hundredths = (p: number) => Math.min(99, Math.max(1, Math.round(p * 100)));
const inHundred = (p: number, { say }: Words) => say("print.in-hundred", { n: hundredths(p) });

/** Both ends alike are one number: certainty is never printed, so a laboratory's report leaves 99 and 99. */
const rangeInHundred = ({ low, high }: { low: number; high: number }, words: Words) =>
  hundredths(low) === hundredths(high) ? inHundred(low, words) : words.say("print.in-hundred-range", { low: hundredths(low), high: hundredths(high) });

/** What an inspection found, what was measured, and the photos. */
function seenBlocks({ inspection, assessment, photos, figures }: ConditionReport, words: Words): Block[] {
  const { say } = words;
  const measured = assessment.findings.filter((f) => f.what === "colour-change").map((f) => changeSentence(f, photos, words, figures));
  const areas = assessment.findings.filter((f) => f.what === "damaged-area").map((f) => areaSentence(f, photos, words, figures));
  const listed = [...measured, ...areas];
  return [
    ...(inspection ? [paragraph(inspection.found)] : []),
    ...(measured.length > 0 ? [] : [paragraph(say("report.not-measured"))]),
    ...(listed.length > 0 ? list(listed) : []),
    ...photos.map(({ id, shows, takenOn }, at): Block => ({
      kind: "photo", photoId: id, alternative: say("report.photo", { n: at + 1, shows }),
      caption: takenOn ? say("report.photo-caption-day", { n: at + 1, shows, day: takenOn }) : say("report.photo-caption", { n: at + 1, shows }),
    })),
  ];
}

type Measured = Assessment["findings"][number];
const fieldsOf = ({ value }: Measured) => (typeof value === "object" && !Array.isArray(value) ? value : {}) as Record<string, unknown>;

/** In which of the report's photos something was marked, by its number, and by whom. */
function markedIn({ from, strength }: Measured, photos: readonly ReportPhoto[]): { photo: string; by: "owner" | "workshop" } {
  const at = photos.findIndex(({ id }) => from === `photo:${id}`);
  return { photo: at < 0 ? "none" : String(at + 1), by: strength === "told" ? "owner" : "workshop" };
}

/** The area of the damage that was drawn on a photo, and its share of the rug. */
function areaSentence(found: Measured, photos: readonly ReportPhoto[], { say }: Words, figures: Figures): string {
  const { cm2, uncertainty, share } = fieldsOf(found);
  return say("report.damaged", { ...markedIn(found, photos), area: smallArea(Number(cm2), figures), doubt: smallArea(Number(uncertainty), figures, DOUBT_FIGURES), percent: Math.round(100 * Number(share)) });
}

/** A measured change of colour with its standard uncertainty (ΔE00 of CIEDE2000, ISO/CIE 11664-6; JCGM 100). */
function changeSentence(found: Measured, photos: readonly ReportPhoto[], words: Words, { locale }: Figures): string {
  const { direction, deltaE, uncertainty } = fieldsOf(found);
  const change = { ...markedIn(found, photos), compared: words.table(`compared.${comparedBy(direction)}`), deltaE: decimal(Number(deltaE), locale, 1) };
  return Number(uncertainty) > 0 ? words.say("report.change-doubted", { ...change, doubt: decimal(Number(uncertainty), locale, 1) }) : words.say("report.change", change);
}

/** What a label names, and by whose reading; triage keeps its words with what they say. */
function labelBlocks({ findings }: Assessment, { say }: Words): Block[] {
  const label = findings.find((f) => f.what === "label" && typeof fieldsOf(f)["text"] === "string" && fieldsOf(f)["text"] !== "");
  if (!label) return [];
  return [paragraph(say("report.label", { source: label.strength === "label-photo" ? "photo" : "typed", words: String(fieldsOf(label)["text"]).replace(/\s+/gu, " ") }))];
}

function fibreTable({ fibres, findings }: Assessment, words: Words): Block {
  const { say } = words;
  const evidence = (["laboratory", "bench"] as const).find((strength) => findings.some((f) => f.strength === strength)) ?? "told";
  return {
    kind: "table", caption: say("report.fibre-caption", { evidence }), head: [say("report.fibre"), say("report.chance"), say("report.range")],
    rows: fibres.filter((f) => f.probability >= NAMED_FROM).map((f) => [
      sentence(words.table(`fibre.${f.fibre}.name`)), inHundred(f.probability, words), rangeInHundred(f, words),
    ]),
  };
}

function causeBlocks({ mechanisms }: Assessment, words: Words): Block[] {
  const { say } = words;
  const named = mechanisms.filter((m) => m.probability >= NAMED_FROM);
  if (named.length === 0) return [paragraph(say("report.no-cause"))];
  return [{
    kind: "table", caption: say("report.causes-caption"), head: [say("report.cause"), say("report.chance")],
    rows: named.map((m) => [sentence(words.table(`mechanism.${m.mechanism}`)), inHundred(m.probability, words)]),
  }];
}

function prospectBlocks({ assessment: a, inspection }: ConditionReport, words: Words): Block[] {
  const { say } = words;
  const instead = (why: string | undefined, else_: string) => (why === undefined ? else_ : notStatedIn(words, why));
  return [
    ...list([
      a.improvement ? say("report.improvement", { low: Math.round(a.improvement.low), high: Math.round(a.improvement.high) }) : instead(a.why.improvement, say("report.no-improvement")),
      ...(a.worse === null ? [] : [say("report.worse", { chance: inHundred(a.worse, words) })]),
      a.lifeYears ? say("report.life", { years: yearsPhrase(a.lifeYears, words) }) : instead(a.why.lifeYears, say("report.no-life")),
    ]),
    paragraph(beyondRepair(a, inspection, words)),
    small(say("report.beyond-means")),
  ];
}

/** The verdict is a person's; the chance is the program's and stays provisional. */
function beyondRepair({ beyondRepair: chance }: Assessment, inspection: Inspection | null, words: Words): string {
  if (inspection) return words.say(inspection.isBeyondRepair ? "report.beyond" : "report.not-beyond", { by: inspection.by, day: inspection.on });
  return chance === null ? words.say("report.beyond-not-judged") : words.say("report.beyond-chance", { chance: inHundred(chance, words) });
}

const SILKS: readonly FibreId[] = ["silk", "wool-silk"];
const isSoldAsSilk = (findings: readonly Measured[]): boolean => findings.some((f) => f.what === "sellerSaid" && (f.value === "silk" || f.value === "wool-and-silk"));

/** Ranges of money; how value today is worked out (lib/trade/depreciation.ts), for a reader who has a table of their own. */
function moneyBlocks({ money, why, findings, fibres }: Assessment, words: Words): Block[] {
  const { say } = words;
  if (!money) return [paragraph(why.money ? notStatedIn(words, why.money) : say("report.no-money"))];
  const rows = ([["report.clean", money.clean], ["report.cut-down", money.cutDown], ["report.replace", money.replace], ["report.value-today", money.valueToday]] as const)
    .flatMap(([what, r]) => (r ? [[say(what), moneyPhrase(r, money.currency, words)]] : []));
  return [
    { kind: "table", caption: say("report.money-caption"), head: [say("report.what"), say("report.range")], rows },
    ...(money.replace ? [small(say("report.how-priced"))] : []),
    ...(money.replace && isSoldAsSilk(findings) && !SILKS.includes(fibres[0]?.fibre ?? "other") ? [small(say("report.sold-as-silk"))] : []),
    ...(money.valueToday && money.replace ? [small(say("report.how-valued", { share: inHundred(money.valueToday.median / money.replace.median, words) }))] : []),
    ...(why.money ? [paragraph(notStatedIn(words, why.money))] : []),
  ];
}
