import type { PostView } from "@/lib/enquiry/views";

/** The page of one message. */
export const PAGE_TITLE = "A message";

/** What a message is, as a small word before its sender. */
export const POST_KINDS: Record<NonNullable<PostView["kind"]>, string> = {
  letter: "Letter", reply: "Answer", automatic: "Written by a machine", bounce: "Report on our letter", unreadable: "Could not be read",
};
/** How a message is headed where it has no subject. */
export const subjectOf = ({ subject, kind }: PostView): string => subject || (kind === null ? "Not read yet" : kind === "unreadable" ? "A message that could not be read" : "Without a subject");

export const senderOf = ({ from }: PostView): string => (from ? [from.name, from.address].filter(Boolean).join(", ") : "no sender named");
