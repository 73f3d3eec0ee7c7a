import { Readable } from "node:stream";
import sharp from "sharp";
import { addPhoto } from "../../../lib/enquiry/add-photo";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import type { Caller, Result } from "../../../lib/enquiry/caller";
import { openIntake } from "../../../lib/enquiry/open-intake";
import type { IntakeAnswers, Submission } from "../../../lib/enquiry/questionnaire";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import { saveIntake } from "../../../lib/enquiry/save-intake";
import { saveSettings } from "../../../lib/enquiry/save-settings";
import { submitEnquiry, type Submitted } from "../../../lib/enquiry/submit-enquiry";
import { callerFromLink } from "../../../lib/enquiry/open-client-link";
import { ANSWER_HERE } from "../../../lib/reply/open-places";
import { database } from "../../../lib/store/database";
import { createStaff } from "../../../lib/staff/new-person";
import type { StaffRole } from "../../../lib/staff/caller";
import { DEFAULT_SETTINGS } from "../../../lib/workshop/settings-schema";

export const NOW = new Date("2026-11-25T09:00:00Z");
export const later = (minutes: number): Date => new Date(NOW.getTime() + minutes * 60_000);
export const SYSTEM: Caller = { kind: "system", what: "tests" };

/** The value of a result that must have gone well. */
export function good<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`Expected success but received ${result.code}: ${result.say} ${JSON.stringify(result.fields ?? {})}`);
  return result.value;
}

const people = new Map<string, Promise<Caller & { kind: "staff" }>>();
/** A person of that role and name; made once, since hashing a password takes its time. */
export function staff(role: StaffRole, name: string): Promise<Caller & { kind: "staff" }> {
  const key = `${role}-${name.toLowerCase().replaceAll(" ", "-")}`;
  const known =
    people.get(key) ??
    createStaff(SYSTEM, { name, email: `${key}@lantern-yard.example`, password: "copper teapot on a ferry", role }).then((made) => ({
      kind: "staff" as const,
      staffId: good(made).staffId,
      name,
      role,
    }));
  people.set(key, known);
  return known;
}

export const settle = () =>
  saveSettings(SYSTEM, {
    ...DEFAULT_SETTINGS,
    name: "Lantern Yard Rug Workshop",
    email: "desk@lantern-yard.example",
    telephone: "01632 960 200",
    holdMinutes: 5,
  }).then(good);

export const WET_VISCOSE: IntakeAnswers = {
  wetNow: "wet",
  reason: "just-happened",
  rug: {
    labelText: "100% viscose",
    labelFound: "typed",
    sellerSaid: "silk",
    widthCm: 170,
    lengthCm: 240,
    incidents: ["spill"],
    liquid: "coffee-tea",
    since: "hour",
    story: "It went over the edge of the tray.",
  },
};
export const CURIOUS: IntakeAnswers = { wetNow: "no", reason: "what-is-it", rug: { sellerSaid: "silk", shine: "two-tone", incidents: ["nothing"] } };
export const ANA: Submission = { contact: { name: "Ana Example", email: "ana@example.org" }, consent: true };

export async function intake(answers: IntakeAnswers = WET_VISCOSE, now = NOW): Promise<Caller & { kind: "intake" }> {
  const { intakeId } = good(await openIntake({ kind: "public", addressHash: null }, now));
  const caller: Caller & { kind: "intake" } = { kind: "intake", intakeId, addressHash: null };
  good(await saveIntake(caller, answers));
  return caller;
}

let picture: Promise<Buffer> | undefined;
const jpeg = () =>
  // A weave, as a plain picture counts as blurred and is asked for again.
  (picture ??= sharp({ create: { width: 64, height: 48, channels: 3, background: "#8a8f98", noise: { type: "gaussian", mean: 140, sigma: 25 } } })
    .jpeg()
    .toBuffer());
export const photoBody = async (): Promise<Readable> => Readable.from([await jpeg()]);
export const PHOTO = { name: "rug.jpg", type: "image/jpeg" };
export const givePhoto = async (caller: Caller, kind = "whole", now = NOW, rugId?: string) => addPhoto(caller, { kind, ...(rugId === undefined ? {} : { rugId }) }, await photoBody(), PHOTO, now);

export async function submitted(answers: IntakeAnswers = WET_VISCOSE, submission: Submission = ANA, now = NOW): Promise<Submitted> {
  return good(await submitEnquiry(await intake(answers, now), submission, now));
}

export async function clientOf(enquiry: Submitted, now = NOW): Promise<Caller & { kind: "client" }> {
  const caller = await callerFromLink(enquiry.clientToken, now);
  if (!caller) throw new Error("Expected the link to open but it did not");
  return caller;
}

/** Somebody writes the answer into the draft and sends it. */
export async function answerOnce(enquiryId: string, now: Date) {
  const ivo = await staff("reviewer", "Ivo Castellane");
  const { draft } = good(await readEnquiry(ivo, enquiryId, now));
  const { number } = good(await saveDraft(ivo, { enquiryId, from: draft?.number ?? 0, subject: draft?.subject ?? "", text: (draft?.text ?? "").replace(ANSWER_HERE, "Yes, we can.") }, now));
  return good(await approveReply(ivo, { enquiryId, number }, now));
}

/** The mail server takes an approved letter. */
export const leaves = (letterId: string, at: Date) => database().letter.update({ where: { id: letterId }, data: { state: "sent", sentAt: at } });
