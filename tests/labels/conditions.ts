import type { Conditions } from "./draw";

export const LEVELS = ["clean", "medium", "whole frame", "hard"] as const;
export type Level = (typeof LEVELS)[number];

const within = (random: () => number, from: number, to: number) => from + random() * (to - from);
const TURNS = [0, 0, 0, 90, 180, 270] as const;

/** How photos of each level were taken: our judgement of what phones send, not measured. */
export function conditionsOf(random: () => number, level: Level): Conditions {
  const turn = TURNS[Math.floor(random() * TURNS.length)]!;
  const side = random() < 0.5 ? -1 : 1;
  switch (level) {
    case "clean":
      return { capital: within(random, 24, 60), turned: side * within(random, 0, 3), leaning: 0, blur: 0, noise: within(random, 0, 3), faint: within(random, 0, 0.15), woven: 0.2, folded: 0, scene: null };
    case "medium": {
      const capital = within(random, 18, 44);
      return { capital, turned: turn + side * within(random, 0, 8), leaning: side * within(random, 0, 0.08), blur: capital * within(random, 0.01, 0.05), noise: within(random, 2, 7), faint: within(random, 0.1, 0.4), woven: within(random, 0.4, 1), folded: within(random, 0, 0.7), scene: null };
    }
    case "whole frame": {
      const capital = within(random, 18, 36);
      return { capital, turned: turn + side * within(random, 0, 10), leaning: side * within(random, 0, 0.1), blur: capital * within(random, 0.01, 0.05), noise: within(random, 2, 7), faint: within(random, 0.1, 0.4), woven: within(random, 0.4, 1), folded: within(random, 0, 0.7), scene: { width: 1600, height: 1200 } };
    }
    case "hard": {
      const capital = within(random, 12, 24);
      return { capital, turned: turn + side * within(random, 0, 20), leaning: side * within(random, 0.05, 0.2), blur: capital * within(random, 0.05, 0.09), noise: within(random, 6, 12), faint: within(random, 0.4, 0.62), woven: within(random, 0.7, 1.3), folded: within(random, 0.5, 1.2), scene: { width: 1600, height: 1200 } };
    }
  }
}
