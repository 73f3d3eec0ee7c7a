import { BLENDS, BLEND_PERCENT, CLASS_OF_FINE, FOUNDATION_FIBRES, FOUNDATION_MOST_PERCENT, LEADING_PERCENT, WEAKEST_RULES_PERCENT } from "../trade/label-fibres";
import type { LabelSays } from "../trade/likelihoods-label";
import type { LabelComponent, LabelFibre, LabelReading } from "./read-label";

/** What of the rug the label's pile is: the pile where it says so, otherwise the whole without what is no more than its foundation. */
export function pileOf(reading: LabelReading): LabelComponent | null {
  const pile = reading.components.find((c) => c.part === "pile");
  if (pile) return pile;
  const whole = reading.components.find((c) => c.part === "whole");
  if (!whole || reading.components.some((c) => c.part === "ground")) return whole ?? null;
  const [beneath, shown] = [true, false].map((is) => whole.fibres.filter((f) => FOUNDATION_FIBRES.includes(f.fibre) === is)) as [LabelFibre[], LabelFibre[]];
  const isBeneathOnly = beneath.reduce((sum, f) => sum + (f.percent ?? 0), 0) <= FOUNDATION_MOST_PERCENT;
  return shown.length > 0 && isBeneathOnly && blendName(classes(whole.fibres)) === null ? { part: "whole", fibres: shown } : whole;
}

/** The classes of a component with their shares; fibres without a percentage share what the others leave. Vague names have no class. */
function classes(fibres: readonly LabelFibre[]): Map<LabelSays, number> {
  const shares = new Map<LabelSays, number>();
  const stated = fibres.reduce((sum, f) => sum + (f.percent ?? 0), 0);
  const blank = Math.max(0, 100 - stated) / Math.max(1, fibres.filter((f) => f.percent === null).length);
  for (const f of fibres) {
    const name = CLASS_OF_FINE[f.fibre];
    const share = f.percent ?? blank;
    if (name !== null && share > 0) shares.set(name, (shares.get(name) ?? 0) + share);
  }
  const total = [...shares.values()].reduce((a, b) => a + b, 0);
  return new Map([...shares].filter(([, share]) => share / total >= BLEND_PERCENT / 100));
}

/** How much of the pile each class is by a label's wording, in one unit; none where it names no fibre of the pile. */
export const labelShares = (reading: LabelReading): ReadonlyMap<LabelSays, number> => classes(pileOf(reading)?.fibres ?? []);

/** The class of one fibre alone or of a blend that has a class of its own; null for any other mixture. */
function blendName(shares: ReadonlyMap<LabelSays, number>): LabelSays | null {
  const names = [...shares.keys()];
  if (names.length === 1) return names[0] as LabelSays;
  const set = [...new Set(names.map((n) => (n === "art-silk" ? "viscose" : n)))].sort().join("+");
  return BLENDS[set] ?? null;
}

/**
 * The class a label's wording stands for; null where it names no fibre of the pile, or only in general terms. A mixture
 * without a class of its own counts as viscose where that is a good part of it (the weakest fibre rules the care), as its
 * main fibre where that is most of it, otherwise as `other`.
 */
export function classOfLabel(reading: LabelReading): LabelSays | null {
  const pile = pileOf(reading);
  const shares = classes(pile?.fibres ?? []);
  if (shares.size === 0) return null;
  const named = blendName(shares);
  if (named !== null) return named;
  const total = [...shares.values()].reduce((a, b) => a + b, 0);
  const viscose = (shares.get("viscose") ?? 0) + (shares.get("art-silk") ?? 0);
  if (viscose / total >= WEAKEST_RULES_PERCENT / 100) return "viscose";
  const [main, share] = [...shares].sort((a, b) => b[1] - a[1])[0] as [LabelSays, number];
  return share / total >= LEADING_PERCENT / 100 ? main : "other";
}

/** A component in words: "80 % wool, 20 % viscose". */
export const sayComponent = (component: LabelComponent): string =>
  component.fibres.map((f) => (f.percent === null ? f.fibre : `${f.percent} % ${f.fibre}`)).join(", ");
