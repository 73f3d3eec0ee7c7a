import { styleText } from "node:util";

/** Something the person at the keyboard can put right: said in one line, without a stack, exit code 2. */
export class CommandError extends Error {
  override name = "CommandError";
}

const PLAIN = new Set(["CommandError", "ConfigError", "MigrationError", "ArchiveError"]);
const LEAST_NODE = [20, 19] as const;

/** @throws CommandError below the oldest Node that works. */
export function checkNode(version: string): void {
  const [major = 0, minor = 0] = version.replace(/^v/, "").split(".").map(Number);
  const [least, leastMinor] = LEAST_NODE;
  if (major < least || (major === least && minor < leastMinor)) {
    throw new CommandError(`Node ${least}.${leastMinor} or newer is needed; this is ${version}.`);
  }
}

/**
 * Runs a command's main function, and ends the process with what it returns, 2 for a plain refusal, or 1 for a fault. Asked for help, it
 * only says how it is called.
 */
export async function runCommand(main: () => Promise<number | void>, usage?: string): Promise<never> {
  try {
    checkNode(process.version);
    if (usage !== undefined && asksForHelp(process.argv.slice(2))) {
      console.log(usage);
      process.exit(0);
    }
    process.exit((await main()) ?? 0);
  } catch (error) {
    const plain = error instanceof Error && PLAIN.has(error.name);
    console.error(plain ? error.message : error);
    process.exit(plain ? 2 : 1);
  }
}

/** Whether help is asked for, as GNU programs and most others let it. */
export const asksForHelp = (args: readonly string[]): boolean => args.some((arg) => arg === "--help" || arg === "-h");

const seconds = (ms: number) => (ms < 1_000 ? "under a second" : ms < 90_000 ? `${Math.round(ms / 1_000)} s` : `${Math.round(ms / 60_000)} min`);

/** Says what takes its time, how long it has taken (at a terminal: as it goes), and that it is done. */
export async function step<T>(name: string, work: () => Promise<T>): Promise<T> {
  const started = Date.now();
  const out = process.stdout;
  const tick = out.isTTY ? setInterval(() => out.write(`\r${name} … ${seconds(Date.now() - started)} `), 1_000) : undefined;
  out.write(out.isTTY ? `${name} …` : `${name} …\n`);
  try {
    const result = await work();
    out.write(`${out.isTTY ? "\r\u001b[K" : ""}${styleText("green", "✓")} ${name} (${seconds(Date.now() - started)})\n`);
    return result;
  } catch (error) {
    out.write(`${out.isTTY ? "\r\u001b[K" : ""}${styleText("red", "✗")} ${name} (${seconds(Date.now() - started)})\n`);
    throw error;
  } finally {
    clearInterval(tick);
  }
}
