import "server-only";
import { randomUUID } from "node:crypto";
import type { Tx } from "../store/database";
import { newRowId } from "../store/row-order";
import type { EnquiryAnswers, RugAnswers } from "../trade/questions";
import type { LetterUrgency } from "../triage/letter-signs";
import type { AssessedEnquiry, AssessedRug } from "./assess-answers";
import type { EnquiryFile } from "./enquiry-file";
import { newReference } from "./reference";
import { storedSaid } from "./said-paragraphs";
import type { Consent } from "./stored";
import { toJson } from "./to-json";
import { urgenciesOfWords } from "./unread-letters";
import { firstAidAtOnce, mouldAmong, type FirstAidAtOnce } from "./wet-by-words";
import { worstUrgency } from "./urgency";

export interface NewEnquiry {
  channel: "web" | "email" | "telephone";
  /** When it was written; ages count from here. */
  submittedAt: Date;
  intakeId: string | null;
  client: { name: string; email: string | null; telephone: string | null; isTrade: boolean };
  parties: NonNullable<EnquiryFile["parties"]>;
  answers: EnquiryAnswers;
  /** null where somebody here took it down by telephone. */
  consent: Consent | null;
  rugs: { answers: RugAnswers; photoIds: string[] }[];
  assessed: AssessedEnquiry;
  /** The enquiry of the same person that it belongs beside; absent where there is none. */
  joinedToId?: string | null;
  /** Who answered: "client" or the id of a person here. */
  from: string;
}

/** Writes a whole enquiry: client, rugs, answers, photos, findings, assessments and the first draft. Answers with what its client is told at once. */
export async function storeEnquiry(tx: Tx, e: NewEnquiry): Promise<{ enquiryId: string; reference: string } & AtOnce> {
  const reference = await freeReference(tx);
  const { byWords, atOnce } = toldAtOnce(e);
  const { urgency, why } = worstUrgency([...e.assessed.rugs.map((r) => r.assessment.urgency), ...byWords]);
  const enquiryId = randomUUID();
  const client = await tx.client.create({ data: { id: randomUUID(), ...e.client, createdAt: e.submittedAt } });
  await tx.enquiry.create({
    data: {
      id: enquiryId,
      reference,
      channel: e.channel,
      intakeId: e.intakeId,
      stateSince: e.submittedAt,
      submittedAt: e.submittedAt,
      answers: toJson({ ...e.answers, consent: e.consent }),
      title: e.assessed.title,
      urgency,
      urgencyWhy: why,
      clientId: client.id,
      joinedToId: e.joinedToId ?? null,
      parties: { create: e.parties.map((p) => ({ id: randomUUID(), kind: p.kind, name: p.name, reference: p.reference ?? null })) },
    },
  });
  const assessmentIds: string[] = [];
  for (const [at, rug] of e.rugs.entries())
    assessmentIds.push(await storeRug(tx, e, { enquiryId, position: at + 1, rug, assessed: e.assessed.rugs[at] as AssessedRug }));
  await tx.draft.create({
    data: {
      id: randomUUID(),
      enquiryId,
      number: 1,
      revisions: {
        create: {
          id: randomUUID(),
          number: 1,
          subject: e.assessed.draft.subject,
          text: e.assessed.draft.text,
          paragraphs: storedSaid(e.assessed.draft),
          assessmentId: assessmentIds[0] ?? null,
          createdAt: e.submittedAt,
        },
      },
    },
  });
  return { enquiryId, reference, ...atOnce };
}

/** What a client is told with the acknowledgement. */
export interface AtOnce { firstAid: FirstAidAtOnce | null; mouldAmong: number | null }

/** How urgent its words are, and what its client is told at once. */
export function toldAtOnce(e: NewEnquiry): { byWords: LetterUrgency[]; atOnce: AtOnce } {
  const told = e.rugs.map((rug) => ({ answers: answerRows(rug.answers, e.submittedAt) }));
  const byWords = urgenciesOfWords({ answers: e.answers, rugs: told, letters: [] });
  const { rugs } = e.assessed;
  const assessments = rugs.map((r) => r.assessment);
  const firstAid = firstAidAtOnce({ assessments, byWords, answers: e.rugs.map((r) => r.answers), emergencyNumber: rugs[0]?.settings.emergencyNumber });
  return { byWords, atOnce: { firstAid, mouldAmong: mouldAmong(e.rugs.flatMap(({ answers }, at) => { const assessment = assessments[at]; return assessment ? { answers, assessment } : []; })) } };
}

const answerRows = (answers: RugAnswers, at: Date) => Object.entries(answers).flatMap(([question, value]) => (value === undefined ? [] : [{ question, value, at }]));

interface Place { enquiryId: string; position: number; rug: NewEnquiry["rugs"][number] }

async function storeRug(tx: Tx, e: NewEnquiry, { assessed, ...place }: Place & { assessed: AssessedRug }): Promise<string> {
  const rugId = await addRugRow(tx, e, { ...place, title: assessed.title });
  return storeAssessment(tx, rugId, assessed, e.submittedAt);
}

/** Writes a rug of an enquiry with its answers, and hands it its photos; it is still to be judged. Answers its id. */
export async function addRugRow(tx: Tx, e: NewEnquiry, { enquiryId, position, rug, title }: Place & { title: string }): Promise<string> {
  const rugId = randomUUID();
  const at = e.submittedAt;
  await tx.rug.create({
    data: {
      id: rugId,
      enquiryId,
      position,
      title,
      answers: {
        create: answerRows(rug.answers, at).map((row) => ({ ...row, id: randomUUID(), from: e.from })),
      },
    },
  });
  await tx.photo.updateMany({ where: { id: { in: rug.photoIds } }, data: { rugId } });
  return rugId;
}

/** Keeps what triage said together with everything it was said from; findings replace those of an earlier assessment. */
export async function storeAssessment(
  tx: Tx,
  rugId: string,
  { findings, settings, assessment }: Omit<AssessedRug, "title">,
  now: Date,
): Promise<string> {
  await tx.finding.deleteMany({ where: { rugId } });
  await tx.finding.createMany({
    data: findings.map((f) => ({
      id: randomUUID(),
      rugId,
      what: f.what,
      value: toJson({ v: f.value }).v ?? false,
      strength: f.strength,
      from: f.from,
      at: now,
    })),
  });
  const id = newRowId();
  await tx.assessment.create({
    data: {
      id,
      rugId,
      modelVersion: assessment.modelVersion,
      asOf: new Date(assessment.asOf),
      settings: toJson(settings),
      findings: findings.map(toJson),
      result: toJson(assessment),
      createdAt: now,
    },
  });
  return id;
}

/** One that nobody has. Should another transaction take it first, the unique index says so and the work is run again. */
async function freeReference(tx: Tx): Promise<string> {
  for (let n = 0; n < 50; n++) {
    const reference = newReference();
    if (!(await tx.enquiry.findUnique({ where: { reference }, select: { id: true } }))) return reference;
  }
  throw new Error("Found no free reference in 50 tries: nearly all of them are taken.");
}
