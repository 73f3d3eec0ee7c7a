const ENTITIES: Record<string, string> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };

/** HTML that was made by `html` and may stand as it is. */
export class Html {
  constructor(readonly text: string) {}
}
type Part = Html | string | number | null | readonly Html[];

const escaped = (text: string) => text.replace(/[&<>"']/g, (c) => ENTITIES[c] as string);

function partText(part: Part): string {
  if (part === null) return "";
  if (part instanceof Html) return part.text;
  return typeof part === "object" ? part.map((p) => p.text).join("") : escaped(String(part));
}

/**
 * Template tag for letters. Every value is escaped, for text and for attributes in double quotes, unless `html` made
 * it; null leaves nothing.
 */
export const html = (strings: TemplateStringsArray, ...parts: Part[]): Html =>
  new Html(strings.reduce((said, s, at) => said + (at > 0 ? partText(parts[at - 1] ?? null) : "") + s, ""));
