import type { TreatedFirst } from "../reply/treated-first";
import type { EnquiryAnswers, RugAnswers } from "../trade/questions";
import type { ClientSpots } from "./measured-views";
import type { ColourShare, EnclosureView, PhotoView } from "./views";

/** The client's own page. Carries no judgement before a letter was approved. */
export interface ClientView {
  reference: string;
  workshop: { name: string; email: string | null; telephone: string | null };
  clientName: string;
  submittedAt: string;
  /** In a sentence: "Answered this morning by a person." */
  standing: string;
  /** `isNow`: it is wet by what we were told, and no letter of ours has gone yet. First aid is no judgement: everybody can find it, always. `isGas`: beside what is wet, bleach and something it can give off gas with were told. */
  firstAid: { isNow: boolean; handsOff: boolean; isGas: boolean };
  /** Mould may be in one of the rugs, by what was told and judged, and no letter of ours has warned of it yet. */
  isMouldFeared: boolean;
  /** What they wrote themselves, oldest first. */
  written: { at: string; text: string }[];
  /** What they answered of the enquiry as a whole; nothing where staff took it down. */
  answers: EnquiryAnswers;
  /** `answers`: the client's own. `sinceToldOn`: the day, written out, on which they told when it happened; null where they did not. `lifeOnce`: before what the years do not count. */
  rugs: { title: string; answers: RugAnswers; sinceToldOn: string | null; photos: PhotoView[]; spots: ClientSpots; colours: ColourShare[]; lifeYears: { low: number; median: number; high: number } | null; lifeOnce: TreatedFirst | null }[];
  /** Enquiries about other rugs that they sent from the same device: each has a page of its own. */
  beside: { reference: string; rugs: string[] }[];
  letters: { subject: string; text: string; at: string; by: string | null; enclosures: EnclosureView[] }[];
  /** Pictures that they sent by mail and that could not be opened, by their names; nothing once another photo has come. */
  unopened: string[];
  canAddPhotos: boolean;
  photosLeft: number;
  /** What the copy of everything is called by. */
  copy: string;
  /** Nothing was ordered, so they may erase everything themselves. */
  mayErase: boolean;
}
