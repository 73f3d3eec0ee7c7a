import { withAnswerPlace } from "./answer-place";
import { mostWords, shortened } from "./length";
import { blocks, piecesOf, type DraftInput, type Piece, type SaidParagraph } from "./pieces";

export interface ComposedDraft {
  subject: string;
  /** Blocks apart by an empty line. */
  text: string;
  /** The rows used, in order; a row used for two rugs stands twice. */
  paragraphs: SaidParagraph[];
  /** What the assessments call for too and the letter leaves out. */
  leftOut: SaidParagraph[];
}

/** Which of the pieces stand in the letter, and which do not. */
export const partedBy = (pieces: readonly Piece[], standing: readonly Piece[]): Pick<ComposedDraft, "paragraphs" | "leftOut"> => ({
  paragraphs: standing.map(({ used }) => ({ ...used, stands: true })),
  leftOut: pieces.filter((p) => !standing.includes(p)).map(({ used }) => ({ ...used, stands: false })),
});

/**
 * The letter that the assessments call for. The same input gives the same letter. It states no fibre without the
 * strength of its evidence, no improvement and no life but as the range of the assessment, and no number of its own.
 * `hasWritten`: the client has written since they asked, so there is a place for the answer that only a person can write.
 * @throws Error where there is no rug to write about.
 */
export function composeDraft(input: DraftInput, { hasWritten = false }: { hasWritten?: boolean } = {}): ComposedDraft {
  return inToneThatFits(input, (toned) => {
    const { subject, pieces } = piecesOf(toned);
    const standing = shortened(pieces, mostWords(toned.assessments.length));
    return { subject, text: blocks(hasWritten ? withAnswerPlace(standing) : standing), ...partedBy(pieces, standing) };
  });
}

/** A letter in the workshop's tone; in the plain one where the tone's longer sentences would cost the client a paragraph. */
export function inToneThatFits(input: DraftInput, compose: (input: DraftInput) => ComposedDraft): ComposedDraft {
  const toned = compose(input);
  if (toned.leftOut.length === 0 || (input.workshop.tone ?? "plain") === "plain") return toned;
  const plainly = compose({ ...input, workshop: { ...input.workshop, tone: "plain" } });
  return plainly.leftOut.length < toned.leftOut.length ? plainly : toned;
}
