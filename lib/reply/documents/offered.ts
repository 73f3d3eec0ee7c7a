import type { Assessment } from "../../triage/assessment";
import { isGift } from "../../triage/finding";
import { wordsForChance } from "../../triage/words";
import { wasCalledSilk } from "../called-silk";
import { cappedWord } from "../phrases";
import { VISCOSE_LIKE } from "../viscose-like";

export const DOCUMENT_KINDS = ["condition-report", "letter-to-seller", "care-card", "cut-down-plan"] as const;
export type DocumentKind = (typeof DOCUMENT_KINDS)[number];

/** What each is called at the desk, and what it is for. */
export const DOCUMENTS: Readonly<Record<DocumentKind, { readonly name: string; readonly tells: string }>> = {
  "condition-report": { name: "Condition report", tells: "For an insurer or whoever else needs it on paper." },
  "letter-to-seller": { name: "Letter to the seller", tells: "The client’s own letter, for their signature. It goes to the client and never to the seller." },
  "care-card": { name: "Care card", tells: "How to live with a viscose rug." },
  "cut-down-plan": { name: "Cut-down plan", tells: "What can be kept of the rug, drawn to scale, with its new edges and what they cost." },
};

/** A care card says "viscose" outright, so it is offered from this chance that there is some. *elicited* */
const CARE_CARD_FROM = 0.5;
/** The chance that there is any viscose in the pile, 0–1. */
export const chanceOfViscose = ({ fibres }: Pick<Assessment, "fibres">): number => Math.min(1, fibres.filter((f) => VISCOSE_LIKE.includes(f.fibre)).reduce((sum, f) => sum + f.probability, 0));

/** How likely there is viscose in the pile, as the letter of the same assessment says it: the word of the leading fibre where that holds viscose, else of all such together. */
export function viscoseWord({ fibres }: Pick<Assessment, "fibres">): string {
  const [leading] = [...fibres].sort((a, b) => b.probability - a.probability);
  if (leading && VISCOSE_LIKE.includes(leading.fibre)) return cappedWord(leading.words);
  const low = fibres.filter((f) => VISCOSE_LIKE.includes(f.fibre)).reduce((sum, f) => sum + f.low, 0);
  const probability = chanceOfViscose({ fibres });
  return cappedWord(wordsForChance({ probability, low: Math.min(low, probability) }));
}

/** Whether the client can say "I bought it from you": not of a gift, and not of a cleaner's customer's rug. */
const isBoughtByClient = ({ findings }: Assessment, isTrade: boolean): boolean => !isTrade && !isGift(findings);

/** What can be made for a rug: a report of everything that was judged, the letter where silk was spoken of, the card for such a pile, the plan where a way of cutting was chosen. */
export function documentsOffered({ assessment, hasPlan, isTrade }: { assessment: Assessment | null; hasPlan: boolean; isTrade: boolean }): DocumentKind[] {
  if (!assessment) return [];
  const fits: Readonly<Record<DocumentKind, boolean>> = {
    "condition-report": true, "letter-to-seller": wasCalledSilk(assessment), "care-card": chanceOfViscose(assessment) >= CARE_CARD_FROM,
    "cut-down-plan": hasPlan,
  };
  return DOCUMENT_KINDS.filter((kind) => fits[kind] && (kind !== "letter-to-seller" || isBoughtByClient(assessment, isTrade)));
}
