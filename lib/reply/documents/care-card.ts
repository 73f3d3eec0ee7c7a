import type { Locale } from "../../words/locales";
import { wordsIn } from "../../words/words";
import { heading, list, paragraph, small, type Block, type PrintedDocument } from "./blocks";

export interface CareCard { readonly reference: string; readonly rug: string; readonly locale: Locale; /** How likely there is viscose in its pile, in words: "very likely". */ readonly likely: string; readonly workshop: { readonly name: string; readonly lines: readonly string[]; readonly telephone: string } }

const PARTS = [
  ["care.after", ["care.after-vacuum", "care.after-turn", "care.after-felt"]],
  ["care.away", ["care.away-water", "care.away-damp", "care.away-sun"]],
  ["care.spilled", ["care.spilled-press", "care.spilled-again", "care.spilled-nothing", "care.spilled-air"]],
  ["care.never", ["care.never-wash", "care.never-beat", "care.never-mix"]],
] as const;

/** How to live with a viscose rug, to be kept by it. Common practice, no published source; no product, dose or recipe. */
export function viscoseCareCard({ reference, rug, likely, workshop, locale }: CareCard): PrintedDocument {
  const { say } = wordsIn(locale);
  return {
    title: say("care.title", { rug }), language: locale, head: { name: workshop.name, lines: workshop.lines }, reference,
    blocks: [
      paragraph(say("care.likely", { likely })),
      paragraph(say("care.viscose")),
      ...PARTS.flatMap(([head, items]): Block[] => [heading(say(head)), ...list(items.map((item) => say(item)))]),
      small(say("care.questions", { whom: workshop.telephone || workshop.name })),
    ],
  };
}
