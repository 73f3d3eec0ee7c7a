import "server-only";
import { createReadStream } from "node:fs";
import path from "node:path";
import { receivePhoto, type ReceivedPhoto } from "../photo/server/receive";
import type { Tx } from "../store/database";
import { photoFolder, removePhotoFiles } from "../store/photo-files";
import type { RugAnswers, ShownKind } from "../trade/questions";
import { readSettings } from "../workshop/settings";
import { acknowledge } from "./acknowledge";
import { photoRow } from "./add-photo";
import { assessAnswers } from "./assess-answers";
import { audit } from "./audit";
import { authorise } from "./authorise";
import { ok, refuse, type Caller, type Refusal, type Result } from "./caller";
import { readLibrary } from "./library";
import { inOneStepOfMany } from "./one-step";
import { unlessOwn } from "./own-address";
import { addClientLink } from "./open-client-link";
import { colourPhoto, sentKinds } from "./photo-view";
import { enquiryFileSchema, type EnquiryFile } from "./enquiry-file";
import { storeEnquiry } from "./store-enquiry";
import { pokeOutbox } from "./write-letter";

/** A photo whose files are kept and whose row is still to be written. */
export interface Taken {
  kind: ShownKind;
  photo: ReceivedPhoto;
}
type FileRug = EnquiryFile["rugs"][number];

/**
 * Takes in a whole enquiry at once: from the telephone, or one written as a file. One or more rugs; the same writing as the
 * questionnaire's. Photos by path are for the program itself (relative to `folder`); a path from a person here is refused.
 */
export async function enterEnquiry(
  caller: Caller,
  file: EnquiryFile,
  now: Date,
  { folder }: { folder?: string } = {},
): Promise<Result<{ reference: string; enquiryId: string }>> {
  const no = authorise(caller, "enter-enquiry");
  if (no) return no;
  const parsed = enquiryFileSchema.safeParse(file);
  if (!parsed.success)
    return refuse(
      "invalid",
      "Please look at what you wrote again.",
      Object.fromEntries(parsed.error.issues.map((i) => [i.path.join("."), i.message])),
    );
  const isByPath = parsed.data.rugs.some((r) => r.photos?.length);
  if (isByPath && caller.kind !== "system") return refuse("not-allowed", "Photos are added on the enquiry's own page.");
  const isTested = parsed.data.rugs.some((r) => r.benchTests?.length || r.laboratory);
  if (isTested) return refuse("not-allowed", "Tests are recorded on the enquiry's own page, where the rug is.");
  if (!parsed.data.client) return refuse("invalid", "Write the client's name.", { "client.name": "Write the client's name." });
  const own = unlessOwn(parsed.data.client.email, await readSettings(), "email");
  if (own) return own;
  const photos: Taken[][] = [];
  try {
    for (const rug of parsed.data.rugs) {
      const taken = await takePhotos(rug, folder ?? ".", photos);
      if (!taken.ok) return await undone(photos, taken);
    }
    const done = await writeEntered(caller, parsed.data, photos, now);
    if (done.ok) pokeOutbox();
    return done.ok ? done : await undone(photos, done);
  } catch (error) {
    await undone(photos, null);
    throw error;
  }
}

async function takePhotos(rug: FileRug, folder: string, photos: Taken[][]): Promise<Result<null>> {
  const taken: Taken[] = [];
  photos.push(taken);
  for (const { path: name, kind = "whole" } of rug.photos ?? []) {
    const received = await receivePhoto(createReadStream(path.resolve(folder, name)), { name: path.basename(name), type: "" }, photoFolder());
    if (!received.ok) return refuse(received.code, `${path.basename(name)}: ${received.say}`);
    taken.push({ kind, photo: received.photo });
  }
  return ok(null);
}

/** Removes the files of photos that were taken for nothing. */
export async function undone<T>(photos: Taken[][], result: T): Promise<T> {
  await Promise.all(photos.flat().map((t) => removePhotoFiles(t.photo.id)));
  return result;
}

export interface Entering {
  /** Written in the same transaction; a refusal undoes the enquiry. */
  also?: (tx: Tx, stored: { enquiryId: string; reference: string }) => Promise<Refusal | null>;
  /** Whose words the answers are. Default: of the person here who enters them, else the client's. */
  from?: string;
  /** Whether the client is told that it has come. Default: yes. */
  isAnswered?: boolean;
}

/** Writes an enquiry that was parsed, with photos whose files are kept: all of it, or nothing. The caller has been authorised. */
export async function writeEntered(
  caller: Caller,
  file: EnquiryFile,
  photos: Taken[][],
  now: Date,
  { also, from = caller.kind === "staff" ? caller.staffId : "client", isAnswered = true }: Entering = {},
): Promise<Result<{ reference: string; enquiryId: string }>> {
  const { channel = "telephone", wetNow, reason, parties = [] } = file;
  const submittedAt = file.writtenAt ? new Date(file.writtenAt) : now;
  const client = {
    name: file.client?.name ?? "",
    email: file.client?.email ?? null,
    telephone: file.client?.telephone ?? null,
    isTrade: reason === "trade",
  };
  const answers = { wetNow, reason };
  const settings = await readSettings();
  const rugs = file.rugs.map((rug, at) => ({ answers: answersOf(rug), photos: photos[at] ?? [] }));
  const assessed = assessAnswers({
    channel,
    asOf: submittedAt.toISOString(),
    enquiry: answers,
    client,
    workshop: settings,
    library: await readLibrary(),
    rugs: rugs.map((r) => ({ answers: r.answers, colours: colourPhoto(r.photos)?.photo.measured.colours ?? [], ...sentKinds(r.photos.map(({ kind, photo }) => ({ kind, quality: photo.measured.quality }))) })),
  });
  return inOneStepOfMany(async (tx) => {
    await addPhotoRows(tx, photos, submittedAt);
    const stored = await storeEnquiry(tx, {
      channel,
      submittedAt,
      intakeId: null,
      client,
      parties,
      answers,
      consent: null,
      assessed,
      from,
      rugs: rugs.map((r) => ({ answers: r.answers, photoIds: r.photos.map((p) => p.photo.id) })),
    });
    const refused = await also?.(tx, stored);
    if (refused) return refused;
    await audit(tx, caller, { action: "entered", enquiryId: stored.enquiryId, at: submittedAt, detail: { rugs: rugs.length } });
    const { linkId } = await addClientLink(tx, stored.enquiryId, now);
    if (client.email && isAnswered)
      await acknowledge(tx, { ...stored, channel, hasPhotos: photos.flat().length > 0, linkId, client: { name: client.name, email: client.email }, settings, now: submittedAt });
    return ok({ enquiryId: stored.enquiryId, reference: stored.reference });
  });
}

async function addPhotoRows(tx: Tx, photos: Taken[][], at: Date): Promise<void> {
  for (const rug of photos) {
    for (const [n, { kind, photo }] of rug.entries()) await tx.photo.create({ data: { ...photoRow(photo), kind, position: n + 1, createdAt: at } });
  }
}

/** What a rug of a file holds beside answers. */
const NO_ANSWERS: readonly string[] = ["photos", "benchTests", "laboratory"];
const answersOf = (rug: FileRug): RugAnswers => Object.fromEntries(Object.entries(rug).filter(([key]) => !NO_ANSWERS.includes(key)));
