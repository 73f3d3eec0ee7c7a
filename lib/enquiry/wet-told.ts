import "server-only";
import * as z from "zod/mini";
import type { Prisma } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import type { StepId } from "./steps";
import { answeredAt } from "./stored";

/** The answers of an enquiry that staff put right, the newest first. */
export const CORRECTIONS = { where: { action: "answer-corrected" }, orderBy: NEWEST_FIRST.at, select: { at: true, detail: true } } as const satisfies Prisma.Enquiry$auditArgs;

const CORRECTED = z.object({ step: z.string() });
const WET_NOW: StepId = "wet-now";
interface Asked { audit: readonly { at: Date; detail: unknown }[]; submittedAt: Date }
/** When it was told last whether anything is wet: as it was put right, else as the enquiry began. Its answer has no row of its own. */
export const wetToldAt = ({ audit, submittedAt }: Asked): Date =>
  audit.find(({ detail }) => CORRECTED.safeParse(detail).data?.step === WET_NOW)?.at ?? submittedAt;

const DAY_MS = 86_400_000;
/** Whether that was more than a day after the rug's answers of when it happened and what was put on it, so that "today" was before that. `answers`: of the rug, in any order. */
export const isWetToldDayLater = (asked: Asked, answers: Parameters<typeof answeredAt>[0]): boolean =>
  (["since", "treatments"] as const).every((question) => wetToldAt(asked).getTime() - (answeredAt(answers, question) ?? asked.submittedAt).getTime() > DAY_MS);
