import "server-only";
import { BELOW, keepTogether, LIST_INDENT, MARGIN, say, textHeight, type Pdf, type Structure } from "./pen";

/** Where the words of a list that begins `left` points from the edge of the page stand. */
const roomAt = (pdf: Pdf, left: number) => ({ x: left + LIST_INDENT, width: pdf.page.width - MARGIN - left - LIST_INDENT });

/** How high a list stands, its gap apart. */
export const listHeight = (pdf: Pdf, items: readonly string[], left = MARGIN): number =>
  items.reduce((sum, item) => sum + textHeight(pdf, item, { width: roomAt(pdf, left).width }) + BELOW.entry, 0);

/** A list from here on, or beside something, from further right. */
export function drawList(pdf: Pdf, root: Structure, items: readonly string[], left = MARGIN): void {
  const list = pdf.struct("L");
  root.add(list);
  for (const item of items) {
    const room = roomAt(pdf, left);
    keepTogether(pdf, textHeight(pdf, item, { width: room.width }));
    const entry = pdf.struct("LI");
    list.add(entry);
    const top = pdf.y;
    say(pdf, entry, "Lbl", "–", { gap: 0, x: left });
    pdf.y = top;
    say(pdf, entry, "LBody", item, { ...room, gap: BELOW.entry });
    entry.end();
  }
  list.end();
  pdf.y += BELOW.list;
}
