import { ROUGHLY } from "./typed-price";

const IN_WORDS = ["a", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];
const AGO = new RegExp(`^(\\d{1,3}|${IN_WORDS.join("|")}|one)\\s*(?:years?|yrs?)(?:\\s+ago|\\s+back)?$`, "iu");

/**
 * A year as people write it: "2019", "about 2019", "in 2019?", "3 years ago" counted back from `thisYear`, "last year".
 * Null where it is none of this.
 */
export function parseYear(text: string, thisYear: number): number | null {
  const bare = text.trim().replace(/^in\s+/iu, "").replace(ROUGHLY, "").replace(/(?:\s*\?|ish|\s+or so|\s+or thereabouts)$/iu, "").trim();
  if (/^\d+$/u.test(bare)) return Number(bare);
  if (/^this year$/iu.test(bare)) return thisYear;
  if (/^last year$/iu.test(bare)) return thisYear - 1;
  const ago = AGO.exec(bare.replace(/(?:\s+or so)?(?=\s+(?:ago|back)$)/iu, ""))?.[1]?.toLowerCase();
  if (ago === undefined) return null;
  return thisYear - (/^\d/u.test(ago) ? Number(ago) : ago === "one" ? 1 : IN_WORDS.indexOf(ago) + 1);
}
