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
