import "server-only";
import { isTaken, transact, type Tx } from "../store/database";
import type { Refusal, Result } from "./caller";

class RolledBack extends Error {
  constructor(readonly refusal: Refusal) {
    super(refusal.say);
  }
}

/** Runs `work` in one transaction; a refusal undoes whatever it had written before. */
export async function inOneStep<T>(work: (tx: Tx) => Promise<Result<T>>): Promise<Result<T>> {
  try {
    return await transact(async (tx) => {
      const result = await work(tx);
      if (!result.ok) throw new RolledBack(result);
      return result;
    });
  } catch (error) {
    if (error instanceof RolledBack) return error.refusal;
    throw error;
  }
}

/** As above; begins again where somebody else took a unique value meanwhile, so that the work sees theirs. */
export async function inOneStepOfMany<T>(work: (tx: Tx) => Promise<Result<T>>, attempts = 5): Promise<Result<T>> {
  for (let n = 1; ; n++) {
    try {
      return await inOneStep(work);
    } catch (error) {
      if (n >= attempts || !isTaken(error)) throw error;
    }
  }
}
