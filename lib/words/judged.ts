import { METHOD_SENTENCES, type MethodId } from "../trade/care";
import { isFibreId, FIBRES } from "../trade/fibres";
import { NOT_STATED } from "../trade/not-stated";
import { fill } from "./fill";
import { TABLES_EN, type TableKey } from "./tables";
import type { Words } from "./words";

// An assessment holds its sentences in English. They are made of the trade's tables, so each can be read back to its keys.

const keysOf = (beginning: string): Map<string, TableKey> => new Map([...TABLES_EN].filter(([key]) => key.startsWith(beginning)).map(([key, text]) => [text, key]));
const WHYS = keysOf("why.");
const FIBRE_OF = new Map<string, string>(FIBRES.map(({ id, name }) => [name, id]));

export type CutKey = Extract<TableKey, `cut.${string}`>;
/** Under which key a way of cutting a rug down has its name, as a finding calls it; null where there is none of that name. */
export const cutKey = (kind: unknown): CutKey | null => ([...TABLES_EN.keys()].find((key): key is CutKey => key === `cut.${String(kind)}`) ?? null);

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
/** The narrower sentence stands first: the first that fits is meant. */
const SENTENCES = (Object.keys(METHOD_SENTENCES) as (keyof typeof METHOD_SENTENCES)[]).map((id) => ({
  key: `why.sentence.${id}` as const, reads: new RegExp(`^${escaped(METHOD_SENTENCES[id]("\u0001", "\u0002", "\u0003")).replace("\u0001", "(?<why>.+)").replace("\u0002", "(?<fibre>.+)").replace("\u0003", "(?<chance>.+)")}$`, "u"),
}));

/** The chance of a pile that a method is ruled out for, in whole per cent, as its sentence has it; null in every other sentence. */
export function chanceInWhy(sentence: string): number | null {
  const [chance] = SENTENCES.flatMap(({ reads }) => reads.exec(sentence)?.groups?.["chance"] ?? []);
  return chance === undefined ? null : Number.parseInt(chance, 10);
}

/** Why a method may or may not be used, as an assessment holds it, in the words of a locale; as it is where it was worded otherwise. `sayChance`: how a chance in it is written; as it stands where that is left out. */
export function methodWhyIn(words: Words, method: MethodId, sentence: string, sayChance?: (percent: number) => string): string {
  for (const { key, reads } of SENTENCES) {
    const { why = "", fibre = "", chance = "" } = reads.exec(sentence)?.groups ?? {};
    const own = (["fine", "test", "forbidden"] as const).map((verdict) => `why.${method}.${verdict}` as const).find((k) => TABLES_EN.get(k) === why) ?? WHYS.get(why);
    const id = FIBRE_OF.get(fibre) ?? "";
    if (own && (fibre === "" || isFibreId(id))) return fill(words.table(key), { why: words.table(own), chance: chance !== "" && sayChance ? sayChance(Number.parseInt(chance, 10)) : chance, fibre: isFibreId(id) ? words.table(`fibre.${id}.name`) : "" });
  }
  return sentence;
}

const STATED = new Map(Object.entries(NOT_STATED).map(([id, text]) => [text as string, id as keyof typeof NOT_STATED]));
/** Why an assessment states no figure, in the words of a locale; as it is where it was worded otherwise. */
export function notStatedIn(words: Words, sentence: string): string {
  const id = STATED.get(sentence);
  return id === undefined ? sentence : words.table(`not-stated.${id}`);
}
