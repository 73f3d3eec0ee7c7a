import type { PhotoView } from "./views";
import type { Measured } from "./measurement-result";
import type { SpotMarks } from "./mark-schema";
import type { Figures } from "../words/measures";

/** Where a photo was marked and what was measured there. */
export type MeasurementView = Measured & {
  id: string;
  photoId: string;
  by: string;
  at: string;
  /** `isMoved`: a newer one took its place. `why`, in a sentence, where nobody took it away by hand. */
  withdrawn: { by: string; at: string; isMoved: boolean; why: string | null } | null;
};
export type SpotView = Extract<MeasurementView, { kind: "spots" }>;
export type PlanView = Extract<MeasurementView, { kind: "plan" }>;

/** The page at the desk where one photo is measured. */
export interface PhotoDeskView {
  enquiryId: string;
  reference: string;
  rug: { title: string; widthCm: number | null; lengthCm: number | null };
  photo: PhotoView;
  /** The rug's other photos. */
  others: PhotoView[];
  /** Oldest first. */
  measurements: MeasurementView[];
  mayMeasure: boolean;
  /** What a metre of new edge costs here. */
  money: Figures & { bindingPerM: number; currency: string };
}

/** What the client marked in a photo, by the photo's id. */
export type ClientSpots = Readonly<Record<string, { id: string; marks: SpotMarks }>>;

/** The first thing that a cut-down plan lacks, and the photo in which it is marked; no photo where there is none of the rug's face. */
export type PlanLack = { lacks: "photo"; photoId: null } | { lacks: "corners" | "damage" | "way" | "decision"; photoId: string };
