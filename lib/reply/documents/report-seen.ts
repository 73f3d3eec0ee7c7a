import { comparedBy } from "../../trade/compared";
import type { Assessment } from "../../triage/assessment";
import { decimal, DOUBT_FIGURES, smallArea, type Figures } from "../../words/measures";
import type { Words } from "../../words/words";
import type { Inspected } from "../inspected";
import { listed } from "../phrases";
import type { Asker } from "../who-asks";
import { list, paragraph, small, type Block, type PhotoMark } from "./blocks";
import { changesSeen, isChangeTold, type Told } from "./report-told";

/** A named person's own inspection; without one a report is provisional. */
export interface Inspection extends Inspected { readonly found: string }
/** What somebody marked in a photo. */
export interface ReportMark {
  readonly what: "untouched" | "affected" | "damaged" | "edges";
  /** Of an affected spot, its measured change (ΔE00), by which its finding is known. */
  readonly deltaE?: number;
  readonly outline: PhotoMark["outline"];
}
export interface ReportPhoto extends Pick<Extract<Block, { kind: "photo" }>, "shape" | "quarters"> { readonly id: string; readonly shows: string; readonly takenOn: string | null; readonly marks: readonly ReportMark[] }
/** A reading of the workshop's moisture meter, on its own scale, in the trouble or where nothing has happened. */
export interface MoistureRead { readonly on: string; readonly percent: number; readonly place: "affected" | "untouched" }
interface Seen { readonly moisture: readonly MoistureRead[]; readonly told: Told; readonly asker: Asker; readonly inspection: Inspection | null; readonly overtaken?: Inspection | null; readonly assessment: Assessment; readonly photos: readonly ReportPhoto[]; readonly figures: Figures }

/** What an inspection found, what was measured, and the photos. */
export function seenBlocks(seen: Seen, words: Words): Block[] {
  const { told, inspection, overtaken, assessment, photos, figures, moisture } = seen;
  const { say } = words;
  const measured = assessment.findings.filter((f) => f.what === "colour-change").map((f) => changeSentence(f, photos, words, figures));
  const areas = assessment.findings.filter((f) => f.what === "damaged-area").map((f) => areaSentence(f, photos, words, figures));
  const changes = [...measured, ...areas];
  return [
    ...(inspection ? [paragraph(inspection.found)] : []),
    ...(overtaken ? [paragraph(say("report.found-before-flood", { day: overtaken.on, found: overtaken.found }))] : []),
    ...changesSeen(seen, words),
    ...(measured.length > 0 ? [] : [paragraph(say("report.not-measured", { told: isChangeTold(told) ? "yes" : "no" }))]),
    ...list(changes),
    ...(measured.length > 0 ? [small(say("report.colour-difference"))] : []),
    ...list(moisture.map(({ on, percent, place }) => say("report.moisture", { day: on, percent, place }))),
    ...(moisture.length > 0 ? [small(say("report.moisture-scale"))] : []),
    ...(photos.length > 0 ? [small(say("report.photos-as-sent"))] : []),
    ...photos.map((photo, at) => photoBlock(photo, at + 1, words)),
  ];
}

/** A photo with its number and what was marked in it, said and drawn under the same numbers. */
function photoBlock({ id, shows, takenOn, marks, shape, quarters }: ReportPhoto, n: number, words: Words): Block {
  const { say } = words;
  const caption = takenOn ? say("report.photo-caption-day", { n, shows, day: takenOn }) : say("report.photo-caption", { n, shows });
  const told = listed(marks.map(({ what }, at) => say("report.mark", { n: at + 1, what })), "and", words);
  const marked = (text: string) => (marks.length > 0 ? say("report.photo-marked", { caption: text, marks: told }) : text);
  return {
    kind: "photo", photoId: id, alternative: marks.length > 0 ? marked(say("report.photo-caption", { n, shows })) : say("report.photo", { n, shows }), caption: marked(caption),
    ...(marks.length > 0 || quarters ? { shape, quarters, marks: marks.map(({ outline }, at) => ({ n: at + 1, outline })) } : {}),
  };
}

export type Measured = Assessment["findings"][number];
export const fieldsOf = ({ value }: Measured) => (typeof value === "object" && !Array.isArray(value) ? value : {}) as Record<string, unknown>;

/** In which of the report's photos something was marked, by its number, and by whom; the numbers of the marks there that are meant. */
function markedIn({ from, strength }: Measured, photos: readonly ReportPhoto[], isMeant: (mark: ReportMark) => boolean): { photo: string; by: "client" | "workshop"; numbers: number[] } {
  const at = photos.findIndex(({ id }) => from === `photo:${id}`);
  const numbers = (photos[at]?.marks ?? []).flatMap((mark, i) => (isMeant(mark) ? [i + 1] : []));
  return { photo: at < 0 ? "none" : String(at + 1), by: strength === "told" ? "client" : "workshop", numbers };
}

/** The area of the damage that was drawn on a photo, and its share of the rug. */
function areaSentence(found: Measured, photos: readonly ReportPhoto[], words: Words, figures: Figures): string {
  const { cm2, uncertainty, share } = fieldsOf(found);
  const { numbers, ...where } = markedIn(found, photos, ({ what }) => what === "damaged");
  return words.say("report.damaged", { ...where, marks: listed(numbers.map(String), "and", words) || "none", area: smallArea(Number(cm2), figures), doubt: smallArea(Number(uncertainty), figures, DOUBT_FIGURES), percent: Math.round(100 * Number(share)) });
}

/** A measured change of colour with its standard uncertainty (ΔE00 of CIEDE2000, ISO/CIE 11664-6; JCGM 100). */
function changeSentence(found: Measured, photos: readonly ReportPhoto[], words: Words, { locale }: Figures): string {
  const { direction, deltaE, uncertainty } = fieldsOf(found);
  const { numbers: [affected], ...where } = markedIn(found, photos, (mark) => mark.what === "affected" && mark.deltaE === deltaE);
  // A pair is marked together, the untouched spot first.
  const change = { ...where, marks: affected === undefined ? "none" : "some", affected: affected ?? 0, untouched: (affected ?? 0) - 1, compared: words.table(`compared.${comparedBy(direction)}`), deltaE: decimal(Number(deltaE), locale, 1) };
  return Number(uncertainty) > 0 ? words.say("report.change-doubted", { ...change, doubt: decimal(Number(uncertainty), locale, 1) }) : words.say("report.change", change);
}
