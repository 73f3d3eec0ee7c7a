import path from "node:path";

export type Provider = "sqlite" | "postgresql";

/** Which database a URL names. Anything that is not PostgreSQL is a SQLite file. */
export const providerOf = (url: string): Provider => (/^postgres(ql)?:/.test(url) ? "postgresql" : "sqlite");

/** `DATABASE_URL`, or the SQLite file in the data folder. */
export function databaseUrl(env: NodeJS.ProcessEnv = process.env): string {
  return env.DATABASE_URL ?? `file:${path.resolve(env.DATA_DIR ?? "data", "plainpile.db")}`;
}
