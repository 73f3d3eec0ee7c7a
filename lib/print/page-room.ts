import "server-only";
import type { Block } from "../reply/documents/blocks";
import { photoRoom, planHeight } from "./draw-figures";
import { listHeight } from "./draw-list";
import { tableHeight } from "./draw-table";
import { BELOW, BODY, HEADING, SMALL, textHeight, type Pdf } from "./pen";

/** Points, by eye: of a long paragraph, what stays on one page. It is a text by itself and leads to nothing. */
const MOST_OF_TEXT = 60;
/** Up to this height a list or a table is not parted. */
const WHOLE = { list: 130, table: 250 } as const;
/** A table that is parted has so many rows below its head: one by itself reads as all there is. */
const LEAST_ROWS = 2;
/** So much of a page may be left blank for what belongs together; what asks for more is parted where that hurts least. By eye. */
const MOST_BLANK = 0.36;
/** So many paragraphs may lead to a table; more are a text by itself. By eye. */
const MOST_LEADING = 3;

/** A last page has at least so many lines; fewer look like a mistake. By eye. */
const LEAST_ON_LAST = 5;

/** Whether these blocks, to the end of the document, are so few lines of text that they do not get a page to themselves. */
function isTooLittle(pdf: Pdf, rest: readonly Block[]): boolean {
  // Each has a line at least, so that of a long document nothing is measured.
  if (rest.length === 0 || rest.length >= LEAST_ON_LAST) return false;
  const lines = rest.map((block) => {
    if (block.kind === "signature") return block.lines.filter((line) => line !== "").length;
    if (block.kind !== "paragraph" && block.kind !== "small") return LEAST_ON_LAST;
    const size = { size: block.kind === "small" ? SMALL : BODY };
    return Math.round(textHeight(pdf, block.text, size) / textHeight(pdf, " ", size));
  });
  return lines.reduce((sum, n) => sum + n, 0) < LEAST_ON_LAST;
}

/** Whether a text leads on to the list right after it, which its colon opens; to the photos right after it; to a signature, the close of a letter or a report; or as one of a few paragraphs to a table. */
function leadsOn({ text }: { text: string }, rest: readonly Block[]): boolean {
  const at = rest.findIndex((b) => b.kind !== "paragraph" && b.kind !== "small");
  const end = rest[at]?.kind;
  return end === "signature" || (end === "table" && at < MOST_LEADING) || (end === "list" && at === 0 && text.endsWith(":")) || (end === "photo" && at === 0);
}

/**
 * How much of a page the first of these blocks asks for, so that nothing is torn that belongs together: a heading from what
 * it heads and what leads to a table or a list from its head, a short list or table in itself, a drawing from the list that explains it, a table from its small print, the
 * close of a letter from its signature, the last lines of all from what stands before them. Where that is too much of a page, a table or a list may be parted, and paragraphs be left by what they lead to.
 * `above`: the heading they stand below with what leads on from it. They are asked as that was: by themselves they could turn the page and leave it alone.
 */
export function roomFor(pdf: Pdf, blocks: readonly Block[], above: readonly Block[] = []): number {
  const led = above.reduce((sum, block) => sum + leadingHeight(pdf, block), 0);
  const most = MOST_BLANK * (pdf.page.maxY() - pdf.page.margins.top) - led;
  return (["whole", "begun"] as const).map((kept) => ask(pdf, blocks, kept)).find((room) => room <= most) ?? ask(pdf, blocks, "least");
}

/** What leads on from a heading to a block: the heading and the texts below it; none where something else has come between. */
export function leadingTo(above: readonly Block[], block: Block): Block[] {
  if (block.kind === "heading" || block.kind === "title") return [...above.filter((b) => b.kind === "heading"), block];
  return above.length > 0 && (block.kind === "paragraph" || block.kind === "small") ? [...above, block] : [];
}
function leadingHeight(pdf: Pdf, block: Block): number {
  if (block.kind === "heading" || block.kind === "title") return headingHeight(pdf, block);
  return block.kind === "paragraph" || block.kind === "small" ? textHeight(pdf, block.text, { size: block.kind === "small" ? SMALL : BODY }) + BELOW.paragraph : 0;
}

/** How high a heading stands, with what is left free above and below it. */
const headingHeight = (pdf: Pdf, block: Extract<Block, { kind: "heading" | "title" }>): number =>
  HEADING.above + textHeight(pdf, block.text, { weight: "bold", size: HEADING.sizes[block.kind === "heading" ? block.level : 2] }) + HEADING.below;

/** How much is kept together: everything that belongs together; what leads to a table or a list and where that begins; or only what a reader could not do without. */
type Kept = "whole" | "begun" | "least";
function ask(pdf: Pdf, blocks: readonly Block[], kept: Kept): number {
  const [block, ...rest] = blocks;
  const [next] = rest;
  switch (block?.kind) {
    case "title": case "heading": return headingHeight(pdf, block) + ask(pdf, rest, kept);
    case "paragraph": case "small": {
      const own = textHeight(pdf, block.text, { size: block.kind === "small" ? SMALL : BODY });
      const leads = isTooLittle(pdf, rest) || (kept === "least" ? next?.kind === "signature" : leadsOn(block, rest));
      return leads && own <= MOST_OF_TEXT ? own + BELOW.paragraph + ask(pdf, rest, kept) : Math.min(own, MOST_OF_TEXT);
    }
    case "list": {
      const whole = listHeight(pdf, block.items);
      if (kept !== "whole" || whole > WHOLE.list) return listHeight(pdf, block.items.slice(0, 1));
      return isTooLittle(pdf, rest) ? whole + BELOW.paragraph + ask(pdf, rest, kept) : whole;
    }
    case "table": {
      const whole = tableHeight(pdf, block) + (next?.kind === "small" ? BELOW.table + ask(pdf, rest, kept) : 0);
      return kept === "whole" && whole <= WHOLE.table ? whole : tableHeight(pdf, block, LEAST_ROWS);
    }
    case "plan": return planHeight(pdf, block, next?.kind === "list" ? next.items : []);
    case "photo": return photoRoom(next?.kind !== "photo");
    case "signature": return block.lines.reduce((sum, line) => sum + textHeight(pdf, line || " ") + (line === "" ? BELOW.toSign : BELOW.signed), 0);
    case "part": case undefined: return 0;
  }
}
