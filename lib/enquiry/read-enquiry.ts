import "server-only";
import { mailConfigured } from "../mail/outbox";
import { senderOf } from "../mail/sender";
import { documentsOffered } from "../reply/documents/offered";
import { isTradeAsking } from "../reply/who-asks";
import { suppressedWhy } from "../mail/suppression";
import { forbids } from "../staff/deeds";
import { database, type Prisma } from "../store/database";
import { NEWEST_FIRST, OLDEST_FIRST } from "../store/row-order";
import { longDate } from "../words/measures";
import { deskWords } from "../words/words";
import { readSettings, type WorkshopSettings } from "../workshop/settings";
import { askedOfUs } from "./asked";
import { authorise, NOT_THERE } from "./authorise";
import { benchTestView } from "./bench-view";
import { ok, type Caller, type Result } from "./caller";
import { correctionsIn } from "./corrections";
import { planLack } from "./chosen-plan";
import { draftToday } from "./draft-today";
import { draftView, hasDraft, sinceView } from "./draft-view";
import { DOCUMENT_PARTS, documentView } from "./document-view";
import { isByClient, wordsWithoutPlace } from "./heard";
import { historyOf } from "./history";
import { inspectedIn, isOvertaken, STANDING_INSPECTIONS } from "./inspections";
import { LETTER_PARTS, letterView, undeliveredOf } from "./letter-view";
import { meanwhileOf } from "./meanwhile";
import { markersOf, measurementView } from "./measurement-view";
import { messagesIn, messageView } from "./messages";
import { outdatedOf } from "./outdated";
import { outdatedView } from "./outdated-letter";
import { peopleNames } from "./people-names";
import { photoViews, rugColours } from "./photo-view";
import { postView } from "./post-view";
import { reasonsGiven } from "./promises";
import { byNeed, sentenceFor, toldOf } from "./slip";
import { isWaitingForUs, nextStates, WAITING_FOR_US } from "./states";
import { answeredAt, assessmentOf, enquiryAnswersOf, rugAnswersOf, seenOf } from "./stored";
import { unopenedPhotos } from "./unopened";
import { urgenciesOfWords } from "./unread-letters";
import { urgencyWhyTold } from "./urgency-why";
import type { EnquiryView, RugView } from "./views";
import { waitingInPost } from "./waiting-in-post";

const PARTS = {
  client: true,
  parties: true,
  rugs: {
    orderBy: { position: "asc" },
    include: {
      answers: true, photos: { orderBy: { position: "asc" }, include: { label: true, measurements: { where: { withdrawnAt: null }, orderBy: OLDEST_FIRST.at } } },
      assessments: { orderBy: NEWEST_FIRST.createdAt, take: 1 }, benchTests: { orderBy: OLDEST_FIRST.at }, inspections: { ...STANDING_INSPECTIONS, take: 1 },
    },
  },
  draft: {
    include: {
      waitingBy: { select: { name: true } }, enclosures: true,
      revisions: { orderBy: { number: "desc" }, take: 1, include: { author: { select: { name: true } } } },
    },
  },
  letters: { orderBy: OLDEST_FIRST.createdAt, include: LETTER_PARTS },
  documents: { orderBy: OLDEST_FIRST.createdAt, select: DOCUMENT_PARTS },
  audit: { orderBy: OLDEST_FIRST.at },
  post: { orderBy: OLDEST_FIRST.arrivedAt },
} as const satisfies Prisma.EnquiryInclude;
type Row = Prisma.EnquiryGetPayload<{ include: typeof PARTS }>;

/** Everything the enquiry page shows, and what this person may do there now. */
export async function readEnquiry(caller: Caller, enquiryId: string, now: Date): Promise<Result<EnquiryView>> {
  const no = authorise(caller, "read-desk");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  const row = await database().enquiry.findUnique({ where: { id: enquiryId }, include: PARTS });
  if (!row) return NOT_THERE;
  const named = [
    ...row.rugs.flatMap((r) => [...r.benchTests.flatMap((t) => [t.staffId, t.withdrawnById]), ...markersOf(r.photos.flatMap((p) => p.measurements))]),
    ...row.post.map((p) => p.broughtById),
  ];
  const settings = await readSettings();
  const [earlier, place, history, nameOf, suppressed, today, meanwhile, withoutPlace, inPost, overtaken, asItIs, outdated] = await Promise.all([
    earlierOf(row), placeOf(enquiryId), historyOf(row, deskWords(settings.locale), settings), peopleNames(named), row.client.email ? suppressedWhy(database(), row.client.email) : null,
    row.draft && hasDraft(row.draft) && isWaitingForUs(row.state) ? draftToday(database(), { enquiryId, number: row.draft.number }) : null,
    meanwhileOf(database(), row),
    row.draft && hasDraft(row.draft) ? wordsWithoutPlace(database(), { enquiryId, number: row.draft.number }) : [],
    waitingInPost(database(), row.client.email),
    outdatedOf(database(), { enquiryId }),
    row.draft?.waitingNumber != null ? reasonsGiven(database(), { enquiryId, number: row.draft.waitingNumber }).then((given) => given.asItIs) : [],
    outdatedView(database(), row),
  ]);
  const { answers } = enquiryAnswersOf(row.answers);
  const isMailConfigured = mailConfigured();
  return ok({
    id: row.id,
    reference: row.reference,
    title: row.title,
    sentence: sentenceFor(row),
    state: row.state,
    stateSince: row.stateSince.toISOString(),
    channel: row.channel,
    submittedAt: row.submittedAt.toISOString(),
    urgency: row.urgency,
    urgencyWhy: urgencyWhyTold(row),
    client: { name: row.client.name, email: row.client.email, telephone: row.client.telephone, isTrade: row.client.isTrade, suppressedWhy: suppressed, earlier },
    parties: row.parties.map(({ kind, name, reference }) => ({ kind, name, reference })),
    answers,
    rugs: row.rugs.map((r) => rugView(r, { row, isTrade: isTradeAsking(row.client, answers), nameOf, settings, from: { posts: row.post, audit: row.audit } })),
    undelivered: undeliveredOf(row.letters, isMailConfigured),
    meanwhile,
    outdated,
    draft: draftView(row.draft, today, caller.staffId),
    heard: row.audit.findLast(isByClient)?.id ?? null,
    wordsWithoutPlace: withoutPlace.filter((m) => m.other === null).length,
    otherWordsWithoutPlace: withoutPlace.filter((m) => m.other !== null).length,
    inPost,
    since: sinceView(today),
    asked: row.draft && today ? await askedOfUs(database(), { enquiryId, number: row.draft.number }, today) : null,
    letters: row.letters.map((l) => letterView(l, { now, isMailConfigured, holdMinutes: settings.holdMinutes })),
    documents: row.documents.map((d) => documentView(d, row.draft?.id ?? null, overtaken)),
    post: row.post.map((p) => postView({ ...p, enquiry: null }, nameOf)),
    history,
    may: mayNow(caller, row),
    waitsForSecond: row.draft?.waitingNumber != null ? { by: row.draft.waitingBy?.name ?? "somebody", sendAt: row.draft.waitingSendAt?.toISOString() ?? null, asItIs } : null,
    place,
    sender: senderOf(settings),
    holdMinutes: settings.holdMinutes,
  });
}

function rugView(rug: Row["rugs"][number], { row, isTrade, nameOf, settings, from }: { row: Row; isTrade: boolean; nameOf: (staffId: string | null) => string; settings: Pick<WorkshopSettings, "currency" | "locale" | "timeZone">; from: Parameters<typeof messagesIn>[1] }): RugView {
  const assessment = rug.assessments[0] ? assessmentOf(rug.assessments[0].result) : null;
  const answers = rugAnswersOf(rug.answers);
  const messages = messagesIn(rug.answers, from);
  const since = answeredAt(rug.answers, "since");
  const { currency, locale } = settings;
  return {
    id: rug.id,
    title: rug.title,
    messages: messages.map(messageView),
    corrections: correctionsIn(messages, { rugId: rug.id, given: { ...enquiryAnswersOf(row.answers).answers, ...answers }, audit: row.audit }),
    answers,
    sinceToldOn: since && longDate(since, settings),
    seen: seenOf(rug.answers),
    photos: photoViews(rug.photos, answers.labelText),
    // What comes by mail comes with the first rug.
    unopened: rug.id === row.rugs[0]?.id ? unopenedPhotos({ submittedAt: row.submittedAt, posts: row.post, audit: row.audit, answers: rug.answers, photos: rug.photos }) : [],
    colours: rugColours(rug.photos),
    assessment,
    letter: assessment && toldOf({ ...row, letters: ourLetters(row) }, { ...rug, assessment, inspection: inspectedIn(rug, locale) }),
    currencyNow: assessment?.money && assessment.money.currency !== currency ? currency : null,
    inspection: inspectionView(rug),
    offers: documentsOffered({ assessment, hasPlan: planLack(rug.photos) === null, isTrade }),
    planLack: planLack(rug.photos),
    measured: rug.photos.flatMap((p) => p.measurements).flatMap((m) => measurementView(m, nameOf)),
    tests: rug.benchTests.map((t) => benchTestView(t, assessment, nameOf)),
  };
}

const inspectionView = ({ inspections: [row], answers }: Row["rugs"][number]): RugView["inspection"] =>
  row ? { id: row.id, by: row.by, day: row.day, found: row.found, isBeyondRepair: row.isBeyondRepair, isOvertaken: isOvertaken(row, answers) } : null;

function mayNow(caller: Caller & { kind: "staff" }, row: Row): EnquiryView["may"] {
  const isOurs = isWaitingForUs(row.state);
  const isOpen = isOurs && hasDraft(row.draft);
  const isWaiting = row.draft?.waitingNumber != null;
  const may = (deed: Parameters<typeof forbids>[1]) => forbids(caller, deed) === null;
  return {
    edit: isOpen && may("edit-draft"),
    approve: isOpen && may("approve") && !(isWaiting && caller.role === "trainee"),
    second: isOurs && isWaiting && may("second") && row.draft?.waitingById !== caller.staffId,
    ask: isOurs && may("approve"),
    test: may("record-test"),
    correct: may("correct-answer"),
    correctClient: may("correct-client"),
    erase: may("erase-enquiry"),
    setAside: isOurs && may("set-words-aside") && isFirstByWords(row),
    inspect: may("record-inspection"),
    enclose: isOpen && may("edit-draft"),
    blur: may("blur-photo"),
    moveTo: may("move") ? [...nextStates(row.state, "staff")] : [],
  };
}

/** Whether words that nobody has read have brought it where it stands. */
function isFirstByWords(row: Row): boolean {
  return urgenciesOfWords({ ...row, letters: ourLetters(row) }).some((u) => u.why === row.urgencyWhy);
}
const ourLetters = ({ letters }: Row) => letters.filter((l) => !l.automatic && l.state !== "taken_back");

/** Of the same address; a name proves nothing. */
async function earlierOf({ id, client, submittedAt }: Row): Promise<EnquiryView["client"]["earlier"]> {
  if (!client.email) return [];
  const where = { client: { email: client.email }, id: { not: id }, submittedAt: { lte: submittedAt } };
  return database().enquiry.findMany({ where, orderBy: { submittedAt: "desc" }, take: 10, select: { reference: true, id: true, title: true } });
}

/** Where it stands in the queue, from 1; 0 when it is not waiting for us. `nextId`: the one after it, else the first. */
async function placeOf(enquiryId: string): Promise<EnquiryView["place"]> {
  const waiting = await database().enquiry.findMany({
    where: { state: { in: [...WAITING_FOR_US] } },
    select: { id: true, urgency: true, stateSince: true, client: { select: { isTrade: true } } },
  });
  const ids = waiting.sort(byNeed).map((w) => w.id);
  const at = ids.indexOf(enquiryId);
  return { at: at + 1, of: ids.length, nextId: ids[at + 1] ?? ids.find((id) => id !== enquiryId) ?? null };
}
