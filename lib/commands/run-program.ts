import { spawn, type ChildProcess } from "node:child_process";
import os from "node:os";
import path from "node:path";
import { inherited } from "../config/environment";
import { CommandError } from "./command";

export const nextBin = (root: string): string => path.join(root, "node_modules/next/dist/bin/next");

const withOurs = (env: Record<string, string>): NodeJS.ProcessEnv => ({ ...inherited(), NEXT_TELEMETRY_DISABLED: "1", ...env });

const PASSED_ON = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/** While the child runs, signals to us go on to it. Returns how it ended; being stopped because it was asked to is a good end. */
function ended(child: ChildProcess): Promise<number> {
  const passOn = PASSED_ON.map((signal) => {
    const handler = () => { child.kill(signal); };
    process.on(signal, handler);
    return () => process.off(signal, handler);
  });
  return new Promise<number>((resolve, reject) => {
    child.once("error", reject);
    child.once("close", (code, signal) => {
      resolve(code ?? (signal === "SIGINT" || signal === "SIGTERM" ? 0 : 128 + (signal ? os.constants.signals[signal] : 0)));
    });
  }).finally(() => passOn.forEach((stop) => stop()));
}

/** Runs a program of Node to its end, quietly; what it said is shown only where it fails. */
export async function runQuietly(root: string, args: readonly string[], env: Record<string, string>, failed: string): Promise<void> {
  const child = spawn(process.execPath, args, { cwd: root, env: withOurs(env), stdio: ["ignore", "pipe", "pipe"] });
  const said: Buffer[] = [];
  child.stdout.on("data", (c: Buffer) => said.push(c));
  child.stderr.on("data", (c: Buffer) => said.push(c));
  const code = await ended(child);
  if (child.signalCode !== null) throw new CommandError(`Stopped by ${child.signalCode}.`);
  if (code !== 0) throw new CommandError(`${failed}\n${Buffer.concat(said).toString().trimEnd()}`);
}

/** Runs a program of Node in the foreground. Returns its exit code. */
export const runInFront = (root: string, args: readonly string[], env: Record<string, string>): Promise<number> =>
  ended(spawn(process.execPath, args, { cwd: root, env: withOurs(env), stdio: "inherit" }));
