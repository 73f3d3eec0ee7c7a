import { cutDowns, type CutDown } from "../photo/cut-down";
import { areaSdCm2, damagedPlace, edgeAtTop, planOf, type Damaged, type Plan, type PlanEdge } from "../photo/plan";
import { boxOf, coveredArea, type Box, type Polygon } from "../photo/polygon";
import { CUT_DOWN } from "../trade/value";
import type { Range } from "../triage/assessment";
import type { PlanMarks } from "./mark-schema";

/** The least side of what is still a rug to its owner, in cm. Elicited. */
const LEAST_SIDE_CM = 40;
/** Rows in which areas are added up, in cm. */
const ROW_CM = 0.25;

export interface MeasuredPlan {
  plan: Plan;
  /** Which of its edges lies towards the top of the photo. */
  photoTop: PlanEdge;
  places: readonly Damaged[];
  /** Of all places together, each centimetre once. */
  damagedCm2: number;
  /** Standard deviation, from pointing by hand; of several places as if all erred the same way. */
  damagedSdCm2: number;
  /** Of the whole rug, 0 to 1. */
  share: number;
  ways: readonly CutDown[];
  chosen: CutDown | null;
}

const overlap = (a: Box, b: Box): boolean => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
/** Whether no two outlines can share anything: then their areas add up, and the sum is exact where rows are not. */
function areApart(outlines: readonly Polygon[]): boolean {
  const boxes = outlines.map(boxOf);
  return boxes.every((a, i) => !boxes.some((b, k) => k > i && overlap(a, b)));
}

/** The rug from above as it was marked, and what can be kept of it. A string says, for people, what is wrong with the marks. Runs at the server and in the browser. */
export function measurePlan({ corners, widthCm, lengthCm, damaged, borderCm, isSymmetric, chosen }: PlanMarks): MeasuredPlan | string {
  const size = { widthCm, lengthCm };
  const plan = planOf(corners, size);
  if (typeof plan === "string") return plan;
  const places: Damaged[] = [];
  for (const outline of damaged) {
    const place = damagedPlace(plan, outline);
    if (typeof place === "string") return place;
    places.push(place);
  }
  const outlines = places.map((p) => p.outline);
  const damagedCm2 = areApart(outlines) ? places.reduce((sum, p) => sum + p.areaCm2, 0) : coveredArea(outlines, ROW_CM);
  const ways = cutDowns(plan, outlines, { turnCm: CUT_DOWN.turnCm, leastSideCm: LEAST_SIDE_CM, borderCm, isSymmetric });
  return {
    plan, places, damagedCm2, ways, photoTop: edgeAtTop(corners),
    damagedSdCm2: damaged.reduce((sum, outline) => sum + areaSdCm2(corners, size, outline), 0),
    share: damagedCm2 / (widthCm * lengthCm),
    chosen: ways.find((w) => w.kind === chosen) ?? null,
  };
}

/** Edges all round a piece in metres, each with its turn. */
const roundM = ({ left, top, right, bottom }: CutDown["pieces"][number]): number => (2 * (right - left) + 2 * (bottom - top) + 4 * CUT_DOWN.turnCm) / 100;

/** Metres of new edges all round each piece that a way keeps, as where nothing was drawn (CUT_DOWN); no less than those drawn. */
export const allRoundM = ({ bindingM, pieces }: Pick<CutDown, "bindingM" | "pieces">): number => Math.max(bindingM, pieces.reduce((sum, piece) => sum + roundM(piece), 0));

/**
 * What a way's new edges may come to before the rug is seen, in the workshop's currency: as drawn (low, median) to new ones all round (high).
 */
export function edgesRange(way: Pick<CutDown, "bindingM" | "pieces">, bindingPerM: number): Range {
  const drawn = edgesCost(way, bindingPerM);
  return { low: drawn, median: drawn, high: allRoundM(way) * bindingPerM };
}

/** What the new edges of a way cost as drawn, in the workshop's currency, at its rate for a metre. */
export const edgesCost = (way: Pick<CutDown, "bindingM">, bindingPerM: number): number => way.bindingM * bindingPerM;
