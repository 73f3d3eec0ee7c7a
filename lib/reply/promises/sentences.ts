/** Sentences and clauses of a letter, for the check of promises. */

/** Full stops that end no sentence: "e.g.", "Mr.", "No. 5", figures. */
const ABBREVIATED = /\b(?:e\.g|i\.e|mr|mrs|ms|dr|st|no|approx|ca|etc)\.$/iu;

/** The sentences as they stand, in order; a line break ends one too. */
export function sentencesOf(text: string): string[] {
  return text.split(/\n+/u).flatMap((line) => {
    const parts = line.split(/(?<=[.!?…][”"’')]?)\s+(?=[\p{Lu}\p{N}“"‘'(])/u);
    const joined: string[] = [];
    for (const part of parts) {
      const last = joined[joined.length - 1];
      if (last !== undefined && ABBREVIATED.test(last)) joined[joined.length - 1] = `${last} ${part}`;
      else joined.push(part);
    }
    return joined.map((s) => s.trim()).filter((s) => s !== "");
  });
}

/** What somebody else's words are replaced by: they are not ours to answer for. */
const QUOTED = " quoted ";

/** Lower case, straight apostrophes, one space, quotations taken out; phrases of certainty that look like denials made plain. */
export function plainOf(sentence: string): string {
  return sentence
    .replace(/“[^”]*”|"[^"]*"|«[^»]*»|„[^“”]*[“”]/gu, QUOTED)
    .toLowerCase()
    .replace(/[’‘]/gu, "'")
    .replace(/\b(it|that|this|there|what|he|she)'s\b/gu, "$1 is")
    .replace(/\b(they|we|you)'re\b/gu, "$1 are")
    .replace(/\b(?:there is |there's )?no (?:doubt|question)(?: that| about it)?|\bwithout (?:a |any )?doubt\b|\bno other explanation\b/gu, "definitely")
    .replace(/\b(?:please )?(?:do not|don't|stop|never|no need to) (?:you )?(?:worry|worrying|fret|panic)(?: at all| about (?:it|that|a thing))?\b|\bno worries\b|\bno matter\b/gu, "")
    .replace(/\s+/gu, " ")
    .trim();
}

/** Clauses: what a denial or a hedge reaches. A semicolon, a dash, "but", "though" and a comma before a new subject begin another. */
export function clausesOf(plain: string): string[] {
  return plain
    .split(/;|:\s(?=(?:we|it|they|you|nothing|nobody)\b)|\s[–—-]\s|,?\s\b(?:but|though|although|however|whereas)\b|,\s(?=(?:and |so |then )?(?:it|we|you|they|there|this|the law|that is|nothing|nobody|the pile|the rug|they will|your|(?:the|these|those|every|its) (?:\w+ ){1,3}(?:will|is|are|was|were|can))\b)/u)
    .map((c) => c.trim().replace(/^[,.\s]+|[\s.!?…]+$/gu, ""))
    .filter((c) => c !== "");
}
