import type { Result } from "@/lib/enquiry/caller";

/** How far it has come: how many were judged anew since it began, and how many are still to do. */
export interface Judged { judged: number; left: number }
/** `halted`: why it went no further while some are still to do; null where none is, or where it was told to stop. */
export interface Ended extends Judged { halted: string | null }

const NO_FURTHER = "Some could not be judged anew. Please try again in a moment.";

/**
 * Asks for one turn after the other until nothing is left, it is told to stop, or a turn fails. Each turn is kept by itself, so
 * nothing is lost whenever it ends. `left`: how many are to do when it begins.
 */
export async function judgeInTurns(turn: () => Promise<Result<Judged>>, { left, told, isStopped }: { left: number; told: (so: Judged) => void; isStopped: () => boolean }): Promise<Ended> {
  let so: Judged = { judged: 0, left };
  while (so.left > 0 && !isStopped()) {
    const result = await turn();
    if (!result.ok) return { ...so, halted: result.say };
    so = { judged: so.judged + result.value.judged, left: result.value.left };
    // A turn that judges none would be asked for without end.
    if (result.value.judged === 0) return { ...so, halted: so.left > 0 ? NO_FURTHER : null };
    told(so);
  }
  return { ...so, halted: null };
}
