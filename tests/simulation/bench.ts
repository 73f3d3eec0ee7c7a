import { SINGLE_FIBRES, type SingleFibre } from "../../lib/trade/single-fibres";
import type { Finding, Sample } from "../../lib/triage/finding";
import type { Named } from "./tables";
import { pickFrom, type Weights, type World } from "./world";

/**
 * Bench tests as a trained but human hand reads them: what a single fibre gives, and how often it is misread. Burning and
 * solubility as in common handbooks, from memory; rates of misreading elicited.
 */
const MISREAD = 0.07;
const KIND: Readonly<Record<SingleFibre, "protein" | "cellulose" | "acetate" | "melting">> = {
  silk: "protein", wool: "protein", viscose: "cellulose", lyocell: "cellulose", cotton: "cellulose", "mercerised-cotton": "cellulose", bast: "cellulose", "hard-fibre": "cellulose", acetate: "acetate",
  polyamide: "melting", polyester: "melting", polypropylene: "melting", acrylic: "melting",
};
const SMELL: Readonly<Partial<Record<SingleFibre, Weights>>> = { polypropylene: { wax: 80, sharp: 20 }, polyamide: { celery: 60, sharp: 40 }, polyester: { sweet: 65, sharp: 35 }, acrylic: { sharp: 85, sweet: 15 } };
const BURN = {
  protein: { approach: { curls: 9, scorches: 1 }, flame: { slow: 9, quick: 1 }, removal: { "goes-out": 8, "burns-on": 2 }, smell: { hair: 96, sharp: 4 }, ash: { crushable: 90, skeleton: 5, "hard-black": 5 } },
  cellulose: { approach: { scorches: 95, curls: 5 }, flame: { quick: 95, slow: 5 }, removal: { "burns-on": 55, glows: 45 }, smell: { paper: 97, sharp: 3 }, ash: { feathery: 75, "hardly-any": 25 } },
  acetate: { approach: { melts: 9, curls: 1 }, flame: { melting: 9, quick: 1 }, removal: { "burns-on": 9, "goes-out": 1 }, smell: { vinegar: 80, sharp: 20 }, ash: { "hard-black": 9, crushable: 1 } },
  melting: { approach: { melts: 95, curls: 5 }, flame: { melting: 9, slow: 1 }, removal: { "goes-out": 5, "burns-on": 5 }, smell: { sharp: 1 }, ash: { "hard-black": 6, "hard-pale": 4 } },
} as const;
const SURFACE: Readonly<Record<SingleFibre, Weights>> = {
  wool: { scales: 95, striations: 5 }, silk: { smooth: 85, striations: 15 }, viscose: { striations: 88, smooth: 12 }, lyocell: { smooth: 85, striations: 15 }, acetate: { striations: 75, smooth: 25 }, cotton: { convolutions: 92, smooth: 8 },
  "mercerised-cotton": { smooth: 60, convolutions: 40 }, bast: { nodes: 88, striations: 12 }, "hard-fibre": { bundles: 90, nodes: 10 }, polyamide: { smooth: 97, striations: 3 }, polyester: { smooth: 97, striations: 3 },
  polypropylene: { smooth: 97, striations: 3 }, acrylic: { smooth: 55, striations: 45 },
};
const SECTION: Readonly<Record<SingleFibre, Weights>> = {
  wool: { round: 95, polygon: 5 }, silk: { triangular: 92, round: 8 }, viscose: { serrated: 90, lobed: 10 }, lyocell: { round: 92, lobed: 8 }, acetate: { lobed: 80, serrated: 20 }, cotton: { kidney: 90, round: 10 }, "mercerised-cotton": { round: 85, kidney: 15 },
  bast: { polygon: 90, round: 10 }, "hard-fibre": { polygon: 88, round: 12 }, polyamide: { round: 60, lobed: 30, triangular: 10 }, polyester: { round: 80, lobed: 20 }, polypropylene: { round: 85, lobed: 15 }, acrylic: { "dog-bone": 50, kidney: 30, round: 20 },
};
const DISSOLVES: Readonly<Record<string, readonly SingleFibre[]>> = {
  hypochlorite: ["silk", "wool"], acetone: ["acetate"], "formic-acid": ["polyamide"], "formic-acid-zinc-chloride": ["viscose", "lyocell"],
  "sulphuric-acid-75": ["silk", "viscose", "lyocell", "cotton", "mercerised-cotton", "acetate", "polyamide"],
};
/** Acetate goes in strong formic acid too. From memory. */
const ALSO: Readonly<Record<string, readonly SingleFibre[]>> = { "formic-acid": ["acetate"] };
const WET: Weights = { "much-weaker": 6, "little-weaker": 3, "as-strong": 1 };
const WET_OF: Readonly<Partial<Record<SingleFibre, Weights>>> = {
  viscose: { "much-weaker": 85, "little-weaker": 15 }, acetate: WET, lyocell: { "little-weaker": 75, "much-weaker": 15, "as-strong": 10 }, wool: { "little-weaker": 75, "as-strong": 25 }, silk: { "little-weaker": 75, "as-strong": 25 },
  acrylic: { "as-strong": 60, "little-weaker": 40 }, polyamide: { "little-weaker": 70, "as-strong": 30 },
};

export const PARTS_OF: Readonly<Partial<Record<Named, readonly [field: SingleFibre, accent: SingleFibre]>>> = {
  "wool-silk": ["wool", "silk"], "wool-viscose": ["wool", "viscose"], "silk-viscose": ["silk", "viscose"], "cotton-viscose": ["cotton", "viscose"],
};

const read = (world: World, right: Weights, anything: Weights) => (world.happens("misread", MISREAD) ? pickFrom(world.random, anything) : world.pick(`bench/${JSON.stringify(right)}`, right));

function burned(world: World, fibre: SingleFibre): Record<string, string> {
  const readings = { ...BURN[KIND[fibre]], smell: SMELL[fibre] ?? BURN[KIND[fibre]].smell };
  const other = BURN[pickFrom(world.random, { protein: 1, cellulose: 1, melting: 1 }) as "protein"];
  const told = Object.entries(readings).map(([reading, right]) => [reading, read(world, right, other[reading as keyof typeof other])] as const);
  return Object.fromEntries(told.filter(([reading]) => reading === "smell" || world.random() < 0.8));
}

function dissolved(world: World, reagent: string, fibres: readonly SingleFibre[]): Record<string, string> {
  const goes = fibres.map((f) => [...(DISSOLVES[reagent] ?? []), ...(ALSO[reagent] ?? [])].includes(f));
  const right = goes.every(Boolean) ? "dissolves" : goes.some(Boolean) ? "partly" : "stays";
  return { outcome: world.happens(`misread/${reagent}`, MISREAD / 2) ? pickFrom(world.random, { dissolves: 1, partly: 1, stays: 1 }) : right };
}

function oneTest(world: World, id: string, fibres: readonly SingleFibre[]): Record<string, string> {
  const fibre = fibres[Math.floor(world.random() * fibres.length)] as SingleFibre;
  if (id === "burn") return burned(world, fibre);
  if (id === "wet-strength") return { wet: read(world, WET_OF[fibre] ?? { "as-strong": 9, "little-weaker": 1 }, WET) };
  if (id !== "microscopy") return dissolved(world, id, fibres);
  const anything = { surface: { smooth: 1, striations: 1, scales: 1 }, section: { round: 1, lobed: 1, kidney: 1 } };
  return { surface: read(world, SURFACE[fibre], anything.surface), ...(world.random() < 0.5 ? { section: read(world, SECTION[fibre], anything.section) } : {}), kinds: fibres.length > 1 ? "several" : "one" };
}

/** What a workshop does on its bench: nearly always the flame, then what the flame leaves open. */
function chosenTests(world: World, fibre: SingleFibre): string[] {
  const after = { protein: { "sulphuric-acid-75": 0.5, hypochlorite: 0.5 }, cellulose: { "formic-acid-zinc-chloride": 0.4, hypochlorite: 0.45, "wet-strength": 0.4 }, acetate: { acetone: 0.5 }, melting: { "formic-acid": 0.3, acetone: 0.1 } }[KIND[fibre]];
  const wanted = { burn: 0.75, microscopy: 0.4, ...after };
  const tests = Object.entries(wanted).filter(([, chance]) => world.random() < chance).map(([id]) => id);
  return tests.length > 0 ? tests : ["burn"];
}

/** The bench findings of one visit; a rug of two yarns is sampled in one, in both, or with both in one tuft. One visit in forty takes the fringe for the pile. */
export function benchFindings(world: World, of: { fibres: readonly SingleFibre[]; twoYarns: boolean; fringe: SingleFibre }): Finding[] {
  const wrongPlace = world.random() < 0.025;
  const samples: { yarn: Sample["yarn"]; fibres: readonly SingleFibre[] }[] = wrongPlace ? [{ yarn: "field", fibres: [of.fringe] }]
    : of.fibres.length === 1 ? [{ yarn: world.random() < 0.5 ? "whole" : "field", fibres: of.fibres }]
    : !of.twoYarns || world.random() < 0.25 ? [{ yarn: "whole", fibres: of.fibres }]
    : [{ yarn: "field" as const, fibres: of.fibres.slice(0, 1) }, { yarn: "accent" as const, fibres: of.fibres.slice(1) }].filter(() => world.random() < 0.85);
  return samples.flatMap(({ yarn, fibres }, s) =>
    chosenTests(world, fibres[0] as SingleFibre).map((id): Finding => ({ what: `test:${id}`, value: oneTest(world, id, fibres), strength: "bench", from: `bench:${s}-${id}`, of: { part: "pile", yarn } })));
}

/** A laboratory's per cents of the pile, each share off by a couple of points; mercerised cotton and lyocell come back as their plain kin one time in three. */
export function laboratoryFinding(world: World, fibres: readonly SingleFibre[]): Finding {
  const first = fibres.length === 1 ? 100 : Math.round(20 + 60 * world.random());
  const named = fibres.map((f) => (world.random() < 0.33 && f === "mercerised-cotton" ? "cotton" : f));
  const value = Object.fromEntries(named.map((f, i) => [f, i === 0 ? first : 100 - first]));
  return { what: "laboratory", value, strength: "laboratory", from: "laboratory:Invented Testing House", of: { part: "pile", yarn: "whole" } };
}

/** A fibre outside the classes, for what a bench makes of it: two fibres the classes do not pair, or an unusual one. */
export const OUTSIDE: readonly { readonly looksLike: readonly [Named, Named]; readonly fibres: readonly SingleFibre[]; readonly label: string }[] = [
  { looksLike: ["wool", "polyester"], fibres: ["wool", "polyester"], label: "60% wool 40% polyester" },
  { looksLike: ["wool", "acrylic"], fibres: ["wool", "acrylic"], label: "50% wool 50% acrylic" },
  { looksLike: ["viscose", "polyester"], fibres: ["viscose", "polyester"], label: "60% viscose 40% polyester" },
  { looksLike: ["cotton", "polyester"], fibres: ["cotton", "polyester"], label: "65% cotton 35% polyester" },
  { looksLike: ["hard-fibre", "wool"], fibres: ["hard-fibre", "wool"], label: "70% jute 30% wool" },
  { looksLike: ["polypropylene", "polyester"], fibres: ["polypropylene", "polyester"], label: "70% polypropylene 30% polyester" },
  { looksLike: ["silk", "cotton"], fibres: ["silk", "cotton"], label: "50% silk 50% cotton" },
];
export const isSingle = (fibre: Named): fibre is SingleFibre => (SINGLE_FIBRES as readonly string[]).includes(fibre);
