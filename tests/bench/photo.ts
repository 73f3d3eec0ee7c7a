import { compareSpots } from "../../lib/photo/compare";
import { cutDowns } from "../../lib/photo/cut-down";
import { planOf } from "../../lib/photo/plan";
import { sideBySide, type BenchRow } from "./measure";

/** A picture of the size that spots are compared on, with a pattern that no compiler can foresee. */
function picture() {
  const [width, height] = [1600, 1200];
  return { width, height, data: Uint8Array.from({ length: width * height * 3 }, (_, i) => 90 + ((i * 7919) % 60)) };
}

const SPOTS = { untouched: { shape: "circle", x: 0.3, y: 0.4, radius: 0.03 }, affected: { shape: "circle", x: 0.6, y: 0.6, radius: 0.03 } } as const;
const DAMAGE = [[{ x: 40, y: 300 }, { x: 130, y: 280 }, { x: 160, y: 380 }, { x: 60, y: 400 }], [{ x: 250, y: 20 }, { x: 290, y: 60 }, { x: 240, y: 70 }]];

/** Milliseconds that each may take. */
const COMPARE_MS = 30, PLAN_MS = 50;

function comparison(): { ms: number; floorMs: number } {
  const shown = picture();
  return { ms: sideBySide(() => compareSpots(shown, SPOTS))[0] as number, floorMs: COMPARE_MS };
}
function plan(): { ms: number; floorMs: number } {
  const corners = [{ x: 0.1, y: 0.2 }, { x: 0.9, y: 0.22 }, { x: 0.95, y: 0.9 }, { x: 0.05, y: 0.85 }] as const;
  const work = () => {
    const made = planOf(corners, { widthCm: 300, lengthCm: 400 });
    return typeof made === "string" ? made : cutDowns(made, DAMAGE, { turnCm: 2, leastSideCm: 40, borderCm: 0, isSymmetric: false });
  };
  return { ms: sideBySide(work)[0] as number, floorMs: PLAN_MS };
}

export const rows: BenchRow[] = [
  { name: "two spots of one photo compared", floor: `the ${COMPARE_MS} ms that are allowed`, limit: 1, measure: comparison },
  { name: "plan and cut-downs of a rug of 3 × 4 m", floor: `the ${PLAN_MS} ms that are allowed`, limit: 1, measure: plan },
];
