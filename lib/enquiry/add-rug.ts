import "server-only";
import type { Prisma, Tx } from "../store/database";
import type { WorkshopSettings } from "../workshop/settings";
import { enquiryTitle } from "./assess-answers";
import { audit } from "./audit";
import { clientActed } from "./client-acted";
import { LIMITS } from "./limits";
import { addClientLink } from "./open-client-link";
import { rugColours } from "./photo-view";
import { addRugRow, toldAtOnce, type AtOnce, type NewEnquiry } from "./store-enquiry";
import { enquiryAnswersOf, rugAnswersOf } from "./stored";

const PARTS = { client: true, rugs: { orderBy: { position: "asc" }, include: { answers: true, photos: true } } } as const satisfies Prisma.EnquiryInclude;
type Earlier = Prisma.EnquiryGetPayload<{ include: typeof PARTS }>;

export interface Added extends AtOnce { enquiryId: string; reference: string; linkId: string; token: string; isAdded: true }

/** The enquiry that the same person had sent before they began this questionnaire from there; null where there is none. */
export async function sentBefore(tx: Tx, intakeId: string, { client }: Pick<NewEnquiry, "client">): Promise<Earlier | null> {
  const { addsToId } = await tx.intake.findUniqueOrThrow({ where: { id: intakeId }, select: { addsToId: true } });
  const earlier = addsToId === null ? null : await tx.enquiry.findUnique({ where: { id: addsToId }, include: PARTS });
  return earlier && (["name", "email", "telephone"] as const).every((way) => plain(earlier.client[way]) === plain(client[way])) ? earlier : null;
}
const plain = (text: string | null): string => (text ?? "").trim().toLowerCase();

/**
 * Adds the rug of a questionnaire to the enquiry that its sender had sent before, so that both stand on one page and in one letter. null where it
 * makes an enquiry of its own: what holds for an enquiry as a whole (whether it is wet, why they write) is not the same, there is no room, or a
 * letter of ours is on its way or gone.
 */
export async function addRug(tx: Tx, intakeId: string, { earlier, written, settings }: { earlier: Earlier; written: NewEnquiry; settings: WorkshopSettings }): Promise<Added | null> {
  const { submittedAt: now } = written;
  const [rug] = written.rugs;
  const title = written.assessed.rugs[0]?.title;
  if (!rug || title === undefined || !isOneMatter(earlier, written)) return null;
  const { id: enquiryId, reference, rugs } = earlier;
  const all = [...rugs.map((r) => ({ answers: rugAnswersOf(r.answers), colours: rugColours(r.photos) })), { answers: rug.answers, colours: [] }];
  const whole = { title: enquiryTitle({ rugs: all, enquiry: written.answers, workshop: settings }) };
  const isOpen = await tx.enquiry.updateMany({ where: { id: enquiryId, state: "new" }, data: whole });
  if (isOpen.count !== 1) return null;
  await tx.intake.updateMany({ where: { id: intakeId, addedAt: null }, data: { addedAt: now } });
  const rugId = await addRugRow(tx, written, { enquiryId, position: (rugs.at(-1)?.position ?? 0) + 1, rug, title });
  const link = await addClientLink(tx, enquiryId, now);
  await audit(tx, { kind: "client", enquiryId, linkId: link.linkId }, { action: "rug-added", enquiryId, at: now, detail: { rugId, photos: rug.photoIds.length } });
  await clientActed(tx, { enquiryId, rugId, now });
  return { enquiryId, reference, ...link, ...toldAtOnce(written).atOnce, isAdded: true };
}

function isOneMatter({ answers, rugs }: Earlier, written: NewEnquiry): boolean {
  const before = enquiryAnswersOf(answers).answers;
  return before.wetNow === written.answers.wetNow && before.reason === written.answers.reason && rugs.length < LIMITS.maxRugs;
}
