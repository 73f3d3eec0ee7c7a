import { existsSync } from "node:fs";
import path from "node:path";

let loaded = false;

/**
 * The environment, with what `.env` in the working folder adds to it (a variable that is already set wins).
 * Tests are left alone with what they set themselves.
 */
export function environment(): NodeJS.ProcessEnv {
  const file = path.resolve(".env");
  if (!loaded && process.env.NODE_ENV !== "test" && existsSync(file)) process.loadEnvFile(file);
  loaded = true;
  return process.env;
}

/** What this process was started with, and nothing of `.env`: for programs it starts itself. */
export const inherited = (): NodeJS.ProcessEnv => process.env;

/** Sets variables for this process and for what it starts, before the configuration is read. */
export const setVariables = (values: Record<string, string>): void => void Object.assign(process.env, values);
