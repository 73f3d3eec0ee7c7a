import { CONSTITUENTS, type Blend } from "../trade/bench-responses-rule";
import { fibreName, type FibreId } from "../trade/fibres";
import { OTHER_YARN } from "../trade/yarns";
import type { ComponentBelief } from "./assessment";
import { product, readSamples, yarnEvidence, type Samples, type YarnEvidence } from "./bench-evidence";
import { NAMED } from "./classes";
import { distinctFindings } from "./distinct-findings";
import type { Finding } from "./finding";
import { CONTENTS, foundation, fringePrior, groundPrior, kindsOf, scaled, type Judged } from "./ground-and-fringe";
import { readTold } from "./told";
import { wordsForChance } from "./words";
import { likelihoodByClass, stateGivenClass, stateRows } from "./yarn-states";

type Vector = readonly number[];
const isBlend = (state: string): state is Blend => Object.hasOwn(CONSTITUENTS, state);

/** Under this the first fibre is not named as what it is. The IPCC scale calls less unlikely. */
const LEAST_TO_NAME = 1 / 3;

function belief(part: ComponentBelief["part"], yarn: ComponentBelief["yarn"], name: string, { chances, by }: Judged): ComponentBelief {
  const fibres = CONTENTS.map((fibre, i) => ({ fibre, probability: chances[i] as number })).sort((a, b) => b.probability - a.probability);
  const [first] = fibres as [(typeof fibres)[number]];
  const chance = `${Math.round(first.probability * 100)} %`;
  const words = wordsForChance({ probability: first.probability, low: first.probability });
  const says = first.probability < LEAST_TO_NAME ? `cannot be told; ${fibreName(first.fibre)} comes first with ${chance}` : `is ${words} ${fibreName(first.fibre)} (${chance})`;
  return { part, yarn, fibres, says: `${name} ${says}, by ${by.join(" and ")}.` };
}

/** P(the yarn is something not named | class, reports of it): tests tell nothing of it, a laboratory does. */
function unnamedGivenClass(yarn: "field" | "accent", evidence: readonly YarnEvidence[]): Vector {
  const { ofNamed } = OTHER_YARN[yarn];
  const tests = product(evidence.filter((e) => e.other === null));
  return evidence.filter((e) => e.other !== null).reduce<Vector>((chances, report) => {
    const named = likelihoodByClass(stateRows(yarn), tests, report.likelihood);
    return chances.map((p, c) => (p * (report.other as number)) / (p * (report.other as number) + (1 - p) * (named[c] as number)));
  }, NAMED.map(() => ofNamed));
}

/**
 * A yarn of the pile, exactly: over the classes by their chance, what the yarn is given class and its own tests. An intimate
 * mixture counts half for either fibre; under `other` nothing more is known. Tests of another yarn act through the class alone.
 */
function pileYarn(samples: Samples, yarn: "field" | "accent", classes: Readonly<Record<FibreId, number>>): Judged | null {
  const evidence = yarnEvidence(samples, `pile:${yarn}`);
  if (evidence.length === 0) return null;
  const given = stateGivenClass(yarn, product(evidence));
  const unnamed = unnamedGivenClass(yarn, evidence);
  const chances = new Map<string, number>(CONTENTS.map((c) => [c, 0]));
  const add = (content: string, p: number) => chances.set(content, (chances.get(content) as number) + p);
  NAMED.forEach((state, s) => {
    const p = NAMED.reduce((sum, c, i) => sum + classes[c] * (1 - (unnamed[i] as number)) * ((given[i] as Vector)[s] as number), 0);
    if (isBlend(state)) for (const fibre of CONSTITUENTS[state]) add(fibre, p / 2);
    else add(state, p);
  });
  add("other", classes.other + NAMED.reduce((sum, c, i) => sum + classes[c] * (unnamed[i] as number), 0));
  return { chances: scaled([...chances.values()]), by: ["what is known of the pile", ...kindsOf(evidence)] };
}

/**
 * What the yarns of the pile, the ground and the fringe are made of, where anything speaks for them. `classPosterior` is the
 * belief over the pile's classes, which already holds the tests of its yarns. A rug without a fringe has none, unless one was tested.
 */
export function judgeComponents(rug: { findings: readonly Finding[]; classPosterior: Readonly<Record<FibreId, number>> }): ComponentBelief[] {
  const findings = distinctFindings(rug.findings);
  const told = readTold(findings);
  const samples = readSamples(findings);
  const classes = rug.classPosterior;
  const prior = groundPrior(told, classes.silk);
  const hasNoFringe = told.one("fringe") === "none";
  const judged: [ComponentBelief["part"], ComponentBelief["yarn"], string, Judged | null][] = [
    ["pile", "field", "The field of the pile", pileYarn(samples, "field", classes)],
    ["pile", "accent", "The accent of the pile", pileYarn(samples, "accent", classes)],
    ["ground", "whole", "The ground", foundation("ground", prior, { findings, samples, told, made: told.answered("back") })],
    ["fringe", "whole", "The fringe", foundation("fringe", fringePrior(told, prior), { findings, samples, told,
      made: told.has("fringe:part-of-rug") || told.has("fringe:sewn-on") })],
  ];
  const isTested = (part: string) => findings.some((f) => f.of?.part === part);
  return judged.flatMap(([part, yarn, name, j]) => (j === null || (part === "fringe" && hasNoFringe && !isTested("fringe")) ? [] : [belief(part, yarn, name, j)]));
}
