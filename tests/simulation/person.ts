import type { AnswerOf, Currency, RugAnswers } from "../../lib/trade/questions";
import { SEEN, type Cause } from "./damage";
import { pricePerM2Of2024 } from "./prices-and-lives";
import { BACK, FRINGE, HAS_LABEL, ORDER, WHERE, weightsOf, type Construction, type Named } from "./tables";
import { pickFrom, type Weights, type World } from "./world";

/** What lies behind one person's answers and bends them all at once. Each 0–1. */
export interface Latent { readonly knows: number; readonly honestSeller: number; readonly light: number }

/** The rug as it is. `like`: the named fibres whose tables it follows, one for an ordinary rug, two for one outside the classes. */
export interface TrueRug { readonly like: readonly Named[]; readonly labelTruth: string; readonly construction: Construction; readonly ageYears: number; readonly wear: number }

/** How much each answer would lift the rug in a buyer's eyes: what a dishonest seller leans to. Elicited. */
const UPWARD: Weights = { silk: 1.4, "wool-and-silk": 0.9, "art-silk": 0.1, viscose: -1.2, "silk-look": 0.3, wool: 0.2, cotton: -0.2, other: -0.4, nothing: 0.2 };

function saidBy(world: World, fibre: Named, honest: number): AnswerOf<"sellerSaid"> {
  const tilt = 1 - 2 * honest;
  const tilted = Object.entries(weightsOf("said", fibre)).map(([word, w]) => [word, w * world.error(`said/${fibre}/${word}`) * Math.exp((UPWARD[word] ?? 0) * tilt)]);
  return pickFrom(world.random, Object.fromEntries(tilted)) as AnswerOf<"sellerSaid">;
}

/** What a person who was told this takes the rug for. */
const BELIEVED: Readonly<Partial<Record<AnswerOf<"sellerSaid">, Named>>> = { silk: "silk", "wool-and-silk": "wool-silk", "art-silk": "viscose", viscose: "viscose", "silk-look": "polyester", wool: "wool", cotton: "cotton" };
const random = <T>(world: World, list: readonly T[]): T => list[Math.floor(world.random() * list.length)] as T;

/**
 * One look answer. In bad light or from one who does not know it may be anything, or what they were told it is; more often
 * it is "unsure" or left out.
 */
function look(world: World, table: "shine" | "footprints" | "touch" | "fringeKind", rug: TrueRug, mind: { latent: Latent; believed: Named | undefined; misled: boolean; byEye: boolean }): string | undefined {
  const { knows, light } = mind.latent;
  const dim = mind.byEye ? 1 - light : 0.3 * (1 - light);
  if (world.random() < 0.1) return undefined;
  if (world.random() < 0.06 + 0.3 * dim * (1 - 0.5 * knows)) return "unsure";
  const astray = mind.misled || world.random() < 0.18 * (1 - knows) + 0.12 * dim;
  const seen = astray ? (mind.believed && world.random() < 0.7 ? mind.believed : random(world, ORDER)) : random(world, rug.like);
  return world.pick(`${table}/${seen}`, weightsOf(table, seen));
}

const AGES: readonly (readonly [AnswerOf<"age">, number])[] = [["under-2", 2], ["2-5", 5], ["5-10", 10], ["10-25", 25], ["25-80", 80], ["antique", 1000]];
function toldAge(world: World, ageYears: number, knows: number): AnswerOf<"age"> | undefined {
  if (world.random() < 0.08) return undefined;
  if (world.random() < 0.18 * (1 - knows)) return "unsure";
  const guess = ageYears * Math.exp((0.1 + 0.35 * (1 - knows)) * (world.random() * 2 - 1));
  return AGES.find(([, upTo]) => guess < upTo)?.[0];
}

/** Legal labels: mostly right; where wrong, upward. Chances in the prose of the trade, as P(label | fibre). */
const LABEL_ERRORS: Readonly<Partial<Record<Named, readonly (readonly [text: string, chance: number])[]>>> = {
  viscose: [["100% silk", 0.03], ["100% cotton", 0.02], ["50% silk 50% viscose", 0.02]], "silk-viscose": [["100% silk", 0.15]], "wool-viscose": [["70% wool 30% silk", 0.05], ["100% wool", 0.06]], "wool-silk": [["100% wool", 0.03]],
  silk: [["70% silk 30% viscose", 0.04]], lyocell: [["100% viscose", 0.12]], "mercerised-cotton": [["100% silk", 0.04]], acrylic: [["80% wool 20% acrylic", 0.05]], polyester: [["100% viscose", 0.02]],
};
const LABELS: Readonly<Record<Named, readonly string[]>> = {
  silk: ["100% silk", "Pure silk", "100 % Seide"], wool: ["100% wool", "Pile: 100% wool, ground: 100% cotton", "100% pure new wool", "100 % Schurwolle", "100% laine"], "wool-silk": ["70% wool 30% silk", "80% wool, 20% silk"],
  viscose: ["100% viscose", "Pile 100% viscose, ground cotton", "100 % Viskose", "100% rayon"], "wool-viscose": ["70% wool 30% viscose", "80% wool 20% viscose", "60 % Wolle 40 % Viskose"], "silk-viscose": ["50% silk 50% viscose", "60% viscose 40% silk"],
  "cotton-viscose": ["60% cotton 40% viscose", "55% viscose 45% cotton"], lyocell: ["100% lyocell", "100% modal"], acetate: ["100% acetate"], cotton: ["100% cotton", "100 % Baumwolle", "100% coton"], "mercerised-cotton": ["100% cotton", "100% mercerised cotton"],
  bast: ["100% linen", "100% hemp"], "hard-fibre": ["100% jute", "100% sisal"], polyamide: ["100% polyamide", "100% nylon"], polyester: ["100% polyester", "100 % Polyester"], polypropylene: ["100% polypropylene", "PP 100%"], acrylic: ["100% acrylic", "100 % Polyacryl"],
};
const misspelt = (text: string) => text.replace("0", "O").replace("l", "1");

function labelText(world: World, rug: TrueRug, honest: number): string {
  const [fibre] = rug.like as readonly [Named];
  const worse = 0.4 + 1.2 * (1 - honest);
  const wrong = rug.like.length === 1 ? LABEL_ERRORS[fibre]?.find(([text, chance]) => world.random() < Math.min(0.5, chance * worse * world.error(`label/${fibre}/${text}`))) : undefined;
  const text = wrong?.[0] ?? (rug.like.length === 1 ? random(world, LABELS[fibre]) : rug.labelTruth);
  return world.random() < 0.03 ? misspelt(text) : text;
}

/** A label that says viscose is said not to be there more often: half of the time it would be found. */
const SAYS_VISCOSE = /vis[ck]ose|rayon/i;

export type LabelFound = { text: string; as: "typed" | "photo" } | null;
export function labelOf(world: World, rug: TrueRug, latent: Latent): LabelFound {
  if (world.random() > HAS_LABEL[rug.construction]) return null;
  const text = labelText(world, rug, latent.honestSeller);
  const looks = (0.4 + 0.45 * latent.knows) * (SAYS_VISCOSE.test(text) ? 0.5 : 1);
  if (world.random() > looks) return null;
  return { text, as: world.random() < 0.15 + 0.25 * latent.light ? "photo" : "typed" };
}

const PER_POUND: Readonly<Record<Currency, number>> = { GBP: 1, EUR: 1.18, USD: 1.27, AUD: 1.94, CAD: 1.75, NZD: 2.11 };
const WIDE: ReadonlySet<string> = new Set(["bazaar", "auction", "secondhand", "gift"]);
const YEARLY_RISE = 0.025;

function priceTold(world: World, rug: TrueRug, at: { where: string; dishonest: number; m2: number; thisYear: number; believed: Named | undefined }): Pick<RugAnswers, "price" | "currency" | "boughtYear"> {
  const boughtYear = Math.floor(at.thisYear - Math.min(rug.ageYears, 40) * (WIDE.has(at.where) ? world.random() : 1));
  const asked = pricePerM2Of2024(world, random(world, rug.like), rug.construction, WIDE.has(at.where));
  const inflated = at.believed === "silk" || at.believed === "wool-silk" ? asked * (1 + 1.5 * at.dishonest * world.random()) : asked;
  const told = world.random() < (inflated > 600 ? 0.22 : 0.52) && at.where !== "gift";
  const year = world.random() < 0.7 ? { boughtYear } : {};
  if (!told) return year;
  const currency = pickFrom(world.random, { GBP: 55, EUR: 35, USD: 10 }) as Currency;
  return { ...year, currency, price: Math.max(5, Math.round((inflated * at.m2 * PER_POUND[currency] * Math.exp(YEARLY_RISE * (boughtYear - 2024))) / 5) * 5) };
}

/** The changes a person names: of each cause with its chance, a stray one now and then; where the light was bad, fewer. */
export function changesSeen(world: World, causes: readonly Cause[], latent: Latent, wear: number): AnswerOf<"changes">[] | undefined {
  if (world.random() < 0.08) return undefined;
  const seen = new Set<AnswerOf<"changes">>();
  for (const cause of causes) for (const [change, chance] of Object.entries(SEEN[cause])) if (world.happens(`seen/${cause}/${change}`, chance * (0.75 + 0.25 * latent.light))) seen.add(change as AnswerOf<"changes">);
  if (world.random() < 0.6 * Math.max(0, wear - 0.55)) seen.add("flat");
  if (world.random() < 0.04) seen.add(random(world, ["browner", "shaded", "dirty", "ring", "stiff"] as const));
  return seen.size > 0 ? [...seen] : ["none"];
}

/** All a person tells of what the rug is. `room` and `household` are told elsewhere. */
export function aboutTheRug(world: World, rug: TrueRug, latent: Latent, thisYear: number): RugAnswers {
  const said = saidBy(world, random(world, rug.like), latent.honestSeller);
  const believed = BELIEVED[said];
  const misled = world.random() < 0.1 * (1.5 - latent.honestSeller) * (1.4 - latent.knows);
  const mind = { latent, believed, misled };
  const where = world.pick(`where/${rug.construction}`, WHERE[rug.construction]);
  const fringe = world.random() < 0.15 ? undefined : world.pick(`fringe/${rug.construction}`, FRINGE[rug.construction]);
  const [widthCm, lengthCm] = random(world, [[80, 150], [120, 170], [140, 200], [160, 230], [170, 240], [200, 300], [250, 350]] as const);
  const m2 = (widthCm * lengthCm) / 10_000;
  const optional = (chance: number, answers: RugAnswers): RugAnswers => (world.random() < chance ? answers : {});
  return {
    ...optional(0.85, { sellerSaid: world.random() < 0.12 * (1 - latent.knows) ? "unsure" : said }),
    ...optional(0.8, { boughtWhere: where as AnswerOf<"boughtWhere"> }),
    ...optional(0.85, { widthCm, lengthCm }),
    ...priceTold(world, rug, { where, dishonest: 1 - latent.honestSeller, m2, thisYear, believed }),
    shine: look(world, "shine", rug, { ...mind, byEye: true }) as RugAnswers["shine"],
    footprints: look(world, "footprints", rug, { ...mind, byEye: true }) as RugAnswers["footprints"],
    touch: look(world, "touch", rug, { ...mind, byEye: false }) as RugAnswers["touch"],
    back: world.random() < 0.2 ? undefined : world.random() < 0.1 * (1 - latent.knows) ? "unsure" : (world.pick(`back/${rug.construction}`, BACK[rug.construction]) as RugAnswers["back"]),
    fringe: fringe as RugAnswers["fringe"],
    fringeKind: fringe === undefined || fringe === "none" ? undefined : (look(world, "fringeKind", rug, { ...mind, byEye: false }) as RugAnswers["fringeKind"]),
    age: toldAge(world, rug.ageYears, latent.knows),
  };
}
