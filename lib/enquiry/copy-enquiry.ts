import "server-only";
import { createReadStream } from "node:fs";
import { fileOf } from "../mail/enclosures";
import { database, type Prisma } from "../store/database";
import { OLDEST_FIRST } from "../store/row-order";
import { photosWithoutFiles, photoPath } from "../store/photo-files";
import { readPostFile } from "../store/post-files";
import { askedBy, askerOf } from "../reply/who-asks";
import type { Assessment } from "../triage/assessment";
import { wordsIn, type Words } from "../words/words";
import { withoutLinks } from "../workshop/client-link";
import { readSettings, type WorkshopSettings } from "../workshop/settings";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { copyNames, readMe, type CopyNames } from "./copy-names";
import { historyOf } from "./history";
import { agreedBefore } from "./label-reading";
import { isLetGo } from "./let-go";
import { fromPost, isFromPost } from "./messages";
import { inOneStep } from "./one-step";
import { retell } from "./retell";
import { retellAssessment, toldToClient } from "./retell-assessment";
import { assessmentOf, enquiryAnswersOf } from "./stored";
import { WORDS_READ } from "./unread-letters";
import { urgencyWhyTold } from "./urgency-why";

/** One file of a copy; its bytes are read only when it is its turn. */
export interface CopiedFile {
  readonly name: string;
  read(): AsyncIterable<Uint8Array> | Iterable<Uint8Array>;
}
export interface Copy {
  readonly fileName: string;
  readonly files: readonly CopiedFile[];
}

const PARTS = {
  client: true,
  parties: true,
  rugs: {
    orderBy: { position: "asc" },
    include: {
      answers: { orderBy: OLDEST_FIRST.at }, photos: { orderBy: { position: "asc" }, include: { label: true, measurements: true } },
      assessments: { orderBy: OLDEST_FIRST.createdAt }, benchTests: { orderBy: OLDEST_FIRST.at }, inspections: { orderBy: OLDEST_FIRST.at }, outcomes: { orderBy: OLDEST_FIRST.at },
    },
  },
  letters: { orderBy: OLDEST_FIRST.createdAt, include: { enclosures: { select: { documentId: true } } } },
  documents: { orderBy: OLDEST_FIRST.createdAt },
  audit: { orderBy: OLDEST_FIRST.at },
  post: { orderBy: OLDEST_FIRST.arrivedAt },
} as const satisfies Prisma.EnquiryInclude;
type Stored = Prisma.EnquiryGetPayload<{ include: typeof PARTS }>;
/** What may be shown of it. `mayJudge`: whether what it was found to be, and how urgent, may stand in the copy. `isClients`: it is the client who takes it. */
type Row = Stored & { mayJudge: boolean; isClients: boolean };

/**
 * Everything that is kept of an enquiry, as files: what was told and written as JSON, photos and documents as they are, messages as they
 * came. A client gets the judgements that their letters were written from, once those have left, without the program's workings; staff, for whoever asks them, get all of it.
 * Drafts that no person has approved are in neither.
 */
export async function copyEnquiry(caller: Caller, enquiryId: string, now: Date): Promise<Result<Copy>> {
  const no = authorise(caller, "copy-enquiry", { enquiryId, intakeId: null });
  if (no) return no;
  const noted = await inOneStep(async (tx) => {
    if ((await tx.enquiry.count({ where: { id: enquiryId } })) === 0) return NOT_THERE;
    await audit(tx, caller, { action: "copied", enquiryId, at: now });
    return ok(null);
  });
  if (!noted.ok) return noted;
  const [row, workshop] = await Promise.all([database().enquiry.findUnique({ where: { id: enquiryId }, include: PARTS }), readSettings()]);
  if (!row) return NOT_THERE;
  const shown = caller.kind === "client" ? asTheClientSees(row, now) : { ...row, mayJudge: true, isClients: false };
  const photoIds = shown.rugs.flatMap((r) => r.photos).map((p) => p.id);
  const lost = new Set(await photosWithoutFiles(photoIds));
  const words = wordsIn(workshop.locale);
  const names = copyNames(shown.documents, words);
  const copied = { reference: row.reference, letters: shown.letters.length, photos: photoIds.length - lost.size, documents: shown.documents.length, messages: shown.post.length };
  const everything = { madeAt: now.toISOString(), workshop: { name: workshop.name, email: workshop.email, telephone: workshop.telephone }, ...(await plainly(shown, { names, lost, words, workshop })) };
  return ok({
    fileName: `${row.reference}-${now.toISOString().slice(0, 10)}.zip`,
    files: [
      { name: names.readMe, read: () => [Buffer.from(readMe(copied, { words, workshop, now }))] },
      { name: names.everything, read: () => [Buffer.from(`${JSON.stringify(everything, null, 2)}\n`)] },
      ...shown.letters.map((l, i) => ({ name: names.letter(i), read: () => [Buffer.from(`${l.subject}\n\n${withoutLinks(l.text)}\n`)] })),
      ...photoIds.filter((id) => !lost.has(id)).map((id) => ({ name: names.photo(id), read: () => createReadStream(photoPath(id, "full")) as AsyncIterable<Uint8Array> })),
      ...shown.documents.map((d) => ({ name: names.document(d.id), read: () => [fileOf(d).bytes] })),
      ...shown.post.map((p) => ({ name: names.message(p.id), read: () => once(() => readPostFile(p.id)) })),
    ],
  });
}

async function* once(read: () => Promise<Uint8Array>): AsyncGenerator<Uint8Array> {
  yield await read();
}

/** Letters and documents that have left, the judgement that each of those replies was written from, and what was tested and inspected before the last. */
function asTheClientSees(row: Stored, now: Date): Row {
  const letters = row.letters.filter((l) => isLetGo(l, now) && l.state !== "taken_back");
  const replies = letters.filter((l) => l.kind === "reply").map((l) => l.createdAt);
  const replied = replies.at(-1);
  const sent = new Set(letters.flatMap((l) => l.enclosures.map((e) => e.documentId)));
  const judged = <T,>(rows: T[], at: (row: T) => Date): T[] => (replied ? rows.filter((r) => at(r) <= replied) : []);
  const notTheirs = row.rugs.flatMap((r) => r.answers.map((a) => a.from)).filter(isFromPost);
  return {
    ...row, letters, mayJudge: replied !== undefined, isClients: true, post: row.post.filter((p) => !notTheirs.includes(fromPost(p.id))),
    documents: row.documents.filter((d) => sent.has(d.id)),
    rugs: row.rugs.map((r) => ({
      ...r, assessments: r.assessments.filter((a) => replies.some((at) => r.assessments.findLast((b) => b.createdAt <= at) === a)), benchTests: judged(r.benchTests, (t) => t.at), inspections: judged(r.inspections, (i) => i.at), outcomes: [],
    })),
  };
}

/** What was agreed of a label before another part of its photo was read; null where nothing was. */
function agreedWordsBefore(label: Parameters<typeof agreedBefore>[0]): string | null {
  const agreed = agreedBefore(label);
  return agreed && (agreed.corrected ?? agreed.text);
}

/** What was measured, without the sentence that the desk reads of it. */
const asData = (result: Prisma.JsonValue): Prisma.JsonValue =>
  (result !== null && typeof result === "object" && !Array.isArray(result) ? Object.fromEntries(Object.entries(result).filter(([field]) => field !== "says")) : result);

async function plainly(row: Row, { names, lost, words, workshop }: { names: CopyNames; lost: ReadonlySet<string>; words: Words; workshop: WorkshopSettings }) {
  const { client } = row;
  const { say } = words;
  const judgedIn = (a: Assessment) => {
    const retold = retellAssessment(words, a, workshop.emergencyNumber);
    return row.isClients ? toldToClient(retold) : retold;
  };
  return {
    enquiry: { reference: row.reference, state: say(`state.${row.state}`), since: row.stateSince, channel: row.channel, sentAt: row.submittedAt, ...(row.mayJudge ? { urgency: row.urgency, why: retell(words, urgencyWhyTold(row)) } : {}), answers: row.answers },
    whoIsWho: askedBy(askerOf({ client, enquiry: enquiryAnswersOf(row.answers).answers, parties: row.parties }), words),
    client: { name: client.name, email: client.email, telephone: client.telephone, language: client.language, isTrade: client.isTrade },
    others: row.parties.map(({ kind, name, reference }) => ({ kind, name, reference })),
    rugs: row.rugs.map((r) => ({
      title: r.title,
      answers: r.answers.filter((a) => a.question !== WORDS_READ && !isFromPost(a.from) && a.value !== "").map(({ question, value, from, at }) => ({ question, value, from: say(from === "client" ? "copy.you" : "copy.workshop"), at })),
      photos: r.photos.map((p) => ({
        file: lost.has(p.id) ? null : names.photo(p.id), kind: p.kind, originalName: p.originalName, takenAt: p.takenAt, exposure: p.exposure, width: p.width, height: p.height, measured: p.measured,
        marked: p.measurements.map(({ kind, marks, result, at, withdrawnAt }) => ({ kind, marks, result: asData(result), at, withdrawnAt })),
        label: p.label && { read: p.label.text, corrected: p.label.corrected, state: p.label.state, agreedBefore: agreedWordsBefore(p.label) },
      })),
      judged: r.assessments.map((a) => ({ at: a.createdAt, model: a.modelVersion, result: judgedIn(assessmentOf(a.result)) })),
      tests: r.benchTests.map(({ test, yarn, response, at, withdrawnAt, withdrawnWhy }) => ({ test, yarn, response, at, withdrawnAt, withdrawnWhy })),
      inspections: r.inspections.map(({ by, day, found, isBeyondRepair, withdrawnAt }) => ({ by, day, found, isBeyondRepair, withdrawnAt })),
      outcomes: r.outcomes.map(({ value, at }) => ({ value, at })),
    })),
    letters: row.letters.map((l, i) => ({ file: names.letter(i), kind: l.kind, state: l.state, to: l.toAddress, subject: l.subject, at: l.sentAt ?? l.notBefore })),
    documents: row.documents.map((d) => ({ file: names.document(d.id), title: d.title, madeAt: d.createdAt })),
    messages: row.post.map((p) => ({ file: names.message(p.id), from: p.fromAddress, subject: p.subject, text: p.text, arrivedAt: p.arrivedAt })),
    history: (await historyOf(row, words, workshop)).map(({ at, who, what }) => ({ at, who, what })),
  };
}
