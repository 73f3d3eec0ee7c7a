import type { FineFibre } from "../trade/label-fibres";
import type { LabelPart } from "../trade/label-names";
import { explainedSilk } from "./label-brackets";
import { normalText, unknownScript } from "./label-normal";
import { merged, paired, withoutTradeWord, type Pairing, type ReadFibre } from "./label-pairs";
import { byPart, strangeHeads } from "./label-parts";
import { labelRules, PART_NAMES, type LabelRuleFinding, type ReadPart } from "./label-rules";
import { labelTokens, type LabelToken } from "./label-tokens";

/** A fibre on a label; `percent` 0–100, null where the label gives none. */
export interface LabelFibre { readonly fibre: FineFibre; readonly percent: number | null }
export interface LabelComponent { readonly part: LabelPart; readonly fibres: readonly LabelFibre[] }
export interface LabelReading {
  readonly components: readonly LabelComponent[];
  /** What is not as it should be, is missing, or was corrected in reading, each a sentence. */
  readonly doubts: readonly string[];
  /** Words on it that suggest a fibre without naming one: `silk-look`, `art-silk`, `wool-look` … */
  readonly suggests: readonly string[];
  /** The rules of labelling its wording calls up. */
  readonly rules: readonly LabelRuleFinding[];
}

/** Rounding on labels: whole per cents of several fibres may miss 100 by this much. Elicited. */
const SUM_SLACK = 1;
/** A label holds a few dozen words; a longer text is read, and doubted. Elicited. */
const LONG_LABEL_CHARS = 2_000;

function doubtsOf(part: LabelPart, fibres: readonly ReadFibre[], { orphans, together, unclear }: Pairing): string[] {
  const name = PART_NAMES[part];
  const known = fibres.filter((f) => f.percent !== null);
  const sum = known.reduce((total, f) => total + (f.percent as number), 0);
  const doubts: string[] = [];
  if (known.length > 0 && Math.abs(sum - 100) > SUM_SLACK) doubts.push(`The percentages of the ${name} add up to ${Number(sum.toFixed(1))}, not 100.`);
  if (known.length > 0 && known.length < fibres.length) doubts.push(`A fibre of the ${name} stands without its percentage.`);
  const [only, ...more] = fibres;
  if (only?.percent === null && more.length === 0 && !only.says.includes("pure")) doubts.push(`The fibre of the ${name} stands without a percentage.`);
  if (fibres.some((f) => f.percent === 0)) doubts.push(`A fibre of the ${name} is given 0 %.`);
  if (unclear) doubts.push(`Which percentage of the ${name} belongs to which fibre is not clear, so none is taken.`);
  if (together) doubts.push(`100 % is said of several fibres of the ${name} together, so no share is taken.`);
  if (orphans > 0) doubts.push(`A percentage of the ${name} stands without a fibre that could be read.`);
  if (fibres.some((f) => f.fibre === "synthetic" || f.fibre === "other-fibres")) doubts.push(`Part of the ${name} is named only in general terms.`);
  return doubts;
}

/** Doubts about the text as a whole. */
function doubtsOfText(text: string, named: boolean): string[] {
  const script = unknownScript(text);
  return [
    ...(text.length > LONG_LABEL_CHARS ? [`This is far longer than a label (${text.length} characters); what was read may not be the label’s own words.`] : []),
    ...(script === null ? [] : [script]),
    ...(named || !/[\p{L}\p{N}]/u.test(text) ? [] : ["No fibre’s name could be read in these words."]),
  ];
}

/** What the words suggest: looks of a fibre, and trade words for imitation silk. */
const suggested = (token: LabelToken): string[] =>
  token.kind === "look" && token.look !== "no-fibre" ? [token.look] : token.kind === "fibre" && token.fibre === "art-silk" ? ["art-silk"] : [];

/**
 * Reads the fibres of a label in any of the languages of the table, percentages before or after the names. Never throws;
 * a text without a fibre gives no components and says so. Longer texts cost time in proportion.
 */
export function readLabel(raw: string): LabelReading {
  const { text: normal, doubts: fractions } = normalText(raw);
  const { text, doubts: brackets } = explainedSilk(normal);
  const { words, tokens, doubts: slips } = labelTokens(text);
  const parts: ReadPart[] = [];
  const doubts: string[] = [];
  for (const [part, pieces] of byPart(words, tokens)) {
    const pairing = paired(pieces);
    const distinct = withoutTradeWord(merged(pairing.fibres));
    doubts.push(...doubtsOf(part, distinct, pairing));
    if (distinct.length > 0) parts.push({ part, fibres: distinct });
  }
  doubts.push(...strangeHeads(words, tokens).map((word) => `“${word}” may name another part of the rug; what follows it was not taken for one.`));
  const suggests = [...new Set(tokens.flatMap(suggested))];
  const rules = labelRules(parts, suggests.some((s) => s.endsWith("-look")));
  doubts.push(...rules.filter((r) => r.broken).map((r) => `${r.says} (${r.article})`), ...fractions, ...brackets, ...slips, ...doubtsOfText(text, parts.length > 0));
  return {
    components: parts.map(({ part, fibres }) => ({ part, fibres: fibres.map(({ fibre, percent }) => ({ fibre, percent })) })),
    doubts: [...new Set(doubts)], suggests, rules,
  };
}
