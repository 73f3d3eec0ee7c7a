import "server-only";
import { isSaidDry } from "../reply/asks";
import { SAID_DRY, WET_UNASKED } from "../trade/urgency";
import { messagesOf, rugAnswersOf } from "./stored";
import { newestOfWater } from "./wet-by-words";

interface Kept { readonly urgencyWhy: string; readonly rugs: readonly { readonly answers: Parameters<typeof rugAnswersOf>[0] }[] }

/** Why an enquiry stands where it does, as people read it: where nobody was asked whether it is wet, and their own words of every rug say that it is dry, that, as the letter reads them. */
export function urgencyWhyTold({ urgencyWhy, rugs }: Kept): string {
  if (urgencyWhy !== WET_UNASKED) return urgencyWhy;
  const saidOfWater = newestOfWater(rugs.flatMap((r) => messagesOf(r.answers)));
  return rugs.every((r) => isSaidDry({ answers: rugAnswersOf(r.answers), saidOfWater })) ? SAID_DRY : urgencyWhy;
}
