import type { Locale } from "../../words/locales";
import { wordsIn } from "../../words/words";
import type { Asker } from "../who-asks";
import { heading, list, paragraph, small, type Block, type PrintedDocument } from "./blocks";

/** `telephone` of the workshop or, on the card for a cleaner's customer, of that cleaner; "" where there is none. */
export interface CareCard { readonly asker: Asker; readonly reference: string; readonly rug: string; readonly locale: Locale; /** How likely there is viscose in its pile, in words: "very likely". */ readonly likely: string; readonly telephone: string; readonly workshop: { readonly name: string; readonly lines: readonly string[] } }

const PARTS = [
  ["care.after", ["care.after-vacuum", "care.after-turn", "care.after-felt"]],
  ["care.away", ["care.away-water", "care.away-damp", "care.away-sun"]],
  ["care.spilled", ["care.spilled-press", "care.spilled-again", "care.spilled-nothing", "care.spilled-air"]],
  ["care.never", ["care.never-wash", "care.never-beat", "care.never-mix"]],
] as const;

/** How to live with a viscose rug, to be kept by it. Common practice, no published source; no product, dose or recipe. */
export function viscoseCareCard({ asker, reference, rug, likely, telephone, workshop, locale }: CareCard): PrintedDocument {
  const { say } = wordsIn(locale);
  const { name, as, customer } = asker;
  const isTrade = as === "trade";
  return {
    title: say("care.title", { rug }), language: locale, head: { name: workshop.name, lines: workshop.lines }, reference,
    blocks: [
      ...(isTrade ? [paragraph(say("care.for-owner", { client: name, named: customer === null ? "no" : "yes", customer: customer ?? "" }))] : []),
      paragraph(say("care.likely", { likely })),
      paragraph(say("care.viscose")),
      ...PARTS.flatMap(([head, items]): Block[] => [heading(say(head)), ...list(items.map((item) => say(item)))]),
      small(say("care.questions", { whom: isTrade ? [name, telephone].filter((part) => part !== "").join(", ") : telephone || workshop.name })),
    ],
  };
}
