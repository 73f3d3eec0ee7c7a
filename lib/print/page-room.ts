import "server-only";
import type { Block } from "../reply/documents/blocks";
import { PHOTO_ROOM, planHeight } from "./draw-figures";
import { tableHeight } from "./draw-table";
import { BELOW, BODY, HEADING, LIST_INDENT, MARGIN, SMALL, textHeight, type Pdf } from "./pen";

/** Points, by eye: of a long paragraph, what stays on one page. */
const MOST_OF_TEXT = 60;
/** Up to this height a list or a table is not parted. */
const WHOLE = { list: 130, table: 250 } as const;

const listHeight = (pdf: Pdf, items: readonly string[]): number =>
  items.reduce((sum, item) => sum + textHeight(pdf, item, { width: pdf.page.width - 2 * MARGIN - LIST_INDENT }) + BELOW.entry, 0);

/** So many paragraphs may lead to a table; more are a text by itself. By eye. */
const MOST_LEADING = 3;

/** Whether nothing but text stands between here and a signature, the close of a letter or a report, or nothing but a few paragraphs between here and the table they lead to. */
function leadsOn(blocks: readonly Block[]): boolean {
  const at = blocks.findIndex((b) => b.kind !== "paragraph" && b.kind !== "small");
  return blocks[at]?.kind === "signature" || (blocks[at]?.kind === "table" && at < MOST_LEADING);
}

/**
 * How much of a page the first of these blocks asks for, so that nothing is torn that belongs together: a heading from what
 * it heads and what leads to a table from its head, a short list or table in itself, a drawing from the list that explains it, a table from its small print, the
 * close of a letter from its signature.
 */
export function roomFor(pdf: Pdf, blocks: readonly Block[]): number {
  const [block, ...rest] = blocks;
  const [next] = rest;
  switch (block?.kind) {
    case "title": return HEADING.above + textHeight(pdf, block.text, { weight: "bold", size: HEADING.sizes[2] }) + HEADING.below + roomFor(pdf, rest);
    case "heading": return HEADING.above + textHeight(pdf, block.text, { weight: "bold", size: HEADING.sizes[block.level] }) + HEADING.below + roomFor(pdf, rest);
    case "paragraph": case "small": {
      const own = textHeight(pdf, block.text, { size: block.kind === "small" ? SMALL : BODY });
      return leadsOn(rest) ? own + BELOW.paragraph + roomFor(pdf, rest) : Math.min(own, MOST_OF_TEXT);
    }
    case "list": {
      const whole = listHeight(pdf, block.items);
      return whole <= WHOLE.list ? whole : listHeight(pdf, block.items.slice(0, 1));
    }
    case "table": {
      const whole = tableHeight(pdf, block) + (next?.kind === "small" ? BELOW.table + roomFor(pdf, rest) : 0);
      return whole <= WHOLE.table ? whole : tableHeight(pdf, block, 1);
    }
    case "plan": return planHeight(pdf, block) + (next?.kind === "list" ? roomFor(pdf, rest) : 0);
    case "photo": return PHOTO_ROOM;
    case "signature": return block.lines.reduce((sum, line) => sum + textHeight(pdf, line || " ") + (line === "" ? BELOW.toSign : BELOW.signed), 0);
    case "part": case undefined: return 0;
  }
}
