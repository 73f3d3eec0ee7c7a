import type { FineFibre } from "../../lib/trade/label-fibres";
import type { LabelPart } from "../../lib/trade/label-names";

/**
 * What invented labels say. The names of the fibres are those of Annex I of Regulation (EU) No 1007/2011 in eight of its
 * languages; labels.test.ts holds them to the published rows in tests/reference/data/label-names.json.
 */
export type Language = "en" | "de" | "fr" | "it" | "es" | "nl" | "pt" | "pl";
type Named = Extract<FineFibre, "wool" | "silk" | "cotton" | "viscose" | "polyester" | "polyamide" | "polypropylene" | "acrylic" | "jute" | "linen">;

export const NAMES: Readonly<Record<Language, Readonly<Record<Named, string>>>> = {
  en: { wool: "wool", silk: "silk", cotton: "cotton", viscose: "viscose", polyester: "polyester", polyamide: "polyamide", polypropylene: "polypropylene", acrylic: "acrylic", jute: "jute", linen: "linen" },
  de: { wool: "Wolle", silk: "Seide", cotton: "Baumwolle", viscose: "Viskose", polyester: "Polyester", polyamide: "Polyamid", polypropylene: "Polypropylen", acrylic: "Polyacryl", jute: "Jute", linen: "Leinen" },
  fr: { wool: "laine", silk: "soie", cotton: "coton", viscose: "viscose", polyester: "polyester", polyamide: "polyamide", polypropylene: "polypropylène", acrylic: "acrylique", jute: "jute", linen: "lin" },
  it: { wool: "lana", silk: "seta", cotton: "cotone", viscose: "viscosa", polyester: "poliestere", polyamide: "poliammidica", polypropylene: "polipropilenica", acrylic: "acrilica", jute: "iuta", linen: "lino" },
  es: { wool: "lana", silk: "seda", cotton: "algodón", viscose: "viscosa", polyester: "poliéster", polyamide: "poliamida", polypropylene: "polipropileno", acrylic: "acrílico", jute: "yute", linen: "lino" },
  nl: { wool: "wol", silk: "zijde", cotton: "katoen", viscose: "viscose", polyester: "polyester", polyamide: "polyamide", polypropylene: "polypropyleen", acrylic: "acryl", jute: "jute", linen: "linnen" },
  pt: { wool: "lã", silk: "seda", cotton: "algodão", viscose: "viscose", polyester: "poliéster", polyamide: "poliamida", polypropylene: "polipropileno", acrylic: "acrílica", jute: "juta", linen: "linho" },
  pl: { wool: "wełna", silk: "jedwab", cotton: "bawełna", viscose: "wiskoza", polyester: "poliester", polyamide: "poliamid", polypropylene: "polipropylen", acrylic: "akryl", jute: "juta", linen: "len" },
};
export const LANGUAGES = Object.keys(NAMES) as Language[];

/** Words for the pile and the ground, as labels of rugs carry them; the Dutch word for a ground is “rug”, so none is asked. */
export const PARTS: Readonly<Record<Language, { pile: string; ground: string } | null>> = {
  en: { pile: "Pile", ground: "Backing" }, de: { pile: "Flor", ground: "Grund" }, fr: { pile: "Velours", ground: "Trame" }, it: { pile: "Pelo", ground: "Fondo" },
  es: { pile: "Pelo", ground: "Base" }, nl: null, pt: { pile: "Pelo", ground: "Base" }, pl: { pile: "Runo", ground: "Podkład" },
};
/** What else stands there, none of it a fibre. */
const BESIDES: Readonly<Record<Language, readonly string[]>> = {
  en: ["Hand knotted", "Made in Hallowmere", "Dry clean only"], de: ["Handgeknüpft", "Nicht waschen", "Farbe: grau"], fr: ["Noué main", "Ne pas laver"], it: ["Annodato a mano", "Non lavare"],
  es: ["Anudado a mano", "No lavar"], nl: ["Handgeknoopt", "Niet wassen"], pt: ["Feito à mão", "Não lavar"], pl: ["Tkany ręcznie", "Nie prać"],
};
const TAIL = ["160 x 230 cm", "Art. 4711", "Ref. K7-204", "170 x 240 cm", "No. 38 / 112"];

/** Blends of rugs, in per cent. */
const BLENDS: readonly (readonly [Named, number][])[] = [
  [["wool", 100]], [["silk", 100]], [["viscose", 100]], [["polypropylene", 100]], [["polyester", 100]], [["cotton", 100]], [["acrylic", 100]], [["jute", 100]],
  [["wool", 80], ["viscose", 20]], [["wool", 70], ["silk", 30]], [["viscose", 85], ["polyester", 15]], [["wool", 60], ["polyamide", 40]], [["cotton", 65], ["polyester", 35]],
  [["viscose", 55], ["cotton", 45]], [["wool", 50], ["linen", 30], ["viscose", 20]], [["wool", 55], ["silk", 45]], [["wool", 90], ["polyamide", 10]],
];
const GROUNDS: readonly (readonly [Named, number][])[] = [[["cotton", 100]], [["jute", 100]], [["cotton", 70], ["polyester", 30]], [["polyester", 100]]];

export interface Said { readonly part: LabelPart; readonly fibres: readonly { fibre: Named; percent: number }[] }
export interface LabelWords { readonly language: Language; readonly lines: readonly string[]; readonly says: readonly Said[] }

const pick = <T>(random: () => number, from: readonly T[]): T => from[Math.floor(random() * from.length)] as T;

/** One label: the pile alone, or the pile and its ground. */
export function labelWords(random: () => number, language: Language): LabelWords {
  const dress = pick<(text: string) => string>(random, [(t) => t, (t) => t.toUpperCase(), (t) => t.replace(/^\p{L}/u, (c) => c.toUpperCase())]);
  const share = pick<(name: string, percent: number) => string>(random, [(n, p) => `${p}% ${n}`, (n, p) => `${p} % ${n}`, (n, p) => `${n} ${p}%`]);
  const line = (blend: readonly [Named, number][]) => blend.map(([fibre, percent]) => share(dress(NAMES[language][fibre]), percent));
  const said = (part: LabelPart, blend: readonly [Named, number][]): Said => ({ part, fibres: blend.map(([fibre, percent]) => ({ fibre, percent })) });
  const pile = pick(random, BLENDS);
  const before = random() < 0.5 ? [dress(pick(random, BESIDES[language]))] : [];
  const after = random() < 0.6 ? [pick(random, TAIL)] : [];
  const parts = PARTS[language];
  if (random() < 0.6 || !parts) return { language, lines: [...before, ...line(pile), ...after], says: [said("whole", pile)] };
  const ground = pick(random, GROUNDS);
  const head = (part: string, lines: string[]) => [`${dress(part)}: ${lines[0]}`, ...lines.slice(1)];
  return { language, lines: [...before, ...head(parts.pile, line(pile)), ...head(parts.ground, line(ground)), ...after], says: [said("pile", pile), said("ground", ground)] };
}
