import "server-only";
import { v7 } from "uuid";

/**
 * Id of a new row of which several can be written at one instant and must be told in the order of their writing: a UUID of version 7
 * (RFC 9562 §5.7), whose text sorts by the millisecond it was made in and, within one process, by the order of the calls (§6.2).
 * Order by the row's instant first: it may come from another clock.
 */
export const newRowId = (): string => v7();

const inOrder = <K extends "at" | "createdAt" | "arrivedAt", W extends "asc" | "desc">(key: K, way: W): [Record<K, W>, { id: W }] => [{ [key]: way } as Record<K, W>, { id: way }];
/** Rows by their instant, and those of one instant as they were written (see newRowId). */
export const OLDEST_FIRST = { at: inOrder("at", "asc"), createdAt: inOrder("createdAt", "asc"), arrivedAt: inOrder("arrivedAt", "asc") };
export const NEWEST_FIRST = { at: inOrder("at", "desc"), createdAt: inOrder("createdAt", "desc"), arrivedAt: inOrder("arrivedAt", "desc") };
