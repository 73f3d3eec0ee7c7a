import { heading, list, paragraph, small, type PrintedDocument } from "./blocks";
import type { Locale } from "../../words/locales";

export interface CareCard { readonly rug: string; readonly locale: Locale; /** How likely there is viscose in its pile, in words: "very likely". */ readonly likely: string; readonly workshop: { readonly name: string; readonly lines: readonly string[]; readonly telephone: string } }

/** How to live with a viscose rug, to be kept by it. Common practice, no published source; no product, dose or recipe. */
export function viscoseCareCard({ rug, likely, workshop, locale }: CareCard): PrintedDocument {
  return {
    title: `Living with ${rug}`, language: locale, head: { name: workshop.name, lines: workshop.lines },
    blocks: [
      paragraph(`By what we know, it is ${likely} that there is viscose in its pile. Should it prove to be another fibre, none of this harms it.`),
      paragraph("Viscose is a fibre made from wood or plant pulp. It shines like silk and is weak when wet. These few things keep it good for longest."),
      heading("Looking after it"),
      ...list(["Vacuum it gently every week, with the pile and without a beater or a rotating brush.", "Turn the rug round twice a year, so that feet and light wear it evenly.", "Put felt or cups under furniture, and a breathing underlay beneath the rug."]),
      heading("Keep away"),
      ...list(["Water, steam and every cleaner, sold for carpets or not.", "Plant pots, damp rooms and a heated floor turned up.", "Direct sun; draw a curtain at midday."]),
      heading("When something is spilled"),
      ...list(["Lay a plain white dry cloth on it and press straight down. Do not rub.", "Change to a dry part of the cloth and press again until it comes up dry.", "Put nothing on it: no cleaner, no powder, no more water. No heat.", "Let air get to it, and call us the same day."]),
      heading("Never"),
      ...list(["Never let anybody wash it, by hand, with a machine or in a bath, before a hidden corner was tested.", "Never beat, shake or hang it while it is damp.", "Never mix cleaning products, on this rug or anywhere."]),
      small(`Footprints and shading belong to this fibre and are no fault. Questions: ${workshop.telephone || workshop.name}.`),
    ],
  };
}
