import "server-only";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";
import { intakeAnswersSchema, type IntakeAnswers } from "./questionnaire";
import { IS_SENT, isSent } from "./sent-as";
import { wrong } from "./wrong";

/**
 * Saves a step. `rug` and `contact` are merged key by key; what the patch lacks stays as it was, unless `cleared` names it
 * ("rug.price"): a field somebody emptied. Refused once the enquiry was sent: what the workshop reads must be what was sent.
 */
export async function saveIntake(caller: Caller, patch: IntakeAnswers, cleared: readonly string[] = []): Promise<Result<{ answers: IntakeAnswers }>> {
  const no = authorise(caller, "fill-intake");
  if (no || caller.kind !== "intake") return no ?? NOT_THERE;
  const parsed = intakeAnswersSchema.safeParse(patch);
  if (!parsed.success) {
    const fields = Object.fromEntries(parsed.error.issues.map((i) => [i.path.join("."), i.message]));
    return refuse("invalid", wrong("wrong.look-again"), fields);
  }
  const { intakeId } = caller;
  return inOneStep(async (tx) => {
    const row = await tx.intake.findUnique({ where: { id: intakeId }, select: { answers: true, ...IS_SENT } });
    if (!row) return NOT_THERE;
    if (isSent(row)) return refuse("changed-meanwhile", wrong("refusal.sent-already"));
    const answers = mergeAnswers(without(intakeAnswersSchema.parse(row.answers), cleared), parsed.data);
    await tx.intake.update({ where: { id: intakeId }, data: { answers } });
    return ok({ answers });
  });
}

/** The answers without those named, as "rug.price" or "contact.email". */
function without(answers: IntakeAnswers, cleared: readonly string[]): IntakeAnswers {
  const strip = (part: "rug" | "contact") =>
    answers[part] ? { [part]: Object.fromEntries(Object.entries(answers[part]).filter(([key]) => !cleared.includes(`${part}.${key}`))) } : {};
  return { ...answers, ...strip("rug"), ...strip("contact") };
}

/** Absent and undefined leave what was there. */
export function mergeAnswers(old: IntakeAnswers, patch: IntakeAnswers): IntakeAnswers {
  const { rug, contact, ...whole } = patch;
  return {
    ...old,
    ...given(whole),
    ...(old.rug || rug ? { rug: { ...old.rug, ...given(rug ?? {}) } } : {}),
    ...(old.contact || contact ? { contact: { ...old.contact, ...given(contact ?? {}) } } : {}),
  };
}

const given = <T extends object>(patch: T): Partial<T> =>
  Object.fromEntries(Object.entries(patch).filter(([, v]) => v !== undefined && v !== null)) as Partial<T>;
