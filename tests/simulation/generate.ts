import type { FibreId } from "../../lib/trade/fibres";
import type { EnquiryAnswers, RugAnswers } from "../../lib/trade/questions";
import type { SingleFibre } from "../../lib/trade/single-fibres";
import type { Finding } from "../../lib/triage/finding";
import { benchFindings, isSingle, laboratoryFinding, OUTSIDE, PARTS_OF } from "./bench";
import { OCCASION, TAKES_TO, trueImprovement } from "./damage";
import { happeningOf } from "./happening";
import { aboutTheRug, changesSeen, labelOf, type LabelFound, type Latent, type TrueRug } from "./person";
import { ageAndLife } from "./prices-and-lives";
import { ORDER, weightsOf, WHO_WRITES, type Construction, type Named } from "./tables";
import { logUniform, makeWorld, MOST_OFF, mulberry32, pickFrom, type Weights, type World } from "./world";

/**
 * Enquiries whose truth is known, made by a generator that is not the model: its author read the account of the trade in
 * prose and the questions, never lib/triage or the tables it weighs evidence by.
 *
 * The mix, elicited. Labels: as often as the make has one and the owner looks (`HAS_LABEL`, `labelOf`), under a third of
 * the cases in all, a third of those confirmed in a photo. Bench tests: 15 % of the cases (the rug came in). Laboratory: 1 %.
 * Outside the classes: 5 %. Unkind on purpose: latent knowledge, honesty and light bend many answers at once; about one
 * in ten owners sees what they were told; priors are up to threefold off in each batch, every likelihood up to twofold
 * in each world; the label is missing where it would say viscose, the price where it was high.
 */
export const MIX = { bench: 0.15, laboratory: 0.01, outside: 0.05 } as const;
/** The day the cases are written. */
export const WRITTEN = { asOf: "2026-11-28T09:00:00.000Z", year: 2026.9 } as const;

export interface Case {
  readonly truth: FibreId;
  readonly rug: RugAnswers;
  readonly enquiry: EnquiryAnswers;
  readonly label: LabelFound;
  readonly tests: readonly Finding[];
  /** Per cent, and years from the day of writing. */
  readonly improvementPercent: number;
  readonly leftYears: number;
  readonly world: number;
  readonly knows: number;
  readonly honestSeller: number;
  readonly causes: readonly string[];
}

/** 2 batches of shifted priors in each world. */
const BATCHES_PER_WORLD = 2;

export function generateCases({ cases, worlds, seed }: { cases: number; worlds: number; seed: number }): Case[] {
  const perBatch = Math.ceil(cases / (worlds * BATCHES_PER_WORLD));
  const made: Case[] = [];
  for (let w = 0; w < worlds; w += 1) {
    for (let b = 0; b < BATCHES_PER_WORLD; b += 1) {
      const random = mulberry32(seed * 1_000_003 + w * 1009 + b);
      const world = makeWorld(seed * 7919 + w, random);
      const priors = Object.fromEntries(ORDER.map((f) => [f, WHO_WRITES[f] * logUniform(random, MOST_OFF.prior)]));
      for (let i = 0; i < perBatch && made.length < cases; i += 1) made.push(oneCase(world, priors, w));
    }
  }
  return made;
}

const beta = (random: () => number, lean: number) => random() ** lean;

function oneCase(world: World, priors: Weights, worldNumber: number): Case {
  const { random } = world;
  const latent: Latent = { knows: random(), honestSeller: beta(random, 0.7), light: beta(random, 0.6) };
  const outside = random() < MIX.outside ? OUTSIDE[Math.floor(random() * OUTSIDE.length)] : undefined;
  const named = pickFrom(random, priors) as Named;
  const like = outside?.looksLike ?? ([named] as const);
  const lead = like[Math.floor(random() * like.length)] as Named;
  const construction = world.pick(`made/${lead}`, weightsOf("made", lead)) as Construction;
  const occasion = occasionOf(world, lead);
  const room = world.pick("room", { busy: 25, ordinary: 48, little: 17, furniture: 10 });
  const home = { pets: world.happens("pets", occasion === "urine" ? 0.9 : 0.35), children: world.happens("children", 0.25), floorHeating: world.happens("floor-heating", 0.14), moths: occasion === "insects" };
  const { ageYears, leftYears } = ageAndLife(world, { fibre: lead, construction, room, hasPets: home.pets, floorHeating: home.floorHeating });
  const rug: TrueRug = { like, labelTruth: outside?.label ?? "", construction, ageYears, wear: ageYears / (ageYears + leftYears) };
  const happened = happeningOf(world, occasion, lead);
  const label = labelOf(world, rug, latent);
  return {
    truth: outside ? "other" : named, world: worldNumber, knows: latent.knows, honestSeller: latent.honestSeller, causes: happened.causes, label,
    rug: { ...aboutTheRug(world, rug, latent, WRITTEN.year), ...toldOf(world, happened.told), changes: changesSeen(world, happened.causes, latent, rug.wear), ...aboutTheRoom(world, room, home), ...(label?.as ? { labelText: label.text, labelFound: "typed" } : random() < 0.6 ? { labelFound: "none" } : {}) },
    enquiry: { wetNow: happened.wetNow, ...(random() < 0.95 ? { reason: happened.reason } : {}) },
    tests: testsOf(world, outside?.fibres ?? (isSingle(named) ? [named] : PARTS_OF[named] ?? []), construction),
    improvementPercent: trueImprovement(world, lead, happened.causes), leftYears,
  };
}

/** Rugs that brown, mat or are eaten bring their owners more often for that. */
function occasionOf(world: World, fibre: Named): string {
  const leans: Weights = { brownedInUse: 0.4 + 2 * TAKES_TO.browning(fibre), traffic: 0.5 + TAKES_TO.matting(fibre), insects: 0.1 + 2 * TAKES_TO.insects(fibre) };
  return world.pick("occasion", Object.fromEntries(Object.entries(OCCASION).map(([name, w]) => [name, w * (leans[name] ?? 1)])));
}

/** Each part of what happened is told or left out. */
const toldOf = (world: World, told: Partial<RugAnswers>): RugAnswers => Object.fromEntries(Object.entries(told).filter(([what, value]) => value !== undefined && world.random() < (what === "incidents" ? 0.94 : 0.8)));

function aboutTheRoom(world: World, room: string, home: { pets: boolean; children: boolean; floorHeating: boolean; moths: boolean }): RugAnswers {
  const all = [["pets", home.pets], ["children", home.children], ["floor-heating", home.floorHeating], ["moths", home.moths]] as const;
  const household = all.filter(([, holds]) => holds).map(([name]) => name);
  return { ...(world.random() < 0.85 ? { room: room as "busy" } : {}), ...(world.random() < 0.85 ? { household: household.length > 0 ? household : ["none"] } : {}) };
}

function testsOf(world: World, fibres: readonly SingleFibre[], construction: Construction): Finding[] {
  const twoYarns = world.random() < (construction === "machine" ? 0.3 : 0.65);
  const bench = world.random() < MIX.bench ? benchFindings(world, { fibres, twoYarns, fringe: world.random() < 0.85 ? "cotton" : "viscose" }) : [];
  return world.random() < MIX.laboratory ? [...bench, laboratoryFinding(world, fibres)] : bench;
}
