import path from "node:path";
import { environment } from "./environment";

export type Provider = "sqlite" | "postgresql";

/** Which database a URL names. Anything that is not PostgreSQL is a SQLite file. */
export const providerOf = (url: string): Provider => (/^postgres(ql)?:/.test(url) ? "postgresql" : "sqlite");

/** `DATABASE_URL`, or the SQLite file in the data folder. A SQLite file is named from the working folder, absolutely. */
export function databaseUrl(env: NodeJS.ProcessEnv = environment()): string {
  const url = env.DATABASE_URL?.trim() || `file:${path.join(env.DATA_DIR?.trim() || "data", "plainpile.db")}`;
  return providerOf(url) === "postgresql" ? url : `file:${path.resolve(url.replace(/^file:(\/\/(?=\/))?/, ""))}`;
}
