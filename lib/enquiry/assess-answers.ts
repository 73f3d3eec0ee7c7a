import { composeDraft, type ComposedDraft } from "../reply/draft";
import { rugTitleOf, titleOf } from "../reply/describe";
import type { LibraryRow } from "../reply/library";
import type { RugForDraft } from "../reply/facts";
import type { DraftInput } from "../reply/pieces";
import { assess } from "../triage/assess";
import type { Assessment, TriageSettings } from "../triage/assessment";
import { SPOILT_PHOTO, type Finding } from "../triage/finding";
import { findingsFromAnswers } from "../triage/findings-from-answers";
import type { EnquiryAnswers, QuestionId, RugAnswers, ShownKind } from "../trade/questions";
import { openTests } from "../workshop/open-tests";
import type { WorkshopSettings } from "../workshop/settings-schema";
import type { ColourShare } from "./views";
import { urgencyOfStory, wetByWords, type FirstAidKind } from "./wet-by-words";

export interface EnquiryToAssess {
  channel: TriageSettings["channel"];
  /** ISO 8601 instant the ages count from. */
  asOf: string;
  enquiry: EnquiryAnswers;
  /** Whether it is wet now was told later than the rest. */
  isWetToldLater?: boolean;
  /** Whether it was told more than a day after when it happened and what was put on it. */
  isWetToldDayLater?: boolean;
  /**
   * At least one; `colours` of its face photo, empty without photos; `photos`: the kinds that were sent, so that none is
   * asked for again; `spoilt`: those that came out too dark, light or blurred, so that they are; `seen`: answers that the workshop saw in a photo; `tests`: what was found on the bench or by a laboratory, where anything was;
   * `measured`: in its photos; `labelShown`: a label read in one says what was typed.
   */
  rugs: readonly {
    answers: RugAnswers; colours: readonly ColourShare[]; photos: readonly ShownKind[]; spoilt?: readonly ShownKind[];
    seen?: readonly QuestionId[]; tests?: readonly Finding[]; measured?: readonly Finding[]; labelShown?: boolean;
  }[];
  client: DraftInput["client"];
  workshop: WorkshopSettings;
  /** The workshop's paragraphs; absent: those that are shipped. */
  library?: readonly LibraryRow[];
}
export interface AssessedRug { title: string; findings: Finding[]; settings: TriageSettings; assessment: Assessment }
export interface AssessedEnquiry {
  /** What the slip in the queue is headed with. */
  title: string;
  rugs: AssessedRug[];
  draft: ComposedDraft;
}

/** The same seed for every rug, so that the same answers give the same intervals. */
const SEED = 1;

/** From what was told to what is believed and what to answer. Pure; the server and the command line call this one function. */
export function assessAnswers(e: EnquiryToAssess): AssessedEnquiry {
  const settings = triageSettings(e);
  const rugs = e.rugs.map(({ answers, colours, photos, spoilt = [], seen = [], tests = [], measured = [] }) => {
    const told = findingsFromAnswers(answers, e.enquiry, seen);
    const findings = [...told.filter((t) => !isBelied(t, tests)), ...photosSent("photo", photos), ...photosSent(SPOILT_PHOTO, spoilt), ...measured.filter((m) => !repeats(m, told)), ...tests];
    return { title: rugTitleOf({ answers, colours }), findings, settings, assessment: assess(findings, settings, e.asOf) };
  });
  const stories = e.rugs.flatMap(({ answers }) => urgencyOfStory(answers, e.enquiry) ?? []);
  return { title: enquiryTitle(e), rugs, draft: composeDraft(draftInput({ ...e, rugs: e.rugs.map((r) => ({ ...r, labelHeard: e.channel === "telephone" })), wetByWords: wetByWords(rugs.map((r) => r.assessment), stories) }, rugs)) };
}

/** Which photos are there is a finding of its own: it says nothing of the fibre, but nothing is asked for twice. */
const photosSent = (what: string, kinds: readonly ShownKind[]): Finding[] =>
  (kinds.length > 0 ? [{ what, value: [...new Set(kinds)].sort(), strength: "told", from: "client" }] : []);

/** A plan stands on a size: where that is the one told, it is no news. */
const repeats = (measured: Finding, told: readonly Finding[]): boolean =>
  measured.what === "size" && told.some((t) => t.what === "size" && JSON.stringify(t.value) === JSON.stringify(measured.value));

/** Nobody found a label, but one was read in a photo since. */
const isBelied = (told: Finding, later: readonly Finding[]): boolean => told.what === "labelFound" && later.some((t) => t.what === "label");

type Titled = Pick<EnquiryToAssess, "enquiry" | "workshop"> & { rugs: readonly Pick<EnquiryToAssess["rugs"][number], "answers" | "colours">[] };
/** What an enquiry is headed with: a single rug speaks for itself; of several the first is named. */
export function enquiryTitle({ rugs, enquiry, workshop }: Titled): string {
  const first = titleOf({ answers: rugs[0]?.answers ?? {}, colours: rugs[0]?.colours ?? [], enquiry }, workshop);
  return rugs.length > 1 ? `${rugs.length} rugs. ${first}` : first;
}

type ToAnswer = Pick<EnquiryToAssess, "client" | "workshop" | "enquiry" | "library"> & { rugs: readonly ({ answers: RugAnswers; photos: { readonly length: number } } & Pick<RugForDraft, "labelHeard" | "labelShown" | "messages" | "inspection">)[]; wetByWords: FirstAidKind | null; saidOfWater?: RugForDraft["saidOfWater"] };

/** What a reply to assessments that exist already is written from. */
export function draftInput(e: ToAnswer, assessed: readonly Pick<AssessedRug, "title" | "assessment">[]): DraftInput {
  const assessments = assessed.map(({ title, assessment }, at) => ({ title, assessment, answers: e.rugs[at]?.answers ?? {}, photos: e.rugs[at]?.photos.length ?? 0, labelHeard: e.rugs[at]?.labelHeard ?? false, labelShown: e.rugs[at]?.labelShown ?? false, messages: e.rugs[at]?.messages ?? [], inspection: e.rugs[at]?.inspection ?? null, wetByWords: e.wetByWords, saidOfWater: e.saidOfWater ?? null }));
  return { assessments, client: e.client, workshop: e.workshop, enquiry: e.enquiry, ...(e.library ? { library: e.library } : {}) };
}

function triageSettings({ channel, enquiry, isWetToldLater = false, isWetToldDayLater = false, workshop }: EnquiryToAssess): TriageSettings {
  const { currency, priors, prices, losses, emergencyNumber, reagents } = workshop;
  const [reason, wetNow] = [enquiry.reason ?? null, enquiry.wetNow ?? null];
  return { currency, priors, channel, reason, wetNow, ...(isWetToldLater ? { isWetToldLater } : {}), ...(isWetToldDayLater ? { isWetToldDayLater } : {}), prices, losses, seed: SEED, emergencyNumber, benchTests: openTests(reagents) };
}
