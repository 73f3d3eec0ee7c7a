/** Zero of each script whose digits are read as ours. */
const ZEROS = ["٠", "۰", "०"];

/** Digits of other scripts and their per cent signs as ours. */
function westernDigits(text: string): string {
  return text.replace(/[٠-٩۰-۹०-९]/gu, (d) => {
    const zero = ZEROS.find((z) => d >= z && d.charCodeAt(0) <= z.charCodeAt(0) + 9) as string;
    return String(d.charCodeAt(0) - zero.charCodeAt(0));
  }).replace(/٪/gu, "%").replace(/٫/gu, ".").replace(/⁄/gu, "/");
}

/** A share of 0–1 as per cent to one decimal. */
const shareText = (share: number) => String(Math.round(share * 1_000) / 10);

/** "(Back constitutes 60% of fabric and pile 40%)": what the parts weigh, no share of a fibre. 16 CFR 303.24. */
const SHARE_OF_PARTS = /\([^()]{0,120}\bconstitutes?\b[^()]{0,120}\)/giu;

export interface NormalText { readonly text: string; readonly doubts: readonly string[] }

/**
 * A text as it is compared: wide and narrow forms made one, digits of other scripts as ours, marks no eye sees taken out,
 * fractions as per cent. A fraction that was turned into a figure is a doubt. Time in proportion to the length.
 */
export function normalText(raw: string): NormalText {
  const doubts = new Set<string>();
  const fraction = (printed: string, value: string) => {
    doubts.add(`“${printed.trim()}” was read as ${value} %: a fraction stands where a percentage belongs.`);
    return ` ${value} `;
  };
  const percentSign = (printed: string) => {
    doubts.add(`“${printed}” was read as %.`);
    return "%";
  };
  const text = westernDigits(raw.replace(/(\d)(?=[¼-¾⅐-⅞])/gu, "$1 ").normalize("NFKC"))
    .replace(/\r\n?|[\u2028\u2029\u0085]/gu, "\n")
    .replace(/[^\P{Cc}\n]/gu, " ")
    .replace(/[\p{Cf}\p{Cs}\p{Co}]/gu, "")
    .replace(SHARE_OF_PARTS, " ")
    .replace(/[°º]\/[oO0]/gu, percentSign)
    .replace(/(?<![\d./])(\d{1,2}) (\d)\/(\d)(?= ?%)/gu, (all, whole: string, a: string, b: string) =>
      (Number(a) < Number(b) ? fraction(all, shareText((Number(whole) + Number(a) / Number(b)) / 100)) : all))
    .replace(/(?<![\d./] ?)([1-9])\/([1-9])(?! ?[%\d/])/gu, (all, a: string, b: string) =>
      (Number(a) < Number(b) ? `${fraction(all, shareText(Number(a) / Number(b)))}% ` : all));
  return { text, doubts: [...doubts] };
}

/** Scripts that hold a name of the table. */
const READ_SCRIPTS = new RegExp(`[${["Latin", "Greek", "Cyrillic", "Arabic", "Devanagari", "Han", "Hiragana", "Katakana", "Hangul", "Common", "Inherited"]
  .map((script) => `\\p{Script=${script}}`).join("")}]`, "u");
const OTHER_SCRIPTS: readonly [string, RegExp][] = [
  ["Georgian", /\p{Script=Georgian}/u], ["Armenian", /\p{Script=Armenian}/u], ["Hebrew", /\p{Script=Hebrew}/u], ["Thai", /\p{Script=Thai}/u],
  ["Bengali", /\p{Script=Bengali}/u], ["Tamil", /\p{Script=Tamil}/u], ["Gujarati", /\p{Script=Gujarati}/u], ["Tibetan", /\p{Script=Tibetan}/u],
  ["Ethiopic", /\p{Script=Ethiopic}/u], ["Gurmukhi", /\p{Script=Gurmukhi}/u], ["Mongolian", /\p{Script=Mongolian}/u],
];

/** A doubt for letters of a script in which no fibre's name is known here; null where there are none. */
export function unknownScript(text: string): string | null {
  for (const letter of text.matchAll(/\p{L}/gu)) {
    if (READ_SCRIPTS.test(letter[0])) continue;
    const name = OTHER_SCRIPTS.find(([, script]) => script.test(letter[0]))?.[0];
    return name ? `Part of it is in ${name} script, in which no fibre’s name is known here.` : "Part of it is in a script in which no fibre’s name is known here.";
  }
  return null;
}
