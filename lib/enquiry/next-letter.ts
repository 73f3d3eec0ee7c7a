import "server-only";
import { composeDraft, type ComposedDraft } from "../reply/draft";
import { composeFollowing, composeWholeAgain } from "../reply/following";
import type { DraftInput } from "../reply/pieces";
import type { Db, Tx } from "../store/database";
import { readSettings } from "../workshop/settings";
import { inputStored, LETTER_PARTS } from "./compose-stored";
import { cameSince, lastLetter, wordsToAnswer, type CameSince } from "./last-letter";
import { readLibrary } from "./library";

/** What the program would write to a client now. */
export interface NextLetter {
  input: DraftInput;
  /** The whole letter; after one of ours only what follows it. */
  composed: ComposedDraft;
  /** Set where it follows a letter of ours: when that was approved and when it left, whether it has, what came since, and the whole letter instead. */
  follows: { at: Date; leftAt: Date | null; hasLeft: boolean; came: CameSince; whole: ComposedDraft } | null;
  /** What the client wrote that it has to answer. */
  words: CameSince["messages"];
}

/** The letter that is called for now; null where nothing was assessed yet, or the enquiry is not there. `besides`: id of a letter of ours in whose place it is. */
export async function nextLetter(db: Db | Tx, enquiryId: string, besides?: string): Promise<NextLetter | null> {
  const row = await db.enquiry.findUnique({ where: { id: enquiryId }, include: LETTER_PARTS });
  const input = row && inputStored(row, { workshop: await readSettings(db), library: await readLibrary(db) });
  if (!input) return null;
  const last = await lastLetter(db, enquiryId, besides);
  if (!last) {
    const words = await wordsToAnswer(db, enquiryId, besides);
    return { input, composed: composeDraft(input, { hasWritten: words.length > 0 }), follows: null, words };
  }
  const came = await cameSince(db, enquiryId, last.at);
  const since = { told: last.told, came };
  return { input, composed: composeFollowing(input, since), follows: { at: last.at, leftAt: last.leftAt, hasLeft: last.hasLeft, came, whole: composeWholeAgain(input, since) }, words: came.messages };
}
