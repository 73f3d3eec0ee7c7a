import { COLUMNS_OF } from "../trade/columns";
import { DAMAGE_IDS } from "../trade/damage";
import type { FibreId } from "../trade/fibres";
import { TEXTURE, TEXTURE_GRADES, TEXTURE_HARMS, type TextureHarm } from "../trade/texture";
import type { TextureOutlook } from "./assessment";
import { byKind, KINDS } from "./kinds";
import { chanceOfNone } from "./mechanism-sets";
import type { WhatHappened } from "./what-happened";

const GRADES = TEXTURE_GRADES.length;
/** From this chance that the texture has suffered at all, it is spoken of. Elicited. */
const LEAST_SPOKEN_OF = 0.1;

const choose = (n: number, k: number): number => (k === 0 ? 1 : (choose(n - 1, k - 1) * n) / k);

/** Chances of the grades once each grade stays with that chance, independently: binomial from every grade. */
export function afterCleaning(now: readonly number[], stays: number): number[] {
  return now.map((_, after) => now.reduce((sum, p, grade) => (grade < after ? sum : sum + p * choose(grade, after) * stays ** after * (1 - stays) ** (grade - after)), 0));
}

/** The graver of two independent grades: their cumulative chances multiply. */
export function graver(a: readonly number[], b: readonly number[]): number[] {
  const upTo = (p: readonly number[], grade: number) => p.slice(0, grade + 1).reduce((x, y) => x + y, 0);
  return a.map((_, g) => upTo(a, g) * upTo(b, g) - (g === 0 ? 0 : upTo(a, g - 1) * upTo(b, g - 1)));
}

/** Of a fibre with several columns the one that keeps most. */
const staysOn = (harm: TextureHarm, fibre: FibreId): number => Math.max(...COLUMNS_OF[fibre].map((c) => TEXTURE[harm].stays[c]));

/**
 * Chances of the grades of texture, 0 as it was made to 4 burst or matted through, now and after the best method the pile
 * allows; each sums to 1. Where both harms hold the graver rules. Null where neither is likely enough to be spoken of.
 */
export function judgeTexture(happened: WhatHappened, fibres: Readonly<Record<FibreId, number>>): TextureOutlook | null {
  const now = new Array<number>(GRADES).fill(0);
  const after = new Array<number>(GRADES).fill(0);
  const none = TEXTURE_HARMS.map((m) => chanceOfNone(happened.components, 1 << DAMAGE_IDS.indexOf(m)));
  byKind(fibres).forEach((share, k) => {
    const grades = TEXTURE_HARMS.map((m, i) => [none[i]?.[k] ?? 1, ...TEXTURE[m].now.map((p) => p * (1 - (none[i]?.[k] ?? 1)))]);
    const cleaned = TEXTURE_HARMS.map((m, i) => afterCleaning(grades[i] as number[], staysOn(m, KINDS[k] as FibreId)));
    graver(grades[0] as number[], grades[1] as number[]).forEach((p, g) => { now[g] = (now[g] as number) + share * p; });
    graver(cleaned[0] as number[], cleaned[1] as number[]).forEach((p, g) => { after[g] = (after[g] as number) + share * p; });
  });
  return 1 - (now[0] as number) < LEAST_SPOKEN_OF ? null : { now, after };
}
