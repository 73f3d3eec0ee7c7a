/**
 * What may be asked of the person who writes in, and the answers offered. Data only: the pages render it,
 * the schemas of lib/enquiry/questionnaire are built from it, triage reads the answer ids.
 *
 * `trouble` is what answering costs the client, in the unit of the loss table (one ordinary clean). Elicited:
 * a question .02, a photo .1. Every choice also offers `unsure`, which is an answer and never a finding.
 */
export interface AnswerRow {
  readonly label: string;
  readonly hint?: string;
}
export interface QuestionRow {
  readonly kind: "one" | "many";
  readonly of: "enquiry" | "rug";
  readonly ask: string;
  readonly hint?: string;
  readonly trouble: number;
  readonly answers: Readonly<Record<string, AnswerRow>>;
}
