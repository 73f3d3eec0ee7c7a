/** A plain text in its paragraphs. */
export function Prose({ text }: { text: string }) {
  return text.split(/\n\s*\n/).map((p) => p.trim()).filter(Boolean).map((p, k) => <p key={k}>{p}</p>);
}
