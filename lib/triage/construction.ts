import { CONSTRUCTION_BY_BACK, LATEX_WORD, type Construction } from "../trade/care";
import type { Told } from "./told";

/** Shares of the constructions by the look of the back; sum to 1. */
export function constructionShares(told: Told): Readonly<Record<Construction, number>> {
  const back = told.one("back") ?? "unknown";
  return (CONSTRUCTION_BY_BACK[back as keyof typeof CONSTRUCTION_BY_BACK] ?? CONSTRUCTION_BY_BACK.unknown).share;
}

/** Whether its label names latex. */
export function isLatexNamed(told: Told): boolean {
  const label = told.value("label");
  return typeof label === "object" && "text" in label && LATEX_WORD.test(String(label.text));
}

/** Chance, 0–1, that latex holds the back: a label that names it, or a tufted rug by the look of its back. */
export const latexBackChance = (told: Told): number => (isLatexNamed(told) ? 1 : constructionShares(told).tufted);
