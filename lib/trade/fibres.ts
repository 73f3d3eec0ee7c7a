/**
 * The fibre classes triage reasons over, for the pile of a rug.
 *
 * A *blend* class holds when its second fibre is 10 % of the pile or more.
 * `turned` is its short name where the second fibre is known to be the greater part.
 * `other` stands for everything not named (and for "cannot be told"); it is never below 3 % before evidence.
 * Source of the partition: elicited; which fibres a rug pile is sold as and which of them are handled differently.
 */
export const FIBRES = [
  { id: "silk", name: "silk", short: "silk" },
  { id: "wool", name: "wool", short: "wool" },
  { id: "wool-silk", name: "wool and silk", short: "wool with silk", turned: "silk with wool" },
  { id: "viscose", name: "viscose", short: "viscose" },
  { id: "wool-viscose", name: "wool and viscose", short: "wool with viscose", turned: "viscose with wool" },
  { id: "silk-viscose", name: "silk and viscose", short: "silk with viscose", turned: "viscose with silk" },
  { id: "cotton-viscose", name: "cotton and viscose", short: "cotton with viscose", turned: "viscose with cotton" },
  { id: "lyocell", name: "lyocell, modal or cupro", short: "lyocell or modal" },
  { id: "acetate", name: "acetate", short: "acetate" },
  { id: "cotton", name: "cotton", short: "cotton" },
  { id: "mercerised-cotton", name: "mercerised cotton", short: "mercerised cotton" },
  { id: "bast", name: "linen, hemp or ramie", short: "linen or hemp" },
  { id: "hard-fibre", name: "jute, sisal or coir", short: "jute or sisal" },
  { id: "polyamide", name: "polyamide (nylon)", short: "nylon" },
  { id: "polyester", name: "polyester", short: "polyester" },
  { id: "polypropylene", name: "polypropylene", short: "polypropylene" },
  { id: "acrylic", name: "acrylic", short: "acrylic" },
  { id: "other", name: "something else, or unclear", short: "unclear" },
] as const satisfies readonly { id: string; name: string; short: string; turned?: string }[];

export type FibreId = (typeof FIBRES)[number]["id"];
export type BlendId = Extract<(typeof FIBRES)[number], { turned: string }>["id"];
export const FIBRE_IDS = FIBRES.map((f) => f.id) as readonly FibreId[];
const BY_ID = new Map<string, (typeof FIBRES)[number]>(FIBRES.map((f) => [f.id, f]));

/** The name of a fibre class in the middle of a sentence, e.g. "wool and viscose". */
export const fibreName = (id: FibreId): string => (BY_ID.get(id) as (typeof FIBRES)[number]).name;
/** The short names of a class in letters: one, or of a blend one for either order. */
export const shortNames = (f: (typeof FIBRES)[number]): readonly string[] => ("turned" in f ? [f.short, f.turned] : [f.short]);
export const isFibreId = (s: string): s is FibreId => BY_ID.has(s);

/** Where a figure or a statement comes from. `how` as in DEVELOPERS.md, "How we cite". */
export interface Source {
  how: "read" | "memory" | "computed" | "common practice" | "elicited";
  /** The published source (title, section), or what was judged and by whom in general terms. */
  source: string;
}
