import "server-only";
import * as z from "zod/mini";
import type { Prisma } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import type { StepId } from "./steps";

/** The answers of an enquiry that staff put right, the newest first. */
export const CORRECTIONS = { where: { action: "answer-corrected" }, orderBy: NEWEST_FIRST.at, select: { at: true, detail: true } } as const satisfies Prisma.Enquiry$auditArgs;

const CORRECTED = z.object({ step: z.string() });
const WET_NOW: StepId = "wet-now";
/** When it was told last whether anything is wet: as it was put right, else as the enquiry began. Its answer has no row of its own. */
export const wetToldAt = ({ audit, submittedAt }: { audit: readonly { at: Date; detail: unknown }[]; submittedAt: Date }): Date =>
  audit.find(({ detail }) => CORRECTED.safeParse(detail).data?.step === WET_NOW)?.at ?? submittedAt;
