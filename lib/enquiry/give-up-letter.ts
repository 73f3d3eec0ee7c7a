import "server-only";
import { ARRIVED_PERHAPS, GIVEN_UP, NO_MAIL } from "../mail/last-word";
import type { Letter } from "../store/database";
import { capital } from "../words/capital";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";
import { takeTurnBack } from "./take-turn-back";
import { isToBeTried, NOT_TO_BE_TRIED } from "./to-be-tried";

/**
 * Gives up a letter that did not get through so far. Only the outbox or this can have it: whichever changes its state first. It counts as
 * not delivered, and in doubt where a try of it ended without an answer; the turn and the words come back to us as after any failure. It
 * no longer stands on the client's own page: its words are to be changed.
 */
export async function giveUpLetter(caller: Caller, letterId: string, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "take-back");
  if (no) return no;
  return inOneStep(async (tx) => {
    const letter = await tx.letter.findUnique({ where: { id: letterId } });
    if (!letter || letter.automatic || letter.toAddress === NO_MAIL) return NOT_THERE;
    const { enquiryId, state, attempts, lastResponse } = letter;
    const given = isToBeTried(letter) ? await tx.letter.updateMany({ where: { id: letterId, state, attempts }, data: { state: "failed", lastResponse: lastWord(state, lastResponse) } }) : null;
    if (given?.count !== 1) return refuse("changed-meanwhile", NOT_TO_BE_TRIED);
    await audit(tx, caller, { action: "letter-given-up", enquiryId, at: now, detail: { letterId } });
    await takeTurnBack(tx, { id: letterId, enquiryId }, now);
    return ok(null);
  });
}

function lastWord(state: Letter["state"], last: string | null): string {
  const tried = last?.replace(ARRIVED_PERHAPS, "").trim();
  if (state === "waiting") return `Not sent: ${GIVEN_UP}${tried ? ` The last try ended with: “${tried}”.` : ""}`;
  return `${capital(GIVEN_UP)} ${ARRIVED_PERHAPS}`;
}
