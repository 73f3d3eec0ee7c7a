import "server-only";
import type { Measurement } from "../store/database";
import { CLIENT } from "./measurement-findings";
import { measuredIn } from "./measurement-result";
import type { ClientSpots, MeasurementView } from "./measured-views";

/** A measurement as the desk's pages show it; none where the row is no longer understood. */
export function measurementView(row: Measurement, nameOf: (staffId: string | null) => string): MeasurementView[] {
  const measured = measuredIn(row);
  if (!measured) return [];
  const who = (id: string | null) => (id === CLIENT ? "the client" : nameOf(id));
  const withdrawn = row.withdrawnAt && { by: who(row.withdrawnById), at: row.withdrawnAt.toISOString(), isMoved: row.replacedById !== null, why: row.withdrawnWhy };
  return [{ id: row.id, photoId: row.photoId, by: who(row.from), at: row.at.toISOString(), withdrawn, ...measured }];
}

/** Ids of the people who marked or took away. */
export const markersOf = (rows: readonly Measurement[]): string[] => rows.flatMap((r) => [r.from, r.withdrawnById].flatMap((id) => (id === null || id === CLIENT ? [] : [id])));

/** What a client marked in each photo and may still move. */
export function clientSpots(photos: readonly { id: string; measurements: readonly Measurement[] }[]): ClientSpots {
  return Object.fromEntries(photos.flatMap((p) => p.measurements.filter((m) => m.from === CLIENT && m.withdrawnAt === null).flatMap((m) => {
    const measured = measuredIn(m);
    return measured?.kind === "spots" ? [[p.id, { id: m.id, marks: measured.marks }] as const] : [];
  })));
}
