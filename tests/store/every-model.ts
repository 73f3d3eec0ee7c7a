import type { Prisma, Tx } from "../../lib/store/database";

const at = (day: number) => new Date(Date.UTC(2026, 2, day, 9, 30, 15, 123));

/** One row of every model with every field filled, in the order in which they can be written. */
export const ROWS = {
  workshop: { id: "workshop", values: { name: "Lantern Yard Rug Workshop", holdMinutes: 5 }, version: 3, updatedAt: at(1) },
  paragraphVersion: { id: "pv1", paragraphId: "care", version: 2, wording: { text: "We test first, {rug}.", off: false }, reason: "So we say it here", staffId: "s1", at: at(2) },
  staff: { id: "s1", name: "Ines Corder", email: "ines@example.org", emailVerified: true, image: "none", role: "owner", disabledAt: at(2), createdAt: at(1), updatedAt: at(3) },
  staffSession: { id: "ss1", expiresAt: at(9), token: "t1", createdAt: at(1), updatedAt: at(1), ipAddress: "192.0.2.7", userAgent: "a browser", userId: "s1" },
  staffAccount: {
    id: "sa1", accountId: "s1", providerId: "credential", userId: "s1", accessToken: "a", refreshToken: "r", idToken: "i",
    accessTokenExpiresAt: at(5), refreshTokenExpiresAt: at(6), scope: "all", password: "$argon2id$…", createdAt: at(1), updatedAt: at(1),
  },
  staffVerification: { id: "sv1", identifier: "reset", value: "v", expiresAt: at(2), createdAt: at(1), updatedAt: at(1) },
  rateLimit: { id: "r1", key: "sign-in:192.0.2.7", count: 3, lastRequest: 1_772_357_415_123n },
  invitation: { id: "in1", tokenHash: "h0", role: "reviewer", email: "new@example.org", expiresAt: at(4), usedAt: at(3), createdAt: at(2) },
  intake: { id: "i1", tokenHash: "h1", answers: { wetNow: "yes", rug: { widthCm: 170.5, incidents: ["spill", "pet"] } }, addressHash: "ah", createdAt: at(1), updatedAt: at(2), expiresAt: at(20), addsToId: "e1", addedAt: at(3) },
  client: { id: "c1", name: "Zoë “Ngọc” Łukasz 🧶", email: "zoe@example.com", telephone: "+00 1", language: "cy", isTrade: true, suppressedAt: at(3), suppressedWhy: "550 5.1.1", createdAt: at(1) },
  enquiry: {
    id: "e1", reference: "K7-204", state: "their_turn", stateSince: at(2), channel: "telephone", clientId: "c1", intakeId: "i1",
    answers: { consent: "I agree." }, title: "Grey, 170 × 240", urgency: "two_days", urgencyWhy: "It was wet a day ago.", submittedAt: at(2), joinedToId: "e1",
  },
  thirdParty: { id: "tp1", enquiryId: "e1", kind: "insurer", name: "Harbour Mutual (invented)", reference: "HM-1" },
  clientLink: { id: "cl1", enquiryId: "e1", tokenHash: "h2", createdAt: at(2), expiresAt: at(30), revokedAt: at(3) },
  rug: { id: "rug1", enquiryId: "e1", position: 1, title: "Grey, 170 × 240" },
  answer: { id: "a1", rugId: "rug1", question: "widthCm", value: 170.25, from: "client", at: at(2) },
  photo: {
    id: "p1", intakeId: "i1", rugId: "rug1", position: 1, kind: "label", sha256: "f".repeat(64), receivedBytes: 2_147_483_647, receivedType: "image/heic",
    sentKey: "b".repeat(64), originalName: "IMG_0001.HEIC", width: 4032, height: 3024, takenAt: at(1), exposure: { iso: 80 }, measured: { colours: [{ hex: "#aabbcc", share: 0.4 }] }, createdAt: at(2),
  },
  measurement: {
    id: "m1", photoId: "p1", kind: "spots", marks: { untouched: { shape: "circle", x: 0.25, y: 0.5, radius: 0.025 } }, result: { deltaE: 9.5 }, from: "s1", at: at(4),
    withdrawnAt: at(5), withdrawnById: "s1", withdrawnWhy: "Part of the photo was blurred.", replacedById: "m2",
  },
  labelReading: {
    id: "lr1", photoId: "p1", text: "80% WOOL", corrected: "80 % wool, 20 % silk", words: [[{ text: "80%", confidence: 0.91, unsure: false }]], crop: { x: 0.1, y: 0.2, width: 0.5, height: 0.25 },
    degrees: -88.5, state: "corrected", answeredBy: "s1", answeredAt: at(3), createdAt: at(2),
    agreed: { state: "confirmed", text: "100% SILK", corrected: null, words: [], crop: { x: 0, y: 0, width: 1, height: 1 }, degrees: 0, answeredBy: "client", answeredAt: "2026-01-02T03:04:05.006Z" },
  },
  finding: { id: "f1", rugId: "rug1", what: "shine", value: "strong", strength: "said", from: "client", at: at(2) },
  assessment: { id: "as1", rugId: "rug1", modelVersion: "1", asOf: at(2), settings: { prices: null }, findings: [{ what: "shine" }], result: { fibres: [0.1, 0.2] }, createdAt: at(2) },
  draft: { id: "d1", enquiryId: "e1", number: 2, approvedNumber: 1, waitingNumber: 2, waitingById: "s1", waitingKind: "question", waitingSince: at(3), waitingSendAt: at(4) },
  revision: { id: "rv1", draftId: "d1", number: 2, subject: "Your rug", text: "Dear Zoë\n", paragraphs: [{ id: "opening", version: 1 }], authorId: "s1", assessmentId: "as1", createdAt: at(2) },
  letter: {
    id: "l1", enquiryId: "e1", kind: "reply", automatic: true, state: "unknown", messageId: "<1@example.org>", inReplyTo: "<0@example.org>", references: "<0@example.org>",
    toName: "Zoë", toAddress: "zoe@example.com", subject: "Your rug", text: "Dear Zoë", html: "<p>Dear Zoë</p>", notBefore: at(2), attempts: 4, leaseOwner: "w1", leaseUntil: at(3),
    lastResponse: "250 ok", sentAt: at(3), approvedById: "s1", secondedById: "s1", createdAt: at(2),
  },
  inspection: {
    id: "ip1", rugId: "rug1", by: "Ines Corder", day: "2026-03-04", found: "The pile is distorted.", isBeyondRepair: true, recordedById: "s1", at: at(4),
    withdrawnAt: at(5), withdrawnById: "s1", withdrawnWhy: "It was another rug.",
  },
  document: {
    id: "dc1", enquiryId: "e1", rugId: "rug1", kind: "condition-report", version: 2, title: "Condition report K7-204", filled: { theirReference: "HM-1" },
    content: { title: "Condition report K7-204", blocks: [] }, pdf: "JVBERi0=", sha256: "e".repeat(64), bytes: 5, alteredAt: at(4), alteredWhy: "A photo in it was blurred.", madeById: "s1", createdAt: at(3),
  },
  enclosure: { id: "ec1", documentId: "dc1", draftId: "d1", letterId: "l1", at: at(4) },
  post: {
    id: "po1", sha256: "e".repeat(64), bytes: 41_000, state: "filed", kind: "reply", says: "It answers our letter.", attempts: 1, begunAt: at(4), messageId: "<9@example.com>", fromName: "Zoë",
    fromAddress: "zoe@example.com", subject: "Re: Your rug", sentAt: at(3), text: "It is on the fringe too.", quoted: "> Dear Zoë", pictures: 2, leftOut: "invoice.pdf",
    enquiryId: "e1", broughtById: "s1", arrivedAt: at(4),
  },
  mailbox: {
    id: "desk@mail.example.org:993/INBOX", uidValidity: "4294967295", lastUid: "4294967295", leaseOwner: "w1", leaseUntil: at(4), lookedAt: at(4), trouble: "refused", troubleSince: at(3),
  },
  benchTest: {
    id: "b1", rugId: "rug1", test: "burn", yarn: "pile:field", response: { ash: "grey" }, staffId: "s1", at: at(4),
    withdrawnAt: at(5), withdrawnById: "s1", withdrawnWhy: "The threads came from another rug.",
  },
  outcome: { id: "o1", rugId: "rug1", value: { improvement: 0.4 }, staffId: "s1", at: at(5) },
  audit: { id: "au1", at: at(2), actorKind: "staff", actorId: "s1", action: "approve-reply", enquiryId: "e1", detail: { number: 2 } },
} satisfies { [M in Uncapitalize<Prisma.ModelName>]: Record<string, unknown> };

export type ModelKey = keyof typeof ROWS;
export const MODELS = Object.keys(ROWS) as ModelKey[];

interface AnyModel {
  create(a: { data: object }): Promise<unknown>;
  findMany(a?: object): Promise<Record<string, unknown>[]>;
  count(): Promise<number>;
}
/** A model by its name, for tests that treat all alike. */
export const model = (db: object, key: ModelKey): AnyModel => (db as Record<ModelKey, AnyModel>)[key];

export async function writeOneOfEach(tx: Tx): Promise<void> {
  for (const key of MODELS) await model(tx, key).create({ data: ROWS[key] });
}
