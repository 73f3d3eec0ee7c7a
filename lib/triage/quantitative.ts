import { ANALYSED_FIBRES, QUANTITATIVE_METHODS, SCHEMES, type AnalysedFibre, type QuantitativeMethod, type SchemeId } from "../trade/quantitative";
import { binaryShares, roundedToHundred, ternary1Shares, ternary3Shares, ternaryStepShares, withAllowances } from "./quantitative-formulae";

/**
 * One dissolving and weighing. Dry masses in grams; `method` its number in Annex VIII, chapter 2. `ownFactors`: the factors d
 * the laboratory states instead of the table's, by fibre; with `method` null all there are: what it names stays, the rest dissolves.
 */
export interface Weighing {
  readonly method: number | null;
  readonly ownFactors?: Readonly<Record<string, number>>;
  readonly specimenMassG: number;
  readonly residueMassG: number;
}

/**
 * A laboratory's weighings. `fibres`: ids of ANALYSED_FIBRES, first, second and third as SCHEMES says. `lossesPercent`:
 * losses of pre-treatment where they were measured; else the usual ones. Where the residue of the first weighing is
 * dissolved further, both weighings name the mass of the one specimen.
 */
export interface WeighingsInput {
  readonly scheme: SchemeId;
  readonly fibres: readonly string[];
  readonly weighings: readonly Weighing[];
  readonly lossesPercent?: Readonly<Record<string, number>>;
}

/** Per cent by mass: of clean dry mass, and with agreed allowances and losses of pre-treatment. One decimal; each adds up to 100. */
export interface FibreShare { readonly fibre: string; readonly dry: number; readonly withAllowances: number }
export type Composition = { readonly ok: true; readonly percents: readonly FibreShare[] } | { readonly ok: false; readonly say: string };

const fibreById = new Map(ANALYSED_FIBRES.map((f) => [f.fibre, f]));
const methodByNumber = new Map(QUANTITATIVE_METHODS.map((m) => [m.method, m]));
const refuse = (say: string): Composition => ({ ok: false, say });

/** What is known of one dissolving: which of the fibres it takes, and the factors of those it leaves. */
type Reagent = Pick<QuantitativeMethod, "dissolves" | "residueFactor" | "limitPercent"> & { readonly name: string };

/** Limits of an own method: those of the least precise in the table (2). */
const OWN_LIMIT_PERCENT = Math.max(...QUANTITATIVE_METHODS.map((m) => m.limitPercent));

function reagentOf({ method, ownFactors = {} }: Weighing, fibres: readonly string[]): Reagent | undefined {
  if (method === null) return { name: "The laboratory’s own method", dissolves: fibres.filter((f) => ownFactors[f] === undefined), residueFactor: ownFactors, limitPercent: OWN_LIMIT_PERCENT };
  const row = methodByNumber.get(method);
  if (!row) return undefined;
  const stated = Object.entries(ownFactors).filter(([f]) => row.residueFactor[f] !== undefined);
  return { ...row, name: `Method ${row.method} (${row.reagent})`, residueFactor: { ...row.residueFactor, ...Object.fromEntries(stated) } };
}

/**
 * What a specimen is made of, from its weighings. Source: Regulation (EU) No 1007/2011, Annex VIII and IX. What cannot
 * be is refused in a sentence; shares outside 0–100 by more than a method's own limits are too.
 */
export function compositionFromWeighings(input: WeighingsInput): Composition {
  const fibres = input.fibres.map((id) => fibreById.get(id));
  const methods = input.weighings.map((w) => reagentOf(w, input.fibres));
  const known = fibres.filter((f) => f !== undefined);
  const usable = methods.filter((m) => m !== undefined);
  const wrong = wrongCount(input, known.length, usable.length) ?? wrongMass(input) ?? wrongReagent(input.scheme, known, usable) ?? wrongNumber(input);
  if (wrong) return refuse(wrong);
  const shares = sharesOf(input, known, usable);
  const slack = Math.max(...usable.map((m) => m.limitPercent));
  const impossible = shares.findIndex((s) => !(s >= -slack && s <= 100 + slack));
  if (impossible >= 0) return refuse(`These masses give ${shares[impossible]?.toFixed(1)} per cent of ${known[impossible]?.name}, which cannot be. Please check them.`);
  const clean = withAllowances(shares.map((s) => ({ dry: Math.max(s, 0), a: 0, b: 0 })));
  const allowed = withAllowances(known.map((f, i) => ({ dry: clean[i] as number, a: f.allowancePercent, b: input.lossesPercent?.[f.fibre] ?? f.pretreatmentLossPercent })));
  const [dry, inAir] = [roundedToHundred(clean), roundedToHundred(allowed)];
  return { ok: true, percents: known.map((f, i) => ({ fibre: f.fibre, dry: dry[i] as number, withAllowances: inAir[i] as number })) };
}

function wrongCount({ scheme, fibres, weighings }: WeighingsInput, known: number, usable: number): string | null {
  const needs = SCHEMES[scheme];
  if (fibres.length !== needs.fibres || new Set(fibres).size !== fibres.length) return `This analysis needs ${needs.fibres} different fibres.`;
  if (weighings.length !== needs.removes.length) return `This analysis needs ${needs.removes.length === 1 ? "one weighing" : "two weighings"}.`;
  if (known !== fibres.length) return "One of the fibres is not in the table of allowances.";
  return usable === weighings.length ? null : "One of the methods is not in the table of methods.";
}

function wrongMass({ scheme, weighings }: WeighingsInput): string | null {
  const isMass = (g: number) => Number.isFinite(g) && g >= 0;
  if (!weighings.every((w) => isMass(w.specimenMassG) && isMass(w.residueMassG))) return "A mass is a number of grams, not below zero.";
  if (weighings.some((w) => w.specimenMassG === 0)) return "The specimen must weigh something.";
  if (weighings.some((w) => w.residueMassG > w.specimenMassG)) return "The residue cannot weigh more than the specimen.";
  const [first, second] = weighings;
  if (!second || !SCHEMES[scheme].oneSpecimen || !first) return null;
  if (first.specimenMassG !== second.specimenMassG) return "Both weighings are of one specimen, so its mass must be the same.";
  return second.residueMassG > first.residueMassG ? "The second residue cannot weigh more than the first." : null;
}

const isOneOf = (removes: readonly number[], i: number) => removes.includes(i);

/** Every fibre that goes must dissolve, every fibre that stays must have a factor; what went before is no longer there. */
function wrongReagent(scheme: SchemeId, fibres: readonly AnalysedFibre[], methods: readonly Reagent[]): string | null {
  const { removes, oneSpecimen } = SCHEMES[scheme];
  const gone = new Set<number>();
  for (const [step, takes] of removes.entries()) {
    const method = methods[step] as Reagent;
    for (const [i, fibre] of fibres.entries()) {
      if (gone.has(i)) continue;
      if (isOneOf(takes, i) && !method.dissolves.includes(fibre.fibre)) return `${method.name} is not one that dissolves ${fibre.name}.`;
      if (!isOneOf(takes, i) && method.residueFactor[fibre.fibre] === undefined) return `${method.name} is not one for mixtures where ${fibre.name} stays.`;
    }
    if (oneSpecimen) takes.forEach((i) => gone.add(i));
  }
  return null;
}

/** Factors further from 1 than half are no correction but a mistake; the published ones lie within .96–1.03. Elicited. */
const isFactor = (d: number) => d > 0.5 && d < 1.5;
const isLoss = (p: number) => p >= 0 && p < 100;

function wrongNumber({ lossesPercent, weighings }: WeighingsInput): string | null {
  if (!weighings.flatMap((w) => Object.values(w.ownFactors ?? {})).every(isFactor)) return "A correction factor is a number near 1.";
  return Object.values(lossesPercent ?? {}).every(isLoss) ? null : "A loss in pre-treatment is a number of per cent from 0 to under 100.";
}

function sharesOf({ scheme, weighings }: WeighingsInput, fibres: readonly AnalysedFibre[], methods: readonly Reagent[]): readonly number[] {
  const d = (step: number, i: number) => methods[step]?.residueFactor[fibres[i]?.fibre ?? ""] ?? 1;
  const [one, two] = [weighings[0] as Weighing, (weighings[1] ?? weighings[0]) as Weighing];
  const masses = { m1: one.specimenMassG, r1: one.residueMassG, m2: two.specimenMassG, r2: two.residueMassG };
  switch (scheme) {
    case "binary": return binaryShares({ m: masses.m1, r: masses.r1, d: d(0, 1) });
    case "ternary-1": return ternary1Shares({ ...masses, d1: d(0, 1), d2: d(0, 2), d3: d(1, 0), d4: d(1, 2) });
    case "ternary-2": return ternaryStepShares({ ...masses, d1: d(0, 1), d2: d(0, 2), d3: d(1, 2) });
    case "ternary-3": return ternary3Shares({ ...masses, d2: d(0, 2), d3: d(1, 0) });
    case "ternary-4": return ternaryStepShares({ ...masses, d1: d(0, 1), d2: d(0, 2), d3: d(0, 2) * d(1, 2) });
  }
}
