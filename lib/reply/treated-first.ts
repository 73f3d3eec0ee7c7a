import type { MechanismId } from "../triage/assessment";

/** Who sees to what lives in a rug, as a letter names them. */
export const BY_FIRM = { mould: "a firm equipped to treat mould in textiles", insects: "a pest control firm or a workshop that treats rugs for insects" } as const;
export type Treated = keyof typeof BY_FIRM;
/** What harms people first. */
export const TREATED: readonly Treated[] = ["mould", "insects"];

/** For whom it is: where mould and insects are in it, who treats mould has it before anybody else handles it. */
export const firmsFor = (treated: readonly Treated[]): string => treated.map((what) => BY_FIRM[what]).join(" first, and then for ");

/** What spoils a rug further as long as it is in it, and what has to hold before the years left count. */
export type TreatedFirst = "mould" | "insects" | "both";
export const ONCE_TREATED: Readonly<Record<TreatedFirst, string>> = {
  mould: "the mould is treated and the rug is dry", insects: "no insects live in it", both: "the mould is treated, the rug is dry and no insects live in it",
};

/** What has to be treated before any work: mould, seen or likely, and insects that are likely. `isMouldy`: the judgement's own rule; `likely`: what has probably happened. */
export const treatedOf = ({ isMouldy, likely }: { isMouldy: boolean; likely: readonly MechanismId[] }): readonly Treated[] =>
  TREATED.filter((what) => (what === "mould" ? isMouldy : likely.includes(what)));

/** Before what the years left do not count; null where nothing stands before them. */
export const treatedFirst = (treated: readonly Treated[]): TreatedFirst | null => (treated.length > 1 ? "both" : treated[0] ?? null);
