import type { MeasurementView, PlanLack } from "./measured-views";
import type { WaitingInPost } from "./waiting-in-post";
import type { LabelReadingView } from "./label-view";
import type { CorrectionView, DraftView, MeanwhileView, MessageView, OutdatedLetterView, SinceView } from "./draft-types";
import type { Assessment } from "../triage/assessment";
import type { DocumentKind } from "../reply/documents/offered";
import type { AskedOfUs } from "../reply/questions-asked";
import type { ToldByLetter } from "../reply/told-by-letter";
import type { EnquiryAnswers, QuestionId, RugAnswers, ShownKind } from "../trade/questions";

/**
 * What the pages are given: only the fields a page shows, never a row of the database. Instants are ISO 8601 strings.
 * Photos are fetched from `/photos/<id>/<size>`, size 320, 1600 or full.
 */
export interface ColourShare { hex: string; share: number }

export interface PhotoView {
  id: string;
  kind: ShownKind;
  width: number; height: number;
  takenAt: string | null;
  colours: ColourShare[];
  /** What is not good enough about it, in a sentence; null when nothing is. */
  remark: string | null;
  /** What it looks like in 64 bits, to tell the same photo sent twice; null where it shows no form. */
  likeness: string | null;
  /** Of a photo of a label that was read; null for every other. */
  label: LabelReadingView | null;
}

export type EnquiryStateId =
  | "new" | "our_turn" | "their_turn" | "waiting_elsewhere" | "quoted" | "agreed" | "coming_in" | "in_workshop"
  | "ready" | "finished" | "declined" | "withdrawn" | "closed_unanswered";
export type UrgencyId = "hours" | "two_days" | "a_week" | "can_wait";
export type LetterStateId = "held" | "waiting" | "sending" | "sent" | "failed" | "unknown" | "taken_back";

/** One slip in the queue. */
export interface Slip {
  enquiryId: string;
  reference: string;
  title: string;
  /** One sentence: what it is. */
  sentence: string;
  state: EnquiryStateId;
  /** "new", "our turn again", "draft ready", "waiting for a second person" … in words. */
  standing: string; /** Until when the letter that makes it their turn is held, and can be taken back; null where none is. */ heldUntil: string | null;
  urgency: UrgencyId;
  urgencyWhy: string;
  submittedAt: string;
  photoId: string | null;
  colours: ColourShare[];
  rugs: number;
  fibre: { name: string; words: string; low: number; probability: number; high: number } | null;
  improvement: { low: number; median: number; high: number } | null;
  /** Why the letter gives no such range, in a few words; then there is none here. null where it gives one, or there is none to give. */
  comesBackOpen: string | null;
}
export interface QueueView {
  waiting: Slip[];
  /** Of those, how many came since the workshop's last evening. */
  newSince: { count: number; since: string };
  /** Letters approved but not gone: no mail server, failed, unknown outcome. */
  letters: { notSent: number; failed: number; unknown: number; mailConfigured: boolean };
  /** Messages that came by mail and wait for a person; `readFirst`: what the most urgent of them says, where one does. */
  post: number;
  readFirst: string | null;
}

export interface LetterView {
  id: string;
  kind: "acknowledgement" | "reply" | "question";
  state: LetterStateId;
  /** The state in a sentence for staff: "Not sent: no mail server is set up." */
  says: string;
  subject: string;
  text: string;
  to: string;
  createdAt: string;
  notBefore: string;
  /** When it is tried again, where it did not get through at first. */
  nextTry: string | null;
  sentAt: string | null;
  approvedBy: string | null;
  /** Held letters can be taken back; those to a client without an address are to be read out. */
  canTakeBack: boolean; isToBeReadOut: boolean; /** It did not get through so far, and is tried again: somebody may give it up, or ring and read it out. */ canGiveUp: boolean; /** Until when it can be taken back that it was read out; null where it was not, or that is over. */ readOutUntil: string | null;
  enclosures: EnclosureView[];
}

/** A document that goes with a letter; its file is `/documents/<id>`. */
export interface EnclosureView { id: string; title: string }
/** A printed document as it was made; its file is `/documents/<id>`. */
export interface DocumentView {
  id: string;
  rugId: string;
  kind: DocumentKind;
  title: string;
  version: number;
  by: string;
  at: string;
  kilobytes: number;
  /** Whether it goes with the reply that is being written. */
  isEnclosed: boolean;
  /** How many letters it went with or goes with, and how many of those are held still. */
  letters: number;
  heldLetters: number;
  /** Since when, and why, it is no longer as it was made or no longer holds; null where it is. */
  altered: { at: string; why: string } | null;
  /** When its rug was judged anew, where it would say otherwise since then; else null. */
  judgedSince: string | null;
  /** False where its rug has no such document any more, so that it can only be left out or sent as it is. */
  canMakeAnew: boolean;
}

/** What a named person saw of a rug. */
export interface InspectionView { id: string; by: string; day: string; found: string; isBeyondRepair: boolean; /** Flood or waste water was told of only after it, so that letters and reports leave its verdict out. */ isOvertaken: boolean }

/** A file enclosed with a message that came; it is saved from `/desk/post/<id>/enclosed/<at>`. */
export interface EnclosedFileView { /** Its place among them, from 0. */ at: number; name: string; kilobytes: number }

/** A picture that came by mail and could not be opened as a photo; the message `postId` keeps it as it came. */
export interface UnopenedView { postId: string; name: string }

export type PostKindId = "letter" | "reply" | "automatic" | "bounce" | "unreadable";
export type PostStateId = "received" | "waiting" | "filed" | "aside";
/** A message that came in by mail, or as a file. */
export interface PostView {
  id: string;
  state: PostStateId;
  /** null until it was read. */
  kind: PostKindId | null;
  /** Why it counts as what it is, or waits, in a sentence; null where there is nothing to say. */
  says: string | null;
  from: { name: string; address: string } | null;
  subject: string;
  /** Its own words, without what it repeats. */
  text: string;
  quoted: string | null;
  /** Whether words of its own may be among what was folded: no letter of ours was known in it. */
  hidesPerhaps: boolean;
  pictures: number;
  /** Files that came with it and are no photos, and what else was enclosed and is not kept with the enquiry, a sentence each. */
  files: EnclosedFileView[]; leftOut: string[];
  arrivedAt: string;
  /** As its sender dated it. */
  sentAt: string | null;
  /** Who here brought it as a file; null where it came from the mailbox. */
  broughtBy: string | null;
  enquiry: { id: string; reference: string; title: string } | null;
  /** Why its words have it read before others; null where nothing in them does, or where it is settled. */
  readFirst: { urgency: UrgencyId; why: string } | null;
}

/** A bench test or a laboratory report that was recorded of a rug. */
export interface BenchTestView {
  id: string;
  name: string;
  /** What it speaks for: "the pile, its field". */
  of: string;
  by: string;
  at: string;
  readings: { ask: string; says: string }[];
  /** What it says, in sentences; none where it was withdrawn. */
  says: string[];
  withdrawn: { by: string; at: string; why: string } | null;
}

export interface RugView {
  id: string; title: string;
  /** What was written since the enquiry, oldest first. */
  messages: MessageView[];
  /** Which of the answers these seem to correct. */
  corrections: CorrectionView[];
  answers: RugAnswers;
  /** The day on which it was told when it happened, written out; null where that was not told. */
  sinceToldOn: string | null;
  /** Questions whose answer staff saw in a photo. */
  seen: QuestionId[];
  photos: PhotoView[];
  /** What was sent as photos of it by mail and could not be opened, while no photo has come since. */
  unopened: UnopenedView[];
  colours: ColourShare[];
  assessment: Assessment | null;
  /** What the letter of that assessment tells, and asks; null where there is none. */
  letter: ToldByLetter | null;
  /** The workshop's currency, where its amounts were judged in another; else null. ISO 4217. */
  currencyNow: string | null;
  /** Oldest first. */
  tests: BenchTestView[];
  /** The newest that counts. */
  inspection: InspectionView | null;
  /** Which documents can be made for it. */
  offers: DocumentKind[];
  /** What a cut-down plan still needs; null where one can be made. */
  planLack: PlanLack | null;
  /** What stands of what was measured in its photos, oldest first. */
  measured: MeasurementView[];
}

/** The enquiry page at the desk. */
export interface EnquiryView {
  id: string; reference: string;
  title: string; sentence: string;
  state: EnquiryStateId; stateSince: string;
  channel: "web" | "email" | "telephone"; submittedAt: string;
  urgency: UrgencyId; urgencyWhy: string;
  client: { name: string; email: string | null; telephone: string | null; isTrade: boolean; /** Why nothing more is sent to the address; null while it may be written to. */ suppressedWhy: string | null; earlier: { reference: string; id: string; title: string }[] };
  parties: { kind: string; name: string; reference: string | null }[];
  answers: EnquiryAnswers; rugs: RugView[];
  /** The letter that did not reach the client and has no newer one after it; null where all is well. */
  undelivered: { letterId: string; /** Somebody may ring, and record that they read it out. */ canBeReadOut: boolean; kind: LetterView["kind"]; to: string; says: string; /** It may have arrived all the same. */ isInDoubt: boolean } | null;
  /** What the client did after our newest letter was approved and before it left; null where they did nothing then. */
  meanwhile: MeanwhileView | null;
  /** Our newest letter with an answer, where what it said no longer holds and no newer one has left: why it is our turn, or while it is not. */
  outdated: OutdatedLetterView | null;
  draft: DraftView | null;
  /** Names what the client did last; null where they did nothing since they asked. Whoever approves a letter says that they saw this. */
  heard: string | null;
  /** How many messages of the client's the draft has no place for, and no letter approved since: whoever approves it says that they have read them. */
  wordsWithoutPlace: number;
  /** The same of messages from an address that nobody has said to be the client's. */
  otherWordsWithoutPlace: number;
  /** Letters from the client's address that wait in the Post: they may belong here. */
  inPost: readonly WaitingInPost[];
  /** What came since our last letter with an answer; before the first one, what the client wrote since they asked. null where that is nothing. */
  since: SinceView | null;
  /** What the client asked that the reply being written has to answer; null where none is being written. */
  asked: AskedOfUs | null;
  letters: LetterView[];
  /** Oldest first. */
  documents: DocumentView[];
  /** What came by mail, oldest first. */
  post: PostView[];
  /** `sentences`: those that a letter was sent with all the same, and what was said of each; of something left out the sentence is empty. */
  history: { at: string; who: string; what: string; sentences: { sentence: string; why: string }[] }[];
  /** What this person may do now. */
  may: { edit: boolean; approve: boolean; second: boolean; ask: boolean; test: boolean; blur: boolean; correct: boolean; correctClient: boolean; erase: boolean; /** Words nobody has read brought it where it stands. */ setAside: boolean; inspect: boolean; enclose: boolean; moveTo: EnquiryStateId[] };
  /** Set where a trainee's letter waits for a second person. */
  waitsForSecond: { by: string; /** The time they chose for it to leave. */ sendAt: string | null; /** What they said goes as it is, though its rug was judged anew. */ asItIs: { documentId: string; judgedAt: string }[] } | null;
  /** Whom the letters come from, as a mail program shows it. */
  sender: { name: string; address: string };
  /** Position in the queue: "3 of 11", and the next one. */
  place: { at: number; of: number; nextId: string | null };
  holdMinutes: number;
}
