import "server-only";
import type { BenchTest, Client, Inspection, ThirdParty } from "../store/database";
import type { PrintedDocument } from "../reply/documents/blocks";
import { viscoseCareCard } from "../reply/documents/care-card";
import { conditionReport, type Reported } from "../reply/documents/condition-report";
import type { MoistureRead } from "../reply/documents/report-seen";
import type { WetTold } from "../reply/documents/report-told";
import { cutDownPlan, type CutDecision } from "../reply/documents/cut-down-plan";
import { letterToSeller, type Tested } from "../reply/documents/letter-to-seller";
import { viscoseWord, type DocumentKind } from "../reply/documents/offered";
import { namesSomebody } from "../reply/addressee";
import { rugWordsOf } from "../reply/describe";
import { labelTextOf } from "../reply/facts";
import { actionOf } from "../reply/kept-whole";
import { plain } from "../reply/rug-title";
import { chanceWord } from "../reply/phrases";
import { sellersOwnWords } from "../reply/sellers-words";
import { askerOf } from "../reply/who-asks";
import { UNSAID_PHOTO, type EnquiryAnswers, type QuestionId, type RugAnswers } from "../trade/questions";
import type { Assessment, Range } from "../triage/assessment";
import { capital } from "../words/capital";
import { money } from "../words/measures";
import { wordsIn, type Words } from "../words/words";
import type { WorkshopSettings } from "../workshop/settings";
import { readingsIn, reportIn } from "./bench-findings";
import { sayReadings, sayReport } from "./bench-view";
import { isTestId, testRow } from "./bench-test-schema";
import { quotesWords, reportFields, sellerLetterFields, type ReportFields } from "./document-forms";
import type { newestOf } from "./inspections";
import { isTypedLabelShown } from "./label-reading";
import type { PlanMarks } from "./mark-schema";
import { edgesRange, measurePlan } from "./measured-plan";
import { photoView, rugColours } from "./photo-view";
import { asReported, type ReportedPhoto } from "./reported-photo";
import { isSampleId, SAMPLES } from "./samples";
import type { LaboratoryReport } from "./weighings-schema";
import { dayAndHour, longDay } from "./workshop-day";

/** What a document of a rug is written from, as it stands now. */
export interface DocumentFacts {
  reference: string;
  client: Pick<Client, "name" | "isTrade" | "telephone">;
  parties: readonly Pick<ThirdParty, "kind" | "name" | "reference">[];
  enquiry: EnquiryAnswers;
  /** Whether it is a cleaner's enquiry about a customer's rug. */
  isTrade: boolean;
  answers: RugAnswers;
  /** The questions that the workshop answered, having seen it in a photo. */
  seen: readonly QuestionId[];
  /** When it was told last since when; null where it was not. */
  sinceToldAt: Date | null;
  /** When it was told last whether anything is wet, if it was. */
  wetToldAt: Date;
  /** What was told of it before and otherwise, oldest first. */
  wetBefore: readonly { answer: WetTold["answer"]; at: Date }[];
  /** Which of the rugs of the enquiry this one is, from 1. */
  place: { n: number; of: number };
  photos: readonly ReportedPhoto[];
  assessment: Assessment;
  /** Those that were not withdrawn, oldest first. */
  tests: readonly BenchTest[];
  /** The newest that was not withdrawn, by whether its verdict counts. */
  inspections: ReturnType<typeof newestOf<Inspection>>;
  /** The plan on which a way of cutting the rug down was chosen. */
  plan: PlanMarks | null;
  hasPlan: boolean;
  /** What was decided of cutting it down on a plan of its damage; null where none stands. */
  cutting: CutDecision | null;
  settings: WorkshopSettings;
  now: Date;
}

const dayOf = ({ settings }: DocumentFacts, at: Date) => longDay(dayAndHour(at, settings.timeZone).day, settings.locale);
const wetOf = (f: DocumentFacts) => (f.enquiry.wetNow === undefined ? null : { answer: f.enquiry.wetNow, toldOn: dayOf(f, f.wetToldAt), before: f.wetBefore.map(({ answer, at }) => ({ answer, toldOn: dayOf(f, at) })) });
const rugOf = ({ answers, photos, settings }: DocumentFacts) => rugWordsOf({ answers, colours: rugColours(photos) }, settings);
const headOf = ({ name, address, town, telephone, email }: WorkshopSettings) =>
  ({ name, lines: [address || town, telephone, email].filter((line) => line !== "") });

/** The blocks of one kind of document. `filled` is what its form holds, `madeBy` who makes it. */
export function documentContent(kind: DocumentKind, facts: DocumentFacts, filled: object, madeBy: string): PrintedDocument {
  switch (kind) {
    case "condition-report": return report(facts, reportFields.parse(filled), madeBy);
    case "letter-to-seller": return sellerLetter(facts, sellerLetterFields.parse(filled));
    case "care-card": return viscoseCareCard({ asker: askerOf(facts), reference: facts.reference, telephone: facts.isTrade ? facts.client.telephone ?? "" : facts.settings.telephone, locale: facts.settings.locale, rug: rugOf(facts), likely: chanceWord(viscoseWord(facts.assessment), wordsIn(facts.settings.locale)), workshop: headOf(facts.settings) });
    case "cut-down-plan": return cutDown(facts);
  }
}

/** What a photo was to show; of one that came by mail that was not said until somebody names it. */
function shownIn(photo: ReportedPhoto, words: Words): string {
  const { kind } = photoView(photo);
  return kind === UNSAID_PHOTO ? words.say("report.photo-unsaid") : words.table(`photo.${kind}.ask`);
}

function report(f: DocumentFacts, { theirReference, ...ticks }: ReportFields, madeBy: string): PrintedDocument {
  const { inspections: { counts, overtaken }, settings, answers: { story } } = f;
  const inspectedBy = ({ by, day, found, isBeyondRepair }: Inspection) => ({ by, on: longDay(day, settings.locale), found, isBeyondRepair });
  return conditionReport({
    reference: f.reference, place: f.place, theirReference: theirReference || null, asker: askerOf(f), rug: capital(rugOf(f)), assessment: f.assessment,
    told: { wet: wetOf(f), answers: f.answers, seen: f.seen, sinceToldOn: f.sinceToldAt && dayOf(f, f.sinceToldAt), account: story === undefined ? null : { text: story, isQuoted: quotesWords(ticks, f.isTrade) } },
    photos: f.photos.map((p) => ({ id: p.id, shows: shownIn(p, wordsIn(settings.locale)), takenOn: p.takenAt && dayOf(f, p.takenAt), ...asReported(p) })), isLabelShown: isTypedLabelShown(f.answers.labelText, f.photos),
    reports: f.tests.flatMap((t) => reportedOf(t, f)), tests: f.tests.flatMap((t) => fibresTestedOf(t, f)), moisture: f.tests.flatMap((t) => moistureOf(t, f)),
    cutDown: edgesOf(f), cutting: f.cutting ?? (f.assessment.advice.action === "advise-cut-down" ? "unplanned" : null),
    inspection: counts && inspectedBy(counts), overtaken: overtaken && inspectedBy(overtaken),
    workshop: headOf(settings), madeBy, today: dayOf(f, f.now), judgedOn: longDay(f.assessment.asOf.slice(0, 10), settings.locale), figures: settings,
  });
}

function sellerLetter(f: DocumentFacts, l: ReturnType<typeof sellerLetterFields.parse>): PrintedDocument {
  return letterToSeller({
    client: { name: f.client.name, address: l.clientAddress }, seller: { name: l.sellerName, address: l.sellerAddress }, rug: rugOf(f),
    bought: { on: l.boughtOn || null, price: l.price || null, invoice: l.invoice || null }, saidWords: l.saidWords || null, sellerSaid: f.answers.sellerSaid, labelWords: l.labelWords || null, isUnlabelled: f.answers.labelFound === "none",
    tests: f.tests.filter(isOfThePile).flatMap((t) => testedOf(t, f)), jurisdiction: f.settings.jurisdiction, today: dayOf(f, f.now), locale: f.settings.locale,
  });
}

/** What new edges would cost, where cutting it down is considered: those of the way that was chosen, else as the judgement has it. */
function edgesOf({ plan, cutting, assessment, settings }: DocumentFacts): Range | null {
  if (cutting === "against") return null;
  const measured = plan && measurePlan(plan);
  if (measured && typeof measured !== "string" && measured.chosen) return assessment.money?.cutDown ? edgesRange(measured.chosen, settings.prices.bindingPerM) : null;
  return assessment.advice.action === "advise-cut-down" ? assessment.money?.cutDown ?? null : null;
}

/** The chosen way first, then the others that are left. */
function cutDown(f: DocumentFacts): PrintedDocument {
  const measured = f.plan ? measurePlan(f.plan) : "No plan was drawn of this rug.";
  if (typeof measured === "string") throw new Error(measured);
  const { plan: { widthCm, lengthCm }, photoTop, places, ways, chosen } = measured;
  const { prices, currency } = f.settings;
  const cost = (way: (typeof ways)[number]) => (f.answers.age === "antique" ? null : { range: edgesRange(way, prices.bindingPerM), currency });
  return cutDownPlan({
    reference: f.reference, asker: askerOf(f),
    rug: rugOf(f), size: { widthCm, lengthCm }, photoTop, damaged: places.map((p) => p.outline), isTufted: f.answers.back === "cloth", isProposed: actionOf(f.assessment) === "advise-cut-down", inspected: f.inspections.counts ? "yes" : f.inspections.overtaken ? "before" : "no", workshop: headOf(f.settings), figures: f.settings,
    ways: [...ways].sort((a, b) => Number(b.kind === chosen?.kind) - Number(a.kind === chosen?.kind)).map((w) => ({ kind: w.kind, pieces: w.pieces, shareKept: w.shareKept, bindingM: w.bindingM, cost: cost(w) })),
  });
}

/** Whether a row speaks of the fibre of the pile, which is what was sold: a meter's reading or a test of the fringe says nothing of it. */
const isOfThePile = ({ test, yarn }: BenchTest): boolean => isSampleId(yarn) && SAMPLES[yarn].of.part === "pile" && (!isTestId(test) || testRow(test).speaksFor === "yarn");

/** A test as a letter names it: what was seen, never more than that. */
function testedOf(row: BenchTest, f: DocumentFacts): Tested[] {
  const report = reportIn(row);
  const words = wordsIn(f.settings.locale);
  if (report) return [{ by: report.laboratory, on: longDay(report.reportedOn, f.settings.locale), found: foundBy(report, f), kind: "laboratory" }];
  const found = foundOnBench(row, words);
  return found === null ? [] : [{ by: f.settings.name, on: dayOf(f, row.at), found, kind: "bench" }];
}

/** What a bench test is called and what was seen; null where it is none that is known today. */
function foundOnBench(row: BenchTest, words: Words): string | null {
  if (!isTestId(row.test)) return null;
  const seen = sayReadings(row.test, readingsIn(row), words).map((r) => r.says.charAt(0).toLowerCase() + r.says.slice(1));
  return seen.length > 0 ? [words.table(`test.${row.test}`), ...seen].join(", ") : null;
}

/** A test of a few fibres as a condition report tells it. */
function fibresTestedOf(row: BenchTest, f: DocumentFacts): Pick<Reported, "on" | "part" | "found">[] {
  const found = isTestId(row.test) && testRow(row.test).speaksFor === "yarn" ? foundOnBench(row, wordsIn(f.settings.locale)) : null;
  return found === null || !isSampleId(row.yarn) ? [] : [{ on: dayOf(f, row.at), part: SAMPLES[row.yarn].of.part, found }];
}
function moistureOf(row: BenchTest, f: DocumentFacts): MoistureRead[] {
  const { place, percent } = (row.test === "moisture" ? readingsIn(row) : null) ?? {};
  return typeof percent === "number" && (place === "affected" || place === "untouched") ? [{ on: dayOf(f, row.at), percent, place }] : [];
}

/** A laboratory's report as a condition report tells it. */
function reportedOf(row: BenchTest, f: DocumentFacts): Reported[] {
  const report = reportIn(row);
  if (!report || !isSampleId(row.yarn)) return [];
  return [{ by: report.laboratory, on: longDay(report.reportedOn, f.settings.locale), reference: report.reference || null, part: SAMPLES[row.yarn].of.part, found: foundBy(report, f) }];
}
const foundBy = (report: LaboratoryReport, f: DocumentFacts): string => sayReport(report, wordsIn(f.settings.locale)).at(-1)?.says ?? "";

/** What stands in a document's form at first: what the enquiry knows already. */
export function filledAtFirst(kind: DocumentKind, f: Pick<DocumentFacts, "answers" | "assessment" | "parties" | "settings">): Record<string, string> {
  const { answers, parties } = f;
  if (kind === "condition-report") return { theirReference: parties.find((p) => p.kind === "insurer")?.reference ?? "", leaveOutWords: "", putInWords: "" };
  if (kind !== "letter-to-seller") return {};
  const price = answers.price && answers.currency ? money(answers.price, answers.currency, f.settings.locale) : "";
  const seller = parties.find((p) => p.kind === "seller")?.name ?? "";
  return {
    sellerName: namesSomebody(seller) ? seller : "", boughtOn: answers.boughtYear ? String(answers.boughtYear) : "", price,
    saidWords: sellersOwnWords(answers.sellerWords ?? ""), labelWords: plain(labelTextOf(f.assessment) ?? answers.labelText ?? ""),
  };
}
