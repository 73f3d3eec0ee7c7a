import "server-only";

/** Runs one piece of work at a time, in the order asked; a failed piece does not hold up the next. */
export type Gate = <T>(work: () => PromiseLike<T>) => Promise<T>;

export function oneAtATime(): Gate {
  let tail: Promise<unknown> = Promise.resolve();
  return (work) => {
    const result = tail.then(work);
    tail = result.catch(() => undefined);
    return result;
  };
}

export const noGate: Gate = async (work) => await work();

/**
 * The result of `work`, or an error once `ms` milliseconds have passed. Work that never ends cannot be stopped,
 * but it no longer keeps everybody behind it waiting.
 */
export async function within<T>(ms: number, work: PromiseLike<T>, late: () => Error): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const alarm = new Promise<never>((_, reject) => { timer = setTimeout(() => reject(late()), ms); });
  try {
    return await Promise.race([work, alarm]);
  } finally {
    clearTimeout(timer);
  }
}
