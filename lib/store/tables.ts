import "server-only";
import { Prisma } from "./generated/sqlite/client";
import type { Tx } from "./open-store";

/** The models that a backup holds, each after those it points at. */
export const KEPT_TABLES = [
  "workshop", "paragraphVersion", "staff", "staffAccount", "invitation", "intake", "client", "enquiry", "thirdParty", "clientLink", "rug", "answer", "photo", "labelReading", "measurement",
  "finding", "assessment", "draft", "revision", "letter", "inspection", "document", "enclosure", "post", "mailbox", "benchTest", "outcome", "audit",
] as const satisfies readonly Uncapitalize<Prisma.ModelName>[];

/** What a backup leaves out: an old one must not bring an ended session or a used-up limit back to life. */
export const PASSING_TABLES = ["staffSession", "staffVerification", "rateLimit"] as const satisfies readonly Uncapitalize<Prisma.ModelName>[];

/** Json fields that must have a value: in them null is the value null, not its absence. */
export const NEEDED_JSON: Partial<Record<KeptTable, readonly string[]>> = {
  workshop: ["values"], intake: ["answers"], enquiry: ["answers"], answer: ["value"], photo: ["measured"], labelReading: ["words", "crop"], measurement: ["marks", "result"], finding: ["value"],
  assessment: ["settings", "findings", "result"], benchTest: ["response"], outcome: ["value"], document: ["filled", "content"], audit: ["detail"],
};

/** An enquiry may point at another one: written without, then pointed. */
export const POINTS_AT_ITSELF: Partial<Record<KeptTable, string>> = { enquiry: "joinedToId" };

export type KeptTable = (typeof KEPT_TABLES)[number];
export type Row = { id: string } & Record<string, unknown>;

interface AnyTable {
  findMany(args: { where?: { id: { gt: string } }; orderBy: { id: "asc" }; take: number }): Promise<Row[]>;
  createMany(args: { data: object[] }): Promise<unknown>;
  updateMany(args: { where: { id: string }; data: object }): Promise<unknown>;
  deleteMany(): Promise<unknown>;
  count(): Promise<number>;
}

export const tableOf = (tx: Tx, key: KeptTable | (typeof PASSING_TABLES)[number]): AnyTable => (tx as unknown as Record<string, AnyTable>)[key] as AnyTable;

/** A row as it was read from a file, as the client takes it. What is absent is null in the database. */
export function toWrite(key: KeptTable, row: Row): Row {
  const needed = NEEDED_JSON[key] ?? [];
  const fields = Object.entries(row).map(([name, value]) => [name, value === null && needed.includes(name) ? Prisma.JsonNull : value] as const);
  return Object.fromEntries(fields.filter(([, value]) => value !== null)) as Row;
}
