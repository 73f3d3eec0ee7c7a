import "server-only";
import { Readable } from "node:stream";
import type { Enclosed } from "../mail/incoming/read-message";
import { receivePhoto } from "../photo/server/receive";
import type { Tx } from "../store/database";
import { photoFolder, removePhotoFiles } from "../store/photo-files";
import { photoRow } from "./add-photo";
import { UNSAID_PHOTO } from "../trade/questions";
import type { Taken } from "./enter-enquiry";
import { LIMITS } from "./limits";

export interface TakenPictures {
  taken: Taken[];
  /** "name: why it is not kept", a line each. */
  leftOut: string[];
}

/** Takes pictures of a letter in as photos, each by the ordinary door. Their files are kept; the rows are still to be written. What a picture shows nobody has said. */
export async function takePictures(pictures: readonly Enclosed[]): Promise<TakenPictures> {
  const taken: Taken[] = [];
  const leftOut: string[] = [];
  try {
    for (const { name, type, content } of pictures) {
      if (taken.length === LIMITS.maxPhotos) leftOut.push(`${name}: more than ${LIMITS.maxPhotos} photos of one rug.`);
      else {
        const received = await receivePhoto(Readable.from([content]), { name, type }, photoFolder());
        if (received.ok) taken.push({ kind: UNSAID_PHOTO, photo: received.photo });
        else leftOut.push(`${name}: ${received.say}`);
      }
    }
    return { taken, leftOut };
  } catch (error) {
    await dropPictures(taken);
    throw error;
  }
}

/** Removes the files of pictures whose rows were not written. */
export const dropPictures = async (taken: readonly Taken[]): Promise<void> => void (await Promise.all(taken.map((t) => removePhotoFiles(t.photo.id))));

/** Writes the rows of pictures of a rug, behind those it has. Gives back those that found no room, or that it has already, and the SHA-256 of those that were written. */
export async function addPictures(tx: Tx, rugId: string, taken: readonly Taken[], now: Date): Promise<{ refused: Taken[]; leftOut: string[]; hashes: string[] }> {
  const there = await tx.photo.findMany({ where: { rugId }, select: { sha256: true, position: true } });
  const known = new Set(there.map((p) => p.sha256));
  let position = Math.max(0, ...there.map((p) => p.position));
  const refused: Taken[] = [];
  const leftOut: string[] = [];
  for (const one of taken) {
    const { photo, kind } = one;
    const isKnown = known.has(photo.sha256);
    if (isKnown || known.size >= LIMITS.maxPhotos) {
      refused.push(one);
      leftOut.push(`${photo.originalName ?? "A picture"}: ${isKnown ? "we have this photo already." : `more than ${LIMITS.maxPhotos} photos of one rug.`}`);
    } else {
      known.add(photo.sha256);
      await tx.photo.create({ data: { ...photoRow(photo), kind, rugId, position: ++position, createdAt: now } });
    }
  }
  return { refused, leftOut, hashes: taken.filter((one) => !refused.includes(one)).map(({ photo }) => photo.sha256) };
}
