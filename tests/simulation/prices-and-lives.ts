import type { Construction, Named } from "./tables";
import { normal, type World } from "./world";

/** Price new per m², pounds of 2024, median and spread of its logarithm. Elicited; one line a fibre, knotted ones of their own. */
const PRICE: Readonly<Record<Named, readonly [median: number, logSd: number]>> = {
  silk: [1800, 0.8], wool: [180, 0.7], "wool-silk": [900, 0.7], viscose: [180, 0.95], "wool-viscose": [260, 0.8], "silk-viscose": [600, 0.8], "cotton-viscose": [160, 0.8], lyocell: [250, 0.7], acetate: [150, 0.8],
  cotton: [70, 0.7], "mercerised-cotton": [200, 0.7], bast: [110, 0.7], "hard-fibre": [60, 0.6], polyamide: [90, 0.6], polyester: [60, 0.6], polypropylene: [40, 0.6], acrylic: [60, 0.6],
};
const KNOTTED_PRICE: Partial<Record<Named, readonly [number, number]>> = { wool: [450, 0.8], viscose: [450, 0.8], "wool-viscose": [420, 0.8] };
/** At an auction, in a bazaar, second-hand or as a gift the price says less. */
const WIDE_SD = 1.3;

export function pricePerM2Of2024(world: World, fibre: Named, construction: Construction, isWide: boolean): number {
  const [median, sd] = (construction === "knotted" ? KNOTTED_PRICE[fibre] : undefined) ?? (fibre === "wool" && construction === "machine" ? [110, 0.6] : PRICE[fibre]);
  return median * Math.sqrt(world.error(`price/${fibre}/${construction}`)) * Math.exp(normal(world.random) * (isWide ? WIDE_SD : sd));
}

/** Years from new in ordinary use, median; Weibull shape 2.5 for a pile that fails, 1.8 for the durable. Elicited. */
const LIFE: Readonly<Record<Named, number>> = {
  silk: 40, wool: 15, "wool-silk": 35, viscose: 5, "wool-viscose": 8, "silk-viscose": 8, "cotton-viscose": 6, lyocell: 6, acetate: 5, cotton: 7, "mercerised-cotton": 8, bast: 7, "hard-fibre": 6, polyamide: 11,
  polyester: 6, polypropylene: 6, acrylic: 7,
};
const USE: Readonly<Record<string, number>> = { little: 1.7, busy: 0.55, furniture: 1.4, ordinary: 1 };
const isDurable = (median: number) => median >= 11;

export function lifeFromNewYears(world: World, at: { fibre: Named; construction: Construction; room: string; hasPets: boolean; floorHeating: boolean }): number {
  const median = at.fibre === "wool" ? ({ knotted: 40, tufted: 11, machine: 15, loomed: 15, flat: 15 } as const)[at.construction] : at.fibre === "silk" && at.construction !== "knotted" ? 20 : LIFE[at.fibre];
  const factor = (USE[at.room] ?? 1) * (at.hasPets ? 0.8 : 1) * (at.floorHeating && at.fibre.includes("viscose") ? 0.85 : 1);
  const off = world.error(`life/${at.fibre}/${at.construction}`) ** 0.35;
  const shape = isDurable(median) ? 1.8 : 2.5;
  return median * factor * off * (-Math.log(1 - world.random()) / Math.LN2) ** (1 / shape);
}

/**
 * The age and the whole life of a rug that is still there: bought at a steady rate over the years, knotted rugs further
 * back; whoever is dead by now does not write in.
 */
export function ageAndLife(world: World, at: Parameters<typeof lifeFromNewYears>[1]): { ageYears: number; leftYears: number } {
  const mostYears = at.construction === "knotted" ? 90 : at.construction === "flat" ? 25 : 30;
  for (;;) {
    const ageYears = mostYears * world.random();
    const lifeYears = lifeFromNewYears(world, at);
    if (lifeYears > ageYears) return { ageYears, leftYears: lifeYears - ageYears };
  }
}
