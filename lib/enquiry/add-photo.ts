import "server-only";
import { createHash } from "node:crypto";
import type { Readable } from "node:stream";
import { receivePhoto, type ReceivedPhoto } from "../photo/server/receive";
import { ALLOWANCES, takeOne } from "../staff/rate-limit";
import { database, type Db, type Tx } from "../store/database";
import { photoFolder, removePhotoFiles } from "../store/photo-files";
import type { PhotoKind } from "../trade/questions";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { clientActed } from "./client-acted";
import { inOneStepOfMany } from "./one-step";
import { photoKindSchema, photoView } from "./photo-view";
import { LIMITS } from "./limits";
import { reconsider } from "./reconsider";
import { IS_SENT, isSent } from "./sent-as";
import { toJson } from "./to-json";
import type { PhotoView } from "./views";
import { wrong } from "./wrong";

/** What one address may send in a day, over all its questionnaires, in bytes as received: 2 GiB. Elicited. */
export const ADDRESS_BYTES_A_DAY = 2 * 1024 ** 3;
const DAY_MS = 86_400_000;

/** Where a photo goes: into a questionnaire, or to a rug of an enquiry. */
type Home = { intakeId: string; rugId: null; enquiryId: null } | { intakeId: null; rugId: string; enquiryId: string };
const FULL = refuse("too-many", wrong("refusal.photos-full"));

/** `key`: a UUID the sender made for this photo; sent again under it because no answer came, it is taken once. */
export interface SentAs { kind: string; rugId?: string; key?: string }

/**
 * Takes in one photo. The body is streamed to disk and decoded before anything is stored; whatever is refused leaves neither a
 * file nor a row, and the rest of the enquiry is kept. Of any number sent together at most 12 a rug are taken.
 */
export async function addPhoto(
  caller: Caller,
  meta: SentAs,
  body: Readable,
  sent: { name: string; type: string },
  now: Date = new Date(),
): Promise<Result<PhotoView>> {
  const kind = photoKindSchema.safeParse(meta.kind);
  if (!kind.success) return refuse("invalid", wrong("refusal.photo-kind"));
  const home = await homeOf(caller, meta.rugId);
  if (!home.ok) return home;
  const sentKey = meta.key === undefined ? null : keyIn(home.value, meta.key);
  const here = sentKey && (await database().photo.findUnique({ where: { sentKey } }));
  if (here) return ok(photoView(here));
  const room = await roomFor(database(), caller, home.value, now);
  if (room) return room;
  const sender = caller.kind === "client" ? caller.linkId : "addressHash" in caller ? caller.addressHash : null;
  if (sender && !(await takeOne(`photo:${sender}`, ALLOWANCES.photoAddress, now))) {
    return refuse("too-many", wrong("refusal.many-photos"));
  }
  const received = await receivePhoto(body, sent, photoFolder());
  if (!received.ok) return received;
  const kept = await keep(caller, home.value, { kind: kind.data, photo: received.photo, sentKey, now }).catch(async (error: unknown) => {
    await removePhotoFiles(received.photo.id);
    throw error;
  });
  if (!kept.ok || kept.value.id !== received.photo.id) await removePhotoFiles(received.photo.id);
  return kept;
}

const keep = (
  caller: Caller,
  home: Home,
  { kind, photo, sentKey, now }: { kind: PhotoKind; photo: ReceivedPhoto; sentKey: string | null; now: Date },
): Promise<Result<PhotoView>> =>
  inOneStepOfMany(async (tx) => {
    const photos = await tx.photo.findMany({ where: whereOf(home), orderBy: { position: "asc" } });
    const here = photos.find((p) => sentKey !== null && p.sentKey === sentKey);
    if (here) return ok(photoView(here));
    const full = await roomFor(tx, caller, home, now);
    if (full) return full;
    const position = (photos.at(-1)?.position ?? 0) + 1;
    const row = await tx.photo.create({ data: { ...photoRow(photo), kind, sentKey, ...whereOf(home), position, createdAt: now } });
    if (home.enquiryId) {
      await audit(tx, caller, { action: "photo-added", enquiryId: home.enquiryId, at: now, detail: { photoId: row.id } });
      if (caller.kind === "client") await clientActed(tx, { ...home, now });
      else await reconsider(tx, home, now);
    }
    return ok(photoView(row, { earlier: photos }));
  });

/** The sender's key, good in this one place only: with a key of somebody else nobody learns what they sent. */
const keyIn = (home: Home, key: string): string => createHash("sha256").update(`${home.intakeId ?? home.rugId} ${key}`).digest("hex");

/** The columns of a photo that reception knows. */
export function photoRow(photo: ReceivedPhoto) {
  const { id, sha256, receivedBytes, receivedType, originalName, width, height, takenAt, exposure, measured } = photo;
  return {
    id,
    sha256,
    receivedBytes,
    receivedType,
    originalName,
    width,
    height,
    takenAt,
    measured: toJson(measured),
    ...(exposure ? { exposure: toJson(exposure) } : {}),
  };
}

const whereOf = (home: Home) => (home.intakeId === null ? { rugId: home.rugId } : { intakeId: home.intakeId });

async function homeOf(caller: Caller, rugId: string | undefined): Promise<Result<Home>> {
  if (caller.kind === "intake") {
    const no = authorise(caller, "add-photo");
    return no ?? ok({ intakeId: caller.intakeId, rugId: null, enquiryId: null });
  }
  const rug =
    caller.kind === "client" && rugId === undefined
      ? await database().rug.findFirst({
          where: { enquiryId: caller.enquiryId },
          orderBy: { position: "asc" },
          select: { id: true, enquiryId: true },
        })
      : await database().rug.findUnique({ where: { id: rugId ?? "" }, select: { id: true, enquiryId: true } });
  const no = authorise(caller, "add-photo", { enquiryId: rug?.enquiryId ?? null, intakeId: null });
  if (no) return no;
  return rug ? ok({ intakeId: null, rugId: rug.id, enquiryId: rug.enquiryId }) : NOT_THERE;
}

/** null while another photo may come; asked before the bytes are read, and again where it counts. */
async function roomFor(db: Db | Tx, caller: Caller, home: Home, now: Date) {
  if (home.intakeId !== null) {
    const intake = await db.intake.findUnique({ where: { id: home.intakeId }, select: IS_SENT });
    if (!intake) return NOT_THERE;
    if (isSent(intake))
      return refuse("changed-meanwhile", wrong("refusal.sent-already-photos"));
  }
  if ((await db.photo.count({ where: whereOf(home) })) >= LIMITS.maxPhotos) return FULL;
  if (!("addressHash" in caller) || !caller.addressHash) return null;
  const { _sum } = await db.photo.aggregate({
    where: { intake: { addressHash: caller.addressHash, createdAt: { gt: new Date(now.getTime() - DAY_MS) } } },
    _sum: { receivedBytes: true },
  });
  return (_sum.receivedBytes ?? 0) < ADDRESS_BYTES_A_DAY
    ? null
    : refuse("too-many", wrong("refusal.many-bytes"));
}
