import type { Range } from "../../triage/assessment";
import { length, run, size, type Figures } from "../../words/measures";
import { wordsIn } from "../../words/words";
import { listed, moneyEstimate, percent } from "../phrases";
import { askedBy, type Asker } from "../who-asks";
import { heading, list, paragraph, small, type Block, type PlanSide, type PrintedDocument, type Rectangle } from "./blocks";

export interface CutWay {
  readonly kind: "edge-off" | "equal-ends" | "split-in-two" | "smaller-rectangle" | "centred";
  readonly pieces: readonly Rectangle[];
  /** Of the whole rug, 0 to 1. */
  readonly shareKept: number;
  readonly bindingM: number;
  /** From the new edges as drawn to new ones all round what remains, at the workshop's cost per metre; null where no price is set. */
  readonly cost: { readonly range: Range; readonly currency: string } | null;
}
/** What was decided of cutting a rug down: the way that was chosen on its plan, or that none is to be; `open` where nobody has chosen, `unplanned` where it is proposed without a plan. */
export type CutDecision = CutWay["kind"] | "against" | "open" | "unplanned";
export interface CutDownPlan {
  readonly reference: string;
  readonly asker: Asker;
  /** Inside a sentence: "a grey rug, 200 × 300 cm". */
  readonly rug: string;
  readonly size: { readonly widthCm: number; readonly lengthCm: number };
  /** Which of its edges lies towards the top of the photo it was drawn on. */
  readonly photoTop: PlanSide;
  readonly damaged: readonly (readonly { readonly x: number; readonly y: number }[])[];
  /** The one that was chosen first; at least one. */
  readonly ways: readonly CutWay[];
  readonly isTufted: boolean;
  /** Whether the letter proposes the way that was chosen: not where something else is advised. */
  readonly isProposed: boolean;
  /** Whether somebody here has inspected it, or only before flood water was told of. */
  readonly inspected: "yes" | "before" | "no";
  readonly workshop: { readonly name: string; readonly lines: readonly string[] };
  /** How lengths and sums are written. */
  readonly figures: Figures;
}

/** Allowed beside a cut for the turn. Common practice, no published source. */
const TURN_CM = 2;

/** What can be kept, drawn to scale, with its size, its new edges and what they cost. Provisional until measured on the rug. */
export function cutDownPlan(p: CutDownPlan): PrintedDocument {
  const words = wordsIn(p.figures.locale);
  const { say } = words;
  return {
    title: say("plan.title", { rug: p.rug }), language: p.figures.locale, head: p.workshop, reference: p.reference,
    blocks: [
      ...(p.asker.as === "trade" ? [paragraph(askedBy(p.asker, words))] : []),
      paragraph(say("plan.measures", { size: size(p.size.widthCm, p.size.lengthCm, p.figures) })),
      ...(p.inspected === "yes" ? [] : [paragraph(say("plan.provisional", { inspected: p.inspected }))]),
      small(say("plan.drawings", { edge: p.photoTop })),
      ...p.ways.flatMap((way, i) => wayBlocks(p, way, i)),
      heading(say("plan.how")),
      ...list([say("plan.cut", { turn: length(TURN_CM, p.figures) }), ...(p.isTufted ? [say("plan.latex")] : []), say("plan.new-edges"), say("plan.antique")]),
      small(say("plan.no-way-back", { as: p.asker.as })),
    ],
  };
}

function wayBlocks({ size: rug, damaged, photoTop, isProposed, figures }: CutDownPlan, way: CutWay, i: number): Block[] {
  const words = wordsIn(figures.locale);
  const { say } = words;
  const sizes = way.pieces.map((r) => size(Math.round(r.right - r.left), Math.round(r.bottom - r.top), figures));
  const [name, pieces] = [words.table(`cut.${way.kind}`), listed(sizes, "and", words)];
  return [
    heading(say("plan.way", { n: i + 1, way: name })),
    {
      kind: "plan", ...rug, damaged, keep: way.pieces, sizes: { across: length(rug.widthCm, figures), along: length(rug.lengthCm, figures), kept: sizes },
      photoTop: { edge: photoTop, words: say("plan.photo-top") },
      alternative: say("plan.alternative", { way: name, pieces, n: way.pieces.length, size: size(rug.widthCm, rug.lengthCm, figures) }),
    },
    ...list([
      ...(i === 0 ? [say("plan.chosen", { proposed: isProposed ? "yes" : "no" })] : []),
      say("plan.remains", { pieces, share: percent(Math.round(way.shareKept * 100)) }), say("plan.edges", { length: run(way.bindingM, figures) }),
      ...(way.cost ? [say("plan.cost", { cost: moneyEstimate(way.cost.range, way.cost.currency, words) })] : []),
    ]),
  ];
}
