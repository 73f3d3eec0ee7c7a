import "server-only";
import { mkdir, open } from "node:fs/promises";
import path from "node:path";
import { keepFiles, newPhotoId, partName, photoFileName, removeFiles, PHOTO_SIZES, type PhotoSize } from "../../store/photo-layout";
import { NOT_TAKEN } from "../sentences";
import type { Measured } from "./appraise";
import { codedPicture } from "./coded-picture";
import { readCameraNotes, type Exposure } from "./exposure";
import { decodeHeic } from "./heic";
import { fromPixels, openPicture } from "./pictures";
import { makeSizes } from "./sizes";
import { bitsOfJpeg, HEAD_BYTES, isAnimatedPng, sniff, type PictureType } from "./sniff";
import { spool, type Bytes } from "./spool";
import { inTurn } from "./turns";

export interface ReceivedPhoto {
  /** Made by us; names the files in the folder. */
  id: string;
  /** Of the bytes as received, hexadecimal. */
  sha256: string;
  receivedBytes: number;
  receivedType: PictureType;
  /** For people to read; never part of a path. Null where nothing readable was left of it. */
  originalName: string | null;
  /** Pixels, upright. */
  width: number;
  height: number;
  takenAt: Date | null;
  exposure: Exposure | null;
  measured: Measured;
}
export type PhotoRefusal = { ok: false; code: "too-large" | "unsupported" | "unreadable"; say: string };
export type Reception = { ok: true; photo: ReceivedPhoto } | PhotoRefusal;

const refuse = (code: PhotoRefusal["code"], say: string): PhotoRefusal => ({ ok: false, code, say });
/**
 * The one door for pictures: takes bytes from a stranger and keeps three clean JPEGs of them in `folder`, or nothing.
 * The content decides what it is; `type` and the ending of `name` are not believed. Resolves with a refusal for what the
 * sender can mend; rejects only for what they cannot (disk full, sender gone), and leaves nothing on disk either way.
 * Where it stops early it destroys the stream: whoever pipes into it should then stop too.
 */
export async function receivePhoto(stream: Bytes, sent: { name: string; type: string }, folder: string): Promise<Reception> {
  await mkdir(folder, { recursive: true });
  const id = newPhotoId();
  const received = partName(id, "received");
  try {
    const spooled = await spool(stream, path.join(folder, received));
    if (!spooled) return refuse("too-large", NOT_TAKEN.tooManyBytes);
    const taken = await inTurn(() => takeIn(path.join(folder, received), id, folder));
    if (!taken.ok) return taken;
    return { ok: true, photo: { id, sha256: spooled.sha256, receivedBytes: spooled.bytes, originalName: readableName(sent.name), ...taken.facts } };
  } finally {
    await removeFiles(folder, [received]);
  }
}

type Facts = Omit<ReceivedPhoto, "id" | "sha256" | "receivedBytes" | "originalName">;

async function takeIn(file: string, id: string, folder: string): Promise<{ ok: true; facts: Facts } | PhotoRefusal> {
  const { type, refused } = await inspect(file);
  if (refused) return refused;
  const part = (size: PhotoSize) => partName(id, size);
  const at = (size: PhotoSize) => path.join(folder, part(size));
  let kept = false;
  try {
    const { exif } = await openPicture(file).metadata();
    const pixels = type === "image/heic" ? await decodeHeic(file) : null;
    const made = await makeSizes(() => (pixels ? fromPixels(pixels) : openPicture(file)), { full: at("full"), "1600": at("1600"), "320": at("320") }, type === "image/jpeg" ? await codedPicture(file) : null);
    const facts = { receivedType: type, ...made, ...readCameraNotes(exif) };
    await keepFiles(folder, PHOTO_SIZES.map((s) => ({ part: part(s), name: photoFileName(id, s) })));
    kept = true;
    return { ok: true, facts };
  } catch (error) {
    if (isOurTrouble(error)) throw error;
    return refuse("unreadable", NOT_TAKEN.damaged);
  } finally {
    if (!kept) await removeFiles(folder, PHOTO_SIZES.map(part));
  }
}

/** Everything that can be told from headers, before a pixel is decoded. */
async function inspect(file: string): Promise<{ type: PictureType; refused?: undefined } | { type?: undefined; refused: PhotoRefusal }> {
  const handle = await open(file, "r");
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(HEAD_BYTES), 0, HEAD_BYTES, 0);
    const found = sniff(buffer.subarray(0, bytesRead));
    if ("refused" in found) return { refused: refuse("unsupported", found.refused) };
    if (found.type === "image/png" && (await isAnimatedPng(handle))) return { refused: refuse("unsupported", NOT_TAKEN.moves) };
    if (found.type === "image/jpeg" && (await bitsOfJpeg(handle)) > 8) return { refused: refuse("unsupported", NOT_TAKEN.tooDeep) };
    // Reading the header already fails where it promises more than MAX_PIXELS.
    const { pages = 1 } = await openPicture(file).metadata();
    if (found.type === "image/webp" && pages > 1) return { refused: refuse("unsupported", NOT_TAKEN.moves) };
    return { type: found.type };
  } catch (error) {
    if (isOurTrouble(error)) throw error;
    const tooMany = error instanceof Error && error.message.includes("exceeds pixel limit");
    return { refused: tooMany ? refuse("too-large", NOT_TAKEN.tooManyPixels) : refuse("unreadable", NOT_TAKEN.damaged) };
  } finally {
    await handle.close();
  }
}

/** A full disk, a missing folder or decoder is not the sender's fault, and "choose it again" would be a lie. */
const isOurTrouble = (error: unknown): boolean =>
  (error instanceof AggregateError && error.errors.some(isOurTrouble)) ||
  error instanceof Error && (("code" in error && /^E[A-Z]+$|MODULE_NOT_FOUND$/.test(String(error.code))) || /write error|unable to open for write/i.test(error.message));

/** What a person may see of a file's name: no folders, no control or direction characters, no half characters, 120 characters at most. */
function readableName(name: string): string | null {
  const last = name.split(/[\\/]/).at(-1) ?? "";
  const clean = last.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, "").trim();
  return clean === "" ? null : [...clean].slice(0, 120).join("");
}
