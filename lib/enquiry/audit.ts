import "server-only";
import { randomUUID } from "node:crypto";
import type { Tx } from "../store/database";
import type { Caller } from "./caller";

/** What can stand in the history of an enquiry, and how it reads after the name of who did it. */
export const HISTORY_WORDS = {
  submitted: "sent the enquiry",
  entered: "entered the enquiry",
  "photo-added": "added a photo",
  "label-confirmed": "said that the label was read rightly",
  "label-corrected": "corrected what was read of the label",
  "label-refused": "said that a photo shows no label",
  "label-unsure": "could not tell whether the label was read rightly",
  "label-framed": "showed where the label lies in a photo",
  "photo-blurred": "blurred part of a photo for good",
  "client-wrote": "wrote again",
  "draft-saved": "edited the draft",
  "draft-made": "drafted a reply",
  "reply-approved": "approved the reply",
  "reply-waits": "approved the reply; it waits for a second person",
  "reply-seconded": "approved the reply as second person",
  "question-asked": "asked the client for more",
  "question-waits": "wrote a question; it waits for a second person",
  "question-seconded": "approved the question as second person",
  "letter-taken-back": "took the letter back",
  moved: "moved the enquiry",
  "answer-corrected": "corrected an answer",
  "words-set-aside": "read what the client wrote and put the enquiry in its place",
  assessed: "assessed a rug",
  "test-recorded": "recorded a bench test",
  "report-recorded": "entered a laboratory report",
  "test-withdrawn": "withdrew what was recorded in error",
  "inspection-recorded": "recorded an inspection",
  "inspection-withdrawn": "withdrew an inspection that was recorded in error",
  "document-made": "made a document",
  "document-enclosed": "put a document with the letter",
  "document-taken-out": "took a document from the letter",
  "test-letter-sent": "sent themselves a test letter",
  "photo-measured": "measured a photo",
  "measurement-moved": "moved a measurement",
  "measurement-withdrawn": "took a measurement away",
  "reagent-on": "switched a reagent on",
  "reagent-off": "switched a reagent off",
  "paragraph-written": "changed a paragraph of the letters",
  "paragraph-restored": "went back to the shipped text of a paragraph",
  "mail-taken": "took in a letter that came by mail",
  "mail-filed": "filed a message that came by mail",
  "mail-aside": "put a message aside",
  "mail-back": "took a message back out",
  "letter-came-back": "noted that a letter of ours came back",
  "address-lifted": "let letters go to the address again",
  copied: "took a copy of everything",
  erased: "erased the enquiry",
  "settings-saved": "changed the workshop's settings",
} as const;
export type AuditAction = keyof typeof HISTORY_WORDS;

/** The id of who acts; null for the public. */
export function actorOf(caller: Caller): string | null {
  switch (caller.kind) {
    case "staff":
      return caller.staffId;
    case "client":
      return caller.linkId;
    case "intake":
      return caller.intakeId;
    case "system":
      return caller.what;
    case "public":
      return null;
  }
}

/** Writes who did what, in the transaction of the change itself. `detail` holds ids and states, and the reasons people gave; never what clients or letters say. */
export async function audit(
  tx: Tx,
  caller: Caller,
  entry: { action: AuditAction; enquiryId: string | null; at: Date; detail?: Record<string, string | number | null> },
): Promise<void> {
  await tx.audit.create({
    data: {
      id: randomUUID(),
      at: entry.at,
      actorKind: caller.kind,
      actorId: actorOf(caller),
      action: entry.action,
      enquiryId: entry.enquiryId,
      detail: entry.detail ?? {},
    },
  });
}
