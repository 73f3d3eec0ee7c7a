/** The first place where a day begins is fourteen hours ahead of UTC. */
const MOST_AHEAD_MS = 14 * 3_600_000;

/** Whether a day (YYYY-MM-DD) has begun anywhere. */
export const hasCome = (day: string): boolean => Date.parse(day) <= Date.now() + MOST_AHEAD_MS;
