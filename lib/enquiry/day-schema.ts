/** The first place where a day begins is fourteen hours ahead of UTC. */
const MOST_AHEAD_MS = 14 * 3_600_000;

/** Whether a day (YYYY-MM-DD) has begun anywhere. */
export const hasCome = (day: string): boolean => Date.parse(day) <= Date.now() + MOST_AHEAD_MS;

/** A day further back is taken for a slip of the pen: a report to an insurer would print it. *elicited* */
const MOST_BACK_YEARS = 20;
export const TOO_LONG_AGO = `That is more than ${MOST_BACK_YEARS} years ago: please look at the year.`;
/** Whether a day (YYYY-MM-DD) lies within the years that a report may go back to. */
export const isOfOurTime = (day: string): boolean => Date.parse(day) >= Date.now() - MOST_BACK_YEARS * 366 * 86_400_000;
