import { NO_MAIL } from "../mail/last-word";
import type { Letter } from "../store/database";

/** Whether a person approved a letter that the outbox would try again, or keeps for want of a mail server. While it is being sent nobody else has it. */
export const isToBeTried = ({ automatic, toAddress, state }: Pick<Letter, "automatic" | "toAddress" | "state">): boolean =>
  !automatic && toAddress !== NO_MAIL && (state === "waiting" || state === "unknown");

/** Said to whoever comes too late for a letter that was to be tried again. */
export const NOT_TO_BE_TRIED = "This letter is being sent just now, or somebody has settled it already. Look again in a minute.";
