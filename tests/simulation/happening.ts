import type { AnswerOf, RugAnswers } from "../../lib/trade/questions";
import { TAKES_TO, type Cause } from "./damage";
import type { Named } from "./tables";
import { pickFrom, type Weights, type World } from "./world";

/** What happened to a rug, and what a person who was there would say of it. */
export interface Happening {
  readonly causes: readonly Cause[];
  readonly told: Pick<RugAnswers, "incidents" | "liquid" | "since" | "treatments" | "treatedBy">;
  readonly reason: AnswerOf<"reason">;
  readonly wetNow: AnswerOf<"wetNow">;
}

type Since = AnswerOf<"since">;
const SINCE: Weights = { hour: 8, day: 14, "two-days": 15, week: 18, month: 17, longer: 28 };
const isFresh = (since: Since) => since === "hour" || since === "day" || since === "two-days";
const reasonOf = (since: Since): AnswerOf<"reason"> => (isFresh(since) ? "just-happened" : "older-trouble");
const TREATED: Weights = { nothing: 14, blotted: 22, rubbed: 14, "plain-water": 17, "household-cleaner": 16, soap: 10, "vinegar-soda": 4, bleach: 2, "steam-heat": 1, machine: 3 };
const WET_TREATMENTS = new Set(["plain-water", "household-cleaner", "soap", "vinegar-soda", "machine", "bleach"]);

/** Treatments of a spot at home, and the harm they did on top. */
function treatedAtHome(world: World, fibre: Named): { treatments: AnswerOf<"treatments">[]; harm: Cause[] } {
  const first = world.pick("treated", TREATED);
  const second = world.happens("treated twice", 0.35) ? world.pick("treated", TREATED) : first;
  const treatments = [...new Set(first === "nothing" ? [first] : [first, second].filter((t) => t !== "nothing"))] as AnswerOf<"treatments">[];
  const wet = treatments.some((t) => WET_TREATMENTS.has(t));
  const harm: Cause[] = [];
  if (treatments.includes("rubbed") && world.happens(`burst/rubbed/${fibre}`, TAKES_TO.bursting(fibre))) harm.push("burst");
  else if (wet && world.happens(`burst/wet/${fibre}`, TAKES_TO.bursting(fibre) / 2)) harm.push("burst");
  if (treatments.includes("bleach") && world.happens(`bleached/${fibre}`, 0.6)) harm.push("bleached");
  if (wet && world.happens(`bled/${fibre}`, 0.05)) harm.push("bleedDry");
  if (wet && world.happens(`browned/spot/${fibre}`, TAKES_TO.browning(fibre) / 2)) harm.push("brownedInUse");
  return { treatments, harm };
}

const LIQUIDS: Weights = { water: 3, wine: 26, "coffee-tea": 26, juice: 17, milk: 11, grease: 7, ink: 5, other: 5 };

function spilled(world: World, fibre: Named): Happening {
  const since = pickFrom(world.random, SINCE) as Since;
  const { treatments, harm } = treatedAtHome(world, fibre);
  const old = since === "longer" || (!isFresh(since) && world.happens("food set", 0.5));
  return {
    causes: [old ? "foodOld" : "foodFresh", ...harm], reason: reasonOf(since), wetNow: since === "hour" ? "wet" : since === "day" ? "damp" : "no",
    told: { incidents: ["spill"], liquid: pickFrom(world.random, LIQUIDS) as AnswerOf<"liquid">, since, treatments, treatedBy: treatments[0] === "nothing" ? undefined : "owner" },
  };
}

function urinated(world: World, fibre: Named): Happening {
  const since = pickFrom(world.random, { ...SINCE, longer: 42 }) as Since;
  const { treatments, harm } = treatedAtHome(world, fibre);
  return {
    causes: [isFresh(since) ? "urineFresh" : "urineOld", ...harm], reason: reasonOf(since), wetNow: since === "hour" ? "wet" : since === "day" ? "damp" : "no",
    told: { incidents: ["pet-urine"], liquid: "urine", since, treatments, treatedBy: treatments[0] === "nothing" ? undefined : "owner" },
  };
}

function washed(world: World, fibre: Named): Happening {
  const by = pickFrom(world.random, { owner: 35, cleaner: 40, "rug-cleaner": 18, "me-trade": 7 }) as AnswerOf<"treatedBy">;
  const atHome = by === "owner";
  const since = pickFrom(world.random, { day: 12, "two-days": 18, week: 30, month: 18, longer: 22 }) as Since;
  const causes: Cause[] = [];
  if (world.happens(`browned/washed/${fibre}`, Math.min(0.9, TAKES_TO.browning(fibre) * 1.3))) causes.push(isFresh(since) || since === "week" ? "brownedByWashFresh" : "brownedByWashOld");
  if (world.happens(`burst/washed/${fibre}`, TAKES_TO.bursting(fibre))) causes.push("burst");
  if (world.happens(`bled/washed/${fibre}`, 0.14)) causes.push(isFresh(since) ? "bleedDamp" : "bleedDry");
  const treatment = atHome ? pickFrom(world.random, { machine: 50, soap: 30, "plain-water": 20 }) : pickFrom(world.random, { "professional-wet": 76, "professional-dry": 24 });
  return {
    causes, reason: by === "me-trade" ? "trade" : "after-cleaning", wetNow: since === "day" ? pickFrom(world.random, { wet: 30, damp: 50, no: 20 }) as "wet" : "no",
    told: { incidents: [atHome ? "washed-home" : "washed-professional"], since, treatments: [treatment as AnswerOf<"treatments">], treatedBy: by },
  };
}

const dry = (causes: readonly Cause[], incidents: AnswerOf<"incidents">[], reason: AnswerOf<"reason">, more: Partial<Happening["told"]> = {}): Happening => ({ causes, reason, wetNow: "no", told: { incidents, ...more } });

/** One happening for an occasion; some occasions leave no trace, and a rug that was long in use has matted a little beside. */
export function happeningOf(world: World, occasion: string, fibre: Named): Happening {
  const mats = world.happens(`matted/${fibre}`, TAKES_TO.matting(fibre) * 0.45);
  switch (occasion) {
    case "spill": return spilled(world, fibre);
    case "urine": return urinated(world, fibre);
    case "washed": return washed(world, fibre);
    case "brownedInUse": return dry(world.happens(`browned/use/${fibre}`, Math.min(0.95, TAKES_TO.browning(fibre) * 1.5)) ? ["brownedInUse"] : ["soil"], [world.happens("damp told", 0.6) ? "damp" : "unknown"], "older-trouble");
    case "traffic": return dry(["matted"], ["wear"], "older-trouble");
    case "sun": return dry(["faded"], ["sun"], "older-trouble");
    case "insects": return dry(["soil"], [world.happens(`insects/${fibre}`, TAKES_TO.insects(fibre)) ? "insects" : "stored"], "older-trouble");
    case "damp": return dry(["mould"], ["damp"], "older-trouble");
    case "water": {
      const since = pickFrom(world.random, SINCE) as Since;
      const browned = world.happens(`browned/water/${fibre}`, TAKES_TO.browning(fibre));
      return dry(browned ? ["brownedInUse"] : ["soil"], ["water"], reasonOf(since), { liquid: "water", since, treatments: ["blotted"], treatedBy: "owner" });
    }
    case "question": return dry(mats ? ["matted"] : ["soil"], ["nothing"], world.happens("mis-sold", 0.4) ? "mis-sold" : "what-is-it");
    default: return dry(mats ? ["matted", "soil"] : ["soil"], [world.happens("nothing told", 0.6) ? "nothing" : "wear"], "routine");
  }
}
