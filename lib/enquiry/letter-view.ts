import "server-only";
import { mayHaveArrived } from "../mail/last-word";
import type { Document, Letter } from "../store/database";
import { withoutFoot } from "../mail/foot";
import { wordsIn } from "../words/words";
import { withoutLinks } from "../workshop/client-link";
import { readOutUntil } from "./read-out";
import { isToBeReadOut, isToldInstead } from "./to-be-read-out";
import { sayLetter } from "./letter-words";
import { isToBeTried } from "./to-be-tried";
import type { EnclosureView, EnquiryView, LetterView } from "./views";

/** What is read of a letter for people. */
export const LETTER_PARTS = { approvedBy: { select: { name: true } }, secondedBy: { select: { name: true } }, enclosures: { include: { document: { select: { id: true, title: true, createdAt: true } } } } } as const;
interface Enclosed { document: Pick<Document, "id" | "title" | "createdAt"> }
type Row = Letter & { approvedBy: { name: string } | null; secondedBy: { name: string } | null; enclosures: readonly Enclosed[] };

/** In the order of their making. */
export const enclosureViews = (enclosures: readonly Enclosed[]): EnclosureView[] =>
  enclosures.map((e) => e.document).sort((a, b) => a.createdAt.getTime() - b.createdAt.getTime()).map(({ id, title }) => ({ id, title }));

/** What goes with a letter as its own text names it: a line that announces it, and a dash before each. */
const NAMED = new RegExp(`\\n\\n${wordsIn("en-GB").say("mail.enclosed")}(?:\\n– [^\\n]*)+\\s*$`, "u");

/** A letter's own words, for a page that shows its head, its foot, its link and what goes with it by itself. */
export function wordsOfLetter({ text, enclosures }: Pick<Row, "text" | "enclosures">): string {
  const bare = withoutFoot(withoutLinks(text));
  return enclosures.length > 0 ? bare.replace(NAMED, "\n") : bare;
}

const isTriedAgain = ({ toAddress, state, attempts }: Letter): boolean => toAddress !== "" && (state === "unknown" || (state === "waiting" && attempts > 0));

/** A letter as staff read it; the client's link never shows. */
export function letterView(letter: Row, { now, isMailConfigured, holdMinutes }: { now: Date; isMailConfigured: boolean; holdMinutes: number }): LetterView {
  const names = [letter.approvedBy?.name, letter.secondedBy?.name].filter((n) => n !== undefined);
  return {
    id: letter.id,
    kind: letter.kind,
    state: letter.state,
    says: sayLetter(letter, isMailConfigured),
    subject: letter.subject,
    text: wordsOfLetter(letter),
    to: letter.toAddress,
    createdAt: letter.createdAt.toISOString(),
    notBefore: letter.notBefore.toISOString(),
    nextTry: isMailConfigured && isTriedAgain(letter) ? letter.notBefore.toISOString() : null,
    sentAt: letter.sentAt?.toISOString() ?? null,
    approvedBy: names.length > 0 ? names.join(" and ") : null,
    canTakeBack: !letter.automatic && letter.state === "held" && letter.notBefore > now,
    isToBeReadOut: isToBeReadOut(letter),
    canGiveUp: isToBeTried(letter) && (letter.state === "unknown" || letter.attempts > 0 || !isMailConfigured),
    readOutUntil: readOutUntil(letter, { holdMinutes, now })?.toISOString() ?? null,
    enclosures: enclosureViews(letter.enclosures),
  };
}

/** What is read of an enquiry's letters to know whether one took the place of another. */
export const LETTER_ORDER = { select: { state: true, automatic: true, createdAt: true } } as const;
type Ordered = Pick<Letter, keyof (typeof LETTER_ORDER)["select"]>;

/** Whether a newer letter has taken the place of one that failed, so that it asks nothing of anybody any more. The program's takes the place of the program's alone. */
export const isReplaced = (failed: Ordered, all: readonly Ordered[]): boolean =>
  all.some((l) => l.createdAt > failed.createdAt && l.state !== "failed" && l.state !== "taken_back" && (failed.automatic || !l.automatic));

/** The newest letter of a person here, or else the newest of all, where it failed. `letters`: the oldest first. */
export function undeliveredOf(letters: readonly Letter[], isMailConfigured: boolean): EnquiryView["undelivered"] {
  const went = letters.filter((l) => l.state !== "taken_back");
  const failed = [went.findLast((l) => !l.automatic), went.at(-1)].find((l) => l?.state === "failed");
  return failed ? { letterId: failed.id, canBeReadOut: isToldInstead(failed), kind: failed.kind, to: failed.toAddress, says: sayLetter(failed, isMailConfigured), isInDoubt: mayHaveArrived(failed.lastResponse ?? "") } : null;
}
