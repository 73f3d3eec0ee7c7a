import "server-only";
import * as z from "zod/mini";
import type { Audit } from "../store/database";
import type { CorrectedId } from "../trade/correcting-words";
import { correctedIn, type Given } from "../triage/correcting";
import type { AuditAction } from "./audit";
import type { CorrectionView } from "./draft-types";
import type { Message } from "./messages";
import { isCorrectable, type FormStepId } from "./step-schemas";
import { STEPS } from "./steps";

const CORRECTED_BY: AuditAction = "answer-corrected";
const correctedSchema = z.object({ rugId: z.string(), step: z.string() });

/** The page on which an answer is corrected; null where none is. */
function stepOf(of: CorrectedId): FormStepId | null {
  const step = of === "boughtYear" ? "price" : (STEPS.find((s) => s.id === of || ("question" in s && s.question === of))?.id ?? "");
  return isCorrectable(step) ? step : null;
}

/**
 * Which answers the client's messages seem to correct, beside which message that is to be said. What staff corrected since is settled, and
 * words from an address that nobody called the client's correct nothing. It judges nothing: a person reads the message. `audit`: of the enquiry.
 */
export function correctionsIn(messages: readonly Message[], { rugId, given, audit }: { rugId: string; given: Given; audit: readonly Pick<Audit, "action" | "at" | "detail">[] }): CorrectionView[] {
  const done = audit.flatMap(({ action, at, detail }) => {
    const { data } = correctedSchema.safeParse(detail);
    return action === CORRECTED_BY && data ? [{ ...data, at }] : [];
  });
  // What the whole enquiry was asked is corrected at any rug.
  const isDone = (step: FormStepId, since: Date) => done.some((d) => d.step === step && d.at >= since && (d.rugId === rugId || step === "wet-now"));
  return messages.filter((m) => m.other === null).flatMap(({ at, text }) => correctedIn(text, given).flatMap((of) => {
    const step = stepOf(of);
    return step === null || isDone(step, at) ? [] : [{ at: at.toISOString(), of, step }];
  }));
}
