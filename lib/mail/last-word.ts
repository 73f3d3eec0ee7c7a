/** Sentences of ours that end a letter's last word where nobody can know; staff are told by them. */
export const TWICE = "It may have arrived twice.";
export const ARRIVED_PERHAPS = "It may have arrived.";
export const ARRIVED_BEFORE = "An earlier try may have arrived.";

/** Whether a letter with this last word may have reached its client although it does not count as sent. */
export const mayHaveArrived = (lastWord: string): boolean => [ARRIVED_PERHAPS, ARRIVED_BEFORE].some((end) => lastWord.endsWith(end));
