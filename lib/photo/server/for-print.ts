import "server-only";
import { openPicture } from "./pictures";

/** Pixels of the long side: 260 points high is 3.6 inches, so about 280 dots an inch. */
const PRINT_SIDE = 1000;
const PRINT = { quality: 80 } as const;

/** A kept photo as it is put into a printed document, JPEG, turned back by so many quarters of a turn; null where its file is gone or cannot be read. */
export const forPrint = (file: string, quarters = 0): Promise<Buffer | null> =>
  openPicture(file).rotate(-90 * quarters).resize(PRINT_SIDE, PRINT_SIDE, { fit: "inside", withoutEnlargement: true }).jpeg(PRINT).toBuffer().catch(() => null);
