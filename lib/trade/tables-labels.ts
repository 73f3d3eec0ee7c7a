import type { Source } from "./fibres";
import { BLENDS, BLEND_PERCENT, LEADING_PERCENT, WEAKEST_RULES_PERCENT } from "./label-fibres";
import { LABEL_CODES, LABEL_NAMES } from "./label-names";
import { LABEL_RULES, OTHER_FIBRES_MOST_PERCENT, US_NAMED_LEAST_PERCENT, VIRGIN_WOOL_LEAST_PERCENT, type LabelRule } from "./label-rules";
import { factTable, judged, number, numberAt, placesIn, text, type FactTable } from "./table";

/** The names of one source, counted: there are too many to print. */
interface Names extends Source { readonly names: number; readonly languages: number }
function bySource(of: readonly { readonly source: Source; readonly language?: string }[]): Names[] {
  const groups = new Map<string, { readonly source: Source; readonly languages: Set<string>; names: number }>();
  for (const { source, language } of of) {
    const key = `${source.how} ${source.source}`;
    const group = groups.get(key) ?? { source, languages: new Set<string>(), names: 0 };
    group.names += 1;
    if (language !== undefined) group.languages.add(language);
    groups.set(key, group);
  }
  return [...groups.values()].map(({ source, languages, names }) => ({ ...source, names, languages: languages.size }));
}

const LIMIT_SOURCES: Readonly<Record<string, Source>> = {
  "label-rules.OTHER_FIBRES_MOST_PERCENT": LABEL_RULES["other-fibres"].source, "label-rules.VIRGIN_WOOL_LEAST_PERCENT": LABEL_RULES["virgin-wool"].source,
  "label-rules.US_NAMED_LEAST_PERCENT": LABEL_RULES["under-five-us"].source,
};

/** How a label is read: how many names are known from where, and what the rules of labelling say. */
export const LABEL_TABLES: readonly FactTable[] = [
  factTable<Names>({ id: "label-names", part: "labels", name: "Names of fibres on labels", about: "How many words, in how many languages, are known from each source.", columns: [number("words"), number("languages")], rows: placesIn(bySource(LABEL_NAMES), (_, r) => r.source), cells: (r) => [r.names, r.languages] }),
  factTable<Names>({ id: "label-codes", part: "labels", name: "Codes on labels", about: "Short codes, read only beside a percentage; those that two systems read differently stay a doubt.", columns: [number("codes")], rows: placesIn(bySource(LABEL_CODES), (_, r) => r.source), cells: (r) => [r.names] }),
  factTable<LabelRule>({
    id: "label-rules", part: "labels", name: "Rules for labels", about: "What the rules of labelling say, in general terms; which of them binds a seller, local law decides.", columns: [text("note"), text("departure")],
    rows: placesIn(LABEL_RULES, (_, r) => r.article), cells: (r) => [r.note, r.broken], source: (r) => r.source,
  }),
  factTable<number>({
    id: "label-limits", part: "labels", name: "Limits in those rules", about: "Per cent of the part’s weight.", columns: [number("limit", "percent")], cells: (x) => [x], source: (_, key) => LIMIT_SOURCES[key] as Source,
    rows: [
      numberAt("label-rules", "OTHER_FIBRES_MOST_PERCENT", OTHER_FIBRES_MOST_PERCENT, "“Other fibres”, at the most"),
      numberAt("label-rules", "VIRGIN_WOOL_LEAST_PERCENT", VIRGIN_WOOL_LEAST_PERCENT, "Virgin wool in a mixture, at the least"),
      numberAt("label-rules", "US_NAMED_LEAST_PERCENT", US_NAMED_LEAST_PERCENT, "A fibre named in the US, at the least"),
    ],
  }),
  factTable<number>({
    id: "blend-limits", part: "labels", name: "When a mixture is a blend", about: "How per cents on a label, or in a laboratory’s report, become one of the fibres we name.", columns: [number("limit", "percent")], cells: (x) => [x],
    source: judged("which mixtures are handled as what"),
    rows: [
      numberAt("label-fibres", "BLEND_PERCENT", BLEND_PERCENT, "A fibre below this makes no blend"), numberAt("label-fibres", "LEADING_PERCENT", LEADING_PERCENT, "Handled as its main fibre from"),
      numberAt("label-fibres", "WEAKEST_RULES_PERCENT", WEAKEST_RULES_PERCENT, "Viscose rules a mixture from"),
    ],
  }),
  factTable<string>({ id: "blends", part: "labels", name: "Blends with a name of their own", about: "What the fibres of a mixture together are handled as.", columns: [text("handled as")], rows: placesIn(BLENDS, (k) => k.replaceAll("+", " and ")), cells: (b) => [b.replaceAll("-", " and ")], source: judged("which mixtures are handled as what") }),
];
