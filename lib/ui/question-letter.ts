import type { Assessment } from "../triage/assessment";
import { standsAlone } from "../enquiry/steps";
import type { QuestionRow } from "../trade/question-row";
import { PHOTO_KINDS, QUESTIONS } from "../trade/questions";
import { greetingName } from "../reply/greeting-name";
import { lowerFirst } from "./figures";

/**
 * The letter "Ask for more" begins with: what would help most, as a list, and nothing else. It carries no judgement.
 * Bench tests are ours to do and are never asked of a client. Photos have the hint the questionnaire gives.
 */
export function questionLetter({ reference, name, questions, signature, workshop, rang, hasPage }: {
  reference: string; name: string; questions: Assessment["nextQuestions"]; signature: string; workshop: string;
  /** They rang us, and did not write. */
  rang: boolean;
  /** A letter of ours has brought them the link to their own page. */
  hasPage: boolean;
}): { subject: string; text: string } {
  const greeted = greetingName(name);
  const lines = questions.filter((q) => q.kind !== "bench-test").map((q) => (q.kind === "photo" ? photoLine(q) : questionLine(q)));
  const asks = lines.length > 0
    ? ["Before we say more it would help us to know a little more. Could you tell or send us:", lines.join("\n")]
    : ["Before we say more it would help us to know a little more:", "– "];
  const text = [
    greeted ? `Dear ${greeted},` : "Good day,",
    `Thank you for ${rang ? "ringing" : "writing to"} us about your rug.`,
    ...asks,
    `If you are not sure, just say so: that is an answer too.${hasPage ? " You can answer this letter, or use the link in our first one." : ""}`,
    signature || `Kind regards\n${workshop}`,
  ].join("\n\n");
  return { subject: `A question about your rug (${reference})`, text };
}

/** A question that means nothing without its answers ("Does any of this apply?") brings them along, asked and not advised. */
function questionLine({ ask, id }: { ask: string; id: string }): string {
  const rows: Readonly<Record<string, QuestionRow>> = QUESTIONS;
  const row = Object.hasOwn(rows, id) ? rows[id] : undefined;
  if (row?.kind !== "many") return `– ${ask}`;
  const named = Object.entries(row.answers).filter(([answer]) => !standsAlone(answer)).map(([, a]) => lowerFirst(a.label));
  return `– ${ask} Perhaps: ${named.slice(0, MOST_NAMED).join("; ")}?`;
}
/** More would be a form, not a letter. Elicited. */
const MOST_NAMED = 6;

/** A photo asked for in the questionnaire's words, with its hint. */
function photoLine({ ask, id }: { ask: string; id: string }): string {
  const kinds: Readonly<Record<string, { ask: string; hint: string }>> = PHOTO_KINDS;
  const kind = Object.hasOwn(kinds, id) ? kinds[id] : undefined;
  return kind ? `– A photo of ${lowerFirst(kind.ask)}. ${kind.hint}.` : `– ${ask}`;
}
