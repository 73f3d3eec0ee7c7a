import type { Range } from "../../triage/assessment";
import { length, run, size, type Figures } from "../../words/measures";
import { wordsIn } from "../../words/words";
import { moneyPhrase } from "../phrases";
import { heading, list, paragraph, small, type Block, type PrintedDocument, type Rectangle } from "./blocks";

export interface CutWay {
  readonly kind: "edge-off" | "equal-ends" | "split-in-two" | "smaller-rectangle" | "centred";
  readonly pieces: readonly Rectangle[];
  /** Of the whole rug, 0 to 1. */
  readonly shareKept: number;
  readonly bindingM: number;
  /** New edges with the cost per metre of the workshop; null where no price is set. */
  readonly cost: { readonly range: Range; readonly currency: string } | null;
}
export interface CutDownPlan {
  readonly rug: string;
  readonly size: { readonly widthCm: number; readonly lengthCm: number };
  readonly damaged: readonly (readonly { readonly x: number; readonly y: number }[])[];
  /** The one that was chosen first; at least one. */
  readonly ways: readonly CutWay[];
  readonly isTufted: boolean;
  readonly workshop: { readonly name: string; readonly lines: readonly string[] };
  /** How lengths and sums are written. */
  readonly figures: Figures;
}

/** What each way of cutting is called, on paper and at the desk. */
export const CUT_NAMES: Readonly<Record<CutWay["kind"], string>> = {
  "edge-off": "One edge comes off", "equal-ends": "The same strip comes off both ends", "split-in-two": "Two rugs out of one", "smaller-rectangle": "A smaller rectangle", centred: "A smaller rectangle about the middle",
};

/** Allowed beside a cut for the turn. Common practice, no published source. */
const TURN_CM = 2;

/** What can be kept, drawn to scale, with its size, its new edges and what they cost. Provisional until measured on the rug. */
export function cutDownPlan(p: CutDownPlan): PrintedDocument {
  return {
    title: `Cutting down ${p.rug.charAt(0).toLowerCase()}${p.rug.slice(1)}`, language: p.figures.locale, head: p.workshop,
    blocks: [
      paragraph(`The rug measures about ${size(p.size.widthCm, p.size.lengthCm, p.figures)}. These are the ways to go on using the sound part of it. All measures were taken from a photo and are confirmed on the rug before anything is cut.`),
      small("In the drawings the rug as it is now is dashed, the damage is filled, and what remains is outlined."),
      ...p.ways.flatMap((way, i) => wayBlocks(p, way, i)),
      heading("How it is done"),
      ...list([
        `The cut runs along warp or weft, through the ground between motifs, with about ${length(TURN_CM, p.figures)} allowed for the turn.`,
        ...(p.isTufted ? ["The back is held together by latex: the line is sealed before it is cut, or it frays."] : []),
        "New edges are overcast by hand, bound by machine or with cotton tape; a fringe can be sewn on.",
        "A signed, dated or antique rug is shown to a valuer before anybody cuts it.",
      ]),
      small("Cutting cannot be undone. Nothing is cut before you have agreed to the line on the rug itself."),
    ],
  };
}

function wayBlocks({ size: rug, damaged, figures }: CutDownPlan, way: CutWay, i: number): Block[] {
  const pieces = way.pieces.map((r) => size(Math.round(r.right - r.left), Math.round(r.bottom - r.top), figures));
  const what = `${CUT_NAMES[way.kind]}: ${pieces.join(" and ")}`;
  return [
    heading(`${i + 1}. ${CUT_NAMES[way.kind]}`),
    { kind: "plan", ...rug, damaged, keep: way.pieces, alternative: `Plan of the rug from above, to scale. ${what} remain${way.pieces.length === 1 ? "s" : ""} of ${size(rug.widthCm, rug.lengthCm, figures)}.` },
    ...list([`Remains: ${pieces.join(" and ")}, about ${Math.round(way.shareKept * 100)} % of the rug.`, `New edges: about ${run(way.bindingM, figures)} of binding.`,
      ...(way.cost ? [`Cost: about ${moneyPhrase(way.cost.range, way.cost.currency, wordsIn(figures.locale))}, confirmed when we have seen it.`] : [])]),
  ];
}
