import "server-only";
import { ALLOWANCES, takeOne } from "../staff/rate-limit";
import { database, type Tx } from "../store/database";
import { wordsIn } from "../words/words";
import { readSettings, type WorkshopSettings } from "../workshop/settings";
import { acknowledge } from "./acknowledge";
import { addRug, sentBefore } from "./add-rug";
import { assessAnswers } from "./assess-answers";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { readLibrary } from "./library";
import { inOneStepOfMany } from "./one-step";
import { addClientLink } from "./open-client-link";
import { measuredOf } from "./measurement-findings";
import { findingsOfLabels, isTypedLabelShown } from "./label-reading";
import { rugColours, storedKinds } from "./photo-view";
import { intakeAnswersSchema, submissionSchema, type Submission } from "./questionnaire";
import { sentAs } from "./sent-as";
import { relevantAnswers } from "./steps";
import { storeEnquiry, type NewEnquiry } from "./store-enquiry";
import { pokeOutbox } from "./write-letter";
import { wrong } from "./wrong";

export interface Submitted {
  reference: string;
  enquiryId: string;
  clientToken: string;
}

const NO_WAY_BACK = wrong("refusal.no-way-back");

/**
 * Turns a questionnaire into an enquiry: all of it in one transaction, or nothing. Sending the same questionnaire again,
 * even at the same moment, finds the enquiry that was made and only gives a fresh link to it. Of one about another rug the
 * rug is added to the enquiry sent before, where both are one matter.
 */
export async function submitEnquiry(caller: Caller, submission: Submission, now: Date): Promise<Result<Submitted>> {
  const no = authorise(caller, "fill-intake");
  if (no || caller.kind !== "intake") return no ?? NOT_THERE;
  const parsed = submissionSchema.safeParse(submission);
  if (!parsed.success)
    return refuse(
      "invalid",
      wrong("wrong.look-again"),
      Object.fromEntries(parsed.error.issues.map((i) => [i.path.join("."), i.message])),
    );
  const { name, email, telephone } = parsed.data.contact;
  if (!email && !telephone) return refuse("invalid", NO_WAY_BACK, { "contact.email": NO_WAY_BACK });
  if (caller.addressHash && !(await takeOne(`submit:${caller.addressHash}`, ALLOWANCES.submitAddress, now))) {
    return refuse("too-many", wrong("refusal.many-enquiries"));
  }
  const settings = await readSettings();
  const written = await writtenEnquiry(caller.intakeId, { name, email: email || null, telephone: telephone || null }, settings, now);
  if (!written) return NOT_THERE;
  const done = await inOneStepOfMany((tx) => submitOnce(tx, caller, written, settings));
  if (done.ok) pokeOutbox();
  return done;
}

async function submitOnce(tx: Tx, caller: Caller & { kind: "intake" }, written: NewEnquiry, settings: WorkshopSettings): Promise<Result<Submitted>> {
  const now = written.submittedAt;
  const earlier = await sentAs(tx, caller.intakeId);
  if (earlier) {
    const { token } = await addClientLink(tx, earlier.id, now);
    return ok({ reference: earlier.reference, enquiryId: earlier.id, clientToken: token });
  }
  const photos = await tx.photo.findMany({ where: { intakeId: caller.intakeId }, select: { id: true } });
  const known = written.rugs.flatMap((r) => r.photoIds);
  if (photos.length !== known.length || photos.some((p) => !known.includes(p.id))) {
    return refuse("changed-meanwhile", wrong("refusal.photos-changed"));
  }
  const before = await sentBefore(tx, caller.intakeId, written);
  const added = before && (await addRug(tx, caller.intakeId, { earlier: before, written, settings }));
  const { token, ...stored } = added ?? (await storeNew(tx, caller, { ...written, joinedToId: before?.id ?? null }));
  const { name, email } = written.client;
  if (email) await acknowledge(tx, { ...stored, channel: written.channel, hasPhotos: known.length > 0, client: { name, email }, settings, now });
  return ok({ reference: stored.reference, enquiryId: stored.enquiryId, clientToken: token });
}

async function storeNew(tx: Tx, caller: Caller, written: NewEnquiry) {
  const { submittedAt: at } = written;
  const stored = await storeEnquiry(tx, written);
  const link = await addClientLink(tx, stored.enquiryId, at);
  await audit(tx, caller, { action: "submitted", enquiryId: stored.enquiryId, at, detail: { photos: written.rugs.flatMap((r) => r.photoIds).length } });
  return { ...stored, ...link, isAdded: false };
}

/** Reads the questionnaire and judges it, before the transaction begins: nothing slow belongs inside. */
async function writtenEnquiry(
  intakeId: string,
  contact: Pick<NewEnquiry["client"], "name" | "email" | "telephone">,
  settings: WorkshopSettings,
  now: Date,
): Promise<NewEnquiry | null> {
  const intake = await database().intake.findUnique({ where: { id: intakeId }, include: { photos: { orderBy: { position: "asc" }, include: { measurements: true, label: true } } } });
  if (!intake) return null;
  const { rug = {}, wetNow, reason } = relevantAnswers(intakeAnswersSchema.parse(intake.answers));
  const answers = { wetNow, reason };
  const client = { ...contact, isTrade: reason === "trade" };
  const assessed = assessAnswers({
    channel: "web",
    asOf: now.toISOString(),
    enquiry: answers,
    client,
    workshop: settings,
    library: await readLibrary(),
    rugs: [{ answers: rug, colours: rugColours(intake.photos), ...storedKinds(intake.photos), tests: findingsOfLabels(intake.photos), labelShown: isTypedLabelShown(rug.labelText, intake.photos), measured: measuredOf(intake.photos) }],
  });
  return {
    channel: "web",
    submittedAt: now,
    intakeId,
    client,
    parties: [],
    answers,
    consent: { sentence: wordsIn(settings.locale).say("send.consent"), at: now.toISOString() },
    rugs: [{ answers: rug, photoIds: intake.photos.map((p) => p.id) }],
    assessed,
    from: "client",
  };
}
