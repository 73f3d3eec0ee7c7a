/** A piece of a line that is wholly ours or wholly theirs. */
export interface Piece { readonly text: string; readonly isOurs: boolean }

/** A word of a text, spelt so that programs that change quotes, dashes, accents or spaces change nothing of it, and where it stands. */
interface Word { readonly word: string; readonly line: number; readonly start: number; readonly end: number }
/** A sentence or line of ours. `left`: how often it still may stand there; at our foot any number of times, since the HTML form names us twice, and in loose lines, where somebody may quote it above our letter. */
interface Sentence { readonly words: readonly string[]; readonly isFoot: boolean; readonly isAsked: boolean; left: number }
/** Words from one place up to another, not with it. */
type Span = readonly [from: number, to: number];

/** An address in brackets behind the words of a link; it is blanked, so that all else keeps its place. */
const BEHIND = /[[<][^\s[\]<>]+[\]>]/gu;
const WORD = /https?:\/\/[^\s"]*[\p{L}\p{N}/]|(?:[\p{L}\p{N}\p{M}×]\p{Cf}*)+/gu;
const bare = (word: string): string[] => (word.includes("://") ? [word.toLowerCase()] : word.replaceAll("×", "x").normalize("NFKD").replace(/[\p{M}\p{Cf}]/gu, "").toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []);

const wordsOf = (text: string, line = 0): Word[] => [...text.replace(BEHIND, (address) => " ".repeat(address.length)).matchAll(WORD)]
  .flatMap(({ 0: word, index }) => bare(word).map((spelt) => ({ word: spelt, line, start: index, end: index + word.length })));

/** A shorter sentence is ours only where it fills its lines: a client may well begin with the same two words. *elicited* */
const FULL_WORDS = 4;
/** So many words of ours in a row are ours also behind words of theirs. *elicited* */
const SURELY_WORDS = 8;
/** A sentence of ours may be broken off at the end of a line after so many words, and goes on within so many lines. *elicited* */
const BROKEN_WORDS = 3;
const BROKEN_LINES = 40;
/** Where nothing marks a line or stands over it, only a whole sentence of so many words tells that it is ours. *elicited* */
const LOOSE_WORDS = 5;
/** Where a sentence begins within a line, behind so many characters at most, and what ends one. *elicited* */
const MARK_CHARS = 10;
const OPENS = /(?:[.!?…:;]["”’')\]]*\s+|["“”‘’'«(]\s*)$/u;
const ENDS = /^[^\p{L}\p{N}]*$|^["”’')\]]*[.!?…:;]/u;

/** Our letter by its sentences, found by the first word of each. */
function sentencesOf(letter: string): ReadonlyMap<string, Sentence[]> {
  const byFirst = new Map<string, Sentence[]>();
  let isFoot = false;
  for (const line of letter.split(/\r?\n/u)) {
    isFoot = line.trim() === "--" || (isFoot && line.trim() !== "");
    for (const said of line.split(/(?<=[.!?…:;]["”’)]*)\s+/u)) addTo(byFirst, { words: wordsOf(said).map((w) => w.word), isFoot, isAsked: said.trimEnd().endsWith("?"), left: 1 });
  }
  return byFirst;
}

function addTo(byFirst: Map<string, Sentence[]>, sentence: Sentence): void {
  const [first] = sentence.words;
  if (first === undefined) return;
  const others = byFirst.get(first) ?? [];
  const same = others.find((s) => s.isFoot === sentence.isFoot && s.words.join(" ") === sentence.words.join(" "));
  if (same) same.left += 1;
  else byFirst.set(first, [...others, sentence]);
}

/** The words of what is repeated, and which of them are known to be ours. */
class Repeated {
  readonly words: readonly Word[];
  readonly isOurs: boolean[];
  /** Words in sentences of ours that are long enough to tell our letter by. */
  surely = 0;
  readonly #lines: readonly string[];
  readonly #ours: ReadonlyMap<string, Sentence[]>;
  /** By line: that nothing but its words can tell whose it is. */
  readonly #loose: readonly boolean[];

  constructor(lines: readonly string[], ours: ReadonlyMap<string, Sentence[]>, loose: readonly boolean[]) {
    this.#lines = lines;
    this.#ours = ours;
    this.#loose = loose;
    this.words = lines.flatMap((line, i) => wordsOf(line, i));
    this.isOurs = this.words.map(() => false);
    this.words.forEach((_, at) => this.#claim(at, { least: this.#isLoose(at) ? LOOSE_WORDS : 0 }));
    this.#claimAmong();
  }

  /** Shorter sentences in loose lines are ours where any is surely so: as many words in a row, such as our closing and foot, what stands between such rows, and next to them. */
  #claimAmong(): void {
    const loose = this.words.flatMap((_, at) => (this.#isLoose(at) ? [at] : []));
    if (!loose.some((at) => this.isOurs[at])) return;
    for (const at of loose) if (this.#rowFrom(at) >= LOOSE_WORDS) this.#claim(at, { least: 0 });
    const sure = loose.filter((at) => this.isOurs[at]);
    const [first = 0, last = 0] = [sure.at(0), sure.at(-1)];
    for (const at of [...loose].reverse()) if (at < first) this.#claim(at, { least: 0, isBeforeOurs: true });
    for (const at of loose) if (at > first && (at < last || this.isOurs[at - 1])) this.#claim(at, { least: 0 });
  }

  /** How many words in a row from here on stand in sentences of ours; as many as are asked for are enough. */
  #rowFrom(at: number): number {
    let end = at;
    while (end - at < LOOSE_WORDS) {
      const next = this.isOurs[end] ? end + 1 : this.#longestAt(end, { least: 0, isBeforeOurs: false })?.spans[0]?.[1];
      if (next === undefined) break;
      end = next;
    }
    return end - at;
  }

  #isLoose(at: number): boolean { return this.#loose[this.words[at]?.line ?? 0] === true; }
  #beginsLine(at: number): boolean { return this.words[at]?.line !== this.words[at - 1]?.line; }
  /** What stands in a word's line just before it, and all after it. */
  #around(at: number): readonly [string, string] {
    const word = this.words[at], line = this.#lines[word?.line ?? 0] ?? "";
    const start = word?.start ?? 0;
    return [line.slice(Math.max(0, start - MARK_CHARS), start), line.slice(word?.end)];
  }

  /** Takes the longest sentence of ours that begins here for ours, where it has so many words. `isBeforeOurs`: only where words of ours follow it. */
  #claim(at: number, { least, isBeforeOurs = false }: { least: number; isBeforeOurs?: boolean }): void {
    const longest = this.isOurs[at] ? null : this.#longestAt(at, { least, isBeforeOurs });
    if (!longest) return;
    for (const [from, to] of longest.spans) this.isOurs.fill(true, from, to);
    const { sentence } = longest;
    if (sentence.isFoot) return;
    sentence.left -= 1;
    if (sentence.words.length >= FULL_WORDS) this.surely += sentence.words.length;
  }

  #longestAt(at: number, { least, isBeforeOurs }: { least: number; isBeforeOurs: boolean }): { sentence: Sentence; spans: Span[] } | null {
    const found = this.#sentencesAt(at, least).flatMap((sentence) => {
      const spans = this.#spans(sentence.words, at);
      return spans && this.#isWhole(sentence, spans) && (!isBeforeOurs || this.isOurs[spans.at(-1)?.[1] ?? -1]) ? [{ sentence, spans }] : [];
    });
    return found.sort((a, b) => b.sentence.words.length - a.sentence.words.length)[0] ?? null;
  }

  #sentencesAt(at: number, least: number): Sentence[] {
    const isLoose = this.#isLoose(at);
    const isOpen = this.#beginsLine(at) || this.isOurs[at - 1] === true || (isLoose && OPENS.test(this.#around(at)[0]));
    return (this.#ours.get(this.words[at]?.word ?? "") ?? []).filter((s) => (s.isFoot || s.left > 0 || (isLoose && s.words.length >= LOOSE_WORDS)) && s.words.length >= least && (isOpen || (!isLoose && s.words.length >= SURELY_WORDS)));
  }

  #same(words: readonly string[], at: number): number {
    const differs = words.findIndex((word, i) => this.words[at + i]?.word !== word);
    return differs < 0 ? words.length : differs;
  }

  /** Where these words stand from here on: in one run, or broken off at the end of a line and gone on with at the beginning of a later one. */
  #spans(words: readonly string[], at: number): Span[] | null {
    const n = this.#same(words, at);
    if (n === words.length) return [[at, at + n]];
    if (n < BROKEN_WORDS || !this.#beginsLine(at + n)) return null;
    const last = (this.words[at + n]?.line ?? 0) + BROKEN_LINES;
    for (let next = at + n + 1; next < this.words.length && (this.words[next]?.line ?? 0) <= last; next++) {
      const rest = this.#beginsLine(next) && !this.isOurs[next] ? this.#spans(words.slice(n), next) : null;
      if (rest) return [[at, at + n], ...rest];
    }
    return null;
  }

  /** Whether a sentence that was found is one: a short one fills its lines, is asked as we asked it, or another of ours follows. */
  #isWhole({ words, isAsked }: Sentence, spans: readonly Span[]): boolean {
    const end = spans.at(-1)?.[1];
    if (end === undefined) return false;
    const [, after] = this.#around(end - 1);
    if (this.#beginsLine(end) || (words.length >= FULL_WORDS && (!this.#isLoose(end - 1) || ENDS.test(after)))) return true;
    if (isAsked && after.trimStart().startsWith("?")) return true;
    return (this.#ours.get(this.words[end]?.word ?? "") ?? []).some((s) => this.#same(s.words, end) === s.words.length);
  }

  /** Each line in pieces that are wholly ours or wholly theirs; one without words has none. */
  pieces(): Piece[][] {
    const byLine = this.#lines.map((): Marked[] => []);
    this.words.forEach((word, i) => byLine[word.line]?.push({ ...word, isOurs: this.isOurs[i] === true }));
    return byLine.map((words, i) => piecesOf(this.#lines[i] ?? "", words));
  }
}

type Marked = Word & { readonly isOurs: boolean };

function piecesOf(text: string, [first, ...words]: readonly Marked[]): Piece[] {
  if (!first) return [];
  const pieces: Piece[] = [];
  let [from, before] = [0, first];
  for (const word of words) {
    if (word.isOurs !== before.isOurs) {
      const cut = Math.max(before.end, text.slice(0, word.start).search(/\S*$/u));
      pieces.push({ text: text.slice(from, cut).trim(), isOurs: before.isOurs });
      from = cut;
    }
    before = word;
  }
  return [...pieces, { text: text.slice(from).trim(), isOurs: before.isOurs }];
}

/**
 * Tells lines of ours from what somebody wrote between them; each sentence of ours is ours as often as it stands in `letter`, our letters
 * as they were sent. `loose`: the lines that nothing marks for repeated; ours in them are whole sentences of five words or more, and what stands
 * among those. null where no sentence of ours stands there.
 */
export function piecesByWriter(lines: readonly string[], letter: string, loose: readonly boolean[]): readonly (readonly Piece[])[] | null {
  const repeated = new Repeated(lines, sentencesOf(letter), loose);
  return repeated.surely === 0 ? null : repeated.pieces();
}
