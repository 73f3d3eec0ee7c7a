import "server-only";
import { database, type Prisma } from "../store/database";
import { NEWEST_FIRST, OLDEST_FIRST } from "../store/row-order";
import { readSettings } from "../workshop/settings";
import { chosenPlan } from "./chosen-plan";
import type { DocumentFacts } from "./document-content";
import { assessmentOf, rugAnswersOf } from "./stored";

/** The inspections of a rug that count, the newest first. */
export const STANDING_INSPECTIONS = { where: { withdrawnAt: null }, orderBy: NEWEST_FIRST.at } as const satisfies Prisma.Rug$inspectionsArgs;
const PARTS = {
  enquiry: { select: { reference: true, client: { select: { name: true } }, parties: true } },
  answers: true,
  photos: { orderBy: { position: "asc" }, include: { measurements: { where: { withdrawnAt: null }, orderBy: OLDEST_FIRST.at }, label: true } },
  assessments: { orderBy: NEWEST_FIRST.createdAt, take: 1 },
  benchTests: { where: { withdrawnAt: null }, orderBy: OLDEST_FIRST.at },
  inspections: { ...STANDING_INSPECTIONS, take: 1 },
} as const satisfies Prisma.RugInclude;

/** What a document of this rug would be written from; null where there is no such rug in the enquiry or it was never judged. */
export async function documentFacts({ enquiryId, rugId }: { enquiryId: string; rugId: string }, now: Date): Promise<DocumentFacts | null> {
  const [rug, settings] = await Promise.all([database().rug.findFirst({ where: { id: rugId, enquiryId }, include: PARTS }), readSettings()]);
  const [newest] = rug?.assessments ?? [];
  if (!rug || !newest) return null;
  const { reference, client, parties } = rug.enquiry;
  const plan = chosenPlan(rug.photos);
  return {
    reference, client, parties, answers: rugAnswersOf(rug.answers), photos: rug.photos, assessment: assessmentOf(newest.result), tests: rug.benchTests,
    inspection: rug.inspections[0] ?? null, plan, hasPlan: plan !== null, settings, now,
  };
}
