import "server-only";

/** Pictures decoded at once, over the whole process: sixty megapixels take some 400 MB while they are open. *elicited* */
const AT_ONCE = 2;

interface Turns { free: number; waiting: (() => void)[] }
// The built server may load this module once per route; the count must be one for all of them.
const SHARED = Symbol.for("photo.turns");
const turns: Turns = ((globalThis as { [SHARED]?: Turns })[SHARED] ??= { free: AT_ONCE, waiting: [] });

/** Runs `work` when its turn comes, first come first served. */
export async function inTurn<T>(work: () => Promise<T>): Promise<T> {
  if (turns.free > 0) turns.free--;
  else await new Promise<void>((go) => turns.waiting.push(go));
  try {
    return await work();
  } finally {
    const next = turns.waiting.shift();
    if (next) next();
    else turns.free++;
  }
}
