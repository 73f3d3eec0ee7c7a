import type { Words } from "../words/words";

const STEPS = [0.5, 1, 2, 5, 10, 20, 50] as const;

/** Where the line of years ends and its marks stand, from now on: even steps, three to seven marks. In years. */
export function yearMarks(highest: number): { end: number; marks: number[] } {
  const step = STEPS.find((s) => highest / s <= 5) ?? 100;
  const count = Math.max(2, Math.ceil((highest * 1.1) / step));
  return { end: count * step, marks: Array.from({ length: count + 1 }, (_, k) => k * step) };
}

/** What stands at a mark: "now", "½", "1½", "8"; the last with its unit. */
export function markLabel(years: number, isLast: boolean, { say }: Words): string {
  if (years === 0) return say("own.life-now");
  const whole = Math.floor(years);
  const figure = `${whole > 0 ? whole : ""}${years > whole ? "½" : ""}`;
  return isLast ? say("own.life-last", { figure, n: years > 1 ? 2 : 1 }) : figure;
}
