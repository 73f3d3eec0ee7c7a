import type { Assessment } from "../../triage/assessment";
import { M2_PER_SQFT } from "../../words/measures";
import { parseLength, type LengthUnit } from "../../words/read-length";
import type { Beyond } from "./beyond";

/** The sides of a rug, in centimetres. */
interface Sides { readonly widthCm: number; readonly lengthCm: number }

/** A side may be rounded so far, and an area by so much of itself. *elicited* */
const SLACK = { share: 0.1, leastCm: 10, area: 0.15 } as const;

const FIGURE = "\\d+(?:[.,]\\d+)?(?: ?[½¼¾])?";
const UNIT = "cms?|centimet(?:re|er)s?|mm|m|met(?:re|er)s?|ft|feet|foot|ins?|inch(?:es)?|'|\"";
const LENGTH = `(?:\\d+ ?(?:ft|feet|foot|')\\.? ?\\d+ ?(?:ins?\\b|inch(?:es)?\\b|")?|${FIGURE} ?(?:(?:${UNIT})(?![a-z²0-9]))?)`;
const BY = " ?(?:x|×|by) ?";
const AREA = `(?<area>${FIGURE}) ?(?<per>m²|m2|sq ?m|square met(?:re|er)s?|sq ?ft|square (?:feet|foot))(?![a-z0-9])`;
const ABOUT = "(?:(?:about|around|roughly|some|approximately|just|only|nearly|its|a size of) )*";
const RUG = "(?<!\\b(?:new|larger|bigger|smaller|other|second|usual|average|part|corner|area|piece|bit|edge|half|side|section|mark|patch) (?:of )?)(?<!\\b(?:part|corner|area|piece|bit|edge|half|side|section) of (?:your|the|this) )(?:rug|carpet|runner|(?<!\\b(?:in|on|of|at|to|from|for|beside|around) )it)";
/** Where a letter says how large the rug is. `a`, `b`: its sides; `one`: one of them; `area`: its area. */
const SAYS = [
  `\\b${RUG},?(?: (?:that|which))?(?: (?:is|measures|measured|measuring|of|at))+ ${ABOUT}(?<a>${LENGTH})${BY}(?<b>${LENGTH})`,
  `\\b(?:your|the|this|(?:yours|it) is an?) (?<a>${LENGTH})${BY}(?<b>${LENGTH}) (?:[a-z]+ )?(?:rug|carpet|runner)\\b`,
  `\\b${RUG}(?: \\w+){0,3}, ${ABOUT}(?<a>${LENGTH})${BY}(?<b>${LENGTH}),`,
  `\\b(?:at|with|measuring) ${ABOUT}(?<a>${LENGTH})${BY}(?<b>${LENGTH}),? (?:it|the rug|your rug)\\b`,
  `\\b${RUG} (?:is|measures) ${ABOUT}(?<one>${LENGTH}) (?:long|wide|in length|in width)\\b`,
  `\\b${RUG} (?:is|measures) .* and ${ABOUT}(?<one>${LENGTH}) (?:long|wide|in length|in width)\\b`,
  `\\bits ${AREA}`, `\\b${RUG}(?: (?:is|has|covers|measures|of))+ ${ABOUT}${AREA}`, `\\b(?:at|with) ${ABOUT}${AREA},? (?:it|the rug|your rug)\\b`,
].map((says) => new RegExp(says, "u"));

/** Told by somebody else, or asked. */
const NOT_OURS = /\?$|\byou (?:wrote|told|said|gave|typed)\b|\bif\b/u;
const flat = (sentence: string): string => sentence.replace(/“[^”]*”/gu, "").replace(/[’‘′]/gu, "'").replace(/[”″]|''/gu, "\"").replace(/\s+/gu, " ").toLowerCase().replace(/\bit's\b/gu, "it is").trim();

const bareUnit = (text: string): LengthUnit => (/ft|feet|foot|'/u.test(text) ? "ft" : /in|"/u.test(text) ? "in" : "cm");
/** A side in centimetres; one without a unit is in that of the other. */
function sideOf(text: string, other: string): number | null {
  const own = text.trim();
  if (!/^[\d.,½¼¾ ]+$/u.test(own)) return parseLength(own, "cm");
  const unit = /[a-z]+$/u.exec(other.trim())?.[0];
  return unit && /^m(?:et|$)/u.test(unit) ? parseLength(`${own} m`, "cm") : parseLength(own, bareUnit(other));
}

const near = (said: number, known: number): boolean => Math.abs(said - known) <= Math.max(SLACK.leastCm, SLACK.share * known);
const sorted = (a: number, b: number): readonly [number, number] => [Math.min(a, b), Math.max(a, b)];

/** What a sentence says of a size: both sides, one of them, or the area and its unit. */
type Said = Partial<Record<"a" | "b" | "one" | "area" | "per", string>>;

/** Whether what is said is the size of these sides. */
function agrees({ a, b, one, area, per }: Said, { widthCm, lengthCm }: Sides): boolean {
  const [short, long] = sorted(widthCm, lengthCm);
  if (a !== undefined && b !== undefined) {
    const [first, second] = [sideOf(a, b), sideOf(b, a)];
    if (first === null || second === null) return true;
    const [less, more] = sorted(first, second);
    return near(less, short) && near(more, long);
  }
  if (one !== undefined) {
    const said = sideOf(one, "");
    return said === null || near(said, short) || near(said, long);
  }
  const m2 = Number(area?.replace(",", ".")) * (per?.includes("f") ? M2_PER_SQFT : 1);
  const known = (short * long) / 10_000;
  return !Number.isFinite(m2) || Math.abs(m2 - known) <= SLACK.area * known;
}

const isSides = (value: unknown): value is Sides => typeof value === "object" && value !== null && "widthCm" in value && "lengthCm" in value;

/** A size of the rug that is neither the one that was told nor the one that was measured; where none was, none can be wrong. */
export function sizeBeyond(sentence: string, { findings }: Assessment): Beyond[] {
  const known = findings.flatMap(({ what, value }) => (what === "size" && isSides(value) ? [value] : []));
  const said = flat(sentence);
  if (known.length === 0 || NOT_OURS.test(said)) return [];
  const found = SAYS.flatMap((re): Said[] => { const groups = re.exec(said)?.groups; return groups ? [groups] : []; });
  const [first] = known;
  if (!first || found.every((groups) => known.some((sides) => agrees(groups, sides)))) return [];
  return [{ rule: "number", why: "This is not the size that the enquiry gives for this rug.", suggestion: `It is ${Math.round(first.widthCm)} × ${Math.round(first.lengthCm)} cm.` }];
}
