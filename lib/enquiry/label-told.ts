import "server-only";
import type { Answer, Intake, Prisma } from "../store/database";
import type { Caller } from "./caller";
import { CLIENT } from "./measurement-findings";
import { intakeAnswersSchema } from "./questionnaire";
import { rugAnswersOf } from "./stored";

/** With a photo, what was typed of the label of its rug. */
export const WITH_TOLD_LABEL = {
  intake: { select: { answers: true } },
  rug: { select: { enquiryId: true, answers: { where: { question: "labelText" } } } },
} as const satisfies Prisma.PhotoInclude;

interface OfPhoto { intake: Pick<Intake, "answers"> | null; rug: { answers: readonly Answer[] } | null }

/** What was typed of a label, as this caller knows it; null where nothing was. What staff took down is not shown back to a client as theirs. */
export function labelToldTo(caller: Caller, { intake, rug }: OfPhoto): string | null {
  const answers = rug ? rugAnswersOf(rug.answers.filter((a) => caller.kind === "staff" || a.from === CLIENT)) : intake && intakeAnswersSchema.parse(intake.answers).rug;
  return answers?.labelText?.trim() || null;
}
