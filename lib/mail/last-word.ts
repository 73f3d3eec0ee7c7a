/** Sentences of ours that end a letter's last word where nobody can know; staff are told by them. */
export const TWICE = "It may have arrived twice.";
export const ARRIVED_PERHAPS = "It may have arrived.";
export const ARRIVED_BEFORE = "An earlier try may have arrived.";

/** The last word of a letter that was taken back because its client wrote before it left. */
export const HELD_BACK = "Held back before it went out: the client had written meanwhile.";
/** The same of one that was taken back because its rug was judged anew before it left. */
export const OVERTAKEN = "Held back before it went out: the rug was judged anew meanwhile.";
export const wasHeldBack = (lastWord: string | null): lastWord is string => lastWord === HELD_BACK || lastWord === OVERTAKEN;
/** The last word of a letter that was told on the telephone and went to nobody by mail. */
export const READ_OUT = "Read out on the telephone.";
/** The same of one whose sending ended without an answer before. */
export const READ_OUT_BESIDES = `${READ_OUT} It may have arrived by mail too.`;
export const wasReadOut = (lastWord: string | null): boolean => lastWord === READ_OUT || lastWord === READ_OUT_BESIDES;
/** In the last word of a letter that somebody here gave up. */
export const GIVEN_UP = "it was given up here.";
export const wasGivenUp = (lastWord: string | null): boolean => lastWord?.toLowerCase().includes(GIVEN_UP) ?? false;

/** The address of a client who has none: their letters stay in the outbox until somebody has read them out. */
export const NO_MAIL = "";

/** Whether a letter with this last word may have reached its client although it does not count as sent. */
export const mayHaveArrived = (lastWord: string): boolean => [ARRIVED_PERHAPS, ARRIVED_BEFORE].some((end) => lastWord.endsWith(end));
