import { CONSTRUCTION_BY_BACK, type Construction } from "../trade/care";
import type { Told } from "./told";

/** Shares of the constructions by the look of the back; sum to 1. */
export function constructionShares(told: Told): Readonly<Record<Construction, number>> {
  const back = told.one("back") ?? "unknown";
  return (CONSTRUCTION_BY_BACK[back as keyof typeof CONSTRUCTION_BY_BACK] ?? CONSTRUCTION_BY_BACK.unknown).share;
}
