import { withAnswerPlace } from "./answer-place";
import { mostWords, shortened } from "./length";
import { blocks, piecesOf, type DraftInput, type Piece, type Pieces, type SaidParagraph } from "./pieces";
import { wordsIn } from "./reading";
import { saidOnce, type Laid } from "./said-once";

export interface ComposedDraft {
  subject: string;
  /** Blocks apart by an empty line. */
  text: string;
  /** The rows used, in order; a row used for two rugs stands twice, also where its words stand once. */
  paragraphs: SaidParagraph[];
  /** What the assessments call for too and the letter leaves out. */
  leftOut: SaidParagraph[];
}

/** Which of the pieces stand in the letter as it is laid out, and which do not. `isNew`: whether a piece was not told yet. */
export const partedBy = (pieces: readonly Piece[], standing: readonly Piece[], { laid: { used }, isNew = () => true }: { laid: Laid; isNew?: (piece: Piece) => boolean }): Pick<ComposedDraft, "paragraphs" | "leftOut"> => ({
  paragraphs: used.map((paragraph) => ({ ...paragraph, stands: true })),
  leftOut: pieces.filter((p) => !standing.some((s) => s === p || s === p.least)).map((p) => ({ ...p.used, stands: false, ...(!p.place.follows && isNew(p) ? { unsaid: true } : {}) })),
});

/** The pieces without what can wait, so that the letter they make is no longer than people read. */
export const shortEnough = (pieces: readonly Piece[], rugs: number, leads: Pick<Pieces, "leadOf" | "lineOfRug">): Piece[] =>
  shortened(pieces, mostWords(rugs), (kept) => wordsIn(blocks(saidOnce(kept, leads).lines)).length);

/**
 * The letter that the assessments call for. The same input gives the same letter. It states no fibre without the
 * strength of its evidence, no improvement and no life but as the range of the assessment, and no number of its own.
 * `hasWritten`: the client has written since they asked, so there is a place for the answer that only a person can write.
 * @throws Error where there is no rug to write about.
 */
export function composeDraft(input: DraftInput, { hasWritten = false }: { hasWritten?: boolean } = {}): ComposedDraft {
  return inToneThatFits(input, (toned) => {
    const { subject, pieces, ...leads } = piecesOf(toned);
    const standing = shortEnough(pieces, toned.assessments.length, leads);
    const laid = saidOnce(standing, leads);
    return { subject, text: blocks(hasWritten ? withAnswerPlace(laid.lines) : laid.lines), ...partedBy(pieces, standing, { laid }) };
  });
}

/** A letter in the workshop's tone; in the plain one where the tone's longer sentences would cost the client a paragraph. */
export function inToneThatFits(input: DraftInput, compose: (input: DraftInput) => ComposedDraft): ComposedDraft {
  const toned = compose(input);
  if (toned.leftOut.length === 0 || (input.workshop.tone ?? "plain") === "plain") return toned;
  const plainly = compose({ ...input, workshop: { ...input.workshop, tone: "plain" } });
  return plainly.leftOut.length < toned.leftOut.length ? plainly : toned;
}
