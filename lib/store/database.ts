import "server-only";
import path from "node:path";
import { config } from "../config/config";
import { Prisma } from "./generated/sqlite/client";
import { applyMigrations } from "./migrate";
import { openStore, USE_TX, type Db, type Store, type Tx } from "./open-store";

export type { Db, Tx } from "./open-store";
export type {
  Answer, Assessment, Audit, BenchTest, Client, ClientLink, Document, Draft, Enclosure, Enquiry, Finding, Inspection, Intake, Invitation, LabelReading, Letter, Mailbox, Measurement, Outcome, Photo, Post,
  Prisma, RateLimit, Revision, Rug, Staff, StaffAccount, StaffSession, StaffVerification, ThirdParty, Workshop,
} from "./generated/sqlite/client";
export { Channel, EnquiryState, LetterKind, LetterState, PostKind, PostState, Role, Urgency } from "./generated/sqlite/enums";

// On globalThis: the server bundles its start-up hook and its routes apart, and both must stand at one gate.
const kept = globalThis as { plainpileStore?: Store };

function store(): Store {
  return (kept.plainpileStore ??= openStore(config.databaseUrl, {
    onLost: (error) => console.error(JSON.stringify({ level: "warn", event: "database connection lost", message: error.message })),
  }));
}

/**
 * The database, for reads and single writes (a nested write is one).
 * @throws Error inside the work of `transact`, where only its `tx` may be used.
 */
export function database(): Db {
  const { client, inTransaction } = store();
  if (inTransaction()) throw new Error(USE_TX);
  return client;
}

/**
 * Runs `work` in one transaction: everything it wrote through `tx` is there afterwards, or nothing. Transactions behave as
 * if run one after another, on both databases. On PostgreSQL `work` runs again when another transaction was quicker, so it
 * must do nothing but read and write through `tx`: no mail, no file, no network; and it lets errors of the database pass,
 * since PostgreSQL answers nothing more after one. Rolled back after 15 s, whatever it waits for.
 */
export const transact = <T>(work: (tx: Tx) => Promise<T>): Promise<T> => store().transact(work);

/** What a Json field holds that has no value. */
export const NO_JSON = Prisma.DbNull;

/** Whether an error says that a value that must be unique is taken already. */
export const isTaken = (error: unknown): boolean => (error as { code?: unknown } | null)?.code === "P2002";

/** Creates the data folder and applies pending migrations, one process at a time. Returns the names applied. */
export const migrateDatabase = (): Promise<string[]> => applyMigrations(config.databaseUrl, path.resolve("prisma/migrations"));

export async function closeDatabase(): Promise<void> {
  const open = kept.plainpileStore;
  delete kept.plainpileStore;
  await open?.close();
}
