import { CONSTRUCTIONS, type Construction } from "../trade/care";
import { FIBRE_IDS, type FibreId } from "../trade/fibres";
import { AGES, LIFE, LIFE_FACTORS, SURVIVAL_TEMPER, WEAR_LEFT, type LifeRow } from "../trade/life";
import type { Range } from "./assessment";
import { constructionShares } from "./construction";
import type { Told } from "./told";

/** Survival to age t (years) of a Weibull life with this median and shape. */
export const survival = (life: { medianYears: number; shape: number }, years: number): number =>
  Math.exp(-Math.LN2 * (years / life.medianYears) ** life.shape);

/** Nothing told is impossible: no chance of having survived counts as less than this before it is tempered. Elicited. */
const LEAST_SURVIVAL = 0.001;

/** One way the rug may be: its pile, its make where that decides how long it lives (else the first), its life from new, its age now in years, its weight, and the most that wear leaves it. */
export interface Lifetime { readonly fibre: FibreId; readonly made: Construction; readonly life: LifeRow; readonly age: number; readonly weight: number; readonly most: number }

const rowFor = (fibre: FibreId, made: Construction): LifeRow => {
  const row = LIFE[fibre];
  return "medianYears" in row ? row : row[made];
};

/** Ages with their shares: the client's answer, else the year bought new, else the ages of rugs people write in about. */
export function agesOf(told: Told, yearNow: number): readonly (readonly [years: number, share: number])[] {
  const age = told.one("age");
  if (age && age in AGES) return AGES[age as keyof typeof AGES].years;
  const year = told.value("boughtYear");
  const boughtNew = ["specialist", "furniture", "online"].some((w) => told.has(`boughtWhere:${w}`));
  if (typeof year === "number" && year <= yearNow && boughtNew) return [[yearNow - year, 1]];
  return AGES.unknown.years;
}

/** Years by which use stretches or shortens every life of a fibre. */
const factorOf = (told: Told, fibre: FibreId): number =>
  LIFE_FACTORS.reduce((f, row) => (told.has(row.when) && (!row.only || row.only.includes(fibre)) ? f * row.times : f), 1);

/** Every fibre × construction × age; the weight is the belief times the tempered chance of having survived, and they sum to 1. */
export function lifetimesOf(told: Told, fibres: Readonly<Record<FibreId, number>>, yearNow: number): Lifetime[] {
  const ages = agesOf(told, yearNow);
  const shares = constructionShares(told);
  const wear = Math.min(...WEAR_LEFT.filter((w) => told.has(`changes:${w.change}`)).map((w) => w.share));
  const all = FIBRE_IDS.flatMap((fibre) => {
    const times = factorOf(told, fibre);
    const varies = !("medianYears" in LIFE[fibre]);
    return (varies ? CONSTRUCTIONS : CONSTRUCTIONS.slice(0, 1)).flatMap((made) => {
      const row = rowFor(fibre, made);
      const life = { ...row, medianYears: row.medianYears * times };
      const most = wear === Infinity ? Infinity : wear * life.medianYears;
      return ages.map(([age, share]): Lifetime => ({
        fibre, made, life, age, most, weight: fibres[fibre] * (varies ? shares[made] : 1) * share * Math.max(survival(life, age), LEAST_SURVIVAL) ** SURVIVAL_TEMPER.power,
      }));
    });
  });
  const total = all.reduce((sum, l) => sum + l.weight, 0);
  return all.filter((l) => l.weight > 0).map((l) => ({ ...l, weight: l.weight / total }));
}

/** P(still in use after `years` more), given that it has lived to its age. With wear seen, life is scaled to end sooner. */
function lastsLonger(l: Lifetime, years: number): number {
  if (l.most === Infinity) return Math.exp(-Math.LN2 * (((l.age + years) / l.life.medianYears) ** l.life.shape - (l.age / l.life.medianYears) ** l.life.shape));
  const fromAge = lastsLonger({ ...l, most: Infinity }, years);
  return Math.min(fromAge, survival({ medianYears: l.most, shape: l.life.shape }, years));
}

/**
 * Years left from now, 10th, 50th and 90th percentile of the mixture over fibres, constructions and ages. Ordinary use as
 * told. Null for antiques, which this model does not know.
 */
export function lifeLeft(told: Told, fibres: Readonly<Record<FibreId, number>>, yearNow: number): Range | null {
  if (told.has("age:antique")) return null;
  const all = lifetimesOf(told, fibres, yearNow);
  const gone = (years: number) => 1 - all.reduce((sum, l) => sum + l.weight * lastsLonger(l, years), 0);
  return { low: yearsUntil(gone, 0.1), median: yearsUntil(gone, 0.5), high: yearsUntil(gone, 0.9) };
}

/** Where the search for a quantile ends, in years: five times the longest median of the table. Elicited. */
const LONGEST_YEARS = 200;

/** The years at which the rising function `gone` reaches a chance, by bisection to 0.005 years. */
function yearsUntil(gone: (years: number) => number, chance: number): number {
  let [low, high] = [0, LONGEST_YEARS];
  while (high - low > 0.005) {
    const middle = (low + high) / 2;
    if (gone(middle) >= chance) high = middle;
    else low = middle;
  }
  return high;
}
