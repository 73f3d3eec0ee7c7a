import { mkdirSync } from "node:fs";
import net from "node:net";
import type { Config } from "../config/config";
import { CommandError, step } from "./command";
import { ensureClients } from "./generate";

/** Where the data lie, without user or password. */
export function whereOf({ provider, databaseUrl, dataDir }: Pick<Config, "provider" | "databaseUrl" | "dataDir">): string {
  if (provider === "sqlite") return `${databaseUrl.replace(/^file:/, "")} (SQLite); photos in ${dataDir}`;
  const { host, pathname } = new URL(databaseUrl);
  return `${host}${pathname} (PostgreSQL); photos in ${dataDir}`;
}

/** The data folder made and the database migrated. The clients are written first: the store imports them. */
export async function readyDatabase(root: string): Promise<void> {
  await ensureClients(root);
  const { config } = await import("../config/config");
  mkdirSync(config.dataDir, { recursive: true, mode: 0o700 });
  const { migrateDatabase } = await import("../store/database");
  await step("Preparing the database", async () => {
    try {
      await migrateDatabase();
    } catch (error) {
      if (!(error instanceof Error) || error.name === "MigrationError" || config.provider === "sqlite") throw error;
      const why = error.message || (error as NodeJS.ErrnoException).code || "no answer";
      throw new CommandError(`The database at ${whereOf(config).replace(/ \(.*/, "")} cannot be used: ${why}.`);
    }
  });
}

const WHY: Record<string, (host: string, port: number) => string> = {
  EADDRINUSE: (host, port) => `Port ${port} on ${host} is in use by another program. Stop that one, or choose another port: PORT=${port + 1} npm start.`,
  EACCES: (_, port) => `Port ${port} may not be used by this account. Choose one above 1023: PORT=3000 npm start.`,
  EADDRNOTAVAIL: (host) => `${host} is not an address of this machine. Set HOST to one that is, or leave it out for 127.0.0.1.`,
};

/** @throws CommandError in one sentence where the server could not listen there. */
export async function assertPortFree(host: string, port: number): Promise<void> {
  await new Promise<void>((resolve, reject) => {
    const probe = net.createServer();
    probe.once("error", (e: NodeJS.ErrnoException) => {
      const why = WHY[e.code ?? ""];
      reject(why ? new CommandError(why(host, port)) : e);
    });
    probe.listen(port, host, () => probe.close(() => resolve()));
  });
}
