import "server-only";
import { config } from "../config/config";

/**
 * One line of JSON on standard error for what somebody guarding the server looks for. Fields are ids, codes and keyed
 * hashes: never an address, a name, a password or a token.
 */
export function noteSecurity(event: "sign-in refused" | "not allowed" | "too many requests", fields: Record<string, string | null>): void {
  if (config.logLevel === "error") return;
  console.warn(JSON.stringify({ level: "warn", at: new Date().toISOString(), event, ...fields }));
}
