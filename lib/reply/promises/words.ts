/** Lists of words as pieces of a regular expression, with the forms a word takes. */

const IRREGULAR: Readonly<Record<string, string>> = {
  be: "be|is|are|was|were|been|being", get: "gets?|got|getting|gotten", bring: "brings?|brought|bringing", come: "comes?|came|coming", go: "go|goes|went|gone|going", take: "takes?|took|taken|taking",
  put: "puts?|putting", make: "makes?|made|making", give: "gives?|gave|given|giving", undo: "undo|undoes|undid|undone|undoing", beat: "beats?|beaten|beating", win: "wins?|won|winning",
  leave: "leaves?|left|leaving", cut: "cuts?|cutting", hang: "hangs?|hung|hanging", lay: "lays?|laid|laying", set: "sets?|setting", run: "runs?|ran|running", spin: "spins?|spun|spinning", blow: "blows?|blew|blown|blowing",
  hold: "holds?|held|holding", shake: "shakes?|shook|shaken|shaking", freeze: "freezes?|froze|frozen|freezing", stick: "sticks?|stuck|sticking", throw: "throws?|threw|thrown|throwing", shrink: "shrinks?|shrank|shrunk|shrinking",
  tear: "tears?|tore|torn|tearing", break: "breaks?|broke|broken|breaking", lose: "loses?|lost|losing", spoil: "spoils?|spoilt|spoiled|spoiling", burn: "burns?|burnt|burned|burning", bleed: "bleeds?|bled|bleeding",
  mislead: "misleads?|misled|misleading", sell: "sells?|sold|selling", eat: "eats?|ate|eaten|eating", lie: "lies?|lied|lay|lain|lying", rise: "rises?|rose|risen|rising", spring: "springs?|sprang|sprung|springing",
  stand: "stands?|stood|standing", fall: "falls?|fell|fallen|falling", fly: "fl(?:y|ies|ew|own|ying)", melt: "melts?|melted|molten|melting", slip: "slip(?:s|ped|ping)?", find: "finds?|found|finding", see: "sees?|saw|seen|seeing",
};
/** Words that double their last letter before -ed and -ing. */
const DOUBLES = /(?:dab|rub|scrub|pop|drip|mop|dip|wet|clip|snip|bag|pat|blot|wrap|tap|trim|expel|equip|fit|transform(?!.)|plan|dispel|control|rot|ship|stop)$/u;

/** A regular stem and what it takes, so that words that take the same stand in one group: a long list stays quick to match. */
function stemOf(word: string): readonly [stem: string, endings: string] {
  const irregular = IRREGULAR[word];
  if (irregular) return [`(?:${irregular})`, ""];
  if (DOUBLES.test(word)) return [word, `(?:s|${word.slice(-1)}ed|${word.slice(-1)}ing)?`];
  if (/[^aeiou]y$/u.test(word)) return [word.slice(0, -1), "(?:y|ies|ied|ying)"];
  return word.endsWith("e") ? [word.slice(0, -1), "(?:e|es|ed|ing)"] : [word, "(?:s|es|ed|ing)?"];
}
const nounOf = (word: string): readonly [stem: string, endings: string] =>
  word.endsWith("*") ? [word.slice(0, -1), "\\w*"] : /(?:s|x|ch|sh)$/u.test(word) ? [word, "(?:es)?"] : /[^aeiou]y$/u.test(word) ? [word.slice(0, -1), "(?:y|ies)"] : [word, "s?"];

/** Stems under the endings they share. */
function grouped(pairs: readonly (readonly [stem: string, endings: string])[]): string {
  const by = new Map<string, string[]>();
  for (const [stem, endings] of pairs) by.set(endings, [...(by.get(endings) ?? []), stem]);
  return list([...by].map(([endings, stems]) => `${list(stems)}${endings}`));
}

export const list = (all: readonly string[]): string => `(?:${all.join("|")})`;
/** Any form of any of these verbs, with commas between: "remove" → remove, removes, removed, removing. A phrase bends its first word. */
export function verbs(said: string): string {
  const tails = new Map<string, string[]>();
  for (const phrase of said.split(", ")) {
    const at = phrase.indexOf(" ");
    const [head, tail] = at < 0 ? [phrase, ""] : [phrase.slice(0, at), phrase.slice(at)];
    tails.set(head, [...(tails.get(head) ?? []), tail]);
  }
  const single = [...tails].filter(([, ends]) => ends.includes("")).map(([head]) => stemOf(head));
  const phrases = [...tails].filter(([, ends]) => ends.some((e) => e !== "")).map(([head, ends]) => `${stemOf(head).join("")} ${list(ends.filter((e) => e !== "").map((e) => e.trim()))}`);
  return list([...phrases, ...(single.length > 0 ? [grouped(single)] : [])]);
}
/** Any of these words or phrases as they stand, with commas between; `*` stands for any ending. */
export const words = (said: string): string => list(said.split(", ").map((w) => w.replace(/\*/gu, "\\w*")));
/** Nouns in the singular or plural, with commas between. */
export const nouns = (said: string): string => grouped(said.split(", ").map(nounOf));
