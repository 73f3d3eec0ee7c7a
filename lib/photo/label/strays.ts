import type { LabelLines } from "./seen";

const OPENS = "([{", CLOSES = ")]}";

/** Where the brackets without a partner stand in a text. */
function unpaired(text: string): ReadonlySet<number> {
  const open: { at: number; kind: number }[] = [];
  const alone = new Set<number>();
  for (let at = 0; at < text.length; at++) {
    const [opens, closes] = [OPENS.indexOf(text.charAt(at)), CLOSES.indexOf(text.charAt(at))];
    if (opens >= 0) open.push({ at, kind: opens });
    if (closes < 0) continue;
    if (open.at(-1)?.kind === closes) open.pop();
    else alone.add(at);
  }
  for (const { at } of open) alone.add(at);
  return alone;
}

/** A reading without brackets that have no partner anywhere in it: a seam or an edge beside a word is taken for one. A word that was nothing else goes. */
export function withoutStrays(lines: LabelLines): LabelLines {
  const alone = unpaired(lines.flatMap((line) => line.map((w) => w.text)).join(" "));
  let at = 0;
  return lines.map((line) => line.flatMap((word) => {
    const from = at;
    at += word.text.length + 1;
    const text = word.text.split("").filter((_, i) => !alone.has(from + i)).join("");
    return text === "" ? [] : [{ ...word, text }];
  })).filter((line) => line.length > 0);
}
