import "server-only";
import { NOT_TAKEN } from "../sentences";
import { openPicture } from "./pictures";
import { HEAD_BYTES, sniff } from "./sniff";

/** Long side of the small copy that is made to see whether a picture can be opened to its end. Pixels; *elicited*: small enough to cost little. */
const TRIED_PX = 64;

/**
 * Why a file is no picture that can be opened, in the sentence for its sender; null where it can. Nothing is kept. A HEIC picture
 * is told by its head alone, since its decoder is slow; the door for photos has the last word on every picture.
 */
export async function whyNotOpened(content: Buffer): Promise<string | null> {
  const found = sniff(content.subarray(0, HEAD_BYTES));
  if ("refused" in found) return found.refused;
  if (found.type === "image/heic") return null;
  try {
    await openPicture(content).resize(TRIED_PX, TRIED_PX, { fit: "inside" }).raw().toBuffer();
    return null;
  } catch (error) {
    return error instanceof Error && error.message.includes("exceeds pixel limit") ? NOT_TAKEN.tooManyPixels : NOT_TAKEN.damaged;
  }
}
