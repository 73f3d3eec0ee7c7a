import "server-only";
import { AsyncLocalStorage } from "node:async_hooks";
import { providerOf, type Provider } from "../config/database-url";
import { withCleanText } from "./clean-text";
import { connect, type PlainClient } from "./connection";
import type { Prisma } from "./generated/sqlite/client";
import { noGate, oneAtATime, within } from "./gate";

/** The client inside a transaction. */
export type Tx = Prisma.TransactionClient;
/** The client outside of one. Its transactions are made by `transact`. */
export type Db = Omit<PlainClient, "$transaction" | "$connect" | "$disconnect" | "$extends" | "$on">;

export interface Store {
  provider: Provider;
  client: Db;
  /** See `transact` in database.ts. */
  transact<T>(work: (tx: Tx) => Promise<T>): Promise<T>;
  /** Whether the caller stands inside the work of a transaction of this store. */
  inTransaction(): boolean;
  close(): Promise<void>;
}

export interface StoreOptions {
  /** Milliseconds until a transaction is rolled back, whatever its work is waiting for. */
  transactionMs?: number;
  /** Milliseconds that waiting for a connection and rolling back may take beyond that. */
  graceMs?: number;
  onLost?: (error: Error) => void;
}

const TRANSACTION_MS = 15_000;
/** More than a connection waits for another process's lock. */
const GRACE_MS = 12_000;
/** Serialisable transactions that met one another are run again, each time after a longer random pause. */
const ATTEMPTS = 25;
const PAUSE_MS = 8;

export const USE_TX = "Inside transact, use the tx it hands over: another client would wait for this transaction, or be lost with it.";

/** PostgreSQL's "another transaction was quicker": nothing was written, and the same work may be run again. */
function metAnother(error: unknown): boolean {
  const e = error as { code?: unknown; cause?: { kind?: unknown; originalCode?: unknown } } | null;
  return e?.code === "P2034" || e?.cause?.kind === "TransactionWriteConflict" || e?.cause?.originalCode === "40001" || e?.cause?.originalCode === "40P01";
}

async function again<T>(attempts: number, run: () => Promise<T>): Promise<T> {
  for (let n = 1; ; n++) {
    try {
      return await run();
    } catch (error) {
      if (n >= attempts || !metAnother(error)) throw error;
      await new Promise((resume) => setTimeout(resume, Math.random() * PAUSE_MS * n));
    }
  }
}

/** A client, also inside its transactions, that writes no text which only one of the databases takes. */
const storable = (client: PlainClient): PlainClient =>
  client.$extends({ query: { $allOperations: ({ args, query }) => query(withCleanText(args)) } }) as unknown as PlainClient;

/**
 * Opens a store. On SQLite one connection serves everybody, so a gate lets through one plain query or one whole
 * transaction at a time: without it a query of one request runs inside the open transaction of another and vanishes
 * when that rolls back. On PostgreSQL transactions are serialisable, so that both behave alike.
 */
export function openStore(url: string, options: StoreOptions = {}): Store {
  const provider = providerOf(url);
  const { transactionMs = TRANSACTION_MS, graceMs = GRACE_MS, onLost } = options;
  const base = storable(connect(url, { writes: true, ...(onLost ? { onLost } : {}) }));
  const scopes = new AsyncLocalStorage<{ open: boolean }>();
  const gate = provider === "sqlite" ? oneAtATime() : noGate;
  const inTransaction = () => scopes.getStore()?.open === true;

  const attempt = <T>(work: (tx: Tx) => Promise<T>) => {
    const scope = { open: true };
    const isolation = provider === "postgresql" ? { isolationLevel: "Serializable" as const } : {};
    const run = scopes.run(scope, () => base.$transaction(work, { timeout: transactionMs, maxWait: graceMs, ...isolation }));
    const late = () => new Error(`A transaction was still open after ${transactionMs} ms and was rolled back.`);
    return within(transactionMs + graceMs, run, late).finally(() => { scope.open = false; });
  };
  const transact = async <T>(work: (tx: Tx) => Promise<T>): Promise<T> => {
    if (inTransaction()) throw new Error(USE_TX);
    return provider === "sqlite" ? gate(() => attempt(work)) : again(ATTEMPTS, () => attempt(work));
  };
  const client = base.$extends({
    query: {
      $allOperations({ args, query }) {
        if (inTransaction()) throw new Error(USE_TX);
        return gate(() => query(args));
      },
    },
    client: {
      // Libraries that begin transactions of their own come through the same gate.
      $transaction(work: unknown) {
        if (typeof work !== "function") throw new Error("A list of queries cannot pass the gate; use transact.");
        return transact(work as (tx: Tx) => Promise<unknown>);
      },
    },
  }) as unknown as Db;

  return { provider, client, transact, inTransaction, close: () => base.$disconnect() };
}
