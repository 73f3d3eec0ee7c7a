import type { SpotMarks } from "./mark-schema";
import type { NewMeasurement } from "./record-measurement";

/** What a client's page sends: its own id, the photo and the two spots. */
export interface ShownSpots { id: string; photoId: string; marks: SpotMarks }

/** The same as the operation takes it, which parses the marks. A client's latest pair takes the place of an earlier one by itself. */
export const spotsShown = ({ id, photoId, marks }: ShownSpots): NewMeasurement => ({ id: String(id), photoId: String(photoId), marked: { kind: "spots", marks }, replaces: null });
