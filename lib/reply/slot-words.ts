/** What a paragraph may leave open, in `{braces}`, for the assessment to fill. */
export interface SlotRow {
  /** What stands there, for the person who writes. */
  readonly says: string;
  /** An invented value, to read a paragraph with before it is used. */
  readonly example: string;
  /** It has a value in every letter; any other is left out with its paragraph where there is none. */
  readonly always: boolean;
}
const always = (says: string, example: string): SlotRow => ({ says, example, always: true });
const where = (says: string, example: string): SlotRow => ({ says, example, always: false });

export const SLOTS = {
  name: where("the client’s name, without an address", "Ana Example"),
  title: always("the rug’s title", "Grey, 170 × 240"),
  number: always("which rug of the letter it is", "1"),
  sharers: where("the rugs of which something is said once", "the two rugs"),
  rug: always("the rug as one speaks of it: “your grey rug”", "your grey rug"),
  fibre: always("the most probable fibre", "viscose"),
  rival: always("the fibre that comes next", "silk"),
  fit: always("both of these where neither is far ahead, else which fits best and that the other is not excluded", "viscose and silk both fit"),
  fitBetter: always("the same beside what it was sold as", "viscose and silk both fit better"),
  likely: always("how sure we are, in a word", "likely"),
  evidence: always("what the judgement rests on", "the label in your photo and what you told us"),
  labelSays: where("the fibre a label names", "viscose"),
  soldAs: where("silk, or wool and silk, where it was sold so", "silk"),
  improvement: where("how far it may come back, as a range", "between a tenth and a third (10–35 %)"),
  mends: where("the same with what it is a share of: soil, what its surface has lost, or the mark", "take out between a tenth and a third (10–35 %) of the mark"),
  unexplained: where("what they told us of that nothing likely explains; bare patches apart", "the rough pile"),
  ofWhat: where("what that is a share of", "of the mark"),
  life: where("the years left, as a range", "between 2 and 6 years"),
  lifeLow: where("the years left, the lower end", "2 years"),
  lifeHigh: where("the years left, the upper end", "6 years"),
  worse: where("the chance that cleaning harms it, as a range", "between 15 and 30 in 100"),
  beyond: where("how likely it is beyond economic repair", "likely"),
  inspector: where("who inspected it", "Ivo Castellane"),
  inspectedOn: where("the day of that inspection", "24 November 2026"),
  atHome: always("“at home”, or “at home again” where it was cleaned there before", "at home"),
  methods: where("the cleaning that is not ruled out", "nearly dry or with a dry solvent"),
  clean: where("what cleaning would cost, as a range", "£120 to £180"),
  cutDown: where("what cutting down would cost: a range, or where a way was chosen on a plan its edges as drawn and up to new ones all round", "£210 to £340"),
  cutWay: where("the way of cutting it down that was chosen on a plan", "“Two rugs out of one”, which keeps about 80 % of the rug"),
  replace: where("what a new one costs, as a range", "£280 to £540"),
  repair: where("the repair that the most probable trouble calls for", "repair of its back"),
  worthToday: where("what the rug may be worth today, as a range", "£80 to £220"),
  asks: where("the list of what we ask for", "– A photo of the label."),
  ask: where("the one thing we ask for", "– A photo of the label."),
  firstAid: where("the whole first aid, where something is wet", "– Press a plain white cloth straight down."),
  firstAidInShort: always("first aid in a few lines, those that fit", "– Press a plain white cloth straight down."),
  untouched: where("the rugs that nobody may touch, where another rug has first aid of its own", "rug 1"),
  ownAid: where("the first aid of one of several rugs, where another of them may not be touched and this one may", "– Press a plain white cloth straight down."),
  emergency: always("what to do where somebody is hurt", "If somebody is hurt, call 112 now."),
  referTo: where("who else should see it", "a textile conservator"),
  came: where("what came since our last letter", "your message and the new photos"),
  changed: where("what of our last letter reads otherwise today", "what it is made of and how far it may come back"),
  gone: where("what of our last letter no longer holds", "how long it may serve"),
  waits: where("what of our last letter waits until we know whether it is wet", "how long it may serve"),
  telephone: where("the workshop’s telephone", "01632 960 200"),
  reach: where("how to reach the workshop", "ring us on 01632 960 200 or answer this letter"),
  collecting: where("how a rug comes to the workshop, in the words of its settings", "We collect within 15 miles."),
  weeks: where("how many weeks work usually takes, by its settings", "3 to 6 weeks"),
  signature: always("the signature", "The workshop"),
  chance: where("how likely what the paragraph speaks of is", "likely"),
} as const satisfies Record<string, SlotRow>;
export type SlotName = keyof typeof SLOTS;

const OPEN = /\{([^{}]*)\}/g;
/** The slots a text leaves open, as they are written, each once, known or not. */
export const slotsIn = (text: string): string[] => [...new Set([...text.matchAll(OPEN)].map((m) => m[1] as string))];
export const isSlot = (name: string): name is SlotName => Object.hasOwn(SLOTS, name);

/** The text with its known slots filled in one pass, so that no value is read for slots of its own; what has no value stays open. */
export const fillWith = (text: string, valueOf: (name: SlotName) => string | null): string =>
  text.replace(OPEN, (whole, name: string) => (isSlot(name) ? (valueOf(name) ?? whole) : whole));

/** A paragraph's text with its slots filled; null where one of them has no value here, or is none. */
export function filled(text: string, valueOf: (name: SlotName) => string | null): string | null {
  const missing = new Set<string>();
  const all = text.replace(OPEN, (whole, name: string) => {
    const value = isSlot(name) ? valueOf(name) : null;
    if (value === null) missing.add(name);
    return value ?? whole;
  });
  return missing.size === 0 ? all : null;
}

/** The text with every known slot read as its example. */
export const withExamples = (text: string): string => fillWith(text, (name) => SLOTS[name].example);
