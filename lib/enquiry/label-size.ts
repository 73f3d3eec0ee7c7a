import type { RugAnswers } from "../trade/questions";
import { CM_PER_INCH } from "../words/measures";
import { cmFromFeet } from "../words/read-length";
import { agreedLabels } from "./label-view";
import { LIMITS } from "./limits";

/** One way of printing two sides; `side`: the centimetres of a figure. */
interface Way { readonly reads: RegExp; readonly side: (figure: number) => number }

const N = String.raw`(\d{1,4}(?:[.,]\d{1,2})?)`;
const BY = String.raw`\s*[x×хX]\s*`;
const number = (text: string) => Number(text.replace(",", "."));
const unit = (name: string) => String.raw`\s*(?:${name})(?![\p{L}])`;
/** Three figures in a row are no two sides. */
const [ALONE, ENDS] = [String.raw`(?<![\d.,]|[x×хX]\s*)`, String.raw`(?!\s*[x×хX]\s*\d)`];
const both = (name: string) => new RegExp(String.raw`${ALONE}${N}(?:${unit(name)})?${BY}${N}${unit(name)}${ENDS}`, "giu");
/** Feet with inches or without: 5'6", 5 ft 6 in, 8'. */
const FEET = String.raw`(\d{1,2})\s*(?:ft\.?|feet|['’′])\s*(?:(\d{1,2})\s*(?:in\.?|inch(?:es)?|["”″])?)?`;
const WAYS: readonly Way[] = [
  { reads: both("cms?|см"), side: (cm) => cm },
  { reads: both("mm|мм"), side: (mm) => mm / 10 },
  { reads: both("m|mtrs?|м"), side: (m) => m * 100 },
  { reads: both("in|inch(?:es)?"), side: (inches) => inches * CM_PER_INCH },
  { reads: both("ft|feet"), side: (feet) => cmFromFeet(feet, 0) },
];
const IN_FEET = new RegExp(String.raw`(?<!\d)${FEET}${BY}${FEET}`, "giu");
/** Without a unit, figures as large as these can only be centimetres. */
const BARE = new RegExp(String.raw`${ALONE}(\d{2,4})${BY}(\d{2,4})(?![\d.,]|\s*["”″'’′%\p{L}])${ENDS}`, "gu");

interface Size { readonly widthCm: number; readonly lengthCm: number }
/** Sizes this near each other are one, told in two units. Elicited. */
const ONE_SIZE_CM = 4;

const isRug = ({ widthCm, lengthCm }: Size) => [widthCm, lengthCm].every((cm) => cm >= LIMITS.minCm && cm <= LIMITS.maxCm);
const isOne = (a: Size, b: Size) => Math.abs(a.widthCm - b.widthCm) <= ONE_SIZE_CM && Math.abs(a.lengthCm - b.lengthCm) <= ONE_SIZE_CM;

function sizesIn(words: string): Size[] {
  const sizes = (reads: RegExp, size: (m: string[]) => Size) => [...words.matchAll(reads)].map((m) => size([...m]));
  const feet = sizes(IN_FEET, ([, wFt = "", wIn = "0", lFt = "", lIn = "0"]) => ({ widthCm: cmFromFeet(number(wFt), number(wIn)), lengthCm: cmFromFeet(number(lFt), number(lIn)) }));
  const told = WAYS.flatMap(({ reads, side }) => sizes(reads, ([, w = "", l = ""]) => ({ widthCm: Math.round(side(number(w))), lengthCm: Math.round(side(number(l))) })));
  const found = [...told, ...feet];
  return (found.length > 0 ? found : sizes(BARE, ([, w = "", l = ""]) => ({ widthCm: number(w), lengthCm: number(l) }))).filter(isRug);
}

/** The size that is printed on a label, in whole centimetres, as it stands there; null where none or several are. */
export function labelSize(words: string): Size | null {
  const [first, ...others] = sizesIn(words);
  return first && others.every((other) => isOne(first, other)) ? first : null;
}

/** The size that a label gives which somebody typed or agreed to; null where the rug has one already, or labels give none or several. */
export function sizeToOffer({ widthCm, lengthCm, labelText }: Pick<RugAnswers, "widthCm" | "lengthCm" | "labelText">, photos: Parameters<typeof agreedLabels>[0]): Size | null {
  if (widthCm !== undefined || lengthCm !== undefined) return null;
  return labelSize([labelText ?? "", ...agreedLabels(photos).map((l) => l.text)].join("\n"));
}
