import type { Column } from "./columns";
import type { DamageId } from "./damage";
import type { Source } from "./fibres";

/** The pile's texture, judged apart from its colour, in grades: 0 as it was made, 4 gone. Elicited wording. */
export const TEXTURE_GRADES = ["as it was made", "a little flat or rough", "plainly flat or rough", "badly flat, rough or hard", "burst or matted through"] as const;

export const TEXTURE_HARMS = ["pile-distortion", "matting"] as const satisfies readonly DamageId[];
export type TextureHarm = (typeof TEXTURE_HARMS)[number];

export interface TextureRow extends Source {
  readonly name: string;
  /** Shares of the grades 1–4 where the harm is there; they sum to 1. */
  readonly now: readonly [number, number, number, number];
  /** Chance, 0–1, that a grade stays after the best method the pile allows, each grade for itself. */
  readonly stays: Readonly<Record<Column, number>>;
}
const elicited = (of: string): Source => ({ how: "elicited", source: `Elicited for this project: ${of}` });

export const TEXTURE: Readonly<Record<TextureHarm, TextureRow>> = {
  "pile-distortion": {
    name: "burst or distorted pile", now: [0.15, 0.3, 0.35, 0.2],
    stays: { wool: 0.45, silk: 0.75, viscose: 0.93, "wool-viscose": 0.75, cotton: 0.65, olefin: 0.85, polyamide: 0.55 },
    ...elicited("fibres that lose most of their strength in water stay burst; wool can be set again with steam by a workshop"),
  },
  matting: {
    name: "matting", now: [0.3, 0.35, 0.25, 0.1],
    stays: { wool: 0.45, silk: 0.65, viscose: 0.9, "wool-viscose": 0.75, cotton: 0.7, olefin: 0.85, polyamide: 0.45 },
    ...elicited("pile laid by feet and furniture rises again in wool and polyamide, hardly in viscose and olefin"),
  },
};
