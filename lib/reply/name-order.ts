/**
 * Common last names of people who write them first, in small Latin letters without marks: Chinese, Korean, Japanese, Vietnamese and
 * Hungarian. They decide nothing but that the order of a name is open. Source: common knowledge; elicited.
 */
const WRITTEN_FIRST: ReadonlySet<string> = new Set([
  "wang", "li", "zhang", "liu", "chen", "yang", "huang", "zhao", "wu", "zhou", "xu", "sun", "ma", "zhu", "hu", "guo", "he", "lin", "gao", "luo", "zheng", "liang", "xie", "tang", "deng", "feng", "cao", "peng", "zeng", "xiao", "cai", "pan", "yuan", "dong", "lu", "jiang", "wei", "chan", "wong", "cheung", "leung", "ng", "tan", "lim",
  "kim", "lee", "park", "choi", "jung", "jeong", "kang", "cho", "yoon", "jang", "han", "oh", "seo", "shin", "kwon", "hwang", "ahn", "song", "yoo", "hong", "moon", "bae", "baek",
  "sato", "suzuki", "takahashi", "tanaka", "ito", "watanabe", "yamamoto", "nakamura", "kobayashi", "kato", "yoshida", "yamada", "sasaki", "yamaguchi", "matsumoto", "inoue", "kimura", "hayashi", "shimizu", "saito", "mori", "abe", "ikeda", "hashimoto", "ishikawa", "ogawa", "okada", "fujita", "goto", "hasegawa",
  "nguyen", "tran", "le", "pham", "hoang", "huynh", "phan", "vu", "vo", "dang", "bui", "do", "ho", "ngo", "duong", "ly",
  "nagy", "kovacs", "toth", "szabo", "horvath", "varga", "kiss", "molnar", "nemeth", "farkas", "balogh", "papp", "takacs", "juhasz", "lakatos", "meszaros", "olah", "racz", "fekete", "szilagyi", "torok", "feher", "gal", "szucs", "kocsis", "pinter", "fodor", "szalai", "sipos", "lukacs", "gulyas", "biro",
]);
/** Common Hungarian first names, which stand last there. Source: common knowledge; elicited. */
const FIRST_BUT_LAST: ReadonlySet<string> = new Set([
  "istvan", "laszlo", "jozsef", "janos", "zoltan", "sandor", "gabor", "ferenc", "attila", "tamas", "zsolt", "tibor", "andras", "imre", "lajos", "miklos", "gyorgy", "gyula", "balazs", "bela", "geza", "jeno", "katalin", "erzsebet", "ilona", "zsuzsanna", "zsofia", "ildiko", "eszter", "reka", "aniko", "krisztina", "piroska",
]);
const unmarked = (word: string): string => word.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();

/** Whether the last name may be the one that stands first: of these words nobody can tell. */
export const isOrderOpen = (words: readonly string[]): boolean => WRITTEN_FIRST.has(unmarked(words[0] ?? "")) || FIRST_BUT_LAST.has(unmarked(words.at(-1) ?? ""));

/** Three capitals and more are a last name in the manner of forms, “NAGY István”; two may be initials. Elicited. */
const IN_CAPITALS = /^(?=(?:.*\p{Lu}){3})[\p{Lu}\p{M}’'-]+$/u;
/** The one word in capitals among others that are not: the last name; null where there is none. */
export function nameInCapitals(words: readonly string[]): string | null {
  const [capitals, ...more] = words.filter((w) => IN_CAPITALS.test(w));
  return capitals !== undefined && more.length === 0 && words.length > 1 ? capitals : null;
}

/** “O’Brien-Smith” of “O’BRIEN-SMITH”, “McFarrant” of “MCFARRANT”. */
export const inSmallLetters = (word: string): string =>
  word.toLowerCase().replace(/(?<=^|[’'-]|^mc)\p{L}/gu, (letter) => letter.toUpperCase());
