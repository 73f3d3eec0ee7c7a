import "server-only";
import * as z from "zod/mini";
import { database, type Db, type Prisma, type Tx } from "../store/database";
import { NEWEST_FIRST, OLDEST_FIRST } from "../store/row-order";
import type { WetTold } from "../reply/documents/report-told";
import { QUESTIONS, type EnquiryAnswers } from "../trade/questions";
import { readSettings } from "../workshop/settings";
import { chosenPlan, cutDecision } from "./chosen-plan";
import type { DocumentFacts } from "./document-content";
import { newestOf, STANDING_INSPECTIONS } from "./inspections";
import { isTradeAsking } from "../reply/who-asks";
import { answeredAt, assessmentOf, enquiryAnswersOf, rugAnswersOf, seenOf } from "./stored";
import { CORRECTIONS, wetToldAt } from "./wet-told";

const PARTS = {
  enquiry: { select: { reference: true, answers: true, submittedAt: true, _count: { select: { rugs: true } }, audit: CORRECTIONS, client: { select: { name: true, isTrade: true, telephone: true } }, parties: true } },
  answers: true,
  photos: { orderBy: { position: "asc" }, include: { measurements: { where: { withdrawnAt: null }, orderBy: OLDEST_FIRST.at }, label: true } },
  assessments: { orderBy: NEWEST_FIRST.createdAt, take: 1 },
  benchTests: { where: { withdrawnAt: null }, orderBy: OLDEST_FIRST.at },
  inspections: { ...STANDING_INSPECTIONS, take: 1 },
} as const satisfies Prisma.RugInclude;

const WET_THEN = z.object({ wetNow: z.enum([...(Object.keys(QUESTIONS.wetNow.answers) as (keyof typeof QUESTIONS.wetNow.answers)[]), "unsure"]) });
/** What was told of wet before the answer of today and otherwise, oldest first: each judgement keeps the answer that it was made with. */
function wetBefore(judged: readonly { settings: unknown; createdAt: Date }[], wetNow: EnquiryAnswers["wetNow"]): DocumentFacts["wetBefore"] {
  const told: { answer: WetTold["answer"]; at: Date }[] = [];
  for (const { settings, createdAt } of judged) {
    const answer = WET_THEN.safeParse(settings).data?.wetNow;
    if (answer !== undefined && answer !== told.at(-1)?.answer) told.push({ answer, at: createdAt });
  }
  return told.at(-1)?.answer === wetNow ? told.slice(0, -1) : told;
}

/** What a document of this rug would be written from; null where there is no such rug in the enquiry or it was never judged. */
export async function documentFacts({ enquiryId, rugId }: { enquiryId: string; rugId: string }, now: Date, db: Db | Tx = database()): Promise<DocumentFacts | null> {
  const [rug, judged, settings] = await Promise.all([
    db.rug.findFirst({ where: { id: rugId, enquiryId }, include: PARTS }), db.assessment.findMany({ where: { rugId }, orderBy: OLDEST_FIRST.createdAt, select: { settings: true, createdAt: true } }), readSettings(db),
  ]);
  const [newest] = rug?.assessments ?? [];
  if (!rug || !newest) return null;
  const { reference, client, parties } = rug.enquiry;
  const { answers: enquiry } = enquiryAnswersOf(rug.enquiry.answers);
  const plan = chosenPlan(rug.photos);
  return {
    reference, client, parties, enquiry, isTrade: isTradeAsking(client, enquiry), answers: rugAnswersOf(rug.answers), seen: seenOf(rug.answers), sinceToldAt: answeredAt(rug.answers, "since"), wetToldAt: wetToldAt(rug.enquiry), wetBefore: wetBefore(judged, enquiry.wetNow), place: { n: rug.position, of: rug.enquiry._count.rugs }, photos: rug.photos, assessment: assessmentOf(newest.result), tests: rug.benchTests,
    inspections: newestOf(rug), plan, hasPlan: plan !== null, cutting: cutDecision(rug.photos), settings, now,
  };
}
