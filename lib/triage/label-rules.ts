import { LABEL_RULES, OTHER_FIBRES_MOST_PERCENT, US_NAMED_LEAST_PERCENT, VIRGIN_WOOL_LEAST_PERCENT, type LabelRuleId } from "../trade/label-rules";
import type { LabelPart } from "../trade/label-names";
import type { ReadFibre } from "./label-pairs";
import type { FibreSays } from "./label-tokens";

/** A rule of law that a label's wording calls up; `broken` where the wording departs from it. */
export interface LabelRuleFinding { readonly rule: LabelRuleId; readonly part: LabelPart; readonly broken: boolean; readonly says: string; readonly article: string }
/** A part with its fibres as read. */
export interface ReadPart { readonly part: LabelPart; readonly fibres: readonly ReadFibre[] }

export const PART_NAMES: Readonly<Record<LabelPart, string>> = { pile: "pile", ground: "ground", fringe: "fringe", whole: "rug" };

/** The finding of a rule, or none: where it has no sentence for the case, it says nothing. */
function found(rule: LabelRuleId, part: LabelPart, broken: boolean): LabelRuleFinding[] {
  const { article, note, broken: breach } = LABEL_RULES[rule];
  const says = broken ? breach : note;
  return says === null ? [] : [{ rule, part, broken, says: says.replace("{part}", PART_NAMES[part]), article }];
}

const general = (f: ReadFibre) => f.fibre === "other-fibres";
/** Fibres fall in weight, "other fibres" apart: they stand last by custom. */
function falling(fibres: readonly ReadFibre[]): boolean {
  const shares = fibres.filter((f) => !general(f)).flatMap((f) => (f.percent === null ? [] : [f.percent]));
  return shares.every((share, i) => i === 0 || share <= (shares[i - 1] as number));
}

function rulesOfPart({ part, fibres }: ReadPart): LabelRuleFinding[] {
  const says = (what: FibreSays) => fibres.filter((f) => f.says.includes(what));
  const mixture = fibres.length > 1;
  const unstated = fibres.some((f) => f.percent === null);
  const others = fibres.filter((f) => general(f) && f.says.length === 0);
  const virgin = says("virgin-wool");
  const when = (applies: boolean, rule: LabelRuleId, broken: boolean) => (applies ? found(rule, part, broken) : []);
  return [
    ...when(says("pure").length > 0 || fibres.some((f) => f.percent === 100 && !general(f)), "pure", mixture),
    ...when(virgin.length > 0, "virgin-wool", mixture && (unstated || virgin.some((f) => (f.percent ?? 0) < VIRGIN_WOOL_LEAST_PERCENT))),
    ...when(mixture && !falling(fibres), "order", true),
    ...when(mixture && unstated, "each-percent", true),
    ...when(others.length > 0, "other-fibres", others.some((f) => f.percent === null || f.percent > OTHER_FIBRES_MOST_PERCENT)),
    ...when(says("mixed-fibres").length > 0, "mixed-fibres", false),
    ...when(says("unknown-fibres").length > 0, "unknown-us", false),
    ...when(says("cotton-linen").length > 0, "cotton-linen", false),
    ...when(fibres.some((f) => f.fibre === "art-silk"), "silk-word", true),
    ...when(fibres.some((f) => f.fibre === "bamboo"), "bamboo", true),
    ...when(fibres.some((f) => f.fibre === "bamboo"), "bamboo-us", false),
    ...when(says("rayon").length > 0, "rayon", false),
    ...when(says("code").length > 0, "abbreviation", false),
    ...when(fibres.some((f) => !general(f) && f.percent !== null && f.percent < US_NAMED_LEAST_PERCENT), "under-five-us", false),
  ];
}

/** The rules a label's wording calls up, part by part; last what it says of its parts. `looks`: it has words such as "silk look". */
export function labelRules(parts: readonly ReadPart[], looks: boolean): LabelRuleFinding[] {
  const has = (part: LabelPart) => parts.some((p) => p.part === part);
  return [
    ...parts.flatMap(rulesOfPart),
    ...(looks ? found("implied-fibre", "whole", false) : []),
    ...(has("pile") && !has("ground") ? [...found("pile-only", "pile", false), ...found("face-us", "pile", false)] : []),
    ...(has("whole") && !has("pile") ? found("pile-unsaid", "whole", false) : []),
  ];
}
